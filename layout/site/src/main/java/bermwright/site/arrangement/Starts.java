// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.site.clearance.QuickClearance;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * Starts for the search from a coarse raster: for each hull that leads, the places and headings where it may lie by
 * itself, cheapest first; then one after the other is set down where it clears those before it.
 *
 * <p>The raster lies about the middle of the area and its entries are put in the order of a frame that turns with the
 * plan, so that a turned or moved plan has the same starts.
 */
final class Starts {
    /** About so many places are looked at, and headings at each. */
    private static final int PLACES = 500;
    private static final int HEADINGS = 8;
    private static final double CLOSEST = 4;
    /** How many places are tried for a hull before the one that lacks least is taken. */
    private static final int TRIES = 400;
    /** How many places that seem right are asked about space and lowering, for a hull in a start. */
    private static final int SCREENED = 16;
    /** How far chance may make a place look dearer than it is. */
    private static final double CHANCE = 0.35;
    private static final double ORDER = 1e3;
    /** What a place counts that space or lowering refuses (m): little, for a metre aside it may be right. */
    private static final double REFUSED = 1;

    private final QuickSite site;
    private final Groups groups;
    private final Map<Integer, List<Spot>> spots = new HashMap<>();
    private final Map<String, Boolean> screened = new ConcurrentHashMap<>();
    private final int feasible;

    private record Spot(Pose pose, Estimate estimate) {
    }

    private Starts(QuickSite site, Groups groups, Progress progress) {
        this.site = site;
        this.groups = groups;
        List<Integer> leading = groups.movable().stream().filter(groups::isLead).toList();
        List<Pose> raster = raster();
        int done = 0;
        for (int lead : leading) {
            progress.check();
            progress.report((double) done++ / leading.size(), "raster of places for "
                    + site.plan().hulls().get(lead).id());
            List<Estimate> looked = IntStream.range(0, raster.size()).parallel()
                    .mapToObj(i -> site.alone(lead, raster.get(i))).toList();
            List<Spot> all = new ArrayList<>();
            for (int i = 0; i < raster.size(); i++) {
                all.add(new Spot(raster.get(i), looked.get(i)));
            }
            spots.put(lead, all);
        }
        this.feasible = spots.values().stream().mapToInt(l -> (int) l.stream().filter(s -> s.estimate.isAllowed())
                .count()).min().orElse(0);
    }

    static Starts of(QuickSite site, Groups groups, Progress progress) {
        return new Starts(site, groups, progress);
    }

    /** Places and headings of the raster where the hull that has fewest may lie by itself. */
    int feasible() {
        return feasible;
    }

    /** Whether nothing of clearance in space and of lowering refuses a group there by itself. */
    private boolean isScreened(int lead, int spot, List<Pose> poses) {
        return screened.computeIfAbsent(lead + " " + spot, k -> groups.movable().stream()
                .filter(h -> groups.lead(h) == lead).allMatch(h -> site.screenedAlone(h,
                        MovedPlan.rounded(poses.get(h))).isEmpty()));
    }

    private List<Pose> raster() {
        GridFrame f = site.ground().frame();
        Ring.Box box = site.plan().arrangeWithin().map(Ring::box)
                .orElse(new Ring.Box(f.west(), f.south(), f.eastEdge(), f.northEdge()));
        double width = box.east() - box.west();
        double height = box.north() - box.south();
        double step = Math.max(CLOSEST / site.scale(), Math.sqrt(width * height / PLACES));
        Point middle = new Point((box.west() + box.east()) / 2, (box.south() + box.north()) / 2);
        int across = (int) Math.floor(width / 2 / step);
        int up = (int) Math.floor(height / 2 / step);
        List<Pose> raster = new ArrayList<>();
        for (int row = -up; row <= up; row++) {
            for (int column = -across; column <= across; column++) {
                Point place = new Point(middle.east() + column * step, middle.north() + row * step);
                for (int k = 0; k < HEADINGS; k++) {
                    raster.add(Pose.of(place, new Azimuth(2 * Math.PI * k / HEADINGS)));
                }
            }
        }
        Pose from = groups.origin();
        raster.sort(Comparator.comparingLong((Pose p) -> Math.round(ORDER * seen(from, p).east()))
                .thenComparingLong(p -> Math.round(ORDER * seen(from, p).north()))
                .thenComparingLong(p -> Math.round(ORDER * Groups.turn(p.azimuth() - from.azimuth() + 0.01))));
        return raster;
    }

