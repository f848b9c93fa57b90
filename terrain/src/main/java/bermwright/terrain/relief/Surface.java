// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

/** A surface whose value at a node follows from the heights around it. */
public interface Surface {
    /**
     * How far around a node heights count.
     *
     * @return nodes on each side (1), zero or more
     */
    int margin();

    /**
     * Whether the outermost nodes have values too, their missing neighbours taken from the edge.
     *
     * @return true where they have; false where they are {@code NaN}
     */
    default boolean reachesEdge() {
        return false;
    }

    /**
     * The unit of the values.
     *
     * @return the unit as it is written beside the values, {@code 1} for pure numbers
     */
    String unit();

    /**
     * Works out a row of a block; what it gives may depend on the heights within the margin only.
     *
     * @param heights the heights of the block with its margin
     * @param row     row of the block (1), 0 is the southernmost
     * @param into    takes the values, as many as the block has columns; {@code NaN} where there is none
     */
    void row(HeightBlock heights, int row, double[] into);
}
