// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

/** Rows of numbers for one thread to work in. */
final class Scratch {
    private static final int ROWS = 10;
    private static final ThreadLocal<double[][]> OF_THREAD = ThreadLocal.withInitial(() -> new double[ROWS][0]);

    private Scratch() {
    }

    /**
     * Rows that are at least so long; what they hold is of no meaning.
     *
     * @param length the least length
     * @return the rows, the same for all calls of a thread
     */
    static double[][] rows(int length) {
        double[][] rows = OF_THREAD.get();
        if (rows[0].length < length) {
            for (int i = 0; i < ROWS; i++) {
                rows[i] = new double[length];
            }
        }
        return rows;
    }
}
