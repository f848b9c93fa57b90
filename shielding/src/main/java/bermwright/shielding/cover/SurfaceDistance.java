// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.numeric.Bracket;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Distances from points below a surface of triangles to it: nearest, along a direction, and straight up. */
final class SurfaceDistance {
    private static final int SHIFT = 1;
    /** Cells behind an upright face over which the nodes are drawn down to its foot. */
    private static final double DRAWN_DOWN = 2;
    /** What is not nearer by more than this is not looked at (m). */
    private static final double NEARER = 5e-4;

    private final GridFrame frame;
    private final double[] heights;

    private final double lowest;
    private final ElevationGrid whole;
    private volatile boolean reachedBeyond;
    /** Upright faces that the surface ends at. */
    private final List<UprightFace> faces;
    /** Lowest and highest heights of square tiles, by level: 2 cells along the side of the first, then twice that. */
    private final List<double[][]> levels = new ArrayList<>();

    /** Distances about a place: those in the finer patch there, where the surface has one. */
    SurfaceDistance(ElevationGrid surface, Point about, List<UprightFace> faces) {
        this.faces = faces;
        ElevationGrid near = surface.around(about.east(), about.north());
        whole = surface;
        frame = near.frame();
        heights = near.heights();
        int rows = (frame.rows() - 2 >> SHIFT) + 1;
        int columns = (frame.columns() - 2 >> SHIFT) + 1;
        levels.add(tiles(rows, columns));
        double[][] last = levels.get(0);
        while (last[0].length > 1) {
            last = halved(last, (int) last[2][0], (int) last[2][1]);
            levels.add(last);
        }
        lowest = Double.isNaN(last[0][0]) ? Double.NEGATIVE_INFINITY : last[0][0];
    }

    /** Whether any distance so far hung on what lies beyond the patch. */
    boolean reachedBeyond() {
        return reachedBeyond;
    }

