// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Require;
import java.util.Objects;

/**
 * The relief under a rectangle laid about each node along a heading: highest ground over the plane that fits best,
 * the plane's slope along the heading or across it; none where a height under it is missing.
 *
 * <p>The ground is taken at the nodes within the rectangle, so a rectangle narrower than two cells is refused: what is
 * smaller than the cell is not known.
 */
public final class FootprintSurface implements Surface {
    private static final int MOST_NODES = 20_000;

    /** What is told of the ground under the rectangle. */
    public enum Quantity {
        /** The highest ground over the plane (m). */
        HIGH_SPOT,
        /** The plane's slope along the heading, in degrees, positive where the ground falls that way. */
        SLOPE_ALONG,
        /** The plane's slope square to the heading, in degrees, positive where the ground falls to the left. */
        SLOPE_ACROSS
    }

    /**
     * A rectangle about its middle.
     *
     * @param length  along the heading (m), at least two cells
     * @param width   across it (m), at least two cells
     * @param heading where its length points
     */
    public record Rectangle(double length, double width, Azimuth heading) {
        /** Refuses rectangles without sides. */
        public Rectangle {
            Require.positive("length of the footprint", length, "m");
            Require.positive("width of the footprint", width, "m");
            Objects.requireNonNull(heading, "heading");
        }
    }

    private final Quantity quantity;
    private final Rectangle rectangle;
    private final int margin;
    private final int[] rows;
    private final int[] columns;
    private final double[] along;
    private final double[] left;
    private final double alongMoment;
    private final double leftMoment;
    private final double mixedMoment;

    /**
     * The surface for a rectangle.
     *
     * @param quantity        what is told
     * @param rectangle   the rectangle
     * @param trueSpacing distance between neighbouring nodes (m), positive
     */
    public FootprintSurface(Quantity quantity, Rectangle rectangle, double trueSpacing) {
        this.quantity = Objects.requireNonNull(quantity, "what");
        this.rectangle = Objects.requireNonNull(rectangle, "rectangle");
        Require.that(Math.min(rectangle.width, rectangle.length) >= 2 * trueSpacing,
                "a footprint %s m wide is less than"
                + " two cells of %s m; what is smaller than the cell is not known.",
                Math.min(rectangle.width, rectangle.length), trueSpacing);
        double reach = Math.hypot(rectangle.length, rectangle.width) / 2;
        margin = (int) Math.ceil(reach / trueSpacing);
        Require.that(rectangle.length * rectangle.width / trueSpacing / trueSpacing <= MOST_NODES,
                "more than %s nodes lie under the footprint; use an overview of the file.", MOST_NODES);
        int[] r = new int[4 * MOST_NODES];
        int[] c = new int[4 * MOST_NODES];
        int count = 0;
        double east = rectangle.heading.east();
        double north = rectangle.heading.north();
        for (int i = -margin; i <= margin; i++) {
            for (int j = -margin; j <= margin; j++) {
                double a = (j * east + i * north) * trueSpacing;
                double l = (i * east - j * north) * trueSpacing;
                if (Math.abs(a) <= rectangle.length / 2 && Math.abs(l) <= rectangle.width / 2) {
                    r[count] = i;
                    c[count++] = j;
                }
            }
        }
        rows = java.util.Arrays.copyOf(r, count);
        columns = java.util.Arrays.copyOf(c, count);
        along = new double[count];
        left = new double[count];
        double[] moments = new double[3];
        for (int k = 0; k < count; k++) {
            along[k] = (columns[k] * east + rows[k] * north) * trueSpacing;
            left[k] = (rows[k] * east - columns[k] * north) * trueSpacing;
            moments[0] += along[k] * along[k];
            moments[1] += left[k] * left[k];
            moments[2] += along[k] * left[k];
        }
        alongMoment = moments[0];
        leftMoment = moments[1];
        mixedMoment = moments[2];
    }

    @Override
    public int margin() {
        return margin;
    }

    @Override
    public String unit() {
        return quantity == Quantity.HIGH_SPOT ? "m" : "deg";
    }

    /**
     * The rectangle.
     *
     * @return the rectangle
     */
    Rectangle rectangle() {
        return rectangle;
    }

    @Override
    public void row(HeightBlock heights, int row, double[] into) {
        for (int c = 0; c < into.length; c++) {
            into[c] = value(heights, row, c);
        }
    }

    /** The nodes lie evenly about the middle, so the mean height is that of the plane there. */
    private double value(HeightBlock heights, int row, int column) {
        double sum = 0;
        double alongSum = 0;
        double leftSum = 0;
        for (int k = 0; k < rows.length; k++) {
            double h = heights.height(row + rows[k], column + columns[k]);
            sum += h;
            alongSum += h * along[k];
            leftSum += h * left[k];
        }
        double determinant = alongMoment * leftMoment - mixedMoment * mixedMoment;
        double riseAlong = (alongSum * leftMoment - leftSum * mixedMoment) / determinant;
        double riseLeft = (leftSum * alongMoment - alongSum * mixedMoment) / determinant;
        if (quantity != Quantity.HIGH_SPOT) {
            return Math.toDegrees(Math.atan(-(quantity == Quantity.SLOPE_ALONG ? riseAlong : riseLeft)));
        }
        double mean = sum / rows.length;
        if (Double.isNaN(mean)) {
            return Double.NaN;
        }
        double highest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < rows.length; k++) {
            double plane = mean + riseAlong * along[k] + riseLeft * left[k];
            highest = Math.max(highest, heights.height(row + rows[k], column + columns[k]) - plane);
        }
        return highest;
    }
}
