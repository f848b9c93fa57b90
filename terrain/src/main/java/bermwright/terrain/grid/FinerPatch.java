// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * Finer nodes put over a part of a grid, where something is built: no patch ever lies over another, and each node of
 * the grid inside a patch is one of its nodes.
 */
public final class FinerPatch {
    /** Most nodes of one patch (1); a larger area is cut less finely. */
    private static final double MOST_NODES = 8e6;
    /** Coordinates this near a node are on it (cells). */
    private static final double ROUNDING = 1e-6;

    private FinerPatch() {
    }

    /**
     * This ground on finer nodes over an area, and over all of each patch that the area touches.
     *
     * @param ground  the ground, with the patches it has
     * @param area    the area; what lies beyond the grid is left out
     * @param spacing greatest true distance between the patch's nodes (m), positive
     * @return the patch, its heights those of the ground; {@code NaN} where they are missing
     * @throws IllegalArgumentException if nothing of the area lies on the grid
     */
    public static ElevationGrid over(ElevationGrid ground, Ring.Box area, double spacing) {
        GridFrame frame = ground.frame();
        int[] nodes = FinerNodes.window(frame, area.southwest(), area.northeast());
        boolean grown = true;
        while (grown) {
            grown = false;
            for (ElevationGrid patch : ground.patches()) {
                int[] taken = nodes(frame, patch.frame());
                if (touches(nodes, taken) && !holds(nodes, taken)) {
                    nodes = new int[] {Math.min(nodes[0], taken[0]), Math.min(nodes[1], taken[1]),
                        Math.max(nodes[2], taken[2]), Math.max(nodes[3], taken[3])};
                    grown = true;
                }
            }
        }
        return ground.patch(frame.finerPart(nodes[0], nodes[1], nodes[2], nodes[3], times(ground, nodes, spacing)));
    }

    /** Parts into which each cell is cut. */
    private static int times(ElevationGrid ground, int[] nodes, double spacing) {
        double cells = (double) (nodes[2] - nodes[0]) * (nodes[3] - nodes[1]);
        int most = (int) Math.max(1, Math.sqrt(MOST_NODES / cells));
        return Math.min(most, (int) Math.max(1, Math.ceil(ground.trueSpacing() / spacing - ROUNDING)));
    }

    /**
     * A ground with a patch put on it, in place of those that lie under it.
     *
     * @param ground the ground
     * @param patch  a patch made by {@link #over}, with other heights or not
     * @return the ground, its own nodes inside the patch at the patch's heights
     */
    public static ElevationGrid put(ElevationGrid ground, ElevationGrid patch) {
        GridFrame frame = ground.frame();
        int[] nodes = nodes(frame, patch.frame());
        int times = (int) Math.round(frame.spacing() / patch.frame().spacing());
        double[] heights = ground.heights();
        for (int row = nodes[0]; row <= nodes[2]; row++) {
            for (int column = nodes[1]; column <= nodes[3]; column++) {
                heights[row * frame.columns() + column] =
                        patch.nodeHeight((row - nodes[0]) * times, (column - nodes[1]) * times);
            }
        }
        List<ElevationGrid> patches = new ArrayList<>();
        for (ElevationGrid other : ground.patches()) {
            if (!holds(nodes, nodes(frame, other.frame()))) {
                patches.add(other);
            }
        }
        patches.add(patch);
        return ground.withHeights(heights).withPatches(patches);
    }

    /**
     * Rows and columns of a grid on which the edges of one of its patches lie.
     *
     * @param grid  nodes of the grid
     * @param patch nodes of the patch
     * @return first row and column, last row and column (1)
     */
    public static int[] nodes(GridFrame grid, GridFrame patch) {
        double s = grid.spacing();
        return new int[] {(int) Math.round((patch.south() - grid.south()) / s),
            (int) Math.round((patch.west() - grid.west()) / s),
            (int) Math.round((patch.northEdge() - grid.south()) / s),
            (int) Math.round((patch.eastEdge() - grid.west()) / s)};
    }

    private static boolean touches(int[] one, int[] other) {
        return other[0] <= one[2] && one[0] <= other[2] && other[1] <= one[3] && one[1] <= other[3];
    }

    private static boolean holds(int[] outer, int[] inner) {
        return outer[0] <= inner[0] && outer[1] <= inner[1] && outer[2] >= inner[2] && outer[3] >= inner[3];
    }
}
