// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import java.util.Locale;

/** The scales that sheets are drawn at, and round distances. */
final class Scales {
    private static final int[] USUAL = {100, 200, 500, 1000, 2000, 5000};
    private static final double MILLI = 1000;

    private Scales() {
    }

    /**
     * The largest scale at which something fits; beyond 1:2,000 the next of the same row.
     *
     * @param wide what is drawn, along and up (m)
     * @param room room on paper, along and up (mm)
     * @return how many metres a metre on paper stands for (1)
     */
    static int largest(double[] wide, double[] room) {
        for (int decade = 1; decade <= 1_000_000; decade *= 100) {
            for (int scale : USUAL) {
                int of = scale * decade;
                if (MILLI * wide[0] / of <= room[0] && MILLI * wide[1] / of <= room[1]) {
                    return of;
                }
            }
        }
        throw new IllegalArgumentException("a drawing of " + wide[0] + " m by " + wide[1] + " m is too large");
    }

    /** The least of 1, 2 and 5 times a power of ten that is not below a distance. */
    static double round(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (double times : new double[] {1, 2, 5, 10}) {
            if (times * power >= least * (1 - 1e-9)) {
                return times * power;
            }
        }
        return 10 * power;
    }

    /** The greatest of 1, 2 and 5 times a power of ten that is not above a distance. */
    static double roundBelow(double most) {
        double above = round(most);
        for (double times : new double[] {1, 0.5, 0.4, 0.2}) {
            double step = above * times;
            if (step <= most * (1 + 1e-9) && Math.abs(step - round(step)) < 1e-9 * step) {
                return step;
            }
        }
        return above / 10;
    }

    /** Millimetres on paper for a true length (m). */
    static double onPaper(double length, int scale) {
        return MILLI * length / scale;
    }

    /** A scale in words, thousands apart. */
    static String words(int scale) {
        return "1:" + String.format(Locale.ROOT, "%,d", scale);
    }
}
