// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import java.util.Arrays;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;

/** Hulls and widened outlines of places in plan; what comes out lies on whole millimetres. */
final class PlanGeometry {
    /** So far a widened outline may be cut by leaving corners out (m); it is widened by as much before. */
    private static final double CORNER_TOLERANCE = 0.004;
    private static final double MILLIMETRES = 1000;
    private static final int QUADRANT_CORNERS = 12;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private PlanGeometry() {
    }

    static Point snapped(double east, double north) {
        return new Point(Math.rint(east * MILLIMETRES) / MILLIMETRES, Math.rint(north * MILLIMETRES) / MILLIMETRES);
    }

    /** Corners of the smallest convex outline around places given as (x, y), anticlockwise, first not repeated. */
    static double[][] convexHull(List<double[]> places) {
        Coordinate[] all = places.stream().map(p -> new Coordinate(p[0], p[1])).toArray(Coordinate[]::new);
        Geometry hull = new ConvexHull(all, FACTORY).getConvexHull();
        Coordinate[] ring = hull.norm().reverse().getCoordinates();
        return Arrays.stream(ring, 0, Math.max(1, ring.length - 1))
                .map(c -> new double[] {c.x, c.y}).toArray(double[][]::new);
    }

    /** The smallest convex outline around places, widened to all sides (projected m). */
    static Ring widenedHull(List<Point> places, double by) {
        return widened(new ConvexHull(coordinates(places), FACTORY).getConvexHull(), by);
    }

    /** An outline widened to all sides (projected m). */
    static Ring widened(Ring ring, double by) {
        Coordinate[] corners = coordinates(ring.corners());
        Coordinate[] closed = Arrays.copyOf(corners, corners.length + 1);
        closed[corners.length] = corners[0];
        return widened(FACTORY.createPolygon(closed), by);
    }

    private static Ring widened(Geometry shape, double by) {
        BufferParameters round = new BufferParameters(QUADRANT_CORNERS);
        Geometry wide = BufferOp.bufferOp(shape, by + CORNER_TOLERANCE, round);
        Geometry lean = DouglasPeuckerSimplifier.simplify(wide, CORNER_TOLERANCE);
        if (!(lean instanceof Polygon polygon) || !lean.isValid()) {
            throw new IllegalStateException("widening an outline by " + by + " m gave " + lean.getGeometryType());
        }
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        return new Ring(Arrays.stream(ring, 0, ring.length - 1).map(c -> snapped(c.x, c.y)).toList());
    }

    private static Coordinate[] coordinates(List<Point> places) {
        return places.stream().map(p -> new Coordinate(p.east(), p.north())).toArray(Coordinate[]::new);
    }
}
