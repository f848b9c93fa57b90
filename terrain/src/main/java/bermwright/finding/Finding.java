// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import bermwright.foundation.Point;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something wrong or worth knowing about a plan.
 *
 * @param rule     short fixed name of the rule, such as {@code hull-spacing}
 * @param level    how bad it is
 * @param subject  id of what it is about, such as {@code A} or {@code A/bunks}
 * @param measured what was found, in {@code unit}; empty where it cannot be measured
 * @param limit    what is allowed, in {@code unit}; empty where there is no number
 * @param unit     unit of both, as people write it ({@code m}, {@code kN}, {@code deg}, {@code mSv}, {@code 1})
 * @param place    where on the site; empty where it has no place
 * @param source   where the limit is from; where there is none, what the finding goes by
 * @param text     one or two plain sentences with the figures, what it means and what would help
 */
public record Finding(String rule, Level level, String subject, OptionalDouble measured, OptionalDouble limit,
        String unit, Optional<Point> place, String source, String text) {
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
     * A finding with a measured value and a limit.
     *
     * @param rule     the rule's name
     * @param level    how bad it is
     * @param subject  what it is about
     * @param figures  measured value, limit and their unit
     * @param text     plain words
     * @return the finding, without a place and without a source: whoever makes it says with {@link #from} what the
     *     limit is from, or what the finding goes by where there is no limit
     */
    public static Finding of(String rule, Level level, String subject, Figures figures, String text) {
        return new Finding(rule, level, subject, figures.measured, figures.limit, figures.unit, Optional.empty(),
                "", text);
    }

    /**
     * Measured value and limit.
     *
     * @param measured what was found, in {@code unit}
     * @param limit    what is allowed, in {@code unit}
     * @param unit     unit of both
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
    }

    /**
     * The source in words.
     *
     * @return "limit from: " and the source, or "source: " and what the finding goes by where there is no limit
     */
    public String origin() {
        return (limit.isPresent() ? "limit from: " : "source: ") + source;
    }

    /**
     * This finding at a place.
     *
     * @param where the place
     * @return the changed copy
     */
    public Finding at(Point where) {
        return new Finding(rule, level, subject, measured, limit, unit, Optional.of(where), source, text);
    }

    /**
     * This finding with the source of its limit.
     *
     * @param from the source
     * @return the changed copy
     */
    public Finding from(String from) {
        return new Finding(rule, level, subject, measured, limit, unit, place, from, text);
    }
}
