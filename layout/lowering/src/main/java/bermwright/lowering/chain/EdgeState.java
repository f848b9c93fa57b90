// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

import bermwright.regolith.SoilSensitivity;

/**
 * The pivot on the ground at one tilt.
 *
 * @param tilt         tilt (rad)
 * @param sinkage      sinkage on average lunar soil (m)
 * @param area         ground pressed (m2)
 * @param pressure     mean pressure there (Pa)
 * @param bearing      pressure at which the ground gives way under the inclined load (Pa)
 * @param frictionUsed share of the friction that is used, |H| / (mu V) (1); above one an anchor must hold; endless
 *                     without friction
 * @param holdNeeded   what the anchor at the pivot must take (N)
 * @param sidePull     pull across the plane from the cross slope (N)
 * @param soil         how the factor moves with the soil's strength
 */
public record EdgeState(double tilt, double sinkage, double area, double pressure, double bearing,
        double frictionUsed, double holdNeeded, double sidePull,
        SoilSensitivity soil) {
    /**
     * Bearing pressure over pressure.
     *
     * @return the factor (1)
     */
    public double factor() {
        return bearing / pressure;
    }
}
