// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.Machine;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Ground a machine can drive on, as a lattice whose step is no finer than the machine is wide.
 *
 * <p>A lattice point is closed where the ground is missing, where its slope over two steps is beyond the machine's
 * limit, or where an obstacle lies within half the machine's width. Slopes over a single cell are noise to a machine
 * that is wider; slopes are taken over the step.
 */
final class HaulGround {
    /** Most lattice points; bigger ground gets a wider step. */
    static final int MOST_POINTS = 300_000;

    private final int rows;
    private final int columns;
    private final double west;
    private final double south;
    private final double step;
    private final double trueStep;
    private final double[] heights;
    private final boolean[] closed;
    private final double halfWidth;
    private final double climb;

    /**
     * What moves over the ground.
     *
     * @param width its width (m)
     * @param grade steepest ground it goes on (rad)
     * @param climb level way that a metre of rise or fall costs as much as, there and back, halved (1)
     */
    record Mover(double width, double grade, double climb) {
        static Mover of(Machine machine) {
            return new Mover(machine.width(), machine.greatestGrade(), 1 / (2 * HaulWays.ROLLING_RESISTANCE));
        }
    }

    private HaulGround(ElevationGrid ground, double step, Mover mover) {
        GridFrame frame = ground.frame();
        this.step = step;
        this.trueStep = ground.metres().length(step);
        double across = frame.eastEdge() - frame.west();
        double along = frame.northEdge() - frame.south();
        this.columns = (int) Math.floor(across / step + 1e-9) + 1;
        this.rows = (int) Math.floor(along / step + 1e-9) + 1;
        // In the middle of the ground, so that ways do not hang on which side is north.
        this.west = frame.west() + (across - (columns - 1) * step) / 2;
        this.south = frame.south() + (along - (rows - 1) * step) / 2;
        this.heights = new double[rows * columns];
        this.closed = new boolean[rows * columns];
        this.halfWidth = ground.metres().onPlan(mover.width / 2);
        this.climb = mover.climb;
        for (int i = 0; i < heights.length; i++) {
            heights[i] = ground.height(Math.max(frame.west(), Math.min(frame.eastEdge(), east(i))),
                    Math.max(frame.south(), Math.min(frame.northEdge(), north(i))));
        }
    }

    /**
     * Ground for what moves on it.
     *
     * @param ground    the ground
     * @param mover     machine or person
     * @param obstacles what it must go around
     */
    static HaulGround of(ElevationGrid ground, Mover mover, List<Ring> obstacles) {
        GridFrame frame = ground.frame();
        double area = (frame.eastEdge() - frame.west()) * (frame.northEdge() - frame.south());
        double step = Math.max(Math.max(frame.spacing(), ground.metres().onPlan(mover.width)),
                Math.sqrt(area / MOST_POINTS));
        HaulGround made = new HaulGround(ground, step, mover);
        made.closeSteep(Math.tan(mover.grade));
        obstacles.forEach(made::close);
        return made;
    }

