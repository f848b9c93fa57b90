// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.answer.PlaceAnswers;
import bermwright.site.assessment.Assessment;
import bermwright.site.clearance.ClearanceTable;
import java.util.ArrayList;
import java.util.List;

/**
 * The ground, where each hull lies on it, and how far things are apart; also for the editor.
 *
 * @param assessment the assessment
 */
public record PlaceSheets(Assessment assessment) {
    /** What is farther off than this is left out of the table of distances (m). */
    private static final double REACH = 30;

    /** The elevation file in words. */
    public Table ground() {
        List<List<String>> rows = new ArrayList<>();
        PlaceAnswers.GROUND.figures().forEach(f -> rows.add(List.of(f.head(), f.text(assessment).isEmpty() ? "not known"
                : f.text(assessment))));
        assessment.ground().file().cautions().forEach(caution -> rows.add(List.of("caution", caution)));
        return new Table("ground", "The ground", List.of(Column.words("what", "what"), Column.words("value", "value")),
                rows);
    }

    /** Where each hull stands and lies. */
    public Table hulls() {
        return AnswerSheets.table("hulls", "Where each hull stands, and where its axis lies", PlaceAnswers.HULLS,
                assessment.hulls());
    }

    /** How far hulls, sweeps and covers are from what stands near them. */
    public Table clearances() {
        return AnswerSheets.table("clearances", "Distances in plan, the nearest first, up to " + Words.said(REACH, "m"),
                PlaceAnswers.CLEARANCES, ClearanceTable.of(assessment.shapes(), REACH));
    }
}
