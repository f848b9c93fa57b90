// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.chain.EdgeState;
import bermwright.lowering.chain.Part;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.regolith.SoilSensitivity;
import bermwright.site.SamplePlans;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.site.planfile.PlanFiles;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What the soil keys of a plan do to everything that the soil bears; nothing that they say is lost. */
class SoilOfPlanLawTest {
    private static final double SAME = 1e-9;
    private static final ElevationGrid LEVEL = SamplePlans.ground((e, n) -> 3);
    private static final String GEAR = """
            {"bermwright_plan": 1, "ground": {"elevation_file": "level.asc", "regolith": {%s}}, "hulls": [{
              "id": "A", "length_m": 38, "diameter_m": 7.6, "mass_t": 71, "centre_of_mass_from_base_m": 17,
              "base_centre": {"east_m": 150, "north_m": 120}, "lay_down_azimuth_deg": 0,
              "skin": [{"material": "steel", "areal_density_g_cm2": 3.95}],
              "lowering": {"means": "lines", "rate_deg_min": 2,
                "lines": {"count": 2, "lug_from_base_m": 30, "lug_half_spread_m": 3.8,
                  "line": {"breaking_load_kN": 900, "stiffness_EA_MN": 81}, "winch": {"rating_each_kN": 250,
                  "behind_pivot_m": 45, "anchor": {"kind": "plate", "width_m": 2, "height_m": 1, "depth_m": 1.5}}},
                "poles": {"height_m": 26, "behind_pivot_m": 10, "half_spread_m": 6, "diameter_m": 0.5, "wall_mm": 16,
                  "foot_area_m2": 2},
                "stays": [{"behind_pole_m": 28, "half_spread_m": 6, "breaking_load_kN": 900,
                  "anchor": {"kind": "ballast", "mass_t": 30}}],
                "pull_over": {"lug_from_base_m": 30, "anchor_ahead_m": 60, "winch_rating_kN": 60,
                  "anchor": {"kind": "block", "width_m": 2, "height_m": 1, "length_m": 1, "depth_m": 1.4}},
                "pivot_hold": {"anchor": {"kind": "screw", "count": 4, "diameter_m": 0.4, "depth_m": 2}}}}]}
            """;

    private static Plan plan(String regolith) {
        return PlanFiles.read(GEAR.formatted(regolith), "law.json");
    }

    private static Plan plan(double bank, double frictionDeg, double cohesion) {
        return plan(bank, frictionDeg, cohesion, "");
    }

    private static Plan plan(double bank, double frictionDeg, double cohesion, String more) {
        return plan("\"bank_density_kg_m3\": %s, \"friction_angle_deg\": %s, \"cohesion_Pa\": %s%s".formatted(bank,
                frictionDeg, cohesion, more));
    }

    private static Laydown laydown(Plan plan) {
        return LaydownOfHull.of(plan, plan.hulls().get(0), LEVEL);
    }

    private static Map<String, ChainRow> borne(Plan plan) {
        LoweringResult result = laydown(plan).lowering().orElseThrow();
        return result.chain().rows().stream()
                .filter(r -> r.part() != Part.PIVOT_GROUND && result.chain().soil(r).isPresent())
                .collect(Collectors.toMap(r -> r.part().words() + ", " + r.source(), r -> r, (a, b) -> a));
    }

    private static double factor(ChainRow row) {
        return row.factor().orElseThrow();
    }

    private static EdgeState edge(Plan plan) {
        List<EdgeState> edge = laydown(plan).review().orElseThrow().edge();
        return edge.get(edge.size() / 2);
    }

    @Test
    void eachDegreeOfStatedFrictionMovesEveryPartThatTheSoilBears() {
        Map<String, ChainRow> before = borne(plan(1800, 30, 500));
        double edge = edge(plan(1800, 30, 500)).factor();
        assertTrue(before.size() >= 4, before.keySet().toString());
        for (double deg = 31; deg <= 60; deg++) {
            Map<String, ChainRow> now = borne(plan(1800, deg, 500));
            for (String part : before.keySet()) {
                assertTrue(factor(now.get(part)) > factor(before.get(part)), part + " at " + deg);
            }
            assertTrue(edge(plan(1800, deg, 500)).factor() > edge);
            before = now;
            edge = edge(plan(1800, deg, 500)).factor();
        }
    }

    @Test
    void bankDensityMovesEveryPartThatTheSoilBearsButTheSledge() {
        Map<String, ChainRow> light = borne(plan(1200, 42, 500));
        Map<String, ChainRow> heavy = borne(plan(1800, 42, 500));
        for (String part : light.keySet()) {
            double ratio = heavy.get(part).capacity().orElseThrow() / light.get(part).capacity().orElseThrow();
            if (part.contains("ballast")) {
                assertEquals(1, ratio, SAME, part);
            } else {
                assertTrue(ratio > 1.05 && ratio < 1.5, part + " " + ratio);
            }
        }
        double edges = edge(plan(1800, 42, 0)).bearing() / edge(plan(1200, 42, 0)).bearing();
        assertEquals(1.5, edges, SAME);
    }

