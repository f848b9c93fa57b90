// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Preparation;
import bermwright.site.plan.Wall;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * A plan with hulls in other poses: gear goes with its hull by itself, walls that hold the ends of a cover and benches
 * under a hull go with it too. A stated level of such a bench moves with the ground's height under its middle.
 */
final class MovedPlan {
    /** Places are given to a centimetre, headings to a hundredth of a degree: readable, and finer than any survey. */
    private static final double PLACES = 100;

    private final Plan plan;
    private final ElevationGrid ground;
    private final Map<String, Integer> owners;

    MovedPlan(Plan plan, ElevationGrid ground) {
        this.plan = plan;
        this.ground = ground;
        this.owners = owners(plan, ground);
    }

    /** Walls and preparations that go with a hull, by id, and the place of the hull in the plan. */
    Map<String, Integer> owners() {
        return owners;
    }

    private static Map<String, Integer> owners(Plan plan, ElevationGrid ground) {
        Map<String, Integer> owners = new HashMap<>();
        for (int i = 0; i < plan.hulls().size(); i++) {
            Hull hull = plan.hulls().get(i);
            int at = i;
            hull.cover().ifPresent(c -> {
                c.baseEndWall().ifPresent(w -> owners.putIfAbsent(w, at));
                c.farEndWall().ifPresent(w -> owners.putIfAbsent(w, at));
            });
            Point middle = hull.arrival() == Hull.Arrival.STAYS_UPRIGHT ? hull.baseCentre()
                    : hull.bed(ground.metres()).centre();
            plan.preparations().stream().filter(p -> p.kind() == Preparation.Kind.BENCH
                    || p.kind() == Preparation.Kind.TRENCH || p.kind() == Preparation.Kind.PAD)
                    .filter(p -> p.area().contains(middle)).forEach(p -> owners.putIfAbsent(p.id(), at));
        }
        return owners;
    }

    /** A pose to the digits that a plan file gives. */
    static Pose rounded(Pose pose) {
        double degrees = Math.rint(Math.toDegrees(pose.azimuth()) * PLACES) / PLACES;
        return Pose.of(new Point(Math.rint(pose.east() * PLACES) / PLACES, Math.rint(pose.north() * PLACES) / PLACES),
                Azimuth.ofDegrees(degrees));
    }

    /** The plan with its hulls in poses, one for each hull; a hull that does not move stays the very same object. */
    Plan at(List<Pose> poses) {
        List<Hull> hulls = new ArrayList<>();
        for (int i = 0; i < poses.size(); i++) {
            hulls.add(moved(plan.hulls().get(i), poses.get(i)));
        }
        List<Wall> walls = plan.walls().stream().map(w -> !owners.containsKey(w.id()) ? w : new Wall(w.id(),
                carried(w.line(), owners.get(w.id()), poses), w.height(), w.thickness(), w.annotations())).toList();
        List<Preparation> preparations = plan.preparations().stream().map(p -> !owners.containsKey(p.id()) ? p
                : carried(p, owners.get(p.id()), poses)).toList();
        return new Plan(plan.title(), plan.ground(), hulls, walls, plan.tunnels(), plan.keepOuts(), plan.corridors(),
                plan.landingPads(), preparations, plan.borrowGrounds(), plan.stockpiles(), plan.machines(),
                plan.exposure(), plan.rules(), plan.orderOfWork(), plan.arrangeWithin(), plan.annotations());
    }

    static Hull moved(Hull hull, Pose pose) {
        return Pose.of(hull).equals(pose) ? hull : hull.withBaseCentre(new Point(pose.east(), pose.north()))
                .withLayDownAzimuth(new Azimuth(pose.azimuth()));
    }

    private Preparation carried(Preparation made, int owner, List<Pose> poses) {
        Ring area = new Ring(carried(made.area().corners(), owner, poses));
        double rise = ground.height(area.centre()) - ground.height(made.area().centre());
        OptionalDouble level = made.level().isPresent() && Double.isFinite(rise)
                ? OptionalDouble.of(Math.rint((made.level().getAsDouble() + rise) * PLACES) / PLACES) : made.level();
        return new Preparation(made.id(), made.kind(), area, level, made.greatestGrade(), made.sideSlope(),
                made.annotations());
    }

    private List<Point> carried(List<Point> places, int owner, List<Pose> poses) {
        Pose from = Pose.of(plan.hulls().get(owner));
        Pose to = poses.get(owner);
        if (from.equals(to)) {
            return places;
        }
        return places.stream().map(p -> {
            double dx = p.east() - from.east();
            double dy = p.north() - from.north();
            Point at = to.place(dx * from.sine() + dy * from.cosine(), -dx * from.cosine() + dy * from.sine());
            return new Point(Math.rint(at.east() * PLACES) / PLACES, Math.rint(at.north() * PLACES) / PLACES);
        }).toList();
    }
}
