// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Require;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;

/**
 * The heights of a block of nodes and of a margin around it; beyond the edge of the ground the edge is repeated.
 *
 * <p>Belongs to one thread and is filled again for the next block.
 */
public final class HeightBlock {
    private final HeightSource ground;
    private final int margin;
    private NodeRange block;
    private double[] heights = new double[0];
    private double[] read = new double[0];
    private int stride;

    HeightBlock(HeightSource ground, int margin) {
        this.ground = ground;
        this.margin = margin;
    }

    void fill(NodeRange nodes) {
        GridFrame frame = ground.frame();
        block = nodes;
        stride = nodes.columns() + 2 * margin;
        int rows = nodes.rows() + 2 * margin;
        long size = (long) stride * rows;
        Require.that(size < Integer.MAX_VALUE, "%s nodes are too many for one block.", size);
        if (heights.length < size) {
            heights = new double[(int) size];
        }
        NodeRange there = nodes.widened(margin, frame);
        if (there.rows() == rows && there.columns() == stride) {
            ground.read(there, heights);
            return;
        }
        if (read.length < there.nodes()) {
            read = new double[(int) there.nodes()];
        }
        ground.read(there, read);
        for (int r = 0; r < rows; r++) {
            int from = clamp(nodes.firstRow() - margin + r, frame.rows()) - there.firstRow();
            for (int c = 0; c < stride; c++) {
                int column = clamp(nodes.firstColumn() - margin + c, frame.columns()) - there.firstColumn();
                heights[r * stride + c] = read[from * there.columns() + column];
            }
        }
    }

    private static int clamp(int value, int count) {
        return value < 0 ? 0 : Math.min(value, count - 1);
    }

    /**
     * The ground of which this is a block.
     *
     * @return the frame of all of the ground
     */
    public GridFrame frame() {
        return ground.frame();
    }

    /**
     * The true distance between neighbouring nodes.
     *
     * @return the distance (m), positive
     */
    public double trueSpacing() {
        return ground.trueSpacing();
    }

    /**
     * The nodes of the block, without the margin.
     *
     * @return the nodes
     */
    public NodeRange nodes() {
        return block;
    }

    /**
     * The height at a node.
     *
     * @param row    row of the block (1), from minus the margin on; 0 is the southernmost
     * @param column column of the block (1), from minus the margin on; 0 is the westernmost
     * @return the height (m), {@code NaN} where missing
     */
    public double height(int row, int column) {
        return heights[(row + margin) * stride + column + margin];
    }

    /** All heights, row after row; for loops that must be fast. Never changed by the one who asks. */
    double[] heights() {
        return heights;
    }

    /** Where a row's node 0 stands in {@link #heights()}. */
    int place(int row) {
        return (row + margin) * stride + margin;
    }

    int stride() {
        return stride;
    }
}
