// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import static bermwright.finding.Finding.Level.NOTE;
import static bermwright.finding.Finding.Level.REFUSE;
import static bermwright.finding.Finding.Level.WARN;
import static bermwright.finding.Rule.Danger.COST;
import static bermwright.finding.Rule.Danger.GEAR;
import static bermwright.finding.Rule.Danger.HULL;
import static bermwright.finding.Rule.Danger.PEOPLE;

import bermwright.finding.Finding.Level;

/** What must keep apart from what. */
public enum PairingRule implements Rule {
    HULL_SPACING(REFUSE, REFUSE, HULL, "distance between two hulls", "m", "hull_spacing_m in the rules of the plan",
            "Move one of the hulls or turn it another way."),
    HULLS_IN_ONE_PLACE(REFUSE, REFUSE, HULL, "ground that two hulls share", "m",
            "hull_spacing_m in the rules of the plan", "Move one of the hulls."),
    SWEEP_OVER_HULL(REFUSE, REFUSE, HULL, "distance in space between a falling hull and another hull", "m",
            "sweep of the hull, by wander_deg and margin_m of the plan",
            "Turn the lay-down azimuth or move the other hull."),
    SWEEPS_CROSS(WARN, WARN, HULL, "distance in space between two falling hulls", "m",
            "sweep of the hull, by wander_deg and margin_m of the plan",
            "Lower one after the other; the first down lies in the way."),
    SWEEP_OVER_GEAR(WARN, WARN, GEAR, "ground that a falling hull and gear of another share", "m2",
            "sweep of the hull, by wander_deg and margin_m of the plan",
            "Set that gear out after this hull is down."),
    LINE_OVER_HULL(REFUSE, REFUSE, HULL, "distance in space between a line and another hull", "m",
            "1 m of air around a line, common practice, no source",
            "Lead the line clear of the hull: it would neither hold as computed nor leave the hull whole."),
    GEAR_UNDER_HULL(REFUSE, REFUSE, GEAR, "ground that gear and another hull share", "m2",
            "common practice, no source", "Move the gear or the hull."),
    LINES_CROSS(WARN, WARN, GEAR, "distance in space between lines of two hulls", "m",
            "1 m of air around a line, common practice, no source", "Rig and use them one after the other."),
    SWEEP_THROUGH_LINE(WARN, WARN, GEAR, "distance in space between a falling hull and a line of another", "m",
            "sweep of the hull, by wander_deg and margin_m of the plan",
            "Take those lines down before this hull is lowered."),
    SWEEP_OVER_WALL(WARN, WARN, GEAR, "distance in space between a falling hull and a wall", "m",
            "sweep of the hull, by wander_deg and margin_m of the plan", "Build the wall after this hull is down."),
    LINE_NEAR_WALL(WARN, WARN, GEAR, "distance in space between a line and a wall", "m",
            "1 m of air around a line, common practice, no source", "Build the wall after this hull is down."),
    GROUND_IN_SWEEP(REFUSE, REFUSE, HULL, "level distance of standing ground from what a falling hull passes over", "m",
            "sweep of the hull, by wander_deg and margin_m of the plan", "Clear the ground, or turn or move the hull."),
    LINE_MEETS_GROUND(REFUSE, REFUSE, HULL, "air between a line and the ground", "m",
            "1 m of air around a line, common practice, no source, and twice the spread of the heights",
            "Raise the line, lead it another way or cut the ground down."),
    LINE_NEAR_GROUND(WARN, WARN, GEAR, "air between a line and the ground", "m",
            "1 m of air around a line, common practice, no source, and twice the spread of the heights",
            "Raise the line, lead it another way or cut the ground down."),
    LINE_GROUND_UNKNOWN(WARN, WARN, GEAR, "line over ground that is not known", "-", "elevation file",
            "Survey the gap or lead the line another way."),
    LINE_THROUGH_COVER(REFUSE, WARN, HULL, "air between a line and placed soil", "m",
            "1 m of air around a line, common practice, no source, and twice the spread of the heights",
            "Lower this hull before that soil is placed, or lead the line another way."),
    GEAR_CROWDED(WARN, WARN, GEAR, "ground that gear of two hulls shares", "m2", "common practice, no source",
            "Rig one after the other or move one."),
    ANCHORS_SHARE_SOIL(WARN, WARN, GEAR, "soil that two anchors load at once", "m2",
            "passive wedge, 45 deg + half the friction angle",
            "Load one after the other, or move one: together neither holds what it holds alone."),
    POLE_FALL_ZONE(WARN, WARN, HULL, "distance in space of a hull from the foot of a pole that may fall", "m",
            "1.5 x pole height, trade rule, no readable standard", "Move the pole or the hull out of reach."),
    SNAP_BACK(NOTE, NOTE, PEOPLE, "hull or winch that a parted line can strike", "m2",
            "15 deg cone about the line, from memory; published bulletins treat the whole area as dangerous",
            "Keep everybody away while the line is loaded."),
    THRUSTER_PLUME(WARN, WARN, GEAR, "ground that the jets of the thrusters reach", "m2", "plume radius of the plan",
            "Cover it, remove it, or lower this hull first: the jets blast it with soil."),
    LANDING_ON_GEAR(WARN, WARN, GEAR, "gear of another where this hull may land", "m2",
            "landing dispersion of the plan", "Set that gear out after this hull has landed."),
    LANDING_ON_LINE(WARN, WARN, GEAR, "lines of another where this hull may land", "m2",
            "landing dispersion of the plan", "Rig that line after this hull has landed."),
    LANDING_PLUME(WARN, WARN, GEAR, "ground that the landing blasts with soil", "m2", "plume stand-off of the plan",
            "Set it up after this landing, or shield it."),
    LANDING_ON_OWN_GEAR(WARN, WARN, GEAR, "own gear where the hull may land", "m2", "landing dispersion of the plan",
            "Set it out after the landing, or farther from where the hull may come down."),
    GEAR_IN_OWN_SWEEP(REFUSE, REFUSE, HULL, "own gear under the falling hull", "m2",
            "sweep of the hull, by wander_deg and margin_m of the plan",
            "Set it farther off: the hull would fall on it."),
    KEEP_OUT(REFUSE, REFUSE, GEAR, "ground shared with a keep-out, or distance in space from it", "m2",
            "keep-outs of the plan; 1 m of air around a line, margin_m around a falling hull",
            "Move it: nothing may touch that area."),
    CORRIDOR_BLOCKED(REFUSE, REFUSE, PEOPLE, "ground shared with a corridor for good", "m2",
            "corridors of the plan, over their width_m", "Move it or lead the corridor another way."),
    CORRIDOR_CLOSED(WARN, WARN, PEOPLE, "ground shared with a corridor while a hull is lowered", "m2",
            "corridors of the plan, over their width_m", "Close the way while the hull is lowered."),
    CORRIDOR_IN_DANGER(NOTE, NOTE, PEOPLE, "corridor inside a danger zone of the lowering", "m2",
            "common practice, no source", "Close the way while it lasts."),
    TUNNEL_IN_THE_WAY(WARN, WARN, COST, "ground that a tunnel shares with a corridor, borrow ground or pad", "m2",
            "common practice, no source", "Lead the tunnel another way."),
    TUNNEL_THROUGH_HULL(REFUSE, REFUSE, HULL, "distance in space between a tunnel and a hull", "m",
            "common practice, no source", "Lead the tunnel around the hull."),
    SWEEP_OVER_TUNNEL(WARN, WARN, GEAR, "distance in space between a falling hull and a tunnel", "m",
            "sweep of the hull, by wander_deg and margin_m of the plan", "Build it after this hull is down."),
    WALL_THROUGH_HULL(REFUSE, REFUSE, HULL, "ground that a wall and a hull share", "m2", "common practice, no source",
            "Move the wall."),
    KEPT_CLEAR_BUILT_ON(REFUSE, REFUSE, GEAR, "strip kept clear that something stands on", "m2",
            "strip kept clear in the plan", "Move it: what needs that strip would be shaded, touched or buried."),
    PASS_THROUGH_IN_SWEEP(WARN, WARN, GEAR, "feed-through under the sweep of another hull", "m2",
            "sweep of the hull, by wander_deg and margin_m of the plan", "Fit it after the other hull is down."),
    PAD_BUILT_OVER(REFUSE, REFUSE, GEAR, "ground shared with a landing pad", "m2", "landing pads of the plan",
            "Move it: the pad cannot be used any more."),
    BORROW_TOO_NEAR(REFUSE, REFUSE, HULL, "distance of a borrow ground from what it would undercut", "m",
            "keep-clear distance of the borrow ground", "Move or shrink the borrow ground."),
    BORROW_IN_THE_WAY(WARN, WARN, COST, "ground that a borrow ground shares with a corridor or preparation", "m2",
            "common practice, no source", "Move one of them: dug ground cannot carry it."),
    BORROW_GROUNDS_OVERLAP(WARN, WARN, COST, "ground that two borrow grounds share", "m2",
            "common practice, no source", "Draw them apart; the shared soil must be counted once."),
    STOCKPILE_IN_THE_WAY(WARN, WARN, COST, "ground that a stockpile shares with something else", "m2",
            "common practice, no source", "Use up the pile before, or move it."),
    SWEEP_OVER_COVER(REFUSE, WARN, HULL, "distance of placed soil from what a falling hull passes over", "m",
            "sweep of the hull, by wander_deg and margin_m of the plan",
            "Lower this hull before that soil is placed."),
    COVER_AGAINST_STANDING(WARN, WARN, HULL, "placed soil where another hull stands", "m2",
            "common practice, no source", "Lower that hull first, or turn one of them."),
    COVERS_RUN_TOGETHER(NOTE, NOTE, COST, "soil that two covers share", "m2", "common practice, no source",
            "Plan both berms and their lifts together."),
    COVER_OVER_GEAR(NOTE, NOTE, COST, "gear under a cover", "m2", "common practice, no source",
            "Recover the gear before the soil is placed."),
    LANDING_DISPERSION(REFUSE, REFUSE, HULL, "distance left for the worst landing inside the dispersion", "m",
            "landing dispersion of the plan", "Move them apart by as much, or land more exactly."),
    PAD_STAND_OFF(REFUSE, REFUSE, PEOPLE, "distance of a hull from a pad with traffic", "m",
            "stand-off of the pad in the plan", "Move the hull or the pad."),
    LINE_NEAR_TUNNEL(WARN, WARN, GEAR, "distance in space between a line and a tunnel", "m",
            "1 m of air around a line, common practice, no source", "Build the tunnel after this hull is down."),
    LINE_NEAR_STOCKPILE(WARN, WARN, GEAR, "distance in space between a line and a stockpile", "m",
            "1 m of air around a line, common practice, no source", "Use up the pile before, or move it.");

    private final Entry entry;

    PairingRule(Level worst, Level mildest, Danger danger, String... words) {
        this.entry = Entry.of(worst, mildest, danger, words);
    }

    @Override
    public Entry entry() {
        return entry;
    }

    @Override
    public char letter() {
        return 'S';
    }
}
