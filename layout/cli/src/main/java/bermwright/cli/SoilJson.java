// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.regolith.SoilSensitivity;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** How a factor moves with the strength of the soil, for programs. */
final class SoilJson {
    private SoilJson() {
    }

    static void put(ObjectNode entry, SoilSensitivity soil) {
        JsonObjects.put(entry, "friction_angle_spread_deg", InUnits.degrees(soil.stated().frictionSpread()));
        JsonObjects.put(entry, "cohesion_spread_Pa", soil.stated().cohesionSpread());
        JsonObjects.put(entry, "factor_friction_less", soil.frictionLess());
        JsonObjects.put(entry, "factor_friction_more", soil.frictionMore());
        JsonObjects.put(entry, "factor_cohesion_less", soil.cohesionLess());
        JsonObjects.put(entry, "factor_cohesion_more", soil.cohesionMore());
        JsonObjects.put(entry, "factor_both_less", soil.bothLess());
        JsonObjects.put(entry, "factor_as_stated", soil.asStated());
    }
}
