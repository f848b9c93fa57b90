// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.regolith.SoilSensitivity;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** How a factor moves with the strength of the soil, for programs. */
final class SoilPage {
    private SoilPage() {
    }

    static void put(ObjectNode entry, SoilSensitivity soil) {
        JsonPage.put(entry, "friction_angle_spread_deg", InUnits.degrees(soil.stated().frictionSpread()));
        JsonPage.put(entry, "cohesion_spread_Pa", soil.stated().cohesionSpread());
        JsonPage.put(entry, "factor_friction_less", soil.frictionLess());
        JsonPage.put(entry, "factor_friction_more", soil.frictionMore());
        JsonPage.put(entry, "factor_cohesion_less", soil.cohesionLess());
        JsonPage.put(entry, "factor_cohesion_more", soil.cohesionMore());
        JsonPage.put(entry, "factor_both_less", soil.bothLess());
        JsonPage.put(entry, "factor_as_stated", soil.asStated());
    }
}
