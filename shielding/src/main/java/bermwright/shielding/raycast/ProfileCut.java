// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import java.util.Arrays;

/**
 * Cuts the grid along one azimuth, in runs: the stretches in whose tiles the surface may reach up to the lowest ray.
 *
 * <p>The grid lines, and the diagonals from south-west to north-east, are three families of evenly spaced lines;
 * between two neighbouring crossings with any of them the surface is straight. The crossings of a run are counted
 * before they are found, so each goes to its place in the order of distance by arithmetic alone, family by family,
 * without a branch; where rounding at a node of the grid puts two in one place, the run is put in order slowly.
 */
final class ProfileCut {
    private static final double NUDGE = 1e-9;
    private static final double NONE = -1;
    /** Where crossings begin in the arrays; rounding moves one by less than this from its place. */
    static final int MARGIN = 4;

    private final SoilField field;
    private final Tiles tiles;
    /** Crossings of the run from {@link #MARGIN} on: distance, and rise of the finished surface over the station. */
    final double[] at;
    final double[] rise;
    /** For other surfaces: the node before, how far on in the arrays the node after is, share of it. */
    private final int[] node;
    private final int[] step;
    private final double[] share;
    private final boolean kept;
    private final double[] heights;
    int count;
    /** Where the run begins and whether it is the last, to the edge of the grid. */
    double from;
    boolean toEdge;
    double edge;

    private double x0;
    private double y0;
    private double z0;
    private double gx;
    private double gy;
    private double perX;
    private double perY;
    private double perD;
    /** The tile walked on, what leads to those beside it, where it is left and how wide the next are. */
    private int tile;
    private int besideX;
    private int besideY;
    private double outX;
    private double outY;
    private double widthX;
    private double widthY;
    /** Where the grid ends, so that no rounding leads past it. */
    private double last;
    private int quarter;
    private double tileAt;
    private int lineX;
    private int lineY;
    private int lineD;

    ProfileCut(SoilField field, boolean kept) {
        this.field = field;
        this.kept = kept;
        heights = field.finished;
        this.tiles = field.tiles;
        int most = 3 * (field.rows + field.columns) + 2 * MARGIN;
        at = new double[most];
        rise = new double[most];
        node = new int[kept ? most : 0];
        step = new int[kept ? most : 0];
        share = new double[kept ? most : 0];
    }

    void begin(double[] start, double east, double north) {
        begin(start, east, north, 0);
    }

    /** Begins at a distance from the start, on the grid. */
    void begin(double[] start, double east, double north, double first) {
        x0 = (start[0] - field.west) / field.spacing;
        y0 = (start[1] - field.south) / field.spacing;
        z0 = start[2];
        gx = Math.abs(east) < 1e-15 ? 0 : east / field.spacing;
        gy = Math.abs(north) < 1e-15 ? 0 : north / field.spacing;
        perX = 1 / gx;
        perY = 1 / gy;
        perD = Math.abs(gy - gx) < 1e-15 ? Double.POSITIVE_INFINITY : 1 / (gy - gx);
        edge = Math.min(gx == 0 ? Double.POSITIVE_INFINITY : ((gx > 0 ? field.columns - 1 : 0) - x0) * perX,
                gy == 0 ? Double.POSITIVE_INFINITY : ((gy > 0 ? field.rows - 1 : 0) - y0) * perY);
        double x = x0 + first * gx;
        double y = y0 + first * gy;
        int tileX = clamp((int) (gx >= 0 ? x + NUDGE : x - NUDGE), field.columns - 2) >> Tiles.SHIFT;
        int tileY = clamp((int) (gy >= 0 ? y + NUDGE : y - NUDGE), field.rows - 2) >> Tiles.SHIFT;
        tile = tileY * tiles.columns + tileX;
        besideX = gx > 0 ? 1 : -1;
        besideY = gy > 0 ? tiles.columns : -tiles.columns;
        outX = gx == 0 ? Double.POSITIVE_INFINITY : ((tileX + (gx > 0 ? 1 : 0) << Tiles.SHIFT) - x0) * perX;
        outY = gy == 0 ? Double.POSITIVE_INFINITY : ((tileY + (gy > 0 ? 1 : 0) << Tiles.SHIFT) - y0) * perY;
        widthX = Math.abs(perX) * (1 << Tiles.SHIFT);
        widthY = Math.abs(perY) * (1 << Tiles.SHIFT);
        last = edge * (1 - NUDGE);
        quarter = Tiles.quarter(gx, gy);
        tileAt = first;
        toEdge = false;
        count = 0;
    }

