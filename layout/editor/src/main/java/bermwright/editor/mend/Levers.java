// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import bermwright.editor.edit.Part;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.PairingRule;
import bermwright.finding.Rule;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which figures of the plan mend a finding of which rule. */
final class Levers {
    private static final String UP = "up";
    private static final String DOWN = "down";
    /** By rule: path from the hull's own, way, words; then the next. */
    private static final Map<LoweringRule, List<String>> OF_HULL = Map.ofEntries(
            Map.entry(LoweringRule.LOWERING_LUG_BEYOND_HULL, List.of("lowering.lines.lug_from_base_m", DOWN,
                    "Set the lugs from the base at", "lowering.pull_over.lug_from_base_m", DOWN,
                    "Set the pull-over lug from the base at")),
            Map.entry(LoweringRule.LOWERING_POLE_IN_SWEEP, List.of("lowering.poles.behind_pivot_m", UP,
                    "Set the poles behind the pivot by", "lowering.poles.half_spread_m", UP,
                    "Set each pole off the middle by")),
            Map.entry(LoweringRule.LOWERING_DEAD_POINT, List.of("lowering.poles.height_m", UP, "Raise the poles to",
                    "lowering.poles.behind_pivot_m", UP, "Set the poles behind the pivot by")),
            Map.entry(LoweringRule.LOWERING_UPLIFT, List.of("lowering.poles.behind_pivot_m", UP,
                    "Set the poles behind the pivot by", "lowering.poles.height_m", DOWN, "Lower the poles to")),
            Map.entry(LoweringRule.LOWERING_EDGE_SINKS, List.of("pivot.foot_area_m2", UP, "Widen each pivot foot to")),
            Map.entry(LoweringRule.LOWERING_CONTACT_SPEED, List.of("lowering.rate_deg_min", DOWN, "Lower it at")),
            Map.entry(LoweringRule.LOWERING_TIPS_SIDEWAYS, List.of("pivot.half_spread_m", UP,
                    "Set each shoe off the middle by")),
            Map.entry(LoweringRule.LOWERING_SHOE_LIFTS, List.of("pivot.half_spread_m", UP,
                    "Set each shoe off the middle by")),
            Map.entry(LoweringRule.LOWERING_PAY_OUT_MISMATCH, List.of("lowering.lines.pay_out_mismatch_m", DOWN,
                    "Keep the lines equal to within")),
            Map.entry(LoweringRule.LOWERING_DISPERSION, List.of("landing_dispersion_m", DOWN, "Land within")),
            Map.entry(LoweringRule.THRUSTER_MARGIN, List.of("lowering.side_thrusters.thrust_each_kN", UP,
                    "Take thrusters of", "lowering.side_thrusters.count", UP, "Make the number of thrusters")),
            Map.entry(LoweringRule.THRUSTER_ONE_OUT, List.of("lowering.side_thrusters.thrust_each_kN", UP,
                    "Take thrusters of", "lowering.side_thrusters.count", UP, "Make the number of thrusters")),
            Map.entry(LoweringRule.THRUSTER_CANNOT_SLOW, List.of("lowering.side_thrusters.thrust_each_kN", UP,
                    "Take thrusters of")),
            Map.entry(LoweringRule.THRUSTER_LIFTS_BASE, List.of("lowering.side_thrusters.from_base_m", UP,
                    "Set the thrusters from the base at")),
            Map.entry(LoweringRule.THRUSTER_BASE_SLIDES, List.of("lowering.side_thrusters.from_base_m", UP,
                    "Set the thrusters from the base at")));

    private Levers() {
    }

    /**
     * The figures that mend a finding.
     *
     * @param plan    the plan
     * @param finding the finding
     * @return the levers, the likeliest first; none where no one figure does
     */
    static List<Lever> of(Plan plan, Finding finding) {
        Optional<Part> part = Part.bySubject(plan, finding.subject()).filter(p -> p.kind() == Part.Kind.HULL);
        Optional<Hull> hull = part.flatMap(p -> plan.hull(p.id()));
        String path = part.map(p -> p.path(plan)).orElse("");
        if (hull.isPresent() && finding.rule() == PairingRule.GEAR_IN_OWN_SWEEP) {
            return List.of(new Lever(path + ".lowering.poles.half_spread_m", true, "Set each pole off the middle by"),
                    new Lever(path + ".lowering.poles.behind_pivot_m", true, "Set the poles behind the pivot by"));
        }
        if (hull.isEmpty() || !(finding.rule() instanceof LoweringRule rule)) {
            return List.of();
        }
        if (rule == LoweringRule.LOWERING_FACTOR || rule == LoweringRule.LOWERING_HOLD_ACROSS) {
            return chainPart(finding).map(p -> GearLevers.of(hull.get(), path, p)).orElse(List.of());
        }
        List<String> words = OF_HULL.getOrDefault(rule, List.of());
        List<Lever> levers = new ArrayList<>();
        for (int i = 0; i + 2 < words.size(); i += 3) {
            levers.add(new Lever(path + "." + words.get(i), words.get(i + 1).equals(UP), words.get(i + 2)));
        }
        return levers;
    }

    /** The part of the load path that a finding is about. */
    static Optional<bermwright.lowering.chain.Part> chainPart(Finding finding) {
        Rule rule = finding.rule();
        if (rule == LoweringRule.LOWERING_HOLD_ACROSS) {
            return Optional.of(bermwright.lowering.chain.Part.PIVOT_HOLD);
        }
        return Arrays.stream(bermwright.lowering.chain.Part.values())
                .filter(p -> finding.parts().contains(p.words())).findFirst();
    }
}
