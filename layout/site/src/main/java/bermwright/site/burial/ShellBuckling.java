// SPDX-License-Identifier: Apache-2.0
package bermwright.site.burial;

import bermwright.foundation.Require;

/**
 * The outer pressure at which a thin elastic cylinder without pressure inside gives way.
 *
 * <p>Perfect, unstiffened shells under even pressure; real ones with dents carry a third to three quarters of it, and
 * soil packed on all sides may hold them longer. Frames and inner pressure are not counted.
 */
public final class ShellBuckling {
    private ShellBuckling() {
    }

    /**
     * A long tube, or a tube whose ends hold nothing: {@code E t^3 / (4 r^3 (1 - nu^2))}.
     *
     * @param shell  thickness, modulus and Poisson's ratio
     * @param radius radius (m), positive
     * @return pressure (Pa), positive
     * @see "Bryan (1888), Proceedings of the Cambridge Philosophical Society 6, 287; from memory"
     */
    public static double longTube(ThinShell shell, double radius) {
        Require.positive("hull radius", radius, "m");
        return shell.modulus() * Math.pow(shell.thickness() / radius, 3)
                / (4 * (1 - shell.poisson() * shell.poisson()));
    }

    /**
     * A tube whose ends, or frames, are held round a length apart:
     * {@code 2.42 E (t/D)^2.5 / ((1 - nu^2)^0.75 (L/D - 0.45 (t/D)^0.5))}, never less than the long tube.
     *
     * @param shell  thickness, modulus and Poisson's ratio
     * @param radius radius (m), positive
     * @param length length between ends or frames (m), positive
     * @return pressure (Pa), positive
     * @see "Windenburg and Trilling (1934), Transactions of the ASME 56, 819; from memory"
     */
    public static double heldEnds(ThinShell shell, double radius, double length) {
        Require.positive("length between held ends", length, "m");
        double slender = shell.thickness() / (2 * radius);
        double span = length / (2 * radius) - 0.45 * Math.sqrt(slender);
        Require.that(span > 0, "length between held ends is %s m; accepted: more than 0.45 times the root of diameter"
                + " times thickness", length);
        double pressure = 2.42 * shell.modulus() * Math.pow(slender, 2.5)
                / (Math.pow(1 - shell.poisson() * shell.poisson(), 0.75) * span);
        return Math.max(pressure, longTube(shell, radius));
    }

    /**
     * What a shell is made of.
     *
     * @param thickness thickness (m), positive
     * @param modulus   Young's modulus (Pa), positive
     * @param yield     yield stress (Pa), positive
     * @param poisson   Poisson's ratio (1), 0 to 0.5
     */
    public record ThinShell(double thickness, double modulus, double yield, double poisson) {
        /** Refuses a shell without thickness or stiffness. */
        public ThinShell {
            Require.positive("shell thickness", thickness, "m");
            Require.positive("Young's modulus", modulus, "Pa");
            Require.positive("yield stress", yield, "Pa");
            Require.within("Poisson's ratio", poisson, 0, 0.5, "1");
        }
    }
}
