// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/**
 * Remembers depth maps, so that a hull whose cover is the very same is not measured again. Hull, cover and surface are
 * compared by value; a map that reached beyond the finer patch that the hull lies in is measured each time. Safe to
 * share between threads.
 */
public final class DepthMaps {
    /** Nodes of surfaces that are kept at most (1). */
    private static final long MOST_NODES = 6_000_000;

    private final Deque<Kept> kept = new ArrayDeque<>();

    /** Nothing measured yet. */
    public DepthMaps() {
    }

    private record Kept(CoveredHull covered, ElevationGrid near, DepthMap map) {
        boolean is(CoveredHull hull, ElevationGrid surface, int along, int around) {
            return map.rows() == along && map.columns() == around && covered.equals(hull) && near.equals(surface);
        }
    }

    /**
     * Measures the depth, or gives the map that was measured of the very same before.
     *
     * @param covered the hull and the cover it was to have
     * @param surface the finished surface
     * @param along   cells along the hull (1), positive
     * @param around  cells around it (1), positive
     * @return the map
     */
    public DepthMap of(CoveredHull covered, ElevationGrid surface, int along, int around) {
        Point middle = covered.hull().middle().plan();
        ElevationGrid near = surface.around(middle.east(), middle.north());
        Optional<DepthMap> known = near == surface ? Optional.empty() : known(covered, near, along, around);
        if (known.isPresent()) {
            return known.get();
        }
        SurfaceDistance distance = new SurfaceDistance(surface, middle, covered.faces());
        DepthMap map = DepthMap.of(covered, distance, along, around);
        if (near != surface && !distance.reachedBeyond()) {
            keep(new Kept(covered, near, map));
        }
        return map;
    }

    private synchronized Optional<DepthMap> known(CoveredHull covered, ElevationGrid near, int along, int around) {
        Optional<Kept> known = kept.stream().filter(k -> k.is(covered, near, along, around)).findFirst();
        known.ifPresent(k -> {
            kept.remove(k);
            kept.addFirst(k);
        });
        return known.map(Kept::map);
    }

    private synchronized void keep(Kept measured) {
        kept.addFirst(measured);
        long nodes = 0;
        for (Kept one : kept) {
            nodes += one.near.frame().size();
        }
        while (nodes > MOST_NODES) {
            nodes -= kept.removeLast().near.frame().size();
        }
    }
}
