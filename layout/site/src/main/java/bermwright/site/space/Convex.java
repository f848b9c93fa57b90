// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;

/** A convex body in space, in true metres. */
public interface Convex {
    /**
     * The point of the body that lies farthest in a direction.
     *
     * @param direction the direction, of any length
     * @return the point
     */
    Vec3 farthest(Vec3 direction);

    /**
     * A point inside the body.
     *
     * @return the point
     */
    Vec3 middle();

    /**
     * Radius of a ball about the middle that holds the body.
     *
     * @return the radius (m), zero or more
     */
    double reach();
}
