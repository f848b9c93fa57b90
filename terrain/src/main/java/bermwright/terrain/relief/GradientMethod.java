// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

/**
 * How the rise of the ground at a node follows from the heights around it.
 *
 * <p>Sums are taken in loops over arrays with one index, which the virtual machine works out several at a time.
 */
public enum GradientMethod {
    /**
     * The eight neighbours, those beside the node counting twice; noise of standard deviation s in the heights gives
     * 0.433 s / spacing.
     *
     * <p>Horn (1981), Hill shading and the reflectance map, Proceedings of the IEEE 69, 14-47.
     */
    HORN,
    /**
     * The four neighbours beside the node; noise of standard deviation s in the heights gives 0.707 s / spacing.
     *
     * <p>Zevenbergen and Thorne (1987), Quantitative analysis of land surface topography, Earth Surface Processes and
     * Landforms 12, 47-56.
     */
    ZEVENBERGEN_THORNE;

    /** The rows of {@link Scratch} from here on are free for others. */
    static final int FIRST_FREE = 8;

    /**
     * The rises along a row.
     *
     * @param heights      the block
     * @param row          its row
     * @param steps        one over the distance between neighbours, towards east and towards north (1/m)
     * @param eastAndNorth takes the rises towards east and those towards north; one of the two is {@code NaN} where a
     *                     height is missing
     */
    void row(HeightBlock heights, int row, double[] steps, double[][] eastAndNorth) {
        int count = heights.nodes().columns();
        double[][] s = Scratch.rows(count + 2);
        double[] z = heights.heights();
        int here = heights.place(row) - 1;
        System.arraycopy(z, here + heights.stride(), s[0], 0, count + 2);
        System.arraycopy(z, here, s[1], 0, count + 2);
        System.arraycopy(z, here - heights.stride(), s[2], 0, count + 2);
        if (this == HORN) {
            sums(s[0], s[1], s[2], s[3], count + 2);
            differences(s[0], s[1], s[2], s[4], count + 2);
            System.arraycopy(s[3], 2, s[5], 0, count);
            minus(s[5], s[3], steps[0] / 8, eastAndNorth[0], count);
            System.arraycopy(s[4], 1, s[5], 0, count);
            System.arraycopy(s[4], 2, s[6], 0, count);
            weighed(new double[][] {s[4], s[5], s[6]}, steps[1] / 8, eastAndNorth[1], count);
        } else {
            System.arraycopy(s[1], 2, s[3], 0, count);
            minus(s[3], s[1], steps[0] / 2, eastAndNorth[0], count);
            differences(s[0], s[1], s[2], s[4], count + 2);
            System.arraycopy(s[4], 1, s[5], 0, count);
            times(s[5], steps[1] / 2, eastAndNorth[1], count);
        }
    }

    private static void sums(double[] above, double[] here, double[] below, double[] into, int count) {
        for (int i = 0; i < count; i++) {
            into[i] = above[i] + 2 * here[i] + below[i];
        }
    }

    /** Above less below; not a number where the node between is missing. */
    private static void differences(double[] above, double[] here, double[] below, double[] into, int count) {
        for (int i = 0; i < count; i++) {
            into[i] = above[i] - below[i] + (here[i] - here[i]);
        }
    }

    private static void minus(double[] a, double[] b, double step, double[] into, int count) {
        for (int i = 0; i < count; i++) {
            into[i] = (a[i] - b[i]) * step;
        }
    }

    private static void weighed(double[][] rows, double step, double[] into, int count) {
        double[] west = rows[0];
        double[] middle = rows[1];
        double[] east = rows[2];
        for (int i = 0; i < count; i++) {
            into[i] = (west[i] + 2 * middle[i] + east[i]) * step;
        }
    }

    private static void times(double[] a, double step, double[] into, int count) {
        for (int i = 0; i < count; i++) {
            into[i] = a[i] * step;
        }
    }
}
