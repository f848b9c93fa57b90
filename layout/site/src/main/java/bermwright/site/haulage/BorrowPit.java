// SPDX-License-Identifier: Apache-2.0
package bermwright.site.haulage;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.BorrowGround;
import bermwright.site.plan.GroundPlan;
import java.util.List;

/**
 * How much a borrow ground holds: its area to its greatest depth, with sides at its side slope that start at its
 * outline, times its yield.
 *
 * <p>The depth is taken below the ground as it lies. Sampled so that a square pit is right within 0.5 %.
 */
public final class BorrowPit {
    private static final int SAMPLES_ACROSS = 160;

    private BorrowPit() {
    }

    /**
     * Usable soil of a borrow ground.
     *
     * @param borrow     the borrow ground
     * @param regolith   the soil; its density profile, where given, stands over its bank density
     * @param metreScale true metres in one projected metre (1), positive
     * @return the soil on offer
     */
    public static SoilOffer offer(BorrowGround borrow, GroundPlan.Regolith regolith, double metreScale) {
        return new SoilOffer(borrow.id(), volume(borrow, metreScale) * borrow.yieldShare(),
                bankDensity(regolith, borrow.greatestDepth()), borrow.area());
    }

    /** Volume dug (m3), before the yield. */
    static double volume(BorrowGround borrow, double metreScale) {
        Ring area = borrow.area();
        double west = area.corners().stream().mapToDouble(Point::east).min().orElseThrow();
        double east = area.corners().stream().mapToDouble(Point::east).max().orElseThrow();
        double south = area.corners().stream().mapToDouble(Point::north).min().orElseThrow();
        double north = area.corners().stream().mapToDouble(Point::north).max().orElseThrow();
        double dx = (east - west) / SAMPLES_ACROSS;
        double dy = (north - south) / SAMPLES_ACROSS;
        double slope = Math.tan(borrow.sideSlope());
        double sum = 0;
        long inside = 0;
        for (int i = 0; i < SAMPLES_ACROSS; i++) {
            for (int j = 0; j < SAMPLES_ACROSS; j++) {
                Point p = new Point(west + (i + 0.5) * dx, south + (j + 0.5) * dy);
                if (area.contains(p)) {
                    inside++;
                    sum += Math.min(borrow.greatestDepth(), slope * metreScale * distance(p, area.corners()));
                }
            }
        }
        return inside == 0 ? 0 : sum / inside * area.area() * metreScale * metreScale;
    }

    private static double distance(Point p, List<Point> corners) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < corners.size(); i++) {
            least = Math.min(least, HaulGround.distance(p, corners.get(i), corners.get((i + 1) % corners.size())));
        }
        return least;
    }

    /** Mean density from the surface to a depth (kg/m3): of the profile, straight between its points, else stated. */
    static double bankDensity(GroundPlan.Regolith regolith, double depth) {
        List<GroundPlan.DensityAtDepth> profile = regolith.densityProfile();
        if (profile.isEmpty() || !(depth > 0)) {
            return regolith.bankDensity();
        }
        int steps = 200;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += densityAt(profile, depth * (i + 0.5) / steps) / steps;
        }
        return sum;
    }

    private static double densityAt(List<GroundPlan.DensityAtDepth> profile, double depth) {
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
