// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import bermwright.site.exposure.CoverTrial;
import bermwright.site.exposure.CrewDose;
import bermwright.site.exposure.PersonDose;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How much of a plan's limits a cover on trial uses.
 *
 * <p>A limit is met when the 84th percentile is at or below it of the dose of somebody who lives at that station and
 * goes outside for the plan's hours, and of the crew's dose, which decides; the event counts at storm shelters, at
 * every station where there is none.
 */
public final class LimitUse {
    private final ExposurePlan exposure;
    private final List<LimitInForce> limits;
    private final boolean anyShelter;
    private final SiteDose.Outside outside;

    /**
     * The limits of a plan.
     *
     * @param plan    the plan
     * @param outside dose on open ground
     */
    public LimitUse(Plan plan, SiteDose.Outside outside) {
        this.outside = outside;
        exposure = plan.exposure();
        limits = exposure.judgedLimits();
        anyShelter = plan.hulls().stream().flatMap(h -> h.stations().stream()).anyMatch(s -> s.stormShelter());
    }

    /**
     * The station that uses most of its limits, or has the greatest dose where there is none.
     *
     * @param outcome the doses of one trial
     * @return that station; empty where no station lies in its hull
     */
    public Optional<SizedCover.StationShare> worst(CoverTrial.Outcome outcome) {
        return outcome.stations().stream().max(Comparator.comparingDouble(this::key)).map(this::share);
    }

    private double key(CoverTrial.At station) {
        return limits.isEmpty() ? station.cosmic().high() : used(station);
    }

    SizedCover.StationShare share(CoverTrial.At station) {
        return new SizedCover.StationShare(station.name(), own(station),
                used(station));
    }

    /** The greatest share of a limit that any station of a hull or the crew uses, on its 84th percentile. */
    double used(String hull, CoverTrial.Outcome outcome) {
        return Math.max(usedInside(hull, outcome), crew(outcome));
    }

    /** The greatest share of a limit that any station of a hull uses by itself. */
    double usedInside(String hull, CoverTrial.Outcome outcome) {
        return outcome.stations().stream().filter(s -> s.hull().equals(hull)).mapToDouble(this::used).max().orElse(0);
    }

    /** The greatest share of a limit that the crew uses, sharing its time as planned, or a named person. */
    double crew(CoverTrial.Outcome outcome) {
        return limits.stream().mapToDouble(l -> Math.max(crew(outcome, l).high(), persons(outcome, l).stream()
                .mapToDouble(p -> p.against(l).high()).max().orElse(0)) / l.limit()).reduce(0, Math::max);
    }

    /** What crew and named persons use of each limit, and each station by itself; the most used first. */
    List<SizedCover.LimitShare> uses(CoverTrial.Outcome outcome) {
        List<SizedCover.LimitShare> uses = new ArrayList<>();
        for (LimitInForce limit : limits) {
            uses.add(new SizedCover.LimitShare("crew, sharing its time as planned", limit, crew(outcome, limit)));
            persons(outcome, limit).forEach(p -> uses.add(new SizedCover.LimitShare(p.person().id()
                    + ", with own hours", limit, p.against(limit))));
            outcome.stations().forEach(s -> uses.add(new SizedCover.LimitShare(s.name() + " alone", limit,
                    counted(s, limit))));
        }
        uses.sort(Comparator.comparingDouble(SizedCover.LimitShare::used).reversed()
                .thenComparing(SizedCover.LimitShare::who));
        return uses;
    }

    /** The doses of the plan's named persons in the quantity of a limit. */
    List<PersonDose> persons(CoverTrial.Outcome outcome, LimitInForce limit) {
        PersonDose.At at = new PersonDose.At(outcome.stations(), outside, limit.quantity());
        return outcome.stations().isEmpty() ? List.of()
                : exposure.people().stream().map(p -> PersonDose.of(exposure, at, p)).toList();
    }

    /** The crew's dose that a limit counts. */
    StationDose.Spread crew(CoverTrial.Outcome outcome, LimitInForce limit) {
        return outcome.stations().isEmpty() ? StationDose.Spread.NOTHING
                : CrewDose.of(exposure, outcome.stations(), outside, limit.quantity()).against(limit);
    }

    private double used(CoverTrial.At station) {
        return limits.stream().mapToDouble(limit -> counted(station, limit).high() / limit.limit())
                .reduce(0, Math::max);
    }

    StationDose.Spread counted(CoverTrial.At station, LimitInForce limit) {
        return livingAt(station, limit.quantity()).against(limit);
    }

    /** The part of a counted dose that grows with the time, hours outside with it. */
    StationDose.Spread byTime(CoverTrial.At station, LimitInForce limit) {
        return livingAt(station, limit.quantity()).withoutEvent().against(limit);
    }

    /** The station's own dose, as doses are shown everywhere: of somebody who never leaves it. */
    private StationDose.Spread own(CoverTrial.At station) {
        return eventCounts(station) ? station.cosmic().plus(station.event()) : station.cosmic();
    }

    private CrewDose livingAt(CoverTrial.At station, String quantity) {
        CrewDose living = CrewDose.livingAt(exposure, station, outside, quantity);
        return eventCounts(station) ? living : living.withoutEvent();
    }

    private boolean eventCounts(CoverTrial.At station) {
        return station.station().stormShelter() || !anyShelter;
    }
}
