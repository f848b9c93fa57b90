// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

/**
 * From a map of a sphere back to latitude and longitude, in closed form. Apache SIS gives the same (tested); this is
 * here because the first use of SIS takes a second, most of the time in which a small file is opened.
 *
 * @see "Snyder (1987), Map projections - a working manual, USGS Professional Paper 1395, equations 8-6 to 8-8, 12-2
 *     to 12-6, 20-14 to 20-18, 21-15"
 */
final class SphereMap {
    private final MapProjection map;

    SphereMap(MapProjection map) {
        this.map = map;
    }

    static boolean serves(MapProjection map) {
        return map.inverseFlattening() == 0;
    }

    /** Latitude and longitude in degrees; not numbers where the map does not reach. */
    double[] degrees(double east, double north) {
        double x = east - map.falseEasting();
        double y = north - map.falseNorthing();
        double latitude = Math.toRadians(map.origin().latitudeDeg());
        double scaled = map.semiMajorAxis() * map.origin().scale();
        double[] radians = switch (map.method()) {
            case EQUIRECTANGULAR -> new double[] {y / map.semiMajorAxis(),
                x / (map.semiMajorAxis() * Math.cos(latitude))};
            case TRANSVERSE_MERCATOR -> transverse(x / scaled, y / scaled + latitude);
            case OBLIQUE_STEREOGRAPHIC -> stereographic(x, y, scaled, latitude);
            case POLAR_STEREOGRAPHIC -> map.isPole() ? stereographic(x, y, scaled, latitude)
                    : stereographic(x, y, map.semiMajorAxis() * (1 + Math.sin(Math.abs(latitude))) / 2,
                            Math.copySign(Math.PI / 2, latitude));
        };
        return new double[] {Math.toDegrees(radians[0]), map.origin().longitudeDeg() + Math.toDegrees(radians[1])};
    }

    private static double[] transverse(double x, double d) {
        double reach = Math.abs(d) <= Math.PI / 2 ? 1 : Double.NaN;
        return new double[] {reach * Math.asin(Math.sin(d) / Math.cosh(x)), Math.atan2(Math.sinh(x), Math.cos(d))};
    }

    private static double[] stereographic(double x, double y, double radius, double latitude) {
        double rho = Math.hypot(x, y);
        if (rho == 0) {
            return new double[] {latitude, 0};
        }
        double c = 2 * Math.atan(rho / (2 * radius));
        boolean pole = Math.abs(latitude) >= Math.PI / 2;
        double sine = pole ? Math.signum(latitude) : Math.sin(latitude);
        double cosine = pole ? 0 : Math.cos(latitude);
        double up = pole ? sine * (Math.PI / 2 - c)
                : Math.asin(Math.max(-1, Math.min(1, Math.cos(c) * sine + y * Math.sin(c) * cosine / rho)));
        return new double[] {up, Math.atan2(x * Math.sin(c), rho * cosine * Math.cos(c) - y * sine * Math.sin(c))};
    }
}
