// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.regolith.BulkDensity;
import bermwright.shielding.scene.Soil;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;

/**
 * The soil of a scene on the nodes of one grid, as bare arrays, with the highest height of each tile of cells so that
 * walks can skip.
 *
 * <p>Over a round mound the triangles between nodes lie a little under it. In a finer patch the nodes of the mound are
 * lifted by as much as its triangles are low in the mean, h&#178; (f_xx + f_yy + f_xy) / 12 for diagonals from
 * south-west to north-east: rays then cross as much soil as under the smooth mound, whichever way north lies.
 */
final class SoilField {
    /** A mound whose slope turns by less than this from one cell to the next is smooth (1). */
    private static final double SMOOTH = 0.3;

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
        this(soil, soil.natural(), soil.finished());
    }

    /** One of the soil's patches. */
    SoilField(Soil soil, int patch) {
        this(soil, soil.natural().patches().get(patch), evened(soil, patch));
    }

    private SoilField(Soil soil, ElevationGrid before, ElevationGrid after) {
        GridFrame frame = after.frame();
        rows = frame.rows();
        columns = frame.columns();
        west = frame.west();
        south = frame.south();
        spacing = frame.spacing();
        finished = after.heights();
        natural = before == after ? finished : before.heights();
        inPlace = natural == finished ? finished : lower(natural, finished);
        placedDensity = soil.placedDensity();
        profile = soil.inPlace();
        uniform = profile.isUniform();
        uniformDensity = profile.density(0);
        tiles = new Tiles(columns, finished);
    }

    private static ElevationGrid evened(Soil soil, int patch) {
        ElevationGrid before = soil.natural().patches().get(patch);
        ElevationGrid after = soil.finished().patches().get(patch);
        if (before == after) {
            return after;
        }
        int columns = after.frame().columns();
        double[] ground = before.heights();
        double[] exact = after.heights();
        double[] lifted = exact.clone();
        for (int row = 1; row + 1 < after.frame().rows(); row++) {
            for (int i = row * columns + 1; i < (row + 1) * columns - 1; i++) {
                if (exact[i] > ground[i]) {
                    double bends = exact[i + 1] + exact[i - 1] + exact[i + columns] + exact[i - columns] - 4 * exact[i]
                            + (exact[i + columns + 1] + exact[i - columns - 1] - exact[i + columns - 1]
                            - exact[i - columns + 1]) / 4;
                    // At an edge or a face the mound is not smooth; there its nodes stay.
                    lifted[i] -= Math.abs(bends) < SMOOTH * after.frame().spacing() ? bends / 12 : 0;
                }
            }
        }
        return after.withHeights(lifted);
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

    /** How many numbers it keeps. */
    long size() {
        return (long) finished.length + (natural == finished ? 0 : natural.length)
                + (inPlace == finished || inPlace == natural ? 0 : inPlace.length);
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
