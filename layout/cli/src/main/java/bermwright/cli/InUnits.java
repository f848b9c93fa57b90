// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import java.util.OptionalDouble;

/** Turns SI into the units of tables and JSON; the only place of the command line where a unit changes. */
final class InUnits {
    private static final double NEWTONS = 1000;
    private static final double KILOGRAMS = 1000;
    private static final double GRAMS_A_SQUARE_CENTIMETRE = 10;
    private static final double SIEVERTS = 1000;
    private static final double MEGA = 1e6;
    private static final double MILLIMETRES = 1000;
    private static final double SECONDS = 3600;

    private InUnits() {
    }

    static double degrees(double radians) {
        return Math.toDegrees(radians);
    }

    static double kilonewtons(double newtons) {
        return newtons / NEWTONS;
    }

    static double tonnes(double kilograms) {
        return kilograms / KILOGRAMS;
    }

    static double gramsASquareCentimetre(double kilogramsASquareMetre) {
        return kilogramsASquareMetre / GRAMS_A_SQUARE_CENTIMETRE;
    }

    static double millisieverts(double sieverts) {
        return sieverts * SIEVERTS;
    }

    static double hours(double seconds) {
        return seconds / SECONDS;
    }

    static double kilopascals(double pascals) {
        return pascals / NEWTONS;
    }

    static double megapascals(double pascals) {
        return pascals / MEGA;
    }

    static double kilojoules(double joules) {
        return joules / NEWTONS;
    }

    static double megajoules(double joules) {
        return joules / MEGA;
    }

    static double millimetres(double metres) {
        return metres * MILLIMETRES;
    }

    static OptionalDouble degrees(OptionalDouble radians) {
        return radians.isPresent() ? OptionalDouble.of(degrees(radians.getAsDouble())) : radians;
    }

    static OptionalDouble kilonewtons(OptionalDouble newtons) {
        return newtons.isPresent() ? OptionalDouble.of(kilonewtons(newtons.getAsDouble())) : newtons;
    }
}
