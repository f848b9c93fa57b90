// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import bermwright.site.exposure.CoverTrial;
import bermwright.site.exposure.CrewDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How much of a plan's limits a cover on trial uses.
 *
 * <p>A limit is met when the 84th percentile of the dose of somebody who stays at that station all the time is at or
 * below it; the event counts at storm shelters, at every station where there is none.
 */
public final class LimitUse {
    private final ExposurePlan exposure;
    private final List<LimitInForce> limits;
    private final boolean anyShelter;

    /**
     * The limits of a plan.
     *
     * @param plan the plan
     */
    public LimitUse(Plan plan) {
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
        return new SizedCover.StationShare(station.hull() + "/" + station.station().id(), counted(station),
                used(station));
    }

    /** The greatest share of a limit that any station of a hull uses, on its 84th percentile. */
    double used(String hull, CoverTrial.Outcome outcome) {
        return outcome.stations().stream().filter(s -> s.hull().equals(hull)).mapToDouble(this::used).max().orElse(0);
    }

    private double used(CoverTrial.At station) {
        return limits.stream().mapToDouble(limit -> counted(station, limit).high() / limit.limit())
                .reduce(0, Math::max);
    }

    StationDose.Spread counted(CoverTrial.At station, LimitInForce limit) {
        StationDose.BySource dose = station.in(limit.quantity());
        return new CrewDose(dose.cosmic(), eventCounts(station) ? dose.event() : StationDose.Spread.NOTHING,
                exposure.stayDays()).against(limit);
    }

    private StationDose.Spread counted(CoverTrial.At station) {
        return eventCounts(station) ? station.cosmic().plus(station.event()) : station.cosmic();
    }

    private boolean eventCounts(CoverTrial.At station) {
        return station.station().stormShelter() || !anyShelter;
    }
}
