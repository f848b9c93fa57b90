// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;
import bermwright.regolith.EarthPressure;
import bermwright.regolith.Regolith;

/** Closed forms for buried anchors; forces in N, without any factor. */
public final class BuriedAnchor {
    /** Lateral factor of uplift, nearly the same from 30 to 48 degrees (1); from memory. */
    private static final double UPLIFT_FACTOR = 0.95;
    private static final double[] ANGLES_DEG = {0, 30, 35, 40, 45, 48};
    private static final double[] SHAPE_RISE = {0, 0.15, 0.25, 0.35, 0.50, 0.60};
    private static final double[] CRITICAL_RATIO = {2, 4, 5, 7, 9, 11};

    private BuriedAnchor() {
    }

    /**
     * A flat anchor that is pulled square to its face.
     *
     * @param width  shorter side (m), positive
     * @param length longer side (m), at least the shorter
     * @param depth  depth (m), positive
     */
    public record Flat(double width, double length, double depth) {
        /** Refuses plates without size. */
        public Flat {
            Require.positive("shorter side", width, "m");
            Require.atLeast("longer side", length, width, "m");
            Require.positive("depth", depth, "m");
        }
    }

    /**
     * The level pull a buried upright plate holds: passive less active pressure over its depth, the sides of the
     * wedge, and cohesion. Where the lower edge lies deeper than twice the height, only the soil from twice the
     * height above the edge down counts.
     *
     * @param plate   the plate
     * @param soil    the soil
     * @param gravity acceleration of free fall (m/s2), positive
     * @return the pull (N)
     * @see "Teng (1962), Foundation Design, short deadman (form from memory); Rankine pressures"
     */
    public static double level(Anchor.Plate plate, Regolith soil, double gravity) {
        double depth = plate.depth();
        double top = Math.max(0, depth - 2 * plate.height());
        double unit = unitWeight(soil, depth, gravity);
        double phi = soil.frictionAngle(depth / 2);
        double kp = EarthPressure.passive(phi);
        double ka = EarthPressure.active(phi);
        double roots = Math.sqrt(kp) + Math.sqrt(ka);
        double strip = unit / 2 * (depth * depth - top * top) * (kp - ka) * plate.width();
        double sides = EarthPressure.atRest(phi) / 3 * unit * roots
                * (Math.pow(depth, 3) - Math.pow(top, 3)) * Math.tan(phi);
        double cohesive = 2 * soil.cohesion(depth / 2) * roots * (depth - top) * plate.width();
        return strip + sides + cohesive;
    }

    /**
     * The pull at which a level plate comes up: its soil and the shear around it,
     * W + rho g H (2D - H)(2 s B + L - B) Ku tan(phi) + 2 c H (B + L), s = 1 + m H/B, H at most the critical depth.
     *
     * @param plate   the plate, lying level
     * @param soil    the soil; shape and critical depth are known to 48 degrees and stay as there beyond
     * @param gravity acceleration of free fall (m/s2), positive
     * @return the pull (N)
     * @see "Meyerhof and Adams (1968), Canadian Geotechnical Journal 5, 225-244 (coefficients from memory)"
     */
    public static double uplift(Flat plate, Regolith soil, double gravity) {
        double phi = soil.frictionAngle(plate.depth / 2);
        return uplift(plate, phi, unitWeight(soil, plate.depth, gravity), soil.cohesion(plate.depth / 2));
    }

    /**
     * The same from the soil's own numbers.
     *
     * @param plate      the plate, lying level
     * @param phi        friction angle (rad), 0 up to 60 degrees; shape and critical depth stay beyond 48
     * @param unitWeight weight per volume (N/m3), positive
     * @param cohesion   cohesion (Pa), zero or more
     * @return the pull (N)
     */
    public static double uplift(Flat plate, double phi, double unitWeight, double cohesion) {
        double b = plate.width;
        double deg = Math.toDegrees(phi);
        double h = Math.min(plate.depth, table(CRITICAL_RATIO, deg) * b);
        double s = 1 + table(SHAPE_RISE, deg) * h / b;
        double around = 2 * s * b + plate.length - b;
        return unitWeight * plate.depth * b * plate.length
                + unitWeight * h * (2 * plate.depth - h) * around * UPLIFT_FACTOR * Math.tan(phi)
                + 2 * cohesion * h * (b + plate.length);
    }

    /**
     * The pull at which a level disc comes up, W + (pi/2) s rho g B H (2D - H) Ku tan(phi) + pi c B H.
     *
     * @param diameter diameter B (m), positive
     * @param depth    depth D (m), positive
     * @param soil     the soil
     * @param gravity  acceleration of free fall (m/s2), positive
     * @return the pull (N)
     * @see "Meyerhof and Adams (1968), circular footings"
     */
    public static double upliftOfDisc(double diameter, double depth, Regolith soil, double gravity) {
        double phi = soil.frictionAngle(depth / 2);
        double deg = Math.toDegrees(phi);
        double unit = unitWeight(soil, depth, gravity);
        double h = Math.min(depth, table(CRITICAL_RATIO, deg) * diameter);
        double s = 1 + table(SHAPE_RISE, deg) * h / diameter;
        return unit * depth * Math.PI / 4 * diameter * diameter
                + Math.PI / 2 * s * unit * diameter * h * (2 * depth - h) * UPLIFT_FACTOR * Math.tan(phi)
                + Math.PI * soil.cohesion(depth / 2) * diameter * h;
    }

    /**
     * The level pull at which a short stiff pile with a free head tilts over, rho g D L3 Kp / (2 (e + L)), no
     * cohesion.
     *
     * @param pile       the pile
     * @param pullHeight height e of the pull over the ground (m), zero or more
     * @param soil       the soil
     * @param gravity    acceleration of free fall (m/s2), positive
     * @return the pull on one pile (N)
     * @see "Broms (1964), Journal of the Soil Mechanics and Foundations Division 90 (form from memory)"
     */
    public static double shortPile(Anchor.Pile pile, double pullHeight, Regolith soil, double gravity) {
        double length = pile.depth();
        double kp = EarthPressure.passive(soil.frictionAngle(length / 2));
        return unitWeight(soil, length, gravity) * pile.diameter() * Math.pow(length, 3) * kp
                / (2 * (pullHeight + length));
    }

    /**
     * An inclined pull when level and upward capacity are used up in proportion: T = 1 / (cos e / P + sin e / Q).
     *
     * @param level     level capacity P (N), positive
     * @param up        upward capacity Q (N), positive
     * @param elevation elevation e of the line (rad), 0 up to a right angle
     * @return the pull along the line (N)
     */
    static double inclined(double level, double up, double elevation) {
        Require.within("elevation of a line at its anchor", elevation, 0, Math.PI / 2, "rad");
        return 1 / (Math.cos(elevation) / level + Math.sin(elevation) / up);
    }

    private static double unitWeight(Regolith soil, double depth, double gravity) {
        return soil.meanDensity(depth) * Require.positive("gravity", gravity, "m/s2");
    }

    private static double table(double[] values, double deg) {
        int i = 1;
        while (i < ANGLES_DEG.length - 1 && deg > ANGLES_DEG[i]) {
            i++;
        }
        double share = Math.min(1, (deg - ANGLES_DEG[i - 1]) / (ANGLES_DEG[i] - ANGLES_DEG[i - 1]));
        return values[i - 1] + share * (values[i] - values[i - 1]);
    }
}
