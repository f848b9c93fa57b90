// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.terrain.grid.GridFrame;

/** Paints shade and slope of the ground at the screen's own scale, between the pixels of one size, line by line. */
final class ReliefDetail {
    private final ReliefData data;
    private final ReliefLook look;
    private final MapCamera camera;
    private final int level;
    private final double size;

    /**
     * A painter.
     *
     * @param data   shade and slope
     * @param look   what to show
     * @param camera the screen
     * @param level  the size it is painted from
     */
    ReliefDetail(ReliefData data, ReliefLook look, MapCamera camera, int level) {
        this.data = data;
        this.look = look;
        this.camera = camera;
        this.level = level;
        this.size = 1 << level;
    }

    void paint(int y, int[] pixels, int across) {
        GridFrame frame = data.grid().frame();
        double nodeRow = (frame.northEdge() - camera.place(0, y + 0.5).north()) / frame.spacing();
        if (nodeRow < -0.5 || nodeRow > frame.rows() - 0.5) {
            return;
        }
        double row = clamped((nodeRow + 0.5) / size - 0.5, data.height(level));
        double step = camera.metresPerPixel() / frame.spacing();
        double nodeColumn = (camera.place(0.5, y).east() - frame.west()) / frame.spacing();
        for (int x = 0; x < across; x++, nodeColumn += step) {
            if (nodeColumn >= -0.5 && nodeColumn <= frame.columns() - 0.5) {
                pixels[y * across + x] = colour(clamped((nodeColumn + 0.5) / size - 0.5, data.width(level)), row,
                        x << 16 | y);
            }
        }
    }

    private static double clamped(double at, int count) {
        return Math.max(0, Math.min(count - 1, at));
    }

    private int colour(double column, double row, int place) {
        int x = Math.min(data.width(level) - 1, (int) column);
        int y = Math.min(data.height(level) - 1, (int) row);
        int right = Math.min(data.width(level) - 1, x + 1);
        int below = Math.min(data.height(level) - 1, y + 1);
        double u = column - x;
        double v = row - y;
        if (data.shade(level, u < 0.5 ? x : right, v < 0.5 ? y : below) == 0) {
            return ReliefInk.unknown(look, place >>> 16, place & 0xFFFF);
        }
        double shade = (1 - v) * ((1 - u) * data.shade(level, x, y) + u * data.shade(level, right, y))
                + v * ((1 - u) * data.shade(level, x, below) + u * data.shade(level, right, below));
        SlopeBand band = SlopeBand.LEVEL;
        if (look.hasSlopeBands()) {
            band = SlopeBand.of((1 - v) * ((1 - u) * data.slopeDeg(level, x, y) + u * data.slopeDeg(level, right, y))
                    + v * ((1 - u) * data.slopeDeg(level, x, below) + u * data.slopeDeg(level, right, below)));
        }
        return ReliefInk.colour(look, (int) Math.round(shade), band, place);
    }
}
