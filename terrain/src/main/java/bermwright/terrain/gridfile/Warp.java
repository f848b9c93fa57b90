// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.util.Locale;

/** The command that brings a file into a projection whose metres are alike in all directions. */
final class Warp {
    /** Poleward of this the polar systems distort less than 1 %. */
    private static final double POLAR_FROM_DEG = 80;

    private Warp() {
    }

    static String command(GeographicPlace place, double bodyRadius) {
        String system;
        if (Math.abs(place.latitudeDeg()) >= POLAR_FROM_DEG && bodyRadius == KnownSystems.MOON_RADIUS_IAU_2015) {
            system = place.latitudeDeg() > 0 ? "IAU_2015:30130" : "IAU_2015:30135";
        } else if (Math.abs(place.latitudeDeg()) >= POLAR_FROM_DEG) {
            system = String.format(Locale.ROOT, "'+proj=stere +lat_0=%d +lon_0=0 +R=%s +units=m'",
                    place.latitudeDeg() > 0 ? 90 : -90, metres(bodyRadius));
        } else {
            system = String.format(Locale.ROOT, "'+proj=tmerc +lat_0=%.2f +lon_0=%.2f +R=%s +units=m'",
                    place.latitudeDeg(), place.longitudeDeg(), metres(bodyRadius));
        }
        return "gdalwarp -t_srs " + system + " IN OUT";
    }

    private static String metres(double radius) {
        return radius == Math.rint(radius) ? Long.toString((long) radius) : Double.toString(radius);
    }
}
