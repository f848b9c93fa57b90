// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import java.util.Arrays;

/**
 * A fan of rays of one azimuth against one surface: how much of each ray's way lies below it.
 *
 * <p>The rays, sorted from flat to steep, are all known at once by how many of them are below the surface: walking
 * out, only a change of that number costs anything.
 */
final class SurfaceFan {
    /** A place in plan so little nearer than another is the same but for rounding. */
    static final double SAME = 1 - 1e-9;
    /** Length below the surface and outside of voids, by ray, in plan. */
    double[] length = new double[0];
    /**
     * A place on the face through which each ray leaves the first soil on its way, in plan; not a number where it
     * crosses none, without bound where that is level ground beyond the known.
     */
    double[] exit = new double[0];
    /** Length below the surface up to there, and where each ray goes in again; without bound where it does not. */
    double[] first = new double[0];
    double[] again = new double[0];
    private double[] firstExit = new double[0];
    /** How many rays, from the lowest, may go in again. */
    int mostAgain;
    /** The surface all over this one whose first soil counts, or this one. */
    private final SurfaceFan outer;
    /** Every crossing, where it is wanted. */
    final Crossings crossings;
    boolean startsBelow;
    int below;
    double lastAt;
    double lastRise;
    private double[] entered = new double[0];
    private double[] tangents = new double[0];
    private int levels;
    private Voids voids;

    SurfaceFan(boolean listed) {
        crossings = listed ? new Crossings() : null;
        outer = this;
    }

    SurfaceFan(boolean listed, SurfaceFan over) {
        crossings = listed ? new Crossings() : null;
        outer = over;
    }

    /** Begins at a station so far below the surface; the tangents rise from index 1, with bounds on both sides. */
    void begin(double[] bounded, Voids empty, double rise) {
        tangents = bounded;
        levels = bounded.length - 2;
        voids = empty;
        if (length.length < levels) {
            length = new double[levels];
            entered = new double[levels];
            exit = new double[levels];
            first = new double[levels];
            again = new double[levels];
            mostAgain = levels;
            firstExit = new double[levels];
        }
        Arrays.fill(length, 0, levels, 0);
        Arrays.fill(entered, 0, levels, 0);
        Arrays.fill(exit, 0, levels, Double.NaN);
        Arrays.fill(again, 0, mostAgain, Double.POSITIVE_INFINITY);
        mostAgain = 0;
        if (crossings != null) {
            crossings.clear(levels);
        }
        startsBelow = rise > 0;
        below = startsBelow ? levels : 0;
        from(0, rise);
    }

    /** Goes on from a place where the surface is met again. */
    void from(double at, double rise) {
        lastAt = at;
        lastRise = rise;
    }

    /** Passes crossings of the surface; returns how many there were before its height was not known. */
    int pass(double[] at, double[] rise, int count) {
        int b = below;
        double fromAt = lastAt;
        double fromRise = lastRise;
        double above = tangents[b + 1];
        double under = tangents[b];
        int end = ProfileCut.MARGIN + count;
        for (int i = ProfileCut.MARGIN; i < end; i++) {
            double t = at[i];
            double z = rise[i];
            if (above * t < z) {
                b = enter(b, fromAt, fromRise, t, z);
            } else if (under * t >= z) {
                b = leave(b, fromAt, fromRise, t, z);
            } else if (Double.isNaN(z)) {
                below = b;
                from(fromAt, fromRise);
                return i - ProfileCut.MARGIN;
            }
            above = tangents[b + 1];
            under = tangents[b];
            fromAt = t;
            fromRise = z;
        }
        below = b;
        from(fromAt, fromRise);
        return count;
    }

    private int enter(int from, double fromAt, double fromRise, double t, double z) {
        int b = from;
        while (tangents[b + 1] * t < z) {
            double tangent = tangents[b + 1];
            double along = t - fromAt;
            double at = meeting(fromAt, along, fromRise - tangent * fromAt, tangent * along - (z - fromRise));
            entered[b] = voids.outside(b, at);
            if (again[b] == Double.POSITIVE_INFINITY) {
                keep(b, at);
            }
            if (crossings != null) {
                crossings.add(b, at);
            }
            b++;
        }
        return b;
    }

    /** Keeps how a ray came out of the first soil, where it goes into soil beyond it. */
    private void keep(int b, double at) {
        if (outer == this ? length[b] > 0 : at >= SAME * outer.again[b]) {
            again[b] = at;
            first[b] = length[b];
            firstExit[b] = exit[b];
            mostAgain = Math.max(mostAgain, b + 1);
        }
    }

    /** Whether a ray goes into soil beyond the first. */
    boolean isAgain(int ray) {
        return again[ray] < Double.POSITIVE_INFINITY;
    }

    /** Ends the walk: faces are those of the first soil. */
    void end() {
        for (int b = 0; b < mostAgain; b++) {
            if (isAgain(b)) {
                exit[b] = firstExit[b];
            }
        }
    }

    private int leave(int from, double fromAt, double fromRise, double t, double z) {
        double[] bounded = tangents;
        double along = t - fromAt;
        double climb = z - fromRise;
        double middle = fromAt + along / 2;
        int b = from;
        if (voids.single && crossings == null) {
            double[] until = voids.until;
            double[] lengths = length;
            double[] starts = entered;
            double[] exits = exit;
            while (bounded[b] * t >= z) {
                b--;
                double tangent = bounded[b + 1];
                double beyond = meeting(fromAt, along, fromRise - tangent * fromAt, tangent * along - climb) - until[b];
                lengths[b] += (beyond > 0 ? beyond : 0) - starts[b];
                exits[b] = middle;
            }
            return b;
        }
        while (bounded[b] * t >= z) {
            b--;
            double tangent = bounded[b + 1];
            double at = meeting(fromAt, along, fromRise - tangent * fromAt, tangent * along - climb);
            length[b] += voids.outside(b, at) - entered[b];
            exit[b] = middle;
            if (crossings != null) {
                crossings.add(b, at);
            }
        }
        return b;
    }

    /** Where a ray meets the surface, from how far it was below it and how much less it is further on. */
    private static double meeting(double from, double along, double before, double closing) {
        double share = before / closing;
        // Not a number where the ray runs in the surface: then where the stretch begins.
        return from + (share > 0 ? share < 1 ? share * along : along : 0);
    }

    /** Brings out every ray that is still below at a place, as where rounding alone has kept it there. */
    void surface(double at) {
        leaveBelow(at, Math.min(lastRise, tangents[1] * at));
    }

    /** Brings out every ray that is still below on level ground, which rising rays do. */
    void level() {
        double lowest = tangents[1];
        if (below > 0 && lowest > 0) {
            int still = below;
            leaveBelow(Math.max(lastAt, lastRise / lowest * (1 + 1e-12)) + 1, lastRise);
            Arrays.fill(exit, below, still, Double.POSITIVE_INFINITY);
        }
    }

    private void leaveBelow(double at, double rise) {
        below = leave(below, lastAt, lastRise, at, rise);
        from(at, rise);
    }
}
