// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.ProfilePoint;
import java.util.ArrayList;
import java.util.List;

/**
 * Cut and fill between two surfaces from cross sections square to an axis, evenly spaced, and the volumes that follow
 * by hand; a second route beside {@link CutAndFill}.
 *
 * @param cut  cut areas along the axis
 * @param fill fill areas along the axis
 */
public record AxisSections(List<EndAreas.Section> cut, List<EndAreas.Section> fill) {
    /** So many steps a cell is cut into along a section. */
    private static final double STEPS_A_CELL = 4;

    /** Copies the sections. */
    public AxisSections {
        cut = List.copyOf(cut);
        fill = List.copyOf(fill);
    }

    /**
     * An axis with the width to both sides that sections take in.
     *
     * @param from      start
     * @param to        end, another place than the start
     * @param halfWidth width to each side (m, true), positive
     */
    public record Axis(Point from, Point to, double halfWidth) {
        /** Refuses an axis without length or width. */
        public Axis {
            Require.positive("length of the axis", from.distance(to), "m");
            Require.positive("half width", halfWidth, "m");
        }
    }

    /**
     * Sections between two surfaces; ground that is not known counts as unchanged.
     *
     * @param before the earlier surface
     * @param after  the later surface, on the same nodes
     * @param axis   the axis
     * @param count  number of sections (1), odd, three or more
     * @return the sections
     */
    public static AxisSections between(ElevationGrid before, ElevationGrid after, Axis axis, int count) {
        CutAndFill.requireSameNodes(before, after);
        Require.that(count >= 3 && count % 2 == 1, "%s sections; accepted: an odd number of three or more.", count);
        double scale = before.metreScale();
        Azimuth along = Azimuth.from(axis.from, axis.to);
        double length = axis.from.distance(axis.to);
        List<EndAreas.Section> cut = new ArrayList<>();
        List<EndAreas.Section> fill = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double station = length * i / (count - 1);
            Point left = axis.from.moved(along, station, axis.halfWidth / scale);
            Point right = axis.from.moved(along, station, -axis.halfWidth / scale);
            double[] areas = areas(before, after, left, right);
            cut.add(new EndAreas.Section(station * scale, areas[0]));
            fill.add(new EndAreas.Section(station * scale, areas[1]));
        }
        return new AxisSections(cut, fill);
    }

    private static double[] areas(ElevationGrid before, ElevationGrid after, Point left, Point right) {
        List<ProfilePoint> ground = before.profile(left, right, before.trueSpacing() / STEPS_A_CELL);
        double cut = 0;
        double fill = 0;
        for (int i = 1; i < ground.size(); i++) {
            double a = after.height(ground.get(i - 1).place()) - ground.get(i - 1).height();
            double b = after.height(ground.get(i).place()) - ground.get(i).height();
            double width = ground.get(i).distance() - ground.get(i - 1).distance();
            if (!Double.isNaN(a + b)) {
                double above = a >= 0 && b >= 0 ? (a + b) / 2 : a <= 0 && b <= 0 ? 0
                        : Math.max(a, b) * Math.max(a, b) / (2 * Math.abs(a - b));
                fill += above * width;
                cut += (above - (a + b) / 2) * width;
            }
        }
        return new double[] {Math.max(0, cut), Math.max(0, fill)};
    }
}
