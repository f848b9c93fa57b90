// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.Finding;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Progress;
import bermwright.foundation.Vec3;
import bermwright.shielding.dose.Band;
import bermwright.shielding.dose.DoseLimit;
import bermwright.shielding.dose.OrganDose;
import bermwright.shielding.dose.Response;
import bermwright.shielding.fold.Distribution;
import bermwright.shielding.fold.DoseUncertainty;
import bermwright.shielding.fold.FoldedDose;
import bermwright.shielding.fold.SkyPicture;
import bermwright.shielding.fold.SkyView;
import bermwright.shielding.fold.Tolerances;
import bermwright.shielding.raycast.SceneRays;
import bermwright.shielding.scene.HullPose;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Soil;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.shielding.spectrum.EventSpectrum;
import bermwright.shielding.spectrum.SolarActivity;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.site.plan.Station;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * Dose at every station of a plan under a given surface.
 *
 * @param stations the stations that lie in their hull, in the plan's order
 * @param outside  dose on open ground without any cover
 * @param event    the event that is counted, in words; says so where none is
 * @param people   effective doses of the plan's named persons, in its order; none where no station has a dose
 * @param limits   the plan's limits and the doses held against them, in the plan's order
 * @param models   models behind the doses
 * @param findings what is wrong with stations and doses
 */
