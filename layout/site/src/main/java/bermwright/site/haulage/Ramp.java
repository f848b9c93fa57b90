// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;
import bermwright.site.plan.Plan;
import java.util.Optional;

/**
 * A ramp of soil that leans on the flank of a cover and climbs along it at a machine's grade.
 *
 * <p>Flank and outer side of the ramp have one slope b, so its section where the roadway is at height z is a
 * parallelogram of area w z. Along the climb that sums up to w h&#178; / (2 tan g), and the end beyond the top, which
 * falls at b too, adds w h&#178; / (2 tan b): V = w h&#178; / 2 (1 / tan g + 1 / tan b). Where the climb is longer than
 * one flank it goes round the mound's end; what the outside of such a bend takes more is left out, up to a tenth on
 * two bends. Level ground along the flank is taken.
 *
 * @param height    height it climbs (m), zero or more
 * @param width     width of the roadway (m), above zero
 * @param grade     its grade (rad), above 0, below pi/2
 * @param sideSlope slope of its outer side and of the flank it leans on (rad), above 0, below pi/2
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
        return width * height * height / 2 * (1 / Math.tan(grade) + 1 / Math.tan(sideSlope));
    }

    /**
     * The model behind the volume.
     *
     * @return what it is, where it holds and how far it may be off
     */
    public static ModelNote note() {
        return new ModelNote("ramp", "ramp of soil along the cover's flank at the machine's greatest grade, up to the"
                + " crown, one for each hull, taken off afterwards", "level ground along the flank; heights up to the"
                + " crown", "bends round the mound's ends take up to a tenth more; a rounded crest takes less",
                ModelNote.Status.COMPUTED, "geometry, closed form");
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
