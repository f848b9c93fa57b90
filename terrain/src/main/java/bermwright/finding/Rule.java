// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import java.util.Locale;

/**
 * A rule that findings come from: one entry of the catalogue. Each discipline has an enum of its rules; a new rule is
 * one constant there, and the line that makes the finding.
 */
public sealed interface Rule permits SiteRule, PairingRule, LoweringRule, CoverRule, DoseRule, WorkRule, StayRule,
        SizingRule {
    /** What a broken rule endangers, the gravest first. */
    enum Danger {
        /** People inside, outside or on the way. */
        PEOPLE,
        /** A hull: it falls, slides, is struck or crushed. */
        HULL,
        /** Lines, poles, anchors, machines, what stands on the site. */
        GEAR,
        /** Time, soil or a sounder figure. */
        COST;

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
     * What the catalogue says of a rule.
     *
     * @param worst    the worst level of its findings
     * @param mildest  the mildest level of its findings
     * @param danger   what it endangers
     * @param measures what is measured; the plain condition where nothing is
     * @param unit     unit of measured value and limit; {@code 1} for a ratio, {@code -} where nothing is measured
     * @param source   where the limit is from; what the finding goes by where there is no number
     * @param todo     what to do about it
     */
    record Entry(Finding.Level worst, Finding.Level mildest, Danger danger, String measures, String unit,
            String source, String todo) {
        private static final int WORDS = 4;

        static Entry of(Finding.Level worst, Finding.Level mildest, Danger danger, String... words) {
            if (words.length != WORDS) {
                throw new IllegalArgumentException("a rule says what it measures, unit, source and what to do, not "
                        + words.length + " things");
            }
            return new Entry(worst, mildest, danger, words[0], words[1], words[2], words[3]);
        }
    }

    /**
     * What the catalogue says of it.
     *
     * @return the entry
     */
    Entry entry();

    /**
     * Name of the constant.
     *
     * @return the name, as {@link Enum#name()} has it
     */
    String name();

    /**
     * The letter that numbers of its findings begin with; all rules of one letter are checked together, so that a
     * finding keeps its number in every command that works its letter out.
     *
     * @return the letter
     */
    char letter();

    /**
     * The fixed name used in files, such as {@code hull-spacing}.
     *
     * @return the name
     */
    default String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Its levels in words.
     *
     * @return "refuse", or "refuse, warn", the worst first
     */
    default String levels() {
        return entry().worst == entry().mildest ? entry().worst.word()
                : entry().worst.word() + ", " + entry().mildest.word();
    }
}
