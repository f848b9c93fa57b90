// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planted;

import org.apache.sis.referencing.CRS;
import org.opengis.util.FactoryException;

/** Planted: reference systems outside the room that reads height files. */
final class ProjectsPlaces {
    private ProjectsPlaces() {
    }

    static Object system(String text) throws FactoryException {
        return CRS.fromWKT(text);
    }
}
