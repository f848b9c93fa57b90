// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.foundation.Progress;
import bermwright.foundation.Vec3;
import bermwright.report.exchange.GdmlFile;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.report.sheet.Words;
import bermwright.shielding.dose.Responses;
import bermwright.shielding.material.Material;
import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.spectrum.EventSpectrum;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteScene;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** What an independent calculation of the doses needs: scenes as GDML, materials, spectra, and our own results. */
final class SceneFiles {
    private static final double MILLI = 1000;
    private static final double LEAST_MEV = 10;
    private static final int A_DECADE = 16;
    private static final int DECADES = 4;

    private final Assessment assessment;
    private final Path folder;
    private final List<List<String>> stations = new ArrayList<>();
    private final Map<String, List<String>> materials = new LinkedHashMap<>();
    private final List<String> scenes = new ArrayList<>();

    private SceneFiles(Assessment assessment, Path folder) {
        this.assessment = assessment;
        this.folder = folder;
    }

    /** Writes them into a folder; none where no hull has a place. */
    static void write(Assessment assessment, Path folder, Progress progress) throws IOException {
        if (assessment.cover().isPresent() && !assessment.plan().hulls().isEmpty()) {
            SceneFiles files = new SceneFiles(assessment, folder);
            files.scenes(assessment.cover().get(), progress);
            if (!files.scenes.isEmpty()) {
                files.spectra();
                files.tables();
                Files.writeString(folder.resolve("README.txt"), files.readme(), StandardCharsets.UTF_8);
            }
        }
    }

    /** A scene for all hulls of one density of placed soil that have a mound in common. */
    private void scenes(SiteCover cover, Progress progress) throws IOException {
        Plan plan = assessment.plan();
        SiteScene scene = SiteScene.of(plan, cover);
        Map<List<Object>, List<Hull>> groups = new LinkedHashMap<>();
        for (Hull hull : plan.hulls()) {
            if (scene.hull(hull.id()).isPresent()) {
                Object mound = cover.toes().stream().filter(t -> t.contains(scene.projected(scene.hull(hull.id()).get()
                        .middle()).plan())).findFirst().map(Object.class::cast).orElse(hull.id());
                groups.computeIfAbsent(List.of(mound, SiteCover.density(plan, hull)), g -> new ArrayList<>()).add(hull);
            }
        }
        for (List<Hull> hulls : groups.values()) {
            progress.check();
            DoseScene made = new DoseScene(plan, scene, hulls, SiteCover.density(plan, hulls.get(0)));
            String ids = String.join(", ", hulls.stream().map(Hull::id).toList());
            GdmlFile.Scene parts = made.made("Scene for doses in " + ids + "; see README.txt");
            String file = DoseScene.name("scene", String.join("-", hulls.stream().map(Hull::id).toList())) + ".gdml";
            GdmlFile.write(folder.resolve(file), parts);
            scenes.add(String.format(Locale.ROOT, "%s: hulls %s; its origin is at east %.3f m, north %.3f m, height"
                    + " %.3f m in projected metres; a square of ground of %.0f m", file, ids,
                    scene.projected(made.origin()).x(), scene.projected(made.origin()).y(), made.origin().z(),
                    made.side()));
            parts.materials().forEach(this::material);
            hulls.forEach(hull -> stations(hull, file, parts));
        }
    }

    private void material(String name, GdmlFile.Stuff stuff) {
        for (Material.Part part : stuff.material().parts()) {
            materials.put(name + "/" + part.element().symbol(), List.of(name, stuff.material().name(),
                    Words.fixed(stuff.density(), 1), part.element().symbol(), String.valueOf(part.element().charge()),
                    Words.fixed(part.element().atomicWeight(), 5), Words.fixed(part.share(), 8),
                    stuff.material().source()));
        }
    }

    private void stations(Hull hull, String file, GdmlFile.Scene scene) {
        List<StationDose> doses = assessment.hull(hull.id()).map(HullAssessment::stations).orElse(List.of());
        for (StationDose dose : doses) {
            String volume = DoseScene.name("station", dose.name());
            Optional<GdmlFile.Ball> ball = scene.balls().stream().filter(b -> b.name().equals(volume)).findFirst();
            if (ball.isPresent()) {
                Vec3 at = ball.get().middle();
                StationDose.Spread cosmic = dose.parts().cosmicAll();
                StationDose.Spread event = dose.parts().eventAll();
                stations.add(List.of(hull.id(), dose.station(), file, volume, Words.fixed(at.x(), 4),
                        Words.fixed(at.y(), 4), Words.fixed(at.z(), 4), Words.fixed(ball.get().radius(), 4),
                        milli(cosmic.low()), milli(cosmic.best()), milli(cosmic.high()), milli(event.low()),
                        milli(event.best()), milli(event.high())));
            }
        }
    }