public record SiteDose(List<StationDose> stations, Outside outside, String event, List<PersonDose> people,
        List<JudgedLimit> limits, List<ModelNote> models, List<Finding> findings) {
    /** Share of each dose that may stay open when rays stop being added. */
    static final double SETTLED = 0.005;
    private static final int PICTURE_SECTORS = 72;
    private static final int PICTURE_BANDS = 24;

    /**
     * Dose on open ground, for somebody who spends the whole stay and the event there.
     *
     * @param cosmic cosmic rays with the ground's return over the stay
     * @param event  the event with the ground's return
     * @param organs gray equivalents of the organs that the plan's limits name (Gy-Eq)
     */
    public record Outside(StationDose.Spread cosmic, StationDose.Spread event,
            Map<OrganDose.Organ, StationDose.BySource> organs) {
        /** Copies the organs. */
        public Outside {
            organs = Map.copyOf(organs);
        }

        /**
         * The dose in the quantity of a limit.
         *
         * @param quantity a limit's quantity
         * @return the dose by source
         */
        public StationDose.BySource in(String quantity) {
            return StationDose.BySource.in(quantity, new StationDose.BySource(cosmic, event), organs);
        }
    }

    /** Copies the lists. */
    public SiteDose {
        stations = List.copyOf(stations);
        people = List.copyOf(people);
        limits = List.copyOf(limits);
        models = List.copyOf(models);
        findings = List.copyOf(findings);
    }

    /**
     * Folds every station.
     *
     * @param plan     the plan
     * @param cover    the surface: ground and mound
     * @param sources  where responses come from
     * @param progress told how far the work has come
     * @return the doses
     */
    public static SiteDose of(Plan plan, SiteCover cover, DoseSources sources, Progress progress) {
        Folding folding = new Folding(plan, cover, sources, Map.of(), progress);
        List<StationDose> doses = folding.stations();
        List<Finding> findings = new ArrayList<>(folding.findings);
        Outside outside = outside(plan, folding.any());
        List<JudgedLimit> limits = JudgedLimit.of(plan.exposure(), JudgedLimit.People.of(plan, doses), outside,
                folding.any());
        boolean peopleStay = plan.hulls().stream().anyMatch(h -> !h.stations().isEmpty());
        findings.addAll(DoseFindings.of(doses));
        List<PersonDose> people = doses.isEmpty() ? List.of() : PersonDose.all(plan.exposure(), doses, outside);
        findings.addAll(DoseFindings.people(people));
        findings.addAll(folding.event(doses, limits));
        if (!doses.isEmpty()) {
            findings.addAll(EventFindings.way(plan.exposure(), doses, outside, limits));
        }
        findings.addAll(LimitFindings.of(limits, peopleStay));
        findings.addAll(PublishedLimits.findings(plan.exposure(), doses, outside, folding.any()
                .flatMap(DoseSources.OfHull::event).isPresent()));
        findings.addAll(LimitFindings.notByReviewer(plan.exposure(), folding.any()));
        List<ModelNote> models = new ArrayList<>(folding.models.values());
        plan.exposure().dayInForce().map(SolarActivity::note).ifPresent(models::add);
        if (!doses.isEmpty()) {
            models.add(DoseFindings.directions(doses));
        }
        LimitFindings.careerModel(plan.exposure()).filter(m -> !doses.isEmpty()).ifPresent(models::add);
        if (!people.isEmpty()) {
            models.add(PersonDose.model());
        }
        return new SiteDose(doses, outside, event(plan.exposure(), folding.any()), people, limits, models, findings);
    }

    /**
     * Folds the stations of some hulls of the same site while its cover is part-built. What nobody has covered yet is
     * not asked again: a hull stood upright before any soil was moved.
     *
     * @param lying    the plan with those of its hulls that lie by then
     * @param cover    the surface by then
     * @param sources  where responses come from
     * @param progress told how far the work has come
     * @return the stations that lie in their hull, in the plan's order
     */
    public List<StationDose> underPart(Plan lying, SiteCover cover, DoseSources sources, Progress progress) {
        Map<String, StationDose.Upright> known = new LinkedHashMap<>();
        stations.forEach(s -> known.put(s.name(), s.standing()));
        return new Folding(lying, cover, sources, known, progress).stations();
    }

    /** Dose in the open, from the responses of any hull. */
    static Outside outside(Plan plan, Optional<DoseSources.OfHull> any) {
        if (any.isEmpty()) {
            return new Outside(StationDose.Spread.NOTHING, StationDose.Spread.NOTHING, Map.of());
        }
        return new Outside(open(any.get().cosmic()).times(plan.exposure().stayDays()),
                any.get().event().map(SiteDose::open).orElse(StationDose.Spread.NOTHING),
                organs(any.get(), SiteDose::open, plan.exposure().stayDays()));
    }

    private static StationDose.Spread open(Response response) {
        double best = response.isotropicDose(0) / 2 + response.openGroundReturn() + response.soilGammas();
        Band band = new DoseUncertainty(response.band(0), response.solarBand(0), Band.NONE, Band.NONE).together();
        return new StationDose.Spread(best, best * band.low(), best * band.high());
    }

    /** The event that is counted, as a reader may take it. */
    private static String event(ExposurePlan exposure, Optional<DoseSources.OfHull> any) {
        boolean isCounted = any.flatMap(DoseSources.OfHull::event).isPresent();
        if (any.isEmpty()) {
            return "no dose is known, of an event neither";
        } else if (!isCounted) {
            return exposure.event().map(e -> "no event: \"" + e + "\" is not known here").orElse("no event");
        } else if (any.get().event().filter(Response::isHandedOver).isPresent()) {
            return "the event of a reviewer's table";
        }
        return exposure.eventFit().map(f -> "the event of " + f.name() + ", by its published fit")
                .or(() -> exposure.eventSpectrumFile().map(f -> "the event of " + f)).orElseGet(
                        () -> "the event of " + exposure.event().map(SiteDose::withKind).orElse("the plan"));
    }

    private static String withKind(String event) {
        return event + EventSpectra.kind(event).filter(k -> !k.equals(event)).map(k -> " (" + k + ")").orElse("");
    }

    /**
     * The crew's dose, sharing its time as planned, hours outside in the open counted.
     *
     * @param exposure the plan's stay
     * @return the effective dose; empty where no station has a dose
     */
    public Optional<CrewDose> crew(ExposurePlan exposure) {
        return stations.isEmpty() ? Optional.empty() : Optional.of(CrewDose.of(exposure, stations, outside));
    }

    /**
     * Whether an event is counted.
     *
     * @return false where no station's dose holds one
     */
    public boolean hasEvent() {
        return stations.stream().anyMatch(s -> s.parts().uncertainties().event().isPresent());
    }

    /**
     * Limits of published standards that a plan's own limits may be taken from.
     *
     * @return all that are known, each with the revision it was read in
     */
    public List<DoseLimit> publishedLimits() {
        return DoseLimit.all();
    }

    /** The surfaces of a plan as soil in true metres, its placed part at a density. */
    static Soil soil(Plan plan, ElevationGrid natural, ElevationGrid finished, double placedDensity) {
        return new Soil(natural, finished, placedDensity, PlanSoil.of(plan.ground()).inPlace().density());
    }

    /** Gray equivalents of the organs that limits name, each response folded alike. */
    static Map<OrganDose.Organ, StationDose.BySource> organs(DoseSources.OfHull of,
            Function<Response, StationDose.Spread> fold, double days) {
        Map<OrganDose.Organ, StationDose.BySource> organs = new EnumMap<>(OrganDose.Organ.class);
        of.organs().forEach((organ, responses) -> organs.put(organ, new StationDose.BySource(
                fold.apply(responses.cosmic()).times(days),
                responses.event().map(fold).orElse(StationDose.Spread.NOTHING))));
        return organs;
    }

    /** One run over all stations. */
    private static final class Folding {
        private final Plan plan;
        private final SiteHulls site;
        private final ElevationGrid natural;
        private final ElevationGrid finished;
        private final ElevationGrid before;
        private final DoseSources sources;
        private final Progress progress;
        private final Map<String, StationDose.Upright> upright;
        private final Map<Double, SceneRays> scenes = new LinkedHashMap<>();
        private final Map<String, ModelNote> models = new LinkedHashMap<>();
        private final Map<String, DoseSources.OfHull> responses = new LinkedHashMap<>();
        private final Map<String, ToDoubleFunction<EventSpectrum>> folds = new LinkedHashMap<>();
        private final List<Finding> findings = new ArrayList<>();

        Folding(Plan plan, SiteCover cover, DoseSources sources, Map<String, StationDose.Upright> upright,
                Progress progress) {
            this.plan = plan;
            this.upright = upright;
            this.sources = sources;
            this.progress = progress;
            before = cover.natural();
            site = new SiteHulls(plan, cover.prepared());
            natural = cover.natural() == cover.prepared() ? site.ground()
                    : site.metres().stretched(cover.natural());
            finished = site.metres().stretched(cover.finished());
        }

        List<StationDose> stations() {
            List<StationDose> doses = new ArrayList<>();
            int all = plan.hulls().stream().mapToInt(h -> h.stations().size()).sum();
            int done = 0;
            for (Hull hull : plan.hulls()) {
                Optional<HullSolid> solid = site.hull(hull.id());
                for (Station station : hull.stations()) {
                    progress.check();
                    progress.report((double) done++ / all, "dose at " + hull.named(station.id()));
                    if (solid.isPresent() && usable(hull, solid.get(), station)) {
                        doses.add(station(hull, solid.get(), station));
                    }
                }
            }
            return doses;
        }

        /** What the plan's event does not say where it is judged; nothing of a reviewer's table. */
        List<Finding> event(List<StationDose> doses, List<JudgedLimit> limits) {
            Optional<StationDose> shelter = CrewDose.shelter(doses, StationDose.QUANTITY);
            if (shelter.isEmpty()
                    || any().flatMap(DoseSources.OfHull::event).filter(r -> !r.isHandedOver()).isEmpty()) {
                return List.of();
            }
            progress.check();
            String place = shelter.get().name();
            return sources.spectrum(plan.exposure())
                    .map(event -> EventFindings.of(event, shelter.get(), limits, folds.get(place))).orElse(List.of());
        }

        private boolean usable(Hull hull, HullSolid solid, Station station) {
            Vec3 at = solid.pose().point(station.along(), station.across(), station.up());
            String subject = hull.named(station.id());
            if (!solid.contains(at)) {
                findings.add(StationFindings.outsideItsHull(hull, station, subject)
                        .at(site.metres().projected(at).plan()));
                return false;
            }
            if (Double.isNaN(finished.height(at.plan()))) {
                findings.add(StationFindings.groundUnknown(subject).at(site.metres().projected(at).plan()));
                return false;
            }
            return true;
        }

        private DoseSources.OfHull responses(Hull hull) {
            return responses.computeIfAbsent(hull.id(), id -> {
                DoseSources.OfHull made = sources.of(plan, hull);
                findings.addAll(made.findings());
                made.all().forEach(r -> models.putIfAbsent(r.note().id(), r.note()));
                made.organs().values().forEach(o -> {
                    models.putIfAbsent(o.cosmic().note().id(), o.cosmic().note());
                    o.event().ifPresent(r -> models.putIfAbsent(r.note().id(), r.note()));
                });
                return made;
            });
        }

        private StationDose station(Hull hull, HullSolid solid, Station station) {
            DoseSources.OfHull of = responses(hull);
            Vec3 at = solid.pose().point(station.along(), station.across(), station.up());
            SceneRays scene = scenes.computeIfAbsent(SiteCover.density(plan, hull), d -> SceneRays.of(
                    new Scene(soil(plan, natural, finished, d), site.solidsUnder(finished),
                            WallsOfPlan.walls(plan, site))));
            SkyView view = sources.memory().settled(scene, at, of.all(), SETTLED);
            double days = plan.exposure().stayDays();
            Tolerances off = tolerances();
            Soil soil = scene.scene().soil();
            FoldedDose cosmic = FoldedDose.of(view, of.cosmic(), soil, off);
            Optional<FoldedDose> event = of.event().map(r -> FoldedDose.of(view, r, soil, off));
            double equivalence = of.cosmic().skinEquivalence();
            Distribution distribution = Distribution.of(view, equivalence);
            StationDose.Seen seen = new StationDose.Seen(distribution.least(), distribution.median(),
                    Math.max(cosmic.shareBeyondTable(), event.map(FoldedDose::shareBeyondTable).orElse(0.0)),
                    view.shareBeyondEdge(), view.directions(), view.openShare(), distribution.thinnest(), distribution,
                    SkyPicture.of(scene, at, equivalence, PICTURE_SECTORS, PICTURE_BANDS));
            folds.put(hull.named(station.id()), e -> FoldedDose.of(view, sources.event(plan, hull, e), soil,
                    Tolerances.NONE).total());
            StationDose.Parts parts = new StationDose.Parts(cosmic.fromSky() * days,
                    event.map(FoldedDose::fromSky).orElse(0.0),
                    cosmic.groundReturn() * days + event.map(FoldedDose::groundReturn).orElse(0.0),
                    spread(cosmic).times(days), event.map(Folding::spread).orElse(StationDose.Spread.NOTHING),
                    new StationDose.Uncertainties(cosmic.uncertainty(), event.map(FoldedDose::uncertainty)),
                    organs(of, r -> spread(FoldedDose.of(view, r, soil, off)), days));
            return new StationDose(hull.id(), station.id(), site.metres().projected(at), station.stormShelter(),
                    station.occupancyShare(), upright.containsKey(hull.named(station.id()))
                            ? upright.get(hull.named(station.id())) : upright(hull, station, of, days),
                    parts, seen);
        }

        private Tolerances tolerances() {
            return new Tolerances(plan.ground().regolith().densitySpreadShare(), plan.ground().elevationSpread());
        }

        private static StationDose.Spread spread(FoldedDose dose) {
            return new StationDose.Spread(dose.total(), dose.low(), dose.high());
        }

        /** The same place of the hull as it came down, before any soil was moved. */
        private StationDose.Upright upright(Hull hull, Station station, DoseSources.OfHull of, double days) {
            Optional<HullPose> pose = site.landed(hull, before);
            if (pose.isEmpty()) {
                return StationDose.Upright.UNKNOWN;
            }
            HullSolid solid = new HullSolid(hull.id(), SiteHulls.shape(plan, hull), pose.get());
            ElevationGrid bare = natural.withPatches(List.of());
            SceneRays scene = SceneRays.of(new Scene(soil(plan, bare, bare, 1), List.of(solid)));
            Vec3 at = pose.get().point(station.along(), station.across(), station.up());
            SkyView view = sources.memory().settled(scene, at, of.all(), SETTLED);
            Soil soil = scene.scene().soil();
            return new StationDose.Upright(FoldedDose.of(view, of.cosmic(), soil, Tolerances.NONE).total() * days
                    + of.event().map(r -> FoldedDose.of(view, r, soil, Tolerances.NONE).total()).orElse(0.0),
                    view.openShare());
        }

        /** The responses of the first hull that has any. */
        Optional<DoseSources.OfHull> any() {
            return responses.values().stream().findFirst();
        }
    }
}
