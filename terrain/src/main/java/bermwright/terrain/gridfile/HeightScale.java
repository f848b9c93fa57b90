// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.util.concurrent.atomic.LongAdder;

/**
 * How stored numbers become heights: height = stored x factor + offset, in metres; what stands for a missing height;
 * and how many undeclared fill values were met.
 *
 * <p>An undeclared fill value is one of the numbers that files use for it, where as a height it would lie outside the
 * relief of the Moon; the same numbers are treated the same in every format.
 */
final class HeightScale {
    /** The Moon's lowest and highest ground over its sphere lie within these (m): -9.1 and 10.8 km. */
    static final double LOWEST_OF_MOON = -9_200;
    static final double HIGHEST_OF_MOON = 10_900;
    private static final double[] USUAL_FILLS = {-9999, -32768, -32767, -99999, 32767, 65535, -2147483648.0};
    /** Single precision fill values start here; no height in any unit does. */
    private static final double ENDLESS = 1e30;

    private final double factor;
    private final double offset;
    private final double[] marks;
    private final FileTrouble trouble;
    private final boolean zeroIsFill;
    /** Stored numbers between these are heights as the Moon has them, whatever the rounding. */
    private final double least;
    private final double most;
    private final LongAdder fillsMet;
    private volatile double fillMet = Double.NaN;

    HeightScale(double factor, double offset, double[] marks, FileTrouble trouble) {
        this(factor, offset, marks, trouble, false);
    }

    private HeightScale(double factor, double offset, double[] marks, FileTrouble trouble, boolean zeroIsFill) {
        this.factor = factor;
        this.offset = offset;
        this.marks = marks.clone();
        this.trouble = trouble;
        this.zeroIsFill = zeroIsFill;
        this.fillsMet = new LongAdder();
        double one = (LOWEST_OF_MOON + 1 - offset) / factor;
        double other = (HIGHEST_OF_MOON - 1 - offset) / factor;
        this.least = Math.min(one, other);
        this.most = Math.max(one, other);
    }

    /** The same where a stored 0 is a fill value. */
    HeightScale withZeroAsFill() {
        return new HeightScale(factor, offset, marks, trouble, true);
    }

    boolean zeroIsFill() {
        return zeroIsFill;
    }

    boolean declares(double stored) {
        for (double mark : marks) {
            if (mark == stored) {
                return true;
            }
        }
        return false;
    }

    /** How many undeclared fill values were met so far. */
    long fillsMet() {
        return fillsMet.sum();
    }

    /** One of the undeclared fill values met; {@code NaN} where there was none. */
    double fillMet() {
        return fillMet;
    }

    /** Turns stored numbers into heights, {@code NaN} where missing. */
    void convert(double[] values, int from, int count) {
        if (isUsual(values, from, count)) {
            if (factor != 1 || offset != 0) {
                for (int i = from; i < from + count; i++) {
                    values[i] = values[i] * factor + offset;
                }
            }
            return;
        }
        for (int i = from; i < from + count; i++) {
            double stored = values[i];
            double height = stored * factor + offset;
            if (zeroIsFill && stored == 0 || declares(stored)) {
                values[i] = Double.NaN;
            } else if (height < LOWEST_OF_MOON || height > HIGHEST_OF_MOON) {
                values[i] = unusual(stored, height);
            } else {
                values[i] = height;
            }
        }
    }

    /** Whether all numbers are heights as the Moon has them and none can stand for a missing one. */
    private boolean isUsual(double[] values, int from, int count) {
        boolean other = zeroIsFill;
        for (double mark : marks) {
            other |= mark >= least && mark <= most;
        }
        for (int i = from; i < from + count; i++) {
            other |= !(values[i] >= least && values[i] <= most);
        }
        return !other;
    }

    private double unusual(double stored, double height) {
        boolean fill = Math.abs(stored) >= ENDLESS;
        for (double usual : USUAL_FILLS) {
            fill |= stored == usual;
        }
        if (fill) {
            fillMet = stored;
            fillsMet.increment();
            return Double.NaN;
        }
        if (Math.abs(height) > HeightLimits.ABSURD) {
            throw HeightLimits.absurd(height, trouble);
        }
        return height;
    }
}
