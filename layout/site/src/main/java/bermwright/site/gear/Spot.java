// SPDX-License-Identifier: Apache-2.0
package bermwright.site.gear;

/**
 * A place in plan, from the middle of the pivot line of a hull.
 *
 * @param ahead level distance along the lay-down azimuth (m), negative behind the pivot line
 * @param left  level distance to the left of the lay-down plane (m), negative to the right
 */
public record Spot(double ahead, double left) {
}
