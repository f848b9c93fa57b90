// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.OptionalDouble;

/**
 * Machines of one kind.
 *
 * @param id                its id
 * @param kind              what it is, in free words
 * @param count             how many (1), 1 or more
 * @param load              load of each (kg), above zero
 * @param speed             speed on level ground (m/s), above zero
 * @param greatestGrade     steepest ground it climbs loaded (rad)
 * @param width             width (m), above zero
 * @param fillTime          time to fill a load (s), zero or more
 * @param dumpTime          time to dump it (s), zero or more
 * @param hoursADay         working hours a day (h), above 0, at most 24
 * @param availabilityShare share of those hours it works (1), above 0, at most 1
 * @param mass              its own mass, empty (kg); empty where it is not stated
 * @param contactArea       ground that all its wheels or tracks together stand on (m2); empty where it is not stated
 * @param annotations              note, own keys and the keys given
 */
public record Machine(String id, String kind, int count, double load, double speed, double greatestGrade,
        double width, double fillTime, double dumpTime, double hoursADay, double availabilityShare,
        OptionalDouble mass, OptionalDouble contactArea, Annotations annotations) {
}
