// SPDX-License-Identifier: Apache-2.0
/**
 * Laying down by side thrusters, and landing on the side: thrust, propellant, plume.
 */
package bermwright.lowering.thrust;
