// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.chain.EdgeState;
import bermwright.lowering.rest.RestPose;
import bermwright.lowering.review.LineReview;
import bermwright.lowering.review.LiquidReview;
import bermwright.lowering.review.Loss;
import bermwright.lowering.review.MotionReview;
import bermwright.lowering.review.MotionState;
import bermwright.lowering.review.Review;
import bermwright.lowering.strength.HullBeam;
import bermwright.lowering.thrust.LyingLanding;
import bermwright.site.laydown.Laydown;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** A laying down under review, by thrusters, landing and at rest, for programs. */
final class ReviewPage {
    private ReviewPage() {
    }

    static void put(ObjectNode hull, Laydown laydown) {
        laydown.review().ifPresent(r -> review(hull.putObject("review"), r));
        laydown.thrusters().ifPresent(t -> ThrusterPage.put(hull.putObject("side_thrusters"), t));
        laydown.landing().ifPresent(l -> landing(hull.putObject("landing"), l));
        laydown.disc().ifPresent(d -> DiscPage.put(hull.putObject("landings"), d));
        laydown.rest().ifPresent(r -> rest(hull.putObject("rest"), r));
    }

    private static void review(ObjectNode entry, Review review) {
        lines(entry.putObject("lines"), review.lines());
        ArrayNode edge = entry.putArray("pivot_edge");
        for (EdgeState e : review.edge()) {
            ObjectNode row = edge.addObject();
            JsonPage.put(row, "tilt_deg", InUnits.degrees(e.tilt()));
            JsonPage.put(row, "sinkage_m", e.sinkage());
            JsonPage.put(row, "pressure_kPa", InUnits.kilopascals(e.pressure()));
            JsonPage.put(row, "bearing_kPa", InUnits.kilopascals(e.bearing()));
            JsonPage.put(row, "friction_used", e.frictionUsed());
            JsonPage.put(row, "hold_needed_kN", InUnits.kilonewtons(e.holdNeeded()));
            JsonPage.put(row, "side_pull_kN", InUnits.kilonewtons(e.sidePull()));
            JsonPage.put(row, "factor", e.factor());
            SoilPage.put(row.putObject("soil"), e.soil());
        }
        review.cross().ifPresent(c -> CrossPage.put(entry.putObject("cross_slope"), c));
        review.liquid().ifPresent(l -> liquid(entry.putObject("liquid"), l));
        review.beam().ifPresent(b -> beam(entry.putObject("hull_as_a_beam"), b));
        motion(entry.putObject("motion"), review.motion());
        ArrayNode losses = entry.putArray("one_thing_lost");
        for (Loss loss : review.losses()) {
            ObjectNode row = losses.addObject().put("lost", loss.lost());
            JsonPage.put(row, "tilt_deg", InUnits.degrees(loss.tilt()));
            row.put("outcome", loss.outcome().word());
            JsonPage.put(row, "demand_kN", InUnits.kilonewtons(loss.demand()));
            JsonPage.put(row, "capacity_kN", InUnits.kilonewtons(loss.capacity()));
            JsonPage.put(row, "speed_m_s", loss.speed());
            row.put("words", loss.words());
        }
    }

    private static void lines(ObjectNode entry, LineReview lines) {
        JsonPage.put(entry, "sag_at_rest_m", lines.sag());
        JsonPage.put(entry, "sag_at_hand_over_m", lines.sagAtHandOver());
        JsonPage.put(entry, "pretension_kN", InUnits.kilonewtons(lines.pretension()));
        JsonPage.put(entry, "stretch_at_rest_m", lines.stretch());
        JsonPage.put(entry, "stiffness_share_at_hand_over", lines.stiffnessShare());
        JsonPage.put(entry, "paid_out_m", lines.paidOut());
        JsonPage.put(entry, "longest_m", lines.longest());
        JsonPage.put(entry, "sheave_load_kN", InUnits.kilonewtons(lines.sheaveLoad()));
        JsonPage.put(entry, "lateral_at_head_kN", InUnits.kilonewtons(lines.lateralAtHead()));
        JsonPage.put(entry, "cooling_K", lines.cooling());
        JsonPage.put(entry, "gain_when_cooled_kN", InUnits.kilonewtons(lines.coolingGain()));
        JsonPage.put(entry, "shorter_when_cooled_m", lines.coolingShortening());
        ArrayNode light = entry.putArray("light_changes");
        for (LineReview.LightChange change : lines.lightChanges()) {
            ObjectNode row = light.addObject();
            JsonPage.put(row, "after_h", InUnits.hours(change.time()));
            JsonPage.put(row, "tilt_deg", InUnits.degrees(change.tilt()));
            row.put("into", change.intoShade() ? "shade" : "sun");
            JsonPage.put(row, "length_change_m", change.shortening());
            JsonPage.put(row, "line_each_kN", InUnits.kilonewtons(change.held()));
            JsonPage.put(row, "gain_kN", InUnits.kilonewtons(change.gain()));
        }
        ObjectNode mismatch = entry.putObject("pay_out_mismatch");
        JsonPage.put(mismatch, "mismatch_m", lines.mismatch().mismatch());
        JsonPage.put(mismatch, "difference_kN", InUnits.kilonewtons(lines.mismatch().difference()));
        JsonPage.put(mismatch, "hardest_kN", InUnits.kilonewtons(lines.mismatch().hardest()));
        mismatch.put("other_slack", lines.mismatch().slack());
        JsonPage.put(mismatch, "yaw_kN_m", InUnits.kilonewtons(lines.mismatch().yawMoment()));
        JsonPage.put(mismatch, "roll_kN_m", InUnits.kilonewtons(lines.mismatch().rollMoment()));
        JsonPage.put(mismatch, "side_pull_kN", InUnits.kilonewtons(lines.mismatch().sidePull()));
    }

