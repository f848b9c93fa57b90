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

/** Cover and what it does to the shell. */
public enum CoverRule implements Rule {
    COVER_OFF_GROUND(REFUSE, REFUSE, COST, "cover beyond the elevation file", "-", "extent of the elevation file",
            "Move the hulls inwards or give a larger elevation file."),
    COVER_GROUND_UNKNOWN(REFUSE, REFUSE, PEOPLE, "no ground known under the hull", "-",
            "extent of the elevation file", "Survey the gap or move the hull."),
    COVER_THINNER_THAN_CELL(WARN, WARN, COST, "cover depth against the cell of the elevation file", "m",
            "spacing of the elevation file",
            "Survey the bed for stones and steps, or give a finer elevation file."),
    COVER_HATCH_BURIED(REFUSE, REFUSE, PEOPLE, "soil over the sill of a hatch", "m",
            "hatches of the plan, which open only where no soil stands over the sill",
            "Keep that end open, hold the soil with a wall, or lead a tunnel to it."),
    COVER_WALL_MISSING(REFUSE, REFUSE, PEOPLE, "end held by a wall that the plan does not have", "-",
            "walls of the plan", "Name a wall of the plan."),
    COVER_WALL_AWAY(WARN, WARN, PEOPLE, "distance of a wall from the end it holds", "m", "our own planning figure",
            "Move the wall to the end."),
    COVER_WALL_LOW(WARN, WARN, PEOPLE, "height of a wall against the soil behind it", "m",
            "height of the cover behind the wall", "Raise the wall to the height of the soil behind it."),
    COVER_THIN(WARN, WARN, PEOPLE, "cover depth at the worst place", "m", "thickness of the cover in the plan",
            "Widen or raise the berm there, or cut less off its end."),
    COVER_BARE(REFUSE, WARN, PEOPLE, "bare skin that is to be covered", "m2", "thickness of the cover in the plan",
            "Hold the soil there with a wall, cover the end, or plan no cover there and take the dose as it then"
                    + " is."),
    COVER_PIERCED(WARN, WARN, PEOPLE, "cover depth behind an open feed-through", "m",
            "thickness of the cover in the plan",
            "Turn it, close it with soil or plates, or keep stations out of its line."),
    PASS_THROUGH_OFF_HULL(REFUSE, REFUSE, HULL, "feed-through beyond the end of the hull", "m",
            "length_m of the hull in the plan", "Put it on the hull."),
    PASS_THROUGH_BURIED(REFUSE, WARN, GEAR, "soil over what soil spoils", "m",
            "pass-throughs of the plan, which reach the open where no soil lies",
            "State the strip to be kept clear around it, or move it."),
    PASS_THROUGH_UNDER_SOIL(NOTE, NOTE, COST, "soil over a feed-through", "m",
            "pass-throughs of the plan, which reach the open where no soil lies",
            "Lay and test it before the cover is placed."),
    TUNNEL_UNPLACED(REFUSE, REFUSE, PEOPLE, "tunnel that cannot be placed", "-",
            "hatches of the plan, extent of the elevation file",
            "Name two hatches of the plan that lie on known ground."),
    HULLS_CUT_EACH_OTHER(REFUSE, REFUSE, HULL, "two hulls in one place", "-", "places of the hulls in the plan",
            "Move one of them."),
    BURIAL_UPRIGHT(NOTE, NOTE, HULL, "soil on a hull that stays upright", "-", "our own planning figure",
            "Have it worked out before any soil is placed."),
    BURIAL_CRUSHED(REFUSE, WARN, PEOPLE, "factor of safety of the shell against the soil, pressure on", "1",
            "our own planning figure", "Raise the inner pressure, frame the hull or make the cover thinner."),
    BURIAL_SHELL_UNKNOWN(NOTE, NOTE, HULL, "no shell stated", "-", "our own planning figure",
            "State thickness, modulus and yield of the shell."),
    BURIAL_NEEDS_PRESSURE(WARN, WARN, PEOPLE, "factor of safety of the shell against the soil, pressure off", "1",
            "our own planning figure", "Frame it, or never let the pressure fall."),
    BURIAL_ONE_SIDED(WARN, WARN, HULL, "factor of safety against sliding under a lift on one side", "1",
            "our own planning figure", "Place lifts on both sides in turn, or thinner ones."),
    SADDLE_PLACE(REFUSE, REFUSE, HULL, "outer saddles against half the hull", "m", "the hull's length",
            "Set the outer saddles nearer to the ends."),
    SADDLE_LIFTS(REFUSE, REFUSE, HULL, "least reaction of a support", "kN", "equilibrium",
            "Move the supports so that the common centre of hull and soil lies well between them."),
    SADDLE_IDLE(WARN, WARN, HULL, "support that carries nothing", "kN", "equilibrium",
            "Space the supports more evenly."),
    SADDLE_BEARING(REFUSE, WARN, HULL, "factor of safety of the soil under a support", "1",
            "factor of safety 3 on bearing capacity, common practice, no source",
            "Widen the foot, add supports, or bed the hull along its length."),
    SADDLE_BENDING(REFUSE, WARN, HULL, "factor of safety of the shell in bending", "1", "our own planning figure",
            "Add supports, pack soil under it along its length, or frame it."),
    SADDLE_HORN(WARN, WARN, HULL, "stress of the wall at the upper edge of a saddle", "MPa",
            "Zick (1951), from memory; yield stress of the plan",
            "Give a ring in the plane of each saddle, or a cradle or bedding under its whole length."),
    COVER_METEOROIDS(WARN, WARN, PEOPLE, "chance that a meteoroid perforates a hull in the stay", "1",
            "perforation_chance in the plan's hazards", "Cover the bare skin, raise the cover, or give the bare end a"
                    + " shield against meteoroids."),
    COVER_THROWN_SOIL(WARN, WARN, HULL, "skin or soil against grains thrown by landings", "mm",
            "grains of 1 mm at 2 km/s: NASA's recommendations on historic lunar sites (2011)",
            "Move the pad, raise a berm between, pave it, or cover the skin that looks at it."),
    COVER_HEAT(NOTE, NOTE, COST, "cover depth at which the lunar day is not felt", "m",
            "swing of 1 K either way, our own planning figure", "Raise the cover, or plan insulation for the swing."),
    COVER_QUAKE(WARN, WARN, HULL, "factor of safety of the mound while the ground shakes", "1",
            "quake_acceleration_m_s2 in the plan's hazards; factor 1, pseudo-static",
            "Place the soil flatter or more densely, or plan to make the mound good after a quake."),
    HULL_IN_WALL(REFUSE, WARN, HULL, "how far the end of a hull stands in the wall that holds its cover", "m",
            "walls of the plan and where the hull comes to rest", "Move the wall's line out by as much, or the hull.");
    private final Entry entry;

    CoverRule(Level worst, Level mildest, Danger danger, String... words) {
        this.entry = Entry.of(worst, mildest, danger, words);
    }

    @Override
    public Entry entry() {
        return entry;
    }

    @Override
    public char letter() {
        return 'C';
    }
}
