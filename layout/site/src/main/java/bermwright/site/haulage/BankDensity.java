// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.site.plan.GroundPlan;
import java.util.List;

/** Density of natural ground from the surface to a depth. */
final class BankDensity {
    private static final int SLICES = 200;

    private BankDensity() {
    }

    /** Mean density (kg/m3): of the profile, straight between its points and level beyond, else as stated. */
    static double mean(GroundPlan.Regolith regolith, double depth) {
        List<GroundPlan.DensityAtDepth> profile = regolith.densityProfile();
        if (profile.isEmpty() || !(depth > 0)) {
            return regolith.bankDensity();
        }
        double sum = 0;
        for (int i = 0; i < SLICES; i++) {
            sum += at(profile, depth * (i + 0.5) / SLICES) / SLICES;
        }
        return sum;
    }

    private static double at(List<GroundPlan.DensityAtDepth> profile, double depth) {
        GroundPlan.DensityAtDepth above = profile.get(0);
        for (GroundPlan.DensityAtDepth below : profile) {
            if (below.depth() >= depth) {
                double span = below.depth() - above.depth();
                double t = span > 0 ? (depth - above.depth()) / span : 0;
                return above.density() + Math.max(0, t) * (below.density() - above.density());
            }
            above = below;
        }
        return above.density();
    }
}
