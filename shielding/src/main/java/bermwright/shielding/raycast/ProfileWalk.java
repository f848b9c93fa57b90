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
    private static final double NUDGE = 1e-9;

    private final SoilField field;
    /** Tangents of the elevations, rising. */
    double[] tangents = new double[0];
    int levels;
    final Crossings finished = new Crossings();
    /** Crossings with the top of undisturbed soil; those of the finished surface where no soil is placed. */
    Crossings place = new Crossings();
    private final Crossings ownPlace = place;
    /** Rise of the finished surface, outwards, where each ray last came out of it. */
    double[] exitRise = new double[0];
    /** How many rays, from the lowest, were still in soil at the edge of the known ground. */
    int belowAtEdge;
    /** Vertices of the natural ground, kept only where density changes with depth. */
    double[] vertexAt = new double[64];
    double[] vertexNatural = new double[64];
    int vertices;

    private boolean plain;
    private double x0;
    private double y0;
    private double z0;
    private double gx;
    private double gy;
    private double perX;
    private double perY;
    private double perD;
    private double nudge;
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
    private final double[] crossedUntil;
    private double blockOut;

    ProfileWalk(SoilField field) {
        this.field = field;
        this.crossedUntil = new double[field.blocks.length];
    }

    /** Walks outwards; the tangents have to be set, rising, all above zero or a single one. */
    void walk(double[] start, double east, double north) {
        begin(start, east, north);
        if (skip(0)) {
            beyond();
            return;
        }
        while (true) {
            double at = Math.min(nextX, Math.min(nextY, nextD));
            // The last line is the edge itself, give or take rounding.
            if (!(at <= edge * (1 + NUDGE))) {
                break;
            }
            boolean blockLine = step(at);
            if (Double.isNaN(hereFinished) || Double.isNaN(herePlace)) {
                break;
            }
            advance(at, hereFinished, herePlace);
            if (below == 0 && z0 + tangents[0] * at > field.top && tangents[0] > 0) {
                return;
            }
            if (blockLine && skip(at)) {
                break;
            }
        }
        beyond();
    }

    /** Reads the heights at the nearest line and aims at the next of its family; true where blocks meet there. */
    private boolean step(double at) {
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
            blockLine = lineX % SoilField.SMALL == 0;
            lineX += gx > 0 ? 1 : -1;
            nextX = (lineX - x0) * perX;
        } else if (at == nextY) {
            double x = x0 + at * gx;
            int column = clamp((int) x, field.columns - 2);
            from = lineY * field.columns + column;
            to = from + 1;
            share = x - column;
            blockLine = lineY % SoilField.SMALL == 0;
            lineY += gy > 0 ? 1 : -1;
            nextY = (lineY - y0) * perY;
        } else {
            double x = x0 + at * gx;
            int column = clamp((int) x, field.columns - 2);
            from = clamp(column + lineD, field.rows - 2) * field.columns + column;
            to = from + field.columns + 1;
            share = x - column;
            lineD += gy > gx ? 1 : -1;
            nextD = (lineD - (y0 - x0)) * perD;
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
        perX = 1 / gx;
        perY = 1 / gy;
        perD = 1 / (gy - gx);
        nudge = NUDGE / Math.max(Math.abs(gx), Math.abs(gy));
        room();
        edge = Math.min(gx == 0 ? Double.POSITIVE_INFINITY : ((gx > 0 ? field.columns - 1 : 0) - x0) / gx,
                gy == 0 ? Double.POSITIVE_INFINITY : ((gy > 0 ? field.rows - 1 : 0) - y0) / gy);
        lastAt = 0;
        lastFinished = field.onTriangles(field.finished, x0, y0);
        lastPlace = field.onTriangles(field.inPlace, x0, y0);
        finished.startsBelow = lastFinished > z0;
        place.startsBelow = lastPlace > z0;
        below = finished.startsBelow ? levels : 0;
        belowPlace = place.startsBelow ? levels : 0;
        belowAtEdge = 0;
        vertices = 0;
        Arrays.fill(crossedUntil, 0);
        if (!field.uniform) {
            push(0, field.onTriangles(field.natural, x0, y0));
        }
        aim(0);
    }

    private void room() {
        if (exitRise.length < levels) {
            exitRise = new double[levels];
        }
        plain = field.inPlace == field.finished;
        place = plain ? finished : ownPlace;
        finished.clear(levels);
        ownPlace.clear(levels);
    }

    /** Sets the next line of each family beyond a distance. */
    private void aim(double at) {
        double x = x0 + at * gx;
        double y = y0 + at * gy;
        lineX = beyondLine(x, gx);
        nextX = gx == 0 ? Double.POSITIVE_INFINITY : (lineX - x0) * perX;
        lineY = beyondLine(y, gy);
        nextY = gy == 0 ? Double.POSITIVE_INFINITY : (lineY - y0) * perY;
        lineD = beyondLine(y - x, gy - gx);
        nextD = Math.abs(gy - gx) < 1e-15 ? Double.POSITIVE_INFINITY : (lineD - (y0 - x0)) * perD;
    }

    private static int beyondLine(double value, double step) {
        return step > 0 ? (int) Math.floor(value + NUDGE) + 1 : (int) Math.ceil(value - NUDGE) - 1;
    }

    /** From a block's edge: jumps over blocks whose surface no ray crosses; true where the edge is reached so. */
    private boolean skip(double from) {
        if (below > 0 && !field.uniform) {
            return false;
        }
        double at = from;
        while (at < edge) {
            double x = x0 + at * gx;
            double y = y0 + at * gy;
            boolean clear = false;
            for (int i = 0; i < crossedUntil.length && !clear; i++) {
                // A block that was not clear on the way in is not asked again before its far side.
                clear = !(at < crossedUntil[i]) && isClear(i, x, y, at);
            }
            if (!clear) {
                break;
            }
            at = blockOut;
        }
        if (at > from) {
            double x = x0 + Math.min(at, edge) * gx;
            double y = y0 + Math.min(at, edge) * gy;
            lastAt = Math.min(at, edge);
            lastFinished = field.onTriangles(field.finished, x, y);
            lastPlace = field.onTriangles(field.inPlace, x, y);
            if (!field.uniform) {
                push(lastAt, field.onTriangles(field.natural, x, y));
            }
            aim(lastAt);
        }
        return !(at < edge);
    }

    /** Whether no ray crosses the surfaces of the block at a place; sets where the block is left. */
    private boolean isClear(int size, double x, double y, double at) {
        Blocks blocks = field.blocks[size];
        int shift = blocks.shift;
        int bx = clamp((int) (gx >= 0 ? x + NUDGE : x - NUDGE), field.columns - 2) >> shift;
        int by = clamp((int) (gy >= 0 ? y + NUDGE : y - NUDGE), field.rows - 2) >> shift;
        double outX = gx == 0 ? Double.POSITIVE_INFINITY : ((gx > 0 ? bx + 1 << shift : bx << shift) - x0) * perX;
        double outY = gy == 0 ? Double.POSITIVE_INFINITY : ((gy > 0 ? by + 1 << shift : by << shift) - y0) * perY;
        double out = Math.min(edge, Math.min(outX, outY));
        int block = 2 * (by * blocks.columns + bx);
        boolean clear = isBetween(blocks.range, block, below, at, out)
                && (plain || isBetween(field.placeBlocks[size].range, block, belowPlace, at, out));
        if (clear) {
            blockOut = Math.max(out, at + nudge);
        } else {
            crossedUntil[size] = out;
        }
        return clear;
    }

    /** Whether a block's surface stays above the rays that are below it and below all others. */
    private boolean isBetween(float[] range, int block, int under, double in, double out) {
        if (under < levels) {
            double next = tangents[under];
            if (!(range[block] <= z0 + next * (next >= 0 ? in : out))) {
                return false;
            }
        }
        return under == 0 || range[block + 1] >= z0 + tangents[under - 1] * (tangents[under - 1] >= 0 ? out : in);
    }

    private void advance(double at, double finishedHeight, double placeHeight) {
        double rise = finishedHeight - z0;
        int before = below;
        while (below < levels && tangents[below] * at < rise) {
            finished.add(below, meeting(at, lastFinished, finishedHeight, tangents[below]));
            below++;
        }
        while (below > 0 && tangents[below - 1] * at >= rise) {
            below--;
            finished.add(below, meeting(at, lastFinished, finishedHeight, tangents[below]));
        }
        if (below != before) {
            double slope = at > lastAt ? (finishedHeight - lastFinished) / (at - lastAt) : 0;
            Arrays.fill(exitRise, Math.min(before, below), Math.max(before, below), slope);
        }
        if (!plain) {
            advancePlace(at, placeHeight);
        }
        lastAt = at;
        lastFinished = finishedHeight;
        lastPlace = placeHeight;
    }

    private void advancePlace(double at, double height) {
        double placeRise = height - z0;
        while (belowPlace < levels && tangents[belowPlace] * at < placeRise) {
            place.add(belowPlace, meeting(at, lastPlace, height, tangents[belowPlace]));
            belowPlace++;
        }
        while (belowPlace > 0 && tangents[belowPlace - 1] * at >= placeRise) {
            belowPlace--;
            place.add(belowPlace, meeting(at, lastPlace, height, tangents[belowPlace]));
        }
    }

    private double meeting(double at, double from, double to, double tangent) {
        double before = from - z0 - tangent * lastAt;
        double after = to - z0 - tangent * at;
        double share = before == after ? 0 : before / (before - after);
        return lastAt + Math.max(0, Math.min(1, share)) * (at - lastAt);
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
