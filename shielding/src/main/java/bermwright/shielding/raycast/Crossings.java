// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import java.util.Arrays;

/** Where each ray of a fan crosses one surface, as distances in plan; filled again and again. */
final class Crossings {
    private static final int FIRST_STRIDE = 8;

    /** Whether the rays start below the surface. */
    boolean startsBelow;
    private double[] at = new double[0];
    private int[] count = new int[0];
    private int stride = FIRST_STRIDE;

    void clear(int rays) {
        if (count.length < rays) {
            count = new int[rays];
            at = new double[rays * stride];
        }
        Arrays.fill(count, 0, rays, 0);
    }

    void add(int ray, double distance) {
        if (count[ray] == stride) {
            double[] wide = new double[at.length * 2];
            for (int k = 0; k * stride < at.length; k++) {
                System.arraycopy(at, k * stride, wide, k * stride * 2, stride);
            }
            at = wide;
            stride *= 2;
        }
        at[ray * stride + count[ray]++] = distance;
    }

    int count(int ray) {
        return count[ray];
    }

    double at(int ray, int crossing) {
        return at[ray * stride + crossing];
    }
}
