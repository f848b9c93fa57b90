// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import java.util.Objects;

/**
 * The direction in which the ground falls most steeply at each node, in degrees clockwise from grid north, 0 up to
 * 360; none on level ground, at the outermost nodes and beside missing heights.
 *
 * @param method how the rise follows from the heights
 */
public record AspectSurface(GradientMethod method) implements Surface {
    private static final float TURN = 360;

    /** Refuses null. */
    public AspectSurface {
        Objects.requireNonNull(method, "method");
    }

    @Override
    public int margin() {
        return 1;
    }

    @Override
    public String unit() {
        return "deg";
    }

    @Override
    public void row(HeightBlock heights, int row, double[] into) {
        double[] north = Scratch.rows(into.length + 2)[GradientMethod.FIRST_FREE];
        double step = 1 / heights.trueSpacing();
        method.row(heights, row, new double[] {step, step}, new double[][] {into, north});
        for (int i = 0; i < into.length; i++) {
            double east = into[i];
            if (!(east * east + north[i] * north[i] > 0)) {
                into[i] = Double.NaN;
            } else {
                double degrees = Math.toDegrees(Math.atan2(-east, -north[i]));
                double wound = degrees < 0 ? degrees + TURN : degrees;
                // What rounds up to a whole turn is none.
                into[i] = (float) wound >= TURN ? 0 : wound;
            }
        }
    }
}
