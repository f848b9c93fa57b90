// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.terrain.grid.NodeRange;
import java.io.Serializable;

/**
 * What a survey found in a block: the best of each square of the map, the best cell of each tile, and counts.
 *
 * <p>Belongs to the one who asked for it; its arrays are not copied on the way from one machine to another.
 */
public final class ScoredBlock implements Serializable {
    /** Side of a tile in nodes (1). */
    static final int TILE = 64;
    private static final long serialVersionUID = 1L;

    /** Why a cell takes no hull, and how much work it was. */
    enum Count {
        /** Cells whose height is not known, or which are taken. */
        UNKNOWN,
        /** Cells without soil enough within reach. */
        NO_SOIL,
        /** Cells whose every heading is too steep or too near a pad. */
        TOO_STEEP,
        /** Cells where what stands over the bed, the sweep, the gear or the lines rules out every heading. */
        TOO_ROUGH,
        /** Cells from which a relay or the sun is not seen. */
        NO_SIGHT,
        /** Cells where the group can lie. */
        ADMITTED,
        /** Headings that no proven bound puts below the best of their cell. */
        WORKED_OUT
    }

    final int firstRow;
    final int firstColumn;
    final int rows;
    final int columns;
    /** Best score of each square of the map, rows x columns of squares; {@code NaN} where nothing can lie. */
    final float[] map;
    final float[] tileScore;
    final int[] tileCell;
    final long[] counts;

    ScoredBlock(NodeRange block, int mapSquare, float[] scores, long[] counts) {
        firstRow = block.firstRow();
        firstColumn = block.firstColumn();
        rows = block.rows();
        columns = block.columns();
        this.counts = counts.clone();
        int mapAcross = (columns - 1) / mapSquare + 1;
        map = new float[((rows - 1) / mapSquare + 1) * mapAcross];
        java.util.Arrays.fill(map, Float.NaN);
        int tilesAcross = (columns - 1) / TILE + 1;
        tileScore = new float[((rows - 1) / TILE + 1) * tilesAcross];
        tileCell = new int[tileScore.length];
        java.util.Arrays.fill(tileScore, Float.NaN);
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                float score = scores[r * columns + c];
                if (!Float.isNaN(score)) {
                    int square = r / mapSquare * mapAcross + c / mapSquare;
                    map[square] = map[square] >= score ? map[square] : score;
                    int tile = r / TILE * tilesAcross + c / TILE;
                    if (!(tileScore[tile] >= score)) {
                        tileScore[tile] = score;
                        tileCell[tile] = r % TILE * TILE + c % TILE;
                    }
                }
            }
        }
    }
}
