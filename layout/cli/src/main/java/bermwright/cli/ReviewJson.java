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
final class ReviewJson {
    private ReviewJson() {
    }

    static void put(ObjectNode hull, Laydown laydown) {
        laydown.review().ifPresent(r -> review(hull.putObject("review"), r));
        laydown.thrusters().ifPresent(t -> ThrusterJson.put(hull.putObject("side_thrusters"), t));
        laydown.landing().ifPresent(l -> landing(hull.putObject("landing"), l));
        laydown.disc().ifPresent(d -> DiscJson.put(hull.putObject("landings"), d));
        laydown.rest().ifPresent(r -> rest(hull.putObject("rest"), r));
    }

    private static void review(ObjectNode entry, Review review) {
        lines(entry.putObject("lines"), review.lines());
        ArrayNode edge = entry.putArray("pivot_edge");
        for (EdgeState e : review.edge()) {
            ObjectNode row = edge.addObject();
            JsonObjects.put(row, "tilt_deg", InUnits.degrees(e.tilt()));
            JsonObjects.put(row, "sinkage_m", e.sinkage());
            JsonObjects.put(row, "pressure_kPa", InUnits.kilopascals(e.pressure()));
            JsonObjects.put(row, "bearing_kPa", InUnits.kilopascals(e.bearing()));
            JsonObjects.put(row, "friction_used", e.frictionUsed());
            JsonObjects.put(row, "hold_needed_kN", InUnits.kilonewtons(e.holdNeeded()));
            JsonObjects.put(row, "side_pull_kN", InUnits.kilonewtons(e.sidePull()));
            JsonObjects.put(row, "factor", e.factor());
            SoilJson.put(row.putObject("soil"), e.soil());
        }
        review.cross().ifPresent(c -> CrossJson.put(entry.putObject("cross_slope"), c));
        review.liquid().ifPresent(l -> liquid(entry.putObject("liquid"), l));
        review.beam().ifPresent(b -> beam(entry.putObject("hull_as_a_beam"), b));
        motion(entry.putObject("motion"), review.motion());
        ArrayNode losses = entry.putArray("one_thing_lost");
        for (Loss loss : review.losses()) {
            ObjectNode row = losses.addObject().put("lost", loss.lost());
            JsonObjects.put(row, "tilt_deg", InUnits.degrees(loss.tilt()));
            row.put("outcome", loss.outcome().word());
            JsonObjects.put(row, "demand_kN", InUnits.kilonewtons(loss.demand()));
            JsonObjects.put(row, "capacity_kN", InUnits.kilonewtons(loss.capacity()));
            JsonObjects.put(row, "speed_m_s", loss.speed());
            row.put("words", loss.words());
        }
    }

    private static void lines(ObjectNode entry, LineReview lines) {
        JsonObjects.put(entry, "sag_at_rest_m", lines.sag());
        JsonObjects.put(entry, "sag_at_hand_over_m", lines.sagAtHandOver());
        JsonObjects.put(entry, "pretension_kN", InUnits.kilonewtons(lines.pretension()));
        JsonObjects.put(entry, "stretch_at_rest_m", lines.stretch());
        JsonObjects.put(entry, "stiffness_share_at_hand_over", lines.stiffnessShare());
        JsonObjects.put(entry, "paid_out_m", lines.paidOut());
        JsonObjects.put(entry, "longest_m", lines.longest());
        JsonObjects.put(entry, "sheave_load_kN", InUnits.kilonewtons(lines.sheaveLoad()));
        JsonObjects.put(entry, "lateral_at_head_kN", InUnits.kilonewtons(lines.lateralAtHead()));
        JsonObjects.put(entry, "cooling_K", lines.cooling());
        JsonObjects.put(entry, "gain_when_cooled_kN", InUnits.kilonewtons(lines.coolingGain()));
        JsonObjects.put(entry, "shorter_when_cooled_m", lines.coolingShortening());
        ArrayNode light = entry.putArray("light_changes");
        for (LineReview.LightChange change : lines.lightChanges()) {
            ObjectNode row = light.addObject();
            JsonObjects.put(row, "after_h", InUnits.hours(change.time()));
            JsonObjects.put(row, "tilt_deg", InUnits.degrees(change.tilt()));
            row.put("into", change.intoShade() ? "shade" : "sun");
            JsonObjects.put(row, "length_change_m", change.shortening());
            JsonObjects.put(row, "line_each_kN", InUnits.kilonewtons(change.held()));
            JsonObjects.put(row, "gain_kN", InUnits.kilonewtons(change.gain()));
        }
        ObjectNode mismatch = entry.putObject("pay_out_mismatch");
        JsonObjects.put(mismatch, "mismatch_m", lines.mismatch().mismatch());
        JsonObjects.put(mismatch, "difference_kN", InUnits.kilonewtons(lines.mismatch().difference()));
        JsonObjects.put(mismatch, "hardest_kN", InUnits.kilonewtons(lines.mismatch().hardest()));
        mismatch.put("other_slack", lines.mismatch().slack());
        JsonObjects.put(mismatch, "yaw_kN_m", InUnits.kilonewtons(lines.mismatch().yawMoment()));
        JsonObjects.put(mismatch, "roll_kN_m", InUnits.kilonewtons(lines.mismatch().rollMoment()));
        JsonObjects.put(mismatch, "side_pull_kN", InUnits.kilonewtons(lines.mismatch().sidePull()));
    }

