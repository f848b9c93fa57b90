// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import java.util.List;
import java.util.SplittableRandom;

/**
 * A person of simple solids: trunk, head and legs with lungs, skeleton and organs (cm; x to the left, y backwards, z up
 * from the foot of the trunk).
 *
 * @see "dimensions: mathematical phantom of Snyder et al. (1969, 1978) and Cristy and Eckerman (1987) in the size of a
 *     small adult, as an open text copy of the Geant4 human_phantom example prints it; legs, breasts, shoulder blades,
 *     collar bones, gonads and what stands in the face from memory"
 */
final class BodyShape {
    private static final double TISSUE = 0.98;
    private static final double BONE = 1.4862;
    private static final double LUNG = 0.2958;
    private static final double TRUNK_TOP = 63.3;
    private static final double CROWN = 79.5;
    private static final double FEET = -78;
    private static final double TOP = 87;
    private static final double GREATEST_WIDTH = 18;

    /** Where points of a tissue lie. */
    interface Region {
        /** Whether a point is in it. */
        boolean holds(double x, double y, double z);
    }

    /** A region in a box, with the share of its tissue that it holds (1). */
    record Site(double share, double[] least, double[] greatest, Region region) {
        double[] point(SplittableRandom chance) {
            for (int tries = 0; tries < 1_000_000; tries++) {
                double[] p = new double[3];
                for (int k = 0; k < 3; k++) {
                    p[k] = least[k] + chance.nextDouble() * (greatest[k] - least[k]);
                }
                if (region.holds(p[0], p[1], p[2])) {
                    return p;
                }
            }
            throw new IllegalStateException("no point found in a region of the body");
        }
    }

    private static final Region RIBS = (x, y, z) -> z > 33.3 && z < 62.7 && ellipse(x, y, 17, 9.8)
            && !ellipse(x, y, 16.5, 9.3) && (62.7 - z) % 2.8 < 1.4;
    private static final Region SPINE = (x, y, z) -> z > 20 && z < 73 && ellipse(x, y - 5.39, 1.73, 2.45);
    private static final Region PELVIS = (x, y, z) -> z > 0 && z < 19.83 && y > -2.94
            && (z > 11.62 || y < 0) && ellipse(x, y + 2.94, 10.35, 11.76) && !ellipse(x, y + 2.94, 9.75, 11.07);
    private static final Region CRANIUM = (x, y, z) -> ellipsoid(x, y, z - CROWN, 7.68, 9.67, 6.83)
            && !ellipsoid(x, y, z - CROWN, 6.58, 8.57, 5.73);
    private static final Region FACE = (x, y, z) -> z > 69 && z < 75 && y < -0.5 && ellipse(x, y, 6.92, 8.91)
            && !ellipse(x, y, 5.82, 7.81);
    private static final Region ARMS = (x, y, z) -> z > 0.5 && z < 62.6 && ellipse(Math.abs(x) - 15.87, y, 1.21, 2.65);
    private static final Region FEMURS = (x, y, z) -> z > -76 && z < 0
            && ellipse(Math.abs(x) - 8.6 - 0.05 * z, y, 2 + 0.013 * z, 2 + 0.013 * z);
    private static final Region SHOULDER_BLADES = (x, y, z) -> z > 45.9 && z < 60.7 && y > 0
            && ellipse(x, y, 16.4, 9.8) && !ellipse(x, y, 14.7, 9.8) && y > 0.25 * Math.abs(x) && y < 0.8 * Math.abs(x);
    private static final Region COLLAR_BONES = (x, y, z) -> Math.abs(z - 61.2) < 0.79 && Math.abs(x) > 2.5
            && Math.abs(x) < 13 && Math.abs(y + 8 - 0.45 * (Math.abs(x) - 2.5)) < 0.79;
    private static final List<Region> SKELETON =
            List.of(RIBS, SPINE, PELVIS, CRANIUM, FACE, ARMS, FEMURS, SHOULDER_BLADES, COLLAR_BONES);
    private static final Region LUNGS =
            (x, y, z) -> z > 39.21 && ellipsoid(Math.abs(x) - 7.33, y, z - 39.21, 4.09, 6.98, 20.55);

