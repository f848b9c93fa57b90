// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static bermwright.site.planfile.Key.optional;
import static bermwright.site.planfile.Key.required;
import static bermwright.site.planfile.Key.standard;

import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Person;
import bermwright.site.planfile.Key.Standard;
import java.util.List;

/** Keys of named persons. */
final class PeopleKeys {
    static final List<Key> PERSON = List.of(
            required("id", "id", Types.NAME, "Name of the person."),
            standard("hours", "hours", Types.many(Person.Hours.class), Standard.none(), "Hours at stations; hours of"
                    + " the day that are not given are counted at the worst of these stations, or of all."),
            optional("hours_outside_a_day", "hoursOutside", Types.quantity(Unit.HOUR, Range.between(0, 24)),
                    "hours_outside_a_day of the exposure", "Hours a day outside the hulls."),
            optional("stay_days", "stayDays", Types.quantity(Unit.DAY, Range.above(0, 36_525)),
                    "stay_days of the exposure", "Length of this person's stay."),
            optional("shelter", "shelter", Types.NAME, "the storm shelter where the event is worst",
                    "Station where the person shelters from an event, as hull/station."),
            required("to_shelter_min", "timeToShelter", Types.quantity(Unit.MINUTE, Range.between(0, 10_000)),
                    "Time from the first warning until the person is in the shelter."),
            standard("received_before", "before", Types.many(Person.Before.class), Standard.none(),
                    "Doses received before this stay; limits over a career count them, and are not judged without."));

    static final List<Key> HOURS = List.of(
            required("at", "at", Types.NAME, "The station, as hull/station."),
            required("hours_a_day", "hoursADay", Types.quantity(Unit.HOUR, Range.above(0, 24)), "Hours a day there."));

    static final List<Key> BEFORE = List.of(
            standard("quantity", "quantity", Types.words(WorkKeys.QUANTITIES),
                    Standard.word(LimitInForce.EFFECTIVE_DOSE, "chosen here"),
                    "The quantity of the dose."),
            required("dose_mSv", "dose", Types.quantity(Unit.MILLISIEVERT, Range.between(0, 1e6)),
                    "The dose over all years before, in mSv; in mGy-Eq for a gray equivalent."),
            required("source", "source", Types.WORDS, "Where the figure is from, such as a dosimetry record."));

    private PeopleKeys() {
    }
}
