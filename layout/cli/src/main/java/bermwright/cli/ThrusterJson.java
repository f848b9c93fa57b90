// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.thrust.ThrustState;
import bermwright.lowering.thrust.ThrusterResult;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * A lowering by side thrusters, for programs. Keys that a lowering by lines has too mean the same: pull-over is what
 * pushes the hull past its balance, and thrust is below zero while it does so.
 */
final class ThrusterJson {
    private ThrusterJson() {
    }

    static void put(ObjectNode entry, ThrusterResult result) {
        JsonObjects.put(entry, "balance_tilt_deg", InUnits.degrees(result.balanceTilt()));
        JsonObjects.put(entry, "greatest_pull_over_kN", InUnits.kilonewtons(result.greatestPush()));
        JsonObjects.put(entry, "greatest_brake_kN", InUnits.kilonewtons(result.greatestBrake()));
        JsonObjects.put(entry, "at_tilt_deg", InUnits.degrees(result.atTilt()));
        JsonObjects.put(entry, "propellant_kg", result.propellant());
        JsonObjects.put(entry, "seconds", result.time());
        entry.put("least_count", result.leastCount());
        JsonObjects.put(entry, "abort_tilt_deg", InUnits.degrees(result.abortTilt()));
        JsonObjects.put(entry, "friction_needed", result.frictionNeeded());
        JsonObjects.put(entry, "touchdown_m_s", result.touchdownSpeed());
        JsonObjects.put(entry, "touchdown_kJ", InUnits.kilojoules(result.touchdownEnergy()));
        JsonObjects.put(entry, "free_fall_m_s", result.freeFallSpeed());
        ObjectNode slowed = entry.putObject("slowed_before_contact");
        JsonObjects.put(slowed, "greatest_brake_kN", InUnits.kilonewtons(result.profiled().greatestBrake()));
        JsonObjects.put(slowed, "propellant_kg", result.profiled().propellant());
        JsonObjects.put(slowed, "seconds", result.profiled().time());
        JsonObjects.put(slowed, "contact_m_s", result.profiled().contactSpeed());
        ArrayNode tilts = entry.putArray("tilts");
        for (ThrustState s : result.states()) {
            ObjectNode row = tilts.addObject();
            JsonObjects.put(row, "tilt_deg", InUnits.degrees(s.tilt()));
            JsonObjects.put(row, "thrust_kN", InUnits.kilonewtons(s.thrust()));
            JsonObjects.put(row, "share_of_thrust", s.share());
            JsonObjects.put(row, "pivot_up_kN", InUnits.kilonewtons(s.pivotUp()));
            JsonObjects.put(row, "pivot_along_kN", InUnits.kilonewtons(s.pivotAlong()));
        }
        ObjectNode factors = entry.putObject("factors");
        JsonObjects.put(factors, "thrust", result.thrustMargin());
        JsonObjects.put(factors, "one_thruster_out", result.oneOutMargin());
    }
}
