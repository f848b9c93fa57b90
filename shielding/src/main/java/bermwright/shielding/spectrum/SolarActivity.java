// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Require;
import bermwright.shielding.material.Table;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;

/**
 * Modulation of cosmic rays by date: between the minima and maxima of the sunspot cycle, read nine months late, by half
 * a cosine.
 *
 * <p>A sketch for planning: within about 20 for past years, and no forecast for later ones; where counts of a neutron
 * monitor are at hand, W stated from them is the better way.
 */
public final class SolarActivity {
    /** Last day that plans may name; the table of solar cycles reaches a little further. */
    public static final LocalDate LAST_DAY = LocalDate.of(2063, 12, 31);
    private static final double[][] TURNS = Table.numbers(SolarActivity.class, "solar-cycles.csv");
    private static final double[][] STATES = Table.numbers(SolarActivity.class, "solar-states.csv");
    private static final double LAG_YEARS = 0.75;
    private static final double LAST_KNOWN_YEAR = 2025;

    private SolarActivity() {
    }

    /**
     * Modulation at a date.
     *
     * @param date a date from August 1965 to 2064
     * @return modulation W (1), 3 to 130
     * @throws IllegalArgumentException if the date is outside the table
     */
    public static double modulationW(LocalDate date) {
        double year = year(date) - LAG_YEARS;
        Require.within("year", year + LAG_YEARS, TURNS[0][0] + LAG_YEARS, TURNS[TURNS.length - 1][0] + LAG_YEARS,
                "1");
        int i = 0;
        while (i < TURNS.length - 2 && TURNS[i + 1][0] < year) {
            i++;
        }
        double share = (year - TURNS[i][0]) / (TURNS[i + 1][0] - TURNS[i][0]);
        double turn = (1 - Math.cos(Math.PI * share)) / 2;
        return TURNS[i][1] + turn * (TURNS[i + 1][1] - TURNS[i][1]);
    }

    /**
     * How far the sun may be from the state that is planned with: one standard deviation of the modulation, half the
     * range that minimum, mean and maximum are known by.
     *
     * @param modulationW modulation W planned with (1), -20 to 200
     * @return standard deviation of W (1), 10 to 25
     * @throws IllegalArgumentException if the modulation is outside the range of the model
     */
    public static double spreadW(double modulationW) {
        Require.within("modulation W", modulationW, CosmicSpectrum.LEAST_W, CosmicSpectrum.GREATEST_W, "1");
        int last = STATES.length - 1;
        if (modulationW <= STATES[0][0] || modulationW >= STATES[last][0]) {
            return STATES[modulationW <= STATES[0][0] ? 0 : last][1];
        }
        int i = 0;
        while (STATES[i + 1][0] < modulationW) {
            i++;
        }
        double share = (modulationW - STATES[i][0]) / (STATES[i + 1][0] - STATES[i][0]);
        return STATES[i][1] + share * (STATES[i + 1][1] - STATES[i][1]);
    }

    /**
     * Whether a day comes after the cycles that were seen.
     *
     * @param date a day
     * @return true where its sun is a repetition of the mean cycle
     */
    public static boolean isForecast(LocalDate date) {
        return year(date) > LAST_KNOWN_YEAR;
    }

    /** Modulation of the quietest minimum of the table (1). */
    static double quietestW() {
        return Arrays.stream(TURNS).mapToDouble(turn -> turn[1]).min().orElseThrow();
    }

    /** Modulation of the most active maximum of the table (1). */
    static double mostActiveW() {
        return Arrays.stream(TURNS).mapToDouble(turn -> turn[1]).max().orElseThrow();
    }

    /**
     * How far the modulation at a date can be leaned on.
     *
     * @param date the date
     * @return the note: extrapolated for dates after the cycles that were seen
     */
    public static ModelNote note(LocalDate date) {
        boolean later = isForecast(date);
        return new ModelNote("solar-activity", "modulation between the turns of the sunspot cycle, nine months late",
                "1965 to 2025" + (later ? "; later dates repeat the mean cycle" : ""),
                later ? "the whole range from the quietest minimum to the most active maximum of the table, W "
                        + String.format(Locale.ROOT, "%.0f to %.0f", quietestW(), mostActiveW())
                        + ", which the band of the dose spans" : "20 in W for past years",
                later ? ModelNote.Status.EXTRAPOLATED : ModelNote.Status.COMPUTED,
                "dates of sunspot cycles and modulation presets, from memory");
    }

    private static double year(LocalDate date) {
        return date.getYear() + (date.getDayOfYear() - 0.5) / date.lengthOfYear();
    }
}
