// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import java.util.Arrays;
import java.util.Optional;

/**
 * Follows single rays through one surface, many side by side: each takes one step in turn, so that the processor works
 * on several at once instead of waiting for each.
 *
 * <p>A surface that is nowhere near steeper than so much cannot be met before the height between it and the ray, over
 * how fast both may close in, is used up: the ray goes so far at once, or over the triangle it is at where that is
 * further. Where it meets the plane of that triangle within it, that is the crossing.
 */
final class RayWave {
    /** How many rays go side by side. */
    static final int RAYS = 256;
    /** How far past a line a ray is put, so that it stands on its far side (cells). */
    private static final double NUDGE = 1e-9;
    /** Further than any grid reaches (cells), and slower than any two surfaces close in (1). */
    private static final double FAR = 1e200;
    private static final double LEAST = 1e-12;

    private final SoilField field;
    private final double[] heights;
    private final Steepness steepness;
    private final boolean goesOn;
    private final double x0;
    private final double y0;
    private final double z0;
    private final double perSpacing;
    private final double nudge;
    private final double reach;
    /** Cells to the east and north for each metre, and metres for each cell. */
    private final double[] gx = new double[RAYS];
    private final double[] gy = new double[RAYS];
    private final double[] perX = new double[RAYS];
    private final double[] perY = new double[RAYS];
    private final double[] perD = new double[RAYS];
    private final double[] tangents = new double[RAYS];
    private final double[] edge = new double[RAYS];
    private final double[] at = new double[RAYS];
    private final double[] in = new double[RAYS];
    /** 1 for a ray below the surface, -1 above. */
    private final double[] side = new double[RAYS];
    /** Coordinates in a cell of the lines it goes towards. */
    private final double[] farX = new double[RAYS];
    private final double[] farY = new double[RAYS];
    /** Keeps a ray that stands on a diagonal on the side it goes to; and what puts the diagonal out of reach. */
    private final double[] bias = new double[RAYS];
    private final double[] noD = new double[RAYS];
    private final int[] active = new int[RAYS];
    /** Length in plan below the surface; not a number where a height is missing on the way. */
    final double[] length = new double[RAYS];
    /** A place on the face where the ray last came out, in plan; not a number where it did not. */
    private final double[] exit = new double[RAYS];
    private final double[] firstExit = new double[RAYS];
    /** Length up to there, and where the ray goes into soil again; without bound where it does not. */
    final double[] first = new double[RAYS];
    final double[] again = new double[RAYS];
    /** The surface all over this one whose first soil counts, or this one. */
    private final RayWave outer;
    /** Whether the ray was in soil at the edge of the known ground. */
    final boolean[] belowAtEdge = new boolean[RAYS];

    RayWave(SoilField field, Surface surface, double[] start, Optional<RayWave> over) {
        this.field = field;
        outer = over.orElse(this);
        heights = surface.heights;
        steepness = surface.steepness;
        goesOn = surface.goesOn;
        x0 = (start[0] - field.west) / field.spacing;
        y0 = (start[1] - field.south) / field.spacing;
        z0 = start[2];
        perSpacing = 1 / field.spacing;
        nudge = NUDGE * field.spacing;
        reach = (1 << Steepness.SHIFT) * field.spacing;
    }

    /** A surface, how steep it gets, and whether there is more of it beyond its grid. */
    record Surface(double[] heights, Steepness steepness, boolean goesOn) {
    }

    /** Puts rising rays at distances in plan. */
    void put(SingleRays rays, double[] from, int many) {
        double[] east = rays.east;
        double[] north = rays.north;
        for (int k = 0; k < many; k++) {
            gx[k] = east[k] * perSpacing;
            gy[k] = north[k] * perSpacing;
        }
        for (int k = 0; k < many; k++) {
            perX[k] = 1 / gx[k];
            perY[k] = 1 / gy[k];
            perD[k] = 1 / (gx[k] - gy[k]);
        }
        System.arraycopy(rays.tangents, 0, tangents, 0, many);
        System.arraycopy(from, 0, at, 0, many);
        System.arraycopy(from, 0, in, 0, many);
        Arrays.fill(side, 0, many, 1);
        Arrays.fill(length, 0, many, 0);
        Arrays.fill(exit, 0, many, Double.NaN);
        Arrays.fill(again, 0, many, Double.POSITIVE_INFINITY);
        Arrays.fill(belowAtEdge, 0, many, false);
        for (int k = 0; k < many; k++) {
            double x = gx[k];
            double y = gy[k];
            perX[k] = x == 0 ? FAR : perX[k];
            perY[k] = y == 0 ? FAR : perY[k];
            perD[k] = x == y ? 0 : perD[k];
            noD[k] = x == y ? FAR : 0;
            farX[k] = x < 0 ? 0 : 1;
            farY[k] = y < 0 ? 0 : 1;
            bias[k] = y > x ? Double.MIN_NORMAL : -Double.MIN_NORMAL;
            double toX = x == 0 ? FAR : ((x > 0 ? field.columns - 1 : 0) - x0) * perX[k];
            double toY = y == 0 ? FAR : ((y > 0 ? field.rows - 1 : 0) - y0) * perY[k];
            edge[k] = Math.min(toX, toY);
        }
    }

    /** Follows the first rays until each has nothing more ahead. */
    void run(int rays) {
        for (int k = 0; k < rays; k++) {
            active[k] = k;
        }
        followed(rays);
    }

