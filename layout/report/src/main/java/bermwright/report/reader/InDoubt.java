// SPDX-License-Identifier: Apache-2.0
package bermwright.report.reader;

import bermwright.report.page.Html;
import bermwright.report.sheet.DoubtSheets;
import bermwright.site.doubt.DoubtWords;
import bermwright.site.doubt.Doubts;
import bermwright.site.doubt.Figure;
import bermwright.site.doubt.FigureDoubt;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The part of a report that says what is in doubt: what was sampled before, for the limits that are the reader's.
 *
 * @param pack   where to
 * @param doubts what was sampled, empty where nothing was
 */
record InDoubt(Pack pack, Optional<Doubts> doubts) {
    void write(Predicate<Figure> isMine) {
        doubts.ifPresent(d -> write(d, d.figures().stream().filter(f -> isMine.test(f.figure())).toList()));
    }

    private void write(Doubts sampled, List<FigureDoubt> mine) {
        Html page = pack.page();
        DoubtSheets sheets = new DoubtSheets(sampled);
        page.open("part").heading(2, "in-doubt", "What is in doubt");
        page.paragraph(sampled.samples() + " samples of all that this plan does not know exactly, seed "
                + sampled.seed() + ", of this very plan and elevation file (bermwright doubts)"
                + (sampled.failed() > 0 ? "; " + sampled.failed() + " more could not be worked out" : "") + ". "
                + "A chance of p from n samples scatters by sqrt(p (1 - p) / n).");
        if (mine.stream().noneMatch(f -> f.figure().limit().isPresent())) {
            page.note("warn", "None of the limits of this report was sampled.");
        } else {
            page.list(DoubtWords.of(mine));
        }
        DoubtWords.mostInDoubt(mine).ifPresent(f -> pack.figure(sheets.distribution(f), "The limit of this report that"
                + " is most in doubt, or lies nearest to it.").figure(sheets.shares(f), ""));
        pack.table(sheets.uncertain());
        pack.file(sheets.figures()).file(sheets.inputs());
        page.close();
    }
}
