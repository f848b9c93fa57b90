// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class DemoPlanTest {
    private static final Plan PLAN = PlanFiles.read(Cli.DEMO.resolve("plan.json"));

    @Test
    void isWrittenAsTheProgramWritesIt() throws IOException {
        assertEquals(Files.readString(Cli.DEMO.resolve("plan.json")), PlanFiles.text(PLAN));
    }

    @Test
    void isValidByTheSchema() throws IOException {
        var schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(PlanFiles.schema());
        assertEquals(List.of(), schema.validate(new ObjectMapper().readTree(
                Files.readString(Cli.DEMO.resolve("plan.json")))));
    }

    @Test
    void itsThreeHullsDifferAndAreLikeNoOther() {
        assertEquals(3, PLAN.hulls().size());
        for (ToDoubleFunction<Hull> size : List.<ToDoubleFunction<Hull>>of(Hull::length, Hull::diameter, Hull::mass)) {
            assertEquals(3, PLAN.hulls().stream().mapToDouble(size).distinct().count());
        }
        for (Hull hull : PLAN.hulls()) {
            assertTrue(Math.abs(hull.length() - 50) > 5 && Math.abs(hull.diameter() - 9) > 0.4
                    && Math.abs(hull.mass() - 120_000) > 10_000, hull.id());
        }
    }

    @Test
    void hasOneOfEverythingAPlannerWorksWith() {
        Set<String> means = PLAN.hulls().stream().map(h -> h.lowering().orElseThrow().means())
                .map(LoweringGear.Means::word).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(Set.of("lines", "side thrusters"), means);
        assertEquals(2, PLAN.hulls().stream().filter(h -> h.lowering().orElseThrow().means()
                == LoweringGear.Means.LINES).count());
        assertEquals(2, PLAN.borrowGrounds().size());
        for (List<?> things : List.of(PLAN.keepOuts(), PLAN.corridors(), PLAN.landingPads(), PLAN.machines(),
                PLAN.tunnels(), PLAN.walls(), PLAN.orderOfWork(), PLAN.exposure().limits())) {
            assertFalse(things.isEmpty());
        }
        assertTrue(PLAN.hulls().stream().noneMatch(h -> h.stations().isEmpty() || h.hatches().isEmpty()));
    }
}