    double heightAt(double[] heights, double distance) {
        return field.onTriangles(heights, x0 + distance * gx, y0 + distance * gy);
    }

    /** Finds the next run that a ray of a tangent, and all above it, may cross, and cuts it; false after the last. */
    boolean next(double tangent) {
        if (toEdge || !find(tangent)) {
            return false;
        }
        from = tileAt;
        double to = last(tangent);
        cut(to);
        return true;
    }

    /** Walks over tiles to the next that reaches up to the lowest ray; false where none does. */
    private boolean find(double tangent) {
        float[] further = tiles.beyond[quarter];
        float[] tops = tiles.tops;
        while (tileAt < last) {
            if (tops[tile] > z0 + tangent * (tangent >= 0 ? tileAt : tileOut())) {
                return true;
            }
            if (tangent >= 0 && further[tile] <= z0 + tangent * tileAt || !step()) {
                return false;
            }
        }
        return false;
    }

    /** Walks on to the end of the run. */
    private double last(double tangent) {
        float[] tops = tiles.tops;
        while (step()) {
            if (!(tops[tile] > z0 + tangent * (tangent >= 0 ? tileAt : tileOut()))) {
                return tileAt;
            }
        }
        toEdge = true;
        return edge;
    }

    private double tileOut() {
        return Math.min(edge, Math.min(outX, outY));
    }

    /** Enters the next tile; false where the grid ends. */
    private boolean step() {
        if (outX < outY) {
            tileAt = outX;
            outX += widthX;
            tile += besideX;
        } else {
            tileAt = outY;
            outY += widthY;
            tile += besideY;
        }
        return tileAt < last;
    }

    private void cut(double to) {
        double x = x0 + from * gx;
        double y = y0 + from * gy;
        lineX = beyondLine(x, gx);
        lineY = beyondLine(y, gy);
        lineD = beyondLine(y - x, gy - gx);
        // The end is itself a line, give or take rounding.
        double past = to * (1 + NUDGE);
        int manyX = gx == 0 ? 0 : passed(x0 + past * gx, lineX, gx);
        int manyY = gy == 0 ? 0 : passed(y0 + past * gy, lineY, gy);
        int manyD = Double.isInfinite(perD) ? 0 : passed(y0 - x0 + past * (gy - gx), lineD, gy - gx);
        count = manyX + manyY + manyD;
        Arrays.fill(at, 0, MARGIN + count, NONE);
        at[MARGIN - 1] = from;
        linesX(manyX, manyD > 0);
        linesY(manyY, manyD > 0);
        diagonals(manyD);
        long disorder = 0;
        for (int i = MARGIN; i < MARGIN + count; i++) {
            disorder |= Double.doubleToRawLongBits(at[i] - at[i - 1]);
        }
        if (disorder < 0) {
            slowly(manyX, manyY, manyD);
        }
    }

    /** Puts a crossing in its place. */
    private void put(int rank, double distance, int from, int to, double part) {
        at[rank] = distance;
        double before = heights[from];
        rise[rank] = before + part * (heights[to] - before) - z0;
        if (kept) {
            node[rank] = from;
            step[rank] = to - from;
            share[rank] = part;
        }
    }

    private void linesX(int many, boolean diagonals) {
        int sign = gx > 0 ? 1 : -1;
        int columns = field.columns;
        int lastRow = field.rows - 2;
        // How many lines of another family are passed: sign * (whole part of the coordinate) less that of the first.
        int signY = gy == 0 ? 0 : gy > 0 ? 1 : -1;
        int signD = !diagonals ? 0 : gy > gx ? 1 : -1;
        int rank = MARGIN - first(signY, lineY) - first(signD, lineD);
        double nx = x0;
        double ny = y0;
        double per = perX;
        double slope = gy;
        int line = lineX;
        for (int i = 0; i < many; i++) {
            double t = (line - nx) * per;
            double y = ny + t * slope;
            int row = (int) y;
            int place = rank + i + signY * row + signD * (row - line);
            row = Math.min(row, lastRow);
            int from = row * columns + line;
            put(place, t, from, from + columns, y - row);
            line += sign;
        }
    }

