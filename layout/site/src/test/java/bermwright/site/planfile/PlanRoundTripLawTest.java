// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.plan.Plan;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever plan can be written down: it is valid by the schema, and a round trip loses nothing. */
class PlanRoundTripLawTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(PlanFiles.schema());

    static LongStream seeds() {
        return LongStream.range(0, 150);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void readWriteReadLosesNothing(long seed) throws IOException {
        String drawn = JsonText.pretty(new DrawnPlan(seed).plan());
        Plan plan = PlanFiles.read(drawn, "seed " + seed);
        String written = PlanFiles.text(plan);
        assertEquals(plan, PlanFiles.read(written, "seed " + seed));
        assertEquals(tree(drawn), tree(written), "seed " + seed);
        assertEquals(List.of(), errors(written), "seed " + seed);
    }

    @Test
    void theExamplesAreValidByTheSchema() throws IOException {
        assertEquals(List.of(), errors(Sample.EVERY_KEY));
        assertEquals(List.of(), errors(Sample.LEAST));
    }

    @Test
    void theSchemaRefusesWhatTheReaderRefuses() throws IOException {
        assertTrue(errors(Sample.EVERY_KEY.replace("length_m", "length_ft")).size() > 0);
        assertTrue(errors(Sample.EVERY_KEY.replace("\"mass_t\": 41", "\"mass_t\": -41")).size() > 0);
        assertTrue(errors(Sample.EVERY_KEY.replace("\"lowered\"", "\"dropped\"")).size() > 0);
        assertTrue(errors(Sample.LEAST.replace("\"bermwright_plan\": 1,", "")).size() > 0);
    }

    private static List<Error> errors(String plan) throws IOException {
        return SCHEMA.validate(tree(plan));
    }

    /** Numbers compare by value: 2.50 and 2.5 are the same. */
    private static JsonNode tree(String json) throws IOException {
        return new ObjectMapper().readTree(json);
    }
}
