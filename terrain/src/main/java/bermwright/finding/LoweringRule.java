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

/** How a hull comes to lie: gear, mechanics, landing and rest. */
public enum LoweringRule implements Rule {
    LOWERING_NO_GROUND(REFUSE, REFUSE, HULL, "no ground under the lying hull", "-", "elevation file",
            "Move the hull or give a larger elevation file."),
    LOWERING_UNUSABLE(REFUSE, REFUSE, HULL, "a size that no mechanics can be made of", "-", "statics",
            "Give a size that can be used."),
    LOWERING_NO_GEAR(REFUSE, REFUSE, HULL, "lowering without gear", "-", "common practice, no source",
            "Give the gear in the plan."),
    LOWERING_NO_LINES(REFUSE, REFUSE, HULL, "lowering by lines without lines", "-", "common practice, no source",
            "Give the lines in the plan."),
    LOWERING_NO_THRUSTERS(REFUSE, REFUSE, HULL, "lowering by side thrusters without thrusters", "-",
            "common practice, no source", "Give the side thrusters in the plan."),
    LOWERING_NO_GRAVITY(REFUSE, REFUSE, HULL, "gravity", "m/s2", "statics", "Give the gravity of the place."),
    LOWERING_CENTRE_OF_MASS_OUTSIDE(REFUSE, REFUSE, HULL, "place of the centre of mass along the hull", "m",
            "size of the hull", "Put the centre of mass between the ends of the hull."),
    LOWERING_FALLS_WHILE_STANDING(REFUSE, REFUSE, PEOPLE,
            "slope along the azimuth against the angle of the centre of mass", "deg", "statics, closed form",
            "Turn the azimuth or level the ground."),
    LOWERING_NO_PULL_OVER(REFUSE, REFUSE, HULL, "no line to pull the hull over its balance", "-",
            "common practice, no source", "Give a pull-over line."),
    LOWERING_UNEVEN_REEVING(REFUSE, REFUSE, HULL, "lowering lines against poles", "1", "statics, closed form",
            "Give as many lines to each pole, or another number of poles."),
    LOWERING_LUG_BEYOND_HULL(REFUSE, REFUSE, HULL, "lug beyond the end of the hull", "m", "size of the hull",
            "Put the lug on the hull."),
    LOWERING_LUG_BESIDE_HULL(WARN, WARN, GEAR, "lug off the axis of the hull", "m", "size of the hull",
            "Put the lug on the skin, or have the outrigger checked."),
    LOWERING_PIVOT_INSIDE_RIM(REFUSE, REFUSE, HULL, "pivot line ahead of the axis", "m", "size of the hull",
            "Put the pivot line at the rim or ahead of it."),
    LOWERING_POLE_IN_SWEEP(REFUSE, REFUSE, HULL, "pole inside the space the hull passes through", "m",
            "swept profile of the hull", "Set the poles farther behind the pivot or farther apart."),
    LOWERING_DEAD_POINT(REFUSE, REFUSE, PEOPLE, "least lever of the holding line", "m",
            "least lever a tenth of the lug's distance from the pivot, common practice, no source",
            "Raise the pole heads or set them farther behind the pivot."),
    LOWERING_UPLIFT(REFUSE, REFUSE, HULL, "least load on the pivot", "kN", "statics, closed form",
            "Lead the lines flatter, so that the base stays on the ground."),
    LOWERING_NO_HAND_OVER(REFUSE, REFUSE, HULL, "tilt of hand-over", "deg", "statics, closed form",
            "Know the centre of mass better, or lower another way."),
    LOWERING_POLE_PULLED_BACK(WARN, WARN, GEAR, "pull on a pole head away from the hull", "kN",
            "statics, closed form", "Set the winches nearer to the poles or give fore stays."),
    LOWERING_POLE_NOT_STAYED(REFUSE, REFUSE, PEOPLE, "pull on a pole head towards the hull that no stay holds", "kN",
            "statics, closed form", "Give stays."),
    LOWERING_HEAD_SIDEWAYS(NOTE, NOTE, GEAR, "pull on a pole head across the lay-down plane", "kN",
            "statics, closed form", "Give a strut or tie between the heads, or side stays."),
    LOWERING_RIM_ROLLS(NOTE, NOTE, HULL, "cross slope under a bare rim", "deg", "statics, closed form",
            "Give shoes or side lines."),
    LOWERING_TIPS_SIDEWAYS(REFUSE, REFUSE, PEOPLE, "cross slope against the width of the pivot line", "deg",
            "statics, closed form", "Level the ground across or set the shoes farther apart."),
    LOWERING_FACTOR(REFUSE, REFUSE, PEOPLE, "factor of safety of a part of the gear", "1", "rules of the plan",
            "Give a stronger part, or lower the demand on it."),
    LOWERING_RATING_MISSING(WARN, WARN, PEOPLE, "part of the gear whose capacity is not given", "-",
            "common practice, no source", "State the rating; a part that is not checked does not hold."),
    LOWERING_LIGHT_BACKWARDS(WARN, WARN, COST, "end of a window of light before its beginning", "h",
            "order of the plan's windows", "Put the window right."),
    LOWERING_DISPERSION(REFUSE, WARN, PEOPLE, "factor of safety for the worst landing inside the dispersion", "1",
            "landing dispersion and wander of the plan; balance in space",
            "Set the gear out after the landing, or give stronger gear."),
    LOWERING_DISPERSION_SHOE(WARN, WARN, HULL, "a shoe that lifts for some landing inside the dispersion", "kN",
            "landing dispersion and wander of the plan; balance in space",
            "Set the gear out after the landing, or set the shoes farther apart."),
    LOWERING_DISPERSION_SIDEWAYS(WARN, NOTE, HULL,
            "lead of the lines out of the lay-down plane for the worst landing", "deg",
            "landing dispersion and wander of the plan; balance in space",
            "Set the poles out after the landing, or turn the azimuth to them."),
    LOWERING_CONTACT_SPEED(WARN, WARN, HULL, "speed of the far end at contact", "m/s", "common practice, no source",
            "Slow down before contact."),
    LOWERING_LINE_SLACK(WARN, WARN, GEAR, "tension of one line with the other slack", "kN",
            "common practice, no source", "Level the lines by tension, not by length."),
    LOWERING_SUN_AND_SHADE(NOTE, NOTE, GEAR, "shortening of a line in shade", "m",
            "growth of the lines with temperature, from the plan; common practice, no source",
            "Lower with all lines in sun or all in shade, and level them by tension."),
    LOWERING_PAY_OUT_MISMATCH(WARN, WARN, GEAR, "tension of one line with the stated pay-out mismatch", "kN",
            "rating of the winch", "Level the lines by tension, not by length."),
    LOWERING_LIGHT_CHANGES(WARN, NOTE, GEAR, "tension or length of a line where sun and shade change", "kN",
            "growth of the lines with temperature, from the plan; common practice, no source",
            "Keep moving through it, or lower inside one window."),
    LOWERING_LIGHT_NOT_STATED(NOTE, NOTE, COST, "tilt from which no window of light is stated", "-",
            "common practice, no source", "State the light on the lines up to the end of the lowering."),
    LOWERING_CROSS_SLOPE(WARN, WARN, HULL, "tension of a line on the cross slope", "kN",
            "balance in space, closed form", "Level the ground across, or give side lines."),
    LOWERING_SIDE_LINE(NOTE, NOTE, HULL, "pull sideways that nothing holds", "kN", "balance in space, closed form",
            "Give side lines at the lugs on the upper side."),
    LOWERING_SHOE_LIFTS(WARN, WARN, HULL, "least load on the upper shoe", "kN", "balance in space, closed form",
            "Level the ground across or set the shoes farther apart."),
    LOWERING_HOLD_ACROSS(WARN, WARN, HULL, "slanting demand on the hold at the pivot", "kN",
            "balance in space, closed form", "Give a stronger hold at the pivot."),
    LOWERING_SWAYS(WARN, WARN, HULL, "lean of the hull out of its plane", "deg",
            "balance in space, closed form; wander of the plan",
            "Give shoes, or hold it with side lines before hand-over."),
    LOWERING_HULL_BENDS(WARN, WARN, HULL, "factor of safety of the bare shell in bending", "1",
            "bare shell, NASA SP-8007, from memory; common practice, no source",
            "Move the lugs, frame the shell, or lower it under pressure."),
    LOWERING_EDGE_SINKS(WARN, WARN, HULL, "factor of safety of the ground under the pivot", "1",
            "Vesic (1973) at lunar gravity; common practice, no source", "Spread the load by shoes or pads."),
    SOIL_STRENGTH_EXTRAPOLATED(WARN, WARN, HULL, "greatest friction angle taken for the ground", "deg",
            "formulas of anchors and footings hold to 45 deg; above, angles are measured at very low stress only, Lunar"
                    + " Sourcebook (1991), chapter 9, from memory",
            "State a friction angle of 45 deg at most, or show tests at the stress under the gear."),
    LOWERING_SINGLE_FAILURE(WARN, WARN, PEOPLE, "speed of the hull after one thing is lost", "m/s",
            "common practice, no source", "Double what is lost, or clear the sweep of people."),
    LOWERING_LIQUID(WARN, WARN, GEAR, "tension of a line with liquid free to run", "kN",
            "liquid free in the hull's own cylinder, an upper bound", "Drain it, or show that its tank holds it."),
    LANDING_SLOPE(REFUSE, REFUSE, HULL, "slope under a hull that lands lying", "deg", "landing-site studies: 7 deg",
            "Level a pad or land elsewhere."),
    LANDING_PITCH(WARN, WARN, HULL, "pitch and slope along together", "deg", "landing-site studies: 7 deg",
            "Land flatter, or level the pad."),
    LANDING_SLAP(WARN, WARN, HULL, "speed of the far end as it slaps down", "m/s", "common practice, no source",
            "Hold the far end by thrust, or land flatter."),
    LANDING_NOT_STATED(WARN, WARN, COST, "touchdown speed that is not given", "-", "common practice, no source",
            "State the touchdown speed."),
    LANDING_NO_PAD(REFUSE, WARN, HULL, "landing lying without a pad", "-", "landing pads of the plan",
            "Name a pad of the plan."),
    LANDING_BESIDE_PAD(WARN, WARN, HULL, "reach of the lying hull from the middle of the pad", "m", "size of the pad",
            "Widen the pad or land more exactly."),
    THRUSTER_MARGIN(REFUSE, WARN, PEOPLE, "thrust over the thrust required", "1", "common practice, no source",
            "Give more or stronger thrusters."),
    THRUSTER_ONE_OUT(WARN, WARN, PEOPLE, "thrust over the thrust required with one pair out", "1",
            "common practice, no source", "Give more thrusters."),
    THRUSTER_SIDE_OUT(WARN, WARN, PEOPLE, "tilt up to which one side alone holds the hull", "deg",
            "common practice, no source", "Clear the sweep of people."),
    THRUSTER_LIFTS_BASE(REFUSE, REFUSE, HULL, "thrust that lifts the base", "-", "statics, closed form",
            "Set the thrusters higher on the hull."),
    THRUSTER_BASE_SLIDES(REFUSE, REFUSE, HULL, "friction required at the base", "1", "friction of the plan's ground",
            "Set the thrusters higher or hold the pivot."),
    THRUSTER_CANNOT_SLOW(WARN, WARN, HULL, "thrust over the thrust required to slow before contact", "1",
            "common practice, no source", "Give more or stronger thrusters."),
    REST_ROLLS_AWAY(WARN, WARN, PEOPLE, "cross slope under the lying hull", "deg",
            "rigid cylinder on a bed of springs, Bekker's stiffness from memory",
            "Chock it, or let it lie in a trough."),
    REST_ROCKS(WARN, WARN, HULL, "distance of the centre of mass from the nearer support", "m",
            "common practice, no source", "Level the bed under the middle."),
    REST_BASE_LIFTED(WARN, WARN, HULL, "height of the base over its pivot at rest", "m", "common practice, no source",
            "Clear the first high spot or level a bench."),
    AS_BUILT_HULL_ELSEWHERE(WARN, WARN, PEOPLE, "an end of a hull from its place in the plan, as surveyed", "m",
            "rules.as_built_place_m of the plan", "Enter where it lies and assess the plan again before soil is"
            + " placed."),
    AS_BUILT_HULL_NOT_SURVEYED(WARN, WARN, PEOPLE, "an end of a surveyed hull, or its height, without a survey", "-",
            "both ends of a hull are to be surveyed, with heights", "Survey it before soil is placed.");
    private final Entry entry;

    LoweringRule(Level worst, Level mildest, Danger danger, String... words) {
        this.entry = Entry.of(worst, mildest, danger, words);
    }

    @Override
    public Entry entry() {
        return entry;
    }

    @Override
    public char letter() {
        return 'L';
    }
}
