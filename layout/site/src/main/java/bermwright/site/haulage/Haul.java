// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Soil carried from one place to another.
 *
 * @param from         id of the borrow ground or preparation it is dug in
 * @param to           id of the hull or preparation it is placed at
 * @param kind         what it is for
 * @param machine      id of the machine; empty where the plan has none
 * @param mass         mass carried (kg)
 * @param bank         volume before digging (m3)
 * @param loose        volume in the hauler (m3)
 * @param placed       volume once placed (m3)
 * @param distance     length of the way one way (m)
 * @param climb        rise and fall along the way, both counted (m)
 * @param loads        loads carried (1), not rounded
 * @param machineHours machine hours (h); empty where the plan has no machine
 * @param energy       energy for driving (J); empty where the plan has no machine
 * @param way          the way over the ground, from the middle of the digging to the middle of the placing
 */
public record Haul(String from, String to, SoilNeed.Kind kind, String machine, double mass, double bank, double loose,
        double placed, double distance, double climb, double loads, OptionalDouble machineHours,
        OptionalDouble energy, List<Point> way) {
    /** Copies the way. */
    public Haul {
        way = List.copyOf(way);
    }

    /** The same soil carried back. */
    Haul back() {
        List<Point> returned = new ArrayList<>(way);
        Collections.reverse(returned);
        return new Haul(to, from, SoilNeed.Kind.RAMP_REMOVED, machine, mass, bank, loose, placed, distance, climb,
                loads, machineHours, energy, returned);
    }
}
