// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import static bermwright.finding.Finding.Level.NOTE;
import static bermwright.finding.Finding.Level.WARN;
import static bermwright.finding.Rule.Danger.PEOPLE;

import bermwright.finding.Finding.Level;

/** Staying under a cover that is not finished yet. */
public enum StayRule implements Rule {
    COVER_PART_BUILT(WARN, NOTE, PEOPLE, "dose of a stay under the cover as a step leaves it", "mSv",
            "order of work in the plan", "Keep people out until the last step.");
    private final Entry entry;

    StayRule(Level worst, Level mildest, Danger danger, String... words) {
        this.entry = Entry.of(worst, mildest, danger, words);
    }

    @Override
    public Entry entry() {
        return entry;
    }

    @Override
    public char letter() {
        return 'B';
    }
}
