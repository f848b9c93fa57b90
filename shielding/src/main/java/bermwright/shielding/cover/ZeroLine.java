// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Closed lines along which values on a grid's triangles are zero; outside the grid they count as below zero. */
final class ZeroLine {
    private final GridFrame frame;
    private final double[] values;
    private final Map<Long, Long> next = new HashMap<>();
    private final Map<Long, Point> crossings = new HashMap<>();

    private ZeroLine(GridFrame frame, double[] values) {
        this.frame = frame;
        this.values = values;
    }

    static List<Ring> rings(GridFrame frame, double[] values) {
        ZeroLine line = new ZeroLine(frame, values);
        for (int row = -1; row < frame.rows(); row++) {
            for (int column = -1; column < frame.columns(); column++) {
                line.cell(row, column);
            }
        }
        return line.chains();
    }

    private void cell(int row, int column) {
        int above = (above(row, column) ? 1 : 0) + (above(row, column + 1) ? 1 : 0)
                + (above(row + 1, column) ? 1 : 0) + (above(row + 1, column + 1) ? 1 : 0);
        if (above == 0 || above == 4) {
            return;
        }
        long a = node(row, column);
        long b = node(row, column + 1);
        long c = node(row + 1, column + 1);
        long d = node(row + 1, column);
        triangle(a, b, c);
        triangle(a, c, d);
    }

    /** In a triangle, corners anticlockwise, the line keeps what is above zero on its left. */
    private void triangle(long a, long b, long c) {
        long[] corners = {a, b, c};
        long in = -1;
        long out = -1;
        for (int i = 0; i < 3; i++) {
            long from = corners[i];
            long to = corners[(i + 1) % 3];
            if (isAbove(from) && !isAbove(to)) {
                in = edge(from, to);
            } else if (!isAbove(from) && isAbove(to)) {
                out = edge(from, to);
            }
        }
        if (in >= 0) {
            next.put(in, out);
        }
    }

    private List<Ring> chains() {
        List<Ring> rings = new ArrayList<>();
        while (!next.isEmpty()) {
            long first = next.keySet().iterator().next();
            List<Point> corners = new ArrayList<>();
            Long at = first;
            while (at != null) {
                Point here = crossings.get(at);
                if (corners.isEmpty() || here.distance(corners.get(corners.size() - 1)) > 1e-9) {
                    corners.add(here);
                }
                at = next.remove(at);
                if (at != null && at == first) {
                    break;
                }
            }
            if (corners.size() >= 3) {
                rings.add(new Ring(corners));
            }
        }
        return rings;
    }

    private long edge(long one, long other) {
        long low = Math.min(one, other);
        long high = Math.max(one, other);
        long wide = frame.columns() + 2L;
        long kind = high - low == 1 ? 0 : high - low == wide ? 1 : 2;
        long key = low * 3 + kind;
        crossings.computeIfAbsent(key, k -> {
            double u = value(low);
            double v = value(high);
            double share = u / (u - v);
            return new Point(east(low) + share * (east(high) - east(low)),
                    north(low) + share * (north(high) - north(low)));
        });
        return key;
    }

    private long node(int row, int column) {
        return (row + 1L) * (frame.columns() + 2L) + column + 1;
    }

    private int row(long node) {
        return (int) (node / (frame.columns() + 2L)) - 1;
    }

    private int column(long node) {
        return (int) (node % (frame.columns() + 2L)) - 1;
    }

    private boolean isAbove(long node) {
        return above(row(node), column(node));
    }

    private boolean above(int row, int column) {
        return valueAt(row, column) > 0;
    }

    private double value(long node) {
        return valueAt(row(node), column(node));
    }

    private double valueAt(int row, int column) {
        if (row < 0 || column < 0 || row >= frame.rows() || column >= frame.columns()) {
            return -1e-6;
        }
        return values[row * frame.columns() + column];
    }

    private double east(long node) {
        return frame.east(column(node));
    }

    private double north(long node) {
        return frame.north(row(node));
    }
}
