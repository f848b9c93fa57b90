// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static bermwright.site.answer.AnswerTable.within;
import static bermwright.site.answer.Figure.count;
import static bermwright.site.answer.Figure.flag;
import static bermwright.site.answer.Figure.list;
import static bermwright.site.answer.Figure.maybe;
import static bermwright.site.answer.Figure.of;
import static bermwright.site.answer.Figure.said;
import static bermwright.site.answer.Figure.words;

import bermwright.foundation.Vec3;
import bermwright.lowering.chain.Chain;
import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.chain.Factors;
import bermwright.lowering.choice.MeansRow;
import bermwright.lowering.choice.PayloadSweep.PayloadPoint;
import bermwright.lowering.choice.Suggestion;
import bermwright.lowering.choice.Suggestions;
import bermwright.lowering.rest.RestPose;
import bermwright.lowering.sequence.HoldPoint;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.thrust.LyingLanding;
import bermwright.lowering.thrust.ThrustState;
import bermwright.lowering.thrust.ThrusterResult;
import bermwright.regolith.SoilSensitivity;
import bermwright.site.answer.AnswerTable.Part;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.laydown.Alternatives;
import bermwright.site.laydown.LandingDisc;
import bermwright.site.laydown.Laydown;
import bermwright.site.plan.LoweringGear;
import bermwright.site.pose.LyingPose;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Tables of how a hull comes to lie: by lines, by thrusters, landing on its side, and what else could be done. */
public final class LoweringAnswers {
    /** How a factor moves with the strength of the soil. */
    public static final AnswerTable<SoilSensitivity> SOIL = within("The factor with other soil.", List.of(
            of("friction_angle_spread_deg", "spread of the friction angle", Unit.DEG, (SoilSensitivity s) ->
                    s.stated().frictionSpread()),
            of("cohesion_spread_Pa", "spread of the cohesion", Unit.PA, (SoilSensitivity s) ->
                    s.stated().cohesionSpread()),
            of("factor_friction_less", "factor with less friction", Unit.ONE, SoilSensitivity::frictionLess),
            of("factor_friction_more", "factor with more friction", Unit.ONE, SoilSensitivity::frictionMore),
            of("factor_cohesion_less", "factor with less cohesion", Unit.ONE, SoilSensitivity::cohesionLess),
            of("factor_cohesion_more", "factor with more cohesion", Unit.ONE, SoilSensitivity::cohesionMore),
            of("factor_both_less", "factor with less of both", Unit.ONE, SoilSensitivity::bothLess),
            maybe("factor_as_stated", "factor with the other profile the plan states", Unit.ONE,
                    SoilSensitivity::asStated)));
    /** How a hull lies. */
    public static final AnswerTable<LyingPose> LYING = new AnswerTable<>("hulls[].lying", "How a hull lies.", "",
            List.of(
            list("axis_start", "middle of its base: east, north, height (m)", (LyingPose p) -> place(p.axisStart())),
            list("axis_end", "middle of its far end: east, north, height (m)", (LyingPose p) -> place(p.axisEnd())),
            of("slope_along_deg", "slope along, lying", Unit.DEG, LyingPose::slopeAlong),
            of("slope_across_deg", "slope across, lying", Unit.DEG, LyingPose::slopeAcross)));
    /** Least factors of safety. */
    public static final AnswerTable<Factors> FACTORS = within("Least factors of safety.", List.of(
            maybe("line", "factor of safety, line", Unit.ONE, Factors::line),
            maybe("winch", "factor of safety, winch", Unit.ONE, Factors::winch),
            maybe("pole", "factor of safety, pole", Unit.ONE, Factors::pole),
            maybe("anchor", "factor of safety, anchor", Unit.ONE, Factors::anchor),
            maybe("pivot_hold", "factor of safety, pivot hold", Unit.ONE, Factors::pivotHold)));
    /** Each part of the load path in each load case. */
    public static final AnswerTable<InChain> CHAIN = within("Each part of the load path in each load case.", List.of(
            words("part", "part", (InChain c) -> c.row.part().words()),
            words("case", "load case", (InChain c) -> c.row.loadWords()),
            maybe("demand", "demand", Unit.BESIDE, (InChain c) -> c.row.demandShown()),
            maybe("capacity", "capacity", Unit.BESIDE, (InChain c) -> c.row.capacityShown()),
            words("unit", "unit", (InChain c) -> c.row.unitShown()),
            maybe("factor", "factor of safety", Unit.ONE, (InChain c) -> c.row.factor()),
            of("required", "required", Unit.ONE, (InChain c) -> c.row.required()),
            of("tilt_deg", "at tilt", Unit.DEG, (InChain c) -> c.row.tilt()),
            words("verdict", "verdict", (InChain c) -> c.row.verdict().word()),
            flag("governs", "governs the part", (InChain c) -> c.chain.governs(c.row)).filesOnly(),
            bySoil("factor_friction_less", "factor with friction one spread less",
                    InChain::soil, SoilSensitivity::frictionLess),
            bySoil("factor_friction_more", "factor with friction one spread more",
                    InChain::soil, SoilSensitivity::frictionMore),
            bySoil("factor_cohesion_less", "factor with cohesion one spread less",
                    InChain::soil, SoilSensitivity::cohesionLess),
            bySoil("factor_cohesion_more", "factor with cohesion one spread more",
                    InChain::soil, SoilSensitivity::cohesionMore),
            bySoil("factor_both_less", "factor with both one spread less",
                    InChain::soil, SoilSensitivity::bothLess),
            words("source", "source", (InChain c) -> c.row.source()).filesOnly())).with(List.of(
            Part.maybe("soil", SOIL, InChain::soil)));
    /** Where to stop and check. */
    public static final AnswerTable<HoldPoint> HOLD_POINTS = within("Where to stop and check.", List.of(
            of("tilt_deg", "tilt", Unit.DEG, HoldPoint::tilt), words("check", "stop and check", HoldPoint::check)));
    /** A lowering by lines, whole. */
    public static final AnswerTable<LoweringResult> BY_LINES = Answers.LOWERING.and(List.of(
            words("balances", "both balances compared", (LoweringResult r) -> r.balances().words()),
            words("governing", "governing part", LoweringResult::governingPart),
            list("sequence", "sequence of the lowering", LoweringResult::sequence))).with(List.of(
            Part.all("tilts", Answers.TILTS, LoweringResult::tilts),
            Part.one("factors", FACTORS, LoweringResult::factors),
            Part.all("chain", CHAIN, r -> InChain.of(r.chain(), r.chain().rows())),
            Part.all("hold_points", HOLD_POINTS, LoweringResult::holdPoints)));
    /** Thrust tilt by tilt. */
    public static final AnswerTable<ThrustState> THRUST = within("Thrust tilt by tilt; below zero while it pushes the"
            + " hull past its balance.", List.of(
            of("tilt_deg", "tilt", Unit.DEG, ThrustState::tilt),
            of("thrust_kN", "thrust", Unit.KN, ThrustState::thrust),
            of("share_of_thrust", "of all thrust", Unit.PERCENT, ThrustState::share).filesOnly(),
            of("pivot_up_kN", "pivot, square to ground", Unit.KN, ThrustState::pivotUp),
            of("pivot_along_kN", "pivot, along ground", Unit.KN, ThrustState::pivotAlong)));
    /** The rate brought down before contact. */
    public static final AnswerTable<ThrusterResult.Profiled> SLOWED = within("The same with the rate brought down"
            + " before contact.", List.of(
            of("greatest_brake_kN", "greatest thrust to brake", Unit.KN, ThrusterResult.Profiled::greatestBrake),
            of("propellant_kg", "propellant", Unit.KG, ThrusterResult.Profiled::propellant),
            of("seconds", "time", Unit.S, ThrusterResult.Profiled::time),
            of("contact_m_s", "speed at contact", Unit.M_S, ThrusterResult.Profiled::contactSpeed)));
    /** Factors of a lowering by thrusters. */
    public static final AnswerTable<ThrusterResult> MARGINS = within("Thrust over what is required.", List.of(
            of("thrust", "thrust over what is required", Unit.ONE, ThrusterResult::thrustMargin),
            of("one_thruster_out", "the same with one out and its counterpart off", Unit.ONE,
                    ThrusterResult::oneOutMargin)));
    /** A lowering by side thrusters; keys that a lowering by lines has too mean the same. */
    public static final AnswerTable<ThrusterResult> THRUSTERS = new AnswerTable<>("hulls[].side_thrusters",
            "A lowering by side thrusters.", "", List.of(
            of("balance_tilt_deg", "balance tilt", Unit.DEG, ThrusterResult::balanceTilt),
            of("greatest_pull_over_kN", "greatest thrust to push over", Unit.KN, ThrusterResult::greatestPush),
            of("greatest_brake_kN", "greatest thrust to brake", Unit.KN, ThrusterResult::greatestBrake),
            of("at_tilt_deg", "at tilt", Unit.DEG, ThrusterResult::atTilt),
            of("propellant_kg", "propellant", Unit.KG, ThrusterResult::propellant),
            of("seconds", "time from standing to lying", Unit.S, ThrusterResult::time),
            count("least_count", "least number of thrusters of this size, a quarter in hand",
                    ThrusterResult::leastCount),
            maybe("abort_tilt_deg", "one side lost cannot be held beyond", Unit.DEG, ThrusterResult::abortTilt),
            of("friction_needed", "greatest friction factor required at the pivot", Unit.ONE,
                    ThrusterResult::frictionNeeded),
            of("touchdown_m_s", "speed of the far end at contact", Unit.M_S, ThrusterResult::touchdownSpeed),
            of("touchdown_kJ", "energy at contact", Unit.KJ, ThrusterResult::touchdownEnergy),
            of("free_fall_m_s", "speed of the far end if thrust fails at balance", Unit.M_S,
                    ThrusterResult::freeFallSpeed))).with(List.of(
            Part.one("factors", MARGINS, r -> r),
            Part.one("slowed_before_contact", SLOWED, ThrusterResult::profiled),
            Part.all("tilts", THRUST, ThrusterResult::states)));
    /** A landing on the side. */
    public static final AnswerTable<LyingLanding> LANDING = new AnswerTable<>("hulls[].landing",
            "A landing on the side.", "", List.of(
            of("hover_kN", "thrust to hover", Unit.KN, LyingLanding::hoverThrust),
            of("with_a_quarter_in_hand_kN", "thrust with a quarter in hand", Unit.KN, LyingLanding::thrustInHand),
            of("hover_propellant_kg", "propellant for a hover of 20 s", Unit.KG, LyingLanding::hoverPropellant),
            of("touchdown_energy_kJ", "energy at touchdown", Unit.KJ, LyingLanding::touchdownEnergy),
            of("equivalent_drop_m", "fall to the same speed", Unit.M, LyingLanding::equivalentDrop).digits(3),
            of("end_rise_m", "far end over the ground as the base touches", Unit.M, LyingLanding::endRise),
            of("slap_m_s", "speed at which the far end then comes down", Unit.M_S, LyingLanding::slapSpeed)));
    /** One landing inside the dispersion. */
    public static final AnswerTable<LandingDisc.Spot> SPOTS = within("Landings inside the dispersion.", List.of(
            of("ahead_m", "ahead", Unit.M, LandingDisc.Spot::ahead).digits(1),
            of("left_m", "left", Unit.M, LandingDisc.Spot::left).digits(1),
            of("eased_line_each_kN", "one line, eased by a swing", Unit.KN, (LandingDisc.Spot s) ->
                    s.eased().tension()),
            of("worst_line_each_kN", "at the worst swing and shift", Unit.KN, (LandingDisc.Spot s) ->
                    s.worst().tension()),
            of("worst_at_tilt_deg", "at tilt", Unit.DEG, (LandingDisc.Spot s) -> s.worst().tilt()),
            of("worst_swing_deg", "worst swing", Unit.DEG, (LandingDisc.Spot s) -> s.worst().swing()).filesOnly(),
            of("worst_centre_of_mass_shift_m", "worst shift of the centre of mass", Unit.M, (LandingDisc.Spot s) ->
                    s.worst().centre()).filesOnly(),
            of("lines_out_of_plane_deg", "lines out of plane", Unit.DEG, LandingDisc.Spot::turn),
            of("lines_across_kN", "lines across", Unit.KN, LandingDisc.Spot::side),
            flag("shoe_lifts", "a shoe lifts", LandingDisc.Spot::lifts)));
    /** Landings all over the dispersion. */
    public static final AnswerTable<LandingDisc> LANDINGS = new AnswerTable<>("hulls[].landings",
            "Landings all over the dispersion, the gear where it was set out.", "", List.of(
            of("dispersion_m", "dispersion", Unit.M, LandingDisc::radius),
            of("swing_deg", "swing tried", Unit.DEG, LandingDisc::swing),
            of("centre_of_mass_shift_m", "shift of the centre of mass tried", Unit.M, LandingDisc::centre),
            words("worst", "worst landing", (LandingDisc d) -> d.worst().where()))).with(List.of(
            Part.all("tried", SPOTS, LandingDisc::spots)));
    /** A hull at rest on the ground as it is, before cover. */
    public static final AnswerTable<RestPose> REST = new AnswerTable<>("hulls[].rest",
            "At rest on the ground as it is, before cover.", "", List.of(
            list("contacts_along_m", "touches the ground at, from the base plane (m)", RestPose::contacts).digits(1),
            of("pitch_deg", "pitch, far end down", Unit.DEG, RestPose::pitch),
            of("cross_slope_deg", "cross slope, falling to the left", Unit.DEG, RestPose::crossSlope),
            words("roll", "roll", (RestPose r) -> r.roll().word()),
            of("stays_up_to_deg", "stays unchocked up to a cross slope of", Unit.DEG, RestPose::staysSurely),
            of("rolls_from_deg", "rolls unless chocked from a cross slope of", Unit.DEG, RestPose::rollsSurely),
            of("rock_margin_m", "centre of mass to the nearer contact", Unit.M, RestPose::rockMargin),
            of("base_gap_m", "gap under the base edge", Unit.M, RestPose::baseGap),
            of("greatest_gap_m", "greatest gap under the belly", Unit.M, RestPose::greatestGap),
            of("sinkage_m", "sinkage, load spread over the length", Unit.M, RestPose::sinkage).digits(3)));
    /** One means of laying a hull down. */
    public static final AnswerTable<MeansRow> MEANS = within("All means side by side; gear mass is good to a factor"
            + " of two, for ranking only.", List.of(
            words("means", "means", MeansRow::means), flag("possible", "possible as given", MeansRow::possible),
            of("greatest_load_kN", "greatest load", Unit.KN, MeansRow::greatestLoad),
            words("load_on", "on", MeansRow::loadOn), of("gear_t", "gear", Unit.T, MeansRow::gearMass),
            list("gear", "made of", MeansRow::gear).filesOnly(),
            words("preparation", "the ground requires", MeansRow::preparation).filesOnly(),
            count("hold_points", "stops", MeansRow::holdPoints), of("hours", "move", Unit.H, MeansRow::duration),
            words("governs", "what governs", MeansRow::governs).filesOnly(),
            list("against", "against it", MeansRow::against).filesOnly()));
    /** Loads if the payload were another. */
    public static final AnswerTable<PayloadPoint> PAYLOAD = within("Loads if mass or centre of mass were another.",
            List.of(
            of("mass_t", "mass", Unit.T, PayloadPoint::mass),
            of("centre_of_mass_from_base_m", "centre of mass", Unit.M, PayloadPoint::centre),
            of("balance_tilt_deg", "balance", Unit.DEG, PayloadPoint::balanceTilt).digits(1),
            of("line_each_kN", "one line", Unit.KN, PayloadPoint::lineEach),
            of("pull_over_kN", "pull-over", Unit.KN, PayloadPoint::pullOver),
            of("pole_each_kN", "one pole", Unit.KN, PayloadPoint::poleEach),
            of("pivot_along_kN", "pivot, along ground", Unit.KN, PayloadPoint::pivotAlong).filesOnly(),
            maybe("line_factor", "factor of safety, line", Unit.ONE, PayloadPoint::lineFactor),
            flag("refused", "refused", PayloadPoint::refused)));
    /** How each hull comes to lie, by whatever means the plan names. */
    public static final AnswerTable<HullAssessment> SUMMARY = within("How each hull comes to lie.", List.of(
            words("id", "hull", (HullAssessment h) -> h.hull().id()),
            words("means", "by", (HullAssessment h) -> h.hull().lowering().map(g -> g.means().word())
                    .orElse(h.hull().arrival().word())),
            of("slope_along_deg", "slope along", Unit.DEG, (HullAssessment h) -> h.lying().map(LyingPose::slopeAlong)
                    .orElse(Double.NaN)),
            of("slope_across_deg", "slope across", Unit.DEG, (HullAssessment h) -> h.lying()
                    .map(LyingPose::slopeAcross).orElse(Double.NaN)),
            of("balance_tilt_deg", "balance tilt", Unit.DEG, (HullAssessment h) -> byMeans(h,
                    LoweringResult::balanceTilt, ThrusterResult::balanceTilt)),
            of("hand_over_tilt_deg", "hand-over tilt", Unit.DEG, (HullAssessment h) -> byMeans(h,
                    LoweringResult::handOverTilt, t -> Double.NaN)),
            of("greatest_pull_over_kN", "pull-over", Unit.KN, (HullAssessment h) -> byMeans(h,
                    LoweringResult::greatestPullOver, ThrusterResult::greatestPush)),
            of("greatest_line_tension_kN", "line tension or thrust", Unit.KN, (HullAssessment h) -> byMeans(h,
                    LoweringResult::greatestLineTension, ThrusterResult::greatestBrake)),
            of("at_tilt_deg", "at tilt", Unit.DEG, (HullAssessment h) -> byMeans(h, LoweringResult::atTilt,
                    ThrusterResult::atTilt)),
            words("governing", "governing part", (HullAssessment h) -> byThrusters(h) ? "thrust"
                    : h.laydown().flatMap(Laydown::lowering).map(LoweringResult::governingPart).orElse("-"))));
    /** All means and payloads of a hull. */
    public static final AnswerTable<Alternatives> COMPARED = new AnswerTable<>("hulls[]", "A hull.", "", List.of(
            said("not_compared", "why other means are not compared", (Alternatives a) ->
                    Optional.of(a.unusable()).filter(u -> !u.isEmpty())))).with(List.of(
            Part.all("means", MEANS, Alternatives::comparison), Part.all("by_mass", PAYLOAD, Alternatives::byMass),
            Part.all("by_centre_of_mass", PAYLOAD, Alternatives::byCentre)));
    /** Poles that fit the winches. */
    public static final AnswerTable<Suggestion> POLES = within("Poles that fit the winches.", List.of(
            words("goal", "goal", (Suggestion s) -> s.goal().words()),
            of("height_m", "height", Unit.M, Suggestion::height),
            of("behind_pivot_m", "behind the pivot", Unit.M, Suggestion::behindPivot),
            of("greatest_line_tension_kN", "greatest line tension", Unit.KN, Suggestion::greatestTension),
            of("pole_each_kN", "one pole", Unit.KN, Suggestion::greatestThrust),
            of("wall_mm", "wall", Unit.MM, Suggestion::wall), of("poles_t", "poles", Unit.T, Suggestion::poleMass)));
    /** Suggested poles of a hull. */
    public static final AnswerTable<Suggestions> SUGGESTED = new AnswerTable<>("hulls[].suggestions",
            "Suggested poles.", "", List.of(list("words", "in words", Suggestions::words))).with(List.of(
            Part.all("poles", POLES, Suggestions::found)));

