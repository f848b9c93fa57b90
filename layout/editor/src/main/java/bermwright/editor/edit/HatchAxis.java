// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.TrueMetres;
import java.util.Optional;

/**
 * Where a hatch of a lying hull is in plan and which way it faces.
 *
 * @param place   middle of the hatch in plan
 * @param outward the way out
 */
public record HatchAxis(Point place, Azimuth outward) {
    /** Shorter than this the level part of a side hatch's direction says nothing (1). */
    private static final double NO_WAY_OUT = 0.05;

    /**
     * The axis of a hatch.
     *
     * @param hull  the hull, taken as lying
     * @param hatch the hatch
     * @return the axis; empty for a hull that stays upright and for a hatch that looks straight up or down
     */
    public static Optional<HatchAxis> of(Hull hull, Hatch hatch) {
        if (hull.arrival() == Hull.Arrival.STAYS_UPRIGHT) {
            return Optional.empty();
        }
        Azimuth way = hull.layDownAzimuth();
        Point base = hull.lyingBase(TrueMetres.SAME);
        return switch (hatch.end()) {
            case BASE -> Optional.of(new HatchAxis(base, way.turned(Math.PI)));
            case FAR -> Optional.of(new HatchAxis(base.moved(way, hull.length(), 0), way));
            case SIDE -> {
                double left = Math.sin(hatch.around());
                yield Math.abs(left) < NO_WAY_OUT ? Optional.empty()
                        : Optional.of(new HatchAxis(base.moved(way, hatch.along(), hull.radius() * left),
                                way.turned(left > 0 ? -Math.PI / 2 : Math.PI / 2)));
            }
        };
    }

    /**
     * The axis of a hatch by its name.
     *
     * @param plan the plan
     * @param name {@code hull/hatch}
     * @return the axis; empty where there is no such hatch or it has no axis
     */
    public static Optional<HatchAxis> of(Plan plan, String name) {
        HatchName named = HatchName.of(name);
        return named.hullIn(plan).flatMap(hull -> named.hatchOf(hull).flatMap(hatch -> of(hull, hatch)));
    }

    /**
     * How far a place lies out along this axis.
     *
     * @param other the place
     * @return distance along the way out (m), negative behind the hatch
     */
    public double ahead(Point other) {
        return (other.east() - place.east()) * outward.east() + (other.north() - place.north()) * outward.north();
    }

    /**
     * How far a place lies to the left of this axis.
     *
     * @param other the place
     * @return distance (m), negative to the right
     */
    public double aside(Point other) {
        return -(other.east() - place.east()) * outward.north() + (other.north() - place.north()) * outward.east();
    }

    /**
     * How far another hatch is turned from facing this one squarely.
     *
     * @param other the other hatch
     * @return turn (rad), -pi to pi, nothing where the two face each other
     */
    public double turnToFace(HatchAxis other) {
        double turn = outward.radians() + Math.PI - other.outward.radians();
        return Math.atan2(Math.sin(turn), Math.cos(turn));
    }
}
