// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.foundation.Vec3;
import bermwright.numeric.Bracket;
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
        Vec3 direction = SpaceWords.direction(way);
        double clear = Bracket.halved(low, high, LAST_HALVINGS, by -> !isClear(direction.times(by))).high();
        return String.format(Locale.ROOT, "Shift hull %s and its gear %.1f m %s, or turn it.", falls.hull().id(),
                Math.ceil(clear * 10) / 10, SpaceWords.compass(direction.x(), direction.y()));
    }

    /** The least shift in a direction at the one tilt, not farther than what is known. */
    private double least(Vec3 direction, Convex there, double farthest) {
        if (Apart.of(there, SweepInSpace.shifted(body, direction.times(-farthest))).distance() < wanted) {
            return farthest;
        }
        return Bracket.halved(0, farthest, FIRST_HALVINGS, by ->
                !(Apart.of(there, SweepInSpace.shifted(body, direction.times(-by))).distance() >= wanted)).high();
    }

    private boolean isClear(Vec3 by) {
        Convex seen = SweepInSpace.shifted(body, by.times(-1));
        Optional<SweepInSpace.Nearest> nearest = line == null ? new SweepInSpace(falls.falling()).nearest(seen, wanted)
                : SweepInSpace.nearest(falls.rig(), line, seen, falls.falling().wander(), wanted);
        return nearest.isEmpty() || nearest.get().apart().distance() >= wanted;
    }
}
