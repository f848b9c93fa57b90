// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.shielding.spectrum.EventSpectra;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Dose of somebody who shares their time among the stations as the plan says.
 *
 * @param inside  cosmic rays with their ground return over the stay, by occupancy, for the time inside
 * @param outside cosmic rays with their ground return in the open over the stay, for the hours outside
 * @param event  the event with its ground return at the storm shelter where it is worst, and for the time that the plan
 *               says it takes to get there where it is worst on the way; at the worst station where there is no shelter
 * @param days   length of the stay (days)
 */
public record CrewDose(StationDose.Spread inside, StationDose.Spread outside, StationDose.Spread event,
        double days) {
    /** A place where people stay, and the doses there. */
    public interface Stay {
        /**
         * Which place it is.
         *
         * @return the station, as hull/station
         */
        String name();

        /**
         * The dose of somebody who is here all the time.
         *
         * @param quantity a limit's quantity
         * @return the dose by source
         */
        StationDose.BySource in(String quantity);

        /**
         * The share of the time inside that is spent here.
         *
         * @return the share (1), zero or more
         */
        double occupancyShare();

        /**
         * Whether people go here during an event.
         *
         * @return true for a storm shelter
         */
        boolean stormShelter();
    }

    /**
     * Cosmic rays, inside and outside together.
     *
     * @return the dose over the stay
     */
    public StationDose.Spread cosmic() {
        return inside.plus(outside);
    }

    /**
     * All of it.
     *
     * @return the dose over the stay and the event
     */
    public StationDose.Spread all() {
        return cosmic().plus(event);
    }

    /**
     * The crew's dose.
     *
     * @param exposure the stay
     * @param stations doses at the stations, at least one
     * @param outside  dose in the open
     * @return the effective dose
     */
    public static CrewDose of(ExposurePlan exposure, List<StationDose> stations, SiteDose.Outside outside) {
        return of(exposure, stations, outside, StationDose.QUANTITY);
    }

    /**
     * The crew's dose in the quantity of a limit.
     *
     * @param exposure the stay
     * @param stations doses at the stations, at least one
     * @param outside  dose in the open
     * @param quantity effective dose, or the gray equivalent of an organ that a limit of the plan names
     * @return the dose
     */
    public static CrewDose of(ExposurePlan exposure, List<? extends Stay> stations, SiteDose.Outside outside,
            String quantity) {
        double sum = stations.stream().mapToDouble(Stay::occupancyShare).sum();
        double out = shareOutside(exposure);
        StationDose.Spread inside = StationDose.Spread.NOTHING;
        for (Stay station : stations) {
            double share = sum > 0 ? station.occupancyShare() / sum : 1.0 / stations.size();
            inside = inside.plus(station.in(quantity).cosmic().times(share * (1 - out)));
        }
        double late = onTheWay(exposure);
        StationDose.Spread event = shelter(stations, quantity).map(s -> s.in(quantity).event().times(1 - late)
                .plus(before(exposure, stations, outside, quantity).times(late))).orElse(StationDose.Spread.NOTHING);
        return new CrewDose(inside, outside.in(quantity).cosmic().times(out), event, exposure.stayDays());
    }

    /**
     * Where the event is judged.
     *
     * @param <S>      kind of place
     * @param stations the places
     * @param quantity a limit's quantity
     * @return the storm shelter where the event is worst; the worst place where there is none; empty without
     *     places
     */
    static <S extends Stay> Optional<S> shelter(List<S> stations, String quantity) {
        Comparator<S> worse = Comparator.comparingDouble(s -> s.in(quantity).event().best());
        return stations.stream().filter(Stay::stormShelter).max(worse).or(() -> stations.stream().max(worse));
    }

    /**
     * The share of an event that comes before all are in the shelter, at its greatest flux.
     *
     * @param exposure the plan's stay
     * @return share (1), 0 to 1; 0 where the plan does not say how long the way is
     */
    public static double onTheWay(ExposurePlan exposure) {
        return Math.min(1, exposure.timeToShelter().orElse(0) / EventSpectra.shortestDuration());
    }

    /** The event where it is worst before people are in the shelter: outside, where the plan sends people there. */
    static StationDose.Spread before(ExposurePlan exposure, List<? extends Stay> stations, SiteDose.Outside outside,
            String quantity) {
        return exposure.hoursOutsideADay() > 0 ? outside.in(quantity).event()
                : stations.stream().map(s -> s.in(quantity).event())
                        .max(Comparator.comparingDouble(StationDose.Spread::best)).orElse(StationDose.Spread.NOTHING);
    }

    /** Share of each day that is spent outside (1). */
    private static double shareOutside(ExposurePlan exposure) {
        return Math.max(0, Math.min(1, exposure.hoursOutsideADay() / 24));
    }

    /**
     * The dose of somebody who lives at one place and goes outside as planned.
     *
     * @param exposure the stay
     * @param place    where they live
     * @param outside  dose in the open
     * @param quantity a limit's quantity
     * @return the dose, with the event as it is at that place
     */
    public static CrewDose livingAt(ExposurePlan exposure, Stay place, SiteDose.Outside outside, String quantity) {
        double out = shareOutside(exposure);
        return new CrewDose(place.in(quantity).cosmic().times(1 - out), outside.in(quantity).cosmic().times(out),
                place.in(quantity).event(), exposure.stayDays());
    }

    /**
     * This dose without the event.
     *
     * @return the changed copy
     */
    public CrewDose withoutEvent() {
        return new CrewDose(inside, outside, StationDose.Spread.NOTHING, days);
    }

    /**
     * The dose that a limit counts.
     *
     * @param limit the limit
     * @return the dose over the limit's time from the limit's sources
     */
    public StationDose.Spread against(LimitInForce limit) {
        StationDose.Spread sum = StationDose.Spread.NOTHING;
        if (limit.countsCosmic()) {
            sum = sum.plus(cosmic().times(limit.over().days(days) / days));
        }
        return limit.countsEvent() ? sum.plus(event) : sum;
    }

    /**
     * The dose that a limit counts for somebody who never leaves one station.
     *
     * @param exposure the stay
     * @param station  the station
     * @param limit    the limit
     * @return the dose over the limit's time from the limit's sources
     */
    public static StationDose.Spread alone(ExposurePlan exposure, StationDose station, LimitInForce limit) {
        StationDose.BySource dose = station.in(limit.quantity());
        return new CrewDose(dose.cosmic(), StationDose.Spread.NOTHING, dose.event(), exposure.stayDays())
                .against(limit);
    }
}
