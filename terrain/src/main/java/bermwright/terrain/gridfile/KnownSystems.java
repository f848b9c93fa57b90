// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The few codes of projected systems that files of lunar ground use.
 *
 * @see "IAU Working Group on Cartographic Coordinates and Rotational Elements (2015), list of planetary systems"
 */
final class KnownSystems {
    /** Radius of the sphere to which lunar heights and maps refer (m). */
    static final double MOON_RADIUS_IAU_2015 = 1_737_400;

    private static final String ACCEPTED = "IAU_2015:30110, IAU_2015:30115, IAU_2015:30130, IAU_2015:30135,"
            + " EPSG codes of UTM zones on WGS 84 (32601 to 32660, 32701 to 32760), or the well-known text of "
            + WellKnownText.ACCEPTED;
    private static final Pattern CODE = Pattern.compile(
            "(?:urn:ogc:def:crs:)?([A-Za-z]+)[_:]?(\\d{4})?:{1,2}(\\d{4,6})");
    private static final int[] NUMBERS_IAU_2015 = {30110, 30115, 30130, 30135};
    private static final double WGS_84_RADIUS = 6_378_137;
    private static final double WGS_84_INVERSE_FLATTENING = 298.257223563;

    private KnownSystems() {
    }

    static ReferenceSystem named(String text, InputException.Place place) {
        String clean = text.strip();
        Matcher code = CODE.matcher(clean);
        if (!code.matches()) {
            if (clean.contains("[") || clean.contains("(")) {
                return WellKnownText.read(clean, place);
            }
            throw InputException.badValue(place, "\"" + clean + "\"", ACCEPTED);
        }
        String list = code.group(1).toUpperCase(Locale.ROOT);
        String year = code.group(2) == null ? "" : code.group(2);
        int number = Integer.parseInt(code.group(3));
        Optional<ReferenceSystem> found = switch (list) {
            case "IAU" -> year.equals("2000") ? legacy(number, clean) : byNumber(number);
            case "ESRI" -> number == 103877 ? renamed(30130, clean) : number == 103878 ? renamed(30135, clean)
                    : Optional.empty();
            case "EPSG" -> universalTransverseMercator(number);
            default -> Optional.empty();
        };
        if (found.isEmpty() && list.equals("IAU") && number == 30100) {
            throw InputException.badValue(place, clean + ", which is in degrees", ACCEPTED);
        }
        return found.orElseThrow(() -> InputException.badValue(place, "\"" + clean + "\"", ACCEPTED));
    }

    /** A system of the IAU's list of 2015 by its number. */
    static Optional<ReferenceSystem> byNumber(int number) {
        return projection(number).map(p -> new ReferenceSystem(switch (number) {
            case 30110 -> "Moon (2015) - Sphere / Ocentric / Equirectangular, clon = 0";
            case 30115 -> "Moon (2015) - Sphere / Ocentric / Equirectangular, clon = 180";
            case 30130 -> "Moon (2015) - Sphere / Ocentric / North Polar";
            default -> "Moon (2015) - Sphere / Ocentric / South Polar";
        }, Optional.of("IAU_2015:" + number), Optional.empty(), p));
    }

    private static Optional<MapProjection> projection(int number) {
        return switch (number) {
            case 30110 -> Optional.of(moon(MapProjection.Method.EQUIRECTANGULAR, 0, 0));
            case 30115 -> Optional.of(moon(MapProjection.Method.EQUIRECTANGULAR, 0, 180));
            case 30130 -> Optional.of(moon(MapProjection.Method.POLAR_STEREOGRAPHIC, 90, 0));
            case 30135 -> Optional.of(moon(MapProjection.Method.POLAR_STEREOGRAPHIC, -90, 0));
            default -> Optional.empty();
        };
    }

    private static MapProjection moon(MapProjection.Method method, double latitudeDeg, double longitudeDeg) {
        return new MapProjection(method, new MapProjection.Origin(latitudeDeg, longitudeDeg, 1), 0, 0,
                MOON_RADIUS_IAU_2015, 0);
    }

    /** The list of 2000 has other numbers for the same systems: 30118 north, 30120 south, 30110 and 30112 round. */
    private static Optional<ReferenceSystem> legacy(int number, String asWritten) {
        return switch (number) {
            case 30110, 30111 -> renamed(30110, asWritten);
            case 30112, 30113 -> renamed(30115, asWritten);
            case 30118, 30119 -> renamed(30130, asWritten);
            case 30120, 30121 -> renamed(30135, asWritten);
            default -> Optional.empty();
        };
    }

    private static Optional<ReferenceSystem> renamed(int number, String code) {
        return byNumber(number).map(s -> new ReferenceSystem(s.name() + ", written as " + code, Optional.of(code),
                Optional.empty(), s.projection()));
    }

    /** The code in the IAU's list of 2015 of a system with these parameters. */
    static Optional<String> codeOf(MapProjection projection) {
        for (int number : NUMBERS_IAU_2015) {
            if (projection(number).orElseThrow().equals(projection)) {
                return Optional.of("IAU_2015:" + number);
            }
        }
        return Optional.empty();
    }

    /** Zones of the universal transverse Mercator grid on WGS 84, for trials on the Earth. */
    static Optional<ReferenceSystem> universalTransverseMercator(int number) {
        int zone = number % 100;
        boolean north = number / 100 == 326;
        if (!north && number / 100 != 327 || zone < 1 || zone > 60) {
            return Optional.empty();
        }
        MapProjection projection = new MapProjection(MapProjection.Method.TRANSVERSE_MERCATOR,
                new MapProjection.Origin(0, 6 * zone - 183, 0.9996), 500_000, north ? 0 : 10_000_000, WGS_84_RADIUS,
                WGS_84_INVERSE_FLATTENING);
        return Optional.of(new ReferenceSystem("WGS 84 / UTM zone " + zone + (north ? "N" : "S"),
                Optional.of("EPSG:" + number), Optional.empty(), projection));
    }
}
