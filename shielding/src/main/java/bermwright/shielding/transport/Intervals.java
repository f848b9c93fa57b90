// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Require;

/** Finds between which of many rising numbers a value lies, by even steps of the way and a look from there. */
public final class Intervals {
    private static final int STEPS_EACH = 16;

    private final double[] x;
    private final int[] first;
    private final double stepsInOne;

    /**
     * Intervals between numbers.
     *
     * @param numbers the numbers, rising, at least two
     */
    public Intervals(double[] numbers) {
        Require.that(numbers.length >= 2, "%s numbers; accepted: at least two", numbers.length);
        x = numbers.clone();
        first = new int[STEPS_EACH * x.length];
        stepsInOne = first.length / (x[x.length - 1] - x[0]);
        int k = 0;
        for (int step = 0; step < first.length; step++) {
            while (k < x.length - 2 && x[k + 1] <= x[0] + step / stepsInOne) {
                k++;
            }
            first[step] = k;
        }
    }

    /**
     * The interval that holds a value.
     *
     * @param value a value from the first number on, and below the last
     * @return k, so that number k is at or below the value and number k + 1 above it
     */
    public int at(double value) {
        int k = first[Math.min(first.length - 1, (int) ((value - x[0]) * stepsInOne))];
        while (k > 0 && x[k] > value) {
            k--;
        }
        while (k < x.length - 2 && x[k + 1] <= value) {
            k++;
        }
        return k;
    }
}
