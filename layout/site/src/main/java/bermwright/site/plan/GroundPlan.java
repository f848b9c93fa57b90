// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.List;
import java.util.Optional;

/**
 * The ground the plan stands on.
 *
 * @param elevationFile   elevation file, as a path beside the plan
 * @param referenceSystem reference system named by the plan for files that carry none
 * @param elevationSpread one standard deviation of the file's heights (m), zero or more
 * @param elevationCorrelation length over which errors of the file's heights go together (m), above zero
 * @param gravity         gravity (m/s2), above zero
 * @param pivotFriction   friction between pivot and ground (1), zero or more
 * @param regolith        the soil
 * @param annotations            note, own keys and the keys given
 */
public record GroundPlan(String elevationFile, Optional<String> referenceSystem, double elevationSpread,
        double elevationCorrelation, double gravity, double pivotFriction, Regolith regolith, Annotations annotations) {
    /**
     * The soil.
     *
     * @param composition        {@code highland} or {@code mare}
     * @param placedDensity      density once placed (kg/m3)
     * @param bankDensity        density in place before digging (kg/m3)
     * @param looseDensity       density in a hauler (kg/m3)
     * @param densitySpreadShare one standard deviation of the densities, as a share (1), 0 to 0.5
     * @param densityProfile     density of natural ground by depth, from the surface down; may be empty
     * @param stableSlope        steepest slope placed soil stands at (rad), above 0, below pi/2
     * @param frictionAngle      friction angle (rad)
     * @param cohesion           cohesion (Pa), zero or more
     * @param frictionSpread     one standard deviation of the friction angle (rad), zero or more
     * @param cohesionSpread     one standard deviation of the cohesion (Pa), zero or more
     * @param strengthProfile    strength of natural ground by depth, from the surface down; may be empty
     * @param annotations               note, own keys and the keys given
     */
    public record Regolith(String composition, double placedDensity, double bankDensity, double looseDensity,
            double densitySpreadShare, List<DensityAtDepth> densityProfile, double stableSlope, double frictionAngle,
            double cohesion, double frictionSpread, double cohesionSpread, List<StrengthAtDepth> strengthProfile,
            Annotations annotations) {
        /** Copies the profiles. */
        public Regolith {
            densityProfile = List.copyOf(densityProfile);
            strengthProfile = List.copyOf(strengthProfile);
        }
    }

    /**
     * Density of natural ground at a depth.
     *
     * @param depth   depth below the surface (m), zero or more
     * @param density density there (kg/m3), above zero
     * @param annotations    note, own keys and the keys given
     */
    public record DensityAtDepth(double depth, double density, Annotations annotations) {
    }

    /**
     * Strength of natural ground at a depth.
     *
     * @param depth         depth below the surface (m), zero or more
     * @param frictionAngle friction angle there (rad)
     * @param cohesion      cohesion there (Pa), zero or more
     * @param source        where it is from, as the plan says
     * @param annotations          note, own keys and the keys given
     */
    public record StrengthAtDepth(double depth, double frictionAngle, double cohesion, Optional<String> source,
            Annotations annotations) {
    }
}
