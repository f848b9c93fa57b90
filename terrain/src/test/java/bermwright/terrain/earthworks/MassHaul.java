// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Require;

/**
 * The mass-haul curve along an axis: how much cut is left over from the stations passed so far.
 *
 * <p>Cut and fill must be in the same state, bank for instance; see {@link bermwright.regolith.SoilStates}.
 */
public final class MassHaul {
    private MassHaul() {
    }

    /**
     * The ordinates: the running sum of cut less fill.
     *
     * @param cut  cut between stations (m3), one for each interval
     * @param fill fill between stations (m3), one for each interval
     * @return ordinates (m3) at the stations, one more than there are intervals, the first zero
     */
    public static double[] ordinates(double[] cut, double[] fill) {
        Require.that(cut.length == fill.length, "%s intervals of cut and %s of fill.", cut.length, fill.length);
        double[] ordinates = new double[cut.length + 1];
        for (int i = 0; i < cut.length; i++) {
            Require.notNegative("cut", cut[i], "m3");
            Require.notNegative("fill", fill[i], "m3");
            ordinates[i + 1] = ordinates[i] + cut[i] - fill[i];
        }
        return ordinates;
    }

    /**
     * The haul: volume times way, the area between the curve and its base line, by trapezoids.
     *
     * @param ordinates ordinates (m3) at evenly spaced stations
     * @param spacing   distance between stations (m), positive
     * @return the haul moment (m4, m3 times m), forward and backward haul both counted as positive
     */
    public static double moment(double[] ordinates, double spacing) {
        Require.positive("station spacing", spacing, "m");
        double moment = 0;
        for (int i = 1; i < ordinates.length; i++) {
            double a = ordinates[i - 1];
            double b = ordinates[i];
            moment += spacing * (a * b >= 0 ? Math.abs(a + b) / 2 : (a * a + b * b) / (2 * Math.abs(a - b)));
        }
        return moment;
    }
}
