// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

/** A shape of the ground given by a formula: the height it adds at each place. */
public sealed interface Landform permits InclinedPlane, Crater, Scarp, RollingGround, Mound, Berm, Landforms {
    /**
     * The height this landform adds.
     *
     * @param east  east (m)
     * @param north north (m)
     * @return the height added (m), negative where it takes away
     */
    double height(double east, double north);
}
