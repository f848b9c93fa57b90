// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.lowering.body.PlanePoint;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FittedPlane;
import bermwright.terrain.grid.TrueMetres;

/**
 * The upright plane in which a hull is laid down, between site and lay-down coordinates.
 *
 * <p>The origin stands on the pivot line at the height of the fitted ground; x runs along the fitted ground in the
 * lay-down azimuth. A cross slope leans the true plane sideways; here it stays upright, which holds for cross slopes
 * of a few degrees.
 *
 * @param pivot      middle of the pivot line
 * @param height     height of the fitted ground there (m)
 * @param azimuth    lay-down azimuth
 * @param slopeAlong slope of the fitted ground along it (rad), positive where it falls
 * @param metres     true metres against those of the plan
 */
public record LayPlane(Point pivot, double height, Azimuth azimuth, double slopeAlong, TrueMetres metres) {
    /**
     * The plane of a hull on the plane fitted to the ground under it.
     *
     * @param hull   the hull
     * @param bed    plane fitted to the ground under the lying hull
     * @param ground the ground
     * @return the lay-down plane
     */
    public static LayPlane of(Hull hull, FittedPlane bed, ElevationGrid ground) {
        Point pivot = hull.lyingBase(ground.metres());
        return new LayPlane(pivot, bed.height(pivot), hull.layDownAzimuth(),
                bed.slopeAlong(hull.layDownAzimuth()), ground.metres());
    }

    /**
     * A place given along and to the left of the lay-down azimuth from the pivot line, measured level.
     *
     * @param along level distance along the azimuth (m)
     * @param left  level distance to the left (m)
     * @return the place in plan
     */
    public Point place(double along, double left) {
        return metres.moved(pivot, azimuth, along, left);
    }

    /**
     * A point of the lay-down plane from its level distance and its height.
     *
     * @param along level distance along the azimuth from the pivot line (m)
     * @param level height in the site frame (m)
     * @return the point in lay-down coordinates
     */
    public PlanePoint at(double along, double level) {
        double rise = level - height;
        double cos = Math.cos(slopeAlong);
        double sin = Math.sin(slopeAlong);
        return new PlanePoint(along * cos - rise * sin, along * sin + rise * cos);
    }

    /**
     * A point of the lay-down plane in the site frame.
     *
     * @param point the point in lay-down coordinates
     * @param left  distance to the left of the plane (m)
     * @return the point in the site frame
     */
    public Vec3 site(PlanePoint point, double left) {
        double cos = Math.cos(slopeAlong);
        double sin = Math.sin(slopeAlong);
        return place(point.x() * cos + point.z() * sin, left).at(height - point.x() * sin + point.z() * cos);
    }
}
