// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** Lays out a reference system as the keys of a GeoTIFF file; every parameter is written, no code is relied upon. */
final class GeoKeyWriter {
    private static final int GEOGRAPHIC_SYSTEM = 2048;
    private static final int GEOGRAPHIC_CITATION = 2049;
    private static final int DATUM = 2050;
    private static final int ELLIPSOID = 2056;
    private static final int PROJECTION = 3074;
    private static final int DEGREE = 9102;

    private final Map<Integer, Object> keys = new TreeMap<>();

    GeoKeyWriter(ReferenceSystem system) {
        MapProjection projection = system.projection();
        String body = projection.semiMajorAxis() == KnownSystems.MOON_RADIUS_IAU_2015
                ? "Moon (2015) - Sphere" : "body";
        keys.put(GeoKeys.MODEL_TYPE, 1);
        keys.put(GeoKeys.RASTER_TYPE, 1);
        keys.put(GeoKeys.CITATION, plain(system.name()) + "|");
        keys.put(GEOGRAPHIC_SYSTEM, GeoKeys.USER_DEFINED);
        keys.put(GEOGRAPHIC_CITATION, "GCS Name = " + body + " / Ocentric|Datum = " + body + "|Ellipsoid = " + body
                + "|Primem = Reference Meridian||");
        keys.put(DATUM, GeoKeys.USER_DEFINED);
        keys.put(GeoKeys.ANGULAR_UNIT, DEGREE);
        keys.put(ELLIPSOID, GeoKeys.USER_DEFINED);
        keys.put(GeoKeys.SEMI_MAJOR_AXIS, projection.semiMajorAxis());
        if (projection.inverseFlattening() == 0) {
            keys.put(GeoKeys.SEMI_MINOR_AXIS, projection.semiMajorAxis());
        } else {
            keys.put(GeoKeys.INVERSE_FLATTENING, projection.inverseFlattening());
        }
        keys.put(GeoKeys.PRIME_MERIDIAN, 0.0);
        keys.put(GeoKeys.PROJECTED_SYSTEM, GeoKeys.USER_DEFINED);
        keys.put(PROJECTION, GeoKeys.USER_DEFINED);
        keys.put(GeoKeys.METHOD, projection.method().geoTiffNumber());
        keys.put(GeoKeys.LINEAR_UNIT, GeoKeys.METRE);
        keys.put(GeoKeys.FALSE_EASTING, projection.falseEasting());
        keys.put(GeoKeys.FALSE_NORTHING, projection.falseNorthing());
        addOrigin(projection);
    }

    private void addOrigin(MapProjection projection) {
        MapProjection.Origin origin = projection.origin();
        switch (projection.method()) {
            case POLAR_STEREOGRAPHIC -> {
                keys.put(GeoKeys.ORIGIN_LATITUDE, origin.latitudeDeg());
                keys.put(GeoKeys.POLE_LONGITUDE, origin.longitudeDeg());
                keys.put(GeoKeys.SCALE, origin.scale());
            }
            case EQUIRECTANGULAR -> {
                keys.put(GeoKeys.STANDARD_PARALLEL, origin.latitudeDeg());
                keys.put(GeoKeys.CENTRE_LONGITUDE, origin.longitudeDeg());
                keys.put(GeoKeys.CENTRE_LATITUDE, 0.0);
            }
            case TRANSVERSE_MERCATOR, OBLIQUE_STEREOGRAPHIC -> {
                keys.put(GeoKeys.ORIGIN_LONGITUDE, origin.longitudeDeg());
                keys.put(GeoKeys.ORIGIN_LATITUDE, origin.latitudeDeg());
                keys.put(GeoKeys.SCALE, origin.scale());
            }
        }
    }

    private static String plain(String name) {
        String ascii = new String(name.getBytes(StandardCharsets.US_ASCII), StandardCharsets.US_ASCII);
        return ascii.replace('|', ' ').replace('\0', ' ');
    }

    int[] directory() {
        int[] out = new int[4 + 4 * keys.size()];
        out[0] = 1;
        out[1] = 1;
        out[3] = keys.size();
        int at = 4;
        int reals = 0;
        int letters = 0;
        for (Map.Entry<Integer, Object> key : keys.entrySet()) {
            out[at] = key.getKey();
            out[at + 2] = 1;
            if (key.getValue() instanceof Integer number) {
                out[at + 3] = number;
            } else if (key.getValue() instanceof Double) {
                out[at + 1] = GeoKeys.DOUBLES;
                out[at + 3] = reals++;
            } else {
                out[at + 1] = GeoKeys.TEXTS;
                out[at + 2] = key.getValue().toString().length();
                out[at + 3] = letters;
                letters += out[at + 2];
            }
            at += 4;
        }
        return out;
    }

    double[] doubles() {
        return keys.values().stream().filter(Double.class::isInstance).mapToDouble(v -> (Double) v).toArray();
    }

    String texts() {
        StringBuilder all = new StringBuilder();
        keys.values().stream().filter(String.class::isInstance).forEach(all::append);
        return all.toString();
    }
}
