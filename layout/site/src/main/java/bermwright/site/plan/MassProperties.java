// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.OptionalDouble;

/**
 * What a hull weighs and where.
 *
 * @param mass                 mass when laid down (kg), above zero
 * @param centreOfMassFromBase centre of mass along the axis from the base plane (m)
 * @param centreOfMassOffAxis  centre of mass off the axis (m), positive to the lay-down side
 * @param centreOfMassSpread   one standard deviation of the centre of mass along the axis (m), zero or more
 * @param inertiaAboutCentre   inertia about a cross axis through the centre of mass (kg m2); empty: a uniform rod's
 * @param residualPropellant   propellant left (kg), zero or more
 */
public record MassProperties(double mass, double centreOfMassFromBase, double centreOfMassOffAxis,
        double centreOfMassSpread, OptionalDouble inertiaAboutCentre, double residualPropellant) {
}
