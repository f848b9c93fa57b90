// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.Require;
import java.time.LocalDate;

/**
 * The sun that is planned with, and how far it may be from that.
 *
 * @param modulationW solar modulation W planned with (1), -20 to 200
 * @param quietW      modulation of the quieter sun (1), which lets in more, at the 84th percentile of the dose
 * @param activeW     modulation of the more active sun (1), at the 16th percentile
 */
public record Sun(double modulationW, double quietW, double activeW) {
    /** How far the modulation of a past day may be off, one standard deviation (1), from memory. */
    private static final double PAST_SPREAD_W = 20;

    /** Refuses a sun that does not lie between its quiet and its active one. */
    public Sun {
        Require.within("modulation W", modulationW, CosmicSpectrum.LEAST_W, CosmicSpectrum.GREATEST_W, "1");
        Require.within("quiet modulation W", quietW, CosmicSpectrum.LEAST_W, modulationW, "1");
        Require.within("active modulation W", activeW, modulationW, CosmicSpectrum.GREATEST_W, "1");
    }

    /**
     * A sun in a named state.
     *
     * @param modulationW modulation W (1), -20 to 200
     * @return that sun, off by as much as its state is known
     */
    public static Sun of(double modulationW) {
        double spread = SolarActivity.spreadW(modulationW);
        return off(modulationW, modulationW - spread, modulationW + spread);
    }

    /**
     * The sun of a day. A day after the cycles that were seen may bring any sun from the quietest minimum to the most
     * active maximum of the table: length and height of cycles to come are not known.
     *
     * @param date a day of {@link SolarActivity}
     * @return that sun
     * @throws IllegalArgumentException if the day is outside the table
     */
    public static Sun at(LocalDate date) {
        double w = SolarActivity.modulationW(date);
        return SolarActivity.isForecast(date)
                ? off(w, Math.min(w, SolarActivity.quietestW()), Math.max(w, SolarActivity.mostActiveW()))
                : off(w, w - PAST_SPREAD_W, w + PAST_SPREAD_W);
    }

    private static Sun off(double w, double quiet, double active) {
        return new Sun(w, Math.max(CosmicSpectrum.LEAST_W, quiet), Math.min(CosmicSpectrum.GREATEST_W, active));
    }
}
