// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

/**
 * The angle of a rise, without a branch, so that many are worked out at once: two halvings of the angle by roots and
 * a polynomial, right to the last bits of a double.
 */
final class SlopeAngle {
    /** Of atan(v) / v in v squared, for v up to tan(pi/8); fitted at the nodes of Chebyshev, error 1e-16. */
    private static final double C1 = -0.3333333333333312;
    private static final double C2 = 0.19999999999940088;
    private static final double C3 = -0.14285714279169645;
    private static final double C4 = 0.11111110740955242;
    private static final double C5 = -0.0909089669792703;
    private static final double C6 = 0.07692043406201732;
    private static final double C7 = -0.06662930457815681;
    private static final double C8 = 0.05846726028917645;
    private static final double C9 = -0.05034427619634089;
    private static final double C10 = 0.037948342115807596;
    private static final double C11 = -0.017787082394366226;
    private static final double FOUR_IN_DEGREES = 4 * 180 / Math.PI;

    private SlopeAngle() {
    }

    /**
     * Turns squares of rises into angles.
     *
     * @param squares squares of rises (1); turned into angles to the level, in degrees
     * @param count   how many
     */
    static void degrees(double[] squares, int count) {
        for (int i = 0; i < count; i++) {
            double square = squares[i];
            double u = Math.sqrt(square) / (1 + Math.sqrt(1 + square));
            double v = u / (1 + Math.sqrt(1 + u * u));
            double w = v * v;
            double p = C10 + w * C11;
            p = C9 + w * p;
            p = C8 + w * p;
            p = C7 + w * p;
            p = C6 + w * p;
            p = C5 + w * p;
            p = C4 + w * p;
            p = C3 + w * p;
            p = C2 + w * p;
            p = C1 + w * p;
            squares[i] = FOUR_IN_DEGREES * (v + v * (w * p));
        }
    }
}
