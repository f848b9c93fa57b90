// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.footprint.Shape;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.Distance;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.algorithm.construct.MaximumInscribedCircle;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.relateng.RelateNG;
import org.locationtech.jts.operation.relateng.RelatePredicate;
import org.locationtech.jts.precision.GeometryPrecisionReducer;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/** A shape ready to be compared: snapped to whole millimetres, mended where it crosses itself, indexed on demand. */
final class Outlined {
    /** Pattern of two shapes whose insides have a place in common. */
    private static final String INTERIORS_MEET = "T********";
    private static final PrecisionModel MILLIMETRES = new PrecisionModel(1000);
    private static final GeometryFactory FACTORY = new GeometryFactory(MILLIMETRES);

    private final Shape shape;
    private final Geometry polygon;
    private final boolean crossesItself;
    private RelateNG relations;
    private IndexedFacetDistance distances;

    Outlined(Shape shape) {
        this.shape = shape;
        Geometry drawn = FACTORY.createPolygon(coordinates(shape.outline()));
        this.crossesItself = !drawn.isValid();
        this.polygon = mended(drawn);
    }

    private static Geometry mended(Geometry drawn) {
        return drawn.isValid() ? drawn : GeometryPrecisionReducer.reduce(GeometryFixer.fix(drawn), MILLIMETRES);
    }

    private static Coordinate[] coordinates(Ring ring) {
        int n = ring.corners().size();
        Coordinate[] corners = new Coordinate[n + 1];
        for (int i = 0; i < n; i++) {
            Point p = ring.corners().get(i);
            corners[i] = new Coordinate(MILLIMETRES.makePrecise(p.east()), MILLIMETRES.makePrecise(p.north()));
        }
        corners[n] = corners[0].copy();
        return corners;
    }

    /** An outline cut into triangles. */
    static List<List<Point>> triangles(Ring ring) {
        Geometry drawn = mended(FACTORY.createPolygon(coordinates(ring)));
        List<List<Point>> triangles = new ArrayList<>();
        Geometry cut = PolygonTriangulator.triangulate(drawn);
        for (int i = 0; i < cut.getNumGeometries(); i++) {
            Coordinate[] c = cut.getGeometryN(i).getCoordinates();
            triangles.add(List.of(new Point(c[0].x, c[0].y), new Point(c[1].x, c[1].y), new Point(c[2].x, c[2].y)));
        }
        return triangles;
    }

    /** The greatest distance of a place inside an outline from its edge (projected m). */
    static double halfWidth(Ring ring) {
        Geometry drawn = mended(FACTORY.createPolygon(coordinates(ring)));
        return drawn.isEmpty() ? 0 : MaximumInscribedCircle.getRadiusLine(drawn, 0.1).getLength();
    }

    /** Distance of a place from a straight piece (projected m). */
    static double distance(Point place, Point from, Point to) {
        return Distance.pointToSegment(new Coordinate(place.east(), place.north()),
                new Coordinate(from.east(), from.north()), new Coordinate(to.east(), to.north()));
    }

    Shape shape() {
        return shape;
    }

    boolean crossesItself() {
        return crossesItself;
    }

    Envelope box() {
        return polygon.getEnvelopeInternal();
    }

    /** Whether the two have ground in common; outlines that only touch do not. */
    boolean overlaps(Outlined other) {
        if (polygon.isEmpty() || other.polygon.isEmpty() || !box().intersects(other.box())) {
            return false;
        }
        if (relations == null) {
            relations = RelateNG.prepare(polygon);
        }
        return relations.evaluate(other.polygon, RelatePredicate.matches(INTERIORS_MEET));
    }

    /** Distance in projected metres, nothing where they overlap or touch. */
    double distance(Outlined other) {
        if (overlaps(other)) {
            return 0;
        }
        if (distances == null) {
            distances = new IndexedFacetDistance(polygon);
        }
        return distances.distance(other.polygon);
    }

    /** Distance from a place in projected metres, nothing inside. */
    double distanceFrom(Point place) {
        return polygon.distance(FACTORY.createPoint(new Coordinate(place.east(), place.north())));
    }

    /** A place in the common ground, or half-way between the nearest points. */
    Point between(Outlined other) {
        if (overlaps(other)) {
            Geometry common = common(other);
            if (!common.isEmpty()) {
                Coordinate inside = common.getInteriorPoint().getCoordinate();
                return new Point(inside.x, inside.y);
            }
        }
        Coordinate[] nearest = new IndexedFacetDistance(polygon).nearestPoints(other.polygon);
        return new Point((nearest[0].x + nearest[1].x) / 2, (nearest[0].y + nearest[1].y) / 2);
    }

    /** Area of the common ground in square projected metres. */
    double commonArea(Outlined other) {
        return overlaps(other) ? common(other).getArea() : 0;
    }

    /**
     * Width of the common ground in projected metres: of the narrowest strip that holds it, so about how far one of the
     * two has to go.
     */
    double commonWidth(Outlined other) {
        return overlaps(other) ? new MinimumDiameter(common(other)).getLength() : 0;
    }

    private Geometry common(Outlined other) {
        return OverlayNGRobust.overlay(polygon, other.polygon, OverlayNG.INTERSECTION);
    }
}
