// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.Point;
import bermwright.report.drawing.Dot;
import bermwright.report.section.HullSection;
import bermwright.site.plan.Wall;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Walls where the line of a section cuts them.
 *
 * <p>A wall stands upright on the lower end of each of its stretches, as it does for the dose.
 *
 * @param walls  the walls
 * @param ground the ground they stand on
 */
record WallCuts(List<Wall> walls, ElevationGrid ground) {
    /** A section along a wall shows no more of it than this (m). */
    private static final double WIDEST = 8;

    /**
     * The walls as seen in a section.
     *
     * @param line where the section runs: the place at a way (m) along it, in the plan's frame
     * @param from where the section begins (m)
     * @param to   where it ends (m)
     * @return what is cut
     */
    List<HullSection.CutWall> along(DoubleFunction<Point> line, double from, double to) {
        List<HullSection.CutWall> cut = new ArrayList<>();
        for (Wall wall : walls) {
            for (int i = 0; i + 1 < wall.line().size(); i++) {
                Point a = wall.line().get(i);
                Point b = wall.line().get(i + 1);
                double foot = wall.foot(ground.height(a), ground.height(b));
                double sine = sine(line, a, b);
                double way = way(line, a, b);
                if (way >= from && way <= to && !Double.isNaN(foot)) {
                    double half = Math.min(WIDEST, wall.thickness() / sine) / 2;
                    double top = foot + wall.height();
                    cut.add(new HullSection.CutWall(wall.id(), List.of(new Dot(way - half, top), new Dot(way + half,
                            top), new Dot(way + half, foot), new Dot(way - half, foot))));
                }
            }
        }
        return cut;
    }

    /** Sine of the angle between section and wall, zero or more. */
    private static double sine(DoubleFunction<Point> line, Point a, Point b) {
        Point here = line.apply(0);
        Point on = line.apply(1);
        return Math.abs(turn(here, on, a, b)) / (here.distance(on) * a.distance(b));
    }

    /** Way along the section to a stretch of wall (m); not a number where it passes by. */
    private static double way(DoubleFunction<Point> line, Point a, Point b) {
        Point here = line.apply(0);
        Point on = line.apply(1);
        double turn = turn(here, on, a, b);
        double share = turn(here, on, a, here) / turn;
        return share >= 0 && share <= 1 ? turn(a, b, a, here) / turn : Double.NaN;
    }

    /** The way from one place to another crossed with that from a third to a fourth (m2). */
    private static double turn(Point from, Point to, Point a, Point b) {
        return (to.east() - from.east()) * (b.north() - a.north())
                - (to.north() - from.north()) * (b.east() - a.east());
    }
}
