// SPDX-License-Identifier: Apache-2.0
package bermwright.site.pose;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.lowering.rest.LyingCylinder;
import bermwright.lowering.rest.RestPose;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.Optional;

/** Where a hull of a plan touches the ground it lies on. */
final class RestOfHull {
    /** Steps along the body (m) and around its belly (rad), and how far around it is looked. */
    private static final double STEP = 0.25;
    private static final double TURN = Math.toRadians(2.5);
    private static final int TURNS = 32;
    /** What is this near the deepest (m) is looked at this many times as closely each way. */
    private static final double NEAR = 0.12;
    private static final int FINER = 5;

    private RestOfHull() {
    }

    /** How the barrel comes to rest, its base on what it turned over where that stays; empty where not known. */
    static Optional<RestPose> of(Hull hull, Point base, ElevationGrid ground, double gravity) {
        double barrel = hull.length() - hull.farEnd().depth();
        double centre = hull.centreOfMassFromBase();
        double length = centre < barrel ? barrel : hull.length();
        if (!(centre > 0 && centre < length) || !(hull.mass() > 0)) {
            return Optional.empty();
        }
        boolean onPivot = LyingPose.standsOnPivot(hull);
        double lift = onPivot ? Math.max(0, hull.pivotAhead() - hull.radius()) : 0;
        // A domed base touches nothing; what it turned over stands at the base plane.
        double from = onPivot || !(hull.baseEnd().depth() < centre) ? 0 : hull.baseEnd().depth();
        return RestPose.of(new LyingCylinder(ground.metres().moved(base, hull.layDownAzimuth(), from, 0),
                hull.layDownAzimuth(), length - from, hull.radius(),
                new LyingCylinder.Load(hull.mass() * gravity, centre - from), lift), ground)
                .map(r -> r.beginning(from));
    }

    /** An axis and the way up from the ground it lies on. */
    record Lying(Vec3 start, Vec3 axis, Vec3 normal) {
    }

    /** How far the ground stands above the body's belly where it does so most (m); negative where all is clear. */
    static double deepest(Hull hull, Lying lying, ElevationGrid ground) {
        int steps = (int) Math.max(1, Math.ceil(hull.length() / STEP));
        // Square to the axis; the belly's lowest line over even ground is among those looked at.
        Vec3 up = lying.normal.minus(lying.axis.times(lying.axis.dot(lying.normal))).direction();
        Skin skin = new Skin(hull, lying, up, up.cross(lying.axis), ground);
        double[] above = new double[(steps + 1) * (2 * TURNS + 1)];
        double deepest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < above.length; i++) {
            above[i] = skin.above(hull.length() * (i / (2 * TURNS + 1)) / steps, (i % (2 * TURNS + 1) - TURNS) * TURN);
            deepest = above[i] > deepest ? above[i] : deepest;
        }
        double coarse = deepest;
        for (int i = 0; i < above.length; i++) {
            if (above[i] > coarse - NEAR) {
                double s = hull.length() * (i / (2 * TURNS + 1)) / steps;
                double turn = (i % (2 * TURNS + 1) - TURNS) * TURN;
                for (int k = 0; k < FINER * FINER; k++) {
                    double finer = skin.above(Math.max(0, Math.min(hull.length(),
                            s + STEP * ((k / FINER + 0.5) / FINER - 0.5))),
                            turn + TURN * ((k % FINER + 0.5) / FINER - 0.5));
                    deepest = finer > deepest ? finer : deepest;
                }
            }
        }
        return Double.isFinite(deepest) ? deepest : 0;
    }

    /** The skin of a lying body over the ground. */
    private record Skin(Hull hull, Lying lying, Vec3 up, Vec3 left, ElevationGrid ground) {
        /** How far the ground stands above a place of the skin (m). */
        double above(double s, double turn) {
            double radius = BodyProfile.radiusAt(hull, s);
            Vec3 at = lying.axis.times(s).plus(left.times(radius * Math.sin(turn)))
                    .plus(up.times(-radius * Math.cos(turn)));
            TrueMetres metres = ground.metres();
            return ground.height(lying.start.x() + metres.onPlan(at.x()), lying.start.y() + metres.onPlan(at.y()))
                    - lying.start.z() - at.z();
        }
    }
}
