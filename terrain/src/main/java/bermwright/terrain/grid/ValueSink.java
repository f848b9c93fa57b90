// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

/**
 * Takes the values of a surface block by block, such as a file that is being written.
 *
 * <p>Blocks are cut from the north-west corner on. Safe to give blocks from many threads.
 */
public interface ValueSink {
    /**
     * In how many rows blocks must come.
     *
     * @return rows of each block but the southernmost (1), at least 1
     */
    int blockRows();

    /**
     * In how many columns blocks must come.
     *
     * @return columns of each block but the easternmost (1), at least 1
     */
    int blockColumns();

    /**
     * Whether {@link #endOfBand()} must be called after all blocks of each band from west to east.
     *
     * @return true where blocks of one band must all be there before the next band begins
     */
    boolean isByBands();

    /**
     * Takes a block.
     *
     * @param block  its nodes
     * @param values its values, row by row from the southernmost, {@code NaN} where there is none
     */
    void put(NodeRange block, float[] values);

    /** All blocks of a band are there. */
    void endOfBand();
}
