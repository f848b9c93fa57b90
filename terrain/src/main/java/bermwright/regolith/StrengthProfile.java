// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import bermwright.foundation.Require;
import java.util.List;
import java.util.Objects;

/**
 * Strength of soil in place by depth: friction angle and cohesion straight between the points given, level beyond them;
 * a single strength holds at every depth.
 */
public final class StrengthProfile {
    private final List<At> points;
    private final DepthProfile friction;
    private final DepthProfile cohesion;

    private StrengthProfile(List<At> points) {
        this.points = List.copyOf(points);
        List<Double> depths = points.stream().map(At::depth).toList();
        friction = DepthProfile.through("strength", depths,
                points.stream().map(p -> p.strength.frictionAngle()).toList());
        cohesion = DepthProfile.through("strength", depths, points.stream().map(p -> p.strength.cohesion()).toList());
    }

    /**
     * Strength at a depth.
     *
     * @param depth    depth below the natural ground (m), zero or more
     * @param strength strength there
     */
    public record At(double depth, Strength strength) {
        /** Refuses negative depths. */
        public At {
            Require.notNegative("depth", depth, "m");
            Objects.requireNonNull(strength, "strength");
        }
    }

    /**
     * Strength by points.
     *
     * @param points depths and strengths, deeper and deeper, at least one
     * @return the strength by depth
     * @throws IllegalArgumentException if there is no point or the depths do not grow
     */
    public static StrengthProfile of(List<At> points) {
        return new StrengthProfile(points);
    }

    /**
     * The same strength at every depth.
     *
     * @param strength the strength
     * @return the strength by depth
     */
    public static StrengthProfile constant(Strength strength) {
        return new StrengthProfile(List.of(new At(0, strength)));
    }

    /**
     * Whether the strength is the same everywhere.
     *
     * @return true for a single point
     */
    public boolean isConstant() {
        return friction.isConstant();
    }

    /**
     * The strength at a depth.
     *
     * @param depth depth below the natural ground (m); above it the first strength holds
     * @return the strength
     */
    public Strength at(double depth) {
        return new Strength(friction.at(depth), cohesion.at(depth));
    }

    /**
     * The strength with the greatest friction angle and the greatest cohesion of all depths.
     *
     * @return the greatest of both, which need not meet at one depth
     */
    public Strength greatest() {
        return new Strength(friction.greatest(), cohesion.greatest());
    }

    /**
     * This strength changed by as much at every depth, within what soil can have.
     *
     * @param frictionAngle change of the friction angle (rad)
     * @param cohesive      change of the cohesion (Pa)
     * @return the changed strength
     */
    public StrengthProfile changed(double frictionAngle, double cohesive) {
        return new StrengthProfile(points.stream()
                .map(p -> new At(p.depth, p.strength.changed(frictionAngle, cohesive))).toList());
    }
}
