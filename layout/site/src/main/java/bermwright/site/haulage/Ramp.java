// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Require;
import bermwright.site.plan.Plan;
import java.util.Optional;

/**
 * A ramp of soil up to a height, straight, free-standing and at a machine's grade.
 *
 * <p>V = w h&#178; / (2 tan g) + h&#179; / (3 tan g tan b): a wedge under the roadway and a slope to either side.
 * Leaning it against the mound saves soil; that is left out, so the volume is an upper bound.
 *
 * @param height    height it climbs (m), zero or more
 * @param width     width of the roadway (m), above zero
 * @param grade     its grade (rad), above 0, below pi/2
 * @param sideSlope slope of its sides (rad), above 0, below pi/2
 */
public record Ramp(double height, double width, double grade, double sideSlope) {
    /** Refuses ramps of no width or without grade. */
    public Ramp {
        Require.notNegative("height of a ramp", height, "m");
        Require.positive("width of a ramp", width, "m");
        Require.that(grade > 0 && grade < Math.PI / 2, "the grade of a ramp is %s rad; accepted: above 0, below pi/2.",
                grade);
        Require.that(sideSlope > 0 && sideSlope < Math.PI / 2,
                "the side slope of a ramp is %s rad; accepted: above 0, below pi/2.", sideSlope);
    }

    /** Roadway beside the machine's width (m); common practice, no source. */
    private static final double SHOULDERS = 1;

    /**
     * The ramp a machine of the plan needs to a height on a cover.
     *
     * @param plan   the plan
     * @param to     id of the hull
     * @param height height over its bed (m), zero or more
     * @return the ramp; empty where the machine climbs the cover's own slope, or the plan has no machine
     */
    public static Optional<Ramp> on(Plan plan, String to, double height) {
        double slope = plan.ground().regolith().stableSlope();
        return Hauler.of(plan, to).filter(m -> m.greatestGrade() < slope && m.greatestGrade() > 0)
                .map(m -> new Ramp(height, m.width() + SHOULDERS, m.greatestGrade(), slope));
    }

    /**
     * Soil in it.
     *
     * @return volume once placed (m3), zero or more
     */
    public double volume() {
        double run = height / Math.tan(grade);
        return width * height * run / 2 + height * height * run / (3 * Math.tan(sideSlope));
    }

    /**
     * Length of the roadway seen from above.
     *
     * @return length (m), zero or more
     */
    public double run() {
        return height / Math.tan(grade);
    }
}
