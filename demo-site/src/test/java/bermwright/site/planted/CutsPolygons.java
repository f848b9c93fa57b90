// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planted;

import org.locationtech.jts.geom.Geometry;

/** Planted: polygons cut outside the rooms for it. */
final class CutsPolygons {
    private CutsPolygons() {
    }

    static double area(Geometry shape) {
        return shape.getArea();
    }
}
