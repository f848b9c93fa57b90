// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Require;

/**
 * How much soil is wanted over each part of a hull, measured from its skin.
 *
 * <p>Where a covered end is to have less than crown or flanks, theirs runs out to the end's along the last stretch of
 * the barrel, {@link #RUN_OUT} times as long as the difference is thick; otherwise their slopes would cover the end
 * whatever it asks for.
 *
 * @param crown   over the barrel within {@link #CROWN_HALF_ANGLE} of the crown (m), zero or more
 * @param flank   over the rest of the barrel (m), zero or more
 * @param baseEnd over the base end (m), zero or more; counts where that end is covered
 * @param farEnd  over the far end (m), zero or more; counts where that end is covered
 */
public record CoverThickness(double crown, double flank, double baseEnd, double farEnd) {
    /** How far from the top of the barrel its crown reaches, to either side (rad). */
    public static final double CROWN_HALF_ANGLE = Math.PI / 4;

    /** Length along the barrel over which thickness runs out, by thickness (1); flatter than dumped soil stands. */
    public static final double RUN_OUT = 2;

    /** Refuses negative thickness. */
    public CoverThickness {
        Require.notNegative("cover over the crown", crown, "m");
        Require.notNegative("cover over the flanks", flank, "m");
        Require.notNegative("cover over the base end", baseEnd, "m");
        Require.notNegative("cover over the far end", farEnd, "m");
    }

    /**
     * The same everywhere.
     *
     * @param thickness thickness (m), zero or more
     * @return the thickness of all parts
     */
    public static CoverThickness uniform(double thickness) {
        return new CoverThickness(thickness, thickness, thickness, thickness);
    }

    /**
     * A share of it everywhere.
     *
     * @param share share (1), zero or more
     * @return the thickness
     */
    public CoverThickness times(double share) {
        return new CoverThickness(crown * share, flank * share, baseEnd * share, farEnd * share);
    }

    /**
     * The thickest of all parts.
     *
     * @return thickness (m)
     */
    public double greatest() {
        return Math.max(Math.max(crown, flank), Math.max(baseEnd, farEnd));
    }
}
