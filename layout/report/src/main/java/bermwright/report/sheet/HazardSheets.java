// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.page.Table;
import bermwright.site.answer.Answers;
import bermwright.site.hazard.SiteHazards;

/** What covers keep off, all in one table, also for the editor. */
public final class HazardSheets {
    private HazardSheets() {
    }

    /** Every hull and station against every hazard. */
    public static Table judged(SiteHazards hazards) {
        return AnswerSheets.table("cover-judged", "Covers judged for all that they keep off", Answers.JUDGED_COVERS,
                hazards.judged());
    }

    /** The figures behind it, hull by hull. */
    public static Table figures(SiteHazards hazards) {
        return AnswerSheets.table("hazards", "Meteoroids, thrown soil, heat and moonquake by hull", Answers.HAZARDS,
                hazards.hulls());
    }
}
