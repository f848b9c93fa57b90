// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.relief;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Require;
import java.time.Duration;
import java.time.Instant;

/**
 * Hours of sunlight at each node over a time: the ground within a reach throws its shadow; the sun counts by the share
 * of its disc that stands over it. The sun's way is that of one place, the middle of the ground.
 *
 * <p>The horizon is looked at in each sector of azimuth along its middle, every cell near by and in steps of a part of
 * the distance further off. What lies beyond the reach throws no shadow here: light is then at most this.
 */
public final class LightSurface implements Surface {
    private static final int SECTORS = 72;
    private static final double STEP_SHARE = 0.02;
    private static final int BINS = 3600;
    /** Elevations from -10 to 80 degrees, 40 bins a degree. */
    private static final double LOWEST = Math.toRadians(-10);
    private static final double BINS_A_RADIAN = 40 * 180 / Math.PI;
    private static final Duration STEP = Duration.ofMinutes(30);
    private static final int MOST_CELLS = 2048;

    private final int margin;
    private final int[][] rows = new int[SECTORS][];
    private final int[][] columns = new int[SECTORS][];
    private final double[][] weights = new double[SECTORS][];
    private final double[][] distances = new double[SECTORS][];
    /** Hours with the sun in a sector over an elevation, by bins of elevation. */
    private final double[][] hours = new double[SECTORS][BINS + 1];

    /**
     * Where and when.
     *
     * @param latitude  latitude of the middle of the ground (rad)
     * @param longitude its longitude, positive to the east (rad)
     * @param trueNorth true north there, clockwise from grid north
     * @param from      the beginning
     * @param to        the end, later than the beginning, within 20 years of it
     */
    public record Stay(double latitude, double longitude, Azimuth trueNorth, Instant from, Instant to) {
        /** Refuses times that end before they begin. */
        public Stay {
            Require.that(from.isBefore(to) && Duration.between(from, to).toDays() <= 7305,
                    "the time from %s to %s; accepted: up to 20 years, the end after the beginning.", from, to);
        }
    }

    /**
     * The surface for a stay.
     *
     * @param stay        where and when
     * @param reach       how far ground throws shadows (m), positive
     * @param trueSpacing distance between neighbouring nodes (m), positive
     */
    public LightSurface(Stay stay, double reach, double trueSpacing) {
        Require.positive("reach", reach, "m");
        margin = (int) Math.min(MOST_CELLS, Math.ceil(reach / trueSpacing) + 1);
        double far = Math.min(reach, (margin - 1) * trueSpacing);
        for (int s = 0; s < SECTORS; s++) {
            layOut(s, far, trueSpacing);
        }
        for (Instant time = stay.from.plus(STEP.dividedBy(2)); time.isBefore(stay.to); time = time.plus(STEP)) {
            SunPlace sun = SunPlace.at(time);
            double bearing = sun.bearing(stay.latitude, stay.longitude) + stay.trueNorth.radians();
            double elevation = sun.elevation(stay.latitude, stay.longitude);
            int sector = (int) Math.floorMod(Math.round(bearing / (2 * Math.PI) * SECTORS), (long) SECTORS);
            addSun(sector, elevation, STEP.toMinutes() / 60.0);
        }
    }

    /** Adds time to all horizons that leave a part of the disc uncovered. */
    private void addSun(int sector, double elevation, double time) {
        for (int bin = 0; bin <= BINS; bin++) {
            double over = (elevation - LOWEST - bin / BINS_A_RADIAN) / SunPlace.HALF_DISC;
            if (over <= -1) {
                return;
            }
            double x = Math.min(1, over);
            // The share of a disc on one side of a line at x radii from its middle.
            hours[sector][bin] += time * (0.5 + (x * Math.sqrt(Math.max(0, 1 - x * x)) + Math.asin(x)) / Math.PI);
        }
    }

    private void layOut(int sector, double reach, double spacing) {
        double angle = 2 * Math.PI * sector / SECTORS;
        java.util.List<double[]> points = new java.util.ArrayList<>();
        for (double d = spacing; d <= reach; d += Math.max(spacing, STEP_SHARE * d)) {
            points.add(new double[] {d / spacing * Math.sin(angle), d / spacing * Math.cos(angle), d});
        }
        int n = points.size();
        rows[sector] = new int[n];
        columns[sector] = new int[n];
        weights[sector] = new double[2 * n];
        distances[sector] = new double[n];
        for (int i = 0; i < n; i++) {
            double[] p = points.get(i);
            columns[sector][i] = (int) Math.floor(p[0]);
            rows[sector][i] = (int) Math.floor(p[1]);
            weights[sector][2 * i] = p[0] - Math.floor(p[0]);
            weights[sector][2 * i + 1] = p[1] - Math.floor(p[1]);
            distances[sector][i] = p[2];
        }
    }

    @Override
    public int margin() {
        return margin;
    }

    @Override
    public boolean reachesEdge() {
        return true;
    }

    @Override
    public String unit() {
        return "h";
    }

    @Override
    public void row(HeightBlock heights, int row, double[] into) {
        for (int c = 0; c < into.length; c++) {
            double here = heights.height(row, c);
            double sum = here - here;
            for (int s = 0; s < SECTORS && !Double.isNaN(here); s++) {
                double bin = (horizon(heights, row, c, s) - LOWEST) * BINS_A_RADIAN;
                int below = (int) Math.max(0, Math.min(BINS - 1, bin));
                double share = Math.max(0, Math.min(1, bin - below));
                sum += hours[s][below] + share * (hours[s][below + 1] - hours[s][below]);
            }
            into[c] = sum;
        }
    }

    /** The highest ground in a sector; the level where there is none. */
    private double horizon(HeightBlock heights, int row, int column, int s) {
        double here = heights.height(row, column);
        double steepest = Double.NEGATIVE_INFINITY;
        double[] w = weights[s];
        for (int i = 0; i < distances[s].length; i++) {
            int r = row + rows[s][i];
            int c = column + columns[s][i];
            double u = w[2 * i];
            double v = w[2 * i + 1];
            double h = (1 - v) * ((1 - u) * heights.height(r, c) + u * heights.height(r, c + 1))
                    + v * ((1 - u) * heights.height(r + 1, c) + u * heights.height(r + 1, c + 1));
            double d = distances[s][i];
            // The tangent of the elevation; the Moon falls away by the square of the distance.
            double tangent = (h - here - d * d / (2 * Horizon.MOON_RADIUS)) / d;
            if (tangent > steepest) {
                steepest = tangent;
            }
        }
        return Math.atan(steepest == Double.NEGATIVE_INFINITY ? 0 : steepest);
    }
}
