// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import java.util.Objects;

/**
 * How the ground bends at each node, in 1/m, from the surface of second order through the nine heights; none at the
 * outermost nodes and beside missing heights.
 *
 * @param kind which bend
 * @see "Zevenbergen and Thorne (1987), Quantitative analysis of land surface topography, Earth Surface Processes and
 *     Landforms 12, 47-56, equations 3 to 12"
 */
public record CurvatureSurface(Kind kind) implements Surface {
    /** Which bend. */
    public enum Kind {
        /** Along the steepest descent: positive where the ground grows steeper downwards. */
        PROFILE,
        /** Across the steepest descent: positive where the flow spreads. */
        PLAN,
        /** All around: minus the sum of the second derivatives; positive on a knoll. */
        TOTAL
    }

    /** Refuses null. */
    public CurvatureSurface {
        Objects.requireNonNull(kind, "kind");
    }

    @Override
    public int margin() {
        return 1;
    }

    @Override
    public String unit() {
        return "1/m";
    }

    @Override
    public void row(HeightBlock heights, int row, double[] into) {
        double spacing = heights.trueSpacing();
        double square = spacing * spacing;
        for (int c = 0; c < into.length; c++) {
            double here = heights.height(row, c);
            double west = heights.height(row, c - 1);
            double east = heights.height(row, c + 1);
            double north = heights.height(row + 1, c);
            double south = heights.height(row - 1, c);
            // Half of the second derivatives, the mixed one whole, and the first ones.
            double d = ((west + east) / 2 - here) / square;
            double e = ((north + south) / 2 - here) / square;
            double f = (heights.height(row + 1, c + 1) - heights.height(row + 1, c - 1)
                    + heights.height(row - 1, c - 1) - heights.height(row - 1, c + 1)) / (4 * square);
            double g = (east - west) / (2 * spacing);
            double h = (north - south) / (2 * spacing);
            double slope = g * g + h * h;
            into[c] = switch (kind) {
                case TOTAL -> -2 * (d + e) + (f - f);
                case PROFILE -> slope == 0 ? 0 : -2 * (d * g * g + e * h * h + f * g * h) / slope;
                case PLAN -> slope == 0 ? 0 : -2 * (d * h * h + e * g * g - f * g * h) / slope;
            };
        }
    }
}
