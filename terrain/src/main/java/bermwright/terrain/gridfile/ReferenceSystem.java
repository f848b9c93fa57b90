// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Azimuth;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import java.util.Optional;
import org.opengis.referencing.crs.ProjectedCRS;
import org.opengis.referencing.operation.MathTransform;
import org.opengis.referencing.operation.TransformException;

/**
 * A projected reference system: which place on the body a pair of coordinates in metres is.
 *
 * <p>Polar stereographic, equirectangular, transverse Mercator and oblique stereographic projections of a sphere or,
 * but for the equirectangular, an ellipsoid; axes east and north in metres.
 */
public final class ReferenceSystem {
    /** A step over which the projection is straight to a part in 10^9. */
    private static final double STEP = 0.5;
    private static final int TO_MAP = 0;
    private static final int TO_BODY = 1;

    private final String name;
    private final Optional<String> code;
    private final String wellKnownText;
    private final MapProjection projection;
    private volatile MathTransform[] transforms = new MathTransform[0];

    ReferenceSystem(String name, Optional<String> code, Optional<String> asWritten, MapProjection projection) {
        this.name = name;
        this.code = code;
        this.projection = projection;
        this.wellKnownText = asWritten.orElseGet(() -> projection.wellKnownText(name));
        if (!SphereMap.serves(projection)) {
            transform(TO_MAP);
        }
    }

    /** The way to or from the map, by Apache SIS; made when it is first wanted. */
    private MathTransform transform(int which) {
        MathTransform[] both = transforms;
        if (both.length == 0) {
            try {
                ProjectedCRS system = WellKnownText.projected(projection.wellKnownText(name));
                MathTransform toMap = system.getConversionFromBase().getMathTransform();
                both = new MathTransform[] {toMap, toMap.inverse()};
                transforms = both;
            } catch (TransformException | org.opengis.util.FactoryException e) {
                throw new IllegalArgumentException("the reference system \"" + name + "\" cannot be used: "
                        + e.getMessage(), e);
            }
        }
        return both[which];
    }

    /**
     * The Moon's south polar stereographic system on the sphere of 1,737,400 m, true to scale at the pole.
     *
     * @return IAU_2015:30135
     */
    public static ReferenceSystem lunarSouthPolar() {
        return KnownSystems.byNumber(30135).orElseThrow();
    }

    /**
     * The Moon's north polar stereographic system on the sphere of 1,737,400 m, true to scale at the pole.
     *
     * @return IAU_2015:30130
     */
    static ReferenceSystem lunarNorthPolar() {
        return KnownSystems.byNumber(30130).orElseThrow();
    }

    /**
     * The Moon's equirectangular system on the sphere of 1,737,400 m, true to scale at the equator.
     *
     * @return IAU_2015:30110
     */
    static ReferenceSystem lunarEquirectangular() {
        return KnownSystems.byNumber(30110).orElseThrow();
    }

    /**
     * A reference system from what a user wrote.
     *
     * @param text  a code such as {@code IAU_2015:30135}, or well-known text of a projected system
     * @param place where it was written
     * @return the reference system
     * @throws InputException if it is unknown, geographic or not in metres
     */
    public static ReferenceSystem named(String text, InputException.Place place) {
        return KnownSystems.named(text, place);
    }

    /**
     * The name as the file has it.
     *
     * @return the name
     */
    public String name() {
        return name;
    }

    /**
     * The code under which lists have this system.
     *
     * @return the code as written, or of the system in the IAU's list of 2015 with the same parameters; absent where
     *     there is none
     */
    public Optional<String> code() {
        return code;
    }

    /**
     * The system as well-known text.
     *
     * @return the text as written, or ours where the file has its parameters in another form
     */
    public String wellKnownText() {
        return wellKnownText;
    }

    /**
     * The radius of the body.
     *
     * @return the radius, at the equator where the body is flattened (m), positive
     */
    public double bodyRadius() {
        return projection.semiMajorAxis();
    }

