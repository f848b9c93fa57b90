// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The wanted cover of a hull; parts not stated take {@code thickness}.
 *
 * @param thickness        least cover from every point of covered skin (m), above zero
 * @param crown            over the crown (m)
 * @param flank            over the flanks (m)
 * @param baseEndThickness over the base end (m)
 * @param farEndThickness  over the far end (m)
 * @param baseEnd          what happens at the base end
 * @param farEnd           what happens at the far end
 * @param baseEndWall      id of the wall that holds the base end
 * @param farEndWall       id of the wall that holds the far end
 * @param crownWidth       width of a flat crown (m), zero for none
 * @param lift             height of a lift (m), above zero
 * @param density          density once placed (kg/m3); the soil's where not stated
 * @param passThroughs     radiators, cables, shafts and the like that the cover has to reckon with
 * @param annotations             note, own keys and the keys given
 */
public record CoverPlan(double thickness, OptionalDouble crown, OptionalDouble flank,
        OptionalDouble baseEndThickness, OptionalDouble farEndThickness, End baseEnd, End farEnd,
        Optional<String> baseEndWall, Optional<String> farEndWall, double crownWidth, double lift,
        OptionalDouble density, List<PassThrough> passThroughs, Annotations annotations) {
    /** Copies the list. */
    public CoverPlan {
        passThroughs = List.copyOf(passThroughs);
    }

    /** What a cover does at an end of the hull. */
    public enum End {
        /** The end is covered like the rest. */
        COVERED,
        /** The end is kept clear, the soil standing back at its own slope. */
        OPEN,
        /** A wall holds the soil back. */
        WALL;

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Cover over the crown.
     *
     * @return thickness (m)
     */
    public double crownThickness() {
        return crown.orElse(thickness);
    }

    /**
     * Cover over the flanks.
     *
     * @return thickness (m)
     */
    public double flankThickness() {
        return flank.orElse(thickness);
    }

    /**
     * Cover over the base end.
     *
     * @return thickness (m), nothing where the end is not covered
     */
    public double baseThickness() {
        return baseEnd == End.COVERED ? baseEndThickness.orElse(thickness) : 0;
    }

    /**
     * Cover over the far end.
     *
     * @return thickness (m), nothing where the end is not covered
     */
    public double farThickness() {
        return farEnd == End.COVERED ? farEndThickness.orElse(thickness) : 0;
    }

    /**
     * This cover with its parts at their own thicknesses.
     *
     * @param crownPart thickness over the crown (m)
     * @param flankPart thickness over the flanks (m)
     * @param basePart  thickness over the base end (m)
     * @param farPart   thickness over the far end (m)
     * @return the changed copy, whose thickness is the least of crown and flanks
     */
    public CoverPlan withParts(double crownPart, double flankPart, double basePart, double farPart) {
        return new CoverPlan(Math.min(crownPart, flankPart), OptionalDouble.of(crownPart),
                OptionalDouble.of(flankPart), OptionalDouble.of(basePart), OptionalDouble.of(farPart), baseEnd, farEnd,
                baseEndWall, farEndWall, crownWidth, lift, density, passThroughs, annotations);
    }

    /**
     * This cover with all its parts at a share of their thickness.
     *
     * @param share share of the thickness (1), above zero
     * @return the changed copy
     */
    public CoverPlan times(double share) {
        return new CoverPlan(thickness * share, times(crown, share), times(flank, share),
                times(baseEndThickness, share), times(farEndThickness, share), baseEnd, farEnd, baseEndWall, farEndWall,
                crownWidth, lift, density, passThroughs, annotations);
    }

    private static OptionalDouble times(OptionalDouble part, double share) {
        return part.isPresent() ? OptionalDouble.of(part.getAsDouble() * share) : part;
    }
}
