// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.footprint.Shape;
import bermwright.site.plan.Hull;
import bermwright.site.pose.LyingPose;
import java.util.ArrayList;
import java.util.List;

/**
 * A point to be set out on the ground.
 *
 * @param number  its number (1), from 1
 * @param subject id of the plan object it belongs to
 * @param what    what it marks, in words
 * @param place   where, in projected metres
 * @param height  height of the natural ground there (m), {@code NaN} where not known
 */
public record SettingOut(int number, String subject, String what, Point place, double height) {
    private static final String TOE = "toe of cover";
    /** Points of a toe are set out this far apart (m, projected). */
    private static final double TOE_STEP = 10;

    /**
     * All points of an assessment.
     *
     * @param assessment the assessment
     * @return the points, numbered in order
     */
    public static List<SettingOut> of(Assessment assessment) {
        Points points = new Points(assessment);
        assessment.hulls().forEach(points::hull);
        for (Shape shape : assessment.shapes().all()) {
            switch (shape.kind()) {
                case ANCHOR, WINCH, POLE_FOOT, PAD -> points.add(shape.subject(), shape.kind().word()
                        + (shape.part().isEmpty() ? "" : ", " + shape.part()), shape.outline().centre());
                case COVER_TOE -> points.along(shape, TOE);
                case BORROW, STOCKPILE, PREPARATION, KEEP_OUT -> points.corners(shape);
                default -> {
                }
            }
        }
        return points.all;
    }

    /** The points that a page shows: all but those along a toe, of which the file has many. */
    public static List<SettingOut> shown(List<SettingOut> points) {
        return points.stream().filter(p -> !p.what.equals(TOE)).toList();
    }

    /** The points as a table. */
    public static Table table(List<SettingOut> points) {
        return new Table("setting-out", "Points to set out, in projected metres; heights of the natural ground",
                List.of(Column.number("point", "point"), Column.words("subject", "of"), Column.words("what", "what"),
                Column.number("east_m", "east (m)"), Column.number("north_m", "north (m)"),
                Column.number("height_m", "height (m)")), points.stream().map(p -> List.of(Integer.toString(p.number),
                p.subject, p.what, Words.fixed(p.place.east(), 3), Words.fixed(p.place.north(), 3),
                Words.fixed(p.height, 3))).toList());
    }

    /** Points as they are gathered. */
    private static final class Points {
        private final Assessment assessment;
        private final List<SettingOut> all = new ArrayList<>();

        Points(Assessment assessment) {
            this.assessment = assessment;
        }

        void add(String subject, String what, Point place) {
            all.add(new SettingOut(all.size() + 1, subject, what, place, assessment.ground().grid().height(place)));
        }

        void hull(HullAssessment of) {
            Hull hull = of.hull();
            double scale = assessment.ground().grid().metreScale();
            Azimuth azimuth = hull.layDownAzimuth();
            add(hull.id(), hull.arrival() == Hull.Arrival.LANDS_LYING ? "under the axis at the base plane"
                    : "under the standing axis", hull.baseCentre());
            if (hull.arrival() == Hull.Arrival.LOWERED) {
                Point pivot = hull.baseCentre().moved(azimuth, hull.pivotAhead() / scale, 0);
                add(hull.id(), "pivot line, left end", pivot.moved(azimuth, 0, hull.radius() / scale));
                add(hull.id(), "pivot line, right end", pivot.moved(azimuth, 0, -hull.radius() / scale));
            }
            of.lying().map(LyingPose::axisEnd).ifPresent(end -> add(hull.id(), "under the tip once lying", end.plan()));
        }

        void corners(Shape shape) {
            List<Point> corners = shape.outline().corners();
            for (int i = 0; i < corners.size(); i++) {
                add(shape.subject(), shape.kind().word() + ", corner " + (i + 1), corners.get(i));
            }
        }

        void along(Shape shape, String what) {
            List<Point> corners = shape.outline().corners();
            double since = TOE_STEP;
            for (int i = 0; i < corners.size(); i++) {
                since += corners.get(i).distance(corners.get((i + corners.size() - 1) % corners.size()));
                if (since >= TOE_STEP) {
                    add(shape.subject(), what, corners.get(i));
                    since = 0;
                }
            }
        }
    }
}
