// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;
import java.util.Arrays;

/** The best score in each square of cells of a region, {@code NaN} where the group cannot lie. */
public final class ScoreMap implements HeightSource {
    private final SurveyOrder.Window window;
    private final int square;
    private final int rows;
    private final int columns;
    private final double metreScale;
    private final GridFrame frame;
    private final float[] values;

    ScoreMap(SurveyOrder order, GridFrame ground, double metreScale) {
        this.window = order.window();
        this.square = order.mapSquare();
        this.metreScale = metreScale;
        rows = (window.rows() - 1) / square + 1;
        columns = (window.columns() - 1) / square + 1;
        double middle = (square - 1) / 2.0;
        frame = new GridFrame(Math.max(2, rows), Math.max(2, columns), ground.west() + (window.firstColumn() + middle)
                * ground.spacing(), ground.south() + (window.firstRow() + middle) * ground.spacing(),
                square * ground.spacing());
        values = new float[frame.size()];
        Arrays.fill(values, Float.NaN);
    }

    void put(ScoredBlock block) {
        int across = (block.columns - 1) / square + 1;
        int row = (block.firstRow - window.firstRow()) / square;
        int column = (block.firstColumn - window.firstColumn()) / square;
        for (int r = 0; r * across < block.map.length; r++) {
            System.arraycopy(block.map, r * across, values, (row + r) * frame.columns() + column, across);
        }
    }

    /**
     * How many cells along each side share a value.
     *
     * @return cells (1), a power of two
     */
    public int square() {
        return square;
    }

    /**
     * The score of a square.
     *
     * @param row    row (1), 0 is the southernmost
     * @param column column (1), 0 is the westernmost
     * @return the best score in it (1), {@code NaN} where the group cannot lie
     */
    public float score(int row, int column) {
        return values[row * frame.columns() + column];
    }

    @Override
    public GridFrame frame() {
        return frame;
    }

    @Override
    public double metreScale() {
        return metreScale;
    }

    @Override
    public void read(NodeRange block, double[] into) {
        for (int r = 0; r < block.rows(); r++) {
            for (int c = 0; c < block.columns(); c++) {
                into[r * block.columns() + c] = score(block.firstRow() + r, block.firstColumn() + c);
            }
        }
    }
}
