// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;
import java.util.Locale;

/**
 * The three states of the same soil: bank (as it lies), loose (in a hauler) and placed (in a mound or fill).
 *
 * <p>Mass is kept: volumes go as one over density. Whether placed soil takes more or less room than it took in the
 * bank hangs on how deep it was dug and how it was packed; neither sign is taken for granted. Densities are known to
 * a share of themselves, one standard deviation, each for itself, so a ratio of two is known to the square root of two
 * times that share.
 *
 * @param bank   bank density (kg/m3), positive
 * @param loose  loose density (kg/m3), positive; as a rule the least of the three
 * @param placed placed density (kg/m3), positive
 * @param spread standard deviation of each as a share of it (1), 0 to 0.5
 */
public record SoilStates(double bank, double loose, double placed, double spread) {
    /** Refuses densities that cannot be. */
    public SoilStates {
        Require.positive("bank density", bank, "kg/m3");
        Require.positive("loose density", loose, "kg/m3");
        Require.positive("placed density", placed, "kg/m3");
        Require.within("spread of density", spread, 0, 0.5, "1");
    }

    /**
     * How much more room loose soil takes than in the bank.
     *
     * @return swell (1), loose volume over bank volume, as a rule above 1
     */
    public double swell() {
        return bank / loose;
    }

    /**
     * How much bank a volume of placed soil takes.
     *
     * @return shrink (1), bank volume over placed volume; below 1 where placed soil takes more room than in the bank
     */
    public double shrink() {
        return placed / bank;
    }

    /**
     * Bank volume for a placed volume.
     *
     * @param volume placed volume (m3), zero or more
     * @return bank volume (m3)
     */
    public Estimate bankFromPlaced(double volume) {
        return ratio(volume, shrink());
    }

    /**
     * Placed volume from a bank volume.
     *
     * @param volume bank volume (m3), zero or more
     * @return placed volume (m3)
     */
    public Estimate placedFromBank(double volume) {
        return ratio(volume, 1 / shrink());
    }

    /**
     * What a volume turned from one state into another is known to.
     *
     * @return one standard deviation as a share of the volume (1)
     */
    public double ratioSpread() {
        return Math.sqrt(2) * spread;
    }

    private Estimate ratio(double volume, double ratio) {
        return Estimate.of(Require.notNegative("volume", volume, "m3") * ratio, ratioSpread());
    }

    /**
     * What stands behind the conversions.
     *
     * @return the note
     */
    public ModelNote note() {
        return new ModelNote("soil-states", "Volumes of the same soil in bank, loose and placed state go as one over"
                + " their densities; no soil is lost on the way", "soil of one kind; boulders and loss not counted",
                String.format(Locale.ROOT, "%.0f %% for a volume, %.0f %% for a mass, one standard deviation",
                        100 * ratioSpread(), 100 * spread), ModelNote.Status.COMPUTED,
                "common practice, no source");
    }
}