    private void closeSteep(double greatest) {
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                double east = rise(row, Math.max(0, column - 1), row, Math.min(columns - 1, column + 1));
                double north = rise(Math.max(0, row - 1), column, Math.min(rows - 1, row + 1), column);
                closed[row * columns + column] = !(east * east + north * north <= greatest * greatest);
            }
        }
    }

    private double rise(int fromRow, int fromColumn, int toRow, int toColumn) {
        double run = (toRow - fromRow + toColumn - fromColumn) * trueStep;
        return run > 0 ? (heights[toRow * columns + toColumn] - heights[fromRow * columns + fromColumn]) / run : 0;
    }

    /** Closes what lies inside an outline or within half the machine's width of it. */
    private void close(Ring ring) {
        Ring.Box box = ring.box();
        for (int row = Math.max(0, row(box.south())); row <= Math.min(rows - 1, row(box.north())); row++) {
            int last = Math.min(columns - 1, column(box.east()));
            for (int column = Math.max(0, column(box.west())); column <= last; column++) {
                int at = row * columns + column;
                if (!closed[at] && ring.contains(place(at))) {
                    closed[at] = true;
                }
            }
        }
        for (int i = 0; i < ring.corners().size(); i++) {
            closeAlong(ring.corners().get(i), ring.corners().get((i + 1) % ring.corners().size()));
        }
    }

    /** Closes lattice points so near to a line that the machine, or the lattice's own coarseness, would cross it. */
    private void closeAlong(Point a, Point b) {
        double reach = Math.max(halfWidth, step / Math.sqrt(2));
        int lowRow = Math.max(0, row(Math.min(a.north(), b.north()) - reach));
        int highRow = Math.min(rows - 1, row(Math.max(a.north(), b.north()) + reach) + 1);
        int lowColumn = Math.max(0, column(Math.min(a.east(), b.east()) - reach));
        int highColumn = Math.min(columns - 1, column(Math.max(a.east(), b.east()) + reach) + 1);
        for (int row = lowRow; row <= highRow; row++) {
            for (int column = lowColumn; column <= highColumn; column++) {
                int at = row * columns + column;
                if (!closed[at] && place(at).distance(a, b) <= reach) {
                    closed[at] = true;
                }
            }
        }
    }

    private int row(double north) {
        return (int) Math.floor((north - south) / step);
    }

    private int column(double east) {
        return (int) Math.floor((east - west) / step);
    }

    private double east(int at) {
        return west + at % columns * step;
    }

    private double north(int at) {
        return south + at / columns * step;
    }

    /** Cost of a stretch there and back, in metres of level way, halved. */
    double cost(double length, double rise) {
        return Math.sqrt(length * length + rise * rise) + climb * Math.abs(rise);
    }

    int rows() {
        return rows;
    }

    int columns() {
        return columns;
    }

    double trueStep() {
        return trueStep;
    }

    double height(int at) {
        return heights[at];
    }

    boolean isClosed(int at) {
        return closed[at];
    }

    /** Whether the lattice points around a place given in rows and columns are open. */
    boolean isOpenAround(double row, double column) {
        int r = Math.min((int) row, rows - 1);
        int c = Math.min((int) column, columns - 1);
        int above = row > r ? 1 : 0;
        int right = column > c ? 1 : 0;
        return !closed[r * columns + c] && !closed[(r + above) * columns + c] && !closed[r * columns + c + right]
                && !closed[(r + above) * columns + c + right];
    }

    /** Height between lattice points, bilinear, at a place given in rows and columns. */
    double heightAt(double row, double column) {
        int r = Math.max(0, Math.min((int) row, rows - 2));
        int c = Math.max(0, Math.min((int) column, columns - 2));
        double v = row - r;
        double u = column - c;
        int at = r * columns + c;
        return (1 - v) * ((1 - u) * heights[at] + u * heights[at + 1])
                + v * ((1 - u) * heights[at + columns] + u * heights[at + columns + 1]);
    }

    /** Cost at a place, bilinear between the lattice points that are reached; infinite where none of the four is. */
    double costAround(HaulWays ways, Point place) {
        double u = (place.east() - west) / step;
        double v = (place.north() - south) / step;
        int c = Math.max(0, Math.min((int) u, columns - 2));
        int r = Math.max(0, Math.min((int) v, rows - 2));
        double sum = 0;
        double weights = 0;
        for (int k = 0; k < 4; k++) {
            int at = (r + k / 2) * columns + c + k % 2;
            double weight = Math.max(0, 1 - Math.abs(u - c - k % 2)) * Math.max(0, 1 - Math.abs(v - r - k / 2));
            if (ways.isReached(at)) {
                sum += weight * ways.costTo(at);
                weights += weight;
            }
        }
        return weights > 0 ? sum / weights : Double.POSITIVE_INFINITY;
    }

    Point place(int at) {
        return new Point(east(at), north(at));
    }

    /** True metres between a lattice point and a place. */
    double distance(int at, Point place) {
        return place(at).distance(place) * trueStep / step;
    }

    /** The open lattice point nearest to a place, no farther off than a reach (projected m); -1 for none. */
    int openNear(Point place, double reach) {
        return openWithin(place, reach).stream().min(Comparator.comparingDouble(at -> place(at).distance(place)))
                .orElse(-1);
    }

    /** Open lattice points no farther from a place than a reach (projected m). */
    List<Integer> openWithin(Point place, double reach) {
        List<Integer> open = new ArrayList<>();
        int lastRow = Math.min(rows - 1, row(place.north() + reach) + 1);
        int lastColumn = Math.min(columns - 1, column(place.east() + reach) + 1);
        for (int row = Math.max(0, row(place.north() - reach)); row <= lastRow; row++) {
            for (int column = Math.max(0, column(place.east() - reach)); column <= lastColumn; column++) {
                int at = row * columns + column;
                if (!closed[at] && place(at).distance(place) <= reach) {
                    open.add(at);
                }
            }
        }
        return open;
    }

    /** Open lattice points along the outside of an outline. */
    List<Integer> openAround(Ring ring) {
        List<Integer> around = new ArrayList<>();
        for (int i = 0; i < ring.corners().size(); i++) {
            Point a = ring.corners().get(i);
            Point b = ring.corners().get((i + 1) % ring.corners().size());
            int pieces = Math.max(1, (int) Math.ceil(a.distance(b) / step));
            for (int k = 0; k < pieces; k++) {
                double t = (double) k / pieces;
                int at = openNear(new Point(a.east() + t * (b.east() - a.east()),
                        a.north() + t * (b.north() - a.north())), 3 * step + halfWidth);
                if (at >= 0 && (around.isEmpty() || around.get(around.size() - 1) != at)) {
                    around.add(at);
                }
            }
        }
        return around;
    }
}