    private void linesY(int many, boolean diagonals) {
        int sign = gy > 0 ? 1 : -1;
        int columns = field.columns;
        int lastColumn = columns - 2;
        int signX = gx == 0 ? 0 : gx > 0 ? 1 : -1;
        int signD = !diagonals ? 0 : gy > gx ? 1 : -1;
        int rank = MARGIN - first(signX, lineX) - first(signD, lineD);
        double nx = x0;
        double ny = y0;
        double per = perY;
        double slope = gx;
        int line = lineY;
        for (int i = 0; i < many; i++) {
            double t = (line - ny) * per;
            double x = nx + t * slope;
            int column = (int) x;
            int place = rank + i + signX * column + signD * (line - column - 1);
            column = Math.min(column, lastColumn);
            int from = line * columns + column;
            put(place, t, from, from + 1, x - column);
            line += sign;
        }
    }

    private void diagonals(int many) {
        int sign = gy > gx ? 1 : -1;
        int columns = field.columns;
        int lastColumn = columns - 2;
        int lastRow = field.rows - 2;
        int signX = gx == 0 ? 0 : gx > 0 ? 1 : -1;
        int signY = gy == 0 ? 0 : gy > 0 ? 1 : -1;
        int rank = MARGIN - first(signX, lineX) - first(signY, lineY);
        double nx = x0;
        double nd = y0 - x0;
        double per = perD;
        double slope = gx;
        int line = lineD;
        for (int i = 0; i < many; i++) {
            double t = (line - nd) * per;
            double x = nx + t * slope;
            int column = (int) x;
            int place = rank + i + signX * column + signY * (column + line);
            // A crossing in a corner of the grid belongs to the cell before it.
            column = Math.max(Math.max(0, -line), Math.min(column, Math.min(lastColumn, lastRow - line)));
            int from = (column + line) * columns + column;
            put(place, t, from, from + columns + 1, x - column);
            line += sign;
        }
    }

    /** What the whole part of a coordinate, times the sign, is before the first line of a family is passed. */
    private static int first(int sign, int line) {
        return sign == 0 ? 0 : sign > 0 ? line - 1 : -line;
    }

    /** The same by always taking the nearest line next. */
    private void slowly(int manyX, int manyY, int manyD) {
        int columns = field.columns;
        int i = 0;
        int j = 0;
        int k = 0;
        for (int n = MARGIN; n < MARGIN + count; n++) {
            int line = lineX + (gx > 0 ? i : -i);
            int lineOfY = lineY + (gy > 0 ? j : -j);
            int lineOfD = lineD + (gy > gx ? k : -k);
            double tx = i < manyX ? (line - x0) * perX : Double.POSITIVE_INFINITY;
            double ty = j < manyY ? (lineOfY - y0) * perY : Double.POSITIVE_INFINITY;
            double td = k < manyD ? (lineOfD - (y0 - x0)) * perD : Double.POSITIVE_INFINITY;
            double t = Math.min(tx, Math.min(ty, td));
            double x = x0 + t * gx;
            double y = y0 + t * gy;
            int column = clamp((int) x, columns - 2);
            int row = clamp((int) y, field.rows - 2);
            if (t == tx) {
                i++;
                put(n, Math.max(t, from), row * columns + line, row * columns + line + columns, y - row);
            } else if (t == ty) {
                j++;
                put(n, Math.max(t, from), lineOfY * columns + column, lineOfY * columns + column + 1, x - column);
            } else {
                k++;
                int before = Math.max(Math.max(0, -lineOfD), Math.min(column, field.rows - 2 - lineOfD));
                int node = (before + lineOfD) * columns + before;
                put(n, Math.max(t, from), node, node + columns + 1, x - before);
            }
        }
    }

    /** Heights of another surface over a datum, at all crossings of the run. */
    void heights(double[] surface, double datum, double[] into) {
        for (int i = MARGIN; i < MARGIN + count; i++) {
            double before = surface[node[i]];
            into[i] = before + share[i] * (surface[node[i] + step[i]] - before) - datum;
        }
    }

    /** How many lines lie from a first one up to a coordinate. */
    private static int passed(double coordinate, int first, double step) {
        int past = step > 0 ? (int) Math.floor(coordinate) - first : first - (int) Math.ceil(coordinate);
        return Math.max(0, past + 1);
    }

    private static int beyondLine(double value, double step) {
        return step > 0 ? (int) Math.floor(value + NUDGE) + 1 : (int) Math.ceil(value - NUDGE) - 1;
    }

    private static int clamp(int value, int greatest) {
        return Math.max(0, Math.min(value, greatest));
    }
}
