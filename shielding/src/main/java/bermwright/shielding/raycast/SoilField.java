// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.regolith.BulkDensity;
import bermwright.shielding.scene.Soil;
import bermwright.terrain.grid.GridFrame;

/** The soil of a scene as bare arrays, with the highest height of each tile of cells so that walks can skip. */
final class SoilField {
    final double[] finished;
    final double[] inPlace;
    final double[] natural;
    final int rows;
    final int columns;
    final double west;
    final double south;
    final double spacing;
    final double placedDensity;
    final BulkDensity profile;
    final boolean uniform;
    final double uniformDensity;
    final Tiles tiles;
    private volatile Steepness steepness;
    private volatile Steepness steepnessInPlace;

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
        tiles = new Tiles(columns, finished);
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

    /** The steepest of the finished surface around each place; made when single rays first ask for it. */
    Steepness steepness() {
        Steepness made = steepness;
        if (made == null) {
            made = new Steepness(columns, spacing, finished);
            steepness = made;
        }
        return made;
    }

    Steepness steepnessInPlace() {
        Steepness made = steepnessInPlace;
        if (made == null) {
            made = new Steepness(columns, spacing, inPlace);
            steepnessInPlace = made;
        }
        return made;
    }
}
