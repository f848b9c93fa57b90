// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Require;
import java.util.Locale;

/**
 * A map projection of a body, in metres east and north.
 *
 * @param method                which projection
 * @param origin                where it is centred
 * @param falseEasting          east coordinate of the origin (m)
 * @param falseNorthing         north coordinate of the origin (m)
 * @param semiMajorAxis         radius of the body, at its equator (m), positive
 * @param inverseFlattening     a / (a - b) (1), zero for a sphere
 */
record MapProjection(Method method, Origin origin, double falseEasting, double falseNorthing, double semiMajorAxis,
        double inverseFlattening) {
    /** Which projection; the number is the one GeoTIFF files use. */
    enum Method {
        POLAR_STEREOGRAPHIC(15), EQUIRECTANGULAR(17), TRANSVERSE_MERCATOR(1), OBLIQUE_STEREOGRAPHIC(16);

        private final int geoTiffNumber;

        Method(int geoTiffNumber) {
            this.geoTiffNumber = geoTiffNumber;
        }

        int geoTiffNumber() {
            return geoTiffNumber;
        }
    }

    /**
     * Where a projection is centred.
     *
     * @param latitudeDeg  latitude of origin, in degrees; for {@code EQUIRECTANGULAR} the standard parallel; for
     *                     {@code POLAR_STEREOGRAPHIC} the pole, or else the parallel of true scale
     * @param longitudeDeg longitude of origin, in degrees east
     * @param scale        scale at the origin (1), positive
     */
    record Origin(double latitudeDeg, double longitudeDeg, double scale) {
        Origin {
            Require.within("latitude of origin", latitudeDeg, -90, 90, "degrees");
            Require.within("longitude of origin", longitudeDeg, -360, 360, "degrees");
            Require.positive("scale at the origin", scale, "1");
        }
    }

    MapProjection {
        Require.finite("false easting", falseEasting, "m");
        Require.finite("false northing", falseNorthing, "m");
        Require.positive("radius of the body", semiMajorAxis, "m");
        Require.that(inverseFlattening == 0 || inverseFlattening > 1, "inverse flattening is %s; 0 or more than 1.",
                inverseFlattening);
    }

    boolean isPole() {
        return Math.abs(Math.abs(origin.latitudeDeg) - 90) < 1e-9;
    }

    /** The reference system in well-known text of 2019. */
    String wellKnownText(String name) {
        String clean = name.replace('"', ' ').strip();
        return String.format(Locale.ROOT, "PROJCRS[\"%s\",BASEGEOGCRS[\"body\",DATUM[\"body\",ELLIPSOID[\"body\",%s,%s,"
                + "LENGTHUNIT[\"metre\",1]]],PRIMEM[\"Reference Meridian\",0,%s]],CONVERSION[\"map\",%s,%s,%s],"
                + "CS[Cartesian,2],AXIS[\"(E)\",east,ORDER[1],LENGTHUNIT[\"metre\",1]],"
                + "AXIS[\"(N)\",north,ORDER[2],LENGTHUNIT[\"metre\",1]]]",
                clean.isEmpty() ? "unnamed" : clean, semiMajorAxis, inverseFlattening, DEGREE, methodText(),
                length("False easting", falseEasting), length("False northing", falseNorthing));
    }

    private static final String DEGREE = "ANGLEUNIT[\"degree\",0.017453292519943295]";

    private String methodText() {
        String latitude = angle("Latitude of natural origin", origin.latitudeDeg);
        String longitude = angle("Longitude of natural origin", origin.longitudeDeg);
        String scale = "PARAMETER[\"Scale factor at natural origin\"," + origin.scale + ",SCALEUNIT[\"unity\",1]]";
        return switch (method) {
            case POLAR_STEREOGRAPHIC -> isPole()
                    ? "METHOD[\"Polar Stereographic (variant A)\"]," + latitude + "," + longitude + "," + scale
                    : "METHOD[\"Polar Stereographic (variant B)\"],"
                    + angle("Latitude of standard parallel", origin.latitudeDeg) + ","
                    + angle("Longitude of origin", origin.longitudeDeg);
            case EQUIRECTANGULAR -> "METHOD[\"Equidistant Cylindrical (Spherical)\"],"
                    + angle("Latitude of 1st standard parallel", origin.latitudeDeg) + "," + longitude;
            case TRANSVERSE_MERCATOR -> "METHOD[\"Transverse Mercator\"]," + latitude + "," + longitude + "," + scale;
            case OBLIQUE_STEREOGRAPHIC -> "METHOD[\"Oblique Stereographic\"]," + latitude + "," + longitude + ","
                    + scale;
        };
    }

    private static String angle(String name, double degrees) {
        return "PARAMETER[\"" + name + "\"," + degrees + "," + DEGREE + "]";
    }

    private static String length(String name, double metres) {
        return "PARAMETER[\"" + name + "\"," + metres + ",LENGTHUNIT[\"metre\",1]]";
    }
}
