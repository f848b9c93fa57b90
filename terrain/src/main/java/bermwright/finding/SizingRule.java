// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import static bermwright.finding.Finding.Level.NOTE;
import static bermwright.finding.Finding.Level.REFUSE;
import static bermwright.finding.Finding.Level.WARN;
import static bermwright.finding.Rule.Danger.COST;
import static bermwright.finding.Rule.Danger.PEOPLE;

import bermwright.finding.Finding.Level;

/** The search for the least cover that meets the limits. */
public enum SizingRule implements Rule {
    SIZE_COVER_WITHOUT_COVER(REFUSE, NOTE, PEOPLE,
            "share of the narrowest limit at the worst station of a hull without a cover", "1", "covers of the plan",
            "Give the hull a cover, or nobody a station in it."),
    SIZE_COVER_NO_LIMIT(REFUSE, REFUSE, PEOPLE, "no limit to size by", "-", "limits of the plan", "State a limit."),
    SIZE_COVER_OFF_GROUND(REFUSE, REFUSE, COST, "cover beyond the elevation file", "-",
            "extent of the elevation file", "Give a larger elevation file."),
    SIZE_COVER_UNSETTLED(WARN, WARN, PEOPLE, "share of the dose that is still open after all directions", "1",
            "our own setting: rays are added until the dose changes by less",
            "Take dose and cover as known to that only."),
    SIZE_COVER_THINNER_THAN_CELL(WARN, WARN, COST, "cover depth found against the cell of the elevation file", "m",
            "spacing of the elevation file", "Survey the bed for stones and steps, or give a finer elevation file."),
    SIZE_COVER_BORROW(REFUSE, REFUSE, COST, "soil in place that the cover needs", "m3", "borrow grounds of the plan",
            "Add a borrow ground, or lower the hulls into a trench."),
    SIZE_COVER_UNMET(REFUSE, REFUSE, PEOPLE, "dose under the best cover against a limit", "mSv", "limits of the plan",
            "Cover its ends too, or shorten the stay.");
    private final Entry entry;

    SizingRule(Level worst, Level mildest, Danger danger, String... words) {
        this.entry = Entry.of(worst, mildest, danger, words);
    }

    @Override
    public Entry entry() {
        return entry;
    }

    @Override
    public char letter() {
        return 'Z';
    }
}
