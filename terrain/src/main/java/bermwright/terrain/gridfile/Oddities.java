// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.NodeRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * What looks odd in a file's heights, from some of its rows: another unit, radii instead of heights, relief that the
 * Moon has not, a fill value of 0 along an edge. Nothing is said where nothing is odd.
 */
final class Oddities {
    private static final int MOST_ROWS = 65;
    private static final int LEAST_ROWS = 3;
    /** How many heights may be unpacked to look. */
    private static final long MOST_UNPACKED = 1L << 24;
    /** A wall steeper than this between zeros and other heights is the end of the data, not of the ground (1). */
    private static final double CLIFF = Math.tan(Math.toRadians(60));
    /** Nor is a lower step taken for one (m). */
    private static final double LEAST_JUMP = 30;
    /** Radii of the Moon's surface lie within these (m). */
    private static final double LEAST_RADIUS = 1_725_000;
    private static final double GREATEST_RADIUS = 1_750_000;
    private static final double RADIUS_IN_KM = 1_000;
    /** Real ground on the Moon has a median slope above this (1), 0.5 degree; maria at 5 m to 1 km have more. */
    private static final double LEAST_MEDIAN_SLOPE = Math.tan(Math.toRadians(0.5));
    private static final double GREATEST_MEDIAN_SLOPE = Math.tan(Math.toRadians(45));
    /** Ground this much flatter than real ground is looked at as if it were in kilometres (1). */
    private static final double TOO_FLAT = LEAST_MEDIAN_SLOPE / 8;
    private static final int ENOUGH_SLOPES = 200;

    private final List<String> sayings = new ArrayList<>();
    private final StoredGround ground;
    private final double spacing;
    private final boolean unitStated;
    private boolean zeroIsFill;
    private double lowest = Double.POSITIVE_INFINITY;
    private double highest = Double.NEGATIVE_INFINITY;
    private final double[] slopes = new double[1 << 16];
    private int slopesKept;

    private Oddities(GroundFacts facts, double metreScale) {
        ground = facts.ground();
        spacing = ground.frame().spacing() * metreScale;
        unitStated = !facts.heights().verticalUnit().contains("not stated");
    }

    static Oddities of(GroundFacts facts, double metreScale) {
        Oddities odd = new Oddities(facts, metreScale);
        odd.look();
        return odd;
    }

    List<String> sayings() {
        return sayings;
    }

    boolean zeroIsFill() {
        return zeroIsFill;
    }

    private void look() {
        GridFrame frame = ground.frame();
        long perRow = (long) frame.columns() * (ground.samples().isPlain() ? 1 : ground.blockRows());
        int rows = (int) Math.min(frame.rows(), Math.max(LEAST_ROWS, Math.min(MOST_ROWS, MOST_UNPACKED / perRow)));
        double[][] seen = new double[rows][frame.columns()];
        int[] at = new int[rows];
        for (int i = 0; i < rows; i++) {
            at[i] = (int) Math.round((double) i * (frame.rows() - 1) / (rows - 1));
            ground.read(new NodeRange(at[i], 0, 1, frame.columns()), seen[i]);
            survey(seen[i]);
        }
        if (lowest > highest) {
            return;
        }
        sayAboutHeights();
        if (lowest <= 0 && highest >= 0) {
            lookForZeros(seen, at);
        }
    }

    private void survey(double[] row) {
        for (int i = 0; i < row.length; i++) {
            double h = row[i];
            if (!Double.isNaN(h)) {
                lowest = Math.min(lowest, h);
                highest = Math.max(highest, h);
                if (i > 0 && slopesKept < slopes.length && !Double.isNaN(row[i - 1])) {
                    slopes[slopesKept++] = Math.abs(h - row[i - 1]) / spacing;
                }
            }
        }
    }

