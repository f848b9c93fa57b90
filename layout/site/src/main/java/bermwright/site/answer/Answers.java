// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static bermwright.site.answer.Figure.flag;
import static bermwright.site.answer.Figure.maybe;
import static bermwright.site.answer.Figure.of;
import static bermwright.site.answer.Figure.words;

import bermwright.finding.Finding.Figures;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.TiltState;
import bermwright.regolith.SoilSensitivity;
import bermwright.site.burial.HullSupports;
import bermwright.site.burial.LiftLoad;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.StationDose;
import bermwright.site.haulage.EarthworksResult;
import bermwright.site.haulage.Haul;
import bermwright.site.hazard.HullHazards;
import bermwright.site.hazard.JudgedCover;
import bermwright.site.stages.GearDigging;
import bermwright.site.stages.SlopeChecks;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** The tables of results: a new figure is one line here. */
public final class Answers {
    /** What governs a lowering by lines. */
    public static final AnswerTable<LoweringResult> LOWERING = new AnswerTable<>("hulls[].lowering",
            "What governs a hull's lowering by lines.", "lowering-statics", List.of(
            of("balance_tilt_deg", "balance tilt", "Tilt at which the centre of mass stands over the pivot line.",
                    Unit.DEG, LoweringResult::balanceTilt),
            of("hand_over_tilt_deg", "hand-over tilt", "Tilt from which the lowering lines hold alone.", Unit.DEG,
                    LoweringResult::handOverTilt),
            of("greatest_pull_over_kN", "greatest pull-over", "Greatest pull of the pull-over line.", Unit.KN,
                    LoweringResult::greatestPullOver),
            of("greatest_line_tension_kN", "greatest line tension", "Greatest tension of one lowering line.", Unit.KN,
                    LoweringResult::greatestLineTension),
            of("at_tilt_deg", "at tilt", "Tilt of the greatest line tension.", Unit.DEG, LoweringResult::atTilt),
            of("line_angle_at_rest_deg", "line angle at rest", "Angle of the lowering lines to the ground with the"
                    + " hull lying.", Unit.DEG, LoweringResult::lineAngleAtRest).filesOnly(),
            of("full_balance_at_rest_kN", "full balance at rest", "Pull of all lines together with the hull lying, by"
                    + " the full moment balance.", Unit.KN, (LoweringResult r) -> r.balances().full()),
            maybe("hand_balance_at_rest_kN", "hand balance at rest", "The same by the hand balance.", Unit.KN,
                    r -> r.balances().hand())));
    /** Forces tilt by tilt. */
    public static final AnswerTable<TiltState> TILTS = new AnswerTable<>("hulls[].lowering.tilts[]",
            "Forces of the lowering, tilt by tilt.", "lowering-statics", List.of(
            of("tilt_deg", "tilt", "Tilt from the standing hull.", Unit.DEG, TiltState::tilt),
            of("line_total_kN", "all lines", "Pull of all lowering lines together in the lay-down plane, full moment"
                    + " balance.", Unit.KN, TiltState::lineTotal),
            of("line_each_kN", "one line with spread", "Tension of one lowering line, with its lateral spread.",
                    Unit.KN, TiltState::lineEach),
            maybe("hand_balance_kN", "hand balance", "Pull of all lines by the vertical balance done by hand.", Unit.KN,
                    TiltState::handBalance),
            of("pull_over_kN", "pull-over", "Pull of the pull-over line.", Unit.KN, TiltState::pullOver),
            of("pivot_up_kN", "pivot, square to ground", "Force of the ground on the pivot, square to it.", Unit.KN,
                    TiltState::pivotUp),
            of("pivot_along_kN", "pivot, along ground", "Force of the ground on the pivot, along it.", Unit.KN,
                    TiltState::pivotAlong),
            of("hold_needed_kN", "hold required", "What the hold at the pivot must take beyond friction.", Unit.KN,
                    TiltState::holdNeeded).filesOnly(),
            of("pole_each_kN", "one pole", "Thrust of one pole.", Unit.KN, TiltState::poleEach),
            of("lever_m", "lever", "Lever of the lines at work about the pivot line.", Unit.M, TiltState::lever)
                    .filesOnly(),
            of("line_angle_deg", "line to ground", "Angle of the lines to the ground.", Unit.DEG,
                    TiltState::lineAngle).filesOnly()));
    /** The cover of a hull. */
    public static final AnswerTable<HullCover> COVER = new AnswerTable<>("hulls[].cover", "The cover of a hull.",
            "cover-surface",
            List.of(
            words("id", "hull", "Id of the hull.", HullCover::id),
            of("volume_m3", "placed", "Volume of soil placed for this hull.", Unit.M3, HullCover::volume),
            of("volume_spread_m3", "placed, spread", "How far that volume may be off for what the elevation file does"
                    + " not show, one standard deviation.", Unit.M3, (HullCover c) -> c.uncertainty().volume()),
            of("placed_mass_t", "placed mass", "Mass of that soil.", Unit.T, HullCover::placedMass).digits(0),
            of("least_depth_m", "least cover depth", "Depth of soil over the thinnest place of the skin that is to be"
                    + " covered: the one that lacks most, else the least deep.", Unit.M,
                    (HullCover c) -> c.least().depth()),
            of("least_depth_spread_m", "depth, spread", "How far depth may be off for what the elevation file does not"
                    + " show, one standard deviation.", Unit.M, (HullCover c) -> c.uncertainty().depth()),
            of("least_depth_wanted_m", "required there", "Cover depth required at that place.", Unit.M,
                    (HullCover c) -> known(c, c.least().wanted())),
            of("least_depth_at.along_m", "from base plane", "Where along the hull that is.", Unit.M,
                    (HullCover c) -> known(c, c.least().along())),
            of("least_depth_at.around_deg", "from crown", "Where around the hull that is, positive to the left.",
                    Unit.DEG, (HullCover c) -> known(c, c.least().around())).digits(0),
            of("least_areal_density_g_cm2", "least areal density", "Least areal density of soil and skin over the"
                    + " skin.", Unit.G_CM2, HullCover::leastArealDensity),
            of("share_below_wanted", "skin below required depth", "Share of the skin to be covered that lies under less"
                    + " soil than required.", Unit.PERCENT, HullCover::shareBelowWanted)));
    /** What carries a hull under its cover. */
    public static final AnswerTable<HullSupports.Support> SUPPORTS = new AnswerTable<>(
            "hulls[].burial.supports.loads[]", "What carries a buried hull.", "hull-supports", List.of(
            words("support", "support", "Name of the support.", HullSupports.Support::name),
            of("along_m", "from base plane", "Where along the hull it stands.", Unit.M, HullSupports.Support::along),
            of("load_kN", "load", "Load on the support.", Unit.KN, HullSupports.Support::reaction),
            of("pressure_kPa", "pressure on the soil", "Pressure under its foot.", Unit.KPA,
                    HullSupports.Support::pressure),
            of("bearing_kPa", "bearing capacity", "Pressure at which the soil fails.", Unit.KPA,
                    HullSupports.Support::bearing),
            of("bearing_factor", "factor of safety", "Bearing capacity over pressure.", Unit.ONE,
                    HullSupports.Support::bearingFactor),
            LoweringAnswers.bySoil("factor_friction_less", "factor with friction one spread less",
                    HullSupports.Support::soil, SoilSensitivity::frictionLess),
            LoweringAnswers.bySoil("factor_friction_more", "factor with friction one spread more",
                    HullSupports.Support::soil, SoilSensitivity::frictionMore),
            LoweringAnswers.bySoil("factor_cohesion_less", "factor with cohesion one spread less",
                    HullSupports.Support::soil, SoilSensitivity::cohesionLess),
            LoweringAnswers.bySoil("factor_cohesion_more", "factor with cohesion one spread more",
                    HullSupports.Support::soil, SoilSensitivity::cohesionMore),
            LoweringAnswers.bySoil("factor_both_less", "factor with both one spread less",
                    HullSupports.Support::soil, SoilSensitivity::bothLess)));
    /** What each lift does to the shell. */
    public static final AnswerTable<LiftLoad> LIFTS = new AnswerTable<>("hulls[].burial.lifts[]",
            "What each lift does to the shell.", "soil-pressure", List.of(
            of("height_m", "soil up to", "Height of the soil after the lift.", Unit.M, LiftLoad::height),
            of("greatest_pressure_kPa", "greatest soil pressure", "Greatest pressure of soil on the skin.", Unit.KPA,
                    LiftLoad::greatest).digits(2),
            of("at.along_m", "from base plane", "Where along the hull that is.", Unit.M,
                    (LiftLoad l) -> l.greatest() > 0 ? l.along() : Double.NaN),
            of("at.around_deg", "from crown", "Where around the hull that is.", Unit.DEG, (LiftLoad l) ->
                    l.greatest() > 0 ? Math.toRadians(l.aroundDeg()) : Double.NaN).digits(0),
            of("factor_pressurised", "factor of safety, pressure on", "Capacity of the shell over the soil's pressure,"
                    + " inner pressure on.", Unit.ONE, LiftLoad::pressurised),
            of("factor_unpressurised", "factor of safety, pressure off", "The same with the inner pressure off.",
                    Unit.ONE, LiftLoad::unpressurised).digits(3),
            of("side_push_kN_m", "push of one side", "Push of soil on one side only.", Unit.KN_M, LiftLoad::sidePush),
            of("slide_factor", "factor of safety against sliding", "Friction under the hull over that push.", Unit.ONE,
                    LiftLoad::slideResistance)));
    /** Dose at a station. */
    public static final AnswerTable<StationDose> STATIONS = new AnswerTable<>("hulls[].stations[]",
            "Dose of somebody who spends the whole stay, and the event, at one station.", "dose-particles", List.of(
            words("hull", "hull", "Id of the hull.", StationDose::hull),
            words("id", "station", "Id of the station.", StationDose::station),
            flag("storm_shelter", "storm shelter", StationDose::stormShelter),
            of("upright_mSv", "upright, bare", "Dose at the same place of the bare standing hull.", Unit.MSV,
                    StationDose::upright),
            of("covered_mSv", "covered, best", "Dose under the cover: cosmic rays, event and ground return.", Unit.MSV,
                    (StationDose s) -> s.covered().best()),
            of("low_mSv", "low, 16th percentile", "Its 16th percentile.", Unit.MSV,
                    (StationDose s) -> s.covered().low()),
            of("high_mSv", "high, 84th percentile", "Its 84th percentile, which is held against limits.", Unit.MSV,
                    (StationDose s) -> s.covered().high()),
            of("reduction", "less than upright", "One less covered over upright.", Unit.PERCENT,
                    StationDose::reduction),
            of("cosmic_mSv", "cosmic rays", "Share of the cosmic rays.", Unit.MSV,
                    (StationDose s) -> s.parts().cosmic()),
            of("event_mSv", "event", "Share of the event.", Unit.MSV, (StationDose s) ->
                    s.parts().uncertainties().event().isPresent() ? s.parts().event() : Double.NaN),
            of("ground_return_mSv", "ground return", "Share of what the ground sends back.", Unit.MSV,
                    (StationDose s) -> s.parts().groundReturn()),
            of("least_areal_density_g_cm2", "thinnest way out", "Least areal density of all directions.", Unit.G_CM2,
                    (StationDose s) -> s.seen().leastArealDensity()),
            of("median_areal_density_g_cm2", "half the sky below", "Median areal density of the sky.", Unit.G_CM2,
                    (StationDose s) -> s.seen().medianArealDensity()),
            of("share_beyond_table", "from beyond the table", "Share of the dose through more soil than the response"
                    + " was made for.", Unit.PERCENT, (StationDose s) -> s.seen().shareBeyondTable()).digits(2)
                    .filesOnly(),
            of("occupancy_share", "share of time", "Share of the crew's time inside that is spent here.", Unit.PERCENT,
                    StationDose::occupancyShare).digits(0).filesOnly()));
    /** Soil to be moved, in all. */
    public static final AnswerTable<EarthworksResult> EARTHWORKS = new AnswerTable<>("earthworks",
            "Soil to be moved, in all.", "haul-time", List.of(
            of("placed_m3", "placed, as it stands in the covers", "Placed volume.", Unit.M3, EarthworksResult::placed),
            of("bank_m3", "bank, as it lies before digging", "Bank volume.", Unit.M3, EarthworksResult::bank),
            of("bank_spread_m3", "bank, one standard deviation", "Standard deviation of the bank volume.", Unit.M3,
                    (EarthworksResult e) -> e.spread().bank()),
            of("loose_m3", "loose, in the haulers", "Loose volume.", Unit.M3, EarthworksResult::loose),
            of("loose_spread_m3", "loose, one standard deviation", "Standard deviation of the loose volume.", Unit.M3,
                    (EarthworksResult e) -> e.spread().loose()),
            of("mass_t", "mass", "Mass of the soil moved.", Unit.T, EarthworksResult::mass).digits(0),
            of("borrow_left_m3", "left in the borrow grounds, bank", "Bank volume left over.", Unit.M3,
                    EarthworksResult::borrowLeft),
            of("shortage_m3", "short, bank", "Bank volume that is missing.", Unit.M3, EarthworksResult::shortage),
            maybe("machine_hours", "machine hours", "Hours of all machines together.", Unit.HOURS,
                    EarthworksResult::machineHours)));
    /** Hauls. */
    public static final AnswerTable<Haul> HAULS = new AnswerTable<>("earthworks.hauls[]", "Which soil goes where.",
            "haul-time", List.of(
            words("from", "from", "Borrow ground or preparation it is dug in.", Haul::from),
            words("to", "to", "Hull or preparation it is placed at.", Haul::to),
            words("kind", "for", "What it is for.", (Haul h) -> h.kind().word()),
            words("machine", "machine", "Machine that hauls it.", Haul::machine),
            of("bank_m3", "bank", "Bank volume.", Unit.M3, Haul::bank),
            of("loose_m3", "loose", "Loose volume.", Unit.M3, Haul::loose).filesOnly(),
            of("placed_m3", "placed", "Placed volume.", Unit.M3, Haul::placed),
            of("mass_t", "mass", "Mass.", Unit.T, Haul::mass).filesOnly(),
            of("distance_m", "one way", "Length of the way, one way.", Unit.M, Haul::distance).digits(0),
            of("climb_m", "rise and fall", "Rise and fall along the way, both counted.", Unit.M, Haul::climb).digits(1)
                    .filesOnly(),
            of("loads", "loads", "Loads carried, not rounded up.", Unit.COUNT, Haul::loads),
            maybe("machine_hours", "machine hours", "Hours of its machines.", Unit.HOURS, Haul::machineHours),
            maybe("energy_MJ", "driving", "Energy for driving.", Unit.MJ, Haul::energy).filesOnly()));
    /** Work of each machine. */
    public static final AnswerTable<EarthworksResult.MachineDays> MACHINES = new AnswerTable<>("earthworks.machines[]",
            "Hours and days by machine.", "haul-time", List.of(
            words("id", "machine", "Id of the machine.", EarthworksResult.MachineDays::machine),
            of("machine_hours", "machine hours", "Hours of all of them together.", Unit.HOURS,
                    EarthworksResult.MachineDays::hours),
            of("days", "days with all of them at work", "Days with all of them at work.", Unit.DAYS,
                    EarthworksResult.MachineDays::days)));
    /** Slopes of mounds and pits. */
    public static final AnswerTable<SlopeChecks.Slope> SLOPES = new AnswerTable<>("earthworks.slopes[]",
            "How far mounds and pits are from sliding; on the worst circle 1.3 is required while work goes on, the face"
            + " without cohesion stands beside it for comparison.", "slope-stability", List.of(
            words("of", "of", "Id of the hull or borrow ground.", SlopeChecks.Slope::subject),
            words("kind", "which is a", "What it is.", SlopeChecks.Slope::kind),
            of("height_m", "height", "Height of the slope.", Unit.M, SlopeChecks.Slope::height).digits(1),
            of("angle_deg", "side slope", "Angle of the slope.", Unit.DEG, SlopeChecks.Slope::angle),
            of("factor_worst_circle", "factor of safety, worst circle", "Factor of safety on the worst circle.",
                    Unit.ONE, SlopeChecks.Slope::circle),
            of("factor_in_the_face", "factor of safety, in the face", "Factor of safety in the face, without cohesion.",
                    Unit.ONE, SlopeChecks.Slope::plane),
            of("circle_radius_m", "radius of that circle", "Radius of the worst circle.", Unit.M,
                    SlopeChecks.Slope::radius).digits(1).filesOnly()));
    /** What is dug for the gear. */
    public static final AnswerTable<GearDigging.Item> DIGGING = new AnswerTable<>("earthworks.gear_digging[]",
            "Dug for the gear, derived for want of a stated preparation.", "gear-digging", List.of(
            words("hull", "hull", "Id of the hull.", GearDigging.Item::hull),
            words("part", "dug for", "Part of its gear.", GearDigging.Item::part),
            of("cut_m3", "cut, bank", "Volume dug, bank.", Unit.M3, GearDigging.Item::cut).digits(1),
            of("fill_m3", "filled in, placed", "Volume filled in, placed.", Unit.M3, GearDigging.Item::fill)
                    .digits(1)));

