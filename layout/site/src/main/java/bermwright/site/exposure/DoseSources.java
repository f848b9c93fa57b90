// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.OrganDose;
import bermwright.shielding.dose.Response;
import bermwright.shielding.dose.Responses;
import bermwright.shielding.material.Layer;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.shielding.spectrum.EventSpectrum;
import bermwright.shielding.spectrum.TabulatedSpectrum;
import bermwright.site.finding.Finding;
import bermwright.site.finding.Finding.Figures;
import bermwright.site.finding.Finding.Level;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the responses for a plan's hulls come from.
 *
 * @param responses built-in responses
 * @param directory directory of the plan file, beside which its own tables stand
 */
public record DoseSources(Responses responses, Path directory) {
    private static final String BUILT_IN = "built in";

    /**
     * The two responses of one hull.
     *
     * @param cosmic   cosmic rays, per day
     * @param event    the particle event, empty where the plan names none
     * @param organs   gray equivalents of the organs that the plan's limits name, by the built-in calculation
     * @param findings materials, events and tables that could not be used as the plan says
     */
    public record OfHull(Response cosmic, Optional<Response> event, Map<OrganDose.Organ, OfOrgan> organs,
            List<Finding> findings) {
        /** Copies organs and findings. */
        public OfHull {
            organs = Map.copyOf(organs);
            findings = List.copyOf(findings);
        }

        /**
         * Both responses.
         *
         * @return cosmic, then the event where there is one
         */
        public List<Response> all() {
            List<Response> all = new ArrayList<>();
            all.add(cosmic);
            event.ifPresent(all::add);
            return all;
        }
    }

    /**
     * The two responses of one organ.
     *
     * @param cosmic cosmic rays, per day
     * @param event  the particle event, empty where the plan names none
     */
    public record OfOrgan(Response cosmic, Optional<Response> event) {
    }

    /**
     * The responses for one hull of a plan.
     *
     * @param plan     the plan
     * @param hull     the hull
     * @param progress told how far the work has come
     * @return the responses
     * @throws InputException if a table or spectrum beside the plan cannot be read
     */
    public OfHull of(Plan plan, Hull hull, Progress progress) {
        List<Finding> findings = new ArrayList<>();
        Shield shield = shield(plan, hull, findings);
        ExposurePlan exposure = plan.exposure();
        Optional<Response> table = exposure.response().equals(BUILT_IN) ? Optional.empty()
                : Optional.of(Responses.fromTable(directory.resolve(exposure.response())));
        Response cosmic = table.filter(t -> t.per() == Response.Per.DAY)
                .orElseGet(() -> responses.cosmic(shield, exposure.modulation(), progress.part(0, 0.6)));
        Optional<Response> given = table.filter(t -> t.per() == Response.Per.EVENT);
        Optional<EventSpectrum> spectrum = spectrum(exposure, findings);
        Optional<Response> event = given.isPresent() ? given
                : spectrum.map(s -> responses.event(shield, s, progress.part(0.6, 0.8)));
        return new OfHull(cosmic, event, organs(exposure, shield, spectrum, progress.part(0.8, 1)), findings);
    }

    private Map<OrganDose.Organ, OfOrgan> organs(ExposurePlan exposure, Shield shield,
            Optional<EventSpectrum> spectrum, Progress progress) {
        Map<OrganDose.Organ, OfOrgan> organs = new EnumMap<>(OrganDose.Organ.class);
        for (LimitInForce limit : exposure.limitsInForce()) {
            progress.check();
            StationDose.organ(limit.quantity()).ifPresent(organ -> organs.computeIfAbsent(organ,
                    o -> new OfOrgan(responses.cosmicOrgan(shield, exposure.modulation(), o, Progress.NONE),
                            spectrum.map(s -> responses.eventOrgan(shield, s, o, Progress.NONE)))));
        }
        return organs;
    }

    /**
     * Dose against cover for each kind of skin in a plan: what the built-in calculation gives, whether or not the plan
     * brings a table of its own.
     *
     * @param plan     the plan
     * @param progress told how far the work has come
     * @return one entry for each kind of skin, in the plan's order; none where the plan has no hull
     * @throws InputException if a table or spectrum beside the plan cannot be read
     */
    public List<DoseAgainstCover> curves(Plan plan, Progress progress) {
        Map<Shield, List<String>> shields = new LinkedHashMap<>();
        for (Hull hull : plan.hulls()) {
            shields.computeIfAbsent(shield(plan, hull, new ArrayList<>()), s -> new ArrayList<>()).add(hull.id());
        }
        ExposurePlan exposure = plan.exposure();
        Optional<EventSpectrum> spectrum = spectrum(exposure, new ArrayList<>());
        Optional<Response> table = exposure.response().equals(BUILT_IN) ? Optional.empty()
                : Optional.of(Responses.fromTable(directory.resolve(exposure.response())));
        List<DoseAgainstCover> curves = new ArrayList<>();
        for (Map.Entry<Shield, List<String>> entry : shields.entrySet()) {
            progress.check();
            Shield shield = entry.getKey();
            progress.report((double) curves.size() / shields.size(), "dose against cover");
            curves.add(new DoseAgainstCover(entry.getValue(), shield,
                    DoseAgainstCover.SunAndSoil.of(plan),
                    responses.cosmicCurve(shield, exposure.modulation(), Progress.NONE),
                    spectrum.map(s -> new DoseAgainstCover.Event(s.name(),
                            responses.eventCurve(shield, s, Progress.NONE))), table));
        }
        return curves;
    }

    private static Shield shield(Plan plan, Hull hull, List<Finding> findings) {
        List<Layer> layers = new ArrayList<>();
        for (Hull.SkinLayer layer : hull.skin()) {
            try {
                layers.add(new Layer(Materials.named(layer.material()), layer.arealDensity()));
            } catch (IllegalArgumentException unknown) {
                layers.add(new Layer(Materials.named("aluminium"), layer.arealDensity()));
                findings.add(Finding.of("dose-material-unknown", Level.WARN, hull.id(), Figures.NONE,
                        unknown.getMessage() + ". It is counted as aluminium of the same areal density."));
            }
        }
        return Shield.of(plan.ground().regolith().composition(), layers);
    }

    private Optional<EventSpectrum> spectrum(ExposurePlan exposure, List<Finding> findings) {
        if (exposure.eventSpectrumFile().isPresent()) {
            return Optional.of(TabulatedSpectrum.read(directory.resolve(exposure.eventSpectrumFile().get())));
        }
        if (exposure.event().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(EventSpectra.named(exposure.event().get()));
        } catch (IllegalArgumentException unknown) {
            findings.add(Finding.of("dose-event-unknown", Level.REFUSE, "exposure", Figures.NONE,
                    unknown.getMessage() + ". No event is counted."));
            return Optional.empty();
        }
    }
}
