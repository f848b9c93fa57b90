// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.Finding;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Vec3;
import bermwright.shielding.cover.CoverThickness;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.EndCover;
import bermwright.shielding.cover.Mound;
import bermwright.shielding.dose.OrganDose;
import bermwright.shielding.fold.FoldedDose;
import bermwright.shielding.fold.SkyView;
import bermwright.shielding.fold.Tolerances;
import bermwright.shielding.raycast.SceneRays;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Soil;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Station;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Tries covers of other thickness on a plan's hulls: the mound's volume and the dose at every station.
 *
 * <p>Works on a window of the ground around the hulls, beyond which it is taken as level; what is found with it is to
 * be confirmed on the whole ground.
 */
public final class CoverTrial {
    /** Ground kept around the hulls (m). */
    private static final double WINDOW = 90;
    /** Trials settle a little more coarsely than the doses that are handed out: share of a dose that may stay open. */
    public static final double SETTLED = 0.01;

    /** Nodes of a mound that is tried (m): twice as far apart as those of one that is handed out. */
    private static final double NODES = 0.5;

    private final Plan plan;
    private final SiteHulls site;
    private final ElevationGrid natural;
    private final ElevationGrid prepared;
    private final List<CoveredHull> planned;
    private final Map<String, DoseSources.OfHull> responses = new HashMap<>();

    private CoverTrial(Plan plan, ElevationGrid natural, ElevationGrid prepared) {
        this.plan = plan;
        this.natural = natural;
        this.prepared = prepared;
        site = new SiteHulls(plan, prepared);
        planned = site.covered();
    }

    /**
     * Makes a plan ready for trials.
     *
     * @param plan     the plan
     * @param natural  the ground before any work
     * @param prepared the ground after benches and trenches
     * @param sources  where responses come from
     * @param progress told how far the work has come
     * @return the trials
     */
    public static CoverTrial of(Plan plan, ElevationGrid natural, ElevationGrid prepared, DoseSources sources,
            Progress progress) {
        CoverTrial trial = new CoverTrial(plan, window(plan, natural), natural == prepared ? window(plan, natural)
                : window(plan, prepared));
        int done = 0;
        for (Hull hull : plan.hulls()) {
            progress.check();
            progress.report((double) done++ / plan.hulls().size(), "response of " + hull.id());
            trial.responses.put(hull.id(), sources.of(plan, hull));
        }
        return trial;
    }

    private static ElevationGrid window(Plan plan, ElevationGrid grid) {
        double west = Double.POSITIVE_INFINITY;
        double south = Double.POSITIVE_INFINITY;
        double east = Double.NEGATIVE_INFINITY;
        double north = Double.NEGATIVE_INFINITY;
        for (Hull hull : plan.hulls()) {
            Point one = hull.lyingBase(grid.metres());
            Point other = grid.metres().moved(one, hull.layDownAzimuth(), hull.length(), 0);
            west = Math.min(west, Math.min(one.east(), other.east()));
            east = Math.max(east, Math.max(one.east(), other.east()));
            south = Math.min(south, Math.min(one.north(), other.north()));
            north = Math.max(north, Math.max(one.north(), other.north()));
        }
        GridFrame f = grid.frame();
        Point low = new Point(Math.max(f.west(), west - WINDOW), Math.max(f.south(), south - WINDOW));
        Point high = new Point(Math.min(f.eastEdge(), east + WINDOW), Math.min(f.northEdge(), north + WINDOW));
        boolean holds = high.east() - low.east() > 2 * f.spacing() && high.north() - low.north() > 2 * f.spacing();
        return holds ? grid.window(low, high) : grid;
    }

    /**
     * What one trial gives.
     *
     * @param volume    soil placed (m3)
     * @param stations  dose at each station that lies in its hull
     * @param offGround whether the mound runs off the ground
     */
    public record Outcome(double volume, List<At> stations, boolean offGround) {
        /** Copies the list. */
        public Outcome {
            stations = List.copyOf(stations);
        }
    }

