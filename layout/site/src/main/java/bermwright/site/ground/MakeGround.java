// SPDX-License-Identifier: Apache-2.0
package bermwright.site.ground;

import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Require;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.gridfile.GeoTiffWriter;
import bermwright.terrain.gridfile.ReferenceSystem;
import bermwright.terrain.shape.MadeGround;
import java.io.IOException;
import java.nio.file.Path;

/** Writes invented ground of any size as an elevation file. */
public final class MakeGround {
    private MakeGround() {
    }

    /**
     * Size and place of the ground.
     *
     * @param rows    rows of nodes (1), at least 2
     * @param columns columns of nodes (1), at least 2
     * @param spacing distance between nodes (m), positive
     * @param middle  its middle, in metres of the south polar system
     */
    public record Size(int rows, int columns, double spacing, Point middle) {
        /** Refuses ground without nodes. */
        public Size {
            Require.that(rows >= 2 && columns >= 2, "%s x %s nodes; accepted: at least 2 x 2.", rows, columns);
            Require.positive("spacing", spacing, "m");
        }
    }

    /**
     * Writes invented ground: tiles packed by deflate with overviews, in the Moon's south polar system.
     *
     * @param file     the file, replaced where it exists
     * @param size     its size and place
     * @param recipe   what it is like
     * @param seed     the seed
     * @param progress told how far it has come
     * @throws InputException if the file cannot be written
     */
    public static void write(Path file, Size size, MadeGround.Recipe recipe, long seed, Progress progress) {
        double west = size.middle.east() - (size.columns - 1) * size.spacing / 2;
        double south = size.middle.north() - (size.rows - 1) * size.spacing / 2;
        GridFrame frame = new GridFrame(size.rows, size.columns, west, south, size.spacing);
        try {
            GeoTiffWriter.write(file, new MadeGround(frame, recipe, seed), ReferenceSystem.lunarSouthPolar(), progress);
        } catch (IOException e) {
            throw GroundWork.unwritable(file, e);
        }
    }
}
