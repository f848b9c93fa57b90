// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;

/** Paints the ground at the screen's own size, between the nodes, line by line. */
final class ReliefDetail {
    private static final int INDEX_CONTOUR_EVERY = 5;

    private final ReliefData data;
    private final ReliefLook look;
    private final MapCamera camera;
    private final double interval;

    ReliefDetail(ReliefData data, ReliefLook look, MapCamera camera) {
        this.data = data;
        this.look = look;
        this.camera = camera;
        // Enlarged four times, the lines may stand four times closer and still be told apart.
        double enlarged = data.grid().frame().spacing() / camera.metresPerPixel();
        this.interval = enlarged > 16 ? look.contourInterval() / 10
                : enlarged > 6 ? look.contourInterval() / 2 : look.contourInterval();
    }

    void paint(int y, int[] pixels, int width) {
        ElevationGrid grid = data.grid();
        GridFrame frame = grid.frame();
        double north = camera.place(0, y + 0.5).north();
        double below = camera.place(0, y + 1.5).north();
        double west = camera.place(0.5, y).east();
        double step = camera.metresPerPixel();
        double row = (frame.northEdge() - north) / frame.spacing();
        double here = grid.height(west, north);
        for (int x = 0; x < width; x++) {
            double east = west + x * step;
            double right = grid.height(east + step, north);
            double column = (east - frame.west()) / frame.spacing();
            pixels[y * width + x] = Double.isNaN(here) ? 0
                    : colour(column, row, new double[] {here, right, grid.height(east, below)}, x << 16 | y);
            here = right;
        }
    }

    private int colour(double column, double row, double[] heights, int place) {
        int x = Math.min(data.width(0) - 2, (int) column);
        int y = Math.min(data.height(0) - 2, (int) row);
        double u = column - x;
        double v = row - y;
        double shade = (1 - v) * ((1 - u) * data.shade(0, x, y) + u * data.shade(0, x + 1, y))
                + v * ((1 - u) * data.shade(0, x, y + 1) + u * data.shade(0, x + 1, y + 1));
        double slope = (1 - v) * ((1 - u) * data.slopeDeg(0, x, y) + u * data.slopeDeg(0, x + 1, y))
                + v * ((1 - u) * data.slopeDeg(0, x, y + 1) + u * data.slopeDeg(0, x + 1, y + 1));
        SlopeBand band = look.hasSlopeBands() ? SlopeBand.of(slope) : SlopeBand.LEVEL;
        int contour = look.hasContours() ? ReliefInk.contour(heights, interval, INDEX_CONTOUR_EVERY) : 0;
        return ReliefInk.colour(look, (int) Math.round(shade), band, contour, place);
    }
}
