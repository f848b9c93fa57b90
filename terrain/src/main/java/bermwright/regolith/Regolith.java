// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

import java.util.Objects;

/**
 * Ground in place: its bulk density and its strength by depth, both as stated.
 *
 * <p>Sites scatter widely: density by a tenth, friction angle by 5 degrees, cohesion by a factor of two.
 *
 * @param density  bulk density by depth
 * @param strength strength by depth
 * @param stated   the one strength stated, which holds at every depth where none is stated by depth, and its spreads
 */
public record Regolith(BulkDensity density, StrengthProfile strength, StatedStrength stated) {
    /** Refuses missing parts. */
    public Regolith {
        Objects.requireNonNull(density, "density");
        Objects.requireNonNull(strength, "strength");
        Objects.requireNonNull(stated, "stated");
    }

    /**
     * This ground with another strength.
     *
     * @param changed the strength by depth
     * @return the changed ground
     */
    public Regolith with(StrengthProfile changed) {
        return new Regolith(density, changed, stated);
    }

    /**
     * This ground with its strength changed by as much at every depth, within what soil can have.
     *
     * @param frictionAngle change of the friction angle (rad)
     * @param cohesive      change of the cohesion (Pa)
     * @return the changed ground
     */
    public Regolith changed(double frictionAngle, double cohesive) {
        return with(strength.changed(frictionAngle, cohesive));
    }

    /**
     * The mean density from the surface to a depth.
     *
     * @param depth depth (m), zero or more; at the surface the density there
     * @return the mean density (kg/m3)
     */
    public double meanDensity(double depth) {
        return density.mean(0, depth);
    }

    /**
     * The strength at a depth.
     *
     * @param depth depth (m); above the ground that of its surface
     * @return the strength
     */
    public Strength strength(double depth) {
        return strength.at(depth);
    }

    /**
     * The friction angle at a depth.
     *
     * @param depth depth (m); above the ground that of its surface
     * @return the friction angle (rad), 0 to 60 degrees
     */
    public double frictionAngle(double depth) {
        return strength.at(depth).frictionAngle();
    }

    /**
     * The cohesion at a depth.
     *
     * @param depth depth (m); above the ground that of its surface
     * @return the cohesion (Pa), zero or more
     */
    public double cohesion(double depth) {
        return strength.at(depth).cohesion();
    }
}
