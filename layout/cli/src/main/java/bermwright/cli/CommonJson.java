// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.ModelNote;
import bermwright.site.assessment.Assessment;
import bermwright.site.plan.PlanSoil;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** What every answer about a plan holds for programs: name, version, cautions, models, soil, findings. */
final class CommonJson {
    private CommonJson() {
    }

    static ObjectNode of(Assessment assessment) {
        ObjectNode page = JsonObjects.object();
        page.put("plan", assessment.planName()).put("bermwright", assessment.version());
        assessment.cautions().forEach(page.putArray("cautions")::add);
        var models = page.putArray("models");
        assessment.models().forEach(note -> put(models, note));
        var soil = page.putArray("regolith");
        PlanSoil.of(assessment.plan().ground()).statements().forEach(s -> soil.addObject().put("about", s.about())
                .put("taken", s.taken()).put("from", s.from()));
        putFindings(page, assessment.findings());
        return page;
    }

    /** A model behind figures. */
    static void put(ArrayNode models, ModelNote note) {
        models.addObject().put("id", note.id()).put("model", note.model()).put("valid_for", note.validFor())
                .put("spread", note.spread()).put("status", note.status().word()).put("source", note.source());
    }

    static void putFindings(ObjectNode page, List<Finding> all) {
        var findings = page.putArray("findings");
        Numbered.of(all).forEach(numbered -> put(findings.addObject(), numbered));
    }

    private static void put(ObjectNode entry, Numbered numbered) {
        Finding finding = numbered.finding();
        entry.put("rule", finding.rule().id()).put("level", finding.level().word()).put("subject", finding.subject());
        JsonObjects.put(entry, "measured", finding.measured());
        JsonObjects.put(entry, "limit", finding.limit());
        entry.put("unit", finding.unit());
        finding.place().ifPresent(place -> entry.set("place", JsonObjects.place(place)));
        entry.put("source", finding.source()).put("text", finding.text());
        entry.put("todo", finding.todo()).put("id", finding.id()).put("group", finding.group())
                .put("number", numbered.number());
    }
}
