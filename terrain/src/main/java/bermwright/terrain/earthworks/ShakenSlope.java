// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;
import java.util.function.DoubleUnaryOperator;

/**
 * Whether a slope stands while the ground shakes: the worst circle of {@link WorstSlip} while a steady share of its
 * weight pushes it outwards in the middle of each slice (pseudo-static).
 *
 * <p>Without cohesion a plane in the face is worse than any circle: it gives way at {@code k = tan(phi - beta)}.
 *
 * @param atRest factor of safety at rest (1)
 * @param shaken factor of safety at the acceleration (1)
 * @param yield  acceleration at which it begins to slide (m/s2); 0 where it does not stand at rest
 * @see "Newmark (1965), Geotechnique 15, 139-160"
 */
public record ShakenSlope(double atRest, double shaken, double yield) {
    private static final int STEPS = 6;
    private static final double CLOSE = 5e-4;

    /**
     * The slope at rest and shaken.
     *
     * @param height       height (m), positive
     * @param slope        angle of its face b (rad), above 0 up to 80 degrees
     * @param soil         its soil
     * @param acceleration acceleration of the ground, outwards and level (m/s2), zero or more
     * @return its factors
     */
    public static ShakenSlope of(double height, double slope, SlopeStability.Soil soil, double acceleration) {
        double share = Require.notNegative("acceleration", acceleration, "m/s2") / soil.gravity();
        WorstSlip.Search search = new WorstSlip.Search(height, slope, soil);
        double rest = Math.min(search.atRest().factor(), inFace(slope, soil, 0));
        double shaken = share == 0 ? rest : Math.min(search.pushed(share).factor(), inFace(slope, soil, share));
        return new ShakenSlope(rest, shaken, rest <= 1 ? 0 : soil.gravity() * pushToYield(search, rest,
                k -> inFace(slope, soil, k)));
    }

    /** The push at which the factor is 1: 1 / F runs nearly straight with it, so a few steps of the secant do. */
    private static double pushToYield(WorstSlip.Search search, double rest, DoubleUnaryOperator inFace) {
        double[] push = {0, 0.2};
        double[] over = {1 / rest, 0};
        for (int i = 0; i < STEPS; i++) {
            over[1] = 1 / Math.min(search.pushed(push[1]).factor(), inFace.applyAsDouble(push[1]));
            if (Math.abs(over[1] - 1) < CLOSE) {
                return push[1];
            }
            double next = push[1] + (1 - over[1]) * (push[1] - push[0]) / (over[1] - over[0]);
            push[0] = push[1];
            over[0] = over[1];
            push[1] = Math.max(1e-4, next);
        }
        return push[1];
    }

    /** The factor of a plane in the face; where there is cohesion no such plane is the worst. */
    private static double inFace(double slope, SlopeStability.Soil soil, double share) {
        double hold = (Math.cos(slope) - share * Math.sin(slope)) * Math.tan(soil.frictionAngle());
        return soil.cohesion() > 0 ? Double.POSITIVE_INFINITY
                : Math.max(1e-9, hold) / (Math.sin(slope) + share * Math.cos(slope));
    }

    /**
     * Where the model holds.
     *
     * @return the note
     */
    public static ModelNote note() {
        return new ModelNote("moonquake-slope", "slices on the worst circle by Bishop's simplified method with a steady"
                + " outward push (pseudo-static)",
                "dry soil of one strength, straight slopes; a quake that shakes past the yield acceleration moves the"
                        + " slope by some centimetres to decimetres and need not bare the hull",
                "accelerations are modelled, none was measured: light shaking 0.14 to 0.38 m/s2, moderate to 0.9 m/s2;"
                        + " strength of the soil by a third",
                ModelNote.Status.PROVISIONAL, "Newmark (1965), Geotechnique 15, 139; shaking by distance: Watters et"
                        + " al. (2024), Planetary Science Journal 5, 22; accelerations of its classes: Wald et al."
                        + " (1999), Earthquake Spectra 15, 557, from memory");
    }
}
