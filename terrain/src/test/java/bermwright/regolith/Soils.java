// SPDX-License-Identifier: Apache-2.0
package bermwright.regolith;

/** Soils that tests make. */
public final class Soils {
    private Soils() {
    }

    /**
     * A strength from degrees.
     *
     * @param frictionDeg friction angle in degrees, 0 to 60
     * @param cohesion    cohesion (Pa), zero or more
     * @return the strength
     */
    public static Strength strength(double frictionDeg, double cohesion) {
        return new Strength(Math.toRadians(frictionDeg), cohesion);
    }

    /**
     * Ground that is the same at every depth and known for sure, as textbooks have it.
     *
     * @param density  density (kg/m3), positive
     * @param strength strength
     * @return the ground
     */
    public static Regolith uniform(double density, Strength strength) {
        return new Regolith(BulkDensity.uniform(density), StrengthProfile.constant(strength),
                new StatedStrength(strength, 0, 0));
    }

    /**
     * A density with every value changed alike.
     *
     * @param density the density
     * @param factor  what it is multiplied by (1), positive
     * @return the changed density
     */
    public static BulkDensity times(BulkDensity density, double factor) {
        return density.times(factor);
    }
}
