// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import java.util.Arrays;
import java.util.List;

/** Slopes the ground from a line of wanted heights outwards until it meets the ground as it lies. */
final class SideField {
    private static final double FIRST_REACH = 1.5;
    private static final double CELLS_BEYOND = 4;
    private static final double CLOSE_TO_REACH = 1.5;

    private final ElevationGrid ground;
    private final Line line;
    private final double cut;
    private final double fill;
    private final double[] nearest;
    private final double[] onLine;
    private final double[] highest;
    private final double[] lowest;

    /** A line with a height at each point; sides begin at a distance from it (m, projected). */
    record Line(List<Point> points, double[] heights, double halfWidth) {
    }

    /** The height wanted at a node; {@code NaN} where the node is not inside. */
    interface Inside {
        double height(int node, double distanceToLine, double heightOnLine);
    }

    private SideField(ElevationGrid ground, Line line, SideSlopes sides) {
        this.ground = ground;
        this.line = line;
        this.cut = Math.tan(sides.cut()) * ground.metreScale();
        this.fill = Math.tan(sides.fill()) * ground.metreScale();
        int size = ground.frame().size();
        nearest = new double[size];
        onLine = new double[size];
        highest = new double[size];
        lowest = new double[size];
    }

    static ShapedGround shaped(ElevationGrid ground, Line line, SideSlopes sides, Inside inside) {
        SideField field = new SideField(ground, line, sides);
        double reach = line.halfWidth + FIRST_REACH * field.greatestAtLine() / Math.min(field.cut, field.fill)
                + CELLS_BEYOND * ground.frame().spacing();
        double longest = (ground.frame().rows() + ground.frame().columns()) * ground.frame().spacing();
        double[] heights = field.heights(reach, inside);
        while (field.isUnmet(heights, reach) && reach < longest) {
            reach *= 2;
            heights = field.heights(reach, inside);
        }
        return ShapedGround.of(ground, heights);
    }

    private double greatestAtLine() {
        double most = 0;
        for (int i = 0; i < line.heights.length; i++) {
            double off = Math.abs(line.heights[i] - ground.height(line.points.get(i)));
            most = Double.isNaN(off) ? most : Math.max(most, off);
        }
        return most;
    }

    private double[] heights(double reach, Inside inside) {
        Arrays.fill(nearest, Double.POSITIVE_INFINITY);
        Arrays.fill(highest, Double.POSITIVE_INFINITY);
        Arrays.fill(lowest, Double.NEGATIVE_INFINITY);
        EdgeField field = new EdgeField(ground.frame());
        for (int i = 1; i < line.heights.length; i++) {
            double from = line.heights[i - 1];
            double to = line.heights[i];
            field.visit(line.points.get(i - 1), line.points.get(i), reach, (node, share, distance) -> {
                double height = from + share * (to - from);
                if (distance < nearest[node]) {
                    nearest[node] = distance;
                    onLine[node] = height;
                }
                double beside = Math.max(0, distance - line.halfWidth);
                highest[node] = Math.min(highest[node], height + beside * cut);
                lowest[node] = Math.max(lowest[node], height - beside * fill);
            });
        }
        double[] heights = ground.heights();
        for (int node = 0; node < heights.length; node++) {
            if (!Double.isNaN(heights[node])) {
                double wanted = inside.height(node, nearest[node], onLine[node]);
                heights[node] = !Double.isNaN(wanted) ? wanted
                        : Math.min(Math.max(heights[node], lowest[node]), Math.max(highest[node], lowest[node]));
            }
        }
        return heights;
    }

    /** Whether the ground is still changed where the reach ends. */
    private boolean isUnmet(double[] heights, double reach) {
        double edge = reach - CLOSE_TO_REACH * ground.frame().spacing();
        int columns = ground.frame().columns();
        for (int node = 0; node < heights.length; node++) {
            if (nearest[node] > edge && nearest[node] <= reach
                    && heights[node] != ground.nodeHeight(node / columns, node % columns)
                    && !Double.isNaN(heights[node])) {
                return true;
            }
        }
        return false;
    }
}
