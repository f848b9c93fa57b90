// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/** Kinds of value that many keys share, with their common ranges. */
final class Types {
    static final ValueType NAME = new ValueType.Text(false, true);
    static final ValueType WORDS = new ValueType.Text(true, true);
    /** An id that is joined with others, as in hull/hatch. */
    static final ValueType JOINED = new ValueType.Text(false, false);
    static final ValueType FLAG = new ValueType.Flag();
    static final ValueType PLACE = new ValueType.Place();
    static final ValueType OUTLINE = new ValueType.Outline();
    static final ValueType WAY = new ValueType.Way();
    /** The widest site: far beyond any lowering, so that a slip of a unit is caught. */
    static final double WIDEST = 100_000;
    /** The longest body or line. */
    static final double LONGEST = 500;

    private Types() {
    }

    static ValueType quantity(Unit unit, Range range) {
        return new ValueType.Quantity(unit, range);
    }

    /** A length above zero (m). */
    static ValueType length(double greatest) {
        return quantity(Unit.METRE, Range.above(0, greatest));
    }

    /** A length of zero or more (m). */
    static ValueType lengthOrNone(double greatest) {
        return quantity(Unit.METRE, Range.between(0, greatest));
    }

    /** A length either side of zero (m). */
    static ValueType offset(double greatest) {
        return quantity(Unit.METRE, Range.between(-greatest, greatest));
    }

    static ValueType degrees(double least, double greatest) {
        return quantity(Unit.DEGREE, Range.between(least, greatest));
    }

    /** A slope above level and short of vertical, in degrees. */
    static ValueType slope() {
        return quantity(Unit.DEGREE, Range.inside(0, 90));
    }

    static ValueType density() {
        return quantity(Unit.KILOGRAM_A_CUBIC_METRE, Range.between(100, 10_000));
    }

    static ValueType factor(double least, double greatest) {
        return quantity(Unit.ONE, Range.between(least, greatest));
    }

    static ValueType share() {
        return quantity(Unit.ONE, Range.between(0, 1));
    }

    /** A share that cannot be nothing. */
    static ValueType shareAboveNone() {
        return quantity(Unit.ONE, Range.above(0, 1));
    }

    static ValueType count(double greatest) {
        return new ValueType.Count(Range.between(1, greatest));
    }

    static ValueType part(Class<? extends Record> type) {
        return new ValueType.Part(type);
    }

    static ValueType many(Class<? extends Record> type) {
        return new ValueType.Many(new ValueType.Part(type));
    }

    static <E extends Enum<E>> ValueType choice(E[] values, Function<E, String> word) {
        return new ValueType.Choice(Arrays.stream(values).map(word).toList(), List.of((Object[]) values));
    }

    static ValueType words(String... words) {
        return new ValueType.Choice(List.of(words), List.of((Object[]) words));
    }
}
