// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.foundation.Vec3;
import java.util.List;

/**
 * Between the projected metres of a plan and true metres: the one place where lengths, areas and places are multiplied
 * or divided by the scale of the projection. Heights are true metres in both.
 *
 * <p>Valid where one scale serves the whole site and both directions, which reading an elevation file makes sure of.
 *
 * @param scale true metres in one projected metre (1), positive
 */
public record TrueMetres(double scale) {
    /** Where no elevation file says otherwise: a projected metre is a true one. */
    public static final TrueMetres SAME = new TrueMetres(1);

    /**
     * A length measured on the plan.
     *
     * @param onPlan the length in projected metres
     * @return the length (m)
     */
    public double length(double onPlan) {
        return onPlan * scale;
    }

    /**
     * An area measured on the plan.
     *
     * @param onPlan the area in projected square metres
     * @return the area (m2)
     */
    public double area(double onPlan) {
        return onPlan * scale * scale;
    }

    /**
     * The distance of two places of the plan.
     *
     * @param one   a place
     * @param other another
     * @return the distance (m)
     */
    public double distance(Point one, Point other) {
        return one.distance(other) * scale;
    }

    /**
     * A length as it is drawn on the plan.
     *
     * @param length the length (m)
     * @return the length in projected metres
     */
    public double onPlan(double length) {
        return length / scale;
    }

    /**
     * The place so far from another.
     *
     * @param from  a place of the plan
     * @param way   a direction
     * @param ahead distance along it (m)
     * @param left  distance to its left (m)
     * @return the place on the plan
     */
    public Point moved(Point from, Azimuth way, double ahead, double left) {
        return from.moved(way, ahead / scale, left / scale);
    }

    /**
     * The place so far from another in space.
     *
     * @param from a place in the projected frame
     * @param by   the way there in true metres
     * @return the place in the projected frame
     */
    public Vec3 moved(Vec3 from, Vec3 by) {
        return from.plus(projected(by));
    }

    /**
     * A place of the plan in space.
     *
     * @param place  the place of the plan
     * @param height its height (m)
     * @return the place in true metres
     */
    public Vec3 at(Point place, double height) {
        return new Vec3(place.east() * scale, place.north() * scale, height);
    }

    /**
     * A place in space on the plan.
     *
     * @param place the place in true metres
     * @return the place of the plan
     */
    public Point plan(Vec3 place) {
        return new Point(place.x() / scale, place.y() / scale);
    }

    /**
     * A place of the plan in the frame of true metres.
     *
     * @param place the place in projected metres
     * @return the place in true metres
     */
    public Point stretched(Point place) {
        return new Point(place.east() * scale, place.north() * scale);
    }

    /**
     * A place of the projected frame in the frame of true metres.
     *
     * @param place the place in projected metres
     * @return the place in true metres
     */
    public Vec3 stretched(Vec3 place) {
        return new Vec3(place.x() * scale, place.y() * scale, place.z());
    }

    /**
     * A place in true metres in the projected frame.
     *
     * @param place the place in true metres
     * @return the place in projected metres
     */
    public Vec3 projected(Vec3 place) {
        return new Vec3(place.x() / scale, place.y() / scale, place.z());
    }

    /**
     * An outline in true metres on the plan.
     *
     * @param ring the outline in true metres
     * @return the outline in projected metres
     */
    public Ring projected(Ring ring) {
        return new Ring(ring.corners().stream().map(p -> new Point(p.east() / scale, p.north() / scale)).toList());
    }

    /**
     * A grid in the frame of true metres.
     *
     * @param grid a grid in projected metres, of this scale
     * @return the same heights on a frame of true metres
     */
    public ElevationGrid stretched(ElevationGrid grid) {
        return scale == 1 ? grid : grid.moved(scaled(grid.frame(), scale)).withPatches(grid.patches().stream()
                .map(p -> p.moved(scaled(p.frame(), scale))).toList()).withMetreScale(1);
    }

    /**
     * The finer patches of a grid in true metres, back in the plan's projected frame.
     *
     * @param grid a grid on a frame of true metres
     * @return its patches on frames of projected metres
     */
    public List<ElevationGrid> patches(ElevationGrid grid) {
        return scale == 1 ? grid.patches() : grid.patches().stream()
                .map(p -> p.moved(scaled(p.frame(), 1 / scale)).withMetreScale(scale)).toList();
    }

    private static GridFrame scaled(GridFrame f, double by) {
        return new GridFrame(f.rows(), f.columns(), f.west() * by, f.south() * by, f.spacing() * by);
    }
}
