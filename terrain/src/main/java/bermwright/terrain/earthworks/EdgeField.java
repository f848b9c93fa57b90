// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;

/** Shows the nodes near straight pieces of a line, each with its nearest point of the piece. */
final class EdgeField {
    /** Pieces are cut to this many cells, so that the ground along one is nearly straight. */
    private static final double CELLS_A_PIECE = 2;
    /** They need be no shorter than this (m). */
    private static final double PIECE = 2;

    /** Is shown a node near a piece. */
    interface Visitor {
        /**
         * One node and its nearest point on the piece.
         *
         * @param node     number of the node, row times columns plus column
         * @param share    share of the way along the piece (1)
         * @param distance distance to the nearest point (m, projected)
         */
        void near(int node, double share, double distance);
    }

    private final GridFrame frame;

    EdgeField(GridFrame frame) {
        this.frame = frame;
    }

    /** The corners of an outline with so many points between them that no piece is long; the first is repeated. */
    List<Point> pieces(Ring ring) {
        List<Point> closed = new ArrayList<>(ring.corners());
        closed.add(ring.corners().get(0));
        return pieces(closed);
    }

    List<Point> pieces(List<Point> line) {
        List<Point> points = new ArrayList<>();
        for (int i = 1; i < line.size(); i++) {
            Point a = line.get(i - 1);
            Point b = line.get(i);
            int count = (int) Math.max(1, Math.ceil(a.distance(b)
                    / Math.max(PIECE, CELLS_A_PIECE * frame.spacing()) - 1e-9));
            for (int k = 0; k < count; k++) {
                double t = (double) k / count;
                points.add(new Point(a.east() + t * (b.east() - a.east()), a.north() + t * (b.north() - a.north())));
            }
        }
        points.add(line.get(line.size() - 1));
        return points;
    }

    /** Shows all nodes that are no farther from a piece than a reach (m, projected). */
    void visit(Point a, Point b, double reach, Visitor visitor) {
        int firstColumn = first((Math.min(a.east(), b.east()) - reach - frame.west()) / frame.spacing());
        int lastColumn = last((Math.max(a.east(), b.east()) + reach - frame.west()) / frame.spacing(),
                frame.columns());
        int firstRow = first((Math.min(a.north(), b.north()) - reach - frame.south()) / frame.spacing());
        int lastRow = last((Math.max(a.north(), b.north()) + reach - frame.south()) / frame.spacing(), frame.rows());
        double dx = b.east() - a.east();
        double dy = b.north() - a.north();
        double squared = dx * dx + dy * dy;
        for (int row = firstRow; row <= lastRow; row++) {
            double y = frame.north(row) - a.north();
            for (int column = firstColumn; column <= lastColumn; column++) {
                double x = frame.east(column) - a.east();
                double t = squared == 0 ? 0 : Math.max(0, Math.min(1, (x * dx + y * dy) / squared));
                double distance = Math.hypot(x - t * dx, y - t * dy);
                if (distance <= reach) {
                    visitor.near(row * frame.columns() + column, t, distance);
                }
            }
        }
    }

    private static int first(double value) {
        return (int) Math.max(0, Math.ceil(value));
    }

    private static int last(double value, int count) {
        return (int) Math.min(count - 1.0, Math.floor(value));
    }

    /** Which nodes lie inside an outline. */
    boolean[] inside(Ring ring) {
        boolean[] inside = new boolean[frame.size()];
        Ring.Box box = ring.box();
        int lastRow = last((box.north() - frame.south()) / frame.spacing(), frame.rows());
        int lastColumn = last((box.east() - frame.west()) / frame.spacing(), frame.columns());
        for (int row = first((box.south() - frame.south()) / frame.spacing()); row <= lastRow; row++) {
            for (int column = first((box.west() - frame.west()) / frame.spacing()); column <= lastColumn; column++) {
                inside[row * frame.columns() + column] =
                        ring.contains(new Point(frame.east(column), frame.north(row)));
            }
        }
        return inside;
    }

    Point place(int node) {
        return new Point(frame.east(node % frame.columns()), frame.north(node / frame.columns()));
    }
}
