// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

/**
 * A ray in a hull's own axes, to be filled again and again by whoever casts many; not to be shared between threads.
 *
 * <p>Origin and unit step stand along the axis from the base plane, across to the left, and up to the crown.
 */
public final class LocalRay {
    double along;
    double across;
    double up;
    double alongStep;
    double acrossStep;
    double upStep;

    /** A ray to be filled. */
    public LocalRay() {
    }

    /**
     * Sets where the ray starts.
     *
     * @param fromBase distance along the axis from the base plane (m)
     * @param toLeft   distance to the left of the axis (m)
     * @param toCrown  distance from the axis towards the crown (m)
     */
    public void origin(double fromBase, double toLeft, double toCrown) {
        along = fromBase;
        across = toLeft;
        up = toCrown;
    }

    /**
     * Sets the unit direction.
     *
     * @param fromBase part along the axis (1)
     * @param toLeft   part to the left (1)
     * @param toCrown  part to the crown (1)
     */
    public void step(double fromBase, double toLeft, double toCrown) {
        alongStep = fromBase;
        acrossStep = toLeft;
        upStep = toCrown;
    }
}
