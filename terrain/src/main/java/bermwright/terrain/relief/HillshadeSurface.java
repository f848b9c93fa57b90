// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Require;
import java.util.Objects;

/**
 * Ground drawn as a matt surface under a light, with slopes by Horn's weights; no shadow is cast. The shade is the
 * whole number before the point: 1 (dark) to 255 (square to the light); {@code NaN}, written as 0, where the ground is
 * not known.
 *
 * <p>At the edge the missing neighbours are taken from the edge itself, so that a picture has no frame.
 *
 * @param light        the light
 * @param exaggeration heights are stretched by this (1), positive; 1 for the true shape
 * @see "Horn (1981), Hill shading and the reflectance map, Proceedings of the IEEE 69, 14-47"
 */
public record HillshadeSurface(Light light, double exaggeration) implements Surface {
    /** The number of steps from the darkest shade, 1, to the brightest, 255. */
    private static final double STEPS = 254;

    /** Refuses heights that are not stretched by a positive number. */
    public HillshadeSurface {
        Objects.requireNonNull(light, "light");
        Require.positive("exaggeration", exaggeration, "1");
    }

    @Override
    public int margin() {
        return 1;
    }

    @Override
    public boolean reachesEdge() {
        return true;
    }

    @Override
    public String unit() {
        return "1";
    }

    @Override
    public void row(HeightBlock heights, int row, double[] into) {
        int count = into.length;
        int gridRow = heights.nodes().firstRow() + row;
        int firstColumn = heights.nodes().firstColumn();
        boolean edge = gridRow == 0 || gridRow == heights.frame().rows() - 1;
        double step = exaggeration / heights.trueSpacing();
        double[] north = Scratch.rows(count + 2)[GradientMethod.FIRST_FREE];
        // At an edge the rise is over one step, not two.
        GradientMethod.HORN.row(heights, row, new double[] {step, edge ? 2 * step : step},
                new double[][] {into, north});
        if (firstColumn == 0) {
            into[0] *= 2;
        }
        if (firstColumn + count == heights.frame().columns()) {
            into[count - 1] *= 2;
        }
        double flat = Math.cos(light.elevation());
        shade(into, north, new double[] {flat * light.from().east(), flat * light.from().north(),
            Math.sin(light.elevation())});
    }

    private static void shade(double[] into, double[] north, double[] light) {
        double lightEast = light[0];
        double lightNorth = light[1];
        double up = light[2];
        for (int i = 0; i < into.length; i++) {
            into[i] = (up - into[i] * lightEast - north[i] * lightNorth)
                    / Math.sqrt(1 + into[i] * into[i] + north[i] * north[i]);
        }
        for (int i = 0; i < into.length; i++) {
            // The whole number is what stands before the point; what is not a number becomes 0.
            into[i] = 1.5 + STEPS * Math.max(0, into[i]);
        }
    }
}
