// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.site.clearance.Clearance;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.ElevationGrid;

/**
 * How far the ground of some places stands in the way of a hull that is laid down, enough to search by.
 *
 * <p>As the full check in space has it: ground over the bed counts where it stops the hull while that is steeper than
 * it may lie, and beside the hull where it would catch its flank. Ground at the pivot line that stands over the bed
 * lifts the hull.
 */
final class SampledSweep {
    private static final int AHEAD = 20;
    private static final int LEFT = 6;
    /** A round body is caught by its flank thirty degrees up, over nine tenths of its radius and beyond. */
    private static final double FLANK = 1 - Math.cos(Math.toRadians(30));
    private static final double BESIDE = 0.9;
    /** As if the hull swung by this much more (m): the places looked at are some metres apart. */
    private static final double ROOM = 0.3;

    private final ElevationGrid ground;
    private final double scale;
    private final double steepest;

    SampledSweep(ElevationGrid ground, double steepest) {
        this.ground = ground;
        this.scale = ground.metreScale();
        this.steepest = Math.tan(steepest);
    }

    /** Metres by which the ground stands too high in the sweep; nothing where it does not, or is not known. */
    double inTheWay(Hull hull, Pose pose, SampledBed bed) {
        if (hull.arrival() != Hull.Arrival.LOWERED) {
            return 0;
        }
        Look look = new Look(hull, pose, bed);
        double margin = hull.lowering().map(g -> g.margin()).orElse(0.0) + ROOM;
        double wander = Math.sin(hull.lowering().map(g -> g.wander()).orElse(0.0));
        double foot = look.over(0, 0);
        double free = Clearance.BELLY_ALLOWANCE + hull.seat().sunk() + hull.seat().cradleHeight()
                + (foot > 0 ? foot : 0);
        double radius = hull.radius();
        double worst = 0;
        for (int i = 0; i <= AHEAD; i++) {
            double x = hull.length() * i / AHEAD;
            double side = radius + margin + x * wander;
            for (int j = -LEFT; j <= LEFT; j++) {
                double y = side * j / LEFT;
                double over = look.over(x, y) - free;
                double beside = Math.abs(y);
                double aside = Math.min(beside, radius);
                double under = radius - Math.sqrt(radius * radius - aside * aside);
                double stops = over - steepest * x - under;
                double catches = beside > BESIDE * radius ? over - FLANK * radius : Double.NEGATIVE_INFINITY;
                double by = Math.max(stops, catches);
                worst = by > worst ? by : worst;
            }
        }
        return worst;
    }

    /** Heights over the bed of one pose, seen from its pivot line. */
    private final class Look {
        private final Pose pose;
        private final SampledBed bed;
        private final double pivot;
        private final double half;

        Look(Hull hull, Pose pose, SampledBed bed) {
            this.pose = pose;
            this.bed = bed;
            this.pivot = hull.pivotAhead();
            this.half = hull.length() / 2;
        }

        double over(double ahead, double left) {
            double a = (pivot + ahead) / scale;
            double l = left / scale;
            double height = ground.height(pose.east() + a * pose.sine() - l * pose.cosine(),
                    pose.north() + a * pose.cosine() + l * pose.sine());
            return height - bed.middle() - bed.along() * (ahead - half) - bed.across() * left;
        }
    }
}
