// SPDX-License-Identifier: Apache-2.0
package bermwright.site.laydown;

import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Remembers how each hull of a plan came to lie, so that hulls that were not touched are not laid down again. A hull is
 * laid down by itself: what is compared, by value, is the plan without all other hulls, and the ground. Safe to share
 * between threads.
 */
public final class KnownLaydowns {
    private static final int MOST = 200;

    private final Map<String, Known> known = new HashMap<>();

    /** Nothing worked out yet. */
    public KnownLaydowns() {
    }

    private record Known(Plan alone, ElevationGrid ground, Laydown laydown) {
    }

    /**
     * How each hull of a plan comes to lie.
     *
     * @param plan   the plan
     * @param ground the ground as it is when the hulls are laid down
     * @return one answer for each hull, in the plan's order
     */
    public List<Laydown> all(Plan plan, ElevationGrid ground) {
        List<Laydown> laydowns = new ArrayList<>();
        for (Hull hull : plan.hulls()) {
            laydowns.add(of(plan.withHulls(List.of(hull)), hull, ground));
        }
        return laydowns;
    }

    private Laydown of(Plan alone, Hull hull, ElevationGrid ground) {
        Known before;
        synchronized (this) {
            before = known.get(hull.id());
        }
        if (before != null && before.alone.equals(alone)
                && (before.ground == ground || before.ground.equals(ground))) {
            return before.laydown;
        }
        Laydown laydown = LaydownOfHull.of(alone, hull, ground);
        synchronized (this) {
            if (known.size() >= MOST) {
                known.clear();
            }
            known.put(hull.id(), new Known(alone, ground, laydown));
        }
        return laydown;
    }
}
