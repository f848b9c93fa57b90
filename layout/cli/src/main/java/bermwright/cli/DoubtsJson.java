// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.ModelNote;
import bermwright.site.assessment.Assessment;
import bermwright.site.doubt.DoubtWords;
import bermwright.site.doubt.Doubts;
import bermwright.site.doubt.FigureDoubt;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What is in doubt, for programs. */
final class DoubtsJson {
    private DoubtsJson() {
    }

    static ObjectNode of(Assessment best, Doubts doubts) {
        ObjectNode page = CommonJson.of(best);
        ModelNote note = Doubts.note();
        page.withArrayProperty("models").addObject().put("id", note.id()).put("model", note.model())
                .put("valid_for", note.validFor()).put("spread", note.spread()).put("status", note.status().word())
                .put("source", note.source());
        page.put("samples", doubts.samples()).put("failed_samples", doubts.failed()).put("seed", doubts.seed());
        DoubtWords.of(doubts).forEach(page.putArray("sentences")::add);
        ArrayNode inputs = page.putArray("inputs");
        doubts.inputs().forEach(i -> {
            ObjectNode one = inputs.addObject().put("input", i.group()).put("unit", i.unit()).put("source", i.source());
            one.put("best", i.value());
            if (i.spread() > 0) {
                one.put("spread", i.spread());
            }
        });
        ArrayNode figures = page.putArray("figures");
        doubts.figures().forEach(f -> put(figures.addObject(), f));
        chances(page.putArray("finding_chances"), doubts.findings());
        page.put("samples_in_full", doubts.inFull().samples());
        ArrayNode confirmed = page.putArray("confirmed");
        doubts.inFull().confirmed().forEach(c -> confirmed.addObject().put("figure", c.figure().id())
                .put("middle_difference_share", c.middle()).put("greatest_difference_share", c.greatest()));
        chances(page.putArray("finding_chances_in_full"), doubts.inFull().findings());
        return page;
    }

    private static void chances(ArrayNode list, List<Doubts.FindingChance> findings) {
        findings.forEach(f -> {
            ObjectNode one = list.addObject().put("id", f.id()).put("refuses", f.refuses()).put("warns", f.warns())
                    .put("notes", f.notes());
            f.best().ifPresent(l -> one.put("level_with_best_inputs", l.word()));
        });
    }

    private static void put(ObjectNode one, FigureDoubt f) {
        one.put("id", f.figure().id()).put("figure", f.figure().name()).put("unit", f.figure().unit());
        JsonObjects.put(one, "best", f.best());
        ObjectNode percentiles = one.putObject("percentiles");
        for (int p : new int[] {5, 16, 50, 84, 95}) {
            JsonObjects.put(percentiles, Integer.toString(p), f.at(p / 100.0));
        }
        f.figure().limit().ifPresent(l -> one.put("limit", l).put("limit_is", f.figure().isLeast() ? "least" : "most"));
        JsonObjects.put(one, "kept_chance", f.kept());
        JsonObjects.put(one, "left_out_error", f.leftOut());
        ArrayNode shares = one.putArray("shares");
        f.shares().forEach(s -> shares.addObject().put("input", s.group()).put("first_order", s.first())
                .put("total_order", s.total()).put("error", s.error()));
        ArrayNode worth = one.putArray("finding_out");
        f.worth().forEach(w -> worth.addObject().put("what", w.finding()).put("right_now", w.now())
                .put("right_then", w.then()));
    }
}