    /**
     * Dose at one station in a trial.
     *
     * @param hull    the hull
     * @param station the station
     * @param cosmic  cosmic rays with the ground's return over the stay
     * @param event   the event with the ground's return
     * @param organs  gray equivalents of the organs that the plan's limits name (Gy-Eq)
     * @param open    share of a dose that may still be open after all directions looked along (1); settled up to
     *                {@link #SETTLED}
     */
    public record At(String hull, Station station, StationDose.Spread cosmic, StationDose.Spread event,
            Map<OrganDose.Organ, StationDose.BySource> organs, double open) implements CrewDose.Stay {
        @Override
        public String name() {
            return hull + "/" + station.id();
        }

        @Override
        public double occupancyShare() {
            return station.occupancyShare();
        }

        @Override
        public boolean stormShelter() {
            return station.stormShelter();
        }

        /**
         * The dose in the quantity of a limit.
         *
         * @param quantity a limit's quantity
         * @return the dose by source
         */
        @Override
        public StationDose.BySource in(String quantity) {
            return StationDose.BySource.in(quantity, new StationDose.BySource(cosmic, event), organs);
        }
    }

    /**
     * Tries a thickness on each hull; hulls that are left out keep the plan's.
     *
     * @param thickness thickness by hull
     * @param closed    hulls whose ends are to be covered, whatever the plan says
     * @return the outcome
     */
    public Outcome with(Map<String, CoverThickness> thickness, Set<String> closed) {
        Mound mound = mound(thickness, closed);
        double open = new PassThroughs(plan, site).states(mound.finished()).stream()
                .mapToDouble(PassedThrough::displaced).sum();
        return new Outcome(mound.placedVolume() - open, doses(mound.finished()), mound.runsOffTheGround());
    }

    /**
     * The soil that covers of some thickness take, without looking at any dose.
     *
     * @param thickness thickness by hull
     * @return soil placed for each hull and tunnel (m3), by id; soil that two share counts for one of them
     */
    public Map<String, Double> volumes(Map<String, CoverThickness> thickness) {
        Mound mound = mound(thickness, Set.of());
        Map<String, Double> volumes = new HashMap<>();
        for (int i = 0; i < mound.hulls().size(); i++) {
            volumes.put(mound.hulls().get(i).hull().id(), mound.placedVolume(i));
        }
        return volumes;
    }

    /**
     * Dose on open ground.
     *
     * @return the dose of somebody who spends the whole stay there
     */
    public SiteDose.Outside outside() {
        return SiteDose.outside(plan, responses.values().stream().findFirst());
    }

    private Mound mound(Map<String, CoverThickness> thickness, Set<String> closed) {
        List<CoveredHull> covers = new ArrayList<>();
        for (CoveredHull hull : planned) {
            CoverThickness wanted = thickness.getOrDefault(hull.hull().id(), hull.thickness());
            boolean close = closed.contains(hull.hull().id());
            covers.add(new CoveredHull(hull.hull(), wanted, close ? EndCover.COVERED : hull.base(),
                    close ? EndCover.COVERED : hull.far(), hull.crownWidth()));
        }
        return SiteCover.mound(plan, site, covers, closed, NODES);
    }

    /**
     * Tries the plan's covers thinned on some hulls, the others kept.
     *
     * @param hulls the hulls
     * @param share share of the planned thickness (1), zero or more
     * @return the outcome
     */
    public Outcome thinned(Set<String> hulls, double share) {
        return with(thinner(hulls, share), Set.of());
    }

    private Map<String, CoverThickness> thinner(Set<String> hulls, double share) {
        Map<String, CoverThickness> thickness = new HashMap<>();
        planned.stream().filter(c -> share != 1 && hulls.contains(c.hull().id()))
                .forEach(c -> thickness.put(c.hull().id(), c.thickness().times(share)));
        return thickness;
    }

    /**
     * Tries all of the plan's covers, those of tunnels too, at a share of their thickness.
     *
     * @param share share of the planned thickness (1), zero or more
     * @return the outcome
     */
    public Outcome scaled(double share) {
        return thinned(planned.stream().map(c -> c.hull().id()).collect(Collectors.toSet()), share);
    }

    /**
     * Tries the hulls as they lie, without any cover on the site.
     *
     * @return the outcome
     */
    public Outcome bare() {
        return new Outcome(0, doses(site.ground()), false);
    }

    /**
     * What cosmic rays give at every station under the plan's covers thinned on some hulls, the others kept.
     *
     * @param hulls the hulls
     * @param share share of the planned thickness (1), zero or more; 1 leaves the plan's covers
     * @return best value over the stay (Sv), by hull/station
     */
    Map<String, Double> cosmic(Set<String> hulls, double share) {
        return cosmic(mound(thinner(hulls, share), Set.of()).finished());
    }

    /** The same without any cover on the site. */
    Map<String, Double> cosmicBare() {
        return cosmic(site.ground());
    }

