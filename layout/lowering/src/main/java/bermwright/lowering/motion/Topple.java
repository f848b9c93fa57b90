// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.motion;

import bermwright.foundation.Require;
import bermwright.lowering.body.Outline;
import bermwright.lowering.body.TippingBody;

/**
 * A body that falls about its pivot with nothing to hold it: the bound of everything that can go wrong.
 *
 * <p>Rigid body, pivot that neither slides nor lifts; in truth the base slides past about 55 degrees, which changes
 * the speeds by some percent.
 */
public final class Topple {
    private Topple() {
    }

    /**
     * The tilting rate reached without any hold, from energy.
     *
     * @param tipping the body on its pivot
     * @param from    tilt at the start (rad), balance or beyond
     * @param rate    tilting rate at the start (rad/s), zero or more
     * @param to      tilt asked for (rad), at least {@code from}
     * @return the rate (rad/s)
     */
    public static double rate(TippingBody tipping, double from, double rate, double to) {
        double energy = tipping.weight() * tipping.fall(from, to);
        double squared = rate * rate + 2 * energy / tipping.inertiaAboutPivot();
        Require.that(squared >= 0, "the body does not get from tilt %s rad to %s rad at that rate.", from, to);
        return Math.sqrt(squared);
    }

    /**
     * The time of a fall from rest by elliptic integrals, [K(k) - F(asin(cos(f1/2)/k), k)]/p with f the angle past
     * balance, k = cos(f0/2), p = sqrt(W r / I).
     *
     * @param tipping the body on its pivot
     * @param from    tilt at the start (rad), beyond balance
     * @param to      tilt asked for (rad), more than {@code from}
     * @return the time (s)
     */
    public static double time(TippingBody tipping, double from, double to) {
        double f0 = from - tipping.balanceTilt();
        double f1 = to - tipping.balanceTilt();
        Require.that(f0 > 0 && f1 > f0, "tilts are %s rad and %s rad past balance; accepted: rising from above 0.",
                f0, f1);
        double k = Math.cos(f0 / 2);
        double p = Math.sqrt(tipping.weight() * tipping.centreRadius() / tipping.inertiaAboutPivot());
        double s = Math.cos(f1 / 2) / k;
        return (Elliptic.first(1, k) - Elliptic.first(s, k)) / p;
    }

    /**
     * The distance of the outermost corner of the far end from the pivot line.
     *
     * @param tipping the body on its pivot
     * @return the distance (m)
     */
    public static double farRadius(TippingBody tipping) {
        Outline outline = tipping.body().outline();
        return Math.hypot(outline.length(), outline.radius() + tipping.pivotAhead());
    }
}
