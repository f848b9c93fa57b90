// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

/**
 * Water, food, propellant or other mass that stands against a hull's wall inside, over a part of it.
 *
 * @param id           its id, unique in the hull
 * @param material     material name
 * @param arealDensity areal density square to the wall (kg/m2), above zero
 * @param fromAlong    where it begins (m), from the base plane
 * @param toAlong      where it ends (m), from the base plane
 * @param fromAround   turn from the crown at which it begins (rad), positive to the left looking from base to far end
 * @param toAround     turn at which it ends (rad)
 * @param annotations  note, own keys and the keys given
 */
public record Stowage(String id, String material, double arealDensity, double fromAlong, double toAlong,
        double fromAround, double toAround, Annotations annotations) {
}
