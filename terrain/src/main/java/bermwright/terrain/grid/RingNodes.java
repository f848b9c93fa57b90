// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;

/** Which cells of a grid an outline touches. */
final class RingNodes {
    private RingNodes() {
    }

    static boolean touchesGap(ElevationGrid grid, Ring area) {
        GridFrame frame = grid.frame();
        Ring.Box box = area.box();
        if (!frame.contains(box.southwest()) || !frame.contains(box.northeast())) {
            return true;
        }
        int lastColumn = Math.min(frame.columns() - 2, (int) ((box.east() - frame.west()) / frame.spacing()));
        int lastRow = Math.min(frame.rows() - 2, (int) ((box.north() - frame.south()) / frame.spacing()));
        for (int row = (int) ((box.south() - frame.south()) / frame.spacing()); row <= lastRow; row++) {
            for (int column = (int) ((box.west() - frame.west()) / frame.spacing()); column <= lastColumn; column++) {
                if (hasGap(grid, row, column) && touches(frame, area, row, column)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean hasGap(ElevationGrid grid, int row, int column) {
        return Double.isNaN(grid.nodeHeight(row, column) + grid.nodeHeight(row, column + 1)
                + grid.nodeHeight(row + 1, column) + grid.nodeHeight(row + 1, column + 1));
    }

    /** Whether a cell and an outline have a point in common. */
    private static boolean touches(GridFrame frame, Ring area, int row, int column) {
        double west = frame.east(column);
        double south = frame.north(row);
        double east = west + frame.spacing();
        double north = south + frame.spacing();
        if (area.contains(new Point((west + east) / 2, (south + north) / 2))) {
            return true;
        }
        for (int i = 0; i < area.corners().size(); i++) {
            Point a = area.corners().get(i);
            Point b = area.corners().get((i + 1) % area.corners().size());
            if (crossesBox(a, b, new double[] {west, south, east, north})) {
                return true;
            }
        }
        return false;
    }

    /** Whether a straight line has a part in a box, by cutting it at the four sides (Liang and Barsky 1984). */
    private static boolean crossesBox(Point a, Point b, double[] box) {
        double dx = b.east() - a.east();
        double dy = b.north() - a.north();
        double[] p = {-dx, dx, -dy, dy};
        double[] q = {a.east() - box[0], box[2] - a.east(), a.north() - box[1], box[3] - a.north()};
        double first = 0;
        double last = 1;
        for (int i = 0; i < 4; i++) {
            if (p[i] == 0) {
                if (q[i] < 0) {
                    return false;
                }
            } else if (p[i] < 0) {
                first = Math.max(first, q[i] / p[i]);
            } else {
                last = Math.min(last, q[i] / p[i]);
            }
        }
        return first <= last;
    }
}
