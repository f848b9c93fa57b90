// SPDX-License-Identifier: Apache-2.0
package bermwright.site.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.lowering.rest.RestPose;
import bermwright.site.SamplePlans;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Hull;
import bermwright.site.plan.HullBody;
import bermwright.site.plan.HullPlacement;
import bermwright.site.plan.Pivot;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** On cratered ground no hull lies inside the ground or floats over it; it lies as the rest pose on the page says. */
class LyingPoseLawTest {
    /** A kink of the ground between the places of the skin that are looked at may stand this far in (m). */
    private static final double INSIDE = 0.02;
    /** Contacts are felt upright, the skin is round about a leaning axis (m). */
    private static final double FLOATS = 0.06;
    private static final double ROUNDING = 1e-9;
    private static final int GROUNDS = 12;
    private static final Annotations K = Annotations.NOTHING;

    /** A slope with eight bowls of 6 to 40 m, a fifth as deep as wide, each with a rim. */
    private static ElevationGrid cratered(long seed) {
        Random random = new Random(seed);
        double[][] bowls = new double[8][];
        for (int i = 0; i < bowls.length; i++) {
            bowls[i] = new double[] {100 + 100 * random.nextDouble(), 100 + 100 * random.nextDouble(),
                3 + 17 * random.nextDouble()};
        }
        double east = 0.05 * random.nextGaussian();
        double north = 0.05 * random.nextGaussian();
        return SamplePlans.ground((e, n) -> {
            double height = east * e + north * n;
            for (double[] bowl : bowls) {
                double away = Math.hypot(e - bowl[0], n - bowl[1]) / bowl[2];
                height += away < 1 ? 0.4 * bowl[2] * (away * away - 1) * 0.8 + 0.08 * bowl[2]
                        : 0.08 * bowl[2] * Math.pow(away, -3);
            }
            return height;
        });
    }

    private static Pivot pivot(Pivot.Kind kind) {
        OptionalDouble none = OptionalDouble.empty();
        return switch (kind) {
            case RIM -> new Pivot(kind, none, none, OptionalInt.empty(), none, none, K);
            case SHOES -> new Pivot(kind, OptionalDouble.of(4.4), OptionalDouble.of(3), OptionalInt.empty(), none,
                    OptionalDouble.of(2), K);
            case LEGS -> new Pivot(kind, none, none, OptionalInt.of(4), OptionalDouble.of(6), OptionalDouble.of(2), K);
        };
    }

    private static Hull hull(Pivot.Kind kind, Hull.Arrival arrival, Hull.End base, double azimuthDeg) {
        Hull h = SamplePlans.hull("A", new Point(150, 150), azimuthDeg);
        return new Hull(h.id(), new HullBody(h.length(),
                h.diameter(), base, new Hull.End(Hull.Shape.CONE, 4.6, K), h.skin(), h.stowage(), h.shell(),
                h.innerPressure()), h.massProperties(), new HullPlacement(h.baseCentre(), h.landingDispersion(),
                h.layDownAzimuth(), h.placement().clocking(), pivot(kind), arrival), h.lowering(), h.seat(),
                        h.hatches(),
                h.stations(), h.cover(), h.held(), h.annotations());
    }

    /** The least and the greatest height of the ground over the skin below, on a finer lattice than the pose's. */
    private static double inside(Hull hull, LyingPose pose, ElevationGrid ground) {
        double most = Double.NEGATIVE_INFINITY;
        for (double s = 0; s <= hull.length(); s += 0.11) {
            for (double turn = -80; turn <= 80; turn += 1.3) {
                double radius = BodyProfile.radiusAt(hull, s);
                Vec3 at = pose.place(s, radius * Math.sin(Math.toRadians(turn)),
                        -radius * Math.cos(Math.toRadians(turn)));
                most = Math.max(most, ground.height(at.x(), at.y()) - at.z());
            }
        }
        return most;
    }

    @Test
    void noHullLiesInsideCrateredGroundOrFloatsAndAllLieAsTheRestPoseSays() {
        Hull.End flat = new Hull.End(Hull.Shape.FLAT, 0, K);
        Hull.End dome = new Hull.End(Hull.Shape.DOME, 3, K);
        double deepest = 0;
        for (int seed = 0; seed < GROUNDS; seed++) {
            ElevationGrid ground = cratered(seed);
            for (Pivot.Kind kind : Pivot.Kind.values()) {
                for (Hull hull : List.of(hull(kind, Hull.Arrival.LOWERED, flat, 37 * seed),
                        hull(kind, Hull.Arrival.LANDS_LYING, dome, 51 * seed))) {
                    String where = "seed " + seed + ", " + kind + ", " + hull.arrival();
                    LyingPose pose = LyingPose.of(hull, ground).orElseThrow();
                    RestPose rest = LyingPose.rest(hull, ground, 1.62).orElseThrow();
                    assertEquals(rest.pitch(), Math.asin(-pose.direction().z()), ROUNDING, where);
                    double inside = inside(hull, pose, ground);
                    assertTrue(inside < INSIDE, where + ": " + inside + " m inside");
                    double onLegs = LyingPose.standsOnPivot(hull) ? legs(hull, pose, ground)
                            : Double.POSITIVE_INFINITY;
                    assertTrue(onLegs > -INSIDE, where + ": legs " + onLegs);
                    assertTrue(-inside < FLOATS || onLegs < FLOATS, where + ": floats " + -inside + ", " + onLegs);
                    deepest = Math.max(deepest, inside);
                }
            }
        }
        assertTrue(deepest > INSIDE / 3, "a tolerance no wider than three times what is needed: " + deepest);
    }

    /** How high the middle of the pivot line stands over the ground. */
    private static double legs(Hull hull, LyingPose pose, ElevationGrid ground) {
        Vec3 foot = pose.place(0, 0, -hull.pivotAhead());
        return foot.z() - ground.height(foot.x(), foot.y());
    }
}
