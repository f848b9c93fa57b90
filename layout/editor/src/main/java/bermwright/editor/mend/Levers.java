// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import bermwright.editor.edit.Part;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.PairingRule;
import bermwright.finding.Rule;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which figures of the plan mend a finding of which rule. */
final class Levers {
    private static final Lever POLES_BEHIND = up("lowering.poles.behind_pivot_m", "Set the poles behind the pivot by");
    private static final Lever POLES_APART = up("lowering.poles.half_spread_m", "Set each pole off the middle by");
    private static final Lever SHOES_APART = up("pivot.half_spread_m", "Set each shoe off the middle by");
    private static final Lever THRUST = up("lowering.side_thrusters.thrust_each_kN", "Take thrusters of");
    private static final Lever THRUSTERS = up("lowering.side_thrusters.count", "Make the number of thrusters");
    private static final Lever THRUSTERS_FAR = up("lowering.side_thrusters.from_base_m",
            "Set the thrusters from the base at");
    /** By rule, with paths from the hull's own. */
    private static final Map<Rule, List<Lever>> OF_HULL = Map.ofEntries(
            Map.entry(PairingRule.GEAR_IN_OWN_SWEEP, List.of(POLES_APART, POLES_BEHIND)),
            Map.entry(LoweringRule.LOWERING_LUG_BEYOND_HULL, List.of(
                    down("lowering.lines.lug_from_base_m", "Set the lugs from the base at"),
                    down("lowering.pull_over.lug_from_base_m", "Set the pull-over lug from the base at"))),
            Map.entry(LoweringRule.LOWERING_POLE_IN_SWEEP, List.of(POLES_BEHIND, POLES_APART)),
            Map.entry(LoweringRule.LOWERING_DEAD_POINT, List.of(
                    up("lowering.poles.height_m", "Raise the poles to"), POLES_BEHIND)),
            Map.entry(LoweringRule.LOWERING_UPLIFT, List.of(POLES_BEHIND,
                    down("lowering.poles.height_m", "Lower the poles to"))),
            Map.entry(LoweringRule.LOWERING_EDGE_SINKS, List.of(up("pivot.foot_area_m2", "Widen each pivot foot to"))),
            Map.entry(LoweringRule.LOWERING_CONTACT_SPEED, List.of(down("lowering.rate_deg_min", "Lower it at"))),
            Map.entry(LoweringRule.LOWERING_TIPS_SIDEWAYS, List.of(SHOES_APART)),
            Map.entry(LoweringRule.LOWERING_SHOE_LIFTS, List.of(SHOES_APART)),
            Map.entry(LoweringRule.LOWERING_PAY_OUT_MISMATCH, List.of(
                    down("lowering.lines.pay_out_mismatch_m", "Keep the lines equal to within"))),
            Map.entry(LoweringRule.LOWERING_DISPERSION, List.of(down("landing_dispersion_m", "Land within"))),
            Map.entry(LoweringRule.THRUSTER_MARGIN, List.of(THRUST, THRUSTERS)),
            Map.entry(LoweringRule.THRUSTER_ONE_OUT, List.of(THRUST, THRUSTERS)),
            Map.entry(LoweringRule.THRUSTER_CANNOT_SLOW, List.of(THRUST)),
            Map.entry(LoweringRule.THRUSTER_LIFTS_BASE, List.of(THRUSTERS_FAR)),
            Map.entry(LoweringRule.THRUSTER_BASE_SLIDES, List.of(THRUSTERS_FAR)));

    private Levers() {
    }

    private static Lever up(String path, String words) {
        return new Lever(path, true, words);
    }

    private static Lever down(String path, String words) {
        return new Lever(path, false, words);
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
        if (hull.isEmpty()) {
            return List.of();
        }
        Rule rule = finding.rule();
        if (rule == LoweringRule.LOWERING_FACTOR || rule == LoweringRule.LOWERING_HOLD_ACROSS) {
            return chainPart(finding).map(p -> GearLevers.of(hull.get(), path, p)).orElse(List.of());
        }
        return OF_HULL.getOrDefault(rule, List.of()).stream().map(l -> l.from(path)).toList();
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
