// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Our own earthworks of the demo plan, frozen: a difference means look, not wrong. */
class DemoEarthworksPinnedTest {
    /** Half of the last digit that is written down here. */
    private static final double CUBIC_METRE = 0.5;
    private static final double HUNDREDTH = 0.005;
    private static final double TENTH = 0.05;
    private static JsonNode works;

    @BeforeAll
    static void run() {
        works = Cli.run("earthworks", Cli.DEMO.resolve("plan.json").toString(), "--json").json().get("earthworks");
    }

    @Test
    void volumesAndHours() {
        assertEquals(24_593, works.get("placed_m3").asDouble(), CUBIC_METRE);
        assertEquals(22_485, works.get("bank_m3").asDouble(), CUBIC_METRE);
        assertEquals(28_106, works.get("loose_m3").asDouble(), CUBIC_METRE);
        assertEquals(0, works.get("shortage_m3").asDouble());
        assertEquals(5_266, works.get("machine_hours").asDouble(), CUBIC_METRE);
        double hauled = 0;
        for (JsonNode haul : works.get("hauls")) {
            hauled += haul.get("kind").asText().equals("cover") ? haul.get("bank_m3").asDouble() : 0;
        }
        assertEquals(works.get("bank_m3").asDouble(), hauled, CUBIC_METRE);
    }

    @Test
    void slopesAgainstASlide() {
        assertEquals("alder", works.get("slopes").get(0).get("of").asText());
        assertEquals(1.72, works.get("slopes").get(0).get("factor_worst_circle").asDouble(), HUNDREDTH);
        assertEquals(1.29, works.get("slopes").get(0).get("factor_in_the_face").asDouble(), HUNDREDTH);
        assertEquals(10.9, works.get("slopes").get(0).get("height_m").asDouble(), TENTH);
        assertEquals(3.26, works.get("slopes").get(3).get("factor_worst_circle").asDouble(), HUNDREDTH);
    }

    @Test
    void whatIsDugForTheGear() {
        double hole = 0;
        for (JsonNode item : works.get("gear_digging")) {
            assertTrue(item.get("fill_m3").asDouble() <= item.get("cut_m3").asDouble());
            if (item.get("part").asText().equals("hole, block of lowering line 1")
                    && item.get("hull").asText().equals("alder")) {
                hole = item.get("cut_m3").asDouble();
            }
        }
        assertEquals(301.0, hole, TENTH);
    }
}
