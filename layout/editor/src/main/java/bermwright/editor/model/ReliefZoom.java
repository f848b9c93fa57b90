// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import java.util.List;

/** Brings one size of the ground's picture to the screen's own scale, between its pixels, line by line. */
final class ReliefZoom {
    private final List<ReliefPicture.Tile> tiles;
    private final int side;
    private final int width;
    private final int height;
    private final double size;
    private final MapCamera camera;

    /**
     * A change of scale.
     *
     * @param tiles  tiles of one size, row by row from the north-west
     * @param side   pixels from one tile to the next
     * @param data   what the picture was painted from
     * @param level  the size
     * @param camera the screen
     */
    ReliefZoom(List<ReliefPicture.Tile> tiles, int side, ReliefData data, int level, MapCamera camera) {
        this.tiles = tiles;
        this.side = side;
        this.width = data.width(level);
        this.height = data.height(level);
        this.size = data.grid().frame().spacing() * (1 << level);
        this.camera = camera;
    }

    void paint(int y, int[] pixels, int across) {
        MapCamera.Box first = tiles.get(0).box();
        double row = (first.north() - camera.place(0, y + 0.5).north()) / size - 0.5;
        if (row < -0.5 || row > height - 0.5) {
            return;
        }
        int upper = (int) Math.max(0, Math.floor(row));
        int lower = Math.min(height - 1, upper + 1);
        int down = weight(row - upper);
        double step = camera.metresPerPixel() / size;
        double column = (camera.place(0.5, 0).east() - first.west()) / size - 0.5;
        for (int x = 0; x < across; x++, column += step) {
            if (column < -0.5 || column > width - 0.5) {
                continue;
            }
            int left = (int) Math.max(0, Math.floor(column));
            int right = Math.min(width - 1, left + 1);
            int over = weight(column - left);
            pixels[y * across + x] = mixed(mixed(pixel(left, upper), pixel(right, upper), over),
                    mixed(pixel(left, lower), pixel(right, lower), over), down);
        }
    }

    /** A share in 256ths. */
    private static int weight(double share) {
        return (int) (256 * Math.max(0, Math.min(1, share)));
    }

    private int pixel(int x, int y) {
        ReliefPicture.Tile tile = tiles.get(y / side * ((width + side - 1) / side) + x / side);
        return tile.pixels()[y % side * tile.width() + x % side];
    }

    /** Two colours mixed, red and blue in one go. */
    private static int mixed(int one, int other, int share) {
        int redAndBlue = ((one & 0xFF00FF) * (256 - share) + (other & 0xFF00FF) * share >>> 8) & 0xFF00FF;
        int green = ((one & 0xFF00) * (256 - share) + (other & 0xFF00) * share >>> 8) & 0xFF00;
        return 0xFF000000 | redAndBlue | green;
    }
}
