// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import java.util.List;

/**
 * How warm and cold the lines get while the hull goes down.
 *
 * @param swing     how much colder a line in shade is than one in sun (K), zero or more
 * @param expansion growth of the line with temperature (1/K), zero or more
 * @param light     when the lines stand in sun or in shade; empty where nobody knows
 */
public record ThermalAction(double swing, double expansion, List<Light> light) {
    /** Growth of steel (1/K); handbooks, from memory. */
    public static final double STEEL_EXPANSION = 1.2e-5;
    /** Sun to shade within one lowering, 100 K, on steel lines; the ground swings by some 280 K in a lunar day. */
    public static final ThermalAction USUAL = new ThermalAction(100, STEEL_EXPANSION, List.of());

    /** Copies the windows. */
    public ThermalAction {
        Require.notNegative("temperature swing", swing, "K");
        Require.notNegative("expansion of the line", expansion, "1/K");
        light = List.copyOf(light);
    }

    /**
     * A window of sun or of shade.
     *
     * @param from  when it begins, from the first pull on (s), zero or more
     * @param to    when it ends (s), later than it begins
     * @param inSun true for sun, false for shade
     */
    public record Light(double from, double to, boolean inSun) {
        /** Refuses windows that end before they begin. */
        public Light {
            Require.notNegative("begin of a window of light", from, "s");
            Require.that(to > from, "a window of light from %s s ends at %s s; accepted: later.", from, to);
        }
    }

    /**
     * How much shorter a line gets in shade.
     *
     * @param length length (m), zero or more
     * @return the shortening (m)
     */
    public double shortening(double length) {
        return Require.notNegative("line length", length, "m") * expansion * swing;
    }

    /**
     * What a held line gains in shade while its ends cannot follow.
     *
     * @param stiffness EA (N), positive
     * @return the tension gained (N)
     */
    public double gain(double stiffness) {
        return Require.positive("line stiffness", stiffness, "N") * expansion * swing;
    }
}
