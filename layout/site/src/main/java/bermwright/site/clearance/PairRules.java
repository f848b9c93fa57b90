// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.finding.PairingRule;
import bermwright.site.clearance.PairRule.Kept;
import bermwright.site.footprint.ShapeKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The table of what must keep apart from what, seen from above: things that stand on the ground. The first rule that
 * names a pair of kinds holds for it. What falls and hangs is compared in space.
 */
final class PairRules {
    private static final Set<ShapeKind> BODY = EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING);
    private static final Set<ShapeKind> GEAR = EnumSet.of(ShapeKind.POLE_FOOT, ShapeKind.ANCHOR, ShapeKind.WINCH);
    private static final Set<ShapeKind> IN_THE_AIR = EnumSet.of(ShapeKind.LINE, ShapeKind.STAY);
    private static final Set<ShapeKind> MEANWHILE = EnumSet.of(ShapeKind.SWEEP, ShapeKind.LINE, ShapeKind.STAY,
            ShapeKind.POLE_FOOT, ShapeKind.ANCHOR, ShapeKind.WINCH);
    private static final Set<ShapeKind> DANGER = EnumSet.of(ShapeKind.POLE_FALL_ZONE, ShapeKind.SNAP_BACK,
            ShapeKind.THRUSTER_PLUME, ShapeKind.LANDING_PLUME);

    private static final List<PairRule> RULES = rules();
    private static final Map<ShapeKind, Map<ShapeKind, PairRule>> BY_KINDS = table();

    private PairRules() {
    }

    /** The rule for a pair of kinds with the first on the finding's side, or nothing. */
    static PairRule of(ShapeKind mine, ShapeKind theirs) {
        return BY_KINDS.get(mine).get(theirs);
    }

    private static Map<ShapeKind, Map<ShapeKind, PairRule>> table() {
        Map<ShapeKind, Map<ShapeKind, PairRule>> table = new EnumMap<>(ShapeKind.class);
        for (ShapeKind kind : ShapeKind.values()) {
            table.put(kind, new EnumMap<>(ShapeKind.class));
        }
        for (PairRule rule : RULES) {
            for (ShapeKind mine : rule.mine()) {
                for (ShapeKind theirs : rule.theirs()) {
                    table.get(mine).putIfAbsent(theirs, rule);
                }
            }
        }
        return table;
    }

    private static List<PairRule> rules() {
        List<PairRule> rules = new ArrayList<>();
        hulls(rules);
        site(rules);
        soil(rules);
        return List.copyOf(rules);
    }

    private static void hulls(List<PairRule> rules) {
        rules.add(new PairRule(PairingRule.HULL_SPACING, BODY, BODY, Kept.HULL_SPACING));
        rules.add(new PairRule(PairingRule.SWEEP_OVER_GEAR, EnumSet.of(ShapeKind.SWEEP), GEAR, Kept.NOTHING));
        rules.add(new PairRule(PairingRule.GEAR_UNDER_HULL, GEAR, BODY, Kept.NOTHING));
        rules.add(new PairRule(PairingRule.GEAR_CROWDED, GEAR, GEAR, Kept.NOTHING));
        rules.add(new PairRule(PairingRule.ANCHORS_SHARE_SOIL, EnumSet.of(ShapeKind.ANCHOR_SOIL),
                EnumSet.of(ShapeKind.ANCHOR_SOIL), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.SNAP_BACK, EnumSet.of(ShapeKind.SNAP_BACK),
                EnumSet.of(ShapeKind.WINCH), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.THRUSTER_PLUME, EnumSet.of(ShapeKind.THRUSTER_PLUME),
                EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.POLE_FOOT, ShapeKind.ANCHOR,
                ShapeKind.WINCH), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.LANDING_ON_GEAR, EnumSet.of(ShapeKind.LANDING), GEAR, Kept.NOTHING));
        rules.add(new PairRule(PairingRule.LANDING_ON_LINE, EnumSet.of(ShapeKind.LANDING), IN_THE_AIR,
                Kept.NOTHING));
        rules.add(new PairRule(PairingRule.LANDING_PLUME, EnumSet.of(ShapeKind.LANDING_PLUME),
                EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.POLE_FOOT, ShapeKind.ANCHOR,
                ShapeKind.WINCH), Kept.NOTHING));
    }

    private static void site(List<PairRule> rules) {
        rules.add(new PairRule(PairingRule.KEEP_OUT, EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING,
                ShapeKind.POLE_FOOT, ShapeKind.ANCHOR, ShapeKind.WINCH,
                ShapeKind.COVER_TOE, ShapeKind.TUNNEL, ShapeKind.WALL, ShapeKind.CORRIDOR, ShapeKind.PREPARATION,
                ShapeKind.BORROW, ShapeKind.STOCKPILE), EnumSet.of(ShapeKind.KEEP_OUT), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.CORRIDOR_BLOCKED, EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING,
                ShapeKind.COVER_TOE, ShapeKind.WALL), EnumSet.of(ShapeKind.CORRIDOR), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.CORRIDOR_CLOSED, MEANWHILE, EnumSet.of(ShapeKind.CORRIDOR),
                Kept.NOTHING));
        rules.add(new PairRule(PairingRule.CORRIDOR_IN_DANGER, DANGER, EnumSet.of(ShapeKind.CORRIDOR),
                Kept.NOTHING));
        rules.add(new PairRule(PairingRule.TUNNEL_IN_THE_WAY, EnumSet.of(ShapeKind.TUNNEL),
                EnumSet.of(ShapeKind.CORRIDOR, ShapeKind.BORROW, ShapeKind.PAD), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.WALL_THROUGH_HULL, EnumSet.of(ShapeKind.WALL), BODY, Kept.NOTHING));
        rules.add(new PairRule(PairingRule.KEPT_CLEAR_BUILT_ON, EnumSet.of(ShapeKind.KEPT_CLEAR),
                EnumSet.of(ShapeKind.LYING, ShapeKind.WALL, ShapeKind.TUNNEL, ShapeKind.STOCKPILE), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.PASS_THROUGH_IN_SWEEP, EnumSet.of(ShapeKind.PASS_THROUGH),
                EnumSet.of(ShapeKind.SWEEP), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.PAD_BUILT_OVER, EnumSet.of(ShapeKind.COVER_TOE, ShapeKind.WALL,
                ShapeKind.BORROW, ShapeKind.STOCKPILE, ShapeKind.ANCHOR, ShapeKind.WINCH, ShapeKind.POLE_FOOT),
                EnumSet.of(ShapeKind.PAD), Kept.NOTHING));
    }

    private static void soil(List<PairRule> rules) {
        rules.add(new PairRule(PairingRule.BORROW_TOO_NEAR, EnumSet.of(ShapeKind.BORROW),
                EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.ANCHOR, ShapeKind.ANCHOR_SOIL,
                ShapeKind.WINCH, ShapeKind.POLE_FOOT, ShapeKind.COVER_TOE, ShapeKind.WALL), Kept.BORROW_CLEAR));
        rules.add(new PairRule(PairingRule.BORROW_IN_THE_WAY, EnumSet.of(ShapeKind.BORROW),
                EnumSet.of(ShapeKind.CORRIDOR, ShapeKind.PREPARATION), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.BORROW_GROUNDS_OVERLAP, EnumSet.of(ShapeKind.BORROW),
                EnumSet.of(ShapeKind.BORROW), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.STOCKPILE_IN_THE_WAY, EnumSet.of(ShapeKind.STOCKPILE),
                EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.COVER_TOE, ShapeKind.CORRIDOR,
                ShapeKind.BORROW, ShapeKind.ANCHOR, ShapeKind.WINCH, ShapeKind.POLE_FOOT), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.SWEEP_OVER_COVER, EnumSet.of(ShapeKind.SWEEP),
                EnumSet.of(ShapeKind.COVER_TOE), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.COVER_AGAINST_STANDING, EnumSet.of(ShapeKind.COVER_TOE),
                EnumSet.of(ShapeKind.STANDING), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.COVERS_RUN_TOGETHER, EnumSet.of(ShapeKind.COVER_TOE),
                EnumSet.of(ShapeKind.LYING, ShapeKind.COVER_TOE), Kept.NOTHING));
        rules.add(new PairRule(PairingRule.COVER_OVER_GEAR, EnumSet.of(ShapeKind.COVER_TOE), GEAR, Kept.NOTHING));
    }
}
