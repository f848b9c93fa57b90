// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.mend;

import bermwright.editor.edit.Part;
import bermwright.finding.CoverRule;
import bermwright.finding.DoseRule;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.PairingRule;
import bermwright.finding.Rule;
import bermwright.finding.SiteRule;
import bermwright.finding.SizingRule;
import bermwright.finding.StayRule;
import bermwright.finding.WorkRule;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Station;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The field of a form in which a finding is mended.
 *
 * @param part the part whose form it is in
 * @param path the field's path in the plan file
 */
public record MendingField(Part part, String path) {
    private static final String STATION = "station:";
    private static final String AZIMUTH = "lay_down_azimuth_deg";
    private static final String COVER = "cover.thickness_m";
    private static final Map<Rule, String> HULL = new HashMap<>();
    private static final Map<Rule, MendingField> ELSEWHERE = new HashMap<>();
    private static final Map<Rule, String> OWN = new HashMap<>();

    static {
        hull(AZIMUTH, SiteRule.SLOPE_UNDER_HULL, SiteRule.SWEEP_OFF_GRID, SiteRule.SWEEP_GROUND_UNKNOWN,
                PairingRule.SWEEP_OVER_HULL, PairingRule.SWEEPS_CROSS, PairingRule.GROUND_IN_SWEEP,
                LoweringRule.LOWERING_FALLS_WHILE_STANDING, LoweringRule.LOWERING_DISPERSION_SIDEWAYS);
        hull("base_centre.east_m", SiteRule.HULL_OFF_GRID, SiteRule.GROUND_UNKNOWN, PairingRule.HULL_SPACING,
                PairingRule.HULLS_IN_ONE_PLACE, PairingRule.KEEP_OUT, PairingRule.CORRIDOR_BLOCKED,
                PairingRule.PAD_STAND_OFF, PairingRule.PAD_BUILT_OVER, PairingRule.GEAR_UNDER_HULL,
                PairingRule.LINE_OVER_HULL, CoverRule.HULLS_CUT_EACH_OTHER, LoweringRule.LOWERING_NO_GROUND);
        hull("landing_dispersion_m", SiteRule.LANDING_OFF_PAD, SiteRule.TUNNEL_REACH, PairingRule.LANDING_DISPERSION,
                LoweringRule.LOWERING_DISPERSION, LoweringRule.LOWERING_DISPERSION_SHOE);
        hull("seat.sunk_m", SiteRule.HULL_UNDER_GROUND);
        hull("cover.far_end", SiteRule.WAYS_OUT, CoverRule.COVER_BARE);
        hull("centre_of_mass_from_base_m", LoweringRule.LOWERING_CENTRE_OF_MASS_OUTSIDE,
                LoweringRule.LOWERING_NO_HAND_OVER);
        hull("lowering.lines.count", LoweringRule.LOWERING_UNEVEN_REEVING, LoweringRule.LOWERING_SINGLE_FAILURE);
        hull("lowering.lines.lug_off_axis_m", LoweringRule.LOWERING_LUG_BESIDE_HULL);
        hull("pivot.kind", LoweringRule.LOWERING_PIVOT_INSIDE_RIM, LoweringRule.LOWERING_RIM_ROLLS,
                LoweringRule.LOWERING_SWAYS);
        hull("lowering.landing.pad", SiteRule.LANDING_PAD_UNKNOWN, LoweringRule.LANDING_NO_PAD,
                LoweringRule.LANDING_BESIDE_PAD);
        hull("lowering.landing.touchdown_speed_m_s", LoweringRule.LANDING_NOT_STATED, LoweringRule.LANDING_SLAP);
        hull("lowering.landing.touchdown_pitch_deg", LoweringRule.LANDING_PITCH);
        hull("lowering.poles.behind_pivot_m", PairingRule.GEAR_IN_OWN_SWEEP, PairingRule.LANDING_ON_OWN_GEAR);
        hull("lowering.poles.height_m", PairingRule.LINE_MEETS_GROUND, PairingRule.LINE_NEAR_GROUND,
                PairingRule.POLE_FALL_ZONE);
        hull("lowering.stays", LoweringRule.LOWERING_POLE_NOT_STAYED);
        hull("lowering.temperature.swing_K", LoweringRule.LOWERING_SUN_AND_SHADE,
                LoweringRule.LOWERING_LIGHT_CHANGES, LoweringRule.LOWERING_LIGHT_NOT_STATED);
        hull("lowering", LoweringRule.LOWERING_NO_GEAR, LoweringRule.LOWERING_NO_LINES,
                LoweringRule.LOWERING_NO_PULL_OVER, LoweringRule.LOWERING_NO_THRUSTERS);
        hull("residual_propellant_t", LoweringRule.LOWERING_LIQUID);
        hull("shell.thickness_mm", CoverRule.BURIAL_CRUSHED, CoverRule.BURIAL_NEEDS_PRESSURE,
                CoverRule.SADDLE_BENDING, LoweringRule.LOWERING_HULL_BENDS);
        hull("shell", CoverRule.BURIAL_SHELL_UNKNOWN);
        hull("pivot.foot_area_m2", CoverRule.SADDLE_BEARING);
        hull("seat.saddle_width_m", CoverRule.SADDLE_HORN);
        hull("seat.saddle_count", CoverRule.SADDLE_IDLE, CoverRule.SADDLE_LIFTS);
        hull("seat.saddle_from_end_m", CoverRule.SADDLE_PLACE);
        hull("cover.lift_m", CoverRule.BURIAL_ONE_SIDED, WorkRule.SIDES_NOT_LEVEL);
        hull("cover.far_end_wall", CoverRule.COVER_WALL_AWAY);
        hull(COVER, CoverRule.COVER_THIN, CoverRule.COVER_METEOROIDS, CoverRule.COVER_HEAT, CoverRule.COVER_QUAKE,
                CoverRule.COVER_THROWN_SOIL, StayRule.COVER_PART_BUILT);
        hull("cover", SizingRule.SIZE_COVER_WITHOUT_COVER);
        hull(COVER, DoseRule.DOSE_LIMIT, DoseRule.DOSE_ABOVE_PUBLISHED, DoseRule.DOSE_WORSE_THAN_UPRIGHT,
                DoseRule.DOSE_THINNER_IS_BETTER);
        hull(STATION + "along_m", DoseRule.STATION_OUTSIDE_HULL, DoseRule.STATION_GROUND_UNKNOWN);
        hull(STATION + "storm_shelter", DoseRule.DOSE_NO_SHELTER, SiteRule.SHELTER_UNREACHABLE,
                SiteRule.SHELTER_FAR, SiteRule.SHELTER_CUT_OFF);
        hull(STATION + "occupancy_share", DoseRule.DOSE_OCCUPANCY, DoseRule.DOSE_LIMIT_FULL_TIME);
        elsewhere(Part.Kind.EXPOSURE, "limits", DoseRule.DOSE_NO_LIMIT, DoseRule.DOSE_LIMIT_NOT_JUDGED,
                DoseRule.DOSE_LIMIT_ABOVE_PUBLISHED, DoseRule.DOSE_LIMIT_DIFFERS_FROM_PUBLISHED,
                SizingRule.SIZE_COVER_NO_LIMIT, SizingRule.SIZE_COVER_UNMET);
        elsewhere(Part.Kind.EXPOSURE, "event", DoseRule.DOSE_EVENT_UNKNOWN, DoseRule.DOSE_EVENT_NOT_WORST,
                DoseRule.DOSE_EVENT_CONTINUED, DoseRule.DOSE_EVENT_BEGINS_LATE);
        elsewhere(Part.Kind.EXPOSURE, "to_shelter_min", DoseRule.DOSE_WAY_NOT_COUNTED);
        elsewhere(Part.Kind.EXPOSURE, "people", DoseRule.DOSE_PERSON_UNKNOWN, DoseRule.DOSE_PERSON_HOURS,
                DoseRule.DOSE_CAREER);
        elsewhere(Part.Kind.GROUND, "elevation_file", SiteRule.GROUND_FILE_ODD, SiteRule.SLOPE_NOT_KNOWN,
                SiteRule.BELLY_NOT_KNOWN, DoseRule.DOSE_BEYOND_GROUND);
        elsewhere(Part.Kind.GROUND, "gravity_m_s2", LoweringRule.LOWERING_NO_GRAVITY);
        elsewhere(Part.Kind.GROUND, "regolith.placed_density_kg_m3", WorkRule.DENSITY_MISSING);
        elsewhere(Part.Kind.GROUND, "regolith.friction_angle_deg", LoweringRule.SOIL_STRENGTH_EXTRAPOLATED);
        own("greatest_grade_deg", SiteRule.CORRIDOR_GRADE, SiteRule.CORRIDOR_CUT);
        own("area", SiteRule.PREPARATION_NO_GROUND, SiteRule.PREPARATION_SIDE_OPEN, PairingRule.BORROW_TOO_NEAR,
                PairingRule.BORROW_IN_THE_WAY, PairingRule.BORROW_GROUNDS_OVERLAP, WorkRule.BORROW_OFF_GRID,
                PairingRule.STOCKPILE_IN_THE_WAY, WorkRule.BORROW_CUT_BACK);
        own("side_slope_deg", WorkRule.MADE_GROUND_STEEP, WorkRule.SLOPE_SLIDES);
        own("to", SiteRule.TUNNEL_END_UNKNOWN, CoverRule.TUNNEL_UNPLACED);
        own("of", WorkRule.ORDER_UNKNOWN_OBJECT);
        own("machine", WorkRule.ORDER_UNKNOWN_MACHINE, WorkRule.LIFT_BEYOND_MACHINE);
        own("after", WorkRule.ORDER_UNKNOWN_STEP, WorkRule.ORDER_CIRCLE, WorkRule.STEP_CLEARANCE,
                WorkRule.MACHINE_IN_DANGER_ZONE);
        own("id", WorkRule.ORDER_STEP_TWICE);
        own("up_to_height_m", WorkRule.LIFT_PLACES_NOTHING, WorkRule.COVER_NOT_FINISHED);
    }

