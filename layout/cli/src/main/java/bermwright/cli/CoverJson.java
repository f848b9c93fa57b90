// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.Answers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.exposure.HullCover;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

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

    /** Where a cover is least deep. */
    static void putLeast(ObjectNode entry, HullCover cover) {
        Answers.COVER.figures().stream().filter(f -> f.key().startsWith("least"))
                .forEach(f -> JsonObjects.put(entry, f, cover));
    }

    /** What passes through the covers, and how it fares. */
    static void putPassThroughs(ObjectNode page, Assessment assessment) {
        ArrayNode all = page.putArray("pass_throughs");
        assessment.cover().ifPresent(cover -> cover.passing().forEach(p -> {
            ObjectNode entry = all.addObject().put("hull", p.hull()).put("id", p.thing().id())
                    .put("kind", p.thing().kind().word()).put("state", p.state());
            JsonObjects.put(entry, "deepest_soil_m", p.deepest());
            JsonObjects.put(entry, "share_under_soil", p.shareUnderSoil());
            JsonObjects.put(entry, "open_way_m", p.openWay());
            JsonObjects.put(entry, "displaced_m3", p.displaced());
        }));
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
