// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import java.util.Objects;

/**
 * The steepest slope at each node, in degrees to the level; none at the outermost nodes and beside missing heights.
 *
 * @param method how the rise follows from the heights
 */
public record SlopeSurface(GradientMethod method) implements Surface {
    /** Refuses null. */
    public SlopeSurface {
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
            into[i] = into[i] * into[i] + north[i] * north[i];
        }
        SlopeAngle.degrees(into, into.length);
    }
}
