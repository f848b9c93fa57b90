// SPDX-License-Identifier: Apache-2.0
package bermwright.site.footprint;

import bermwright.foundation.Point;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.TrueMetres;
import java.util.Optional;

/** Where hatches are in plan once the hull has come to its final place. */
public final class HatchPlace {
    private HatchPlace() {
    }

    /**
     * The place of a hatch named as tunnels name it.
     *
     * @param plan   the plan
     * @param name   {@code hull/hatch}
     * @param metres true metres against those of the plan
     * @return its place in plan, empty where there is no such hull or hatch
     */
    public static Optional<Point> of(Plan plan, String name, TrueMetres metres) {
        HatchName named = HatchName.of(name);
        return named.hullIn(plan).flatMap(hull -> named.hatchOf(hull).map(h -> place(hull, h, metres)));
    }

    /**
     * The place of a hatch.
     *
     * @param hull   the hull
     * @param hatch  its hatch
     * @param metres true metres against those of the plan
     * @return its place in plan
     */
    public static Point place(Hull hull, Hatch hatch, TrueMetres metres) {
        double off = hatch.end() == Hatch.End.SIDE ? hull.radius() : 0;
        double left = off * Math.sin(hatch.around());
        if (hull.arrival() == Hull.Arrival.STAYS_UPRIGHT) {
            return metres.moved(hull.baseCentre(), hull.layDownAzimuth(), -off * Math.cos(hatch.around()), left);
        }
        return hull.lyingAt(metres, along(hull, hatch), left);
    }

    /**
     * How far along its hull a hatch is.
     *
     * @param hull  the hull
     * @param hatch its hatch
     * @return distance from the base plane (m): that of an end, or of the hatch in the side
     */
    public static double along(Hull hull, Hatch hatch) {
        return switch (hatch.end()) {
            case BASE -> 0;
            case FAR -> hull.length();
            case SIDE -> hatch.along();
        };
    }
}
