// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;

/**
 * Where a hull lands and how it comes to lie.
 *
 * @param baseCentre        ground point under the standing hull's axis; for a hull that lands lying, under the base
 *                          plane's axis
 * @param landingDispersion radius in which it lands (m), zero or more
 * @param layDownAzimuth    direction in which it is laid down
 * @param clocking          turn of the body about its axis (rad)
 * @param pivot             what it turns over
 * @param arrival           how it comes to lie, or that it stays upright
 */
public record HullPlacement(Point baseCentre, double landingDispersion, Azimuth layDownAzimuth, double clocking,
        Pivot pivot, Hull.Arrival arrival) {
    HullPlacement at(Point place) {
        return new HullPlacement(place, landingDispersion, layDownAzimuth, clocking, pivot, arrival);
    }

    HullPlacement towards(Azimuth azimuth) {
        return new HullPlacement(baseCentre, landingDispersion, azimuth, clocking, pivot, arrival);
    }
}
