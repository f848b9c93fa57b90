// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Require;
import java.io.Serializable;
import java.time.Instant;
import java.util.List;

/**
 * What a survey asks of a place beside the plan's own rules.
 *
 * @param headings    in how many headings a hull is tried, evenly from grid north on (1), 1 to 360
 * @param mostBench   most soil cut to level the bed of a hull, for each square metre under it (m), above zero
 * @param soilReach   how far soil may be hauled (m), above zero
 * @param borrowDepth depth to which soil is taken (m), above zero
 * @param borrowYield share of the dug soil that can be used (1), above 0, at most 1
 * @param borrowGrade steepest ground on which soil is dug and hauled, as rise over run (1), above zero
 * @param relays      what has to be seen over the horizon; may be empty
 * @param lights      hours of sunlight wanted; may be empty
 * @param sightReach  how far ground is looked at for both (m), above zero
 */
public record SurveyLimits(int headings, double mostBench, double soilReach, double borrowDepth, double borrowYield,
        double borrowGrade, List<Relay> relays, List<Sunlight> lights, double sightReach) implements Serializable {
    /** Half a metre of cut over the bed, a reach of 200 m, half a metre of borrow: chosen here, to be set. */
    public static final SurveyLimits USUAL = new SurveyLimits(36, 0.5, 200, 0.5, 0.9, Math.tan(Math.toRadians(15)),
            List.of(), List.of(), 5000);

    /** Refuses values that leave nothing to find. */
    public SurveyLimits {
        Require.that(headings >= 1 && headings <= 360, "%s headings; accepted: 1 to 360.", headings);
        Require.positive("soil cut for a bed", mostBench, "m");
        Require.positive("reach for soil", soilReach, "m");
        Require.positive("depth of the borrow", borrowDepth, "m");
        Require.that(borrowYield > 0 && borrowYield <= 1, "a yield of %s; accepted: above 0, at most 1.", borrowYield);
        Require.positive("grade of the borrow", borrowGrade, "1");
        Require.positive("reach for horizons", sightReach, "m");
        relays = List.copyOf(relays);
        lights = List.copyOf(lights);
    }

    /**
     * Something far off that has to be seen, such as a relay station or the Earth.
     *
     * @param azimuth   its direction, clockwise from grid north (rad)
     * @param elevation its height over the level (rad), -pi/2 to pi/2
     * @param eye       height over the ground of what looks at it (m), zero or more
     */
    public record Relay(double azimuth, double elevation, double eye) implements Serializable {
        /** Refuses directions that there are not. */
        public Relay {
            Require.finite("azimuth", azimuth, "rad");
            Require.within("elevation", elevation, -Math.PI / 2, Math.PI / 2, "rad");
            Require.notNegative("height of the eye", eye, "m");
        }

        Azimuth direction() {
            return new Azimuth(azimuth);
        }
    }

    /**
     * Sunlight that is wanted.
     *
     * @param from       beginning
     * @param to         end
     * @param leastHours least hours of sunlight between them (h), above zero
     */
    public record Sunlight(Instant from, Instant to, double leastHours) implements Serializable {
        /** Refuses nothing wanted. */
        public Sunlight {
            Require.positive("hours of sunlight", leastHours, "h");
            Require.that(from.isBefore(to), "light from %s to %s; accepted: the end after the beginning.", from, to);
        }
    }
}
