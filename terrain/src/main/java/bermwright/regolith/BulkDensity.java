// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;
import java.util.List;

/**
 * Bulk density of soil in place (bank) by depth below the natural ground: straight between the points given, the first
 * value above the first point and the last below the last.
 */
public final class BulkDensity {
    private final List<At> points;
    private final DepthProfile profile;

    private BulkDensity(List<At> points) {
        this.points = List.copyOf(points);
        profile = DepthProfile.through("bulk density", points.stream().map(At::depth).toList(),
                points.stream().map(At::density).toList());
    }

    /**
     * Density at a depth.
     *
     * @param depth   depth below the natural ground (m), zero or more
     * @param density density (kg/m3), positive
     */
    public record At(double depth, double density) {
        /** Refuses negative depths and empty soil. */
        public At {
            Require.notNegative("depth", depth, "m");
            Require.positive("density", density, "kg/m3");
        }
    }

    /**
     * Density by points.
     *
     * @param points depths and densities, deeper and deeper, at least one
     * @return the density by depth
     * @throws IllegalArgumentException if there is no point or the depths do not grow
     */
    public static BulkDensity of(List<At> points) {
        return new BulkDensity(points);
    }

    /**
     * The same density at every depth.
     *
     * @param density density (kg/m3), positive
     * @return the density by depth
     */
    public static BulkDensity uniform(double density) {
        return new BulkDensity(List.of(new At(0, density)));
    }

    /**
     * Whether the density is the same everywhere.
     *
     * @return true for a single point
     */
    public boolean isUniform() {
        return profile.isConstant();
    }

    /**
     * The density at a depth.
     *
     * @param depth depth below the natural ground (m); above it the first value holds
     * @return density (kg/m3)
     */
    public double density(double depth) {
        return profile.at(depth);
    }

    /**
     * The mean density between two depths.
     *
     * @param top    upper depth (m), zero or more
     * @param bottom lower depth (m), at least the upper; where it is the upper, the density there
     * @return mean density (kg/m3)
     */
    public double mean(double top, double bottom) {
        Require.notNegative("upper depth", top, "m");
        Require.atLeast("lower depth", bottom, top, "m");
        return profile.mean(top, bottom);
    }

    /**
     * The mass over an area above a depth.
     *
     * @param depth depth below the natural ground (m); negative gives a negative mass, at the first density
     * @return mass (kg/m2)
     */
    public double columnMass(double depth) {
        return profile.integral(depth);
    }

    /**
     * This density with every value changed by one factor.
     *
     * @param factor factor (1), positive
     * @return the changed density
     */
    BulkDensity times(double factor) {
        return new BulkDensity(points.stream().map(p -> new At(p.depth, p.density * factor)).toList());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof BulkDensity that && points.equals(that.points);
    }

    @Override
    public int hashCode() {
        return points.hashCode();
    }
}
