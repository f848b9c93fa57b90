// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A named person of the plan, whose dose is reckoned and judged by itself.
 *
 * @param id           name of the person
 * @param hours        hours at stations
 * @param hoursOutside hours a day outside (h), 0 to 24; the plan's where it is not given
 * @param stayDays     length of this person's stay (days), above zero; the plan's where it is not given
 * @param shelter      station where the person shelters from an event, as hull/station; the plan's storm shelter where
 *                     it is not given
 * @param timeToShelter time from the first warning until the person is in the shelter (s), zero or more
 * @param before       doses received before this stay
 * @param annotations note, own keys and the keys given
 */
public record Person(String id, List<Hours> hours, OptionalDouble hoursOutside, OptionalDouble stayDays,
        Optional<String> shelter, double timeToShelter, List<Before> before, Annotations annotations) {
    /** Copies the lists. */
    public Person {
        hours = List.copyOf(hours);
        before = List.copyOf(before);
    }

    /**
     * Hours a person spends at one station.
     *
     * @param at        the station, as hull/station
     * @param hoursADay hours a day (h), above 0 to 24
     * @param annotations note, own keys and the keys given
     */
    public record Hours(String at, double hoursADay, Annotations annotations) {
    }

    /**
     * A dose that a person received before this stay.
     *
     * @param quantity effective dose, or the gray equivalent of an organ
     * @param dose     the dose over all years before (Sv; Gy-Eq for gray equivalents), zero or more
     * @param source   where the figure is from, such as a dosimetry record
     * @param annotations note, own keys and the keys given
     */
    public record Before(String quantity, double dose, String source, Annotations annotations) {
    }

    /**
     * What the person received before in one quantity.
     *
     * @param quantity a limit's quantity
     * @return the sum (Sv or Gy-Eq); empty where nothing is given in that quantity
     */
    public OptionalDouble before(String quantity) {
        return before.stream().filter(b -> b.quantity.equals(quantity)).mapToDouble(Before::dose).reduce(Double::sum);
    }
}
