// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/**
 * One figure of an answer, described once for JSON, text, page, file and editor.
 *
 * @param <T>     what it is a figure of
 * @param key     its key in JSON; a point in it leads into an object
 * @param heading what stands over it, without the unit
 * @param meaning what it is, in a sentence
 * @param unit    its unit; empty for words
 * @param digits  digits behind the point that people read
 * @param isBrief whether text for a screen shows it; files and pages always do
 * @param getter  gets it: a number in SI, or words
 */
public record Figure<T>(String key, String heading, String meaning, Optional<Unit> unit, int digits, boolean isBrief,
        Function<T, Object> getter) {
    /** Refuses nothing at all. */
    public Figure {
        Objects.requireNonNull(getter, "getter");
    }

    /** A number. */
    static <T> Figure<T> of(String key, String heading, String meaning, Unit unit, ToDoubleFunction<T> si) {
        return new Figure<>(key, heading, meaning, Optional.of(unit), unit.digits(), true, si::applyAsDouble);
    }

    /** A number that may be missing. */
    static <T> Figure<T> maybe(String key, String heading, String meaning, Unit unit, Function<T, OptionalDouble> si) {
        return of(key, heading, meaning, unit, t -> si.apply(t).orElse(Double.NaN));
    }

    /** Words. */
    static <T> Figure<T> words(String key, String heading, String meaning, Function<T, String> words) {
        return new Figure<>(key, heading, meaning, Optional.empty(), 0, true, words::apply);
    }

    /** This figure with other than the usual digits. */
    Figure<T> digits(int changed) {
        return new Figure<>(key, heading, meaning, unit, changed, isBrief, getter);
    }

    /** This figure, left out of text for a screen. */
    Figure<T> filesOnly() {
        return new Figure<>(key, heading, meaning, unit, digits, false, getter);
    }

    /**
     * The number as programs read it.
     *
     * @param of what it is a figure of
     * @return the number in its unit, a share as a share of one; empty where there is none, and for words
     */
    public OptionalDouble number(T of) {
        if (unit.isEmpty()) {
            return OptionalDouble.empty();
        }
        double value = unit.get().of((Double) getter.apply(of));
        return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
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
        return unit.isEmpty() ? (String) getter.apply(of) : shown(number(of).orElse(Double.NaN));
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
        return unit.filter(u -> u == Unit.PERCENT).map(u -> flat + "_percent")
                .or(() -> unit.filter(u -> u == Unit.ONE).map(u -> flat + "_1")).orElse(flat);
    }
}