    private void sayAboutHeights() {
        String range = String.format(Locale.ROOT, "Heights reach from %.1f to %.1f m", lowest, highest);
        if (lowest >= LEAST_RADIUS && highest <= GREATEST_RADIUS) {
            sayings.add(range + ": they look like radii from the Moon's centre. Take 1737400 m off; slopes are right"
                    + " either way.");
        } else if (lowest >= LEAST_RADIUS / RADIUS_IN_KM && highest <= GREATEST_RADIUS / RADIUS_IN_KM && !unitStated
                && looksLikeKilometres()) {
            sayings.add(range + ": they look like radii from the Moon's centre in kilometres, and were read as metres."
                    + kilometres());
        } else if (lowest < HeightScale.LOWEST_OF_MOON || highest > HeightScale.HIGHEST_OF_MOON) {
            sayings.add(range + ", more than the Moon has (-9.1 to 10.8 km over 1737.4 km): are they in feet, do they"
                    + " count from another sphere, or is a mark for missing heights not declared?");
        } else if (!unitStated && looksLikeKilometres()) {
            sayings.add(range + ", and half of the ground is flatter than "
                    + String.format(Locale.ROOT, "%.3f deg", Math.toDegrees(Math.atan(median())))
                    + ": they look like kilometres, and were read as metres." + kilometres());
        }
    }

    private static String kilometres() {
        return " gdal_translate -scale 0 1 0 1000 IN OUT makes metres of them; a stated unit (tag or label keyword) is"
                + " read.";
    }

    private double median() {
        return Arrays.stream(slopes, 0, slopesKept).sorted().skip(slopesKept / 2).findFirst().orElse(0);
    }

    /** Far too flat in metres and like real ground in kilometres. */
    private boolean looksLikeKilometres() {
        double median = slopesKept < ENOUGH_SLOPES ? 0 : median();
        return median > 0 && median < TOO_FLAT && median * 1000 > LEAST_MEDIAN_SLOPE
                && median * 1000 < GREATEST_MEDIAN_SLOPE;
    }

    /** Zeros from an edge inwards that end at a cliff are a fill value. */
    private void lookForZeros(double[][] seen, int[] at) {
        if (ground.scale().declares(0)) {
            return;
        }
        boolean cliff = false;
        for (double[] row : seen) {
            cliff |= endsAtACliff(row, true) || endsAtACliff(row, false);
        }
        cliff |= topEndsAtACliff(seen, at, 0, 1) || topEndsAtACliff(seen, at, seen.length - 1, -1);
        if (cliff) {
            zeroIsFill = true;
            sayings.add("Heights of exactly 0 along an edge end at a cliff: 0 was taken as a mark for missing heights."
                    + " gdal_edit.py -a_nodata 0 FILE declares it; if 0 is a height, declare another mark.");
        }
    }

    private boolean endsAtACliff(double[] row, boolean fromWest) {
        int i = 0;
        while (i < row.length && at(row, i, fromWest) == 0) {
            i++;
        }
        return i >= 2 && i < row.length && Math.abs(at(row, i, fromWest)) > Math.max(LEAST_JUMP, CLIFF * spacing);
    }

    private static double at(double[] row, int i, boolean fromWest) {
        return row[fromWest ? i : row.length - 1 - i];
    }

    /** Whether whole rows of zeros at the first or last row seen end at a cliff; the place is found by halving. */
    private boolean topEndsAtACliff(double[][] seen, int[] at, int from, int step) {
        int i = from;
        while (i >= 0 && i < seen.length && isZero(seen[i])) {
            i += step;
        }
        if (i == from || i < 0 || i >= seen.length) {
            return false;
        }
        int zero = at[i - step];
        int other = at[i];
        double[] row = seen[i];
        while (Math.abs(other - zero) > 1) {
            int middle = (other + zero) / 2;
            double[] between = new double[row.length];
            ground.read(new NodeRange(middle, 0, 1, row.length), between);
            if (isZero(between)) {
                zero = middle;
            } else {
                other = middle;
                row = between;
            }
        }
        double[] heights = Arrays.stream(row).filter(h -> h != 0 && !Double.isNaN(h)).map(Math::abs).sorted().toArray();
        return heights.length > 0 && heights[heights.length / 2] > Math.max(LEAST_JUMP, CLIFF * spacing);
    }

    private static boolean isZero(double[] row) {
        for (double h : row) {
            if (h != 0) {
                return false;
            }
        }
        return true;
    }
}
