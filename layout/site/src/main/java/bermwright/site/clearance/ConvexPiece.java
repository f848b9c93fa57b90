// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.simplify.DouglasPeuckerSimplifier;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/** A convex outline with few corners, for a quick distance to another. */
final class ConvexPiece {
    /** What corners may be left out for (m); the outline is widened by it, so that nothing of it is lost. */
    static final double ROUNDED = 0.05;
    private static final double AS_GOOD_AS_CONVEX = 1.01;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final double[] x;
    private final double[] y;
    private double west = Double.POSITIVE_INFINITY;
    private double south = Double.POSITIVE_INFINITY;
    private double east = Double.NEGATIVE_INFINITY;
    private double north = Double.NEGATIVE_INFINITY;

    ConvexPiece(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        for (int i = 0; i < x.length; i++) {
            west = x[i] < west ? x[i] : west;
            east = x[i] > east ? x[i] : east;
            south = y[i] < south ? y[i] : south;
            north = y[i] > north ? y[i] : north;
        }
    }

    /** An outline as convex pieces, widened by what its corners are rounded by. */
    static List<ConvexPiece> of(Ring ring) {
        List<Point> corners = ring.corners();
        Coordinate[] closed = new Coordinate[corners.size() + 1];
        for (int i = 0; i <= corners.size(); i++) {
            Point p = corners.get(i % corners.size());
            closed[i] = new Coordinate(p.east(), p.north());
        }
        Geometry outline = FACTORY.createPolygon(closed);
        Geometry convex = new ConvexHull(closed, FACTORY).getConvexHull();
        List<ConvexPiece> pieces = new ArrayList<>();
        if (!outline.isValid() || convex.getArea() <= AS_GOOD_AS_CONVEX * outline.getArea()) {
            pieces.add(piece(convex));
            return pieces;
        }
        Geometry triangles = PolygonTriangulator.triangulate(DouglasPeuckerSimplifier.simplify(outline, ROUNDED));
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            pieces.add(piece(triangles.getGeometryN(i)));
        }
        return pieces;
    }

    private static ConvexPiece piece(Geometry convex) {
        Geometry wide = BufferOp.bufferOp(convex, ROUNDED, 1);
        Geometry lean = DouglasPeuckerSimplifier.simplify(wide, ROUNDED / 2);
        Coordinate[] ring = ((Polygon) (lean instanceof Polygon ? lean : wide)).getExteriorRing().getCoordinates();
        double[] x = new double[ring.length - 1];
        double[] y = new double[ring.length - 1];
        for (int i = 0; i < x.length; i++) {
            x[i] = ring[i].x;
            y[i] = ring[i].y;
        }
        return new ConvexPiece(x, y);
    }

    /** This piece, given in east and north, in the frame of a pose: ahead of it and to its left. */
    ConvexPiece within(QuickClearance.Pose pose) {
        double[] ahead = new double[x.length];
        double[] left = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            double dx = x[i] - pose.east();
            double dy = y[i] - pose.north();
            ahead[i] = dx * pose.sine() + dy * pose.cosine();
            left[i] = -dx * pose.cosine() + dy * pose.sine();
        }
        return new ConvexPiece(ahead, left);
    }

    /** This piece, given ahead of a pose and to its left, in east and north. */
    ConvexPiece at(QuickClearance.Pose pose) {
        double[] e = new double[x.length];
        double[] n = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            e[i] = pose.east() + x[i] * pose.sine() - y[i] * pose.cosine();
            n[i] = pose.north() + x[i] * pose.cosine() + y[i] * pose.sine();
        }
        return new ConvexPiece(e, n);
    }

    /** Whether the boxes of both lie nearer than a distance. */
    boolean isNear(ConvexPiece other, double reach) {
        return other.west - reach < east && other.east + reach > west && other.south - reach < north
                && other.north + reach > south;
    }

    /** Distance between both; where they overlap, less than zero by the least move that parts them. */
    double distance(ConvexPiece other) {
        double gap = Math.max(gap(other), other.gap(this));
        return gap <= 0 ? gap : Math.min(near(other), other.near(this));
    }

    /** Distance of a place from it; none inside. */
    double distance(double px, double py) {
        return Math.max(0, new ConvexPiece(new double[] {px}, new double[] {py}).distance(this));
    }

    /** The widest gap seen along the normals of this one's sides, below zero where none parts them. */
    private double gap(ConvexPiece other) {
        if (x.length < 2) {
            return Double.NEGATIVE_INFINITY;
        }
        double widest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < x.length; i++) {
            int j = i + 1 == x.length ? 0 : i + 1;
            double dx = x[j] - x[i];
            double dy = y[j] - y[i];
            double length = Math.sqrt(dx * dx + dy * dy);
            if (length > 0) {
                double nx = dy / length;
                double ny = -dx / length;
                double side = span(nx, ny, i);
                double least = Double.POSITIVE_INFINITY;
                double most = Double.NEGATIVE_INFINITY;
                for (int k = 0; k < other.x.length; k++) {
                    double d = (other.x[k] - x[i]) * nx + (other.y[k] - y[i]) * ny;
                    least = d < least ? d : least;
                    most = d > most ? d : most;
                }
                widest = Math.max(widest, side <= 0 ? least : -most);
            }
        }
        return widest;
    }

    /** Where the rest of this piece lies of one of its sides: the farthest out along the normal, seen with its sign. */
    private double span(double nx, double ny, int from) {
        double far = 0;
        for (int k = 0; k < x.length; k++) {
            double d = (x[k] - x[from]) * nx + (y[k] - y[from]) * ny;
            far = Math.abs(d) > Math.abs(far) ? d : far;
        }
        return far;
    }

    /** Least distance of a corner of this one from a side of the other. */
    private double near(ConvexPiece other) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < other.x.length; i++) {
            int j = i + 1 == other.x.length ? 0 : i + 1;
            double dx = other.x[j] - other.x[i];
            double dy = other.y[j] - other.y[i];
            double square = dx * dx + dy * dy;
            for (int k = 0; k < x.length; k++) {
                double px = x[k] - other.x[i];
                double py = y[k] - other.y[i];
                double t = square > 0 ? Math.max(0, Math.min(1, (px * dx + py * dy) / square)) : 0;
                double qx = px - t * dx;
                double qy = py - t * dy;
                least = Math.min(least, qx * qx + qy * qy);
            }
        }
        return Math.sqrt(least);
    }

    double[] eastings() {
        return x.clone();
    }

    double[] northings() {
        return y.clone();
    }
}
