// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;

/** Up to four points of the difference of two bodies, and the point of what they span that is nearest to nothing. */
final class Simplex {
    private static final double SAME = 1e-10;
    private static final int[][] FACES = {{0, 1, 2, 3}, {0, 1, 3, 2}, {0, 2, 3, 1}, {1, 2, 3, 0}};
    private final Vec3[] here = new Vec3[4];
    private final Vec3[] there = new Vec3[4];
    private final Vec3[] apart = new Vec3[4];
    private final double[] shares = new double[4];
    private final double[] tried = new double[4];
    private final double[] best = new double[4];
    private int count;

    /** Adds a pair of points; false where it brings nothing new. */
    boolean add(Vec3 one, Vec3 other) {
        Vec3 difference = one.minus(other);
        for (int i = 0; i < count; i++) {
            if (apart[i].minus(difference).norm() < SAME) {
                return false;
            }
        }
        if (count == 4) {
            return false;
        }
        here[count] = one;
        there[count] = other;
        apart[count++] = difference;
        return true;
    }

    /** The nearest point; points that do not carry it are dropped. */
    Vec3 nearest() {
        clear(tried);
        switch (count) {
            case 1 -> tried[0] = 1;
            case 2 -> piece(0, 1);
            case 3 -> triangle(0, 1, 2);
            default -> solid();
        }
        int kept = 0;
        for (int i = 0; i < count; i++) {
            if (tried[i] > 0) {
                here[kept] = here[i];
                there[kept] = there[i];
                apart[kept] = apart[i];
                shares[kept++] = tried[i];
            }
        }
        count = kept;
        return mixed(apart);
    }

    private static void clear(double[] values) {
        java.util.Arrays.fill(values, 0);
    }

    private void piece(int a, int b) {
        Vec3 edge = apart[b].minus(apart[a]);
        double share = Math.max(0, Math.min(1, -apart[a].dot(edge) / edge.dot(edge)));
        tried[a] = 1 - share;
        tried[b] = share;
    }

    /** Shares of three corners in the point of a triangle nearest to nothing, by the region it lies in. */
    private void triangle(int a, int b, int c) {
        Vec3 ab = apart[b].minus(apart[a]);
        Vec3 ac = apart[c].minus(apart[a]);
        double d1 = -ab.dot(apart[a]);
        double d2 = -ac.dot(apart[a]);
        double d3 = -ab.dot(apart[b]);
        double d4 = -ac.dot(apart[b]);
        double d5 = -ab.dot(apart[c]);
        double d6 = -ac.dot(apart[c]);
        double va = d3 * d6 - d5 * d4;
        double vb = d5 * d2 - d1 * d6;
        double vc = d1 * d4 - d3 * d2;
        if (d1 <= 0 && d2 <= 0) {
            tried[a] = 1;
        } else if (d3 >= 0 && d4 <= d3) {
            tried[b] = 1;
        } else if (d6 >= 0 && d5 <= d6) {
            tried[c] = 1;
        } else if (vc <= 0 && d1 >= 0 && d3 <= 0) {
            piece(a, b);
        } else if (vb <= 0 && d2 >= 0 && d6 <= 0) {
            piece(a, c);
        } else if (va <= 0 && d4 - d3 >= 0 && d5 - d6 >= 0) {
            piece(b, c);
        } else {
            double all = va + vb + vc;
            tried[a] = va / all;
            tried[b] = vb / all;
            tried[c] = vc / all;
        }
    }

    /** The nearest of the four faces that nothing lies outside of; nothing itself where it lies inside all. */
    private void solid() {
        double least = Double.POSITIVE_INFINITY;
        for (int[] face : FACES) {
            Vec3 a = apart[face[0]];
            Vec3 normal = apart[face[1]].minus(a).cross(apart[face[2]].minus(a));
            double inner = normal.dot(apart[face[3]].minus(a));
            double outer = -normal.dot(a);
            if (inner * outer > 0 && Math.abs(inner) > SAME) {
                continue;
            }
            clear(tried);
            triangle(face[0], face[1], face[2]);
            Vec3 point = apart[face[0]].times(tried[face[0]]).plus(apart[face[1]].times(tried[face[1]]))
                    .plus(apart[face[2]].times(tried[face[2]]));
            if (point.dot(point) < least) {
                least = point.dot(point);
                System.arraycopy(tried, 0, best, 0, best.length);
            }
        }
        if (Double.isInfinite(least)) {
            inside();
        } else {
            System.arraycopy(best, 0, tried, 0, best.length);
        }
    }

    /** Shares of the four corners in the point that lies at nothing, by the volumes opposite to them. */
    private void inside() {
        double all = 0;
        for (int[] face : FACES) {
            Vec3 a = apart[face[0]];
            double volume = Math.abs(a.dot(apart[face[1]].cross(apart[face[2]])));
            tried[face[3]] = volume;
            all += volume;
        }
        for (int i = 0; i < tried.length; i++) {
            tried[i] /= all;
        }
    }

    private Vec3 mixed(Vec3[] points) {
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < count; i++) {
            x += shares[i] * points[i].x();
            y += shares[i] * points[i].y();
            z += shares[i] * points[i].z();
        }
        return new Vec3(x, y, z);
    }

    Vec3 here() {
        return mixed(here);
    }

    Vec3 there() {
        return mixed(there);
    }
}
