// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A judgement is kept beside the plan and says when it no longer fits; two plans are compared key by key. */
class ReviewRoundTest {
    @TempDir
    Path folder;

    @Test
    void aJudgementStandsUntilWhatWasJudgedChanges() throws IOException {
        Path plan = Run.site(folder, Run.plan());
        Run kept = Run.of("judge", plan.toString(), "--of", "elm/bunks", "--decision", "accepted", "--name",
                "A. Reviewer", "--date", "2031-02-14", "--revision", "B", "--remark", "=as discussed", "--json");
        JsonNode judgement = kept.json().get("judgements").get(0);
        assertEquals("stands", judgement.get("state").asText(), kept.err());
        String file = Files.readString(folder.resolve("plan.judgements.json"));
        assertTrue(file.contains("\"of\": \"elm/bunks\"") && file.contains("\"decision\": \"accepted\""), file);
        Path thinner = Run.site(folder, Run.plan().replace("\"thickness_m\": 2.5", "\"thickness_m\": 1.5"));
        String listed = Run.of("judge", thinner.toString()).out();
        assertTrue(listed.contains("JUDGE ANEW") && listed.contains("A. Reviewer"), listed);
        assertEquals(file, Files.readString(folder.resolve("plan.judgements.json")), "listing changes nothing");
    }

    @ParameterizedTest
    @CsvSource({"'--of,elm/bunks,--decision,perhaps,--name,A,--date,2031-02-14',--decision",
        "'--of,elm/bunks,--decision,accepted,--date,2031-02-14',--name",
        "'--of,elm/bunks,--decision,accepted,--name,A',--date",
        "'--of,elm/bunks,--decision,accepted,--name,A,--date,tomorrow',--date",
        "'--of,elm/bunks,--decision,remark,--name,A,--date,2031-02-14',--remark",
        "'--decision,accepted',--of"})
    void whatCannotBeKeptIsRefusedBeforeTheWork(String options, String key) throws IOException {
        Path plan = Run.site(folder, Run.plan());
        String[] given = ("judge," + plan + "," + options + ",--json").split(",");
        Run run = Run.of(given);
        assertEquals(2, run.code(), run.err());
        assertEquals(key, run.json().get("error").get("key").asText());
        assertFalse(Files.exists(folder.resolve("plan.judgements.json")));
    }

    @Test
    void aBrokenFileOfJudgementsIsNamedWithItsLine() throws IOException {
        Path plan = Run.site(folder, Run.plan());
        Files.writeString(folder.resolve("plan.judgements.json"),
                "{\n  \"bermwright_judgements\": 1,\n  \"judgements\": [{\n    \"of\": \"x\","
                + " \"decisoin\": \"accepted\" }]\n}\n");
        Run run = Run.of("judge", plan.toString(), "--json");
        assertEquals(2, run.code());
        assertEquals(4, run.json().get("error").get("line").asInt(), run.out());
        assertTrue(run.json().get("error").get("accepted").asText().contains("decision"), run.out());
    }

    @Test
    void plansAreComparedByKeyFindingAndFigure() throws IOException {
        Path old = Files.createDirectories(folder.resolve("old"));
        Path plan = Run.site(folder, Run.plan().replace("\"thickness_m\": 2.5", "\"thickness_m\": 2.0"));
        Run run = Run.of("compare", Run.site(old, Run.plan()).toString(), plan.toString(), "--json");
        JsonNode key = run.json().get("keys").get(0);
        assertEquals("hulls[elm].cover.thickness_m", key.get("key").asText(), run.out());
        assertEquals("2.5", key.get("before").asText());
        assertEquals("2.0", key.get("after").asText().replaceFirst("^2$", "2.0"));
        assertEquals(1, run.json().get("keys").size());
        boolean less = false;
        for (JsonNode figure : run.json().get("figures")) {
            less |= figure.get("key").asText().endsWith("cover.volume_m3") && figure.get("after").asDouble()
                    < figure.get("before").asDouble();
            assertFalse(figure.get("before").asText().equals(figure.get("after").asText()), figure::toString);
        }
        assertTrue(less, run.out());
    }
}
