// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.report.drawing.Dot;
import bermwright.report.paper.Patch;
import java.util.List;

/**
 * Where places of the site stand on a sheet.
 *
 * @param middle the place in the middle of the drawing
 * @param at     where that is on paper (mm)
 * @param right  the azimuth that runs to the right on paper
 * @param scale  scale of the sheet (1)
 * @param metre  true metres in one projected metre (1)
 */
record PlanView(Point middle, Dot at, Azimuth right, int scale, double metre) {
    /** Room left beside what must be seen (mm). */
    private static final double BESIDE = 8;
    static final Azimuth EAST = Azimuth.ofDegrees(90);

    /**
     * The largest view that shows places.
     *
     * @param places the places, one or more
     * @param room   the part of the sheet they have
     * @param right  the azimuth that runs to the right
     * @param metre  true metres in one projected metre (1)
     */
    static PlanView around(List<Point> places, Patch room, Azimuth right, double metre) {
        PlanView plain = new PlanView(places.get(0), new Dot(0, 0), right, 1000, metre);
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Point place : places) {
            Dot p = plain.on(place);
            low = new double[] {Math.min(low[0], p.x()), Math.min(low[1], p.y())};
            high = new double[] {Math.max(high[0], p.x()), Math.max(high[1], p.y())};
        }
        int scale = Scales.largest(new double[] {high[0] - low[0], high[1] - low[1]}, new double[] {
                2 * room.halfWidth() - BESIDE, 2 * room.halfHeight() - BESIDE});
        double x = (low[0] + high[0]) / 2 / metre;
        double y = -(low[1] + high[1]) / 2 / metre;
        return new PlanView(places.get(0).moved(right, x, y), room.middle(), right, scale, metre);
    }

    Dot on(Point place) {
        double east = place.east() - middle.east();
        double north = place.north() - middle.north();
        double k = Scales.onPaper(metre, scale);
        return new Dot(at.x() + k * (east * right.east() + north * right.north()),
                at.y() - k * (north * right.east() - east * right.north()));
    }

    List<Dot> on(List<Point> places) {
        return places.stream().map(this::on).toList();
    }

    /** The place of a spot on paper. */
    Point place(Dot paper) {
        double k = Scales.onPaper(metre, scale);
        return middle.moved(right, (paper.x() - at.x()) / k, -(paper.y() - at.y()) / k);
    }
}
