// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.DoseRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.HandedOver;
import bermwright.shielding.dose.OrganDose;
import bermwright.shielding.dose.Response;
import bermwright.shielding.dose.Responses;
import bermwright.shielding.dose.WalkSource;
import bermwright.shielding.fold.SkyMemory;
import bermwright.shielding.material.Layer;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.shielding.spectrum.EventSpectrum;
import bermwright.shielding.spectrum.TabulatedSpectrum;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Stowage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * Where the responses for a plan's hulls come from; a built-in one is made once for hulls of one skin. It also
 * remembers what stations saw, so that one that is used again after a change works out what changed, and no more.
 */
public final class DoseSources {
    private static final String BUILT_IN = "built in";
    /** Responses that are kept at most. */
    private static final int MOST_MADE = 200;

    private final Responses responses;
    private final Path directory;
    private final Map<BuiltIn, Response> made = new HashMap<>();
    private final SkyMemory memory = new SkyMemory();

    /**
     * Sources of responses.
     *
     * @param responses built-in responses
     * @param directory directory of the plan file, beside which its own tables stand
     */
    public DoseSources(Responses responses, Path directory) {
        this.responses = Objects.requireNonNull(responses, "responses");
        this.directory = Objects.requireNonNull(directory, "directory");
    }

    /** What stations saw in earlier scenes; only what changed is looked along again. */
    SkyMemory memory() {
        return memory;
    }

    /**
     * The directory beside which tables are looked for.
     *
     * @return that of the plan file
     */
    public Path directory() {
        return directory;
    }

    /** A built-in response: to a sun or an event, as effective dose or for an organ. */
    private record BuiltIn(Shield shield, Object source, Optional<OrganDose.Organ> organ) {
    }

    private synchronized Response made(BuiltIn key, Supplier<Response> make) {
        Response kept = made.get(key);
        if (kept == null) {
            kept = make.get();
            if (made.size() >= MOST_MADE) {
                made.clear();
            }
            made.put(key, kept);
        }
        return kept;
    }

    /**
     * The two responses of one hull.
     *
     * @param cosmic   cosmic rays, per day
     * @param event    the particle event, empty where the plan names none
     * @param organs   gray equivalents of the organs that the plan's limits name
     * @param findings materials, events and tables that could not be used as the plan says
     */
    public record OfHull(Response cosmic, Optional<Response> event, Map<OrganDose.Organ, OfQuantity> organs,
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

        /**
         * The responses in the quantity of a limit.
         *
         * @param quantity a limit's quantity
         * @return the two responses
         */
        OfQuantity in(String quantity) {
            return StationDose.organ(quantity).map(organs::get).orElseGet(() -> new OfQuantity(cosmic, event));
        }

        /** Whether a reviewer handed over any of the responses. */
        boolean isReviewed() {
            return Stream.concat(Stream.of(new OfQuantity(cosmic, event)), organs.values().stream())
                    .anyMatch(o -> o.cosmic.isHandedOver() || o.event.filter(Response::isHandedOver).isPresent());
        }
    }

    /**
     * The two responses of one quantity.
     *
     * @param cosmic cosmic rays, per day
     * @param event  the particle event, empty where the plan names none
     */
    public record OfQuantity(Response cosmic, Optional<Response> event) {
    }

    /**
     * The responses for one hull of a plan.
     *
     * @param plan the plan
     * @param hull the hull
     * @return the responses
     * @throws InputException if a table or spectrum beside the plan cannot be read
     */
    public OfHull of(Plan plan, Hull hull) {
        List<Finding> findings = new ArrayList<>();
        Shield shield = shield(plan, hull, findings);
        ExposurePlan exposure = plan.exposure();
        List<HandedOver> tables = tables(exposure, findings);
        Response cosmic = table(tables, StationDose.QUANTITY, Response.Per.DAY)
                .orElseGet(() -> made(new BuiltIn(shield, exposure.sun(), Optional.empty()),
                        () -> responses.cosmic(shield, exposure.sun(), Progress.NONE)));
        Optional<EventSpectrum> spectrum = spectrum(exposure, findings);
        Optional<Response> event = table(tables, StationDose.QUANTITY, Response.Per.EVENT)
                .or(() -> spectrum.map(s -> event(shield, s)));
        return new OfHull(cosmic, event, organs(exposure, shield, spectrum, tables), findings);
    }

