// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.foundation.Point;
import bermwright.lowering.chain.Part;
import bermwright.site.gear.GearPlaces;
import bermwright.site.gear.Spot;
import bermwright.site.plan.Hull;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Where in plan the fault of a finding on lowering is: at the foot, anchor, winch or pivot it is about; of several
 * alike at the rightmost; at the standing base where it is about the hull as a whole.
 */
final class FaultPlaces {
    private enum Site {
        WINCH, POLE_FOOT, STAY_ANCHOR, PULL_OVER, PIVOT
    }

    private static final Map<Part, Site> OF_PARTS = Map.ofEntries(Map.entry(Part.LOWERING_LINE, Site.WINCH),
            Map.entry(Part.TERMINATION, Site.WINCH), Map.entry(Part.LINE_OVER_SHEAVE, Site.POLE_FOOT),
            Map.entry(Part.HEAD_SHEAVE, Site.POLE_FOOT), Map.entry(Part.POLE, Site.POLE_FOOT),
            Map.entry(Part.POLE_FOOT, Site.POLE_FOOT), Map.entry(Part.POLE_HEAD, Site.POLE_FOOT),
            Map.entry(Part.HEAD_TIE, Site.POLE_FOOT), Map.entry(Part.HEADS_ACROSS, Site.POLE_FOOT),
            Map.entry(Part.STAY, Site.STAY_ANCHOR), Map.entry(Part.STAY_ANCHOR, Site.STAY_ANCHOR),
            Map.entry(Part.WINCH, Site.WINCH), Map.entry(Part.WINCH_BRAKE, Site.WINCH),
            Map.entry(Part.BRAKE_HEAT, Site.WINCH), Map.entry(Part.WINCH_ANCHOR, Site.WINCH),
            Map.entry(Part.PULL_OVER_LINE, Site.PULL_OVER), Map.entry(Part.PULL_OVER_TERMINATION, Site.PULL_OVER),
            Map.entry(Part.PULL_OVER_WINCH, Site.PULL_OVER), Map.entry(Part.PULL_OVER_ANCHOR, Site.PULL_OVER),
            Map.entry(Part.PIVOT_HOLD, Site.PIVOT), Map.entry(Part.PIVOT_FRICTION, Site.PIVOT),
            Map.entry(Part.PIVOT_UPLIFT, Site.PIVOT), Map.entry(Part.PIVOT_TURNING, Site.PIVOT),
            Map.entry(Part.PIVOT_GROUND, Site.PIVOT));
    private static final Map<Site, Set<LoweringRule>> OF_RULES = Map.of(
            Site.POLE_FOOT, Set.of(LoweringRule.LOWERING_HEAD_SIDEWAYS, LoweringRule.LOWERING_POLE_PULLED_BACK,
                    LoweringRule.LOWERING_POLE_NOT_STAYED, LoweringRule.LOWERING_POLE_IN_SWEEP,
                    LoweringRule.LOWERING_UNEVEN_REEVING),
            Site.WINCH, Set.of(LoweringRule.LOWERING_SUN_AND_SHADE, LoweringRule.LOWERING_PAY_OUT_MISMATCH,
                    LoweringRule.LOWERING_LINE_SLACK, LoweringRule.LOWERING_SIDE_LINE,
                    LoweringRule.LOWERING_LIGHT_CHANGES, LoweringRule.LOWERING_LIGHT_BACKWARDS,
                    LoweringRule.LOWERING_LIGHT_NOT_STATED),
            Site.PIVOT, Set.of(LoweringRule.LOWERING_EDGE_SINKS, LoweringRule.LOWERING_SHOE_LIFTS,
                    LoweringRule.LOWERING_RIM_ROLLS, LoweringRule.LOWERING_PIVOT_INSIDE_RIM,
                    LoweringRule.LOWERING_UPLIFT, LoweringRule.LOWERING_HOLD_ACROSS,
                    LoweringRule.LOWERING_DISPERSION_SHOE, LoweringRule.LOWERING_TIPS_SIDEWAYS));

    private final Hull hull;
    private final LayPlane plane;
    private final GearPlaces places;

    FaultPlaces(Hull hull, LayPlane plane) {
        this.hull = hull;
        this.plane = plane;
        this.places = GearPlaces.of(hull);
    }

    /** The place of a finding. */
    Point of(Finding finding) {
        return site(finding).flatMap(this::place).orElse(hull.baseCentre());
    }

    private static Optional<Site> site(Finding finding) {
        for (Map.Entry<Site, Set<LoweringRule>> rules : OF_RULES.entrySet()) {
            if (rules.getValue().contains(finding.rule())) {
                return Optional.of(rules.getKey());
            }
        }
        List<String> parts = finding.parts();
        for (String words : parts) {
            Optional<Site> site = OF_PARTS.entrySet().stream().filter(p -> p.getKey().words().equals(words))
                    .map(Map.Entry::getValue).findFirst();
            if (site.isPresent()) {
                return site;
            }
        }
        return finding.rule() != LoweringRule.LOWERING_SINGLE_FAILURE || parts.isEmpty() ? Optional.empty()
                : lost(parts.get(0));
    }

    /** What is lost, by the words of the review: a line, a pole, a stay or the hold at the pivot. */
    private static Optional<Site> lost(String what) {
        return what.contains("pull-over") ? Optional.of(Site.PULL_OVER)
                : what.contains("winch") ? Optional.of(Site.WINCH) : what.contains("pole") ? Optional.of(Site.POLE_FOOT)
                : what.contains("stay") ? Optional.of(Site.STAY_ANCHOR)
                : what.contains("pivot") ? Optional.of(Site.PIVOT) : Optional.empty();
    }

    private Optional<Point> place(Site site) {
        Optional<Spot> spot = switch (site) {
            case WINCH -> places.lines().stream().map(GearPlaces.LinePlace::winch).findFirst();
            case POLE_FOOT -> places.poles().stream().map(GearPlaces.PolePlace::foot).findFirst();
            case STAY_ANCHOR -> places.stays().stream().map(GearPlaces.StayPlace::anchor).findFirst();
            case PULL_OVER -> places.pullOver().map(GearPlaces.PullOverPlace::winch);
            case PIVOT -> Optional.of(new Spot(0, 0));
        };
        return spot.map(s -> plane.place(s.ahead(), s.left()));
    }
}
