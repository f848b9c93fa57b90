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

/** Ground, ways and names: whether what the plan says can stand where it says. */
public enum SiteRule implements Rule {
    NO_HULL(REFUSE, REFUSE, COST, "a plan without a hull", "-", "hulls of the plan", "Give the plan a hull."),
    HULL_UNDER_GROUND(REFUSE, REFUSE, HULL, "depth of the lower side below the ground", "m", "the hull's diameter",
            "Sink it less, or state the pit as a preparation and let the hull lie on its floor."),
    HULL_OFF_GRID(REFUSE, REFUSE, HULL, "outline beyond the elevation file", "-", "edge of the elevation file",
            "Move the hull inwards or give a larger elevation file."),
    SWEEP_OFF_GRID(REFUSE, WARN, HULL, "sweep beyond the elevation file", "-", "edge of the elevation file",
            "Turn the azimuth or give a larger elevation file."),
    GROUND_UNKNOWN(REFUSE, REFUSE, HULL, "no height data under the hull", "-", "elevation file",
            "Survey the gap or move the hull."),
    SWEEP_GROUND_UNKNOWN(REFUSE, WARN, HULL, "no height data under the sweep", "-", "elevation file",
            "Survey the gap or turn the azimuth."),
    GROUND_FILE_ODD(WARN, WARN, HULL, "heights that look like another unit, radii or fill values", "-",
            "elevation file", "Look at the file; declare its unit and its mark for missing heights."),
    SLOPE_UNDER_HULL(REFUSE, WARN, HULL, "slope of the ground under the hull", "deg",
            "greatest_slope_under_hull_deg in the rules of the plan", "Turn the hull, move it or level a bench."),
    SLOPE_NOT_KNOWN(WARN, WARN, HULL, "cell of the elevation file against the width of the hull", "m",
            "spacing of the elevation file", "Survey the bed on a finer grid."),
    BELLY_HIGH_SPOT(WARN, WARN, HULL, "height of the ground above the bed at the belly", "m",
            "obstacle height for wheeled traffic, from memory", "Clear it or level a bench."),
    BELLY_NOT_KNOWN(WARN, WARN, HULL, "smallest obstacle that the elevation file can show", "m",
            "spacing and spread of the elevation file", "Survey the bed for stones and steps before laying down."),
    GEAR_OFF_GRID(WARN, WARN, GEAR, "gear beyond the elevation file", "-", "elevation file",
            "Move the gear inwards or give a larger elevation file."),
    GEAR_GROUND_UNKNOWN(WARN, WARN, GEAR, "no height data under the gear", "-", "elevation file",
            "Survey the gap or move the gear."),
    GEAR_ON_STEEP_GROUND(WARN, WARN, PEOPLE, "slope of the ground at the gear", "deg",
            "slope regarded safe for suited crew, secondary source", "Move the gear or level a pad."),
    CORRIDOR_GROUND_UNKNOWN(WARN, WARN, COST, "no height data on a corridor", "-", "elevation file",
            "Survey the gap."),
    CORRIDOR_GRADE(WARN, WARN, PEOPLE, "grade along a corridor", "deg", "greatest grade of the corridor in the plan",
            "Cut it to grade before the work, or lead it another way."),
    CORRIDOR_NOT_CUT(WARN, WARN, PEOPLE, "corridor over missing ground", "-", "elevation file",
            "Survey the gap or lead it another way."),
    CORRIDOR_CUT(NOTE, NOTE, COST, "soil moved to bring a corridor to its grade", "m3",
            "greatest grade of the corridor in the plan", "Check that its new ends meet the ways they join."),
    PREPARATION_NO_GROUND(REFUSE, REFUSE, COST, "preparation over missing ground", "-", "elevation file",
            "Move it or give a larger elevation file."),
    PREPARATION_SIDE_OPEN(WARN, WARN, COST, "side of a preparation that never meets known ground", "-",
            "elevation file", "Move it or give a larger elevation file; its volume is not complete."),
    TUNNEL_REACH(WARN, NOTE, PEOPLE, "change of length of a tunnel inside the landing dispersion", "m",
            "landing dispersion of the plan",
            "Make it to the length surveyed after landing, or adjustable by as much."),
    TUNNEL_END_UNKNOWN(REFUSE, REFUSE, PEOPLE, "tunnel to a hatch that is not in the plan", "-",
            "hatches of the plan", "Name a hatch of the plan."),
    LANDING_PAD_UNKNOWN(REFUSE, REFUSE, HULL, "landing on a pad that is not in the plan", "-",
            "landing pads of the plan", "Name a pad of the plan."),
    LANDING_OFF_PAD(WARN, WARN, HULL, "farthest landing from the centre of the pad", "m",
            "landing dispersion of the plan", "Widen the pad or land more exactly."),
    OUTLINE_CROSSES_ITSELF(REFUSE, REFUSE, COST, "outline that crosses itself", "-", "outline of the plan",
            "Put its corners in order; it was mended for the checks."),
    WAYS_OUT(REFUSE, WARN, PEOPLE, "independent ways out of a buried hull", "1",
            "common practice, no source: two independent ways out",
            "Keep a second end open, hold the soil there with a wall, or join it to another hull by a tunnel."),
    SHELTER_FAR(WARN, WARN, PEOPLE, "time on foot to the storm shelter", "min", "our own planning figure",
            "Give a shelter nearer by, or a vehicle."),
    SHELTER_UNREACHABLE(WARN, WARN, PEOPLE, "station without a way to a storm shelter under cover", "-",
            "tunnels and storm shelters of the plan",
            "Join the hull to a shelter by a tunnel, or mark a shelter in it."),
    SHELTER_CUT_OFF(WARN, WARN, PEOPLE, "hatch without a way on foot to a shelter", "-", "our own planning figure",
            "Keep a way open, or say where people shelter instead."),
    CLOCKING_TURNS_NOTHING(WARN, WARN, COST, "a turn of the body about its axis that nothing follows", "deg",
            "clocking_deg of the hull in the plan", "Enter hatches, stations and pass-throughs as they lie after that"
            + " turn; clocking_deg is kept for the record.");
    private final Entry entry;

    SiteRule(Level worst, Level mildest, Danger danger, String... words) {
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
