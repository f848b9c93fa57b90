// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import bermwright.foundation.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Something wrong or worth knowing about a plan.
 *
 * @param rule    the rule of the catalogue it comes from
 * @param level   how bad it is
 * @param subject id of what it is about, such as {@code A} or {@code A/bunks}; empty until {@link #about} says it
 * @param parts   what else it concerns, such as the other hull or part of the gear; tells apart findings of a rule
 *                about one subject
 * @param figures what was found and what is allowed
 * @param place   where on the site; empty where it has no place
 * @param source  where the limit is from; where there is none, what the finding goes by
 * @param text    one or two plain sentences with the figures and what they mean
 * @param todo    what to do, with the figure that would satisfy it where that can be worked out
 */
public record Finding(Rule rule, Level level, String subject, List<String> parts, Figures figures,
        Optional<Point> place, String source, String text, String todo) {
    /** Copies the parts. */
    public Finding {
        Objects.requireNonNull(rule, "rule");
        parts = List.copyOf(parts);
    }

    /** How bad a finding is; the worst first. */
    public enum Level {
        /** The plan must not be carried out so. */
        REFUSE,
        /** Somebody must look and decide. */
        WARN,
        /** Worth knowing. */
        NOTE;

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A finding with what its rule says of source and remedy; without a place.
     *
     * @param rule    the rule
     * @param level   how bad it is
     * @param subject what it is about
     * @param figures measured value, limit and their unit
     * @param text    plain words
     * @return the finding
     */
    public static Finding of(Rule rule, Level level, String subject, Figures figures, String text) {
        return new Finding(rule, level, subject, List.of(), figures, Optional.empty(), rule.entry().source(), text,
                rule.entry().todo());
    }

    /**
     * A finding made where nobody knows yet what it is about; {@link #about} says it.
     *
     * @param rule    the rule
     * @param level   how bad it is
     * @param figures measured value, limit and their unit
     * @param text    plain words
     * @return the finding, without subject and place
     */
    public static Finding of(Rule rule, Level level, Figures figures, String text) {
        return of(rule, level, "", figures, text);
    }

    /**
     * Measured value and limit.
     *
     * @param measured what was found, in {@code unit}; empty where it cannot be measured
     * @param limit    what is allowed, in {@code unit}; empty where there is no number
     * @param unit     unit of both, as people write it ({@code m}, {@code kN}, {@code deg}, {@code mSv}, {@code 1})
     */
    public record Figures(OptionalDouble measured, OptionalDouble limit, String unit) {
        /** No figures. */
        public static final Figures NONE = new Figures(OptionalDouble.empty(), OptionalDouble.empty(), "1");

        /**
         * Both figures.
         *
         * @param measured what was found, in {@code unit}
         * @param limit    what is allowed, in {@code unit}
         * @param unit     unit of both
         * @return the figures
         */
        public static Figures of(double measured, double limit, String unit) {
            return new Figures(OptionalDouble.of(measured), OptionalDouble.of(limit), unit);
        }

        /**
         * A measured value without a limit.
         *
         * @param measured what was found, in {@code unit}
         * @param unit     its unit
         * @return the figures
         */
        public static Figures measured(double measured, String unit) {
            return new Figures(OptionalDouble.of(measured), OptionalDouble.empty(), unit);
        }

        /** Both figures in words, with the word that stands before the limit; empty where there are none. */
        private String words(String allows) {
            return Stream.of(measured.isPresent() ? words(measured.getAsDouble()) : "",
                    limit.isPresent() ? allows + " " + words(limit.getAsDouble()) : "").filter(w -> !w.isEmpty())
                    .collect(Collectors.joining("; "));
        }

        private String words(double value) {
            return number(value) + (unit.equals("1") ? "" : " " + unit);
        }

        /**
         * A figure with three significant digits at least, and no needless ones.
         *
         * @param value the figure, in its unit
         * @return its characters; "-" where it is not a number
         */
        public static String number(double value) {
            if (!Double.isFinite(value)) {
                return "-";
            }
            double size = Math.abs(value);
            int digits = size >= 1000 || value == Math.rint(value) ? 0 : size >= 100 ? 1 : size >= 1 ? 2 : 3;
            String text = String.format(Locale.ROOT, "%,." + digits + "f", value);
            return text.matches("-[0.,]*") ? text.substring(1) : text;
        }

        /**
         * How far the measured value is beyond the limit: the larger over the smaller of the two.
         *
         * @return the ratio (1), at least 1; 1 where one of them is missing, infinite where one is nothing
         */
        double beyond() {
            if (measured.isEmpty() || limit.isEmpty()) {
                return 1;
            }
            double a = Math.abs(measured.getAsDouble());
            double b = Math.abs(limit.getAsDouble());
            return a == b ? 1 : Math.max(a, b) / Math.min(a, b);
        }
    }

    /**
     * What was found.
     *
     * @return the value, in {@link #unit}; empty where it cannot be measured
     */
    public OptionalDouble measured() {
        return figures.measured;
    }

    /**
     * What is allowed.
     *
     * @return the value, in {@link #unit}; empty where there is no number
     */
    public OptionalDouble limit() {
        return figures.limit;
    }

    /**
     * Unit of measured value and limit.
     *
     * @return the unit, as people write it
     */
    public String unit() {
        return figures.unit;
    }

    /**
     * The name by which judgements and comparisons know it again: rule, subject and parts; never order, place or words.
     *
     * @return such as {@code hull-spacing:A:B}
     */
    public String id() {
        List<String> all = new ArrayList<>(List.of(rule.id(), subject));
        all.addAll(parts);
        return String.join(":", all);
    }

    /**
     * What is read as one with it: findings of one rule.
     *
     * @return the rule's id
     */
    public String group() {
        return rule.id();
    }

    /**
     * What was found and the limit, in the same characters wherever they are shown.
     *
     * @return such as "1.90 m; limit 3 m" or, of a factor of safety, "1.20; required 2"; empty where there are none
     */
    public String found() {
        return figures.words(rule.entry().measures().startsWith("factor of safety") ? "required" : "limit");
    }

    /**
     * The same with what the rule goes by before it.
     *
     * @return such as "distance between two hulls: 1.90 m; limit 3 m"; empty where there are no figures
     */
    public String compared() {
        return found().isEmpty() ? "" : rule.entry().measures() + ": " + found();
    }

    /**
     * The source in words.
     *
     * @return "limit from: " and the source, or "source: " and what the finding goes by where there is no limit
     */
    public String origin() {
        return (limit().isPresent() ? "limit from: " : "source: ") + source;
    }

    /**
     * This finding about something.
     *
     * @param id id of what it is about
     * @return the changed copy
     */
    public Finding about(String id) {
        return new Finding(rule, level, id, parts, figures, place, source, text, todo);
    }

    /**
     * This finding with what else it concerns.
     *
     * @param concerned names of parts, neighbours or limits, in an order that does not change
     * @return the changed copy
     */
    public Finding with(String... concerned) {
        return new Finding(rule, level, subject, List.of(concerned), figures, place, source, text, todo);
    }

    /**
     * This finding at a place.
     *
     * @param where the place
     * @return the changed copy
     */
    public Finding at(Point where) {
        return new Finding(rule, level, subject, parts, figures, Optional.of(where), source, text, todo);
    }

    /**
     * This finding with the source of its limit, where it is not the one of the rule.
     *
     * @param from the source
     * @return the changed copy
     */
    public Finding from(String from) {
        return new Finding(rule, level, subject, parts, figures, place, from, text, todo);
    }

    /**
     * This finding with what to do about it here, where that is more than the rule says.
     *
     * @param remedy what to do, with the figure that would satisfy it
     * @return the changed copy
     */
    public Finding todo(String remedy) {
        return new Finding(rule, level, subject, parts, figures, place, source, text, remedy);
    }
}