    private static Point seen(Pose from, Pose to) {
        return Groups.seen(from, new Point(to.east(), to.north()));
    }

    /** A start: hulls with most soil first, each at one of its cheapest places that clears what is there. */
    List<Pose> start(RandomGenerator random, Weights weights) {
        List<Pose> poses = new ArrayList<>(site.planned());
        groups.movable().forEach(h -> poses.set(h, QuickSite.away(poses.get(h), h)));
        List<Integer> leading = new ArrayList<>(groups.movable().stream().filter(groups::isLead).toList());
        leading.sort(Comparator.comparingDouble((Integer h) -> -site.coverAlone(h)));
        Map<Integer, Pose> relative = relative();
        // Hulls whose lead is held are set down by it at once.
        groups.movable().stream().filter(h -> !site.movable().contains(groups.lead(h)))
                .forEach(h -> poses.set(h, carried(poses.get(groups.lead(h)), relative.get(h))));
        for (int lead : leading) {
            setDown(lead, poses, relative, random, weights);
        }
        return poses;
    }

    private void setDown(int lead, List<Pose> poses, Map<Integer, Pose> relative, RandomGenerator random,
            Weights weights) {
        List<Spot> own = spots.get(lead);
        double[] cost = new double[own.size()];
        for (int i = 0; i < cost.length; i++) {
            Estimate e = own.get(i).estimate;
            double hours = weights.soil() > weights.hours() ? Math.sqrt(1 + e.hours()) : 1 + e.hours();
            cost[i] = (hours + 1e4 * e.shortfall()) * (1 + CHANCE * random.nextDouble());
        }
        List<Integer> order = IntStream.range(0, cost.length).boxed()
                .sorted(Comparator.comparingDouble(i -> cost[i])).limit(TRIES).toList();
        List<Pose> best = poses;
        double least = Double.POSITIVE_INFINITY;
        int asked = 0;
        for (int i : order) {
            List<Pose> tried = new ArrayList<>(poses);
            tried.set(lead, own.get(i).pose);
            relative.forEach((hull, from) -> {
                if (groups.lead(hull) == lead) {
                    tried.set(hull, carried(own.get(i).pose, from));
                }
            });
            double lacks = lacking(lead, tried);
            if (lacks <= 0 && asked < SCREENED && !isScreened(lead, i, tried)) {
                asked++;
                lacks = REFUSED;
            }
            if (lacks < least) {
                least = lacks;
                best = tried;
            }
            if (lacks <= 0) {
                break;
            }
        }
        for (int i = 0; i < best.size(); i++) {
            poses.set(i, best.get(i));
        }
    }

    /** What a group lacks by itself and against what is set down. */
    private double lacking(int lead, List<Pose> poses) {
        double lacks = site.clearance().check(poses, new double[poses.size()]).shortfall();
        for (int hull : groups.movable()) {
            lacks += groups.lead(hull) == lead ? site.alone(hull, poses.get(hull)).shortfall() : 0;
        }
        return lacks;
    }

    private static Pose carried(Pose lead, Pose relative) {
        return Pose.of(lead.place(relative.east(), relative.north()),
                new Azimuth(lead.azimuth() + relative.azimuth()));
    }

    /** Poses of hulls that follow, from their leads: as planned where that clears, else hatch to hatch. */
    private Map<Integer, Pose> relative() {
        Map<Integer, Pose> relative = new HashMap<>();
        List<Pose> planned = site.planned();
        for (int hull : groups.movable()) {
            if (!groups.isLead(hull)) {
                Pose lead = planned.get(groups.lead(hull));
                Point seen = seen(lead, planned.get(hull));
                relative.put(hull, Pose.of(seen, new Azimuth(planned.get(hull).azimuth() - lead.azimuth())));
            }
        }
        List<QuickClearance.TunnelState> states = site.clearance().tunnelStates(planned);
        boolean apart = states.stream().anyMatch(t -> t.length() > QuickSite.TUNNEL_ALWAYS);
        return apart ? HatchToHatch.relative(site, groups, relative) : relative;
    }
}
