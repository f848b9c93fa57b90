// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whatever the schema allows is answered: done, refused by a finding, or refused with key, value and what is accepted;
 * never our mistake. More plans by {@code -Dbermwright.fuzz.plans=N}, other ones by {@code -Dbermwright.fuzz.seed=S}.
 */
class SchemaPlansTest {
    private static final int PLANS = Integer.getInteger("bermwright.fuzz.plans", 100);
    private static final long SEED = Long.getLong("bermwright.fuzz.seed", 20261130L);
    private static final int BAD_INPUT = 2;
    private static final long SLOWEST_NANOS = 60_000_000_000L;

    @TempDir
    Path folder;

    @Test
    void everyPlanOfTheSchemaIsAnswered() throws IOException {
        ObjectNode ordinary = (ObjectNode) new ObjectMapper().readTree(Run.plan());
        List<String> wrong = new ArrayList<>();
        int[] codes = new int[4];
        for (int i = 0; i < PLANS; i++) {
            String plan = new SchemaPlans(SEED + i).plan(ordinary).toPrettyString();
            Path file = Run.site(folder, plan);
            long begun = System.nanoTime();
            Run run = Run.of("assess", file.toString(), "--json");
            codes[run.code()]++;
            String trouble = trouble(run, System.nanoTime() - begun);
            if (!trouble.isEmpty()) {
                wrong.add("seed " + (SEED + i) + ": " + trouble);
                Files.writeString(Path.of("target", "fuzz-" + (SEED + i) + ".json"), plan);
            }
        }
        assertTrue(wrong.isEmpty(), wrong.size() + " of " + PLANS + ":\n" + String.join("\n", wrong));
        assertTrue(codes[0] + codes[1] > PLANS / 4, "enough plans are read to be worked out: " + codes[0] + ", "
                + codes[1]);
        assertTrue(codes[BAD_INPUT] > 0, "some are refused");
    }

    private static String trouble(Run run, long nanos) {
        if (run.code() > BAD_INPUT) {
            return run.err().lines().filter(l -> !l.contains(" %  ")).limit(12).reduce("", (a, b) -> a + "\n  " + b);
        } else if (nanos > SLOWEST_NANOS) {
            return "took " + nanos / 1_000_000_000 + " s";
        }
        JsonNode page = run.json();
        if (run.code() == BAD_INPUT && (page.at("/error/key").asText().isEmpty()
                && page.at("/error/file").asText().isEmpty() || page.at("/error/accepted").asText().isEmpty())) {
            return "a refusal without key or what is accepted: " + page;
        }
        return run.out().contains("NaN") || run.out().contains("Infinity") ? "a number that is none" : "";
    }

    @Test
    void theSameSeedGivesTheSamePlan() throws IOException {
        ObjectNode ordinary = (ObjectNode) new ObjectMapper().readTree(Run.plan());
        assertEquals(new SchemaPlans(1).plan(ordinary), new SchemaPlans(1).plan(ordinary));
        assertFalse(new SchemaPlans(1).plan(ordinary).equals(new SchemaPlans(2).plan(ordinary)));
    }
}
