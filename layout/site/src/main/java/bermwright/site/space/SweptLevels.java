// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.plan.Hull;
import java.util.HashMap;
import java.util.Map;

/**
 * What a hull passes over on its way down, level by level over its bed: for each distance along the bed how far to
 * either side it reaches, at any tilt up to a given one.
 *
 * <p>At a tilt t the slice at a height z holds, for each s along the axis, the point x = (s - z cos t) / sin t out to
 * y = sqrt(R(s)^2 - n^2) with n = d + (s cos t - z) / sin t. Levels lie closer together near the bed, where the round
 * body widens fastest; between two levels distances are mixed.
 */
final class SweptLevels {
    private static final double CELL = 0.1;
    private static final double FIRST_LEVEL = 0.02;
    private static final double TILT_STEP = Math.toRadians(1);
    private static final int STATIONS = 96;
    private static final int SWINGS = 4;
    private final Hull hull;
    private final double wander;
    private final double lastTilt;
    private final double least;
    private final int cells;
    private final double[] stations = new double[STATIONS + 1];
    private final double[] radii = new double[STATIONS + 1];
    private final Map<Integer, double[]> levels = new HashMap<>();

    SweptLevels(FallingHull falling, double lastTilt) {
        this.hull = falling.hull();
        this.wander = falling.wander();
        this.lastTilt = lastTilt;
        double reach = falling.reach();
        this.least = -reach - CELL;
        this.cells = (int) Math.ceil(2 * (reach + CELL) / CELL);
        for (int i = 0; i <= STATIONS; i++) {
            stations[i] = hull.length() * i / STATIONS;
            radii[i] = BodyProfile.radiusAt(hull, stations[i]);
        }
    }

    /**
     * How far level a place is from where the hull passes at the place's own height, nothing inside.
     *
     * @param seen the place as seen from the pivot line, above the bed
     * @param upTo distance beyond which it does not matter (m)
     */
    double distance(Vec3 seen, double upTo) {
        double level = Math.sqrt(seen.z() / FIRST_LEVEL);
        int lower = (int) Math.floor(level);
        double share = level - lower;
        double below = distance(lower, seen, upTo);
        return below + share * (distance(lower + 1, seen, upTo) - below);
    }

    private double distance(int level, Vec3 seen, double upTo) {
        double[] half = levels.computeIfAbsent(level, this::level);
        double best = Double.POSITIVE_INFINITY;
        int swings = wander > 0 ? SWINGS : 0;
        for (int k = -swings; k <= swings; k++) {
            double swing = swings == 0 ? 0 : wander * k / swings;
            double x = seen.x() * Math.cos(swing) + seen.y() * Math.sin(swing);
            double y = Math.abs(seen.y() * Math.cos(swing) - seen.x() * Math.sin(swing));
            int first = Math.max(0, (int) Math.floor((x - upTo - least) / CELL));
            int last = Math.min(cells - 1, (int) Math.floor((x + upTo - least) / CELL));
            for (int i = first; i <= last; i++) {
                if (half[i] >= 0) {
                    double from = least + i * CELL;
                    double dx = Math.max(0, Math.max(from - x, x - from - CELL));
                    double dy = Math.max(0, y - half[i]);
                    best = Math.min(best, Math.hypot(dx, dy));
                }
            }
        }
        return Math.min(best, upTo);
    }

    /** Half the width of the passed place in each cell along the bed, below zero where nothing passes. */
    private double[] level(int index) {
        double z = FIRST_LEVEL * index * index;
        double[] half = new double[cells];
        java.util.Arrays.fill(half, -1);
        int steps = (int) Math.ceil(lastTilt / TILT_STEP);
        for (int i = 0; i <= steps; i++) {
            double tilt = lastTilt * i / steps;
            if (tilt < 1e-3) {
                standing(half, z);
            } else {
                slice(half, z, tilt);
            }
        }
        return half;
    }

    private void standing(double[] half, double z) {
        double radius = z <= hull.length() ? BodyProfile.radiusAt(hull, z) : -1;
        int before = -1;
        for (int k = 0; radius > 0 && k <= STATIONS; k++) {
            double x = -radius + 2 * radius * k / STATIONS;
            double y = Math.sqrt(Math.max(0, radius * radius - x * x));
            before = put(half, before, x - hull.pivotAhead(), y);
        }
    }

    private void slice(double[] half, double z, double tilt) {
        double sin = Math.sin(tilt);
        double cos = Math.cos(tilt);
        int before = -1;
        for (int k = 0; k <= STATIONS; k++) {
            double n = hull.pivotAhead() + (stations[k] * cos - z) / sin;
            double rest = radii[k] * radii[k] - n * n;
            before = rest < 0 ? -1 : put(half, before, (stations[k] - z * cos) / sin, Math.sqrt(rest));
        }
    }

    /** Widens the cells between the last point of a slice and the next. */
    private int put(double[] half, int before, double x, double y) {
        int cell = (int) Math.floor((x - least) / CELL);
        if (cell < 0 || cell >= cells) {
            return -1;
        }
        for (int i = before < 0 ? cell : Math.min(before, cell); i <= Math.max(before, cell); i++) {
            half[i] = Math.max(half[i], y);
        }
        return cell;
    }

    /** The first tilt at which the body holds a place as seen from the pivot line; {@code NaN} where none does. */
    double strikes(Vec3 seen) {
        int steps = (int) Math.ceil(lastTilt / TILT_STEP);
        for (int i = 0; i <= steps; i++) {
            double tilt = lastTilt * i / steps;
            double s = seen.x() * Math.sin(tilt) + seen.z() * Math.cos(tilt);
            double n = hull.pivotAhead() + seen.x() * Math.cos(tilt) - seen.z() * Math.sin(tilt);
            if (s >= 0 && s <= hull.length()) {
                double radius = BodyProfile.radiusAt(hull, s);
                if (n * n + seen.y() * seen.y() <= radius * radius) {
                    return tilt;
                }
            }
        }
        return Double.NaN;
    }
}
