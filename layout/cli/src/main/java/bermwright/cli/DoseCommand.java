// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.report.sheet.CurveSheets;
import bermwright.site.answer.WalkAnswers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.DoseCurves;
import bermwright.site.assessment.DoseWalks;
import bermwright.site.exposure.DoseAgainstCover;
import bermwright.site.exposure.StationDose;
import bermwright.site.exposure.WalkedDose;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Shows the dose at each station. */
@Command(name = "dose", description = "Dose at each station, by source and direction.")
final class DoseCommand extends PlanCommand {
    private static final String SVG = ".svg";
    private static final double DEEPEST_GCM2 = 1500;
    private static final double WALK_ERROR = 0.02;
    private static final double LEAST_ERROR = 0.002;
    private static final double GREATEST_ERROR = 0.5;

    @Option(names = "--curve", description = "Dose against areal density for the plan's materials, sun and event,"
            + " beside published figures.")
    private boolean curve;

    @Option(names = "--composition", description = "Which particles make the dose, at each station and by depth.")
    private boolean composition;

    @Option(names = "--at", paramLabel = "DEPTHS", split = ",", description = "With --composition: areal densities in"
            + " g/cm2, 0 to 1500, such as 0,20,100. Default: 0,10,30,100,200,300,500.")
    private List<Double> depths = List.of(0.0, 10.0, 30.0, 100.0, 200.0, 300.0, 500.0);

    @Option(names = "--out", paramLabel = "FILE", description = "With --curve: draws it into this SVG file; where"
            + " hulls differ in skin, one file each, numbered.")
    private Optional<Path> file = Optional.empty();

    @Option(names = "--walk", description = "A second opinion: follows particles by chance from the sky to the"
            + " stations through the scene as it stands, on all cores, beside the doses that are shown.")
    private boolean walk;

    @Option(names = "--station", paramLabel = "HULL/STATION", split = ",", description = "With --walk: stations to walk"
            + " to. Default: all.")
    private List<String> stations = List.of();

    @Option(names = "--error", paramLabel = "SHARE", description = "With --walk: standard error at which walks stop, as"
            + " a share of the dose, 0.002 to 0.5. Default: 0.02.")
    private Optional<Double> error = Optional.empty();

    @Option(names = "--seed", paramLabel = "N", description = "With --walk: seed that repeats the walks. Default: 1.")
    private Optional<Long> seed = Optional.empty();

    @Override
    void check() {
        checkWalk();
        for (double depth : depths) {
            if (!(depth >= 0 && depth <= DEEPEST_GCM2)) {
                throw Options.bad("--at", Double.toString(depth), "areal densities from 0 to 1500 g/cm2");
            }
        }
        if (file.isPresent() && !(curve && file.get().toString().endsWith(SVG))) {
            throw Options.bad("--out", file.get().toString(),
                    curve ? "a file whose name ends in .svg" : "--out together with --curve");
        }
    }

    private void checkWalk() {
        String given = !stations.isEmpty() ? "--station" : error.isPresent() ? "--error" : seed.isPresent() ? "--seed"
                : "";
        if (!walk && !given.isEmpty()) {
            throw Options.bad(given, "given without --walk", given + " together with --walk");
        }
        double share = error.orElse(WALK_ERROR);
        if (!(share >= LEAST_ERROR && share <= GREATEST_ERROR)) {
            throw Options.bad("--error", Double.toString(share), "shares of the dose from 0.002 to 0.5");
        }
    }

    @Override
    Assessments.Asked asked() {
        return Assessments.Asked.DOSE;
    }

    @Override
    ObjectNode page(Assessment assessment) {
        ObjectNode page = CommonJson.of(assessment);
        ArrayNode hulls = page.putArray("hulls");
        assessment.hulls().forEach(hull -> {
            ObjectNode entry = hulls.addObject();
            entry.put("id", hull.hull().id());
            DoseJson.put(entry, hull, assessment.plan().exposure());
        });
        DoseJson.putOutside(page, assessment);
        DoseJson.putJudged(page, assessment);
        DoseJson.putCrew(page, assessment);
        DoseJson.putPeople(page, assessment);
        DoseJson.putLimits(page, assessment);
        List<CurveSheets> sheets = sheets(assessment);
        if (curve) {
            CurveJson.putCurves(page, sheets);
            ArrayNode drawings = page.putArray("drawings");
            drawn(sheets).forEach(f -> drawings.add(f.toString()));
        }
        if (composition) {
            CurveJson.putComposition(page, sheets, depths);
        }
        if (walk) {
            CommonJson.put((ArrayNode) page.get("models"), DoseWalks.model());
            JsonObjects.putAll(page, "walks", WalkAnswers.WALKS, walks(assessment));
        }
        return page;
    }

    @Override
    void text(Assessment assessment, PrintStream out) {
        CommonText.head(assessment, out);
        DoseText.write(assessment, out);
        DoseText.judged(assessment, out);
        DoseText.uncertainties(assessment, out);
        DoseText.directions(assessment, out);
        DoseText.limits(assessment, out);
        List<CurveSheets> sheets = sheets(assessment);
        if (curve) {
            sheets.forEach(s -> CurveText.curve(s.curves(), out));
            sheets.stream().findFirst().ifPresent(s -> CurveText.published(s.curves().cosmic().published(), out));
            drawn(sheets).forEach(f -> out.printf("Drawn: %s%n%n", f));
        }
        if (composition) {
            sheets.forEach(s -> CurveText.composition(s, depths, out));
        }
        if (walk) {
            DoseText.walks(walks(assessment), out);
        }
        CommonText.findings(assessment.findings(), out);
        CommonText.foot(assessment, out);
    }

    private List<WalkedDose> walks(Assessment assessment) {
        return DoseWalks.of(assessment, stations, error.orElse(WALK_ERROR), seed.orElse(1L), console().progress());
    }

    private List<CurveSheets> sheets(Assessment assessment) {
        if (!curve && !composition) {
            return List.of();
        }
        List<StationDose> stations = assessment.dose().map(d -> d.stations()).orElse(List.of());
        List<CurveSheets> sheets = new ArrayList<>();
        for (DoseAgainstCover curves : DoseCurves.of(assessment, console().progress())) {
            sheets.add(new CurveSheets(curves, stations.stream().filter(s -> curves.hulls().contains(s.hull()))
                    .toList()));
        }
        return sheets;
    }

    private List<Path> drawn(List<CurveSheets> sheets) {
        List<Path> files = new ArrayList<>();
        for (int i = 0; i < sheets.size() && file.isPresent(); i++) {
            String name = file.get().toString();
            Path target = i == 0 ? file.get()
                    : Path.of(name.substring(0, name.length() - SVG.length()) + "-" + (i + 1) + SVG);
            Options.write("--out", target, sheets.get(i).drawing().file());
            files.add(target);
        }
        return files;
    }
}