    @Test
    void theFactorWithOtherSoilIsThatOfAPlanThatStatesIt() {
        Plan plan = plan(1750, 41, 600);
        Map<String, ChainRow> stated = borne(plan);
        LoweringResult result = laydown(plan).lowering().orElseThrow();
        Map<String, ChainRow> weak = borne(plan(1750, 39, 600));
        Map<String, ChainRow> strong = borne(plan(1750, 43, 600));
        Map<String, ChainRow> loose = borne(plan(1750, 41, 450));
        Map<String, ChainRow> sticky = borne(plan(1750, 41, 750));
        Map<String, ChainRow> both = borne(plan(1750, 39, 450));
        stated.forEach((part, check) -> {
            SoilSensitivity soil = result.chain().soil(check).orElseThrow();
            assertEquals(factor(weak.get(part)), soil.frictionLess(), SAME, part);
            assertEquals(factor(strong.get(part)), soil.frictionMore(), SAME, part);
            assertEquals(factor(loose.get(part)), soil.cohesionLess(), SAME, part);
            assertEquals(factor(sticky.get(part)), soil.cohesionMore(), SAME, part);
            assertEquals(factor(both.get(part)), soil.bothLess(), SAME, part);
            assertTrue(soil.asStated().isEmpty());
        });
        assertEquals(edge(plan(1750, 39, 600)).factor(), edge(plan).soil().frictionLess(), SAME);
        assertEquals(edge(plan(1750, 41, 450)).factor(), edge(plan).soil().cohesionLess(), SAME);
    }

    @Test
    void strengthByDepthIsUsedAndTheStatedOneStandsBeside() {
        String deep = "{\"depth_m\": 0.5, \"friction_angle_deg\": 44, \"cohesion_Pa\": 900, \"source\": \"core 7\"}";
        Plan risen = plan(1800, 36, 200, ", \"strength_profile\": [{\"depth_m\": 0, \"friction_angle_deg\": 36,"
                + " \"cohesion_Pa\": 200}, " + deep + "]");
        Map<String, ChainRow> stated = borne(plan(1800, 36, 200));
        LoweringResult result = laydown(risen).lowering().orElseThrow();
        borne(risen).forEach((part, check) -> {
            assertTrue(part.contains("ballast") || factor(check) > factor(stated.get(part)), part);
            assertEquals(factor(stated.get(part)), result.chain().soil(check).orElseThrow().asStated().orElseThrow(),
                    SAME, part);
        });
        assertEquals(Map.of("strength in place", "strength_profile of the plan: source not stated; core 7"),
                PlanSoil.of(risen.ground()).statements().stream().filter(s -> s.about().equals("strength in place"))
                        .collect(Collectors.toMap(PlanSoil.Statement::about, PlanSoil.Statement::from)));
        Map<String, ChainRow> level = borne(plan(1800, 20, 0, ", \"strength_profile\": [" + deep + "]"));
        Map<String, ChainRow> asMuch = borne(plan(1800, 44, 900));
        level.forEach((part, check) -> assertEquals(factor(asMuch.get(part)), factor(check), SAME, part));
    }

    @Test
    void aDensityProfileTakesThePlaceOfBankDensityForEverybody() {
        String points = ", \"density_profile\": [{\"depth_m\": 0, \"density_kg_m3\": 1300}, {\"depth_m\": 1.5,"
                + " \"density_kg_m3\": 1900}]";
        Plan one = plan(1800, 42, 500, points);
        Plan other = plan(1200, 42, 500, points);
        Map<String, ChainRow> factors = borne(one);
        borne(other).forEach((part, check) -> assertEquals(factor(factors.get(part)), factor(check), SAME, part));
        PlanSoil soil = PlanSoil.of(one.ground());
        assertEquals(1500, soil.states().bank(), SAME);
        assertEquals(1500, soil.inPlace().density().columnMass(1), SAME);
        assertEquals(1600, soil.inPlace().density().mean(0.5, 1), SAME);
        Plan even = plan(1500, 42, 500);
        PlanSoil plain = PlanSoil.of(even.ground());
        for (double depth = 0.1; depth < 4; depth += 0.3) {
            assertEquals(1500, plain.bankDensity(depth), SAME);
            assertEquals(1500 * depth, plain.inPlace().density().columnMass(depth), 1e-8);
        }
    }

    @Test
    void refusesAProfileWhoseDepthsDoNotGrow() {
        InputException refused = assertThrows(InputException.class, () -> plan(1800, 42, 500, ", \"density_profile\":"
                + " [{\"depth_m\": 1, \"density_kg_m3\": 1300}, {\"depth_m\": 1, \"density_kg_m3\": 1400}]"));
        assertEquals("law.json, line 1: ground.regolith.density_profile[1].depth_m is 1; accepted: more than the depth"
                + " before it, 1, in m", refused.getMessage());
    }

    @Test
    void frictionBeyondFortyFiveDegreesIsMarkedAsExtrapolated() {
        for (double deg : new double[] {45, 45.1}) {
            assertEquals(deg > 45 ? "extrapolated" : "computed", laydown(plan(1800, deg, 500)).notes().stream()
                    .filter(n -> n.id().equals("lowering-anchors")).findFirst().orElseThrow().status().word());
        }
    }
}
