// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.body;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * The outside of the hull.
 *
 * @param length  length with both ends (m), positive
 * @param radius  radius (m), positive
 * @param baseEnd shape of the end it stands on
 * @param farEnd  shape of the other end
 */
public record Outline(double length, double radius, EndShape baseEnd, EndShape farEnd) {
    /** Refuses a hull without length or radius, or ends deeper than the hull is long. */
    public Outline {
        Require.positive("hull length", length, "m");
        Require.positive("hull radius", radius, "m");
        Objects.requireNonNull(baseEnd, "baseEnd");
        Objects.requireNonNull(farEnd, "farEnd");
        Require.that(baseEnd.reach() + farEnd.reach() <= length,
                "the ends are %s m and %s m deep in a hull of %s m; accepted: together at most its length.",
                baseEnd.reach(), farEnd.reach(), length);
    }

    /**
     * The corners of the lengthwise section, as pairs of s from the base plane along the axis (m) and n off the axis
     * towards the lay-down side (m), once round. A base that is not flat is taken as standing in a skirt of its full
     * radius, for the hull needs an edge to turn about.
     *
     * @return the pairs in order
     */
    public List<double[]> section() {
        List<double[]> corners = new ArrayList<>();
        corners.add(new double[] {0, -radius});
        corners.add(new double[] {0, radius});
        for (double[] pair : farEnd.outline(radius)) {
            corners.add(new double[] {length - pair[0], pair[1]});
        }
        return corners;
    }
}
