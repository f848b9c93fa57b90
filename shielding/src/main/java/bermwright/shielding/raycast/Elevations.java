// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Require;

/** Elevations of a fan of rays and what is often wanted of them. */
final class Elevations {
    double[] sines = new double[0];
    double[] cosines = new double[0];
    double[] secants = new double[0];
    /** Tangents. */
    double[] slopes = new double[0];
    /** The tangents again from index 1, between bounds that no height is beyond. */
    double[] tangents = new double[2];

    int count() {
        return sines.length;
    }

    /** Takes sines that rise, above 0 and below 1, or a single one, above -1; the array is not to change then. */
    void set(double[] wanted) {
        if (sines == wanted) {
            return;
        }
        int rays = wanted.length;
        for (int k = 0; k < rays; k++) {
            Require.that(wanted[k] > (rays == 1 ? -1 : 0) && wanted[k] < 1 && (k == 0 || wanted[k] > wanted[k - 1]),
                    "sine of elevation %s is %s; accepted: rising, above 0 and below 1", k, wanted[k]);
        }
        sines = wanted;
        if (cosines.length != rays) {
            slopes = new double[rays];
            cosines = new double[rays];
            secants = new double[rays];
            tangents = new double[rays + 2];
            tangents[0] = Double.NEGATIVE_INFINITY;
            tangents[rays + 1] = Double.POSITIVE_INFINITY;
        }
        for (int k = 0; k < rays; k++) {
            cosines[k] = Math.sqrt(1 - wanted[k] * wanted[k]);
            secants[k] = 1 / cosines[k];
            slopes[k] = wanted[k] * secants[k];
        }
        System.arraycopy(slopes, 0, tangents, 1, rays);
    }
}
