// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.scene;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import java.util.Objects;

/**
 * A straight, upright wall; it counts by its areal density where a ray passes over its line below its top.
 *
 * @param from         start of its line
 * @param to           end of its line
 * @param foot         height of its foot (m)
 * @param top          height of its top (m), above the foot
 * @param thickness    how thick it stands across its line (m), positive
 * @param arealDensity mass over the area of its face (kg/m2), zero or more
 */
public record WallSolid(Point from, Point to, double foot, double top, double thickness, double arealDensity) {
    /** Refuses a wall without height or length. */
    public WallSolid {
        Objects.requireNonNull(from, "from");
        Require.positive("length of a wall", from.distance(to), "m");
        Require.that(top > foot, "a wall's top is at %s m and its foot at %s m; the top must be higher", top, foot);
        Require.positive("thickness of a wall", thickness, "m");
        Require.notNegative("areal density of a wall", arealDensity, "kg/m2");
    }
}
