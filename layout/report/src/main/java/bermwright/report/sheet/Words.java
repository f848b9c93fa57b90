// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.drawing.Drawing;
import java.util.Locale;
import java.util.OptionalDouble;

/** Figures as people read them and as files hold them; the one place where SI becomes kN, t, degrees and mSv. */
public final class Words {
    private static final double KILO = 1000;

    private Words() {
    }

    /** A number for tables and files with a fixed count of decimals; empty where it is not known. */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return "";
        }
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /** A number that may be missing. */
    public static String fixed(OptionalDouble value, int decimals) {
        return value.isPresent() ? fixed(value.getAsDouble(), decimals) : "";
    }

    /** An angle for tables (degrees) from SI (rad). */
    public static String degrees(double angle) {
        return fixed(Math.toDegrees(angle), 2);
    }

    /** A dose for tables (mSv) from SI (Sv). */
    public static String millisieverts(double dose) {
        return fixed(dose * KILO, 2);
    }

    /** A mass for tables (t) from SI (kg). */
    public static String tonnes(double mass) {
        return fixed(mass / KILO, 0);
    }

    /** A value with its unit in running words. */
    public static String said(double value, String unit) {
        return Drawing.figure(value, 3) + ("1".equals(unit) ? "" : "deg".equals(unit) ? "°" : " " + unit);
    }
}
