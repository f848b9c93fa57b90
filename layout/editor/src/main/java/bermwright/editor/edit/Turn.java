// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Azimuth;
import bermwright.site.plan.Plan;

/**
 * Lays a hull down another way.
 *
 * @param hull    the hull's id
 * @param azimuth the new direction
 */
public record Turn(String hull, Azimuth azimuth) implements PlanEdit {
    private static final double GRAINS_A_DEGREE = 1000;

    @Override
    public Plan applied(Plan plan) {
        Azimuth written = Azimuth.ofDegrees(Math.rint(azimuth.degrees() * GRAINS_A_DEGREE) / GRAINS_A_DEGREE);
        return plan.withHull(hull, h -> h.withLayDownAzimuth(written));
    }

    @Override
    public String words() {
        return "Turn " + Part.hull(hull).words();
    }
}