    private Map<OrganDose.Organ, OfQuantity> organs(ExposurePlan exposure, Shield shield,
            Optional<EventSpectrum> spectrum, List<HandedOver> tables) {
        Map<OrganDose.Organ, OfQuantity> organs = new EnumMap<>(OrganDose.Organ.class);
        for (LimitInForce limit : exposure.limitsInForce()) {
            StationDose.organ(limit.quantity()).ifPresent(organ -> organs.computeIfAbsent(organ,
                    o -> new OfQuantity(table(tables, o.quantity(), Response.Per.DAY)
                            .orElseGet(() -> made(new BuiltIn(shield, exposure.sun(), Optional.of(o)),
                                    () -> responses.cosmicOrgan(shield, exposure.sun(), o, Progress.NONE))),
                            table(tables, o.quantity(), Response.Per.EVENT).or(() -> spectrum.map(
                                    s -> made(new BuiltIn(shield, s, Optional.of(o)),
                                            () -> responses.eventOrgan(shield, s, o, Progress.NONE)))))));
        }
        return organs;
    }

    private static Optional<Response> table(List<HandedOver> tables, String quantity, Response.Per per) {
        return tables.stream().filter(t -> t.quantity().equals(quantity) && t.response().per() == per).findFirst()
                .map(HandedOver::response);
    }

    /** The tables beside the plan, at most one for each quantity and time. */
    private List<HandedOver> tables(ExposurePlan exposure, List<Finding> findings) {
        List<HandedOver> tables = new ArrayList<>();
        own(exposure).ifPresent(own -> tables.add(new HandedOver(StationDose.QUANTITY, own,
                InputException.Place.of(exposure.response()))));
        for (String name : exposure.moreResponses()) {
            HandedOver read = Responses.handedOver(beside(name, "exposure.more_responses"));
            if (table(tables, read.quantity(), read.response().per()).isPresent()) {
                throw InputException.badValue(read.place(), read.quantity() + ", given already by another table",
                        "one table for each quantity and time");
            }
            tables.add(read);
            if (StationDose.organ(read.quantity()).isPresent()
                    && exposure.limitsInForce().stream().noneMatch(l -> l.quantity().equals(read.quantity()))) {
                findings.add(Finding.of(DoseRule.DOSE_TABLE_UNUSED, Level.NOTE, "exposure", Figures.NONE, "The table "
                        + name
                        + " gives the " + read.quantity() + ", on which the plan has no limit; it is not used."));
            }
        }
        return tables;
    }

    /** The response that the plan takes in place of the built-in one. */
    private Optional<Response> own(ExposurePlan exposure) {
        return exposure.response().equals(BUILT_IN) ? Optional.empty()
                : Optional.of(Responses.fromTable(beside(exposure.response(), "exposure.response")));
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
        Optional<EventSpectrum> spectrum = spectrum(exposure);
        Optional<Response> table = own(exposure);
        List<DoseAgainstCover> curves = new ArrayList<>();
        for (Map.Entry<Shield, List<String>> entry : shields.entrySet()) {
            progress.check();
            Shield shield = entry.getKey();
            progress.report((double) curves.size() / shields.size(), "dose against cover");
            curves.add(new DoseAgainstCover(entry.getValue(), shield,
                    DoseAgainstCover.SunAndSoil.of(plan),
                    responses.cosmicCurve(shield, exposure.sun(), Progress.NONE),
                    spectrum.map(s -> new DoseAgainstCover.Event(s.name(),
                            responses.eventCurve(shield, s, Progress.NONE))), table));
        }
        return curves;
    }

