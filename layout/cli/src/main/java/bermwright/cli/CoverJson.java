// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.Answers;
import bermwright.site.answer.CoverAnswers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.exposure.SiteCover;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** The cover of a hull, for programs. */
final class CoverJson {
    private CoverJson() {
    }

    static void put(ObjectNode entry, HullAssessment hull) {
        hull.cover().ifPresent(cover -> {
            ObjectNode page = entry.putObject("cover");
            JsonObjects.put(page, Answers.COVER, cover);
            hull.burial().ifPresent(burial -> JsonObjects.put(page, "shell_factor", burial.shellFactor()));
        });
    }

    static void putBurial(ObjectNode entry, HullAssessment hull) {
        hull.burial().ifPresent(burial -> JsonObjects.put(entry.putObject("burial"), CoverAnswers.BURIAL, burial));
    }

    /** What passes through the covers, and how it fares. */
    static void putPassThroughs(ObjectNode page, Assessment assessment) {
        JsonObjects.putAll(page, "pass_throughs", CoverAnswers.PASSING,
                assessment.cover().map(SiteCover::passing).orElse(List.of()));
    }

    /** The outlines where the mound meets the ground. */
    static void putToes(ObjectNode page, Assessment assessment) {
        ArrayNode toes = page.putArray("toes");
        assessment.cover().ifPresent(cover -> cover.toes().forEach(toe -> {
            ArrayNode ring = toes.addArray();
            toe.corners().forEach(corner -> ring.add(JsonObjects.place(corner)));
        }));
    }
}