    private static String milli(double dose) {
        return Words.fixed(MILLI * dose, 3);
    }

    private void tables() throws IOException {
        csv(new Table("stations", "Stations", List.of(Column.words("hull", "hull"), Column.words("station", "station"),
                Column.words("file", "file"), Column.words("volume", "volume"), Column.number("x_m", "x"),
                Column.number("y_m", "y"), Column.number("z_m", "z"), Column.number("radius_m", "radius"),
                Column.number("cosmic_low_mSv", "cosmic, low"), Column.number("cosmic_best_mSv", "cosmic, best"),
                Column.number("cosmic_high_mSv", "cosmic, high"), Column.number("event_low_mSv", "event, low"),
                Column.number("event_best_mSv", "event, best"), Column.number("event_high_mSv", "event, high")),
                stations));
        csv(new Table("materials", "Materials", List.of(Column.words("material", "material"),
                Column.words("what", "what"), Column.number("density_kg_m3", "density"), Column.words("element",
                "element"), Column.number("Z", "Z"), Column.number("atomic_weight_g_mol", "atomic weight"),
                Column.number("share_by_mass", "share by mass"), Column.words("source", "source")),
                List.copyOf(materials.values())));
    }

    private void csv(Table table) throws IOException {
        Files.writeString(folder.resolve(table.name() + ".csv"), table.csv(), StandardCharsets.UTF_8);
    }

    private void spectra() throws IOException {
        CosmicSpectrum cosmic = new CosmicSpectrum(assessment.plan().exposure().modulation());
        List<List<String>> rows = new ArrayList<>();
        for (int charge = 1; charge <= CosmicSpectrum.GREATEST_CHARGE; charge++) {
            for (int i = 0; i <= DECADES * A_DECADE; i++) {
                double energy = LEAST_MEV * Math.pow(10, (double) i / A_DECADE);
                rows.add(List.of(String.valueOf(charge), Words.fixed(CosmicSpectrum.massNumber(charge), 3),
                        scientific(energy), scientific(cosmic.flux(charge, energy))));
            }
        }
        csv(new Table("source-cosmic", "Cosmic rays", List.of(Column.number("Z", "Z"), Column.number("A", "A"),
                Column.number("energy_MeV_per_nucleon", "energy"),
                Column.number("flux_per_m2_s_sr_MeV_per_nucleon", "flux")), rows));
        Optional<EventSpectrum> event = event();
        if (event.isPresent()) {
            List<List<String>> protons = new ArrayList<>();
            for (int i = 0; i <= 2 * A_DECADE; i++) {
                double energy = LEAST_MEV * Math.pow(10, (double) i / A_DECADE);
                protons.add(List.of(scientific(energy), scientific(event.get().perMeV(energy) / 1e4),
                        scientific(event.get().above(energy) / 1e4)));
            }
            csv(new Table("source-event", "Event", List.of(Column.number("proton_energy_MeV", "energy"),
                    Column.number("fluence_per_cm2_MeV", "fluence"), Column.number("fluence_above_per_cm2",
                    "fluence above")), protons));
        }
    }

    private Optional<EventSpectrum> event() {
        return new DoseSources(Responses.standard(), assessment.ground().directory())
                .event(assessment.plan());
    }

    private static String scientific(double value) {
        return String.format(Locale.ROOT, "%.6e", value);
    }

    private String readme() throws IOException {
        String text;
        try (InputStream in = SceneFiles.class.getResourceAsStream("dose-scene-readme.txt")) {
            text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
        Plan plan = assessment.plan();
        Map<String, String> words = new LinkedHashMap<>();
        words.put("plan", assessment.planName());
        words.put("version", assessment.version());
        words.put("scenes", "  " + String.join(".\n  ", scenes) + ".");
        words.put("modulation", Words.fixed(plan.exposure().modulation(), 1));
        words.put("event", event().map(e -> "  source-event.csv: protons of the event: " + e.name() + "; " + e.source()
                + ".").orElse("  The plan names no event."));
        words.put("datum", SurfaceFiles.datum(assessment));
        words.put("below", Words.fixed(DoseScene.BELOW, 0));
        words.put("tolerance", Words.fixed(DoseScene.TOLERANCE, 2));
        words.put("stay", Words.fixed(plan.exposure().stayDays(), 1));
        words.put("cautions", String.join("\n", assessment.cautions()));
        for (Map.Entry<String, String> word : words.entrySet()) {
            text = text.replace("{" + word.getKey() + "}", word.getValue());
        }
        return text;
    }
}