    private Path beside(String name, String key) {
        InputException.Place place = new InputException.Place("", 0, key);
        Path file = InputException.beside(directory, name, place);
        InputException.checkRegular(place, file, "a table beside the plan");
        return file;
    }

    private static Shield shield(Plan plan, Hull hull, List<Finding> findings) {
        List<Layer> layers = new ArrayList<>();
        for (Hull.SkinLayer layer : hull.skin()) {
            layers.add(layer(hull, layer.material(), layer.arealDensity(), findings));
        }
        for (Stowage stowage : hull.stowage()) {
            layer(hull, stowage.material(), stowage.arealDensity(), findings);
        }
        return Shield.of(plan.ground().regolith().composition(), layers);
    }

    private static Layer layer(Hull hull, String material, double arealDensity, List<Finding> findings) {
        try {
            return new Layer(Materials.named(material), arealDensity);
        } catch (IllegalArgumentException unknown) {
            findings.add(Finding.of(DoseRule.DOSE_MATERIAL_UNKNOWN, Level.WARN, hull.id(), Figures.NONE,
                    unknown.getMessage() + ". It is counted as aluminium of the same areal density."));
            return new Layer(Materials.named("aluminium"), arealDensity);
        }
    }

    /** What stands against a hull's wall as so much more of its skin (kg/m2), by the stopping of protons in both. */
    static double asSkin(Plan plan, Hull hull, Stowage stowage) {
        Shield alone = Shield.of(plan.ground().regolith().composition(),
                List.of(layer(hull, stowage.material(), stowage.arealDensity(), new ArrayList<>())));
        return stowage.arealDensity() * Responses.skinEquivalence(alone)
                / Responses.skinEquivalence(shield(plan, hull, new ArrayList<>()));
    }

    /**
     * The particle event of a plan.
     *
     * @param plan the plan
     * @return its spectrum; empty where the plan names none or one that is not known
     * @throws InputException if its file cannot be read
     */
    public Optional<EventSpectrum> event(Plan plan) {
        return spectrum(plan.exposure());
    }

    /** The protons of the plan's event, where the built-in calculation knows it. */
    Optional<EventSpectrum> spectrum(ExposurePlan exposure) {
        return spectrum(exposure, new ArrayList<>());
    }

    /** The built-in response of one hull to any event. */
    Response event(Plan plan, Hull hull, EventSpectrum event) {
        return event(shield(plan, hull, new ArrayList<>()), event);
    }

    private Response event(Shield shield, EventSpectrum event) {
        return made(new BuiltIn(shield, event, Optional.empty()),
                () -> responses.event(shield, event, Progress.NONE));
    }

    /** What walks back from a hull's stations go by: cosmic rays, drawn by the field at a depth (kg/m2). */
    WalkSource cosmicWalk(Plan plan, Hull hull, double depth, Progress progress) {
        return responses.cosmicWalk(shield(plan, hull, new ArrayList<>()), plan.exposure().sun(), depth, progress);
    }

    /** The same for the plan's event, where it has one. */
    Optional<WalkSource> eventWalk(Plan plan, Hull hull, double depth, Progress progress) {
        return spectrum(plan.exposure()).map(event -> responses.eventWalk(shield(plan, hull, new ArrayList<>()),
                event, depth, progress));
    }

    private Optional<EventSpectrum> spectrum(ExposurePlan exposure, List<Finding> findings) {
        if (exposure.eventFit().isPresent()) {
            return Optional.of(exposure.eventFit().get().spectrum());
        }
        if (exposure.eventSpectrumFile().isPresent()) {
            return Optional.of(TabulatedSpectrum.read(beside(exposure.eventSpectrumFile().get(),
                    "exposure.event_spectrum_file")));
        }
        if (exposure.event().isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(EventSpectra.named(exposure.event().get()));
        } catch (IllegalArgumentException unknown) {
            findings.add(Finding.of(DoseRule.DOSE_EVENT_UNKNOWN, Level.REFUSE, "exposure", Figures.NONE,
                    unknown.getMessage() + ". No event is counted."));
            return Optional.empty();
        }
    }
}