    /**
     * Red marrow by bone.
     *
     * @see "ICRP Publication 70 (1995), active marrow of an adult by bone; from memory"
     */
    static final List<Site> MARROW = List.of(
            site(0.083, -8, -10, 73, 8, 10, 87, CRANIUM), site(0.008, -7, -9, 69, 7, 0, 72, FACE),
            site(0.028, -17, 0, 45, 17, 10, 61, SHOULDER_BLADES), site(0.008, -13, -9, 60, 13, 0, 63, COLLAR_BONES),
            site(0.031, -2.5, -10, 45, 2.5, -9, 60, RIBS), site(0.161, -17, -10, 33, 17, 10, 63, RIBS),
            site(0.039, -2, 2, 63, 2, 8, 73, SPINE), site(0.161, -2, 2, 35, 2, 8, 63, SPINE),
            site(0.123, -2, 2, 20, 2, 8, 35, SPINE), site(0.099, -5, 4, 11.7, 5, 9, 19.8, PELVIS),
            site(0.175, -11, -3, 0, 11, 9, 19.8, PELVIS), site(0.067, -12, -3, -20, 12, 3, 0, FEMURS),
            site(0.023, -18, -3, 48, 18, 3, 62, ARMS));

    /** The tissues of the effective dose but marrow and skin, each by its weight over 0.87. */
    static final List<Site> OTHER = others();

    private BodyShape() {
    }

    private static List<Site> others() {
        double main = 0.12 / 0.87;
        double small = 0.04 / 0.87;
        double rest = main / 9;
        double least = 0.01 / 0.87;
        return List.of(
                solid(main * 0.35, -7.33, -2.31, 17.33, 2.16, 2.45, 4.3),
                solid(main * 0.3, 0, -2.31, 22.98, 9, 2.4, 1.35),
                solid(main * 0.35, 7.86, -2.31, 14.76, 1.62, 2.09, 6.9),
                site(main, -12, -7, 39, 12, 7, 60, LUNGS), solid(main, 6.9, -3.92, 31.55, 3.43, 2.92, 7.16),
                site(main, -14, -14, 42, 14, -6, 52, BodyShape::breast),
                solid(rest, 4.5, 6.5, 36, 1.5, 0.5, 2.5), solid(rest, 0, -3, 47, 4, 4, 6),
                solid(rest, 5.18, 5.88, 29.3, 3.5, 1.53, 4.96), solid(rest, 2, -0.5, 33.3, 7, 1.5, 1.5),
                solid(rest, 0, -1.96, 12.6, 2.4, 4, 1.6), solid(rest, 0, -2.66, 18.55, 9, 1.76, 2.5),
                solid(rest, 9.49, 2.94, 33.35, 2.9, 1.88, 5.19), solid(rest, 2, -6, 57, 3, 0.5, 4),
                site(rest, -17, -10, -77, 17, 10, 63, (x, y, z) -> density(x, y, z) == TISSUE),
                solid(small, 1.3, -7.8, -2.3, 1.2, 1.5, 2.2), solid(small, 5.18, 0, 13.5, 1.17, 0.58, 1.8),
                solid(small, 0, -4.41, 7.21, 4.27, 3.38, 3.11), solid(small, 0, 2.4, 50, 1.1, 0.4, 12),
                site(small, -14, -8, 24.3, 14, 8, 38.7, (x, y, z) -> ellipse(x, y, 14.19, 8.2)
                        && x / 30.2 + y / 45 - z / 38.8 < -1),
                solid(small, 0, -6, 66, 3, 1.5, 2.5), solid(least, 0, 0, CROWN, 6.5, 8.5, 5.7),
                solid(least, 5, -3, 68, 1, 2, 2), site(least, -17, -10, -20, 17, 10, 86, BodyShape::bone));
    }

    private static Site site(double share, double x, double y, double z, double toX, double toY, double toZ,
            Region region) {
        return new Site(share, new double[] {x, y, z}, new double[] {toX, toY, toZ}, region);
    }

    private static Site solid(double share, double x, double y, double z, double a, double b, double c) {
        return site(share, x - a, y - b, z - c, x + a, y + b, z + c,
                (px, py, pz) -> ellipsoid(px - x, py - y, pz - z, a, b, c));
    }

    private static boolean ellipse(double x, double y, double a, double b) {
        return x * x / (a * a) + y * y / (b * b) < 1;
    }

    private static boolean ellipsoid(double x, double y, double z, double a, double b, double c) {
        return x * x / (a * a) + y * y / (b * b) + z * z / (c * c) < 1;
    }

