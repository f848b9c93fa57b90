// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

import java.util.OptionalDouble;

/**
 * Something wrong with a lowering, in numbers and words; never an exception.
 *
 * @param rule     short fixed name, such as {@code lowering-dead-point}
 * @param level    how bad it is
 * @param measured what was found, in {@code unit}; absent where there is no number
 * @param limit    what is accepted, in {@code unit}; absent where there is no number
 * @param unit     unit of both, SI or degrees as written
 * @param source   where the limit is from
 * @param text     plain words with the figures
 */
public record Trouble(String rule, Level level, OptionalDouble measured, OptionalDouble limit, String unit,
        String source, String text) {
    /** How bad a trouble is. */
    public enum Level {
        /** Must not be carried out so. */
        REFUSE,
        /** Somebody must look and decide. */
        WARN,
        /** Worth knowing. */
        NOTE
    }

    /**
     * A trouble with figures.
     *
     * @param rule    short fixed name
     * @param level   how bad it is
     * @param figures measured and limit
     * @param source  where the limit is from
     * @param text    plain words
     * @return the trouble
     */
    public static Trouble of(String rule, Level level, Figures figures, String source, String text) {
        return new Trouble(rule, level, OptionalDouble.of(figures.measured), OptionalDouble.of(figures.limit),
                figures.unit, source, text);
    }

    /**
     * A trouble without figures.
     *
     * @param rule short fixed name
     * @param level how bad it is
     * @param text plain words
     * @return the trouble
     */
    public static Trouble plain(String rule, Level level, String text) {
        return new Trouble(rule, level, OptionalDouble.empty(), OptionalDouble.empty(), "1",
                "common practice, no source", text);
    }

    /**
     * What was found and what is accepted.
     *
     * @param measured what was found
     * @param limit    what is accepted
     * @param unit     unit of both
     */
    public record Figures(double measured, double limit, String unit) {
    }
}