    private static void hull(String path, Rule... rules) {
        for (Rule rule : rules) {
            HULL.put(rule, path);
        }
    }

    private static void elsewhere(Part.Kind kind, String path, Rule... rules) {
        for (Rule rule : rules) {
            ELSEWHERE.put(rule, new MendingField(new Part(kind, ""), kind.key() + "." + path));
        }
    }

    private static void own(String path, Rule... rules) {
        for (Rule rule : rules) {
            OWN.put(rule, path);
        }
    }

    /**
     * The field that mends a finding.
     *
     * @param plan    the plan
     * @param finding the finding
     * @return the field; the id of the part it is about where no one field mends it; empty where it is about nothing
     *         that has a form
     */
    public static Optional<MendingField> of(Plan plan, Finding finding) {
        Rule rule = finding.rule();
        if (ELSEWHERE.containsKey(rule)) {
            return Optional.of(ELSEWHERE.get(rule));
        }
        Optional<Part> part = Part.bySubject(plan, finding.subject());
        if (part.isEmpty()) {
            return rule == WorkRule.BORROW_SHORTAGE ? plan.borrowGrounds().stream().findFirst().map(b ->
                    at(plan, new Part(Part.Kind.BORROW_GROUND, b.id()), "greatest_depth_m")) : Optional.empty();
        }
        List<Lever> levers = Levers.of(plan, finding);
        if (!levers.isEmpty()) {
            return Optional.of(new MendingField(part.get(), levers.get(0).path()));
        }
        if (part.get().kind() == Part.Kind.HULL) {
            return Optional.of(ofHull(plan, part.get(), finding));
        }
        return Optional.of(at(plan, part.get(), OWN.getOrDefault(rule, "id")));
    }