    /**
     * The place on the body.
     *
     * @param place a place in projected metres
     * @return latitude and longitude
     * @throws IllegalArgumentException if the projection does not reach there
     */
    public GeographicPlace geographic(Point place) {
        double[] degrees = degrees(place);
        double longitude = Math.IEEEremainder(degrees[1], 360);
        return new GeographicPlace(degrees[0], longitude);
    }

    /**
     * The place on the map.
     *
     * @param place latitude and longitude
     * @return the place in projected metres
     * @throws IllegalArgumentException if the projection does not reach there
     */
    Point projected(GeographicPlace place) {
        double[] values = {place.latitudeDeg(), place.longitudeDeg()};
        try {
            transform(TO_MAP).transform(values, 0, values, 0, 1);
        } catch (TransformException e) {
            throw new IllegalArgumentException("the reference system \"" + name + "\" does not reach " + place, e);
        }
        return new Point(values[0], values[1]);
    }

    /**
     * What a projected metre is worth at a place, and where true north lies.
     *
     * @param place a place in projected metres
     * @return the scales and true north
     * @throws IllegalArgumentException if the projection does not reach there
     */
    public PointScale scale(Point place) {
        Vec3 east = onBody(new Point(place.east() + STEP, place.north()))
                .minus(onBody(new Point(place.east() - STEP, place.north()))).times(1 / (2 * STEP));
        Vec3 north = onBody(new Point(place.east(), place.north() + STEP))
                .minus(onBody(new Point(place.east(), place.north() - STEP))).times(1 / (2 * STEP));
        return new PointScale(east.norm(), north.norm(), trueNorth(place, east, north));
    }

    /** The cosine of the angle at which grid east and grid north meet on the body; nothing where the grid is square. */
    double skew(Point place) {
        Vec3 centre = onBody(place);
        Vec3 east = onBody(new Point(place.east() + STEP, place.north())).minus(centre);
        Vec3 north = onBody(new Point(place.east(), place.north() + STEP)).minus(centre);
        return east.direction().dot(north.direction());
    }

    private Optional<Azimuth> trueNorth(Point place, Vec3 east, Vec3 north) {
        double[] degrees = degrees(place);
        double latitude = Math.toRadians(degrees[0]);
        double longitude = Math.toRadians(degrees[1]);
        if (Math.cos(latitude) * bodyRadius() < 1) {
            return Optional.empty();
        }
        Vec3 up = new Vec3(-Math.sin(latitude) * Math.cos(longitude), -Math.sin(latitude) * Math.sin(longitude),
                Math.cos(latitude));
        return Optional.of(new Azimuth(Math.atan2(up.dot(east) / east.norm(), up.dot(north) / north.norm())));
    }

    private Vec3 onBody(Point place) {
        double[] degrees = degrees(place);
        double latitude = Math.toRadians(degrees[0]);
        double longitude = Math.toRadians(degrees[1]);
        double f = projection.inverseFlattening() == 0 ? 0 : 1 / projection.inverseFlattening();
        double e2 = f * (2 - f);
        double n = bodyRadius() / Math.sqrt(1 - e2 * Math.sin(latitude) * Math.sin(latitude));
        return new Vec3(n * Math.cos(latitude) * Math.cos(longitude), n * Math.cos(latitude) * Math.sin(longitude),
                n * (1 - e2) * Math.sin(latitude));
    }

    private double[] degrees(Point place) {
        double[] values = {place.east(), place.north()};
        try {
            if (SphereMap.serves(projection)) {
                values = new SphereMap(projection).degrees(place.east(), place.north());
            } else {
                transform(TO_BODY).transform(values, 0, values, 0, 1);
            }
        } catch (TransformException e) {
            throw new IllegalArgumentException("the reference system \"" + name + "\" does not reach " + place, e);
        }
        if (!(Math.abs(values[0]) <= 90.000001) || !Double.isFinite(values[1])) {
            throw new IllegalArgumentException("the reference system \"" + name + "\" does not reach " + place);
        }
        return values;
    }

    MapProjection projection() {
        return projection;
    }

    @Override
    public String toString() {
        return code.map(c -> name + " (" + c + ")").orElse(name);
    }
}
