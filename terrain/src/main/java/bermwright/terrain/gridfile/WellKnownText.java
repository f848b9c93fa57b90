// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.InputException;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.measure.Unit;
import org.apache.sis.measure.Units;
import org.apache.sis.referencing.CRS;
import org.apache.sis.referencing.datum.DatumOrEnsemble;
import org.opengis.parameter.GeneralParameterValue;
import org.opengis.parameter.ParameterValue;
import org.opengis.parameter.ParameterValueGroup;
import org.opengis.referencing.crs.CoordinateReferenceSystem;
import org.opengis.referencing.crs.GeographicCRS;
import org.opengis.referencing.crs.ProjectedCRS;
import org.opengis.referencing.datum.Ellipsoid;
import org.opengis.util.FactoryException;

/** Reference systems from well-known text, by the library that knows them. */
final class WellKnownText {
    static final String ACCEPTED = "a projected system in metres: polar stereographic, equirectangular, transverse"
            + " Mercator or oblique stereographic";

    /** The library warns once that no register of codes is installed, which is meant; held so that it stays quiet. */
    private static final Logger LIBRARY = quiet();

    private WellKnownText() {
    }

    private static Logger quiet() {
        Logger logger = Logger.getLogger("org.apache.sis");
        logger.setLevel(Level.SEVERE);
        return logger;
    }

    static ProjectedCRS projected(String text) throws FactoryException {
        LIBRARY.finest("well-known text");
        return (ProjectedCRS) CRS.fromWKT(text);
    }

    static ReferenceSystem read(String text, InputException.Place place) {
        CoordinateReferenceSystem system;
        try {
            LIBRARY.finest("well-known text");
            system = CRS.fromWKT(text);
        } catch (FactoryException | RuntimeException e) {
            throw InputException.unreadable(place, "the reference system cannot be read (" + e.getMessage() + ")",
                    ACCEPTED, Optional.of(e));
        }
        if (system instanceof GeographicCRS) {
            throw InputException.badValue(place, "a reference system in degrees, \"" + name(system) + "\"", ACCEPTED
                    + "; gdalwarp -t_srs IAU_2015:30135 (or 30130 in the north) makes one near a pole");
        }
        if (!(system instanceof ProjectedCRS projected)) {
            throw InputException.badValue(place, "the reference system \"" + name(system) + "\"", ACCEPTED);
        }
        Unit<?> unit = projected.getCoordinateSystem().getAxis(0).getUnit();
        if (!unit.equals(Units.METRE)) {
            throw InputException.badValue(place, "a reference system in " + unit, ACCEPTED);
        }
        MapProjection projection = projection(projected, place);
        return new ReferenceSystem(name(system), KnownSystems.codeOf(projection), Optional.of(text), projection);
    }

    private static String name(CoordinateReferenceSystem system) {
        return system.getName().getCode();
    }

    private static MapProjection projection(ProjectedCRS system, InputException.Place place) {
        ParameterValueGroup values = system.getConversionFromBase().getParameterValues();
        String method = system.getConversionFromBase().getMethod().getName().getCode().replace('_', ' ');
        Ellipsoid body = DatumOrEnsemble.getEllipsoid(system).orElseThrow(() -> InputException.badValue(place,
                "a reference system without a body", ACCEPTED));
        double inverse = body.isSphere() ? 0 : body.getInverseFlattening();
        double latitude = number(values, 0, "latitude_of_origin", "latitude of natural origin", "latitude of origin");
        double parallel = number(values, latitude, "standard_parallel_1", "latitude of 1st standard parallel",
                "latitude of standard parallel");
        double longitude = number(values, 0, "central_meridian", "longitude of natural origin",
                "longitude of origin", "longitude of central meridian");
        double scale = number(values, 1, "scale_factor", "scale factor at natural origin");
        double east = number(values, 0, "false_easting", "false easting");
        double north = number(values, 0, "false_northing", "false northing");
        String lower = method.toLowerCase(Locale.ROOT);
        MapProjection.Method kind;
        if (lower.contains("equirectangular") || lower.contains("equidistant cylindrical")) {
            return equirectangular(new MapProjection.Origin(parallel, longitude, 1), latitude, new double[] {east,
                north, body.getSemiMajorAxis(), inverse}, place);
        } else if (lower.contains("stereographic") && (lower.contains("pol") || Math.abs(latitude) == 90)) {
            kind = MapProjection.Method.POLAR_STEREOGRAPHIC;
            latitude = Math.abs(latitude) == 90 && Math.abs(parallel) != 90 && parallel != 0 ? parallel
                    : Math.abs(latitude) == 90 ? latitude : parallel;
        } else if (lower.contains("stereographic")) {
            kind = MapProjection.Method.OBLIQUE_STEREOGRAPHIC;
        } else if (lower.contains("transverse mercator")) {
            kind = MapProjection.Method.TRANSVERSE_MERCATOR;
        } else {
            throw InputException.badValue(place, "the projection \"" + method + "\"", ACCEPTED);
        }
        return new MapProjection(kind, new MapProjection.Origin(latitude, longitude, scale), east, north,
                body.getSemiMajorAxis(), inverse);
    }

    /** The equirectangular projection with a latitude of origin moved into the false northing. */
    static MapProjection equirectangular(MapProjection.Origin origin, double originLatitudeDeg, double[] lengths,
            InputException.Place place) {
        if (lengths[3] != 0) {
            throw InputException.badValue(place, "an equirectangular projection of a flattened body",
                    "that projection on a sphere, or a transverse Mercator or stereographic projection");
        }
        return new MapProjection(MapProjection.Method.EQUIRECTANGULAR, origin, lengths[0],
                lengths[1] - lengths[2] * Math.toRadians(originLatitudeDeg), lengths[2], 0);
    }

    private static double number(ParameterValueGroup values, double otherwise, String... names) {
        for (GeneralParameterValue value : values.values()) {
            String found = value.getDescriptor().getName().getCode();
            for (String name : names) {
                if (found.equalsIgnoreCase(name) && value instanceof ParameterValue<?> number) {
                    Unit<?> unit = number.getUnit();
                    return unit == null ? number.doubleValue()
                            : Units.isAngular(unit) ? number.doubleValue(Units.DEGREE)
                            : Units.isLinear(unit) ? number.doubleValue(Units.METRE) : number.doubleValue();
                }
            }
        }
        return otherwise;
    }
}
