// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

/** What a grid of heights may be without being taken for a mistake, and how much memory reading may take. */
final class HeightLimits {
    private static final long MOST_NODES = 400_000_000L;
    private static final double BYTES_A_NODE = 8;
    /** Room for the blocks in hand and all else. */
    private static final double SHARE_OF_MEMORY = 0.6;
    private static final double SHARE_OF_BLOCKS = 0.125;
    private static final long MOST_BYTES_OF_BLOCKS = 256L << 20;
    /** No solid body has heights beyond this; it is a no-data mark that the file does not declare. */
    static final double ABSURD = 1e7;
    /** A node spacing outside this range is no map of ground. */
    private static final double LEAST_SPACING = 1e-4;
    private static final double GREATEST_SPACING = 1e6;
    /** No map of the Moon reaches further from its origin. */
    private static final double FARTHEST = 1e9;

    private HeightLimits() {
    }

    /** Refuses what is too small to be ground, and what cannot be placed. */
    static void checkFrame(String sizeKey, long columns, long rows, FileTrouble trouble) {
        if (columns < 2 || rows < 2 || columns > Integer.MAX_VALUE || rows > Integer.MAX_VALUE) {
            throw trouble.badValue(sizeKey, columns + " x " + rows, "at least 2 x 2 heights, at most "
                    + Integer.MAX_VALUE + " a side");
        }
    }

    static void checkSpacing(String key, double spacing, FileTrouble trouble) {
        if (!(spacing >= LEAST_SPACING && spacing <= GREATEST_SPACING)) {
            throw trouble.badValue(key, spacing, "from " + LEAST_SPACING + " to " + GREATEST_SPACING + ", in metres");
        }
    }

    static void checkPlace(String key, double east, double north, FileTrouble trouble) {
        if (!(Math.abs(east) <= FARTHEST && Math.abs(north) <= FARTHEST)) {
            throw trouble.badValue(key, east + ", " + north, "coordinates within " + FARTHEST + " m");
        }
    }

    /** Refuses a grid that memory cannot hold whole. */
    static void checkWhole(String sizeKey, long columns, long rows, FileTrouble trouble) {
        long most = mostNodes();
        if (columns > most / rows) {
            throw trouble.badValue(sizeKey, columns + " x " + rows, "up to " + most
                    + " heights at once with the memory Java has; cut out the site with gdal_translate -projwin, or"
                    + " give Java more with -Xmx");
        }
    }

    static long mostNodes() {
        return (long) Math.min(MOST_NODES, Runtime.getRuntime().maxMemory() * SHARE_OF_MEMORY / BYTES_A_NODE);
    }

    /** How many bytes of unpacked blocks are kept; the stated budget of reading. */
    static long blockBytes() {
        return (long) Math.min(MOST_BYTES_OF_BLOCKS, Runtime.getRuntime().maxMemory() * SHARE_OF_BLOCKS);
    }

    static RuntimeException absurd(double height, FileTrouble trouble) {
        return trouble.badValue("height", height, "a height within " + ABSURD
                + " m; gdal_edit.py -a_nodata VALUE declares a mark for missing heights");
    }
}
