// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.foundation.Ring;
import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/**
 * Shapes the ground inside an outline to a wanted surface and slopes the sides to the ground around it: benches,
 * trenches and pads.
 *
 * <p>Sides fall or rise square to the outline at their slope until they meet the ground. Heights are made at the
 * nodes, so an outline is kept to within a cell.
 */
public final class Grading {
    private Grading() {
    }

    /**
     * The ground shaped.
     *
     * @param ground the ground
     * @param area   the outline
     * @param wanted height wanted inside (m) from east (m) and north (m)
     * @param sides  slopes of the sides
     * @return the ground after
     */
    public static ShapedGround shaped(ElevationGrid ground, Ring area, DoubleBinaryOperator wanted,
            SideSlopes sides) {
        EdgeField field = new EdgeField(ground.frame());
        List<Point> outline = field.pieces(area);
        double[] heights = outline.stream().mapToDouble(p -> height(wanted, p)).toArray();
        boolean[] inside = field.inside(area);
        return SideField.shaped(ground, new SideField.Line(outline, heights, 0), sides,
                (node, distance, onLine) -> inside[node] ? height(wanted, field.place(node)) : Double.NaN);
    }

    private static double height(DoubleBinaryOperator wanted, Point place) {
        return Require.finite("wanted height", wanted.applyAsDouble(place.east(), place.north()), "m");
    }
}
