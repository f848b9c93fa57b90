// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.Optional;

/**
 * A hatch as tunnels name it, {@code hull/hatch}; neither id holds a slash.
 *
 * @param hull  id of its hull
 * @param hatch id of the hatch in that hull, empty where none is named
 */
public record HatchName(String hull, String hatch) {
    /**
     * A name as it is written.
     *
     * @param written {@code hull/hatch}
     * @return its parts
     */
    public static HatchName of(String written) {
        String[] parts = written.split("/", 2);
        return new HatchName(parts[0], parts.length < 2 ? "" : parts[1]);
    }

    /**
     * The name of a hatch.
     *
     * @param hull  its hull
     * @param hatch the hatch
     * @return the name
     */
    public static HatchName of(Hull hull, Hatch hatch) {
        return new HatchName(hull.id(), hatch.id());
    }

    /**
     * The hull that is named.
     *
     * @param plan the plan
     * @return the hull; empty where the plan has no such hull
     */
    public Optional<Hull> hullIn(Plan plan) {
        return plan.hull(hull);
    }

    /**
     * The hatch that is named.
     *
     * @param of its hull
     * @return the hatch; empty where that hull has none of this id
     */
    public Optional<Hatch> hatchOf(Hull of) {
        return of.hatches().stream().filter(h -> h.id().equals(hatch)).findFirst();
    }

    /** The name as it is written. */
    @Override
    public String toString() {
        return hull + "/" + hatch;
    }
}
