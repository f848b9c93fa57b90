// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.hazard;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;

/**
 * Meteoroids that strike a surface, by mass.
 *
 * <p>Mean of sporadic ones and streams at the Earth's distance from the Sun. A surface of the Moon that looks straight
 * up sees half the sky and gets what one side of a plate turned at random gets in open space; one that leans sees
 * {@code (1 + cos lean) / 2} of that. The Moon's pull adds 1.4 % at 20 km/s and is left out.
 */
public final class MeteoroidFlux {
    /** Greatest mass that the relation was made for (kg). */
    public static final double GREATEST_MASS = 0.1;
    /** Mean speed at impact (m/s). */
    static final double SPEED = 20_000;
    /** Density of a meteoroid (kg/m3). */
    static final double DENSITY = 2500;
    private static final double GRAM = 1e-3;

    private MeteoroidFlux() {
    }

    /**
     * Number of meteoroids of a mass or more that strike one side of a plate turned at random.
     *
     * @param mass least mass (kg), positive; above 0.1 kg the relation is extrapolated
     * @return number on a square metre in a second (1/(m2 s)), falling with mass
     * @see "Gruen, Zook, Fechtig and Giese (1985), Icarus 62, 244; as printed in ECSS-E-ST-10-04C, 10.2.4.1"
     */
    public static double atLeast(double mass) {
        double m = Require.positive("mass of a meteoroid", mass, "kg") / GRAM;
        return Math.pow(2.2e3 * Math.pow(m, 0.306) + 15, -4.38)
                + 1.3e-9 * Math.pow(m + 1e11 * m * m + 1e27 * Math.pow(m, 4), -0.36)
                + 1.3e-16 * Math.pow(m + 1e6 * m * m, -0.85);
    }

    /**
     * Share of that flux which a leaning surface on open ground gets.
     *
     * @param lean angle of its outward normal to the zenith (rad), 0 to pi
     * @return share (1), 1 for a surface that looks up, 0 for one that looks down
     */
    public static double seen(double lean) {
        return (1 + Math.cos(lean)) / 2;
    }

    /**
     * Chance of at least one hit.
     *
     * @param expected mean number of hits (1), zero or more
     * @return chance (1), by Poisson
     */
    public static double chance(double expected) {
        return -Math.expm1(-Require.notNegative("mean number of hits", expected, "1"));
    }

    /**
     * Where the model holds.
     *
     * @param status extrapolated where masses above 0.1 kg decide
     * @return the note
     */
    public static ModelNote note(ModelNote.Status status) {
        return new ModelNote("meteoroids", "mean flux of meteoroids by mass, crater depth in soil by scaling, "
                + "penetration of a single metal wall; soil must be " + SoilCrater.MARGIN + " times as deep as the "
                + "crater, bare skin by its heaviest layer alone",
                "masses up to 100 g, 20 km/s, 2500 kg/m3; no Whipple bumpers, no secondary ejecta, ends behind a wall "
                        + "of the plan counted as bare",
                "flux a factor of 3 either way (ECSS-E-ST-10-04C, J.2.3.2), crater depth 20 %", status,
                "Gruen et al. (1985), Icarus 62, 244; Holsapple (1993), Annu. Rev. Earth Planet. Sci. 21, 333; "
                        + "Cour-Palais' wall equation as in NASA/TM-2009-214785, from memory");
    }
}
