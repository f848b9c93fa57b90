// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import java.util.Arrays;

/**
 * The best heading of each cell of a strip. Slopes, gear, pads and the foremost nodes of bed and sweep bound the score
 * of each heading from above; it is worked out only where the bound does not lie below the best score so far, the
 * highest bound first. The best heading and its score are those that working out every heading would give, in whatever
 * order they are asked. Belongs to one thread.
 */
final class StripSearch {
    private final SurveyGround ground;
    private final StripBounds strip;
    private final NodeMargins margins;
    private final int headings;
    private final boolean bounded;
    private final double[] best = new double[StripBounds.CELLS];
    private final int[] bestHeading = new int[StripBounds.CELLS];
    private final int[] first = new int[StripBounds.CELLS];
    private final double[] highest = new double[StripBounds.CELLS];
    private final boolean[] mayLie = new boolean[StripBounds.CELLS];
    private final int[] reached = new int[StripBounds.CELLS];

    /**
     * A search over strips of a ground.
     *
     * @param ground   the ground
     * @param strip    the bounds of a strip's headings
     * @param margins  what works a heading out
     * @param headings how many headings (1)
     * @param bounded  false to work out every heading, for checking
     */
    StripSearch(SurveyGround ground, StripBounds strip, NodeMargins margins, int headings, boolean bounded) {
        this.ground = ground;
        this.strip = strip;
        this.margins = margins;
        this.headings = headings;
        this.bounded = bounded;
    }

    /** Searches the strip that the bounds were filled with, but for cells that are out for another reason. */
    void search(int row, int from, int count, boolean[] out) {
        Arrays.fill(best, 0, count, -1);
        Arrays.fill(bestHeading, 0, count, -1);
        highest(count);
        for (int c = 0; c < count; c++) {
            mayLie[c] = highest[c] >= 0;
        }
        int at = ground.place(row, from);
        if (bounded) {
            strip.lower(row, from, count);
            highest(count);
            for (int c = 0; c < count; c++) {
                if (out[c] || !(highest[c] >= 0)) {
                    best[c] = Double.POSITIVE_INFINITY;
                } else {
                    ask(first[c], at + c, c);
                }
            }
        }
        for (int k = 0; k < headings; k++) {
            double[] bound = strip.bounds(k);
            for (int c = 0; c < count; c++) {
                if (bound[c] >= best[c] && !(bounded && first[c] == k)) {
                    ask(k, at + c, c);
                }
            }
        }
        reach(count);
    }

    /** The heading with the highest bound at each cell, and that bound. */
    private void highest(int count) {
        Arrays.fill(highest, 0, count, Double.NEGATIVE_INFINITY);
        for (int k = 0; k < headings; k++) {
            double[] bound = strip.bounds(k);
            for (int c = 0; c < count; c++) {
                if (bound[c] > highest[c]) {
                    highest[c] = bound[c];
                    first[c] = k;
                }
            }
        }
    }

    private void ask(int k, int at, int c) {
        double bound = strip.bounds(k)[c];
        if (!(bound >= 0)) {
            return;
        }
        double floor = bounded ? Math.max(0, best[c]) : Double.NEGATIVE_INFINITY;
        double score = margins.score(k, at, c, bound, floor);
        if (score >= 0 && (score > best[c] || score == best[c] && k < bestHeading[c])) {
            best[c] = score;
            bestHeading[c] = k;
        }
    }

    /** Counts the headings of each cell that the bounds alone do not put below its best score. */
    private void reach(int count) {
        Arrays.fill(reached, 0, count, 0);
        for (int k = 0; k < headings; k++) {
            double[] bound = strip.bounds(k);
            for (int c = 0; c < count; c++) {
                reached[c] += bound[c] >= Math.max(0, best[c]) ? 1 : 0;
            }
        }
    }

    /** The best score of a cell; below zero where there is none. */
    double best(int c) {
        return best[c];
    }

    /** The heading of the best score; the least of equal ones; -1 where there is none. */
    int heading(int c) {
        return bestHeading[c];
    }

    /** Whether slopes, gear and pads leave a heading. */
    boolean mayLie(int c) {
        return mayLie[c];
    }

    /** How many headings the bounds do not put below the best score, or below zero where there is none. */
    int reached(int c) {
        return reached[c];
    }
}
