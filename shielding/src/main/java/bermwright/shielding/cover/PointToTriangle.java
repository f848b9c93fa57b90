// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Vec3;

/** How far one point is from triangles that are put to it one after the other; for one thread. */
final class PointToTriangle {
    private static final int A = 0;
    private static final int B = 3;
    private static final int C = 6;

    private final double x;
    private final double y;
    private final double z;
    private final double[] at = new double[9];

    PointToTriangle(Vec3 point) {
        x = point.x();
        y = point.y();
        z = point.z();
    }

    /** Puts a corner, 0 to 2, of the triangle. */
    PointToTriangle corner(int corner, double east, double north, double up) {
        at[3 * corner] = east;
        at[3 * corner + 1] = north;
        at[3 * corner + 2] = up;
        return this;
    }

    /** The distance (m); not a number where a corner is not known. */
    double distance() {
        double[] t = at;
        double ux = t[B] - t[A];
        double uy = t[B + 1] - t[A + 1];
        double uz = t[B + 2] - t[A + 2];
        double vx = t[C] - t[A];
        double vy = t[C + 1] - t[A + 1];
        double vz = t[C + 2] - t[A + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        if (isInside(A, B, nx, ny, nz) && isInside(B, C, nx, ny, nz) && isInside(C, A, nx, ny, nz)) {
            double off = (x - t[A]) * nx + (y - t[A + 1]) * ny + (z - t[A + 2]) * nz;
            return Math.abs(off) / Math.sqrt(nx * nx + ny * ny + nz * nz);
        }
        return Math.min(toSide(A, B), Math.min(toSide(B, C), toSide(C, A)));
    }

    /** Whether the point lies on the triangle's side of one of its edges, seen along the normal. */
    private boolean isInside(int from, int to, double nx, double ny, double nz) {
        double[] t = at;
        double ex = t[to] - t[from];
        double ey = t[to + 1] - t[from + 1];
        double ez = t[to + 2] - t[from + 2];
        double px = x - t[from];
        double py = y - t[from + 1];
        double pz = z - t[from + 2];
        return (ey * pz - ez * py) * nx + (ez * px - ex * pz) * ny + (ex * py - ey * px) * nz >= 0;
    }

    private double toSide(int from, int to) {
        double[] t = at;
        double ex = t[to] - t[from];
        double ey = t[to + 1] - t[from + 1];
        double ez = t[to + 2] - t[from + 2];
        double along = (x - t[from]) * ex + (y - t[from + 1]) * ey + (z - t[from + 2]) * ez;
        double share = Math.max(0, Math.min(1, along / (ex * ex + ey * ey + ez * ez)));
        double dx = x - (t[from] + ex * share);
        double dy = y - (t[from + 1] + ey * share);
        double dz = z - (t[from + 2] + ez * share);
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}
