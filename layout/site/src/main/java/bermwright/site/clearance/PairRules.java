// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import static bermwright.finding.Finding.Level.NOTE;
import static bermwright.finding.Finding.Level.REFUSE;
import static bermwright.finding.Finding.Level.WARN;

import bermwright.site.clearance.PairRule.Kept;
import bermwright.site.footprint.ShapeKind;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The table of what must keep apart from what; the first rule that names a pair of kinds holds for it. */
final class PairRules {
    /** What a falling hull can strike. */
    static final String SWEEP = "sweep of the hull, by wander_deg and margin_m of the plan";
    private static final String CORRIDORS = "corridors of the plan, over their width_m";
    static final String PRACTICE = "common practice, no source";
    private static final Set<ShapeKind> BODY = EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING);
    private static final Set<ShapeKind> GEAR = EnumSet.of(ShapeKind.POLE_FOOT, ShapeKind.ANCHOR, ShapeKind.WINCH);
    private static final Set<ShapeKind> IN_THE_AIR = EnumSet.of(ShapeKind.LINE, ShapeKind.STAY);
    private static final Set<ShapeKind> MEANWHILE = EnumSet.of(ShapeKind.SWEEP, ShapeKind.LINE, ShapeKind.STAY,
            ShapeKind.POLE_FOOT, ShapeKind.ANCHOR, ShapeKind.WINCH);
    private static final Set<ShapeKind> DANGER = EnumSet.of(ShapeKind.POLE_FALL_ZONE, ShapeKind.SNAP_BACK,
            ShapeKind.THRUSTER_PLUME, ShapeKind.LANDING_PLUME);

    private static final List<PairRule> RULES = rules();
    static final String DISPERSION = "landing dispersion of the plan";
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
        rules.add(new PairRule("hull-spacing", REFUSE, BODY, BODY, Kept.HULL_SPACING,
                "hull_spacing_m in the rules of the plan", "Move one of the hulls or turn it another way."));
        rules.add(new PairRule("sweep-over-hull", REFUSE, EnumSet.of(ShapeKind.SWEEP), BODY, Kept.NOTHING, SWEEP,
                "The falling hull can strike the other; turn its lay-down azimuth or move it."));
        rules.add(new PairRule("sweeps-cross", WARN, EnumSet.of(ShapeKind.SWEEP), EnumSet.of(ShapeKind.SWEEP),
                Kept.NOTHING, SWEEP, "They must not be lowered at the same time, and the first down lies in the way."));
        rules.add(new PairRule("sweep-over-gear", WARN, EnumSet.of(ShapeKind.SWEEP), GEAR, Kept.NOTHING, SWEEP,
                "That gear must not stand there while this hull is lowered."));
        rules.add(new PairRule("line-over-hull", REFUSE, IN_THE_AIR, BODY, Kept.NOTHING, PRACTICE,
                "A line that bears on a hull neither holds as reckoned nor leaves the hull whole."));
        rules.add(new PairRule("gear-under-hull", REFUSE, GEAR, BODY, Kept.NOTHING, PRACTICE,
                "The gear and the other hull cannot share the place."));
        rules.add(new PairRule("lines-cross", WARN, IN_THE_AIR, IN_THE_AIR, Kept.NOTHING, PRACTICE,
                "Rig and use them one after the other."));
        rules.add(new PairRule("sweep-through-line", WARN, EnumSet.of(ShapeKind.SWEEP), IN_THE_AIR, Kept.NOTHING, SWEEP,
                "Those lines must be down while this hull is lowered."));
        rules.add(new PairRule("gear-crowded", WARN, GEAR, GEAR, Kept.NOTHING, PRACTICE,
                "Rig one after the other or move one."));
        rules.add(new PairRule("anchors-share-soil", WARN, EnumSet.of(ShapeKind.ANCHOR_SOIL),
                EnumSet.of(ShapeKind.ANCHOR_SOIL), Kept.NOTHING, "passive wedge, 45 deg + half the friction angle",
                "Loaded at the same time neither anchor holds what it holds alone."));
        rules.add(new PairRule("pole-fall-zone", WARN, EnumSet.of(ShapeKind.POLE_FALL_ZONE), BODY, Kept.NOTHING,
                "1.5 x pole height, trade rule, no readable standard",
                "A pole that falls can reach the other hull."));
        rules.add(new PairRule("snap-back", NOTE, EnumSet.of(ShapeKind.SNAP_BACK),
                EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.WINCH), Kept.NOTHING,
                "15 deg cone about the line, from memory; published bulletins treat the whole area as dangerous",
                "A parted line can strike there; nobody may be near while it is loaded."));
        rules.add(new PairRule("thruster-plume", WARN, EnumSet.of(ShapeKind.THRUSTER_PLUME),
                EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.POLE_FOOT, ShapeKind.ANCHOR,
                        ShapeKind.WINCH), Kept.NOTHING, "plume radius of the plan",
                "The jets blast it with soil; cover it, remove it or lower this hull first."));
        rules.add(new PairRule("landing-on-gear", WARN, EnumSet.of(ShapeKind.LANDING), GEAR, Kept.NOTHING,
                DISPERSION, "Set that gear out after this hull has landed."));
        rules.add(new PairRule("landing-on-line", WARN, EnumSet.of(ShapeKind.LANDING), IN_THE_AIR, Kept.NOTHING,
                DISPERSION, "Rig that line after this hull has landed."));
        rules.add(new PairRule("landing-plume", WARN, EnumSet.of(ShapeKind.LANDING_PLUME),
                EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.POLE_FOOT, ShapeKind.ANCHOR,
                        ShapeKind.WINCH), Kept.NOTHING, "plume stand-off of the plan",
                "The landing blasts it with soil if it is there before."));
    }

    private static void site(List<PairRule> rules) {
        rules.add(new PairRule("keep-out", REFUSE, EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.SWEEP,
                ShapeKind.LINE, ShapeKind.STAY, ShapeKind.POLE_FOOT, ShapeKind.ANCHOR, ShapeKind.WINCH,
                ShapeKind.COVER_TOE, ShapeKind.TUNNEL, ShapeKind.WALL, ShapeKind.CORRIDOR, ShapeKind.PREPARATION,
                ShapeKind.BORROW, ShapeKind.STOCKPILE), EnumSet.of(ShapeKind.KEEP_OUT), Kept.NOTHING,
                "keep-outs of the plan", "Nothing may touch that area."));
        rules.add(new PairRule("corridor-blocked", REFUSE, EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING,
                ShapeKind.COVER_TOE, ShapeKind.WALL), EnumSet.of(ShapeKind.CORRIDOR), Kept.NOTHING, CORRIDORS,
                "The way is not free any more."));
        rules.add(new PairRule("corridor-closed", WARN, MEANWHILE, EnumSet.of(ShapeKind.CORRIDOR), Kept.NOTHING,
                CORRIDORS, "The way is closed while the hull is lowered."));
        rules.add(new PairRule("corridor-in-danger", NOTE, DANGER, EnumSet.of(ShapeKind.CORRIDOR), Kept.NOTHING,
                PRACTICE, "Close the way while it lasts."));
        rules.add(new PairRule("tunnel-in-the-way", WARN, EnumSet.of(ShapeKind.TUNNEL),
                EnumSet.of(ShapeKind.CORRIDOR, ShapeKind.BORROW, ShapeKind.PAD), Kept.NOTHING, PRACTICE,
                "Lead the tunnel another way."));
        rules.add(new PairRule("tunnel-through-hull", REFUSE, EnumSet.of(ShapeKind.TUNNEL), BODY, Kept.NOTHING,
                PRACTICE, "Lead the tunnel around the hull."));
        rules.add(new PairRule("sweep-over-tunnel", WARN, EnumSet.of(ShapeKind.SWEEP),
                EnumSet.of(ShapeKind.TUNNEL, ShapeKind.WALL), Kept.NOTHING, SWEEP,
                "Build it after this hull is down."));
        rules.add(new PairRule("wall-through-hull", REFUSE, EnumSet.of(ShapeKind.WALL), BODY, Kept.NOTHING, PRACTICE,
                "The wall and the hull cannot share the place."));
        rules.add(new PairRule("kept-clear-built-on", REFUSE, EnumSet.of(ShapeKind.KEPT_CLEAR),
                EnumSet.of(ShapeKind.LYING, ShapeKind.WALL, ShapeKind.TUNNEL, ShapeKind.STOCKPILE), Kept.NOTHING,
                "strip kept clear in the plan", "What needs that strip free would be shaded, touched or buried."));
        rules.add(new PairRule("pass-through-in-sweep", WARN, EnumSet.of(ShapeKind.PASS_THROUGH),
                EnumSet.of(ShapeKind.SWEEP), Kept.NOTHING, SWEEP,
                "The other hull comes down over it; fit it afterwards."));
        rules.add(new PairRule("pad-built-over", REFUSE, EnumSet.of(ShapeKind.COVER_TOE, ShapeKind.WALL,
                ShapeKind.BORROW, ShapeKind.STOCKPILE, ShapeKind.ANCHOR, ShapeKind.WINCH, ShapeKind.POLE_FOOT),
                EnumSet.of(ShapeKind.PAD), Kept.NOTHING, "landing pads of the plan",
                "The pad cannot be used any more."));
    }

    private static void soil(List<PairRule> rules) {
        rules.add(new PairRule("borrow-too-near", REFUSE, EnumSet.of(ShapeKind.BORROW),
                EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.ANCHOR, ShapeKind.ANCHOR_SOIL,
                        ShapeKind.WINCH, ShapeKind.POLE_FOOT, ShapeKind.COVER_TOE, ShapeKind.WALL),
                Kept.BORROW_CLEAR, "keep-clear distance of the borrow ground",
                "Digging there undercuts it; move or shrink the borrow ground."));
        rules.add(new PairRule("borrow-in-the-way", WARN, EnumSet.of(ShapeKind.BORROW),
                EnumSet.of(ShapeKind.CORRIDOR, ShapeKind.PREPARATION), Kept.NOTHING, PRACTICE,
                "Dug ground cannot carry it."));
        rules.add(new PairRule("borrow-grounds-overlap", WARN, EnumSet.of(ShapeKind.BORROW),
                EnumSet.of(ShapeKind.BORROW), Kept.NOTHING, PRACTICE, "The shared soil must be counted once."));
        rules.add(new PairRule("stockpile-in-the-way", WARN, EnumSet.of(ShapeKind.STOCKPILE),
                EnumSet.of(ShapeKind.STANDING, ShapeKind.LYING, ShapeKind.COVER_TOE, ShapeKind.CORRIDOR,
                        ShapeKind.BORROW, ShapeKind.ANCHOR, ShapeKind.WINCH, ShapeKind.POLE_FOOT),
                Kept.NOTHING, PRACTICE, "The pile must be gone before."));
        rules.add(new PairRule("sweep-over-cover", WARN, EnumSet.of(ShapeKind.SWEEP),
                EnumSet.of(ShapeKind.COVER_TOE, ShapeKind.STOCKPILE), Kept.NOTHING, SWEEP,
                "This hull must be down before that soil is placed."));
        rules.add(new PairRule("cover-against-standing", WARN, EnumSet.of(ShapeKind.COVER_TOE),
                EnumSet.of(ShapeKind.STANDING), Kept.NOTHING, PRACTICE,
                "Soil lies where the other hull stands; lower that one first or turn one of them."));
        rules.add(new PairRule("covers-run-together", NOTE, EnumSet.of(ShapeKind.COVER_TOE),
                EnumSet.of(ShapeKind.LYING, ShapeKind.COVER_TOE), Kept.NOTHING, PRACTICE,
                "The covers share soil, and one cannot be placed to its toe before the other."));
        rules.add(new PairRule("cover-over-gear", NOTE, EnumSet.of(ShapeKind.COVER_TOE), GEAR, Kept.NOTHING, PRACTICE,
                "Recover the gear before the soil is placed."));
    }
}
