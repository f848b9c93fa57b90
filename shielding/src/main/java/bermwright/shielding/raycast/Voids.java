// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

/** Empty stretches of the rays of one azimuth, as distances in plan, those of each ray from near to far. */
final class Voids {
    /** Whether every ray has a single one, from its start on. */
    boolean single;
    /** Where that one ends, by ray. */
    double[] until = new double[0];
    private final int most;
    private int[] count = new int[0];
    private double[] from = new double[0];
    private double[] to = new double[0];

    Voids(int most) {
        this.most = most;
    }

    /** Forgets all; each ray may then have some of its own. */
    void clear(int rays) {
        single = false;
        if (count.length < rays) {
            count = new int[rays];
            from = new double[rays * most];
            to = new double[rays * most];
        }
        java.util.Arrays.fill(count, 0, rays, 0);
    }

    /** Makes room for a single one of each ray. */
    void one(int rays) {
        single = true;
        if (until.length < rays) {
            until = new double[rays];
        }
    }

    void add(int ray, double start, double end) {
        int at = ray * most + count[ray]++;
        while (at > ray * most && from[at - 1] > start) {
            from[at] = from[at - 1];
            to[at] = to[at - 1];
            at--;
        }
        from[at] = start;
        to[at] = end;
    }

    /** How much of a ray's way from its start to a distance lies outside them. */
    double outside(int ray, double distance) {
        if (single) {
            double beyond = distance - until[ray];
            return beyond > 0 ? beyond : 0;
        }
        double at = 0;
        double total = 0;
        int end = ray * most + count[ray];
        for (int v = ray * most; v < end && from[v] < distance; v++) {
            total += Math.max(0, from[v] - at);
            at = Math.max(at, to[v]);
        }
        return total + Math.max(0, distance - at);
    }

    /** Told the stretches of a ray's way that lie outside. */
    interface Stretch {
        void take(double start, double end);
    }

    /** Hands out the parts of a stretch that lie outside. */
    void outside(int ray, double start, double end, Stretch stretch) {
        double at = start;
        int many = single ? 1 : count[ray];
        for (int v = 0; v < many; v++) {
            double begins = single ? 0 : from[ray * most + v];
            if (begins >= end) {
                break;
            }
            if (begins > at) {
                stretch.take(at, begins);
            }
            at = Math.max(at, single ? until[ray] : to[ray * most + v]);
        }
        if (at < end) {
            stretch.take(at, end);
        }
    }
}
