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
final class ThrusterPage {
    private ThrusterPage() {
    }

    static void put(ObjectNode entry, ThrusterResult result) {
        JsonPage.put(entry, "balance_tilt_deg", InUnits.degrees(result.balanceTilt()));
        JsonPage.put(entry, "greatest_pull_over_kN", InUnits.kilonewtons(result.greatestPush()));
        JsonPage.put(entry, "greatest_brake_kN", InUnits.kilonewtons(result.greatestBrake()));
        JsonPage.put(entry, "at_tilt_deg", InUnits.degrees(result.atTilt()));
        JsonPage.put(entry, "propellant_kg", result.propellant());
        JsonPage.put(entry, "seconds", result.time());
        entry.put("least_count", result.leastCount());
        JsonPage.put(entry, "abort_tilt_deg", InUnits.degrees(result.abortTilt()));
        JsonPage.put(entry, "friction_needed", result.frictionNeeded());
        JsonPage.put(entry, "touchdown_m_s", result.touchdownSpeed());
        JsonPage.put(entry, "touchdown_kJ", InUnits.kilojoules(result.touchdownEnergy()));
        JsonPage.put(entry, "free_fall_m_s", result.freeFallSpeed());
        ObjectNode slowed = entry.putObject("slowed_before_contact");
        JsonPage.put(slowed, "greatest_brake_kN", InUnits.kilonewtons(result.profiled().greatestBrake()));
        JsonPage.put(slowed, "propellant_kg", result.profiled().propellant());
        JsonPage.put(slowed, "seconds", result.profiled().time());
        JsonPage.put(slowed, "contact_m_s", result.profiled().contactSpeed());
        ArrayNode tilts = entry.putArray("tilts");
        for (ThrustState s : result.states()) {
            ObjectNode row = tilts.addObject();
            JsonPage.put(row, "tilt_deg", InUnits.degrees(s.tilt()));
            JsonPage.put(row, "thrust_kN", InUnits.kilonewtons(s.thrust()));
            JsonPage.put(row, "share_of_thrust", s.share());
            JsonPage.put(row, "pivot_up_kN", InUnits.kilonewtons(s.pivotUp()));
            JsonPage.put(row, "pivot_along_kN", InUnits.kilonewtons(s.pivotAlong()));
        }
        ObjectNode factors = entry.putObject("factors");
        JsonPage.put(factors, "thrust", result.thrustMargin());
        JsonPage.put(factors, "one_thruster_out", result.oneOutMargin());
    }
}
