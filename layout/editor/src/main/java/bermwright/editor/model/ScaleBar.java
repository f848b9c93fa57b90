// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import java.util.Locale;

/**
 * A bar of a round length that fits a map.
 *
 * @param length its true length (m)
 * @param pixels its length on the screen (pixels)
 * @param words  its length as people write it
 */
public record ScaleBar(double length, double pixels, String words) {
    private static final double[] ROUND = {5, 2, 1};

    /**
     * The longest bar of 1, 2 or 5 times a power of ten that fits.
     *
     * @param trueMetresPerPixel true metres in one pixel (m), above 0
     * @param room               room for the bar (pixels), above 0
     * @return the bar
     */
    public static ScaleBar fitting(double trueMetresPerPixel, double room) {
        double most = trueMetresPerPixel * room;
        double power = Math.pow(10, Math.floor(Math.log10(most)));
        double length = power;
        for (double round : ROUND) {
            if (round * power <= most * (1 + 1e-9)) {
                length = round * power;
                break;
            }
        }
        String words = length >= 1000 ? number(length / 1000) + " km"
                : length >= 1 ? number(length) + " m" : number(length * 100) + " cm";
        return new ScaleBar(length, length / trueMetresPerPixel, words);
    }

    private static String number(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%s", (float) value);
    }
}
