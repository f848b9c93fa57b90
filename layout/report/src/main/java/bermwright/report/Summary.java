// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.ModelNote;
import bermwright.report.page.Html;
import bermwright.report.reader.HullWords;
import bermwright.report.reader.Pack;
import bermwright.report.reader.SiteWords;
import bermwright.report.sheet.FindingSheets;
import bermwright.report.sheet.Marks;
import bermwright.report.sheet.PlanSheets;
import bermwright.site.assessment.Assessment;
import java.util.List;

/**
 * The first part of the page: may it be done, what governs, what is refused and why, in plain words.
 *
 * @param assessment the assessment
 */
record Summary(Assessment assessment) {
    void write(Pack pack) {
        Html page = pack.page();
        page.heading(2, "summary", "What governs");
        verdict(page);
        listed(page, Finding.Level.REFUSE);
        listed(page, Finding.Level.WARN);
        page.heading(3, "hulls", "Hull by hull");
        assessment.hulls().forEach(hull -> page.heading(4, "hull-" + hull.hull().id(), "Hull " + hull.hull().id())
                .list(new HullWords(assessment, hull).lines()));
        SiteWords site = new SiteWords(assessment);
        page.heading(3, "crew-in-short", "Crew, limits and shelter").list(site.people());
        page.heading(3, "work-in-short", "Soil and time").list(site.work());
        List<ModelNote> marked = assessment.models().stream()
                .filter(m -> m.status() != ModelNote.Status.COMPUTED).toList();
        if (!marked.isEmpty()) {
            page.heading(3, "marked", "Figures that must not be leaned on yet");
            page.paragraph("Every drawing and table that rests on one of these models carries the mark in its title.");
            Marks.reasons(marked).forEach(reason -> page.note("mark", reason));
        }
        pack.figure(new PlanSheets(assessment).site(), "Numbers are those of the findings below. "
                + "East and north are projected metres; the scale bar shows true metres.");
        pack.table(FindingSheets.table(assessment.findings()));
    }

    private void verdict(Html page) {
        List<Finding> all = assessment.findings();
        long refuse = FindingSheets.count(all, Finding.Level.REFUSE);
        long warn = FindingSheets.count(all, Finding.Level.WARN);
        long note = FindingSheets.count(all, Finding.Level.NOTE);
        String rest = warn + (warn == 1 ? " finding asks" : " findings ask") + " for a decision, " + note
                + (note == 1 ? " is" : " are") + " worth knowing.";
        if (refuse > 0) {
            page.note("refuse", "This plan must not be carried out as it is: " + refuse
                    + (refuse == 1 ? " finding refuses it. " : " findings refuse it. ") + rest);
        } else {
            page.note("good", "No finding refuses this plan. " + rest
                    + " That is no permission: see the cautions above.");
        }
    }

    private void listed(Html page, Finding.Level level) {
        List<Numbered.Block> here = Numbered.blocks(assessment.findings()).stream()
                .filter(b -> b.worst().level() == level).toList();
        if (here.isEmpty()) {
            return;
        }
        page.heading(3, "level-" + level.word(), level == Finding.Level.REFUSE ? "Refused, and why"
                : "To be decided");
        page.decisions(here.stream().map(b -> List.of(b.number(), b.subjects(), b.worst().text()
                + (b.members().size() > 1 ? " (The worst of " + b.members().size() + ".)" : ""), b.todo())).toList());
    }
}
