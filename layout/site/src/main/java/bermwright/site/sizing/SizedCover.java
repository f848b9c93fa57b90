// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import bermwright.finding.Finding;
import bermwright.shielding.cover.CoverThickness;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The answer of a search for the least cover.
 *
 * @param isMet          whether every station of every covered hull meets every limit on its 84th percentile
 * @param thickness      the thickness found for each hull; where limits cannot be met, the one that comes nearest
 * @param plan           the plan with these covers
 * @param volume         soil placed (m3)
 * @param uniformVolume  soil that one thickness on each hull, the same everywhere on it, would take (m3); empty where
 *                       limits cannot be met
 * @param stations       dose at every station of the covered hulls under these covers
 * @param uses           what crew, named persons and stations use of each limit under these covers, the most used first
 * @param bankVolume     soil that has to be dug for it (m3, in place)
 * @param bankAvailable  soil the borrow grounds give, side slopes and what must not be undercut left standing (m3, in
 *                       place); empty where the plan has no borrow ground
 * @param trade          dose against soil, thin to thick
 * @param intervals      thicknesses, the same everywhere, at which all stations of a hull meet their limits
 * @param stopsPaying    thickness from which on more soil stops paying (m); empty where it pays to the end of the scan
 * @param trials         how many covers were tried (1)
 * @param findings       what cannot be met and what would help
 */
public record SizedCover(boolean isMet, Map<String, CoverThickness> thickness, Plan plan, double volume,
        OptionalDouble uniformVolume, List<StationShare> stations, List<LimitShare> uses, double bankVolume,
        OptionalDouble bankAvailable, List<TradePoint> trade, List<Interval> intervals, OptionalDouble stopsPaying,
        int trials, List<Finding> findings) {
    /** Copies the lists. */
    public SizedCover {
        thickness = Map.copyOf(thickness);
        stations = List.copyOf(stations);
        uses = List.copyOf(uses);
        trade = List.copyOf(trade);
        intervals = List.copyOf(intervals);
        findings = List.copyOf(findings);
    }

    /**
     * The dose at one station and how much of its limits it uses.
     *
     * @param station the station, as {@code hull/station}
     * @param dose    cosmic over the stay and, where it counts there, the event, of somebody who never leaves it (Sv)
     * @param used    84th percentile over the limit for somebody who lives there and goes outside as planned, the
     *                greatest of all limits (1); 1 or less where all are met
     */
    public record StationShare(String station, StationDose.Spread dose, double used) {
    }

    /**
     * What somebody uses of a limit.
     *
     * @param who   the crew, a named person or a station
     * @param limit the limit
     * @param dose  the dose that counts against it (Sv or Gy-Eq)
     */
    public record LimitShare(String who, LimitInForce limit, StationDose.Spread dose) {
        /**
         * How much of the limit is used.
         *
         * @return 84th percentile over the limit (1)
         */
        public double used() {
            return dose.high() / limit.limit();
        }
    }

    /**
     * Whether the borrow grounds give the soil.
     *
     * @return true where they do, and where the plan has none to say
     */
    public boolean isBorrowEnough() {
        return bankAvailable.isEmpty() || bankVolume <= bankAvailable.getAsDouble();
    }

    /**
     * Thicknesses at which one hull's stations meet their limits.
     *
     * @param hull the hull
     * @param from thinnest (m), to the step of the scan
     * @param to   thickest (m); the end of the scan where it meets them there
     */
    public record Interval(String hull, double from, double to) {
    }
}