    private double[][] tiles(int rows, int columns) {
        double[] low = new double[rows * columns];
        double[] high = new double[low.length];
        int side = 1 << SHIFT;
        for (int t = 0; t < low.length; t++) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            int row = t / columns * side;
            int column = t % columns * side;
            for (int r = row; r <= Math.min(row + side, frame.rows() - 1); r++) {
                for (int c = column; c <= Math.min(column + side, frame.columns() - 1); c++) {
                    // Not a number stays.
                    least = Math.min(least, heights[r * frame.columns() + c]);
                    most = Math.max(most, heights[r * frame.columns() + c]);
                }
            }
            low[t] = least;
            high[t] = most;
        }
        return new double[][] {low, high, {rows, columns}};
    }

    private static double[][] halved(double[][] finer, int rows, int columns) {
        int fewerRows = (rows + 1) / 2;
        int fewerColumns = (columns + 1) / 2;
        double[] low = new double[fewerRows * fewerColumns];
        double[] high = new double[low.length];
        Arrays.fill(low, Double.POSITIVE_INFINITY);
        Arrays.fill(high, Double.NEGATIVE_INFINITY);
        for (int t = 0; t < rows * columns; t++) {
            int into = t / columns / 2 * fewerColumns + t % columns / 2;
            low[into] = Math.min(low[into], finer[0][t]);
            high[into] = Math.max(high[into], finer[1][t]);
        }
        return new double[][] {low, high, {fewerRows, fewerColumns}};
    }

    /**
     * How far the surface stands above a point; negative below it; not a number off the grid. Behind an upright face
     * the surface is taken as far back as the nodes are not drawn down to its foot.
     */
    double above(Vec3 point) {
        double x = point.x();
        double y = point.y();
        for (UprightFace face : faces) {
            double back = Math.max(0, face.ahead(x, y) + DRAWN_DOWN * frame.spacing());
            x -= back * face.east();
            y -= back * face.north();
        }
        return onTriangles(x, y) - point.z();
    }

    private double onTriangles(double east, double north) {
        double x = (east - frame.west()) / frame.spacing();
        double y = (north - frame.south()) / frame.spacing();
        if (!(x >= 0 && y >= 0 && x <= frame.columns() - 1 && y <= frame.rows() - 1)) {
            reachedBeyond = true;
            return whole.frame().equals(frame) ? Double.NaN : whole.triangleHeight(new Point(east, north));
        }
        int c = Math.min((int) x, frame.columns() - 2);
        int r = Math.min((int) y, frame.rows() - 2);
        double u = x - c;
        double v = y - r;
        int at = r * frame.columns() + c;
        double corner = heights[at];
        double opposite = heights[at + frame.columns() + 1];
        if (u >= v) {
            return corner + u * (heights[at + 1] - corner) + v * (opposite - heights[at + 1]);
        }
        double north1 = heights[at + frame.columns()];
        return corner + v * (north1 - corner) + u * (opposite - north1);
    }

    /** The nearest point of the surface, known to be no farther than a bound. */
    double nearest(Vec3 point, double bound) {
        double best = bound;
        for (UprightFace face : faces) {
            best = Math.max(0, Math.min(best, -face.ahead(point.x(), point.y())));
        }
        return new Search(point).nearest(best, levels.size() - 1, 0);
    }

    /** The search from one point. */
    private final class Search {
        private final Vec3 point;
        private final PointToTriangle triangles;

        Search(Vec3 point) {
            this.point = point;
            triangles = new PointToTriangle(point);
        }

        /** The same in one tile of a level: from the tile that may come nearest on. */
        double nearest(double bound, int level, int tile) {
            double best = bound;
            int columns = (int) levels.get(level)[2][1];
            if (level == 0) {
                int side = 1 << SHIFT;
                int row = tile / columns * side;
                int column = tile % columns * side;
                for (int r = row; r < Math.min(row + side, frame.rows() - 1); r++) {
                    for (int c = column; c < Math.min(column + side, frame.columns() - 1); c++) {
                        best = !(least(point, r, c) >= best - NEARER) && isBehindFaces(r, c)
                                ? Math.min(best, cell(triangles, r, c)) : best;
                    }
                }
                return best;
            }
            double[][] finer = levels.get(level - 1);
            int rowsBelow = (int) finer[2][0];
            int columnsBelow = (int) finer[2][1];
            double[] least = new double[4];
            for (int k = 0; k < 4; k++) {
                int r = tile / columns * 2 + k / 2;
                int c = tile % columns * 2 + k % 2;
                least[k] = r < rowsBelow && c < columnsBelow ? least(point, level - 1, r, c) : Double.POSITIVE_INFINITY;
            }
            for (int turn = 0; turn < 4; turn++) {
                int next = 0;
                for (int k = 1; k < 4; k++) {
                    next = least[k] < least[next] || Double.isNaN(least[k]) ? k : next;
                }
                if (least[next] >= best - NEARER) {
                    return best;
                }
                best = nearest(best, level - 1,
                        (tile / columns * 2 + next / 2) * columnsBelow + tile % columns * 2 + next % 2);
                least[next] = Double.POSITIVE_INFINITY;
            }
            return best;
        }
    }

    /** No point of a cell's surface is nearer than this; not a number where a height is missing. */
    private double least(Vec3 point, int row, int column) {
        int at = row * frame.columns() + column;
        double one = heights[at];
        double two = heights[at + 1];
        double three = heights[at + frame.columns()];
        double four = heights[at + frame.columns() + 1];
        double dx = beside(point.x() - frame.east(column), frame.spacing());
        double dy = beside(point.y() - frame.north(row), frame.spacing());
        double low = Math.min(Math.min(one, two), Math.min(three, four));
        double high = Math.max(Math.max(one, two), Math.max(three, four));
        double dz = Math.max(0, Math.max(low - point.z(), point.z() - high));
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    private static double beside(double from, double side) {
        return Math.max(0, Math.max(-from, from - side));
    }

    /** No point of a tile's surface is nearer than this; not a number where a height is missing. */
    private double least(Vec3 point, int level, int row, int column) {
        double[][] tiles = levels.get(level);
        int at = row * (int) tiles[2][1] + column;
        double side = (1 << SHIFT + level) * frame.spacing();
        double dx = beside(point.x() - frame.west() - column * side, side);
        double dy = beside(point.y() - frame.south() - row * side, side);
        double dz = Math.max(0, Math.max(tiles[0][at] - point.z(), point.z() - tiles[1][at]));
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    private boolean isBehindFaces(int row, int column) {
        for (UprightFace face : faces) {
            if (face.ahead(frame.east(column) + frame.spacing() / 2, frame.north(row) + frame.spacing() / 2)
                    > -DRAWN_DOWN * frame.spacing()) {
                return false;
            }
        }
        return true;
    }

    private double cell(PointToTriangle point, int row, int column) {
        int at = row * frame.columns() + column;
        double west = frame.east(column);
        double east = frame.east(column + 1);
        double south = frame.north(row);
        double north = frame.north(row + 1);
        double corner = heights[at];
        double opposite = heights[at + frame.columns() + 1];
        double one = point.corner(0, west, south, corner).corner(1, east, south, heights[at + 1])
                .corner(2, east, north, opposite).distance();
        double other = point.corner(1, east, north, opposite).corner(2, west, north, heights[at + frame.columns()])
                .distance();
        return Double.isNaN(one) ? Double.isNaN(other) ? Double.POSITIVE_INFINITY : other
                : Double.isNaN(other) ? one : Math.min(one, other);
    }

    /** The way to the surface along a unit direction; not a number where it never comes out over the grid. */
    double along(Vec3 point, Vec3 direction) {
        double step = frame.spacing() / 4;
        double reach = (frame.rows() + frame.columns()) * frame.spacing();
        double before = 0;
        // A way that does not rise never comes out below the lowest of the surface.
        double deepest = direction.z() > 0 ? Double.NEGATIVE_INFINITY : lowest;
        for (double at = step; at < reach && point.z() + at * direction.z() > deepest; at += step) {
            double above = above(point.plus(direction.times(at)));
            if (Double.isNaN(above)) {
                return Double.NaN;
            }
            if (above <= 0 || isOut(point, direction, at)) {
                return Bracket.halved(before, at, 40, in -> above(point.plus(direction.times(in))) > 0
                        && !isOut(point, direction, in)).middle();
            }
            before = at;
        }
        return Double.NaN;
    }

    private boolean isOut(Vec3 point, Vec3 direction, double at) {
        for (int i = 0; i < faces.size(); i++) {
            if (faces.get(i).ahead(point.x() + at * direction.x(), point.y() + at * direction.y()) > 0) {
                return true;
            }
        }
        return false;
    }
}
