// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import java.util.Locale;

/** Units of the plan file; the one place where they meet SI. */
public enum Unit {
    /** Metres. */
    METRE("m", 1, 1),
    /** Millimetres. */
    MILLIMETRE("mm", 1, 1000),
    /** Square metres. */
    SQUARE_METRE("m2", 1, 1),
    /** Metres a second. */
    METRE_A_SECOND("m/s", 1, 1),
    /** Metres a second squared. */
    METRE_A_SECOND_SQUARED("m/s2", 1, 1),
    /** Seconds. */
    SECOND("s", 1, 1),
    /** Minutes. */
    MINUTE("min", 60, 1),
    /** Days; the plan keeps them. */
    DAY("days", 1, 1),
    /** Hours; the plan keeps them. */
    HOUR("h", 1, 1),
    /** Degrees. */
    DEGREE("deg", Math.PI, 180),
    /** Degrees a minute. */
    DEGREE_A_MINUTE("deg/min", Math.PI, 180 * 60),
    /** Tonnes. */
    TONNE("t", 1000, 1),
    /** Kilograms a metre. */
    KILOGRAM_A_METRE("kg/m", 1, 1),
    /** Kilograms a cubic metre. */
    KILOGRAM_A_CUBIC_METRE("kg/m3", 1, 1),
    /** Grams a square centimetre. */
    GRAM_A_SQUARE_CENTIMETRE("g/cm2", 10, 1),
    /** Particles through a square centimetre. */
    A_SQUARE_CENTIMETRE("1/cm2", 1e4, 1),
    /** Gigavolts of rigidity; the plan keeps them. */
    GIGAVOLT("GV", 1, 1),
    /** Tonnes times square metres. */
    TONNE_SQUARE_METRE("t m2", 1000, 1),
    /** Kilonewtons. */
    KILONEWTON("kN", 1000, 1),
    /** Meganewtons. */
    MEGANEWTON("MN", 1e6, 1),
    /** Megajoules. */
    MEGAJOULE("MJ", 1e6, 1),
    /** Pascals. */
    PASCAL("Pa", 1, 1),
    /** Kilopascals. */
    KILOPASCAL("kPa", 1000, 1),
    /** Megapascals. */
    MEGAPASCAL("MPa", 1e6, 1),
    /** Gigapascals. */
    GIGAPASCAL("GPa", 1e9, 1),
    /** Kelvins. */
    KELVIN("K", 1, 1),
    /** Watts a metre and kelvin. */
    WATT_A_METRE_KELVIN("W/m K", 1, 1),
    /** Joules a kilogram and kelvin. */
    JOULE_A_KILOGRAM_KELVIN("J/kg K", 1, 1),
    /** Millisieverts. */
    MILLISIEVERT("mSv", 1, 1000),
    /** A pure number. */
    ONE("1", 1, 1);

    private final String word;
    private final double times;
    private final double over;

    Unit(String word, double times, double over) {
        this.word = word;
        this.times = times;
        this.over = over;
    }

    /**
     * The unit as people write it.
     *
     * @return the unit, {@code 1} for a pure number
     */
    public String word() {
        return word;
    }

    /**
     * The unit as the end of a sentence, such as {@code , in kN}.
     *
     * @return the words, empty for a pure number
     */
    public String ending() {
        return this == ONE ? "" : ", in " + word;
    }

    /**
     * A value of the file in SI.
     *
     * @param value value in this unit
     * @return the value in SI
     */
    public double toSi(double value) {
        return this == DEGREE ? Math.toRadians(value) : value * times / over;
    }

    /**
     * An SI value in this unit: the shortest number that turns into the same SI value again.
     *
     * @param si value in SI, finite
     * @return the value in this unit
     */
    public double fromSi(double si) {
        double near = si * over / times;
        for (int digits = 12; digits <= 17; digits++) {
            double candidate = Double.parseDouble(String.format(Locale.ROOT, "%." + digits + "g", near));
            if (toSi(candidate) == si) {
                return candidate;
            }
        }
        double above = near;
        double below = near;
        for (int step = 0; step < 8; step++) {
            above = Math.nextUp(above);
            below = Math.nextDown(below);
            if (toSi(above) == si) {
                return above;
            }
            if (toSi(below) == si) {
                return below;
            }
        }
        return near;
    }
}
