// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import java.util.Arrays;

/**
 * Cuts the surface along one azimuth and finds every crossing of a fan of rays with it.
 *
 * <p>The grid lines, and the diagonals from south-west to north-east, are three families of evenly spaced lines;
 * between two neighbouring crossings with any of them the surface is straight. The rays, sorted from flat to steep,
 * are all known at once by how many of them are below the surface: walking out, only a change of that number costs
 * anything. Where no ray is below, whole blocks of cells under the lowest ray are skipped. Beyond the grid's edge,
 * or a hole, the ground is taken as level at the last height.
 */
final class ProfileWalk {
    private static final int FIRST_STRIDE = 8;
    private static final double NUDGE = 1e-9;

    private final SoilField field;
    /** Tangents of the elevations, rising. */
    double[] tangents = new double[0];
    int levels;
    /** Distances in plan at which each ray crosses the finished surface. */
    double[] finishedAt = new double[0];
    int[] finishedCount = new int[0];
    int finishedStride = FIRST_STRIDE;
    /** Distances in plan at which each ray crosses the top of undisturbed soil. */
    double[] placeAt = new double[0];
    int[] placeCount = new int[0];
    int placeStride = FIRST_STRIDE;
    /** Rise of the finished surface, outwards, where each ray last came out of it. */
    double[] exitRise = new double[0];
    boolean startsBelow;
    boolean startsInPlace;
    /** How many rays, from the lowest, were still in soil at the edge of the known ground. */
    int belowAtEdge;
    /** Vertices of the natural ground, kept only where density changes with depth. */
    double[] vertexAt = new double[64];
    double[] vertexNatural = new double[64];
    int vertices;

    private double x0;
    private double y0;
    private double z0;
    private double gx;
    private double gy;
    private double edge;
    private double lastAt;
    private double lastFinished;
    private double lastPlace;
    private int below;
    private int belowPlace;
    private double nextX;
    private double nextY;
    private double nextD;
    private int lineX;
    private int lineY;
    private int lineD;
    private double hereFinished;
    private double herePlace;

    ProfileWalk(SoilField field) {
        this.field = field;
    }

    /** Walks outwards; the tangents have to be set, rising, all above zero or a single one. */
    void walk(double[] start, double east, double north) {
        begin(start, east, north);
        boolean plain = field.inPlace == field.finished;
        if (below == 0 && skip(0)) {
            return;
        }
        while (true) {
            double at = Math.min(nextX, Math.min(nextY, nextD));
            if (!(at <= edge)) {
                break;
            }
            boolean blockLine = step(at, plain);
            if (Double.isNaN(hereFinished) || Double.isNaN(herePlace)) {
                break;
            }
            advance(at, hereFinished, herePlace);
            if (below == 0 && (z0 + tangents[0] * at > field.top && tangents[0] > 0 || blockLine && skip(at))) {
                return;
            }
        }
        beyond();
    }

    /** Reads the heights at the nearest line and aims at the next of its family; true where blocks meet there. */
    private boolean step(double at, boolean plain) {
        int from;
        int to;
        double share;
        boolean blockLine = false;
        if (at == nextX) {
            double y = y0 + at * gy;
            int row = clamp((int) y, field.rows - 2);
            from = row * field.columns + lineX;
            to = from + field.columns;
            share = y - row;
            blockLine = lineX % SoilField.BLOCK == 0;
            lineX += gx > 0 ? 1 : -1;
            nextX = (lineX - x0) / gx;
        } else if (at == nextY) {
            double x = x0 + at * gx;
            int column = clamp((int) x, field.columns - 2);
            from = lineY * field.columns + column;
            to = from + 1;
            share = x - column;
            blockLine = lineY % SoilField.BLOCK == 0;
            lineY += gy > 0 ? 1 : -1;
            nextY = (lineY - y0) / gy;
        } else {
            double x = x0 + at * gx;
            int column = clamp((int) x, field.columns - 2);
            from = clamp(column + lineD, field.rows - 2) * field.columns + column;
            to = from + field.columns + 1;
            share = x - column;
            lineD += gy > gx ? 1 : -1;
            nextD = (lineD - (y0 - x0)) / (gy - gx);
        }
        hereFinished = lerp(field.finished, from, to, share);
        herePlace = plain ? hereFinished : lerp(field.inPlace, from, to, share);
        if (!field.uniform) {
            push(at, lerp(field.natural, from, to, share));
        }
        return blockLine;
    }

