// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.motion;

/** Elliptic integral of the first kind, by Carlson's form. */
final class Elliptic {
    private static final double CLOSE = 1e-5;

    private Elliptic() {
    }

    /**
     * F(asin s, k) = s RF(1 - s2, 1 - k2 s2, 1).
     *
     * @param s sine of the amplitude (1), 0 to 1
     * @param k modulus (1), 0 up to but not including 1
     * @return the integral (1)
     * @see "Carlson (1979), Numerische Mathematik 33, 1-16"
     */
    static double first(double s, double k) {
        double x = 1 - s * s;
        double y = 1 - k * k * s * s;
        double z = 1;
        double mean = (x + y + z) / 3;
        while (Math.max(Math.abs(mean - x), Math.max(Math.abs(mean - y), Math.abs(mean - z))) > CLOSE * mean) {
            double l = Math.sqrt(x * y) + Math.sqrt(y * z) + Math.sqrt(z * x);
            x = (x + l) / 4;
            y = (y + l) / 4;
            z = (z + l) / 4;
            mean = (x + y + z) / 3;
        }
        double dx = 1 - x / mean;
        double dy = 1 - y / mean;
        double dz = -dx - dy;
        double e2 = dx * dy - dz * dz;
        double e3 = dx * dy * dz;
        return s * (1 - e2 / 10 + e3 / 14 + e2 * e2 / 24 - 3 * e2 * e3 / 44) / Math.sqrt(mean);
    }
}
