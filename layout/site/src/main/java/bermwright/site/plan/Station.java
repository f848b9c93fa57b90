// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

/**
 * A place where people stay, in body axes.
 *
 * @param id             its id, unique in the hull
 * @param along          distance from the base plane (m)
 * @param across         distance to the left, looking from base to far end with the lay-down side down (m)
 * @param up             distance from the axis, away from the lay-down side (m)
 * @param occupancyShare share of the stay spent here (1), 0 to 1
 * @param stormShelter   whether people go here during a solar particle event
 * @param annotations           note, own keys and the keys given
 */
public record Station(String id, double along, double across, double up, double occupancyShare,
        boolean stormShelter, Annotations annotations) {
}
