// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;

/**
 * How far two convex bodies are apart, and where they are nearest.
 *
 * @param distance least distance in space (m), nothing where they touch or share a place
 * @param here     the nearest point of the first
 * @param there    the nearest point of the second
 * @see "Gilbert, Johnson and Keerthi (1988), IEEE Journal of Robotics and Automation 4, 193-203"
 */
public record Apart(double distance, Vec3 here, Vec3 there) {
    /** The distance is known this well (m). */
    private static final double CLOSE_ENOUGH = 1e-4;
    private static final int STEPS = 100;

    /**
     * Compares two bodies.
     *
     * @param first  one
     * @param second the other
     * @return their distance, to a tenth of a millimetre
     */
    public static Apart of(Convex first, Convex second) {
        return of(first, second, Double.POSITIVE_INFINITY);
    }

    /** The same, given up where the two are farther apart than a distance: then at least that is answered. */
    static Apart of(Convex first, Convex second, double beyond) {
        Simplex simplex = new Simplex();
        Vec3 towards = first.middle().minus(second.middle());
        if (towards.norm() < CLOSE_ENOUGH) {
            return new Apart(0, first.middle(), second.middle());
        }
        simplex.add(first.farthest(towards.times(-1)), second.farthest(towards));
        for (int i = 0; i < STEPS; i++) {
            Vec3 nearest = simplex.nearest();
            double distance = nearest.norm();
            if (distance < CLOSE_ENOUGH) {
                return new Apart(0, simplex.here(), simplex.there());
            }
            Vec3 here = first.farthest(nearest.times(-1));
            Vec3 there = second.farthest(nearest);
            double atLeast = here.minus(there).dot(nearest) / distance;
            double gain = distance - atLeast;
            if (atLeast > beyond) {
                return new Apart(atLeast, here, there);
            }
            if (gain < CLOSE_ENOUGH || !simplex.add(here, there)) {
                return new Apart(distance, simplex.here(), simplex.there());
            }
        }
        return new Apart(simplex.nearest().norm(), simplex.here(), simplex.there());
    }
}
