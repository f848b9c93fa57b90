// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Require;

/**
 * Ground whose heights are asked for block by block: a grid in memory or a file that may be far larger than memory.
 *
 * <p>Safe to ask from many threads at once.
 */
public interface HeightSource {
    /**
     * Where the nodes lie.
     *
     * @return the frame of all of the ground
     */
    GridFrame frame();

    /**
     * True metres in one projected metre.
     *
     * @return the metre scale (1), positive
     */
    double metreScale();

    /**
     * The scale as what brings lengths and places into true metres and back.
     *
     * @return true metres against projected ones
     */
    default TrueMetres metres() {
        return new TrueMetres(metreScale());
    }

    /**
     * Copies the heights of a block.
     *
     * @param block the nodes wanted, inside the frame
     * @param into  takes the heights (m), row by row from the southernmost, {@code NaN} where missing; at least as
     *              long as the block has nodes
     * @throws IllegalArgumentException if the block leaves the frame or the array is too short
     */
    void read(NodeRange block, double[] into);

    /**
     * In how many rows heights are best asked for at a time.
     *
     * @return rows of the blocks in which the heights are kept (1), at least 1, counted from the northernmost row
     */
    default int blockRows() {
        return 1;
    }

    /**
     * The true distance between neighbouring nodes.
     *
     * @return spacing times metre scale (m), positive
     */
    default double trueSpacing() {
        return frame().spacing() * metreScale();
    }

    /**
     * A block as a grid of its own, on the same nodes.
     *
     * @param block the nodes wanted, inside the frame, at least 2 x 2
     * @return the grid
     */
    default ElevationGrid window(NodeRange block) {
        Require.that(block.isIn(frame()), "the window leaves the ground.");
        GridFrame part = frame().part(block.firstRow(), block.firstColumn(),
                block.firstRow() + block.rows() - 1, block.firstColumn() + block.columns() - 1);
        return ElevationGrid.filled(part, sink -> {
            double[] row = new double[block.columns()];
            for (int i = 0; i < block.rows(); i++) {
                read(new NodeRange(block.firstRow() + i, block.firstColumn(), 1, block.columns()), row);
                sink.put(i, 0, row, row.length);
            }
        }).withMetreScale(metreScale());
    }
}