    private static boolean breast(double x, double y, double z) {
        return ellipsoid(Math.abs(x) - 8.63, y + 8.49, z - 46.87, 4.95, 4.35, 4.15) && !ellipse(x, y, 17.25, 9.8);
    }

    private static boolean bone(double x, double y, double z) {
        for (Region region : SKELETON) {
            if (region.holds(x, y, z)) {
                return true;
            }
        }
        return false;
    }

    private static boolean inside(double x, double y, double z) {
        if (Math.abs(x) > GREATEST_WIDTH || z < FEET || z > TOP) {
            return false;
        }
        if (z < 0) {
            return x * x + y * y < Math.abs(x) * (17.25 + 0.17 * z)
                    || z > -4.8 && Math.abs(x) < 4.76 && y > -9.8 && y < 0;
        }
        if (z < TRUNK_TOP) {
            return ellipse(x, y, 17.45, 10) || breast(x, y, z);
        }
        return z < CROWN ? ellipse(x, y, 7.97, 9.96) : ellipsoid(x, y, z - CROWN, 7.97, 9.96, 7.12);
    }

    private static double density(double x, double y, double z) {
        return !inside(x, y, z) ? 0 : bone(x, y, z) ? BONE : LUNGS.holds(x, y, z) ? LUNG : TISSUE;
    }

    /** What lies between a point and the outside along a direction (g/cm2). */
    static double depth(double[] from, double[] along) {
        double sum = 0;
        double s = 0;
        while (s < TOP - FEET) {
            double step = Math.min(0.25, 0.0005 + 0.04 * s);
            double mid = s + step / 2;
            double z = from[2] + mid * along[2];
            if (z < FEET || z > TOP) {
                break;
            }
            sum += step * density(from[0] + mid * along[0], from[1] + mid * along[1], z);
            s += step;
        }
        return sum;
    }

    /** A point a little under the skin (cm), all parts of the skin alike. */
    static double[] underSkin(SplittableRandom chance, double below) {
        while (true) {
            double[] along = direction(chance);
            double[] across = direction(chance);
            double[] start = {90 * across[0], 90 * across[1], 4 + 90 * across[2]};
            boolean before = false;
            for (double s = 0; s < 180; s += 0.3) {
                double[] p = moved(start, along, s);
                boolean now = inside(p[0], p[1], p[2]);
                if (now != before && s > 0) {
                    return below(p, chance, below);
                }
                before = now;
            }
        }
    }

    /** A point of an eye's lens, under its front (cm). */
    static double[] lens(SplittableRandom chance, double below) {
        double x = (chance.nextBoolean() ? 1 : -1) * (2.8 + 0.6 * chance.nextDouble());
        double y = -9.96 * Math.sqrt(1 - x * x / (7.97 * 7.97));
        return below(new double[] {x, y, 75 + chance.nextDouble()}, chance, below);
    }

    /** From a point near the skin onto it, then so far in. */
    private static double[] below(double[] near, SplittableRandom chance, double below) {
        double[] in = new double[3];
        for (int k = 0; k < 2000; k++) {
            double[] way = direction(chance);
            double[] p = moved(near, way, 0.6);
            double sign = inside(p[0], p[1], p[2]) ? 1 : -1;
            for (int j = 0; j < 3; j++) {
                in[j] += sign * way[j];
            }
        }
        double length = Math.sqrt(in[0] * in[0] + in[1] * in[1] + in[2] * in[2]);
        double[] unit = {in[0] / length, in[1] / length, in[2] / length};
        double out = -1;
        double deep = 1;
        for (int k = 0; k < 40; k++) {
            double mid = (out + deep) / 2;
            double[] p = moved(near, unit, mid);
            if (inside(p[0], p[1], p[2])) {
                deep = mid;
            } else {
                out = mid;
            }
        }
        return moved(near, unit, deep + below);
    }

    static double[] direction(SplittableRandom chance) {
        double cosine = 2 * chance.nextDouble() - 1;
        double sine = Math.sqrt(1 - cosine * cosine);
        double around = 2 * Math.PI * chance.nextDouble();
        return new double[] {sine * Math.cos(around), sine * Math.sin(around), cosine};
    }

    private static double[] moved(double[] from, double[] along, double s) {
        return new double[] {from[0] + s * along[0], from[1] + s * along[1], from[2] + s * along[2]};
    }
}