    private Map<String, Double> cosmic(ElevationGrid finished) {
        Map<String, Double> doses = new ConcurrentHashMap<>();
        look(finished).forEach(s -> doses.put(s.place.hull.named(s.place.station.id()),
                FoldedDose.of(s.view, s.of.cosmic(), s.soil, Tolerances.NONE).total() * plan.exposure().stayDays()));
        return doses;
    }

    private List<At> doses(ElevationGrid finished) {
        return look(finished).map(this::fold).toList();
    }

    /** What a station sees, and what its dose is folded with. */
    private record Seen(Place place, SkyView view, DoseSources.OfHull of, Soil soil) {
    }

    private Stream<Seen> look(ElevationGrid finished) {
        Map<Double, SceneRays> scenes = new HashMap<>();
        for (Hull hull : plan.hulls()) {
            scenes.computeIfAbsent(SiteCover.density(plan, hull), d -> SceneRays.of(new Scene(
                    SiteDose.soil(plan, stretchedNatural(), finished, d), site.solidsUnder(finished),
                    WallsOfPlan.walls(plan, site))));
        }
        List<Place> places = places();
        return places.parallelStream().map(p -> look(p, scenes.get(SiteCover.density(plan, p.hull))));
    }

    private ElevationGrid stretchedNatural() {
        return natural == prepared ? site.ground() : site.metres().stretched(natural);
    }

    private record Place(Hull hull, Station station, Vec3 at) {
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (Hull hull : plan.hulls()) {
            for (Station station : hull.stations()) {
                site.hull(hull.id()).map(HullSolid::pose)
                        .map(p -> p.point(station.along(), station.across(), station.up()))
                        .filter(at -> site.hull(hull.id()).orElseThrow().contains(at))
                        .ifPresent(at -> places.add(new Place(hull, station, at)));
            }
        }
        return places;
    }

    private Seen look(Place place, SceneRays scene) {
        DoseSources.OfHull of = responses.get(place.hull.id());
        return new Seen(place, SkyView.settled(scene, place.at, of.all(), SETTLED), of, scene.scene().soil());
    }

    private At fold(Seen seen) {
        DoseSources.OfHull of = seen.of;
        Tolerances off = new Tolerances(plan.ground().regolith().densitySpreadShare(),
                plan.ground().elevationSpread());
        FoldedDose cosmic = FoldedDose.of(seen.view, of.cosmic(), seen.soil, off);
        StationDose.Spread event = of.event().map(r -> spread(FoldedDose.of(seen.view, r, seen.soil, off)))
                .orElse(StationDose.Spread.NOTHING);
        return new At(seen.place.hull.id(), seen.place.station, spread(cosmic).times(plan.exposure().stayDays()),
                event, SiteDose.organs(of, r -> spread(FoldedDose.of(seen.view, r, seen.soil, off)),
                plan.exposure().stayDays()), seen.view.openShare());
    }

    private static StationDose.Spread spread(FoldedDose dose) {
        return new StationDose.Spread(dose.total(), dose.low(), dose.high());
    }

    /**
     * Why no verdict on a limit can rest on these trials.
     *
     * @param limit the limit
     * @return the reason; empty where a verdict can
     */
    public String whyNot(LimitInForce limit) {
        Set<String> known = places().stream().map(p -> p.hull.named(p.station.id()))
                .collect(Collectors.toSet());
        List<String> without = plan.hulls().stream().flatMap(h -> h.stations().stream()
                .map(s -> h.named(s.id()))).filter(id -> !known.contains(id)).toList();
        String people = JudgedLimit.People.why(without, known.isEmpty());
        boolean hasEvent = responses.values().stream().allMatch(r -> r.in(limit.quantity()).event().isPresent());
        return !plan.exposure().judges(limit) ? LimitFindings.NO_STAY : !people.isEmpty() ? people
                : LimitFindings.noEvent(plan.exposure(), limit, hasEvent);
    }

    /**
     * Says of each limit which of its doses are not by the reviewer's own response.
     *
     * @return a warning for each; none where the plan brings no response of its own
     */
    public List<Finding> notByReviewer() {
        return LimitFindings.notByReviewer(plan.exposure(), responses.values().stream().findFirst());
    }

    /**
     * The hulls that have a cover in the plan and lie on known ground.
     *
     * @return their ids, in the plan's order
     */
    public List<String> covered() {
        Set<String> tunnels = new HashSet<>();
        plan.tunnels().forEach(t -> tunnels.add(t.id()));
        return planned.stream().map(c -> c.hull().id()).filter(id -> !tunnels.contains(id)).toList();
    }
}
