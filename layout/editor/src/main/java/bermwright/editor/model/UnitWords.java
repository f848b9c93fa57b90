// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.foundation.Point;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;

/** Units as people write them. */
public final class UnitWords {
    private UnitWords() {
    }

    /**
     * A unit as it stands behind a figure.
     *
     * @param unit the unit as files have it, {@code 1} for a pure number
     * @return the unit with its signs, nothing for a pure number
     */
    public static String shown(String unit) {
        return "1".equals(unit) ? "" : unit.replace("m2", "m\u00b2").replace("m3", "m\u00b3").replace("s2", "s\u00b2")
                .replace("deg", "\u00b0");
    }

    /**
     * A place as it is read at the pointer and in the status line.
     *
     * @param place the place
     * @return such as {@code E 120.0 m   N −4.5 m}
     */
    public static String place(Point place) {
        return String.format(Locale.ROOT, "E %.1f m   N %.1f m", place.east(), place.north()).replace('-', '\u2212');
    }

    /**
     * A figure without needless digits.
     *
     * @param value the figure
     * @return such as "150" or "0.25"
     */
    static String number(double value) {
        return BigDecimal.valueOf(value).round(new MathContext(6)).stripTrailingZeros()
                .toPlainString();
    }
}
