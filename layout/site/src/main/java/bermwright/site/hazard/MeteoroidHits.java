// SPDX-License-Identifier: Apache-2.0
package bermwright.site.hazard;

import bermwright.shielding.hazard.MeteoroidFlux;
import bermwright.shielding.hazard.SoilCrater;
import bermwright.site.exposure.SiteCover;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;

/** How often a meteoroid perforates skin under a depth of soil; a table over depth, for there are many pieces. */
final class MeteoroidHits {
    private static final int STEPS = 160;
    private static final double DEEPEST = 40;
    private static final double SECONDS_A_DAY = 86_400;

    private final double seconds;
    private final SoilCrater soil;
    private final double skinStops;
    private final double[] logFlux = new double[STEPS + 1];

    MeteoroidHits(Plan plan, Hull hull) {
        seconds = plan.exposure().stayDays() * SECONDS_A_DAY;
        soil = new SoilCrater(SiteCover.density(plan, hull), plan.ground().regolith().cohesion(),
                plan.ground().gravity());
        skinStops = SkinOfHull.of(hull).map(s -> s.wall().stopped(s.thickness())).orElse(0.0);
        for (int i = 0; i <= STEPS; i++) {
            double stopped = stopped(depth(i));
            logFlux[i] = stopped > 0 ? Math.log(MeteoroidFlux.atLeast(stopped)) : 0;
        }
    }

    /** What soil and skin stop; of the two the better, for what reaches the skin is spread or not there. */
    double stopped(double depth) {
        return Math.max(soil.stopped(depth), skinStops);
    }

    SoilCrater soil() {
        return soil;
    }

    private static double depth(int step) {
        return HullSkin.BARE * Math.pow(DEEPEST / HullSkin.BARE, (double) step / STEPS);
    }

    /** Mean number of perforations in the stay (1). */
    double expected(HullSkin skin) {
        double sum = 0;
        for (HullSkin.Cell cell : skin.cells()) {
            sum += cell.seen() > 0 ? cell.area() * cell.seen() * flux(cell.depth()) : 0;
        }
        return sum * seconds;
    }

    private double flux(double depth) {
        if (!(depth > HullSkin.BARE)) {
            return MeteoroidFlux.atLeast(Math.max(skinStops, 1e-18));
        }
        double at = Math.min(STEPS - 1e-9, STEPS * Math.log(depth / HullSkin.BARE)
                / Math.log(DEEPEST / HullSkin.BARE));
        int step = (int) at;
        return Math.exp(logFlux[step] + (at - step) * (logFlux[step + 1] - logFlux[step]));
    }

    /** Cover depth at which the whole skin, equally covered, has just the allowed number of perforations (m). */
    double required(HullSkin skin, double allowed) {
        double seen = skin.cells().stream().mapToDouble(c -> c.area() * c.seen()).sum() * seconds;
        for (int i = 0; i <= STEPS; i++) {
            if (seen * Math.exp(logFlux[i]) <= allowed) {
                return depth(i);
            }
        }
        return Double.NaN;
    }
}
