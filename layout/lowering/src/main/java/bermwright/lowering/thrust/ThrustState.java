// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.thrust;

/**
 * Thrust and pivot forces at one tilt at a constant rate.
 *
 * @param tilt       tilt (rad)
 * @param thrust     thrust square to the hull, all thrusters together (N): positive while they brake, negative while
 *                   they push over
 * @param pivotUp    reaction of the ground on the pivot along its normal (N)
 * @param pivotAlong reaction of the ground on the pivot along the lay-down azimuth (N)
 * @param share      share of what the thrusters bring together (1)
 */
public record ThrustState(double tilt, double thrust, double pivotUp, double pivotAlong, double share) {
}
