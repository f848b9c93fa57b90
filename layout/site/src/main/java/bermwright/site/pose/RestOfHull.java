// SPDX-License-Identifier: Apache-2.0
package bermwright.site.pose;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.lowering.rest.LyingCylinder;
import bermwright.lowering.rest.RestPose;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.ElevationGrid;
import java.util.OptionalDouble;

/** Where a hull of a plan touches the ground it lies on. */
final class RestOfHull {
    /** Steps along the barrel (m) and around its belly (rad), and how far around it is looked. */
    private static final double STEP = 0.25;
    private static final double TURN = Math.toRadians(2.5);
    private static final int TURNS = 32;

    private RestOfHull() {
    }

    /** How far the far end points down once the hull has come to rest (rad); empty where that cannot be told. */
    static OptionalDouble pitch(Hull hull, Point base, ElevationGrid ground) {
        double barrel = hull.length() - hull.farEnd().depth();
        double centre = hull.centreOfMassFromBase();
        if (!(centre > 0 && centre < barrel) || !(hull.mass() > 0)) {
            return OptionalDouble.empty();
        }
        // The weight only tells how far it sinks, which the pose leaves out.
        LyingCylinder cylinder = new LyingCylinder(base, hull.layDownAzimuth(), barrel, hull.radius(),
                new LyingCylinder.Load(hull.mass(), centre), 0);
        return RestPose.of(cylinder, ground).map(r -> OptionalDouble.of(r.pitch())).orElse(OptionalDouble.empty());
    }

    /** An axis and the way up from the ground it lies on. */
    record Lying(Vec3 start, Vec3 axis, Vec3 normal) {
    }

    /** How far the ground stands above the barrel's belly where it does so most (m); negative where all is clear. */
    static double deepest(Hull hull, Lying lying, ElevationGrid ground) {
        double from = hull.baseEnd().depth();
        double to = Math.max(from, hull.length() - hull.farEnd().depth());
        int steps = (int) Math.max(1, Math.ceil((to - from) / STEP));
        Vec3 axis = lying.axis;
        // Square to the axis; the belly's lowest line over even ground is among those looked at.
        Vec3 up = lying.normal.minus(axis.times(axis.dot(lying.normal))).direction();
        Vec3 left = up.cross(axis);
        double scale = ground.metreScale();
        double deepest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= steps; i++) {
            double s = from + (to - from) * i / steps;
            for (int k = -TURNS; k <= TURNS; k++) {
                Vec3 skin = axis.times(s).plus(left.times(hull.radius() * Math.sin(k * TURN)))
                        .plus(up.times(-hull.radius() * Math.cos(k * TURN)));
                double height = ground.height(lying.start.x() + skin.x() / scale, lying.start.y() + skin.y() / scale);
                double above = height - lying.start.z() - skin.z();
                deepest = above > deepest ? above : deepest;
            }
        }
        return Double.isFinite(deepest) ? deepest : 0;
    }
}