    private static void liquid(ObjectNode entry, LiquidReview liquid) {
        JsonObjects.put(entry, "mass_t", InUnits.tonnes(liquid.mass()));
        JsonObjects.put(entry, "balance_tilt_deg", InUnits.degrees(liquid.balance()));
        ArrayNode tilts = entry.putArray("tilts");
        for (LiquidReview.State s : liquid.states()) {
            ObjectNode row = tilts.addObject();
            JsonObjects.put(row, "tilt_deg", InUnits.degrees(s.tilt()));
            JsonObjects.put(row, "centre_of_mass_along_m", s.along());
            JsonObjects.put(row, "centre_of_mass_off_axis_m", s.off());
            JsonObjects.put(row, "held_line_each_kN", InUnits.kilonewtons(s.held()));
            JsonObjects.put(row, "free_line_each_kN", InUnits.kilonewtons(s.free()));
        }
    }

    private static void beam(ObjectNode entry, HullBeam b) {
        JsonObjects.put(entry, "lug_load_kN", InUnits.kilonewtons(b.lugLoad()));
        JsonObjects.put(entry, "between_kN_m", InUnits.kilonewtons(b.between()));
        JsonObjects.put(entry, "at_lugs_kN_m", InUnits.kilonewtons(b.atLugs()));
        JsonObjects.put(entry, "best_lug_m", b.bestLug());
    }

    private static void motion(ObjectNode entry, MotionReview motion) {
        JsonObjects.put(entry, "hours", InUnits.hours(motion.duration()));
        JsonObjects.put(entry, "brake_heat_MJ", InUnits.megajoules(motion.brakeHeat()));
        JsonObjects.put(entry, "mean_brake_power_W", motion.meanBrakePower());
        JsonObjects.put(entry, "contact_speed_m_s", motion.contactSpeed());
        JsonObjects.put(entry, "contact_energy_J", motion.contactEnergy());
        JsonObjects.put(entry, "free_topple_speed_m_s", motion.freeSpeed());
        JsonObjects.put(entry, "free_topple_energy_MJ", InUnits.megajoules(motion.freeEnergy()));
        JsonObjects.put(entry, "free_topple_s", motion.freeTime());
        JsonObjects.put(entry, "run_on_deg_s", InUnits.degrees(motion.runOnRate()));
        ArrayNode tilts = entry.putArray("tilts");
        for (MotionState s : motion.states()) {
            ObjectNode row = tilts.addObject();
            JsonObjects.put(row, "tilt_deg", InUnits.degrees(s.tilt()));
            JsonObjects.put(row, "stop_factor", s.stopFactor());
            JsonObjects.put(row, "stop_each_kN", InUnits.kilonewtons(s.stopEach()));
            JsonObjects.put(row, "start_extra_kN", InUnits.kilonewtons(s.startExtra()));
            JsonObjects.put(row, "snatch_each_kN", InUnits.kilonewtons(s.snatchEach()));
            JsonObjects.put(row, "run_away_m_s", s.runAwaySpeed());
            JsonObjects.put(row, "run_away_MJ", InUnits.megajoules(s.runAwayEnergy()));
        }
    }

    private static void landing(ObjectNode entry, LyingLanding landing) {
        JsonObjects.put(entry, "hover_kN", InUnits.kilonewtons(landing.hoverThrust()));
        JsonObjects.put(entry, "with_a_quarter_in_hand_kN", InUnits.kilonewtons(landing.thrustInHand()));
        JsonObjects.put(entry, "hover_propellant_kg", landing.hoverPropellant());
        JsonObjects.put(entry, "touchdown_energy_kJ", InUnits.kilojoules(landing.touchdownEnergy()));
        JsonObjects.put(entry, "equivalent_drop_m", landing.equivalentDrop());
        JsonObjects.put(entry, "end_rise_m", landing.endRise());
        JsonObjects.put(entry, "slap_m_s", landing.slapSpeed());
    }

    private static void rest(ObjectNode entry, RestPose rest) {
        rest.contacts().forEach(entry.putArray("contacts_along_m")::add);
        JsonObjects.put(entry, "pitch_deg", InUnits.degrees(rest.pitch()));
        JsonObjects.put(entry, "cross_slope_deg", InUnits.degrees(rest.crossSlope()));
        entry.put("roll", rest.roll().word());
        JsonObjects.put(entry, "stays_up_to_deg", InUnits.degrees(rest.staysSurely()));
        JsonObjects.put(entry, "rolls_from_deg", InUnits.degrees(rest.rollsSurely()));
        JsonObjects.put(entry, "base_gap_m", rest.baseGap());
        JsonObjects.put(entry, "greatest_gap_m", rest.greatestGap());
        JsonObjects.put(entry, "sinkage_m", rest.sinkage());
    }
}
