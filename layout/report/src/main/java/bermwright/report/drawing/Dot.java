// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

/**
 * A pair of values: a place on paper, or a point of a curve in the curve's own units.
 *
 * @param x to the right, in the unit of its axis; {@code NaN} breaks a curve
 * @param y the other value, in the unit of its axis; {@code NaN} breaks a curve
 */
public record Dot(double x, double y) {
    /**
     * Whether both values are finite.
     *
     * @return true where they are
     */
    public boolean isKnown() {
        return Double.isFinite(x) && Double.isFinite(y);
    }
}
