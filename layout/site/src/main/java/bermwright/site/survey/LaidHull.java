// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Ring;
import bermwright.site.clearance.Clearance;
import bermwright.site.plan.Hull;
import java.util.List;
import java.util.Optional;

/**
 * A hull and its gear about the middle of its group, in true metres: ahead along the group's heading and to its left.
 *
 * <p>Rings and spots keep ahead as north and left as minus east.
 *
 * @param hull       the hull, with its base centre and azimuth in that frame
 * @param length     length of the bed (m)
 * @param width      width of the bed (m)
 * @param bedAhead   middle of the bed, ahead (m)
 * @param bedLeft    middle of the bed, to the left (m)
 * @param turn       the hull's own heading against the group's, clockwise (rad)
 * @param sweep      what the falling body can pass over; empty where it does not fall
 * @param spots      where winches, pole feet and anchors stand, ahead and left (m)
 * @param lines      lines and stays
 * @param fallLimit  steepest fall along the hull, as rise over run (1)
 * @param riseLimit  steepest rise along it and slope across it (1)
 */
record LaidHull(Hull hull, double length, double width, double bedAhead, double bedLeft, double turn,
        Optional<Ring> sweep, List<double[]> spots, List<Line> lines, double fallLimit, double riseLimit) {
    /**
     * A straight line between two places over the ground.
     *
     * @param ahead  where its ends stand, ahead (m)
     * @param left   where its ends stand, to the left (m)
     * @param height height of its ends over the ground there (m)
     */
    record Line(double[] ahead, double[] left, double[] height) {
        double length() {
            return Math.hypot(ahead[1] - ahead[0], left[1] - left[0]);
        }
    }

    /** Highest ground over the bed that the hull's skin may meet (m). */
    double allowance() {
        return Clearance.BELLY_ALLOWANCE + hull.seat().sunk() + hull.seat().cradleHeight();
    }

    boolean lies() {
        return hull.arrival() != Hull.Arrival.STAYS_UPRIGHT;
    }
}
