// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.finding.Finding;
import bermwright.finding.Rule;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The people who are handed a report. */
public enum Reader {
    /** Arranges hulls, anchors and sweeps. */
    PLANNER("Surface planner", "LSCW"),
    /** Checks cover depth and dose. */
    REVIEWER("Crew-safety reviewer", "BDCZ"),
    /** Reads volumes, borrow and haul, and does the work. */
    EXCAVATION("Excavation lead", "WC");

    private final String title;
    private final String letters;

    Reader(String title, String letters) {
        this.title = title;
        this.letters = letters;
    }

    /**
     * The word used in options and file names.
     *
     * @return the word in lower case
     */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * What the reader is called.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * The reader of a word.
     *
     * @param word the word
     * @return the reader; empty where no reader has it
     */
    public static Optional<Reader> of(String word) {
        return Arrays.stream(values()).filter(r -> r.word().equals(word)).findFirst();
    }

    /**
     * Whether a finding is this reader's to decide: all that refuses a plan, what is of the reader's disciplines, what
     * endangers people for the reviewer, and soil for the excavation lead.
     *
     * @param finding the finding
     * @return whether it stands in the reader's report
     */
    public boolean decides(Finding finding) {
        Rule rule = finding.rule();
        boolean soil = rule.id().startsWith("borrow") || rule.id().startsWith("stockpile")
                || rule.id().startsWith("cover");
        return finding.level() == Finding.Level.REFUSE || letters.indexOf(rule.letter()) >= 0
                || this == REVIEWER && rule.entry().danger() == Rule.Danger.PEOPLE || this == EXCAVATION && soil;
    }
}
