// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.util.Locale;
import java.util.Optional;

/** Map projections by the names that archive labels use. */
final class ArchiveMap {
    private ArchiveMap() {
    }

    /** A projection's name and the keyword it stands at. */
    record Named(String key, String projection) {
    }

    static ReferenceSystem system(Named named, double latitude, double longitude, double radius, FileTrouble trouble) {
        String name = named.projection.toUpperCase(Locale.ROOT).replace('_', ' ').strip();
        boolean pole = Math.abs(Math.abs(latitude) - 90) < 1e-9;
        MapProjection.Method method = switch (name) {
            case "POLAR STEREOGRAPHIC", "POLAR STEREOGRAPHIC VARIANT A" -> MapProjection.Method.POLAR_STEREOGRAPHIC;
            case "STEREOGRAPHIC" -> pole ? MapProjection.Method.POLAR_STEREOGRAPHIC
                    : MapProjection.Method.OBLIQUE_STEREOGRAPHIC;
            case "EQUIRECTANGULAR", "EQUIDISTANT CYLINDRICAL" -> MapProjection.Method.EQUIRECTANGULAR;
            case "SIMPLE CYLINDRICAL" -> MapProjection.Method.EQUIRECTANGULAR;
            case "TRANSVERSE MERCATOR" -> MapProjection.Method.TRANSVERSE_MERCATOR;
            default -> throw trouble.badValue(named.key, named.projection, WellKnownText.ACCEPTED
                    + "; gdalwarp -t_srs SYSTEM IN OUT.tif makes one of them");
        };
        double parallel = name.equals("SIMPLE CYLINDRICAL") ? 0 : latitude;
        try {
            MapProjection projection = new MapProjection(method, new MapProjection.Origin(parallel, longitude, 1), 0, 0,
                    radius, 0);
            return new ReferenceSystem(named.projection, KnownSystems.codeOf(projection), Optional.empty(), projection);
        } catch (IllegalArgumentException e) {
            throw trouble.unreadable(named.key, "the map makes no sense (" + e.getMessage() + ")",
                    WellKnownText.ACCEPTED, e);
        }
    }
}
