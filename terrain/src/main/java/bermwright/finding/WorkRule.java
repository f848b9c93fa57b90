// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

import static bermwright.finding.Finding.Level.NOTE;
import static bermwright.finding.Finding.Level.REFUSE;
import static bermwright.finding.Finding.Level.WARN;
import static bermwright.finding.Rule.Danger.COST;
import static bermwright.finding.Rule.Danger.HULL;
import static bermwright.finding.Rule.Danger.PEOPLE;

import bermwright.finding.Finding.Level;

/** Order of work, earthworks and hauling. */
public enum WorkRule implements Rule {
    ORDER_STEP_TWICE(REFUSE, REFUSE, COST, "two steps with one id", "-", "order of work in the plan",
            "Give each step its own id."),
    ORDER_UNKNOWN_STEP(REFUSE, REFUSE, COST, "step after a step that is not in the plan", "-",
            "order of work in the plan", "Name a step of the plan."),
    ORDER_UNKNOWN_OBJECT(REFUSE, REFUSE, COST, "step about something that is not in the plan", "-",
            "order of work in the plan", "Name a hull or preparation of the plan."),
    ORDER_UNKNOWN_MACHINE(REFUSE, REFUSE, COST, "step by a machine that is not in the plan", "-",
            "order of work in the plan", "Name a machine of the plan."),
    ORDER_MISSING_STEP(WARN, WARN, PEOPLE, "hull that no step lowers or covers", "-", "order of work in the plan",
            "Add the step."),
    ORDER_CIRCLE(REFUSE, REFUSE, COST, "steps that wait for each other", "-", "order of work in the plan",
            "Take one of the steps out of the circle."),
    LIFT_PLACES_NOTHING(WARN, WARN, COST, "height of a lift against what stands before it", "m",
            "order of work in the plan", "Raise the lift or take the step out."),
    SIDES_NOT_LEVEL(WARN, WARN, HULL, "height that one side may stand above the other", "m",
            "both sides level within about 0.5 m, from memory", "Keep lifts lower."),
    LIFT_BEYOND_MACHINE(WARN, NOTE, COST, "slope of the berm against the grade of the machine", "deg",
            "greatest grade of the machine in the plan", "Take a machine that climbs more or throws."),
    COVER_NOT_FINISHED(WARN, WARN, PEOPLE, "height that the last lift reaches", "m", "order of work in the plan",
            "Add lifts."),
    STEP_CLEARANCE(REFUSE, REFUSE, PEOPLE, "something in the way at this step of the work", "m",
            "order of work in the plan", "Put the steps in another order."),
    MACHINE_IN_DANGER_ZONE(REFUSE, REFUSE, PEOPLE, "machine at work inside a danger zone", "-",
            "common practice: nobody inside a live sweep or snap-back zone", "Let one step wait for the other."),
    MADE_GROUND_STEEP(WARN, WARN, COST, "slope that preparations leave", "deg",
            "stable slope of the soil in the plan", "Ease their sides."),
    SLOPE_SLIDES(REFUSE, WARN, PEOPLE, "factor of safety of a slope against sliding", "1",
            "factor 1.3 at the end of construction, EM 1110-2-1902, from memory", "Flatten its sides."),
    BORROW_OFF_GRID(REFUSE, REFUSE, COST, "borrow ground beyond the elevation file", "-", "elevation file",
            "Move it or give a larger elevation file."),
    BORROW_CUT_BACK(NOTE, NOTE, COST, "soil that a borrow ground gives", "m3",
            "keep-clear distance of the borrow ground", "Widen it on a free side if the soil is needed."),
    BORROW_SHORTAGE(REFUSE, REFUSE, COST, "soil in place that is missing", "m3", "borrow grounds of the plan",
            "Widen or deepen a borrow ground, or add another."),
    DENSITY_MISSING(WARN, WARN, COST, "density that the plan does not state", "kg/m3", "default of the plan file",
            "State the density."),
    NO_MACHINE(WARN, WARN, COST, "plan without a machine", "-", "machines of the plan", "Give a machine."),
    NO_WAY_ROUND(REFUSE, REFUSE, COST, "no way for the machine", "-",
            "greatest grade and width of the machine, keep-outs and covers of the plan",
            "Open a corridor or take a machine that climbs more."),
    RAMP_OF_COVER_SOIL(NOTE, NOTE, COST, "soil of a ramp that is meant for its cover", "m3",
            "borrow grounds of the plan", "Widen or deepen a borrow ground to have soil for ramps too."),
    AS_BUILT_LOW(REFUSE, WARN, PEOPLE, "surveyed soil lower than planned by then", "m",
            "rules.as_built_level_m of the plan", "Place the soil that lacks there before the next step, and survey it"
            + " again."),
    AS_BUILT_HIGH(WARN, WARN, HULL, "surveyed soil higher than the finished cover", "m",
            "rules.as_built_level_m of the plan", "Take it off, or enter the thicker cover and assess hull, supports"
            + " and toes again."),
    AS_BUILT_BEYOND_TOE(WARN, WARN, COST, "surveyed soil beside the planned toe", "m",
            "rules.as_built_level_m of the plan, and twice the spread of the elevation file",
            "Take it off, or check that nothing keeps that ground free."),
    AS_BUILT_NOT_SURVEYED(WARN, WARN, PEOPLE, "planned soil that a survey has no height for", "m2",
            "all soil placed by then is to be surveyed", "Survey what lacks: soil not surveyed is not counted."),
    AS_BUILT_DENSITY_LOW(WARN, WARN, PEOPLE, "density measured in placed soil", "kg/m3",
            "placed density of the plan less its spread", "Compact it, or place a thicker cover: depth times density"
            + " must stay the same."),
    CALENDAR_LACKS(WARN, WARN, COST, "work whose dates are not known though work_start is stated", "-",
            "place on the Moon by the elevation file, sun over it, hours of the machines",
            "Give what lacks, or do not plan by dates.");
    private final Entry entry;

    WorkRule(Level worst, Level mildest, Danger danger, String... words) {
        this.entry = Entry.of(worst, mildest, danger, words);
    }

    @Override
    public Entry entry() {
        return entry;
    }

    @Override
    public char letter() {
        return 'W';
    }
}
