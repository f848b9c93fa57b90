// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Require;
import java.util.Objects;

/**
 * Slope and roughness over a chosen baseline: the plane that fits the heights of a square best, the square's side
 * about the node being the baseline to the nearest even number of cells; none where a height of it is missing.
 *
 * <p>Noise of standard deviation s in the heights gives s root 12 / (baseline root n) in the slope for n nodes.
 *
 * @param quantity     slope (degrees) or roughness (m)
 * @param halfSide nodes from the middle of the square to its side (1), at least 1
 */
public record PlaneSurface(Quantity quantity, int halfSide) implements Surface {
    private static final int MOST = 512;

    /** What is told of the plane. */
    public enum Quantity {
        /** Its angle to the level, in degrees. */
        SLOPE,
        /** Root mean square of the heights' distances from it, measured upright, in metres. */
        ROUGHNESS
    }

    /** Refuses squares without a side. */
    public PlaneSurface {
        Objects.requireNonNull(quantity, "what");
        Require.that(halfSide >= 1 && halfSide <= MOST, "half a baseline of %s cells; accepted: 1 to %s.", halfSide,
                MOST);
    }

    /**
     * The surface for a baseline.
     *
     * @param quantity        slope or roughness
     * @param baseline    the baseline (m), positive
     * @param trueSpacing distance between neighbouring nodes (m), positive
     * @return the surface, with the nearest even number of cells, at least 2
     */
    public static PlaneSurface over(Quantity quantity, double baseline, double trueSpacing) {
        Require.positive("baseline", baseline, "m");
        return new PlaneSurface(quantity,
                (int) Math.max(1, Math.min(MOST + 1L, Math.round(baseline / trueSpacing / 2))));
    }

    @Override
    public int margin() {
        return halfSide;
    }

    @Override
    public String unit() {
        return quantity == Quantity.SLOPE ? "deg" : "m";
    }

    @Override
    public void row(HeightBlock heights, int row, double[] into) {
        int side = 2 * halfSide + 1;
        int columns = into.length + 2 * halfSide;
        double[][] s = Scratch.rows(columns + 2);
        double spacing = heights.trueSpacing();
        columnSums(heights, row, columns, s);
        double n = (double) side * side;
        // The sum of the squares of the distances of all nodes from the middle row or column (m2).
        double moment = side * (halfSide * (halfSide + 1.0) * side / 3) * spacing * spacing;
        for (int c = 0; c < into.length; c++) {
            double sum = 0;
            double squares = 0;
            double east = 0;
            double north = 0;
            for (int k = 0; k < side; k++) {
                sum += s[0][c + k];
                squares += s[1][c + k];
                north += s[2][c + k];
                east += (k - halfSide) * spacing * s[0][c + k];
            }
            if (quantity == Quantity.SLOPE) {
                into[c] = (east * east + north * north) / (moment * moment);
            } else {
                double rest = squares - sum * sum / n - (east * east + north * north) / moment;
                into[c] = Math.sqrt(Math.max(0, rest) / n);
            }
        }
        if (quantity == Quantity.SLOPE) {
            SlopeAngle.degrees(into, into.length);
        }
    }

    /**
     * Sums over the rows of the square for each column, of heights over the height in the block's middle column, of
     * their squares, and of heights times their distance north.
     */
    private void columnSums(HeightBlock heights, int row, int columns, double[][] s) {
        double spacing = heights.trueSpacing();
        for (int c = 0; c < columns; c++) {
            s[0][c] = 0;
            s[1][c] = 0;
            s[2][c] = 0;
        }
        for (int k = -halfSide; k <= halfSide; k++) {
            double distance = k * spacing;
            for (int c = 0; c < columns; c++) {
                double height = heights.height(row + k, c - halfSide);
                s[0][c] += height;
                s[1][c] += height * height;
                s[2][c] += height * distance;
            }
        }
    }
}