    /** Goes on with rays, put already, where the grid of another wave ends. */
    void goOn(RayWave near, int rays) {
        int open = 0;
        for (int k = 0; k < rays; k++) {
            in[k] = near.in[k];
            side[k] = near.side[k];
            // A ray that was never put on its way has no length.
            length[k] = Double.isNaN(near.at[k]) ? Double.NaN : near.length[k];
            exit[k] = near.exit[k];
            again[k] = near.again[k];
            first[k] = near.first[k];
            firstExit[k] = near.firstExit[k];
            at[k] = near.edge[k] + nudge;
            if (!Double.isNaN(length[k])) {
                active[open++] = k;
            }
        }
        followed(open);
    }

    private void followed(int rays) {
        int many = rays;
        while (many > 0) {
            int kept = 0;
            for (int k = 0; k < many; k++) {
                int ray = active[k];
                active[kept] = ray;
                kept += side[ray] > 0 ? under(ray) : clear(ray);
            }
            many = kept;
        }
    }

    /**
     * A place on the face through which a ray leaves the first soil, in plan; not a number where it crosses none,
     * without bound where it is level ground beyond the known.
     */
    double face(int ray) {
        return again[ray] < Double.POSITIVE_INFINITY ? firstExit[ray] : exit[ray];
    }

    /** One step above the surface; 0 where nothing more can be met. */
    private int clear(int ray) {
        double t = at[ray];
        if (!(t < edge[ray])) {
            return 0;
        }
        double ex = gx[ray];
        double ny = gy[ray];
        Tiles tiles = field.tiles;
        int i = Math.min((int) (x0 + t * ex), field.columns - 2) >> Tiles.SHIFT;
        int j = Math.min((int) (y0 + t * ny), field.rows - 2) >> Tiles.SHIFT;
        int tile = j * tiles.columns + i;
        double height = z0 + tangents[ray] * t;
        if (tiles.beyond[Tiles.quarter(ex, ny)][tile] <= height) {
            return 0;
        }
        if (tiles.tops[tile] <= height) {
            double outX = ex == 0 ? FAR
                    : ((ex > 0 ? i + 1 << Tiles.SHIFT : i << Tiles.SHIFT) - x0) * perX[ray];
            double outY = ny == 0 ? FAR
                    : ((ny > 0 ? j + 1 << Tiles.SHIFT : j << Tiles.SHIFT) - y0) * perY[ray];
            at[ray] = Math.max(t, Math.min(outX, outY)) + nudge;
            return 1;
        }
        return step(ray, t);
    }

    /** One step below the surface; 0 where the known ground ends. */
    private int under(int ray) {
        double t = at[ray];
        return t < edge[ray] ? step(ray, t) : ends(ray);
    }

    private int step(int ray, double t) {
        double ex = gx[ray];
        double ny = gy[ray];
        double tangent = tangents[ray];
        double x = x0 + t * ex;
        double y = y0 + t * ny;
        int i = Math.min((int) x, field.columns - 2);
        int j = Math.min((int) y, field.rows - 2);
        double u = x - i;
        double v = y - j;
        double aside = v - u + bias[ray];
        // 1 in the lower of the cell's two triangles, 0 in the upper: a number, since a branch here is a coin's toss.
        int lower = negative(aside);
        int node = j * field.columns + i;
        double corner = heights[node];
        double third = heights[node + field.columns + lower * (1 - field.columns)];
        double first = third - corner;
        double second = heights[node + field.columns + 1] - third;
        double one = ny + lower * (ex - ny);
        double rise = one * first + (ex + ny - one) * second;
        double over = corner + Math.max(u, v) * first + Math.min(u, v) * second - z0 - tangent * t;
        if (Double.isNaN(over)) {
            length[ray] = Double.NaN;
            return 0;
        }
        double toD = aside * perD[ray] + noD[ray];
        double on = Math.min(Math.min((farX[ray] - u) * perX[ray], (farY[ray] - v) * perY[ray]),
                toD + negative(toD) * FAR) + nudge;
        double sign = side[ray];
        double gap = sign * over;
        double shrinks = sign * (tangent - rise);
        if (gap <= Math.max(0, on * shrinks)) {
            meet(ray, gap > 0 ? t + gap / shrinks : t, t + on / 2);
            at[ray] = t + on;
            return 1;
        }
        double steep = steepness.most[(j >> Steepness.SHIFT) * steepness.columns + (i >> Steepness.SHIFT)];
        double closing = Math.max(steep + sign * tangent, LEAST);
        at[ray] = t + Math.max(Math.min(gap / closing, reach), on);
        return 1;
    }

    private static int negative(double value) {
        return (int) (Double.doubleToRawLongBits(value) >>> 63);
    }

    /** The ray comes out of the surface, or goes in. */
    private void meet(int ray, double place, double onFace) {
        if (side[ray] < 0) {
            in[ray] = place;
            if (again[ray] == Double.POSITIVE_INFINITY
                    && (outer == this ? length[ray] > 0 : place >= SurfaceFan.SAME * outer.again[ray])) {
                again[ray] = place;
                first[ray] = length[ray];
                firstExit[ray] = exit[ray];
            }
        } else if (place > in[ray]) {
            length[ray] += place - in[ray];
            exit[ray] = onFace;
        }
        side[ray] = -side[ray];
    }

    /** Level ground beyond the last height lets the ray out. */
    private int ends(int ray) {
        if (goesOn) {
            return 0;
        }
        double t = edge[ray];
        double over = field.onTriangles(heights, x0 + t * gx[ray], y0 + t * gy[ray]) - z0 - tangents[ray] * t;
        belowAtEdge[ray] = over > 0;
        length[ray] += Math.max(t, t + over / tangents[ray]) - in[ray];
        exit[ray] = Double.POSITIVE_INFINITY;
        return 0;
    }
}
