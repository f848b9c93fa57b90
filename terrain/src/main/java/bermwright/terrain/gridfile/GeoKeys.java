// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The reference system that a GeoTIFF file carries in its keys.
 *
 * @see "OGC GeoTIFF standard 1.1 (2019), OGC 19-008r4, section 7"
 */
final class GeoKeys {
    static final int DIRECTORY = 34735;
    static final int DOUBLES = 34736;
    static final int TEXTS = 34737;
    static final int MODEL_TYPE = 1024;
    static final int RASTER_TYPE = 1025;
    static final int CITATION = 1026;
    static final int ANGULAR_UNIT = 2054;
    static final int SEMI_MAJOR_AXIS = 2057;
    static final int SEMI_MINOR_AXIS = 2058;
    static final int INVERSE_FLATTENING = 2059;
    static final int PRIME_MERIDIAN = 2061;
    static final int PROJECTED_SYSTEM = 3072;
    static final int PROJECTED_CITATION = 3073;
    static final int METHOD = 3075;
    static final int LINEAR_UNIT = 3076;
    static final int STANDARD_PARALLEL = 3078;
    static final int ORIGIN_LONGITUDE = 3080;
    static final int ORIGIN_LATITUDE = 3081;
    static final int FALSE_EASTING = 3082;
    static final int FALSE_NORTHING = 3083;
    static final int CENTRE_LONGITUDE = 3088;
    static final int CENTRE_LATITUDE = 3089;
    static final int SCALE = 3092;
    static final int POLE_LONGITUDE = 3095;
    static final int VERTICAL_UNIT = 4099;
    static final int USER_DEFINED = 32767;
    static final int METRE = 9001;
    private static final int DEGREE = 9102;
    private static final int STEREOGRAPHIC = 14;

    private final FileTrouble trouble;
    private final Map<Integer, Integer> numbers = new HashMap<>();
    private final Map<Integer, Double> reals = new HashMap<>();
    private final Map<Integer, String> texts = new HashMap<>();

    GeoKeys(TiffDirectory directory, FileTrouble trouble) throws IOException {
        this.trouble = trouble;
        long[] keys = directory.wholes(DIRECTORY);
        for (long key : keys) {
            if (key < 0) {
                throw trouble.badValue(TiffTag.name(DIRECTORY), key, "whole numbers without a sign");
            }
        }
        double[] doubles = directory.reals(DOUBLES);
        String text = directory.text(TEXTS).orElse("");
        for (int i = 4; i + 3 < keys.length && i / 4 <= keys[3]; i += 4) {
            int key = (int) keys[i];
            long count = keys[i + 2];
            long at = keys[i + 3];
            if (keys[i + 1] == 0) {
                numbers.put(key, (int) at);
            } else if (keys[i + 1] == DOUBLES) {
                refuseOutside(key, at, 1, doubles.length);
                reals.put(key, doubles[(int) at]);
            } else if (keys[i + 1] == TEXTS) {
                refuseOutside(key, at, count, text.length() + 1L);
                String part = text.substring((int) at, (int) Math.min(text.length(), at + count));
                texts.put(key, part.endsWith("|") ? part.substring(0, part.length() - 1) : part);
            }
        }
    }

    private void refuseOutside(int key, long at, long count, long length) {
        if (at < 0 || count < 0 || at > length - count) {
            throw trouble.badValue("GeoKey " + key, "at place " + at + " for " + count, "0 to " + (length - 1)
                    + ", within its parameters");
        }
    }

    boolean isEmpty() {
        return numbers.isEmpty();
    }

    boolean isPoint() {
        return numbers.getOrDefault(RASTER_TYPE, 1) == 2;
    }

    boolean isGeographic() {
        return numbers.getOrDefault(MODEL_TYPE, 0) == 2;
    }

    /** The radius that a geographic system names, or the Moon's. */
    double radius() {
        return reals.getOrDefault(SEMI_MAJOR_AXIS, KnownSystems.MOON_RADIUS_IAU_2015);
    }

    /** The code of the vertical unit; absent where the file names none. */
    Optional<Integer> verticalUnit() {
        return Optional.ofNullable(numbers.get(VERTICAL_UNIT));
    }

