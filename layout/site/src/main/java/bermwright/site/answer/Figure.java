// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import bermwright.finding.Sentence;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;

/**
 * One figure of an answer, described once for JSON, text, page, file and editor.
 *
 * <p>The getter gives a number in SI, a whole number, words, yes or no, or a list of these; nothing at all, an
 * empty {@code Optional} or a number that is none where there is no answer.
 *
 * @param <T>     what it is a figure of
 * @param key     its key in JSON; a point in it leads into an object
 * @param heading what stands over it, without the unit
 * @param meaning what it is, in a sentence
 * @param type    what it is to programs
 * @param unit    its unit; empty for what is not a number
 * @param digits  digits behind the point that people read; below zero, significant digits
 * @param isBrief whether text for a screen shows it; files do in any case
 * @param isShown whether pages show it; files do in any case
 * @param getter  gets it
 */
public record Figure<T>(String key, String heading, String meaning, Type type, Optional<Unit> unit, int digits,
        boolean isBrief, boolean isShown, Function<T, ?> getter) {
    /** What a figure is to programs. */
    public enum Type {
        /** A number with a unit. */
        NUMBER("number"),
        /** A whole number. */
        COUNT("integer"),
        /** Words. */
        WORDS("string"),
        /** Yes or no. */
        FLAG("boolean"),
        /** Several of one sort. */
        LIST("array"),
        /** Numbers by name. */
        MAP("object");

        private final String word;

        Type(String word) {
            this.word = word;
        }

        /**
         * Its name in a JSON Schema.
         *
         * @return such as "number"
         */
        public String word() {
            return word;
        }
    }

    /** Refuses nothing at all. */
    public Figure {
        Objects.requireNonNull(getter, "getter");
    }

    private static <T> Figure<T> made(String key, String heading, Type type, Unit unit, Function<T, ?> getter) {
        return new Figure<>(key, heading, Sentence.begin(heading) + ".",
                type, Optional.ofNullable(unit), unit == null ? 0 : unit.digits(), true, true, getter);
    }

    /** A number whose heading says all there is to say. */
    static <T> Figure<T> of(String key, String heading, Unit unit, ToDoubleFunction<T> si) {
        return made(key, heading, Type.NUMBER, unit, si::applyAsDouble);
    }

    /** A number. */
    static <T> Figure<T> of(String key, String heading, String meaning, Unit unit, ToDoubleFunction<T> si) {
        return Figure.<T>of(key, heading, unit, si).meaning(meaning);
    }

    /** A number that may be missing. */
    static <T> Figure<T> maybe(String key, String heading, String meaning, Unit unit, Function<T, OptionalDouble> si) {
        return Figure.<T>maybe(key, heading, unit, si).meaning(meaning);
    }

    /** A number that may be missing and whose heading says all. */
    static <T> Figure<T> maybe(String key, String heading, Unit unit, Function<T, OptionalDouble> si) {
        return of(key, heading, unit, t -> si.apply(t).orElse(Double.NaN));
    }

    /** A whole number. */
    static <T> Figure<T> count(String key, String heading, ToLongFunction<T> count) {
        return made(key, heading, Type.COUNT, Unit.COUNT, count::applyAsLong);
    }

    /** Words. */
    static <T> Figure<T> words(String key, String heading, String meaning, Function<T, String> words) {
        return Figure.<T>words(key, heading, words).meaning(meaning);
    }

    /** Words whose heading says all. */
    static <T> Figure<T> words(String key, String heading, Function<T, String> words) {
        return made(key, heading, Type.WORDS, null, words);
    }

    /** Words that are not always there. */
    static <T> Figure<T> said(String key, String heading, Function<T, Optional<String>> words) {
        return made(key, heading, Type.WORDS, null, words);
    }

    /** Yes or no. */
    static <T> Figure<T> flag(String key, String heading, Predicate<T> is) {
        return made(key, heading, Type.FLAG, null, is::test);
    }

    /** Several words or numbers, these in the unit that the key names. */
    static <T> Figure<T> list(String key, String heading, Function<T, ? extends List<?>> list) {
        return made(key, heading, Type.LIST, null, list);
    }

    /** Numbers by name, in the unit that the key names. */
    static <T> Figure<T> map(String key, String heading, Function<T, ? extends Map<String, Double>> map) {
        return made(key, heading, Type.MAP, null, map);
    }

    /** A whole number that may be missing. */
    static <T> Figure<T> maybeCount(String key, String heading, Function<T, OptionalInt> count) {
        return made(key, heading, Type.COUNT, Unit.COUNT, t -> count.apply(t).stream().boxed().findFirst());
    }

    /** This figure with another meaning than its heading. */
    Figure<T> meaning(String changed) {
        return new Figure<>(key, heading, changed, type, unit, digits, isBrief, isShown, getter);
    }

    /** This figure with other than the usual digits. */
    Figure<T> digits(int changed) {
        return new Figure<>(key, heading, meaning, type, unit, changed, isBrief, isShown, getter);
    }

    /** This figure, left out of text for a screen. */
    Figure<T> filesOnly() {
        return new Figure<>(key, heading, meaning, type, unit, digits, false, isShown, getter);
    }

    /** This figure, left out of text for a screen and of pages, where words beside it say the same. */
    Figure<T> tablesOnly() {
        return new Figure<>(key, heading, meaning, type, unit, digits, false, false, getter);
    }

    /**
     * The figure as programs read it.
     *
     * @param of what it is a figure of
     * @return a number in its unit, a whole number, words, yes or no, or a list; empty where there is none
     */
    public Optional<Object> value(T of) {
        Object value = getter.apply(of);
        if (value instanceof Optional<?> maybe) {
            value = maybe.orElse(null);
        }
        return value instanceof Double si ? Optional.of((Object) unit.orElseThrow().of(si))
                .filter(v -> Double.isFinite((Double) v)) : Optional.ofNullable(value);
    }

    /**
     * The number as programs read it.
     *
     * @param of what it is a figure of
     * @return the number in its unit, a share as a share of one; empty where there is none, and for words
     */
    public OptionalDouble number(T of) {
        return value(of).filter(Number.class::isInstance).map(v -> OptionalDouble.of(((Number) v).doubleValue()))
                .orElse(OptionalDouble.empty());
    }

    /**
     * The number as people read it.
     *
     * @param of what it is a figure of
     * @return the number in its unit, a share in per cent; not a number where there is none
     */
    public double read(T of) {
        return number(of).orElse(Double.NaN) * (unit.filter(u -> u == Unit.PERCENT).isPresent() ? 100 : 1);
    }

    /**
     * The figure as people read it, in the same characters wherever it stands.
     *
     * @param of what it is a figure of
     * @return its characters; empty where there is none
     */
    public String text(T of) {
        return value(of).map(this::said).orElse("");
    }

    private String said(Object value) {
        return value instanceof Number number ? shown(number.doubleValue())
                : value instanceof Boolean is ? is ? "yes" : "no"
                : value instanceof List<?> list ? list.stream().map(this::said).collect(Collectors.joining(", "))
                : value instanceof Map<?, ?> map ? map.entrySet().stream().map(e -> e.getKey() + " "
                + said(e.getValue())).collect(Collectors.joining(", ")) : value.toString();
    }

    /**
     * A number of this figure as people read it.
     *
     * @param number the number as programs read it
     * @return its characters, without a sign where it rounds to nothing; empty where it is not a number
     */
    public String shown(double number) {
        if (!Double.isFinite(number)) {
            return "";
        }
        double value = unit.filter(u -> u == Unit.PERCENT).isPresent() ? 100 * number : number;
        if (digits < 0) {
            return new BigDecimal(value).round(new MathContext(-digits)).toString();
        }
        String text = String.format(Locale.ROOT, "%." + digits + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }

    /**
     * What stands over it, with the unit.
     *
     * @return such as "pull-over (kN)"
     */
    public String head() {
        String symbol = unit.map(Unit::symbol).orElse("");
        return symbol.isEmpty() ? heading : heading + " (" + symbol + ")";
    }

    /**
     * The name of its column in files; ends in the unit of what stands there.
     *
     * @return the key, with percent or 1 behind it where it has no unit of its own
     */
    public String column() {
        String flat = key.replace('.', '_');
        if (unit.isEmpty()) {
            return flat;
        }
        return type == Type.COUNT || unit.get() == Unit.ONE ? flat + "_1" : unit.get() == Unit.PERCENT ? flat
                + "_percent"
                : unit.get() == Unit.DAYS && flat.endsWith("_day") ? flat + "s" : flat;
    }
}