    private static void liquid(ObjectNode entry, LiquidReview liquid) {
        JsonPage.put(entry, "mass_t", InUnits.tonnes(liquid.mass()));
        JsonPage.put(entry, "balance_tilt_deg", InUnits.degrees(liquid.balance()));
        ArrayNode tilts = entry.putArray("tilts");
        for (LiquidReview.State s : liquid.states()) {
            ObjectNode row = tilts.addObject();
            JsonPage.put(row, "tilt_deg", InUnits.degrees(s.tilt()));
            JsonPage.put(row, "centre_of_mass_along_m", s.along());
            JsonPage.put(row, "centre_of_mass_off_axis_m", s.off());
            JsonPage.put(row, "held_line_each_kN", InUnits.kilonewtons(s.held()));
            JsonPage.put(row, "free_line_each_kN", InUnits.kilonewtons(s.free()));
        }
    }

    private static void beam(ObjectNode entry, HullBeam b) {
        JsonPage.put(entry, "lug_load_kN", InUnits.kilonewtons(b.lugLoad()));
        JsonPage.put(entry, "between_kN_m", InUnits.kilonewtons(b.between()));
        JsonPage.put(entry, "at_lugs_kN_m", InUnits.kilonewtons(b.atLugs()));
        JsonPage.put(entry, "best_lug_m", b.bestLug());
    }

    private static void motion(ObjectNode entry, MotionReview motion) {
        JsonPage.put(entry, "hours", InUnits.hours(motion.duration()));
        JsonPage.put(entry, "brake_heat_MJ", InUnits.megajoules(motion.brakeHeat()));
        JsonPage.put(entry, "mean_brake_power_W", motion.meanBrakePower());
        JsonPage.put(entry, "contact_speed_m_s", motion.contactSpeed());
        JsonPage.put(entry, "contact_energy_J", motion.contactEnergy());
        JsonPage.put(entry, "free_topple_speed_m_s", motion.freeSpeed());
        JsonPage.put(entry, "free_topple_energy_MJ", InUnits.megajoules(motion.freeEnergy()));
        JsonPage.put(entry, "free_topple_s", motion.freeTime());
        JsonPage.put(entry, "run_on_deg_s", InUnits.degrees(motion.runOnRate()));
        ArrayNode tilts = entry.putArray("tilts");
        for (MotionState s : motion.states()) {
            ObjectNode row = tilts.addObject();
            JsonPage.put(row, "tilt_deg", InUnits.degrees(s.tilt()));
            JsonPage.put(row, "stop_factor", s.stopFactor());
            JsonPage.put(row, "stop_each_kN", InUnits.kilonewtons(s.stopEach()));
            JsonPage.put(row, "start_extra_kN", InUnits.kilonewtons(s.startExtra()));
            JsonPage.put(row, "snatch_each_kN", InUnits.kilonewtons(s.snatchEach()));
            JsonPage.put(row, "run_away_m_s", s.runAwaySpeed());
            JsonPage.put(row, "run_away_MJ", InUnits.megajoules(s.runAwayEnergy()));
        }
    }

    private static void landing(ObjectNode entry, LyingLanding landing) {
        JsonPage.put(entry, "hover_kN", InUnits.kilonewtons(landing.hoverThrust()));
        JsonPage.put(entry, "with_a_quarter_in_hand_kN", InUnits.kilonewtons(landing.thrustInHand()));
        JsonPage.put(entry, "hover_propellant_kg", landing.hoverPropellant());
        JsonPage.put(entry, "touchdown_energy_kJ", InUnits.kilojoules(landing.touchdownEnergy()));
        JsonPage.put(entry, "equivalent_drop_m", landing.equivalentDrop());
        JsonPage.put(entry, "end_rise_m", landing.endRise());
        JsonPage.put(entry, "slap_m_s", landing.slapSpeed());
    }

    private static void rest(ObjectNode entry, RestPose rest) {
        rest.contacts().forEach(entry.putArray("contacts_along_m")::add);
        JsonPage.put(entry, "pitch_deg", InUnits.degrees(rest.pitch()));
        JsonPage.put(entry, "cross_slope_deg", InUnits.degrees(rest.crossSlope()));
        entry.put("roll", rest.roll().word());
        JsonPage.put(entry, "stays_up_to_deg", InUnits.degrees(rest.staysSurely()));
        JsonPage.put(entry, "rolls_from_deg", InUnits.degrees(rest.rollsSurely()));
        JsonPage.put(entry, "base_gap_m", rest.baseGap());
        JsonPage.put(entry, "greatest_gap_m", rest.greatestGap());
        JsonPage.put(entry, "sinkage_m", rest.sinkage());
    }
}
