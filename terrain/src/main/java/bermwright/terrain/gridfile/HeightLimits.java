// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.terrain.grid.ElevationGrid;
import java.util.List;
import java.util.Locale;

/** What a grid of heights may be without being taken for a mistake. */
final class HeightLimits {
    private static final long MOST_NODES = 400_000_000L;
    private static final double BYTES_A_NODE = 8;
    /** Room for the blocks in hand and all else. */
    private static final double SHARE_OF_MEMORY = 0.8;
    /** No solid body has heights beyond this; it is a no-data mark that the file does not declare. */
    static final double ABSURD = 1e7;
    /** Relief of the Moon stays within 11 km of its sphere, that of other bodies with a name within 30 km. */
    private static final double UNUSUAL = 30_000;

    private HeightLimits() {
    }

    static void checkSize(long columns, long rows, FileTrouble trouble) {
        if (columns < 2 || rows < 2) {
            throw trouble.badValue("size", columns + " x " + rows, "at least 2 x 2 heights");
        }
        long most = (long) Math.min(MOST_NODES, Runtime.getRuntime().maxMemory() * SHARE_OF_MEMORY / BYTES_A_NODE);
        if (columns > most / rows) {
            throw trouble.badValue("size", columns + " x " + rows, "up to " + most
                    + " heights with the memory Java has; cut out the site with gdal_translate -projwin, or give"
                    + " Java more with -Xmx");
        }
    }

    static double checked(double height, FileTrouble trouble) {
        if (Double.isInfinite(height) || Math.abs(height) > ABSURD) {
            throw trouble.badValue("height", height, "a height within " + ABSURD
                    + " m; gdal_edit.py -a_nodata VALUE declares a mark for missing heights");
        }
        return height;
    }

    static void addCautions(ElevationGrid grid, List<String> cautions) {
        double lowest = grid.lowest();
        double highest = grid.highest();
        if (lowest < -UNUSUAL || highest > UNUSUAL) {
            cautions.add(String.format(Locale.ROOT, "Heights reach from %.1f to %.1f m: are they metres above the"
                    + " sphere, and is the mark for missing heights declared?", lowest, highest));
        }
    }
}
