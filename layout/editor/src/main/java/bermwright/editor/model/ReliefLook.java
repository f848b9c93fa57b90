// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

/**
 * What of the ground a map shows.
 *
 * @param isShaded        whether the relief is shaded
 * @param hasContours     whether contour lines are drawn
 * @param hasSlopeBands   whether slope bands are drawn
 * @param isDark          whether the map is for a dark window
 * @param contourInterval height between two contour lines at full size (m), positive
 */
public record ReliefLook(boolean isShaded, boolean hasContours, boolean hasSlopeBands, boolean isDark,
        double contourInterval) {
    private static final int WANTED_LINES = 40;

    /**
     * A round interval that gives a readable number of contour lines.
     *
     * @param lowest  lowest height (m)
     * @param highest highest height (m)
     * @return the interval (m), 1, 2 or 5 times a power of ten
     */
    public static double intervalFor(double lowest, double highest) {
        double wanted = Math.max(1e-3, highest - lowest) / WANTED_LINES;
        if (!(wanted > 0) || Double.isInfinite(wanted)) {
            return 1;
        }
        double power = Math.pow(10, Math.floor(Math.log10(wanted)));
        for (double round : new double[] {1, 2, 5}) {
            if (round * power >= wanted) {
                return round * power;
            }
        }
        return 10 * power;
    }
}
