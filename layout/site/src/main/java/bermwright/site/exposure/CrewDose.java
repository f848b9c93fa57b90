// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import java.util.Comparator;
import java.util.List;

/**
 * Dose of somebody who shares their time among the stations as the plan says.
 *
 * @param cosmic cosmic rays with their ground return over the stay, by occupancy, time outside counted in the open
 * @param event  the event with its ground return at the storm shelter where it is worst; at the worst station where
 *               there is no shelter
 * @param days   length of the stay (days)
 */
public record CrewDose(StationDose.Spread cosmic, StationDose.Spread event, double days) {
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
    public static CrewDose of(ExposurePlan exposure, List<StationDose> stations, SiteDose.Outside outside,
            String quantity) {
        double sum = stations.stream().mapToDouble(StationDose::occupancyShare).sum();
        double out = Math.max(0, Math.min(1, exposure.hoursOutsideADay() / 24));
        StationDose.Spread cosmic = outside.in(quantity).cosmic().times(out);
        for (StationDose station : stations) {
            double share = sum > 0 ? station.occupancyShare() / sum : 1.0 / stations.size();
            cosmic = cosmic.plus(station.in(quantity).cosmic().times(share * (1 - out)));
        }
        Comparator<StationDose> worse = Comparator.comparingDouble(s -> s.in(quantity).event().best());
        StationDose.Spread event = stations.stream().filter(StationDose::stormShelter).max(worse)
                .or(() -> stations.stream().max(worse)).map(s -> s.in(quantity).event())
                .orElse(StationDose.Spread.NOTHING);
        return new CrewDose(cosmic, event, exposure.stayDays());
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
            sum = sum.plus(cosmic.times(limit.over().days(days) / days));
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
        return new CrewDose(dose.cosmic(), dose.event(), exposure.stayDays()).against(limit);
    }
}