    private LoweringAnswers() {
    }

    /** A factor of safety with other soil, for files: one number a cell. */
    static <T> Figure<T> bySoil(String key, String heading, Function<T, Optional<SoilSensitivity>> soil,
            ToDoubleFunction<SoilSensitivity> factor) {
        return Figure.<T>maybe(key, heading, Unit.ONE, of -> soil.apply(of).map(s -> OptionalDouble.of(
                factor.applyAsDouble(s))).orElse(OptionalDouble.empty())).filesOnly();
    }

    private static boolean byThrusters(HullAssessment hull) {
        return hull.hull().lowering().filter(g -> g.means() == LoweringGear.Means.SIDE_THRUSTERS).isPresent();
    }

    private static double byMeans(HullAssessment hull, ToDoubleFunction<LoweringResult> lines,
            ToDoubleFunction<ThrusterResult> thrusters) {
        return byThrusters(hull) ? hull.laydown().flatMap(Laydown::thrusters).map(thrusters::applyAsDouble)
                .orElse(Double.NaN) : hull.laydown().flatMap(Laydown::lowering).map(lines::applyAsDouble)
                .orElse(Double.NaN);
    }

    /**
     * A row of a chain.
     *
     * @param chain the chain
     * @param row   one of its rows
     */
    public record InChain(Chain chain, ChainRow row) {
        /**
         * Rows of a chain.
         *
         * @param chain the chain
         * @param rows  some of its rows
         * @return the same rows, each with its chain
         */
        public static List<InChain> of(Chain chain, List<ChainRow> rows) {
            return rows.stream().map(row -> new InChain(chain, row)).toList();
        }

        /**
         * The factor with other soil.
         *
         * @return empty where the part does not hang on the soil
         */
        public Optional<SoilSensitivity> soil() {
            return chain.soil(row);
        }
    }

    /** A place as east, north and height. */
    static List<Double> place(Vec3 place) {
        return List.of(place.x(), place.y(), place.z());
    }
}
