// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.DoseRule;
import bermwright.finding.Finding;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.site.SamplePlans;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Person;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Doses of named persons, worked by hand from doses of invented places. */
class PersonDoseTest {
    private static final double EXACT = 1e-12;
    /** The sample plan has 180 days and one hour outside. */
    private static final ExposurePlan EXPOSURE =
            SamplePlans.plan(List.of()).exposure();
    private static final SiteDose.Outside OUTSIDE = new SiteDose.Outside(spread(0.240), spread(2.4), Map.of());
    private static final List<Room> ROOMS = List.of(new Room("A/bunks", 0.024, 0.05, true),
            new Room("A/shop", 0.048, 0.2, false));

    private record Room(String name, double cosmic, double event, boolean stormShelter) implements CrewDose.Stay {
        @Override
        public StationDose.BySource in(String quantity) {
            return new StationDose.BySource(spread(cosmic), spread(event));
        }

        @Override
        public double occupancyShare() {
            return 0.5;
        }
    }

    private static StationDose.Spread spread(double best) {
        return new StationDose.Spread(best, best / 2, best * 2);
    }

    private static PersonDose dose(Person person) {
        return PersonDose.of(EXPOSURE, new PersonDose.At(ROOMS, OUTSIDE, StationDose.QUANTITY), person);
    }

    private static Person person(double bunks, double shop, OptionalDouble out, double minutes,
            List<Person.Before> before) {
        return new Person("anna", List.of(new Person.Hours("A/bunks", bunks, Annotations.NOTHING),
                new Person.Hours("A/shop", shop, Annotations.NOTHING)), out, OptionalDouble.of(90), Optional.empty(),
                minutes * 60, before, Annotations.NOTHING);
    }

    @Test
    void hoursAtPlacesAndOutsideAddUpOverTheOwnStay() {
        PersonDose dose = dose(person(16, 6, OptionalDouble.of(2), 0, List.of()));
        assertEquals(0.5 * (0.024 * 16 + 0.048 * 6) / 24, dose.dose().inside().best(), EXACT);
        assertEquals(0.5 * 0.240 * 2 / 24, dose.dose().outside().best(), EXACT);
        assertEquals(0.05, dose.dose().event().best(), EXACT);
        assertEquals(0, dose.restHours(), EXACT);
        assertEquals("A/bunks", dose.shelter());
    }

    @Test
    void hoursThatAreNotGivenCountAtTheWorstOfTheOwnStations() {
        PersonDose dose = dose(person(10, 5, OptionalDouble.empty(), 0, List.of()));
        assertEquals(8, dose.restHours(), EXACT);
        assertEquals(0.5 * (0.024 * 10 + 0.048 * 13) / 24, dose.dose().inside().best(), EXACT);
    }

    @Test
    void theWayToTheShelterCountsOutsideForThoseWhoGoThereAndAtTheWorstStationForOthers() {
        double share = 30 * 60 / EventSpectra.shortestDuration();
        assertEquals(0.05 * (1 - share) + 2.4 * share,
                dose(person(16, 6, OptionalDouble.of(2), 30, List.of())).dose().event().best(), EXACT);
        assertEquals(0.05 * (1 - share) + 0.2 * share,
                dose(person(16, 8, OptionalDouble.of(0), 30, List.of())).dose().event().best(), EXACT);
        assertEquals(2.4, dose(person(16, 6, OptionalDouble.of(2), 10_000, List.of())).dose().event().best(), EXACT);
    }

    @Test
    void aCareerCountsWhatAPersonBringsAndIsNotJudgedWithoutIt() {
        LimitInForce career = LimitInForce.of(SamplePlans.limit(ExposurePlan.Over.CAREER, 0.6));
        LimitInForce stay = LimitInForce.of(SamplePlans.limit(ExposurePlan.Over.STAY, 0.6));
        PersonDose without = dose(person(16, 6, OptionalDouble.of(2), 0, List.of()));
        PersonDose with = dose(person(16, 6, OptionalDouble.of(2), 0,
                List.of(new Person.Before(StationDose.QUANTITY, 0.3, "invented", Annotations.NOTHING))));
        assertEquals(without.against(career).best() + 0.3, with.against(career).best(), EXACT);
        assertEquals(without.against(stay).best(), with.against(stay).best(), EXACT);
        assertEquals("", with.missing(career));
        assertEquals("", without.missing(stay));
        assertTrue(without.missing(career).contains("what anna received before in effective dose is not given"));
    }

    @Test
    void aDayOfMoreThan24HoursAndAnUnknownStationHaveNoDose() {
        assertEquals("the hours of anna add up to 26.00, more than a day has",
                dose(person(16, 8, OptionalDouble.of(2), 0, List.of())).why());
        Person lost = new Person("anna", List.of(new Person.Hours("A/attic", 8, Annotations.NOTHING)),
                OptionalDouble.empty(), OptionalDouble.empty(), Optional.of("A/attic"), 0, List.of(),
                Annotations.NOTHING);
        assertEquals("anna spends hours at A/attic, where no dose is known", dose(lost).why());
    }

    @Test
    void theCrewsWayToTheShelterCountsWhereThePlanSaysHowLongItIs() {
        double share = 25 * 60 / EventSpectra.shortestDuration();
        CrewDose none = CrewDose.of(EXPOSURE, ROOMS, OUTSIDE, StationDose.QUANTITY);
        assertEquals(0.05, none.event().best(), EXACT);
        assertEquals(0, CrewDose.onTheWay(EXPOSURE), EXACT);
        assertEquals(0.05 * (1 - share) + 2.4 * share, crew(1, 25).event().best(), EXACT);
        assertEquals(0.05 * (1 - share) + 0.2 * share, crew(0, 25).event().best(), EXACT, "nobody goes outside");
        assertEquals(2.4, crew(1, 10_000).event().best(), EXACT);
        assertEquals(none.cosmic(), crew(1, 25).cosmic());
    }

    @Test
    void aWayThatIsNotSaidIsNotTakenForNone() {
        List<StationDose> nowhere = List.of();
        double minute = 2.4 * 60 / EventSpectra.shortestDuration();
        List<Finding> said = EventFindings.way(EXPOSURE, nowhere, OUTSIDE, List.of());
        assertEquals(1, said.size());
        assertEquals(DoseRule.DOSE_WAY_NOT_COUNTED, said.get(0).rule());
        assertEquals(1000 * minute, said.get(0).measured().orElseThrow(), 1e-9);
        assertEquals(List.of(), EventFindings.way(late(1, 0), nowhere, OUTSIDE, List.of()));
    }

    private static CrewDose crew(double hoursOutside, double minutes) {
        return CrewDose.of(late(hoursOutside, minutes), ROOMS, OUTSIDE, StationDose.QUANTITY);
    }

    private static ExposurePlan late(double hoursOutside, double minutes) {
        ExposurePlan e = EXPOSURE;
        return new ExposurePlan(e.stayDays(), hoursOutside, OptionalDouble.of(60 * minutes), e.solarActivity(),
                e.solarDate(), e.modulationW(), e.event(), e.eventSpectrumFile(), e.eventFit(), e.response(),
                e.moreResponses(), e.limits(), e.people(), e.hazards(), e.annotations());
    }
}
