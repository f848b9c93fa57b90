// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.ModelNote;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Person;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/**
 * The dose of one named person, by the hours that the plan gives.
 *
 * <p>Hours of the day that the plan does not give are counted at the worst of the person's stations. Until a person is
 * in the shelter, an event is counted where it is worst for this person: outside if the person goes outside at all. It
 * is then taken to come at its greatest flux, all of it in {@link EventSpectra#shortestDuration}.
 *
 * @param person  the person
 * @param dose    the effective dose; nothing where it is not known
 * @param shelter where the person shelters, as hull/station; empty where no station is known
 * @param onTheWay share of the event that the person receives before being in the shelter (1), 0 to 1
 * @param restHours hours a day that the plan does not give (h), counted at the worst station
 * @param why     why the dose is not known; empty where it is
 */
public record PersonDose(Person person, CrewDose dose, String shelter, double onTheWay, double restHours, String why) {
    /** Id of the model note behind the doses of named persons. */
    public static final String MODEL = "person-dose";
    private static final double HOURS_A_DAY = 24;
    private static final double HOURS_SLACK = 1e-6;
    private static final double SECONDS_AN_HOUR = 3600;

    /**
     * The effective doses of the plan's named persons.
     *
     * @param exposure the stay
     * @param stations doses at the stations
     * @param outside  dose in the open
     * @return one entry for each person, in the plan's order
     */
    static List<PersonDose> all(ExposurePlan exposure, List<StationDose> stations, SiteDose.Outside outside) {
        return exposure.people().stream().map(p -> of(exposure, new At(stations, outside, StationDose.QUANTITY), p))
                .toList();
    }

    /**
     * Doses at all places in one quantity.
     *
     * @param stations the stations that have a dose
     * @param outside  dose in the open
     * @param quantity a limit's quantity
     */
    public record At(List<? extends CrewDose.Stay> stations, SiteDose.Outside outside, String quantity) {
        private Optional<? extends CrewDose.Stay> station(String place) {
            return stations.stream().filter(s -> s.name().equals(place)).findFirst();
        }

        private StationDose.BySource dose(CrewDose.Stay station) {
            return station.in(quantity);
        }
    }

    /**
     * The dose of one person.
     *
     * @param exposure the plan's stay
     * @param at       doses at all places
     * @param person   the person
     * @return the dose in the quantity of the places
     */
    public static PersonDose of(ExposurePlan exposure, At at, Person person) {
        double out = person.hoursOutside().orElse(exposure.hoursOutsideADay());
        double given = person.hours().stream().mapToDouble(Person.Hours::hoursADay).sum() + out;
        Optional<? extends CrewDose.Stay> shelter = person.shelter().isPresent() ? at.station(person.shelter().get())
                : CrewDose.shelter(at.stations(), at.quantity());
        double share = Math.min(1, person.timeToShelter() / EventSpectra.shortestDuration());
        String why = why(at, person, given, shelter.isPresent());
        CrewDose dose = new CrewDose(StationDose.Spread.NOTHING, StationDose.Spread.NOTHING, StationDose.Spread.NOTHING,
                person.stayDays().orElse(exposure.stayDays()));
        if (!why.isEmpty()) {
            return new PersonDose(person, dose, "", share, 0, why);
        }
        double time = dose.days() / exposure.stayDays() / HOURS_A_DAY;
        double rest = Math.max(0, HOURS_A_DAY - given);
        List<CrewDose.Stay> places = places(at, person);
        StationDose.Spread inside = worst(places, at, StationDose.BySource::cosmic).times(rest * time);
        for (Person.Hours hours : person.hours()) {
            inside = inside.plus(at.dose(at.station(hours.at()).orElseThrow()).cosmic()
                    .times(hours.hoursADay() * time));
        }
        StationDose.BySource open = at.outside().in(at.quantity());
        StationDose.Spread before = out > 0 ? open.event() : worst(places, at, StationDose.BySource::event);
        return new PersonDose(person, new CrewDose(inside, open.cosmic().times(out * time),
                at.dose(shelter.get()).event().times(1 - share).plus(before.times(share)), dose.days()),
                shelter.get().name(), share, rest > HOURS_SLACK ? rest : 0, "");
    }

    private static List<CrewDose.Stay> places(At at, Person person) {
        List<CrewDose.Stay> places = new ArrayList<>();
        person.hours().forEach(h -> at.station(h.at()).ifPresent(places::add));
        return places.isEmpty() ? List.copyOf(at.stations()) : places;
    }

    private static StationDose.Spread worst(List<CrewDose.Stay> places, At at,
            Function<StationDose.BySource, StationDose.Spread> source) {
        return places.stream().map(p -> source.apply(at.dose(p)))
                .max(Comparator.comparingDouble(StationDose.Spread::best)).orElse(StationDose.Spread.NOTHING);
    }

    private static String why(At at, Person person, double hours, boolean hasShelter) {
        List<String> unknown = person.hours().stream().map(Person.Hours::at)
                .filter(place -> at.station(place).isEmpty()).distinct().toList();
        if (hours > HOURS_A_DAY + HOURS_SLACK) {
            return text("the hours of %s add up to %.2f, more than a day has", person.id(), hours);
        } else if (!unknown.isEmpty()) {
            return text("%s spends hours at %s, where no dose is known", person.id(), String.join(", ", unknown));
        }
        return hasShelter ? "" : text("the shelter of %s, %s, has no dose", person.id(),
                person.shelter().orElse("which the plan does not name"));
    }

    /**
     * The dose that a limit counts: over a career with what the person received before.
     *
     * @param limit the limit, in the quantity of this dose
     * @return the dose over the limit's time from the limit's sources (Sv or Gy-Eq)
     */
    public StationDose.Spread against(LimitInForce limit) {
        StationDose.Spread now = dose.against(limit);
        double brought = limit.over() == ExposurePlan.Over.CAREER ? person.before(limit.quantity()).orElse(0) : 0;
        return now.plus(new StationDose.Spread(brought, brought, brought));
    }

    /**
     * What is missing for a verdict on a limit.
     *
     * @param limit the limit
     * @return the words; empty where nothing is
     */
    public String missing(LimitInForce limit) {
        return !why.isEmpty() ? why : limit.over() == ExposurePlan.Over.CAREER
                && person.before(limit.quantity()).isEmpty() ? text("what %s received before in %s is not given; give"
                        + " received_before, zero too", person.id(), limit.quantity()) : "";
    }

    /** What stands behind the doses of named persons. */
    static ModelNote model() {
        return new ModelNote(MODEL, text("hours at each place times its dose by time; until a person is in the shelter"
                + " an event is counted where it is worst for that person, outside if the person goes outside, and is"
                + " taken to come at its greatest flux, all of it in %.1f h", EventSpectra.shortestDuration()
                / SECONDS_AN_HOUR), "hours that are the same each day; an event of any length; limits over days or a"
                + " year count this stay alone, not what was received shortly before it", "that of the doses at the"
                + " places; what was received before is taken as exact", ModelNote.Status.COMPUTED,
                "Jiggens et al. (2018), J. Space Weather Space Clim. 8, A31, table 8 (fluence and greatest flux)");
    }

    private static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
