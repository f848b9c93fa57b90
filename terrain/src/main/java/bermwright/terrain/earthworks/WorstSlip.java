// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;

/**
 * The circle a straight slope of one dry soil is nearest to sliding on: the least by Bishop's simplified method over
 * circles that leave the slope at its toe or before it and enter in its face or behind its crest.
 *
 * <p>Without cohesion the worst slip is a plane in the face ({@link SlopeStability#longSlope}); circles come close.
 *
 * @param factor least factor of safety of all circles tried (1)
 * @param circle the circle it is least on, its toe at the origin, rising to the right
 */
public record WorstSlip(double factor, SlipCircle circle) {
    private static final int ENTRIES = 16;
    private static final int BULGES = 14;
    private static final double[] EXITS = {0, 0.15, 0.4, 0.8};
    private static final int REFINEMENTS = 40;
    private static final double LEAST_BULGE = 0.004;
    private static final double BULGE_GROWTH = 1.42;
    private static final double GREATEST_BULGE = 0.9;
    /** Steepest slope the search is made for (rad); steeper ones break along cracks. */
    private static final double STEEPEST = Math.toRadians(80);

    /**
     * The worst slip of a straight slope between level ground below and above.
     *
     * @param height height (m), positive
     * @param slope  angle to the level b (rad), above 0 up to 80 degrees
     * @param soil   its soil
     * @return the worst slip
     */
    public static WorstSlip of(double height, double slope, SlopeStability.Soil soil) {
        return new Search(height, slope, soil).atRest();
    }

    /** Looks for the worst circle of one slope, at rest and then under pushes, each from where the last one was. */
    static final class Search {
        private final double height;
        private final double run;
        private final SlopeProfile profile;
        private final SlopeStability.Soil soil;
        private double push;
        private WorstSlip best;
        private Trial at;

        Search(double height, double slope, SlopeStability.Soil soil) {
            Require.positive("height of a slope", height, "m");
            Require.that(slope > 0 && slope <= STEEPEST, "slope is %s rad; accepted: above 0 to %s.", slope, STEEPEST);
            this.height = height;
            this.soil = soil;
            profile = SlopeProfile.simple(height, slope);
            run = height / Math.tan(slope);
        }

        WorstSlip atRest() {
            push = 0;
            best = null;
            scan();
            refine(REFINEMENTS);
            return best;
        }

        /** The worst circle near the last one while a share of the weight pushes outwards. */
        WorstSlip pushed(double share) {
            Trial start = at;
            push = share;
            best = null;
            tried(start);
            refine(REFINEMENTS / 2);
            return best;
        }

        private void tried(Trial trial) {
            WorstSlip slip = trial.slip(profile, soil, push);
            if (best == null || slip.factor < best.factor) {
                best = slip;
                at = trial;
            }
        }

        private void scan() {
            for (double exit : EXITS) {
                for (int i = 1; i <= ENTRIES; i++) {
                    for (int j = 0; j < BULGES; j++) {
                        tried(new Trial(-exit * height,
                                run * (0.4 + 0.6 * i / 6) + height * Math.max(0, i - 6) / 8,
                                LEAST_BULGE * Math.pow(BULGE_GROWTH, j)));
                    }
                }
            }
        }

        private void refine(int times) {
            double step = 0.25;
            for (int i = 0; i < times; i++) {
                Trial before = at;
                for (Trial near : before.around(step, height)) {
                    tried(near);
                }
                step *= at.equals(before) ? 0.6 : 1;
            }
        }
    }

    /**
     * Where the model holds.
     *
     * @return the note
     */
    public static ModelNote note() {
        return new ModelNote("slope-stability", "slices on the worst circle by Bishop's simplified method; a plane"
                + " in the face",
                "dry, one soil, straight slopes of up to 80 degrees between level ground, no quakes,"
                + " no load on the crest; friction as the plan states it, which loosely dumped soil may not reach",
                "other methods of slices differ by some percent; strength of the soil by a third",
                ModelNote.Status.COMPUTED, "Bishop (1955), Geotechnique 5, 7-17");
    }

    /** A circle by where it leaves and enters the slope, and how far it bulges out of the chord (share of it). */
    private record Trial(double exit, double entry, double bulge) {
        WorstSlip slip(SlopeProfile profile, SlopeStability.Soil soil, double push) {
            double rise = profile.height(entry) - profile.height(exit);
            if (!(entry > exit && bulge >= LEAST_BULGE && bulge < GREATEST_BULGE && rise > 0)) {
                return new WorstSlip(Double.POSITIVE_INFINITY, new SlipCircle(0, 0, 1));
            }
            SlipCircle circle = SlipCircle.through(exit, profile.height(exit), entry, profile.height(entry), bulge);
            // A circle that leans back over the crest would leave a hanging face.
            return new WorstSlip(circle.height() < profile.height(entry) ? Double.POSITIVE_INFINITY
                    : circle.bishop(profile, soil, new double[] {exit, entry}, push), circle);
        }

        Trial[] around(double step, double height) {
            double by = step * height;
            return new Trial[] {new Trial(exit - by, entry, bulge), new Trial(Math.min(0, exit + by), entry, bulge),
                new Trial(exit, entry - by, bulge), new Trial(exit, entry + by, bulge),
                new Trial(exit, entry, bulge * (1 - step)), new Trial(exit, entry, bulge * (1 + step))};
        }
    }
}
