// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Require;
import bermwright.shielding.material.Table;
import java.util.List;

/**
 * A published dose of cosmic rays at an areal density, as under a dome on the Moon.
 *
 * @param arealDensity areal density (kg/m2), zero or more
 * @param dome         dose under a dome (Sv a day), positive; free-space figures halved
 * @param modulationW  solar modulation taken for the figure (1)
 * @param quantity     quantity that was published
 * @param source       the work, and "from memory" or "second-hand" where so
 */
public record PublishedDose(double arealDensity, double dome, double modulationW, String quantity, String source) {
    private static final double DAYS_IN_YEAR = 365.25;

    /** Refuses figures that are none. */
    public PublishedDose {
        Require.notNegative("areal density", arealDensity, "kg/m2");
        Require.positive("dose", dome, "Sv");
    }

    /**
     * The figures for cosmic rays.
     *
     * @return all of them, areal densities rising
     */
    public static List<PublishedDose> cosmic() {
        return Table.rows(PublishedDose.class, "published-doses.csv", ";").stream()
                .map(r -> new PublishedDose(Double.parseDouble(r[0]) * 10,
                        Double.parseDouble(r[1]) * 1e-3 / DAYS_IN_YEAR, Double.parseDouble(r[2]), r[3], r[4]))
                .toList();
    }
}