    private void begin(double[] start, double east, double north) {
        x0 = (start[0] - field.west) / field.spacing;
        y0 = (start[1] - field.south) / field.spacing;
        z0 = start[2];
        gx = east / field.spacing;
        gy = north / field.spacing;
        if (Math.abs(gx) < 1e-15) {
            gx = 0;
        }
        if (Math.abs(gy) < 1e-15) {
            gy = 0;
        }
        room();
        edge = Math.min(gx == 0 ? Double.POSITIVE_INFINITY : ((gx > 0 ? field.columns - 1 : 0) - x0) / gx,
                gy == 0 ? Double.POSITIVE_INFINITY : ((gy > 0 ? field.rows - 1 : 0) - y0) / gy);
        lastAt = 0;
        lastFinished = field.onTriangles(field.finished, x0, y0);
        lastPlace = field.onTriangles(field.inPlace, x0, y0);
        startsBelow = lastFinished > z0;
        startsInPlace = lastPlace > z0;
        below = startsBelow ? levels : 0;
        belowPlace = startsInPlace ? levels : 0;
        belowAtEdge = 0;
        vertices = 0;
        if (!field.uniform) {
            push(0, field.onTriangles(field.natural, x0, y0));
        }
        aim(0);
    }

    private void room() {
        if (finishedCount.length < levels) {
            finishedCount = new int[levels];
            placeCount = new int[levels];
            exitRise = new double[levels];
            finishedAt = new double[levels * finishedStride];
            placeAt = new double[levels * placeStride];
        }
        Arrays.fill(finishedCount, 0, levels, 0);
        Arrays.fill(placeCount, 0, levels, 0);
    }

    /** Sets the next line of each family beyond a distance. */
    private void aim(double at) {
        double x = x0 + at * gx;
        double y = y0 + at * gy;
        lineX = beyondLine(x, gx);
        nextX = gx == 0 ? Double.POSITIVE_INFINITY : (lineX - x0) / gx;
        lineY = beyondLine(y, gy);
        nextY = gy == 0 ? Double.POSITIVE_INFINITY : (lineY - y0) / gy;
        lineD = beyondLine(y - x, gy - gx);
        nextD = Math.abs(gy - gx) < 1e-15 ? Double.POSITIVE_INFINITY : (lineD - (y0 - x0)) / (gy - gx);
    }

    private static int beyondLine(double value, double step) {
        return step > 0 ? (int) Math.floor(value + NUDGE) + 1 : (int) Math.ceil(value - NUDGE) - 1;
    }

    /** From a block's edge with no ray below: jumps over blocks under the lowest ray; true where none is left. */
    private boolean skip(double from) {
        double at = from;
        double lowest = tangents[0];
        while (true) {
            if (!(at < edge)) {
                return true;
            }
            double x = x0 + at * gx;
            double y = y0 + at * gy;
            int bx = block(x, gx, field.columns);
            int by = block(y, gy, field.rows);
            double out = Math.min(gx == 0 ? Double.POSITIVE_INFINITY
                    : ((gx > 0 ? bx + 1 : bx) * SoilField.BLOCK - x0) / gx,
                    gy == 0 ? Double.POSITIVE_INFINITY : ((gy > 0 ? by + 1 : by) * SoilField.BLOCK - y0) / gy);
            double ray = z0 + lowest * (lowest >= 0 ? at : Math.min(out, edge));
            if (!(field.blockTop[by * field.blockColumns + bx] <= ray)) {
                break;
            }
            at = Math.max(out, at + NUDGE / Math.max(Math.abs(gx), Math.abs(gy)));
        }
        if (at > from) {
            double x = x0 + at * gx;
            double y = y0 + at * gy;
            lastAt = at;
            lastFinished = field.onTriangles(field.finished, x, y);
            lastPlace = field.onTriangles(field.inPlace, x, y);
            if (!field.uniform) {
                push(at, field.onTriangles(field.natural, x, y));
            }
            aim(at);
        }
        return false;
    }

