// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

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
     * A figure without needless digits.
     *
     * @param value the figure
     * @return such as "150" or "0.25"
     */
    static String number(double value) {
        return java.math.BigDecimal.valueOf(value).round(new java.math.MathContext(6)).stripTrailingZeros()
                .toPlainString();
    }
}
