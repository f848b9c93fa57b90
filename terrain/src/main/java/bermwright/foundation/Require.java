// SPDX-License-Identifier: Apache-2.0
package bermwright.foundation;

import java.util.Locale;

/** Checks a caller's arguments; every message names the quantity, its value, its unit and what is allowed. */
public final class Require {
    private Require() {
    }

    /**
     * Refuses a value that is not above zero, not a number or endless.
     *
     * @param quantity what the value is
     * @param value    the value, in {@code unit}
     * @param unit     the unit, {@code 1} for a pure number
     * @return the value
     * @throws IllegalArgumentException if the value is not positive and finite
     */
    public static double positive(String quantity, double value, String unit) {
        return check(value > 0 && Double.isFinite(value), quantity, value, unit, "greater than 0");
    }

    /**
     * Refuses a value below zero, not a number or endless.
     *
     * @param quantity what the value is
     * @param value    the value, in {@code unit}
     * @param unit     the unit, {@code 1} for a pure number
     * @return the value
     * @throws IllegalArgumentException if the value is negative or not finite
     */
    public static double notNegative(String quantity, double value, String unit) {
        return check(value >= 0 && Double.isFinite(value), quantity, value, unit, "0 or more");
    }

    /**
     * Refuses a value below a bound, not a number or endless.
     *
     * @param quantity what the value is
     * @param value    the value, in {@code unit}
     * @param bound    the least value allowed, in {@code unit}
     * @param unit     the unit, {@code 1} for a pure number
     * @return the value
     * @throws IllegalArgumentException if the value is below the bound or not finite
     */
    public static double atLeast(String quantity, double value, double bound, String unit) {
        // Words are made for a refusal alone: sound values pass millions of times.
        return value >= bound && Double.isFinite(value) ? value
                : check(false, quantity, value, unit, "at least " + number(bound));
    }

    /**
     * Refuses a value outside a closed range or not a number.
     *
     * @param quantity what the value is
     * @param value    the value, in {@code unit}
     * @param least    the least value allowed, in {@code unit}
     * @param greatest the greatest value allowed, in {@code unit}
     * @param unit     the unit, {@code 1} for a pure number
     * @return the value
     * @throws IllegalArgumentException if the value is outside the range
     */
    public static double within(String quantity, double value, double least, double greatest, String unit) {
        return value >= least && value <= greatest ? value
                : check(false, quantity, value, unit, number(least) + " to " + number(greatest));
    }

    /**
     * Refuses a value that is endless or not a number.
     *
     * @param quantity what the value is
     * @param value    the value, in {@code unit}
     * @param unit     the unit, {@code 1} for a pure number
     * @return the value
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double finite(String quantity, double value, String unit) {
        return check(Double.isFinite(value), quantity, value, unit, "a finite number");
    }

    /**
     * Refuses what is not so.
     *
     * @param holds   what has to hold
     * @param message the message, with {@code %s} for each part
     * @param parts   the parts of the message; doubles are written briefly
     * @throws IllegalArgumentException if it does not hold
     */
    public static void that(boolean holds, String message, Object... parts) {
        if (!holds) {
            Object[] written = new Object[parts.length];
            for (int i = 0; i < parts.length; i++) {
                written[i] = parts[i] instanceof Double d ? number(d) : parts[i];
            }
            throw new IllegalArgumentException(message.formatted(written));
        }
    }

    private static double check(boolean holds, String quantity, double value, String unit, String accepted) {
        if (!holds) {
            String of = "1".equals(unit) ? "" : " " + unit;
            throw new IllegalArgumentException("%s is %s%s; accepted: %s%s"
                    .formatted(quantity, number(value), of, accepted, of));
        }
        return value;
    }

    private static String number(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        return String.format(Locale.ROOT, "%.6g", value);
    }
}
