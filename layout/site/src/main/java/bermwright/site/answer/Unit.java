// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

/** Units that answers are shown in, with the digits usual for them; the one place where results leave SI. */
public enum Unit {
    /** Metres. */
    M("m", 1, 2),
    /** Square metres. */
    M2("m²", 1, 1),
    /** Cubic metres. */
    M3("m³", 1, 0),
    /** Kilograms in a cubic metre. */
    KG_M3("kg/m³", 1, 0),
    /** Tonnes, from kg. */
    T("t", 1e-3, 1),
    /** Degrees, from rad. */
    DEG("°", 180 / Math.PI, 2),
    /** Degrees in a second, from rad/s. */
    DEG_S("°/s", 180 / Math.PI, 2),
    /** Kilograms. */
    KG("kg", 1, 0),
    /** Metres in a second. */
    M_S("m/s", 1, 2),
    /** Seconds. */
    S("s", 1, 0),
    /** Minutes, from s. */
    MIN("min", 1 / 60.0, 1),
    /** Hours, from s. */
    H("h", 1 / 3600.0, 2),
    /** Joules. */
    J("J", 1, 0),
    /** Kilojoules, from J. */
    KJ("kJ", 1e-3, 1),
    /** Pascals. */
    PA("Pa", 1, 0),
    /** Megapascals, from Pa. */
    MPA("MPa", 1e-6, 1),
    /** Kilonewton metres, from N m. */
    KNM("kN m", 1e-3, 1),
    /** Kilonewtons, from N. */
    KN("kN", 1e-3, 2),
    /** Kilonewtons on a metre, from N/m. */
    KN_M("kN/m", 1e-3, 2),
    /** Kilopascals, from Pa. */
    KPA("kPa", 1e-3, 1),
    /** Megajoules, from J. */
    MJ("MJ", 1e-6, 0),
    /** Millisieverts, from Sv. */
    MSV("mSv", 1e3, 2),
    /** Grams on a square centimetre, from kg/m2. */
    G_CM2("g/cm²", 0.1, 1),
    /** Millimetres, from m. */
    MM("mm", 1e3, 1),
    /** Grams, from kg. */
    GRAM("g", 1e3, 3),
    /** Kilograms on a square metre. */
    KG_M2("kg/m²", 1, 2),
    /** Kelvins. */
    K("K", 1, 1),
    /** Watts. */
    WATT("W", 1, 0),
    /** Metres a second squared. */
    M_S2("m/s²", 1, 2),
    /** Hours, as they are. */
    HOURS("h", 1, 1),
    /** Days, as they are. */
    DAYS("days", 1, 2),
    /** A share, read by people as per cent and by programs as a share of one. */
    PERCENT("%", 1, 1),
    /** A ratio. */
    ONE("", 1, 2),
    /** In the unit that stands beside it. */
    BESIDE("", 1, 2),
    /** How many. */
    COUNT("", 1, 0);

    private final String symbol;
    private final double scale;
    private final int digits;

    Unit(String symbol, double scale, int digits) {
        this.symbol = symbol;
        this.scale = scale;
        this.digits = digits;
    }

    /**
     * The unit as people write it.
     *
     * @return the symbol; empty for a pure number
     */
    public String symbol() {
        return symbol;
    }

    /**
     * Digits behind the point that figures in it usually have.
     *
     * @return how many
     */
    public int digits() {
        return digits;
    }

    /**
     * A value in this unit, as programs read it.
     *
     * @param si the value in SI
     * @return the value in this unit
     */
    public double of(double si) {
        return scale * si;
    }
}