    /** Covers judged for all that they keep off. */
    public static final AnswerTable<JudgedCover> JUDGED_COVERS = new AnswerTable<>("cover_judged[]",
            "Cover judged for all that it keeps off, by hull and station.", "", List.of(
            words("hull", "hull", "Id of the hull; all for the crew and for named persons, who move about.",
                    JudgedCover::hull),
            words("station", "station", "Id of the station; crew or the named person where the hull is all; empty for"
                    + " the whole hull.",
                    JudgedCover::station),
            words("against", "against", "What it is judged for: radiation, meteoroids, thrown soil, heat, moonquake.",
                    (JudgedCover j) -> j.hazard().word()),
            words("found_text", "found", "What was found, with its unit.", (JudgedCover j) ->
                    inUnit(j.measure().found(), j.measure().unit())),
            words("allowed_text", "allowed", "What is allowed, with its unit.", (JudgedCover j) ->
                    (Double.isNaN(j.measure().allowed()) ? "" : j.measure().isLeast() ? "at least " : "at most ")
                            + inUnit(j.measure().allowed(), j.measure().unit())),
            of("found", "found", "What was found, in unit.", Unit.ONE, (JudgedCover j) -> j.measure().found())
                    .digits(-4).tablesOnly(),
            of("allowed", "allowed", "What is allowed, in unit.", Unit.ONE, (JudgedCover j) -> j.measure().allowed())
                    .digits(-4).tablesOnly(),
            words("unit", "unit", "Unit of found and allowed.", (JudgedCover j) -> j.measure().unit())
                    .tablesOnly(),
            of("used_share", "used up", "How much of what is allowed is used up.", Unit.PERCENT, (JudgedCover j) ->
                    j.measure().used()),
            of("cover_required_m", "cover required", "Cover depth required for it; absent where depth is not what"
                    + " decides.", Unit.M, JudgedCover::required),
            of("cover_m", "cover there", "Cover depth at the thinnest place.", Unit.M, JudgedCover::there),
            words("verdict", "verdict", "met, not met or not judged.", (JudgedCover j) -> j.verdict().word()),
            words("governs", "governs", "yes where no other hazard there uses up more.", (JudgedCover j) ->
                    j.governs() ? "yes" : ""),
            words("text", "what it means", "What was found, in words.", JudgedCover::words).filesOnly()));
    /** The figures behind what covers keep off besides radiation. */
    public static final AnswerTable<HullHazards> HAZARDS = new AnswerTable<>("hulls[].hazards",
            "What the cover of a hull keeps off besides radiation.", "", List.of(
            words("hull", "hull", "Id of the hull.", HullHazards::hull),
            of("perforation_chance", "chance of a perforation", "Chance that a meteoroid perforates the hull in the"
                    + " stay; model meteoroids.", Unit.PERCENT, (HullHazards h) -> h.meteoroids().chance()).digits(4),
            of("perforation_by_bare_share", "of it through bare skin", "Share of it that comes through bare skin.",
                    Unit.PERCENT, (HullHazards h) -> h.meteoroids().byBare()).digits(0),
            of("meteoroid_stopped_g", "meteoroid stopped", "Greatest mass stopped at the thinnest place.", Unit.GRAM,
                    (HullHazards h) -> h.meteoroids().stopped()),
            of("pad_distance_m", "nearest pad", "From the middle of the hull to that of the nearest pad; model"
                    + " thrown-soil.", Unit.M, (HullHazards h) -> h.thrown().distance()).digits(0),
            of("thrown_soil_kg_m2", "thrown soil", "Soil that crosses an upright square metre in the stay.",
                    Unit.KG_M2, (HullHazards h) -> h.thrown().mass()),
            of("skin_required_mm", "skin required against it", "Skin that a grain of 1 mm does not perforate.",
                    Unit.MM, (HullHazards h) -> h.thrown().skinRequired()),
            of("day_not_felt_m", "day not felt below", "Depth at which the lunar day moves the temperature by less than"
                    + " 1 K either way; model soil-heat.", Unit.M, (HullHazards h) -> h.heat().notFelt()),
            of("skin_swing_K", "swing at the skin", "What the lunar day moves the skin by, either way, at the thinnest"
                    + " place.", Unit.K, (HullHazards h) -> h.heat().swing()).digits(2),
            of("skin_unheated_K", "skin, unheated", "Temperature of a covered skin that nothing heats.", Unit.K,
                    (HullHazards h) -> h.heat().unheated()).digits(0),
            of("heat_loss_W", "heat lost", "Heat the hull loses through its cover at the temperature of the cabin.",
                    Unit.WATT, (HullHazards h) -> h.heat().loss()),
            of("skin_rise_K_kW", "warmer by each kW", "How much warmer than unheated the skin grows for each kilowatt"
                    + " that must leave through the soil.", Unit.K, (HullHazards h) -> h.heat().risePerKilowatt())
                    .digits(0),
            of("mound_factor_at_rest", "factor of safety at rest", "Of the mound; model moonquake-slope.", Unit.ONE,
                    (HullHazards h) -> h.quake().atRest()),
            of("mound_factor_shaken", "factor of safety shaken", "Of the mound at the plan's acceleration.", Unit.ONE,
                    (HullHazards h) -> h.quake().shaken()),
            of("yield_acceleration_m_s2", "slides from", "Acceleration at which the mound begins to slide.", Unit.M_S2,
                    (HullHazards h) -> h.quake().yield())));

