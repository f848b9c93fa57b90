// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HornSlope;
import java.util.Optional;

/**
 * Whether made ground stands: where it was changed, it may be no steeper than its soil keeps.
 *
 * <p>The slope at a node is the steeper of Horn's slope and the slope to each of the eight neighbours, so that a step
 * between two nodes shows in full. Only slopes that the change made steeper count: ground that was steep before and
 * still lies is not at fault. Steps smaller than a cell are not seen.
 *
 * @param stands      true where no changed node is too steep
 * @param steepest    steepest slope of changed ground (rad), zero where nothing was changed
 * @param place       where that is; absent where nothing was changed
 * @param areaTooSteep area of changed ground that is too steep (m2)
 */
public record StandingSlopes(boolean stands, double steepest, Optional<Point> place, double areaTooSteep) {
    /** Differences of heights below this are rounding, in metres. */
    private static final double CHANGED = 1e-6;
    /** Slopes over the limit by this are rounding, in radians. */
    private static final double ROUNDING = 1e-6;

    /**
     * Looks at the ground that was changed.
     *
     * @param before the ground before
     * @param after  the ground after, on the same nodes
     * @param limit  steepest slope that stands (rad), above 0 and below pi/2
     * @return whether it stands
     */
    public static StandingSlopes of(ElevationGrid before, ElevationGrid after, double limit) {
        CutAndFill.requireSameNodes(before, after);
        Require.that(limit > 0 && limit < Math.PI / 2, "slope limit is %s rad; accepted: above 0 to below pi/2.",
                limit);
        GridFrame frame = before.frame();
        double steepest = 0;
        int place = -1;
        long tooSteep = 0;
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                if (Math.abs(after.nodeHeight(row, column) - before.nodeHeight(row, column)) > CHANGED) {
                    double slope = slope(before, after, row, column);
                    tooSteep += slope > limit + ROUNDING ? 1 : 0;
                    if (slope > steepest || place < 0) {
                        steepest = slope;
                        place = row * frame.columns() + column;
                    }
                }
            }
        }
        Optional<Point> where = place < 0 ? Optional.empty() : Optional.of(new EdgeField(frame).place(place));
        double cell = after.trueSpacing() * after.trueSpacing();
        return new StandingSlopes(tooSteep == 0, steepest, where, tooSteep * cell);
    }

    /** The steepest slope at a node that the change has made steeper; zero where it has made none. */
    private static double slope(ElevationGrid before, ElevationGrid after, int row, int column) {
        GridFrame frame = after.frame();
        double steepest = 0;
        double horn = HornSlope.slope(after, row, column);
        if (horn > HornSlope.slope(before, row, column) + ROUNDING) {
            steepest = Math.tan(horn);
        }
        for (int y = Math.max(0, row - 1); y <= Math.min(frame.rows() - 1, row + 1); y++) {
            for (int x = Math.max(0, column - 1); x <= Math.min(frame.columns() - 1, column + 1); x++) {
                double distance = after.trueSpacing() * Math.hypot(x - column, y - row);
                double rise = Math.abs(after.nodeHeight(y, x) - after.nodeHeight(row, column));
                double risen = Math.abs(before.nodeHeight(y, x) - before.nodeHeight(row, column));
                if (distance > 0 && rise > risen + CHANGED && rise / distance > steepest) {
                    steepest = rise / distance;
                }
            }
        }
        return Math.atan(steepest);
    }
}