    /** The reference system; absent where the file names none. */
    Optional<ReferenceSystem> referenceSystem() {
        if (!numbers.containsKey(MODEL_TYPE) || numbers.get(MODEL_TYPE) == USER_DEFINED
                && !numbers.containsKey(PROJECTED_SYSTEM)) {
            return Optional.empty();
        }
        if (numbers.get(MODEL_TYPE) != 1) {
            throw trouble.badValue("GTModelType (GeoKey 1024)", numbers.get(MODEL_TYPE), WellKnownText.ACCEPTED);
        }
        int unit = numbers.getOrDefault(LINEAR_UNIT, METRE);
        if (unit != METRE) {
            throw trouble.badValue("ProjLinearUnits (GeoKey 3076)", "EPSG unit " + unit, "the metre, EPSG unit 9001");
        }
        int code = numbers.getOrDefault(PROJECTED_SYSTEM, USER_DEFINED);
        if (code != USER_DEFINED) {
            return Optional.of(KnownSystems.universalTransverseMercator(code).orElseThrow(() -> trouble.badValue(
                    "ProjectedCRS (GeoKey 3072)", "EPSG:" + code, "a system with its parameters in the file, "
                    + WellKnownText.ACCEPTED + ", or a UTM zone on WGS 84")));
        }
        MapProjection projection = projection();
        String name = texts.getOrDefault(PROJECTED_CITATION, texts.getOrDefault(CITATION, "unnamed"));
        return Optional.of(system(name, projection));
    }

    private ReferenceSystem system(String name, MapProjection projection) {
        try {
            return new ReferenceSystem(name, KnownSystems.codeOf(projection), Optional.empty(), projection);
        } catch (IllegalArgumentException e) {
            throw trouble.unreadable("reference system", "\"" + name + "\" cannot be used (" + e.getMessage() + ")",
                    WellKnownText.ACCEPTED, e);
        }
    }

    private MapProjection projection() {
        int number = numbers.getOrDefault(METHOD, 0);
        int angular = numbers.getOrDefault(ANGULAR_UNIT, DEGREE);
        if (angular != DEGREE) {
            throw trouble.badValue("GeogAngularUnits (GeoKey 2054)", "EPSG unit " + angular,
                    "the degree, EPSG unit 9102");
        }
        if (reals.getOrDefault(PRIME_MERIDIAN, 0.0) != 0) {
            throw trouble.badValue("GeogPrimeMeridianLong (GeoKey 2061)", reals.get(PRIME_MERIDIAN), "0");
        }
        if (!reals.containsKey(SEMI_MAJOR_AXIS)) {
            throw trouble.badValue("EllipsoidSemiMajorAxis (GeoKey 2057)", "not there",
                    "the radius of the body, in metres");
        }
        double latitude = real(0, ORIGIN_LATITUDE, CENTRE_LATITUDE);
        double longitude = real(0, POLE_LONGITUDE, ORIGIN_LONGITUDE, CENTRE_LONGITUDE);
        double scale = real(1, SCALE);
        MapProjection.Method method = switch (number) {
            case 15 -> MapProjection.Method.POLAR_STEREOGRAPHIC;
            case STEREOGRAPHIC, 16 -> Math.abs(latitude) == 90 ? MapProjection.Method.POLAR_STEREOGRAPHIC
                    : MapProjection.Method.OBLIQUE_STEREOGRAPHIC;
            case 1 -> MapProjection.Method.TRANSVERSE_MERCATOR;
            case 17 -> MapProjection.Method.EQUIRECTANGULAR;
            default -> throw trouble.badValue("ProjMethod (GeoKey 3075)", "GeoTIFF method " + number,
                    WellKnownText.ACCEPTED);
        };
        try {
            if (method == MapProjection.Method.EQUIRECTANGULAR) {
                return WellKnownText.equirectangular(
                        new MapProjection.Origin(real(0, STANDARD_PARALLEL), longitude, 1), latitude, lengths(),
                        InputException.Place.of(trouble.file().toString()));
            }
            double[] lengths = lengths();
            return new MapProjection(method, new MapProjection.Origin(latitude, longitude, scale), lengths[0],
                    lengths[1], lengths[2], lengths[3]);
        } catch (IllegalArgumentException e) {
            throw trouble.unreadable("reference system", "it makes no sense (" + e.getMessage() + ")",
                    WellKnownText.ACCEPTED, e);
        }
    }

    private double[] lengths() {
        double a = reals.get(SEMI_MAJOR_AXIS);
        double inverse = reals.containsKey(SEMI_MINOR_AXIS)
                ? reals.get(SEMI_MINOR_AXIS) == a ? 0 : a / (a - reals.get(SEMI_MINOR_AXIS))
                : reals.getOrDefault(INVERSE_FLATTENING, 0.0);
        return new double[] {real(0, FALSE_EASTING), real(0, FALSE_NORTHING), a, inverse};
    }

    private double real(double otherwise, int... keys) {
        for (int key : keys) {
            if (reals.containsKey(key)) {
                return reals.get(key);
            }
        }
        return otherwise;
    }
}
