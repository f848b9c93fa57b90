// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Vec3;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;

/** Distances from points below a surface of triangles to it: nearest, along a direction, and straight up. */
final class SurfaceDistance {
    private final GridFrame frame;
    private final double[] heights;

    SurfaceDistance(ElevationGrid surface) {
        frame = surface.frame();
        heights = surface.heights();
    }

    /** How far the surface stands above a point; negative below it; not a number off the grid. */
    double above(Vec3 point) {
        return onTriangles(point.x(), point.y()) - point.z();
    }

    private double onTriangles(double east, double north) {
        double x = (east - frame.west()) / frame.spacing();
        double y = (north - frame.south()) / frame.spacing();
        if (!(x >= 0 && y >= 0 && x <= frame.columns() - 1 && y <= frame.rows() - 1)) {
            return Double.NaN;
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
        int midColumn = (int) Math.floor((point.x() - frame.west()) / frame.spacing());
        int midRow = (int) Math.floor((point.y() - frame.south()) / frame.spacing());
        for (int ring = 0; (ring - 1) * frame.spacing() <= best; ring++) {
            boolean any = false;
            for (int r = midRow - ring; r <= midRow + ring; r++) {
                boolean whole = Math.abs(r - midRow) == ring;
                for (int c = midColumn - ring; c <= midColumn + ring; c += whole || ring == 0 ? 1 : 2 * ring) {
                    if (r >= 0 && c >= 0 && r < frame.rows() - 1 && c < frame.columns() - 1) {
                        any = true;
                        best = Math.min(best, cell(point, r, c));
                    }
                }
            }
            if (!any) {
                break;
            }
        }
        return best;
    }

    private double cell(Vec3 point, int row, int column) {
        Vec3 a = node(row, column);
        Vec3 c = node(row + 1, column + 1);
        double one = toTriangle(point, a, node(row, column + 1), c);
        double other = toTriangle(point, a, c, node(row + 1, column));
        return Double.isNaN(one) ? Double.isNaN(other) ? Double.POSITIVE_INFINITY : other
                : Double.isNaN(other) ? one : Math.min(one, other);
    }

    private Vec3 node(int row, int column) {
        return new Vec3(frame.east(column), frame.north(row), heights[row * frame.columns() + column]);
    }

    private static double toTriangle(Vec3 p, Vec3 a, Vec3 b, Vec3 c) {
        Vec3 normal = b.minus(a).cross(c.minus(a));
        Vec3 ap = p.minus(a);
        if (b.minus(a).cross(ap).dot(normal) >= 0 && c.minus(b).cross(p.minus(b)).dot(normal) >= 0
                && a.minus(c).cross(p.minus(c)).dot(normal) >= 0) {
            return Math.abs(ap.dot(normal)) / normal.norm();
        }
        return Math.min(toSegment(p, a, b), Math.min(toSegment(p, b, c), toSegment(p, c, a)));
    }

    private static double toSegment(Vec3 p, Vec3 a, Vec3 b) {
        Vec3 ab = b.minus(a);
        double share = Math.max(0, Math.min(1, p.minus(a).dot(ab) / ab.dot(ab)));
        return p.minus(a.plus(ab.times(share))).norm();
    }

    /** The way to the surface along a unit direction; not a number where it never comes out over the grid. */
    double along(Vec3 point, Vec3 direction) {
        double step = frame.spacing() / 4;
        double reach = (frame.rows() + frame.columns()) * frame.spacing();
        double before = 0;
        for (double at = step; at < reach; at += step) {
            double above = above(point.plus(direction.times(at)));
            if (Double.isNaN(above)) {
                return Double.NaN;
            }
            if (above <= 0) {
                return bisect(point, direction, before, at);
            }
            before = at;
        }
        return Double.NaN;
    }

    private double bisect(Vec3 point, Vec3 direction, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (above(point.plus(direction.times(middle))) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
