// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Require;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;
import java.io.IOException;

/** One image of a file as heights on a frame. */
final class StoredGround implements HeightSource {
    private final Samples samples;
    private final GridFrame frame;
    private final boolean firstLineIsNorth;
    private final HeightScale scale;
    private final double metreScale;
    private final FileTrouble trouble;

    /** Where an image lies. */
    record Lie(GridFrame frame, boolean firstLineIsNorth) {
    }

    StoredGround(Samples samples, Lie lie, HeightScale scale, double metreScale, FileTrouble trouble) {
        this.samples = samples;
        this.frame = lie.frame;
        this.firstLineIsNorth = lie.firstLineIsNorth;
        this.scale = scale;
        this.metreScale = metreScale;
        this.trouble = trouble;
    }

    StoredGround with(HeightScale other, double otherMetreScale) {
        return new StoredGround(samples, new Lie(frame, firstLineIsNorth), other, otherMetreScale, trouble);
    }

    HeightScale scale() {
        return scale;
    }

    Samples samples() {
        return samples;
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
    public int blockRows() {
        return samples.blockHeight();
    }

    @Override
    public void read(NodeRange block, double[] into) {
        Require.that(block.isIn(frame) && into.length >= block.nodes(), "the block leaves the ground, or the array is"
                + " too short for it.");
        try {
            for (int i = 0; i < block.rows(); i++) {
                int row = block.firstRow() + i;
                int at = i * block.columns();
                samples.run(firstLineIsNorth ? frame.rows() - 1 - row : row, block.firstColumn(), block.columns(),
                        into, at);
                scale.convert(into, at, block.columns());
            }
        } catch (IOException e) {
            throw trouble.unreadable("heights", "they cannot be read (" + e.getMessage() + ")", "a readable file", e);
        }
    }
}
