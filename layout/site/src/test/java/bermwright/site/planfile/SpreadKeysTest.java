// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import bermwright.site.plan.Anchor;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.GroundPlan;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import bermwright.site.plan.PassThrough;
import bermwright.site.plan.Pivot;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Seat;
import bermwright.site.plan.Station;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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
        assertEquals("p, line 10: ground.pivot_friction_spread is -1; accepted: a number of 0 or more, one standard"
                + " deviation", below.getMessage());
        assertThrows(InputException.class, () -> PlanFiles.read(with("\"gravity_spread_m_s2\": 1"), "p"));
    }

    /** What has a spread of its own key takes no second one, and what says where a thing lies takes its own words. */
    @Test
    void everyNumberOfHullSoilAndGearTakesASpread() {
        Set<String> without = new TreeSet<>();
        for (Class<? extends Record> type : List.of(Hull.class, Hull.End.class, Hull.SkinLayer.class, Hull.Shell.class,
                Pivot.class, Seat.class, Hatch.class, Station.class, CoverPlan.class, PassThrough.class, Anchor.class,
                GroundPlan.Regolith.class, GroundPlan.DensityAtDepth.class, GroundPlan.StrengthAtDepth.class,
                LoweringGear.class, LoweringGear.Lines.class, LoweringGear.Line.class, LoweringGear.Ends.class,
                LoweringGear.Winch.class, LoweringGear.Poles.class, LoweringGear.Head.class, LoweringGear.Stay.class,
                LoweringGear.PullOver.class, LoweringGear.SideThrusters.class, LoweringGear.Landing.class,
                LoweringGear.Temperature.class)) {
            PlanKeys.of(type).stream().filter(k -> k.type() instanceof ValueType.Quantity
                    && !SpreadKeys.takes(type, k)).forEach(k -> without.add(k.name()));
        }
        assertEquals(Set.of("centre_of_mass_from_base_m", "centre_of_mass_spread_m", "landing_dispersion_m",
                "density_spread_share", "placed_density_kg_m3", "bank_density_kg_m3", "loose_density_kg_m3",
                "density_kg_m3", "friction_angle_spread_deg", "cohesion_spread_Pa", "depth_m", "lift_m"), without);
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
