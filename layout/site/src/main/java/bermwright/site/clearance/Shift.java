// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.foundation.Vec3;
import bermwright.site.space.Apart;
import bermwright.site.space.Convex;
import bermwright.site.space.HullInSpace;
import bermwright.site.space.LinePath;
import bermwright.site.space.SweepInSpace;
import java.util.Locale;
import java.util.Optional;

/**
 * How far a hull with its gear would have to stand off to keep a distance from a body: the least of eight directions,
 * tried over all tilts, on ground as high as here.
 *
 * @param falls  the hull that is lowered
 * @param line   its line; nothing where its body is meant
 * @param body   the body
 * @param at     where the two are nearest now
 * @param wanted the distance to keep (m)
 */
record Shift(HullInSpace falls, LinePath line, Convex body, SweepInSpace.Nearest at, double wanted) {
    private static final double FARTHEST = 120;
    private static final int FIRST_HALVINGS = 9;
    private static final int LAST_HALVINGS = 5;
    private static final double FARTHER = 1.25;

    /** Advice in words; nothing where no shift helps. */
    String words() {
        Convex there = line == null ? falls.falling().body(at.tilt(), at.swing()) : line.sheet(at.tilt(), at.swing());
        double best = FARTHEST;
        int way = -1;
        for (int k = 0; k < 8; k++) {
            double least = least(SpaceWords.direction(k), there, best);
            if (least < best) {
                best = least;
                way = k;
            }
        }
        if (way < 0) {
            return "";
        }
        double low = best;
        double high = best;
        while (!isClear(SpaceWords.direction(way).times(high))) {
            low = high;
            high = FARTHER * high + 1;
            if (high > FARTHEST) {
                return "";
            }
        }
        for (int i = 0; i < LAST_HALVINGS && high > low; i++) {
            double middle = (low + high) / 2;
            boolean clear = isClear(SpaceWords.direction(way).times(middle));
            low = clear ? low : middle;
            high = clear ? middle : high;
        }
        return String.format(Locale.ROOT, "Shift hull %s and its gear %.1f m %s, or turn it.", falls.hull().id(),
                Math.ceil(high * 10) / 10, SpaceWords.compass(SpaceWords.direction(way).x(),
                        SpaceWords.direction(way).y()));
    }

    /** The least shift in a direction at the one tilt, not farther than what is known. */
    private double least(Vec3 direction, Convex there, double farthest) {
        if (Apart.of(there, SweepInSpace.shifted(body, direction.times(-farthest))).distance() < wanted) {
            return farthest;
        }
        double low = 0;
        double high = farthest;
        for (int i = 0; i < FIRST_HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (Apart.of(there, SweepInSpace.shifted(body, direction.times(-middle))).distance() >= wanted) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private boolean isClear(Vec3 by) {
        Convex seen = SweepInSpace.shifted(body, by.times(-1));
        Optional<SweepInSpace.Nearest> nearest = line == null ? new SweepInSpace(falls.falling()).nearest(seen, wanted)
                : SweepInSpace.nearest(falls.rig(), line, seen, falls.falling().wander(), wanted);
        return nearest.isEmpty() || nearest.get().apart().distance() >= wanted;
    }
}
