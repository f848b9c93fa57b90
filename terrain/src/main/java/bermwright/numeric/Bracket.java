// SPDX-License-Identifier: Apache-2.0
package bermwright.numeric;

import java.util.function.DoublePredicate;

/**
 * Two values between which an answer turns from yes to no: bisection, which asks at the middle and keeps the half in
 * which the answer turns.
 *
 * <p>Valid where the answer turns once between the two; where it turns several times, one of those places is found.
 * Values are in whatever unit the two ends were given.
 *
 * @param low  the end at which the answer is yes, or the end given where it never was
 * @param high the end at which the answer is no, or the end given where it always was yes
 */
public record Bracket(double low, double high) {
    /**
     * Halves a number of times.
     *
     * @param low   the end at which the answer is yes
     * @param high  the end at which the answer is no; may be less than {@code low}
     * @param times how often to halve (1), zero or more
     * @param isLow whether a value lies on the side of {@code low}
     * @return the ends, 2^-times as far apart
     */
    public static Bracket halved(double low, double high, int times, DoublePredicate isLow) {
        Bracket ends = new Bracket(low, high);
        for (int i = 0; i < times && ends.low != ends.high; i++) {
            ends = ends.half(isLow);
        }
        return ends;
    }

    /**
     * Halves until the ends are near each other.
     *
     * @param low   the end at which the answer is yes
     * @param high  the end at which the answer is no; where it is less than {@code low} nothing is asked
     * @param width how far apart the ends may stay, greater than 0
     * @param isLow whether a value lies on the side of {@code low}
     * @return the ends, {@code width} apart at most
     */
    public static Bracket narrowed(double low, double high, double width, DoublePredicate isLow) {
        Bracket ends = new Bracket(low, high);
        while (ends.high - ends.low > width) {
            ends = ends.half(isLow);
        }
        return ends;
    }

    /**
     * Between the ends.
     *
     * @return the mean of the ends
     */
    public double middle() {
        return (low + high) / 2;
    }

    private Bracket half(DoublePredicate isLow) {
        double middle = middle();
        return isLow.test(middle) ? new Bracket(middle, high) : new Bracket(low, middle);
    }
}
