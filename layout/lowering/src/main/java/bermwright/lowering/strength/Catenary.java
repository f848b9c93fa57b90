// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import bermwright.foundation.Require;

/** A line under its own weight. */
public final class Catenary {
    private Catenary() {
    }

    /**
     * The upright sag in the middle of a taut line, w c2 / (8 T): the parabola, for sags of up to a tenth of the chord.
     *
     * @param weight  weight per length of line (N/m), zero or more
     * @param chord   length of the chord c (m), positive
     * @param tension tension T (N), positive
     * @return the sag (m)
     */
    public static double sag(double weight, double chord, double tension) {
        return weight * chord * chord / (8 * Require.positive("tension", tension, "N"));
    }

    /**
     * The share of its stiffness that a sagging line keeps, 1 / (1 + (w l)2 EA / (12 T3)).
     *
     * @param weight    weight per length w (N/m), zero or more
     * @param span      level span l (m), zero or more
     * @param stiffness EA (N), positive
     * @param tension   tension T (N), positive
     * @return the share (1), above 0 up to 1
     * @see "Ernst (1965), Der Bauingenieur 40, 52-55"
     */
    public static double stiffnessShare(double weight, double span, double stiffness, double tension) {
        Require.positive("tension", tension, "N");
        return 1 / (1 + Math.pow(weight * span, 2) * stiffness / (12 * Math.pow(tension, 3)));
    }

    /**
     * The tension at which a line at rest over a chord keeps its sag under a share of the chord: w l / (8 share).
     *
     * @param weight weight per length w (N/m), zero or more
     * @param chord  chord (m), positive
     * @param share  sag over chord (1), positive
     * @return the tension (N)
     */
    public static double pretension(double weight, double chord, double share) {
        return weight * chord / (8 * Require.positive("sag over chord", share, "1"));
    }
}
