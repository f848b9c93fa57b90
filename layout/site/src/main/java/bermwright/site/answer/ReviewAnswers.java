// SPDX-License-Identifier: Apache-2.0
package bermwright.site.answer;

import static bermwright.site.answer.AnswerTable.within;
import static bermwright.site.answer.Figure.flag;
import static bermwright.site.answer.Figure.maybe;
import static bermwright.site.answer.Figure.of;
import static bermwright.site.answer.Figure.said;
import static bermwright.site.answer.Figure.words;

import bermwright.lowering.chain.EdgeState;
import bermwright.lowering.review.CrossSlope;
import bermwright.lowering.review.CrossState;
import bermwright.lowering.review.LineReview;
import bermwright.lowering.review.LiquidReview;
import bermwright.lowering.review.Loss;
import bermwright.lowering.review.MotionReview;
import bermwright.lowering.review.MotionState;
import bermwright.lowering.review.Review;
import bermwright.lowering.strength.HullBeam;
import bermwright.site.answer.AnswerTable.Part;
import java.util.List;

/** Tables of a lowering by lines under review: lines, motion, pivot, cross slope, liquid, and single failures. */
public final class ReviewAnswers {
    /** Degrees between the tilts of a cross slope that are told. */
    public static final double CROSS_STEP_DEG = 5;
    /** Changes between sun and shade. */
    public static final AnswerTable<LineReview.LightChange> LIGHT = within("Changes between sun and shade.", List.of(
            of("after_h", "after", Unit.H, LineReview.LightChange::time),
            of("tilt_deg", "tilt", Unit.DEG, LineReview.LightChange::tilt),
            words("into", "into", (LineReview.LightChange c) -> c.intoShade() ? "shade" : "sun"),
            of("length_change_m", "change of length", Unit.M, LineReview.LightChange::shortening).digits(3),
            of("line_each_kN", "one line", Unit.KN, LineReview.LightChange::held),
            maybe("gain_kN", "gained", Unit.KN, LineReview.LightChange::gain)));
    /** Lines paid out unequally. */
    public static final AnswerTable<LineReview.Mismatch> MISMATCH = within("Lines paid out unequally.", List.of(
            of("mismatch_m", "unequal pay-out taken", Unit.M, LineReview.Mismatch::mismatch).digits(3),
            of("difference_kN", "difference of two lines with that", Unit.KN, LineReview.Mismatch::difference),
            of("hardest_kN", "most loaded line with that", Unit.KN, LineReview.Mismatch::hardest),
            flag("other_slack", "the other line slack with that", LineReview.Mismatch::slack),
            of("yaw_kN_m", "yaw moment on the pivot with that", Unit.KNM, LineReview.Mismatch::yawMoment),
            of("roll_kN_m", "roll moment with that", Unit.KNM, LineReview.Mismatch::rollMoment),
            maybe("side_pull_kN", "pull across the plane with that", Unit.KN, LineReview.Mismatch::sidePull)));
    /** The lines. */
    public static final AnswerTable<LineReview> LINES = within("The lines.", List.of(
            of("sag_at_rest_m", "sag of a lowering line at rest", Unit.M, LineReview::sag).digits(3),
            of("sag_at_hand_over_m", "sag of a lowering line at hand-over", Unit.M, LineReview::sagAtHandOver)
                    .digits(3),
            of("pretension_kN", "pretension of one line at hand-over", Unit.KN, LineReview::pretension),
            maybe("stretch_at_rest_m", "stretch of one line at rest", Unit.M, LineReview::stretch).digits(3),
            maybe("stiffness_share_at_hand_over", "stiffness of the sagging line at hand-over, of a straight one",
                    Unit.PERCENT, LineReview::stiffnessShare),
            of("paid_out_m", "line paid out from balance to rest", Unit.M, LineReview::paidOut),
            of("longest_m", "longest line, winch to lug", Unit.M, LineReview::longest),
            of("sheave_load_kN", "load of one head sheave", Unit.KN, LineReview::sheaveLoad),
            of("lateral_at_head_kN", "pull of one line across the plane", Unit.KN, LineReview::lateralAtHead),
            of("cooling_K", "how much colder a line in shade is", Unit.K, LineReview::cooling),
            maybe("gain_when_cooled_kN", "tension gained by a held line that cools so", Unit.KN,
                    LineReview::coolingGain),
            of("shorter_when_cooled_m", "shorter by, when it cools so", Unit.M, LineReview::coolingShortening)
                    .digits(3))).with(List.of(
            Part.all("light_changes", LIGHT, LineReview::lightChanges),
            Part.one("pay_out_mismatch", MISMATCH, LineReview::mismatch)));
    /** The ground under the pivot tilt by tilt. */
    public static final AnswerTable<EdgeState> EDGE = within("The ground under the pivot, tilt by tilt.", List.of(
            of("tilt_deg", "tilt", Unit.DEG, EdgeState::tilt), of("sinkage_m", "sinkage", Unit.M, EdgeState::sinkage),
            of("pressure_kPa", "pressure", Unit.KPA, EdgeState::pressure),
            of("bearing_kPa", "bearing capacity", Unit.KPA, EdgeState::bearing),
            of("friction_used", "friction used", Unit.PERCENT, EdgeState::frictionUsed),
            of("hold_needed_kN", "hold required", Unit.KN, EdgeState::holdNeeded),
            of("side_pull_kN", "pull across", Unit.KN, EdgeState::sidePull),
            of("factor", "factor of safety", Unit.ONE, (EdgeState e) -> e.factor()))).with(List.of(
            Part.one("soil", LoweringAnswers.SOIL, EdgeState::soil)));
    /** A hull that hangs on its lines across the slope. */
    public static final AnswerTable<CrossState.Sway> SWAY = within("How it sways by itself.", List.of(
            flag("rests_by_itself", "comes to rest by itself", CrossState.Sway::finds),
            of("sway_deg", "sways by itself to", Unit.DEG, (CrossState.Sway s) -> found(s, s.angle())),
            of("far_end_aside_m", "far end then aside", Unit.M, (CrossState.Sway s) -> found(s, s.farEnd())),
            of("swayed_line_kN", "most loaded line then", Unit.KN, (CrossState.Sway s) -> found(s, s.hardest()))));
    /** A hull held still on the cross slope, tilt by tilt. */
    public static final AnswerTable<CrossState> CROSS_TILTS = within("Held still on the cross slope, lower and upper"
            + " side; below hand-over the pull-over line stands as both lines, and a rim as the lower shoe.", List.of(
            of("tilt_deg", "tilt", Unit.DEG, CrossState::tilt),
            words("line", "line at work", (CrossState c) -> c.lowering() ? "lowering" : "pull-over").filesOnly(),
            of("lower_line_kN", "lower line", Unit.KN, CrossState::lower),
            of("upper_line_kN", "upper line", Unit.KN, CrossState::upper),
            of("harder_pole_kN", "more loaded pole", Unit.KN, CrossState::pole).filesOnly(),
            of("lower_shoe_kN", "lower shoe", Unit.KN, (CrossState c) -> c.pivot().lowerShoe()),
            of("upper_shoe_kN", "upper shoe", Unit.KN, (CrossState c) -> c.pivot().upperShoe()),
            of("pivot_up_kN", "pivot, square to ground", Unit.KN, (CrossState c) -> c.pivot().up()).filesOnly(),
            of("pivot_along_kN", "pivot, along ground", Unit.KN, (CrossState c) -> c.pivot().along()).filesOnly(),
            of("pivot_across_kN", "pivot across", Unit.KN, (CrossState c) -> c.pivot().side()),
            of("hold_needed_kN", "hold required", Unit.KN, (CrossState c) -> c.pivot().holdNeeded()).filesOnly(),
            of("side_line_kN", "side line", Unit.KN, CrossState::sideLine),
            words("held_by", "kept in its plane by", (CrossState c) -> c.held().word()),
            said("sway", "sways by itself to", (CrossState c) -> c.sway().map(s -> s.finds()
                    ? SWAY.figures().get(1).text(s) + "°" : "rolls away")).filesOnly())).with(List.of(
            Part.maybe("", SWAY, CrossState::sway)));
    private static final AnswerTable<CrossState> HARDEST = within("Where a line is most loaded.", List.of(
            of("tilt_deg", "tilt of the most loaded line on the cross slope", Unit.DEG, CrossState::tilt),
            of("hardest_kN", "most loaded line on the cross slope", Unit.KN, CrossState::hardest)));
    private static final AnswerTable<CrossState> UNEQUAL = within("Where two lines differ most.", List.of(
            of("more_on_one_line_kN", "more on one line than on the other", Unit.KN, (CrossState c) ->
                    Math.abs(c.lower() - c.upper())),
            flag("other_slack", "the other line slack then", CrossState::isSlack)));
    /** The cross slope. */
    public static final AnswerTable<CrossSlope> CROSS = within("What a cross slope does.", List.of(
            of("side_force_kN", "weight pulling across the plane", Unit.KN, CrossSlope::sideForce),
            of("weight_overstated_share", "weight square to the ground overstated by", Unit.PERCENT,
                    CrossSlope::overstated),
            of("side_line_kN", "side line at the lugs", Unit.KN, (CrossSlope c) -> c.mostSideLine().sideLine())))
            .with(List.of(Part.maybe("", HARDEST, CrossSlope::hardest), Part.maybe("", UNEQUAL,
            CrossSlope::mostUnequal), Part.all("tilts", CROSS_TILTS, c -> c.every(CROSS_STEP_DEG))));
    /** Liquid, tilt by tilt. */
    public static final AnswerTable<LiquidReview.State> LIQUID_TILTS = within("Liquid, tilt by tilt.", List.of(
            of("tilt_deg", "tilt at which liquid loads a line most", Unit.DEG, LiquidReview.State::tilt),
            of("centre_of_mass_along_m", "centre of mass then nearer the far end", Unit.M, LiquidReview.State::along),
            of("centre_of_mass_off_axis_m", "centre of mass then nearer the lay-down side", Unit.M,
                    LiquidReview.State::off),
            of("held_line_each_kN", "most loaded line with the liquid held", Unit.KN, LiquidReview.State::held),
            of("free_line_each_kN", "most loaded line with the liquid free in the hull's own cylinder, a bound",
                    Unit.KN, LiquidReview.State::free)));
    /** Liquid. */
    public static final AnswerTable<LiquidReview> LIQUID = within("Liquid in the hull.", List.of(
            of("mass_t", "liquid", Unit.T, LiquidReview::mass),
            of("balance_tilt_deg", "balance tilt with the liquid free", Unit.DEG, LiquidReview::balance)))
            .with(List.of(Part.all("tilts", LIQUID_TILTS, LiquidReview::states)));
    /** The hull as a beam. */
    public static final AnswerTable<HullBeam> BEAM = within("The hull as a beam between base and lugs.", List.of(
            of("lug_load_kN", "load of the lugs", Unit.KN, HullBeam::lugLoad),
            of("between_kN_m", "bending of the hull between base and lugs", Unit.KNM, HullBeam::between),
            of("at_lugs_kN_m", "bending of the hull at the lugs", Unit.KNM, HullBeam::atLugs),
            of("best_lug_m", "lugs that bend it least, from the base", Unit.M, HullBeam::bestLug)));
    /** Motion, tilt by tilt. */
    public static final AnswerTable<MotionState> MOTION_TILTS = within("Stops and failures, tilt by tilt.", List.of(
            of("tilt_deg", "tilt", Unit.DEG, MotionState::tilt).digits(1),
            of("stop_factor", "winch stops dead, over held still", Unit.ONE, MotionState::stopFactor),
            of("stop_each_kN", "one line then", Unit.KN, MotionState::stopEach),
            of("start_extra_kN", "more at the start", Unit.KN, MotionState::startExtra).filesOnly(),
            of("snatch_each_kN", "0.1 m slack comes taut", Unit.KN, MotionState::snatchEach),
            of("run_away_m_s", "brakes fail: speed", Unit.M_S, MotionState::runAwaySpeed),
            of("run_away_MJ", "energy", Unit.MJ, MotionState::runAwayEnergy).digits(2)));
    /** Motion. */
    public static final AnswerTable<MotionReview> MOTION = within("Motion, brakes and a free topple.", List.of(
            of("hours", "time of the lowering at the set rate", Unit.H, MotionReview::duration),
            of("brake_heat_MJ", "heat of all brakes together", Unit.MJ, MotionReview::brakeHeat).digits(2),
            of("mean_brake_power_W", "mean power of all brakes", Unit.WATT, MotionReview::meanBrakePower),
            of("contact_speed_m_s", "speed of the far end at contact, set rate", Unit.M_S, MotionReview::contactSpeed)
                    .digits(3),
            of("contact_energy_J", "energy at contact, set rate", Unit.J, MotionReview::contactEnergy),
            of("free_topple_speed_m_s", "speed of the far end in a free topple", Unit.M_S, MotionReview::freeSpeed),
            of("free_topple_energy_MJ", "energy of a free topple", Unit.MJ, MotionReview::freeEnergy).digits(2),
            of("free_topple_s", "time of a free topple from one degree past balance", Unit.S, MotionReview::freeTime)
                    .digits(1),
            of("run_on_deg_s", "rate at which 0.1 m of slack at hand-over comes taut", Unit.DEG_S,
                    MotionReview::runOnRate))).with(List.of(Part.all("tilts", MOTION_TILTS, MotionReview::states)));
    /** Single failures. */
    public static final AnswerTable<Loss> LOSSES = within("One thing lost at a time.", List.of(
            words("lost", "lost", Loss::lost), of("tilt_deg", "at tilt", Unit.DEG, Loss::tilt),
            words("outcome", "outcome", (Loss l) -> l.outcome().word()),
            of("demand_kN", "demand on what is left", Unit.KN, Loss::demand).filesOnly(),
            of("capacity_kN", "its capacity", Unit.KN, Loss::capacity).filesOnly(),
            of("speed_m_s", "comes down at", Unit.M_S, Loss::speed).filesOnly(),
            words("words", "what then", Loss::words)));
    /** A lowering by lines under review. */
    public static final AnswerTable<Review> REVIEW = new AnswerTable<>("hulls[].review",
            "A lowering by lines under review.", "", List.<Figure<Review>>of()).with(List.of(
            Part.one("lines", LINES, Review::lines), Part.all("pivot_edge", EDGE, Review::edge),
            Part.maybe("cross_slope", CROSS, Review::cross), Part.maybe("liquid", LIQUID, Review::liquid),
            Part.maybe("hull_as_a_beam", BEAM, Review::beam), Part.one("motion", MOTION, Review::motion),
            Part.all("one_thing_lost", LOSSES, Review::losses)));
    /** The single figures of a review, without what is told tilt by tilt. */
    public static final AnswerTable<Review> FIGURES = REVIEW.with(List.of(Part.maybe("", LIQUID_TILTS,
            (Review r) -> r.liquid().flatMap(LiquidReview::worst))));

    private ReviewAnswers() {
    }

    private static double found(CrossState.Sway sway, double value) {
        return sway.finds() ? value : Double.NaN;
    }
}
