// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;
import bermwright.shielding.material.Table;

/**
 * Stand-in for the response to cosmic rays: twice a table of doses under domes of equal thickness, the ground's return
 * taken off its first value, continued beyond 700 g/cm2 by the fall of its last interval.
 */
final class ProvisionalCosmic {
    /** What the ground sends back in the table's first value, and once in the answer (Sv a year). */
    static final double GROUND_RETURN_A_YEAR = 0.020;
    private static final double[][] ROWS = Table.numbers(ProvisionalCosmic.class, "provisional-dome.csv");
    private static final double DAYS_IN_YEAR = 365.25;
    private static final double TAIL_STEP = 1000;
    private static final int TAIL_POINTS = 13;
    private static final double KG_M2 = 10;

    private ProvisionalCosmic() {
    }

    static Response response(double modulationW, double skinEquivalence) {
        Require.that(modulationW == 10 || modulationW == 100,
                "modulation W is %s; accepted by the provisional response: 10 (minimum) or 100 (maximum)",
                modulationW);
        int column = modulationW == 10 ? 1 : 2;
        int points = ROWS.length;
        double[] depths = new double[points + TAIL_POINTS];
        double[] doses = new double[points + TAIL_POINTS];
        for (int i = 0; i < points; i++) {
            depths[i] = ROWS[i][0] * KG_M2;
            double dome = ROWS[i][column] * 1e-3 - (i == 0 ? GROUND_RETURN_A_YEAR : 0);
            doses[i] = 2 * dome / DAYS_IN_YEAR;
        }
        double fall = Math.log(doses[points - 2] / doses[points - 1]) / (depths[points - 1] - depths[points - 2]);
        for (int i = points; i < depths.length; i++) {
            depths[i] = depths[i - 1] + TAIL_STEP;
            doses[i] = doses[i - 1] * Math.exp(-fall * TAIL_STEP);
        }
        return new TabulatedResponse(depths, doses, PlanningSpread::cosmic, new TabulatedResponse.Terms(
                Response.Per.DAY, GROUND_RETURN_A_YEAR / DAYS_IN_YEAR, skinEquivalence, note()));
    }

    private static ModelNote note() {
        return new ModelNote("cosmic-response",
                "provisional: effective dose of galactic cosmic rays from one table for highland soil, doubled from "
                        + "domes of equal thickness to the whole sphere",
                "0 to 700 g/cm2, solar minimum (W 10) or maximum (W 100); to 2000 g/cm2 continued by its last fall",
                "25 % open, 35 % at 100 g/cm2, 50 % at 300, a factor two from 500",
                ModelNote.Status.PROVISIONAL,
                "one run of a straight-ahead transport calculation with hand-set nucleon production; not published");
    }
}