    private static MendingField ofHull(Plan plan, Part part, Finding finding) {
        String path = HULL.getOrDefault(finding.rule(), "id");
        if (!path.startsWith(STATION)) {
            return at(plan, part, path);
        }
        List<String> stations = plan.hull(part.id()).map(Hull::stations).orElse(List.of()).stream().map(Station::id)
                .toList();
        String[] names = finding.subject().split("/", 2);
        int station = names.length > 1 ? Math.max(0, stations.indexOf(names[1])) : 0;
        return stations.isEmpty() ? at(plan, part, "stations")
                : at(plan, part, "stations[" + station + "]." + path.substring(STATION.length()));
    }

    private static MendingField at(Plan plan, Part part, String path) {
        return new MendingField(part, part.path(plan) + "." + path);
    }

    /** Every path of the tables, from the part of each kind, for the test that all lead to a key. */
    static Map<String, List<String>> paths() {
        return Map.of("hulls[0]", HULL.values().stream().map(p -> p.startsWith(STATION)
                        ? "stations[0]." + p.substring(STATION.length()) : p).distinct().toList(),
                "exposure", named(Part.Kind.EXPOSURE), "ground", named(Part.Kind.GROUND),
                "own", OWN.values().stream().distinct().toList());
    }

    private static List<String> named(Part.Kind kind) {
        return ELSEWHERE.values().stream().filter(f -> f.part.kind() == kind)
                .map(f -> f.path.substring(kind.key().length() + 1)).distinct().toList();
    }
}
