// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.lowering.soil.Regolith;
import bermwright.site.plan.GroundPlan;
import java.util.List;

/** The ground of a plan as soil that bears. */
public final class SoilStrength {
    private SoilStrength() {
    }

    /**
     * The soil a plan states: its own density profile, or the mean lunar one.
     *
     * @param ground the plan's ground
     * @return the soil
     */
    public static Regolith of(GroundPlan ground) {
        GroundPlan.Regolith soil = ground.regolith();
        Regolith.Strength strength = new Regolith.Strength(soil.frictionAngle(), soil.cohesion());
        List<double[]> profile = soil.densityProfile().stream()
                .map(d -> new double[] {d.depth(), d.density()}).toList();
        return profile.isEmpty() ? Regolith.lunarMean(strength) : Regolith.of(profile, strength);
    }
}
