// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.shielding.material.Table;
import java.util.Comparator;
import java.util.List;

/**
 * Gammas of the potassium, thorium and uranium that are in the soil by nature: the floor of dose below very deep
 * covers.
 *
 * <p>Over open ground without end; soil all around gives twice as much. Good to a third for the soils known here.
 *
 * @see "UNSCEAR (2000), Annex B (nGy/h of air for each Bq/kg, 0.7 Sv/Gy); IAEA-TECDOC-1363 (2003) (Bq/kg of potassium,
 *     thorium and uranium); from memory"
 */
final class SoilRadioactivity {
    private static final List<String[]> SOILS = Table.rows(SoilRadioactivity.class, "soil-radioactivity.csv", ",");
    /** Activity (Bq/kg) of the pure potassium share, and of a part per million of thorium and uranium. */
    private static final double[] ACTIVITY = {31_300, 4.06, 12.35};
    /** Absorbed dose of air a metre above ground (nGy/h) for each Bq/kg of potassium, thorium and uranium series. */
    private static final double[] NANOGRAY_AN_HOUR = {0.0417, 0.604, 0.462};
    private static final double SIEVERT_A_GRAY = 0.7;
    private static final double NANO_AN_HOUR = 1e-9 / 3600;

    private SoilRadioactivity() {
    }

    /**
     * Effective dose over open ground.
     *
     * @param soil name of the soil
     * @return dose rate (Sv/s); of a soil that is not known the greatest of those known
     */
    static double overOpenGround(String soil) {
        return SOILS.stream().filter(row -> row[0].equals(soil)).findFirst().map(SoilRadioactivity::dose)
                .orElseGet(() -> SOILS.stream().map(SoilRadioactivity::dose).max(Comparator.naturalOrder())
                        .orElseThrow());
    }

    private static double dose(String[] row) {
        double sum = 0;
        for (int i = 0; i < ACTIVITY.length; i++) {
            sum += Double.parseDouble(row[i + 1]) * ACTIVITY[i] * NANOGRAY_AN_HOUR[i];
        }
        return sum * SIEVERT_A_GRAY * NANO_AN_HOUR;
    }
}
