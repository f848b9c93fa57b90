// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Require;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Lines of equal height: the ground is cut cell by cell, heights linear along the cells' sides, and the cuts are
 * joined. In a cell with two opposite high corners the mean of the four decides which corners belong together.
 *
 * <p>A height equal to a level counts as above it. Lines end at the edge and at missing heights.
 */
public final class Contours {
    private static final int MOST_LEVELS = 10_000;
    private static final int ROWS_AT_A_TIME = 64;
    private static final int SOUTH = 0;
    private static final int EAST = 1;
    private static final int NORTH = 2;
    private static final int WEST = 3;
    /** From and to sides of the cuts by which corners are high: south-west 1, south-east 2, north-east 4, rest 8. */
    private static final int[][] CUTS = {{}, {SOUTH, WEST}, {EAST, SOUTH}, {EAST, WEST}, {NORTH, EAST},
        {SOUTH, WEST, NORTH, EAST}, {NORTH, SOUTH}, {NORTH, WEST}, {WEST, NORTH}, {SOUTH, NORTH},
        {EAST, SOUTH, WEST, NORTH}, {EAST, NORTH}, {WEST, EAST}, {SOUTH, EAST}, {WEST, SOUTH}, {}};
    private static final int[] SADDLE_5_HIGH = {NORTH, WEST, SOUTH, EAST};
    private static final int[] SADDLE_10_HIGH = {WEST, SOUTH, EAST, NORTH};

    private final ElevationGrid grid;
    private final double[] levels;

    private Contours(ElevationGrid grid, double[] levels) {
        this.grid = grid;
        this.levels = levels;
    }

    /**
     * Contour lines at given levels.
     *
     * @param grid   the ground
     * @param levels heights of the lines (m), rising
     * @return the lines, by level, in an order that depends on the ground alone
     */
    public static List<ContourLine> at(ElevationGrid grid, double... levels) {
        for (int i = 1; i < levels.length; i++) {
            Require.that(levels[i] > levels[i - 1], "level %s m does not rise over the one before, %s m.", levels[i],
                    levels[i - 1]);
        }
        return new Contours(grid, levels.clone()).lines();
    }

    /**
     * Contour lines at all multiples of an interval.
     *
     * @param grid     the ground
     * @param interval height between two lines (m), positive, such that no more than 10,000 levels come
     * @return the lines, by level
     */
    public static List<ContourLine> every(ElevationGrid grid, double interval) {
        Require.positive("contour interval", interval, "m");
        double lowest = grid.lowest();
        if (Double.isNaN(lowest)) {
            return List.of();
        }
        long first = (long) Math.ceil(lowest / interval);
        long last = (long) Math.floor(grid.highest() / interval);
        Require.that(last - first < MOST_LEVELS, "an interval of %s m gives %s levels; at most %s are drawn.",
                interval, last - first + 1, MOST_LEVELS);
        double[] levels = new double[(int) Math.max(0, last - first + 1)];
        for (int i = 0; i < levels.length; i++) {
            levels[i] = (first + i) * interval;
        }
        return new Contours(grid, levels).lines();
    }

    private List<ContourLine> lines() {
        int bands = (grid.frame().rows() - 1 + ROWS_AT_A_TIME - 1) / ROWS_AT_A_TIME;
        List<CutList[]> cut = IntStream.range(0, bands).parallel().mapToObj(this::cutBand).toList();
        return IntStream.range(0, levels.length).parallel().mapToObj(level -> {
            CutList all = new CutList();
            cut.forEach(band -> all.addAll(band[level]));
            return new ContourJoin(grid, levels[level], all).lines();
        }).flatMap(List::stream).toList();
    }

    private CutList[] cutBand(int band) {
        CutList[] cuts = new CutList[levels.length];
        Arrays.setAll(cuts, i -> new CutList());
        int last = Math.min(grid.frame().rows() - 1, (band + 1) * ROWS_AT_A_TIME);
        for (int row = band * ROWS_AT_A_TIME; row < last; row++) {
            for (int column = 0; column < grid.frame().columns() - 1; column++) {
                cutCell(row, column, cuts);
            }
        }
        return cuts;
    }

    private void cutCell(int row, int column, CutList[] cuts) {
        double southwest = grid.nodeHeight(row, column);
        double southeast = grid.nodeHeight(row, column + 1);
        double northeast = grid.nodeHeight(row + 1, column + 1);
        double northwest = grid.nodeHeight(row + 1, column);
        double low = Math.min(Math.min(southwest, southeast), Math.min(northeast, northwest));
        double high = Math.max(Math.max(southwest, southeast), Math.max(northeast, northwest));
        if (!(low <= high) || levels.length == 0 || high < levels[0] || low >= levels[levels.length - 1]) {
            return;
        }
        int level = Arrays.binarySearch(levels, low);
        for (level = level < 0 ? -level - 1 : level + 1; level < levels.length && levels[level] <= high; level++) {
            double at = levels[level];
            int corners = (southwest >= at ? 1 : 0) | (southeast >= at ? 2 : 0) | (northeast >= at ? 4 : 0)
                    | (northwest >= at ? 8 : 0);
            int[] sides = CUTS[corners];
            if (sides.length == 4 && (southwest + southeast + northeast + northwest) / 4 >= at) {
                sides = corners == 5 ? SADDLE_5_HIGH : SADDLE_10_HIGH;
            }
            for (int i = 0; i < sides.length; i += 2) {
                cuts[level].add(side(row, column, sides[i]), side(row, column, sides[i + 1]));
            }
        }
    }

    /** The number of a cell's side: twice the node it starts from, plus one for a side that runs north. */
    private int side(int row, int column, int which) {
        GridFrame frame = grid.frame();
        return switch (which) {
            case SOUTH -> 2 * (row * frame.columns() + column);
            case NORTH -> 2 * ((row + 1) * frame.columns() + column);
            case WEST -> 2 * (row * frame.columns() + column) + 1;
            default -> 2 * (row * frame.columns() + column + 1) + 1;
        };
    }

    /** Cuts through cells, each from one side to another. */
    static final class CutList {
        private int[] sides = new int[8];
        private int count;

        void add(int from, int to) {
            if (2 * count + 2 > sides.length) {
                sides = Arrays.copyOf(sides, 2 * sides.length);
            }
            sides[2 * count] = from;
            sides[2 * count + 1] = to;
            count++;
        }

        void addAll(CutList more) {
            if (2 * (count + more.count) > sides.length) {
                sides = Arrays.copyOf(sides, Math.max(2 * sides.length, 2 * (count + more.count)));
            }
            System.arraycopy(more.sides, 0, sides, 2 * count, 2 * more.count);
            count += more.count;
        }

        int count() {
            return count;
        }

        int from(int cut) {
            return sides[2 * cut];
        }

        int to(int cut) {
            return sides[2 * cut + 1];
        }
    }
}