    private int block(double value, double step, int nodes) {
        int cell = (int) Math.floor(step >= 0 ? value + NUDGE : value - NUDGE);
        return clamp(cell, nodes - 2) / SoilField.BLOCK;
    }

    private void advance(double at, double finished, double place) {
        double rise = finished - z0;
        while (below < levels && tangents[below] * at < rise) {
            crossFinished(below, at, finished);
            below++;
        }
        while (below > 0 && tangents[below - 1] * at >= rise) {
            below--;
            crossFinished(below, at, finished);
        }
        double placeRise = place - z0;
        while (belowPlace < levels && tangents[belowPlace] * at < placeRise) {
            crossPlace(belowPlace, at, place);
            belowPlace++;
        }
        while (belowPlace > 0 && tangents[belowPlace - 1] * at >= placeRise) {
            belowPlace--;
            crossPlace(belowPlace, at, place);
        }
        lastAt = at;
        lastFinished = finished;
        lastPlace = place;
    }

    private double meeting(double at, double from, double to, double tangent) {
        double before = from - z0 - tangent * lastAt;
        double after = to - z0 - tangent * at;
        double share = before == after ? 0 : before / (before - after);
        return lastAt + Math.max(0, Math.min(1, share)) * (at - lastAt);
    }

    private void crossFinished(int level, double at, double height) {
        if (finishedCount[level] == finishedStride) {
            finishedAt = wider(finishedAt, finishedStride);
            finishedStride *= 2;
        }
        finishedAt[level * finishedStride + finishedCount[level]++] =
                meeting(at, lastFinished, height, tangents[level]);
        exitRise[level] = at > lastAt ? (height - lastFinished) / (at - lastAt) : 0;
    }

    private void crossPlace(int level, double at, double height) {
        if (placeCount[level] == placeStride) {
            placeAt = wider(placeAt, placeStride);
            placeStride *= 2;
        }
        placeAt[level * placeStride + placeCount[level]++] = meeting(at, lastPlace, height, tangents[level]);
    }

    private static double[] wider(double[] lists, int stride) {
        double[] wide = new double[lists.length * 2];
        for (int k = 0; k * stride < lists.length; k++) {
            System.arraycopy(lists, k * stride, wide, k * stride * 2, stride);
        }
        return wide;
    }

    /** Level ground beyond the last height brings out every rising ray that is still in soil. */
    private void beyond() {
        belowAtEdge = below;
        if (below == 0 || tangents[0] <= 0) {
            return;
        }
        double at = Math.max(lastAt, (lastFinished - z0) / tangents[0] * (1 + 1e-12)) + 1;
        if (!field.uniform) {
            push(at, vertexNatural[vertices - 1]);
        }
        advance(at, lastFinished, lastPlace);
    }

    private void push(double at, double height) {
        if (vertices == vertexAt.length) {
            vertexAt = Arrays.copyOf(vertexAt, vertices * 2);
            vertexNatural = Arrays.copyOf(vertexNatural, vertices * 2);
        }
        vertexAt[vertices] = at;
        vertexNatural[vertices++] = height;
    }

    private static double lerp(double[] heights, int from, int to, double share) {
        return heights[from] + share * (heights[to] - heights[from]);
    }

    private static int clamp(int value, int greatest) {
        return Math.max(0, Math.min(value, greatest));
    }
}
