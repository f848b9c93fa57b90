// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The shape of one end of the hull.
 *
 * @param kind  flat, domed or conical
 * @param depth depth of the end along the axis (m), zero or more; unused for a flat end
 */
public record EndShape(Kind kind, double depth) {
    /** A flat end. */
    public static final EndShape FLAT = new EndShape(Kind.FLAT, 0);
    private static final int DOME_STEPS = 8;

    /** The kinds of end. */
    public enum Kind {
        /** A plane across the axis. */
        FLAT,
        /** Half an ellipsoid. */
        DOME,
        /** A cone to a point on the axis. */
        CONE
    }

    /** Refuses a negative depth. */
    public EndShape {
        Objects.requireNonNull(kind, "kind");
        Require.notNegative("depth of an end", depth, "m");
    }

    /**
     * The depth that counts.
     *
     * @return depth along the axis (m), nothing for a flat end
     */
    public double reach() {
        return kind == Kind.FLAT ? 0 : depth;
    }

    /**
     * The outline of this end from the lay-down side over the tip to the other side, as pairs of depth in from the
     * end's tip plane (m) and distance off the axis (m).
     *
     * @param radius the hull's radius (m), positive
     * @return the pairs, from +radius to -radius
     */
    public List<double[]> outline(double radius) {
        List<double[]> pairs = new ArrayList<>();
        double reach = reach();
        if (reach == 0) {
            pairs.add(new double[] {0, radius});
            pairs.add(new double[] {0, -radius});
        } else if (kind == Kind.CONE) {
            pairs.add(new double[] {reach, radius});
            pairs.add(new double[] {0, 0});
            pairs.add(new double[] {reach, -radius});
        } else {
            for (int i = 0; i <= 2 * DOME_STEPS; i++) {
                double angle = Math.PI * i / (2.0 * DOME_STEPS);
                pairs.add(new double[] {reach * (1 - Math.sin(angle)), radius * Math.cos(angle)});
            }
        }
        return pairs;
    }
}
