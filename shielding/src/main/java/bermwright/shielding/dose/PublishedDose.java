// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Require;
import bermwright.shielding.material.Table;
import java.util.List;
import java.util.Objects;

/**
 * A published dose of cosmic rays at an areal density, as under a dome on the Moon.
 *
 * @param arealDensity areal density (kg/m2), zero or more
 * @param dome         dose under a dome (Sv a day), positive; free-space figures halved
 * @param modulationW  solar modulation taken for the figure (1)
 * @param ours         our own dose of the same quantity for the same depth and sun (Sv a day), positive
 * @param work         the work and what it published
 */
public record PublishedDose(double arealDensity, double dome, double modulationW, double ours, Work work) {
    private static final double MSV_A_YEAR = 1e-3 / 365.25;

    /**
     * The work behind a figure.
     *
     * @param quantity quantity that was published
     * @param source   the work, and "from memory" or "second-hand" where so
     * @param counts   whether the figure counts for the spread between sources; superseded ones do not
     */
    public record Work(String quantity, String source, boolean counts) {
    }

    /** Refuses figures that are none. */
    public PublishedDose {
        Require.notNegative("areal density", arealDensity, "kg/m2");
        Require.positive("dose", dome, "Sv");
        Require.positive("our dose", ours, "Sv");
        Objects.requireNonNull(work, "work");
    }

    /**
     * The figures for cosmic rays.
     *
     * @return all of them, areal densities rising
     */
    public static List<PublishedDose> cosmic() {
        return Table.rows(PublishedDose.class, "published-doses.csv", ";").stream().map(PublishedDose::of).toList();
    }

    private static PublishedDose of(String[] r) {
        return new PublishedDose(Double.parseDouble(r[0]) * 10, Double.parseDouble(r[1]) * MSV_A_YEAR,
                Double.parseDouble(r[2]), Double.parseDouble(r[3]) * MSV_A_YEAR,
                new Work(r[5], r[6], r[4].equals("yes")));
    }

    /**
     * Distance of the published figure from ours.
     *
     * @return natural logarithm of published over ours (1)
     */
    double distance() {
        return Math.log(dome / ours);
    }
}
