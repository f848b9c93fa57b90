// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.shielding.scene.DensityProfile;
import bermwright.shielding.scene.Soil;
import bermwright.terrain.grid.GridFrame;
import java.util.Arrays;

/** The soil of a scene as bare arrays, with the highest height of each block of cells so that walks can skip. */
final class SoilField {
    /** Cells along the side of a block. */
    static final int BLOCK = 16;

    final double[] finished;
    final double[] inPlace;
    final double[] natural;
    final int rows;
    final int columns;
    final double west;
    final double south;
    final double spacing;
    final double placedDensity;
    final DensityProfile profile;
    final boolean uniform;
    final double uniformDensity;
    final double[] blockTop;
    final int blockColumns;
    final double top;

    SoilField(Soil soil) {
        GridFrame frame = soil.finished().frame();
        rows = frame.rows();
        columns = frame.columns();
        west = frame.west();
        south = frame.south();
        spacing = frame.spacing();
        finished = soil.finished().heights();
        natural = soil.natural() == soil.finished() ? finished : soil.natural().heights();
        inPlace = natural == finished ? finished : lower(natural, finished);
        placedDensity = soil.placedDensity();
        profile = soil.inPlace();
        uniform = profile.isUniform();
        uniformDensity = profile.density(0);
        blockColumns = (columns - 2) / BLOCK + 1;
        blockTop = tops();
        top = Arrays.stream(blockTop).max().orElse(Double.NEGATIVE_INFINITY);
    }

    private static double[] lower(double[] natural, double[] finished) {
        boolean cut = false;
        for (int i = 0; i < natural.length && !cut; i++) {
            cut = finished[i] < natural[i];
        }
        if (!cut) {
            return natural;
        }
        double[] lower = new double[natural.length];
        for (int i = 0; i < lower.length; i++) {
            lower[i] = Math.min(natural[i], finished[i]);
        }
        return lower;
    }

    private double[] tops() {
        int blockRows = (rows - 2) / BLOCK + 1;
        double[] tops = new double[blockRows * blockColumns];
        Arrays.fill(tops, Double.NEGATIVE_INFINITY);
        for (int row = 0; row < rows; row++) {
            int upper = Math.min(row / BLOCK, blockRows - 1);
            int lower = row % BLOCK == 0 && row > 0 ? Math.min(row / BLOCK - 1, upper) : upper;
            for (int column = 0; column < columns; column++) {
                double h = finished[row * columns + column];
                // A hole must be walked into, not skipped over.
                double height = Double.isNaN(h) ? Double.POSITIVE_INFINITY : h;
                int right = Math.min(column / BLOCK, blockColumns - 1);
                int left = column % BLOCK == 0 && column > 0 ? Math.min(column / BLOCK - 1, right) : right;
                for (int r = lower; r <= upper; r++) {
                    for (int c = left; c <= right; c++) {
                        int at = r * blockColumns + c;
                        tops[at] = Math.max(tops[at], height);
                    }
                }
            }
        }
        return tops;
    }

    /** The height of a surface on its triangles, at a place in cells from the south-west node. */
    double onTriangles(double[] heights, double x, double y) {
        int i = Math.max(0, Math.min((int) x, columns - 2));
        int j = Math.max(0, Math.min((int) y, rows - 2));
        double u = x - i;
        double v = y - j;
        int at = j * columns + i;
        double corner = heights[at];
        double opposite = heights[at + columns + 1];
        if (u >= v) {
            double east = heights[at + 1];
            return corner + u * (east - corner) + v * (opposite - east);
        }
        double north = heights[at + columns];
        return corner + v * (north - corner) + u * (opposite - north);
    }

    /** Whether a place, in cells from the south-west node, lies on the grid. */
    boolean holds(double x, double y) {
        return x >= 0 && y >= 0 && x <= columns - 1 && y <= rows - 1;
    }
}