    private Answers() {
    }

    /**
     * Every table.
     *
     * @return the tables, in the order of the answer
     */
    public static List<AnswerTable<?>> all() {
        return List.of(LoweringAnswers.LYING, LoweringAnswers.BY_LINES, ReviewAnswers.REVIEW,
                LoweringAnswers.THRUSTERS, LoweringAnswers.LANDING, LoweringAnswers.LANDINGS, LoweringAnswers.REST,
                LoweringAnswers.COMPARED, LoweringAnswers.SUGGESTED, COVER, CoverAnswers.BURIAL, DoseAnswers.STATION,
                DoseAnswers.LIMITS, DoseAnswers.PUBLISHED_LIMITS, DoseAnswers.CREW, DoseAnswers.PEOPLE,
                DoseAnswers.OPEN_GROUND, WalkAnswers.WALKS,
                DoseAnswers.PUBLISHED, CoverAnswers.PASSING, WorkAnswers.EARTHWORKS, WorkAnswers.MADE_GROUND, DIGGING,
                WorkAnswers.STAGES, WorkAnswers.WORK, WorkAnswers.WAYS_OUT, AsBuiltAnswers.SURVEYS,
                AsBuiltAnswers.HULLS, AsBuiltAnswers.CALENDAR, JUDGED_COVERS, HAZARDS);
    }

    /**
     * The tables of commands that answer about something else than a plan's assessment.
     *
     * @return what each of them answers, by the name of the command
     */
    public static Map<String, AnswerTable<?>> byCommand() {
        return new TreeMap<>(Map.of("ground", PlaceAnswers.FILE, "size-cover", SizingAnswers.SIZED));
    }

    private static String inUnit(double value, String unit) {
        return Double.isNaN(value) ? "" : Math.abs(value) < 0.001 && value != 0 ? String.format(Locale.ROOT, "%.1e",
                value) : Figures.number(value) + (unit.equals("1") ? "" : " " + unit);
    }

    /** A value of the place of least cover, where there is one. */
    private static double known(HullCover cover, double value) {
        return Double.isFinite(cover.least().depth()) ? value : Double.NaN;
    }
}
