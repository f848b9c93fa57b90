// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Vec3;

/**
 * An upright face of soil that a wall holds.
 *
 * @param x     a place on it, east (m)
 * @param y     the same, north (m)
 * @param east  part of the level unit direction out of the soil to the east (1)
 * @param north part to the north (1)
 */
record UprightFace(double x, double y, double east, double north) {
    /** A face through a place, square in plan to a direction that leads out of the soil. */
    static UprightFace across(Vec3 place, Vec3 out) {
        double level = Math.hypot(out.x(), out.y());
        return new UprightFace(place.x(), place.y(), out.x() / level, out.y() / level);
    }

    /** How far a place lies out of the soil (m), negative inside it. */
    double ahead(double atX, double atY) {
        return (atX - x) * east + (atY - y) * north;
    }

    /** The share of a node's cell that lies in the soil (1), so that straight cells hold as much as there is. */
    double share(double atX, double atY, double spacing) {
        double width = spacing * (Math.abs(east) + Math.abs(north));
        return Math.max(0, Math.min(1, 0.5 - ahead(atX, atY) / width));
    }
}
