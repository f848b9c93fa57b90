// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpreadKeysTest {
    private static String with(String spread) {
        return Sample.EVERY_KEY.replaceFirst("\"pivot_friction\": 0.45", "\"pivot_friction\": 0.45, " + spread);
    }

    @Test
    void aSpreadBesideANumberIsReadWrittenAndFound() {
        Plan plan = PlanFiles.read(with("\"pivot_friction_spread\": 0.05"), "p");
        assertTrue(PlanFiles.text(plan).contains("\"pivot_friction_spread\": 0.05"));
        List<StatedSpread> all = PlanValues.spreads(PlanFiles.read(PlanFiles.text(plan), "p"));
        assertEquals(1, all.size());
        assertEquals("ground.pivot_friction", all.get(0).path());
        assertEquals(0.05, all.get(0).spread());
        assertEquals(0.45, all.get(0).value());
    }

    @Test
    void whatIsNoSpreadIsRefused() {
        InputException below = assertThrows(InputException.class, () -> PlanFiles.read(
                with("\"pivot_friction_spread\": -1"), "p"));
        assertEquals("p, line 9: ground.pivot_friction_spread is -1; accepted: a number of 0 or more, one standard"
                + " deviation", below.getMessage());
        assertThrows(InputException.class, () -> PlanFiles.read(with("\"gravity_spread_m_s2\": 1"), "p"));
    }

    @Test
    void theNameHasTheSpreadBeforeTheUnit() {
        assertEquals("pivot_friction_spread", SpreadKeys.name(PlanKeys.key(GroundPlan.class, "pivot_friction")
                .orElseThrow()));
        assertEquals("stiffness_EA_spread_MN", SpreadKeys.name(PlanValues.key(
                "hulls[0].lowering.lines.line.stiffness_EA_MN").orElseThrow()));
        assertTrue(PlanFiles.schema().contains("\"mass_spread_t\""));
    }
}
