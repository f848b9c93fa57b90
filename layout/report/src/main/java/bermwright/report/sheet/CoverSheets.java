// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.page.Table;
import bermwright.report.section.HullSection;
import bermwright.report.section.UnrolledDepth;
import bermwright.shielding.cover.DepthMap;
import bermwright.site.answer.Answers;
import bermwright.site.answer.CoverAnswers;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.PassedThrough;
import bermwright.site.exposure.SiteCover;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Wall;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * The drawings of a lying hull under its cover, also for the editor.
 *
 * @param hull  the hull
 * @param pose  how it lies
 * @param cover ground and mound
 * @param walls the walls of the site
 */
public record CoverSheets(Hull hull, LyingPose pose, SiteCover cover, List<Wall> walls) {
    private static final double MARGIN = 6;
    private static final double GREATEST_REACH = 120;
    /** A cross section stops here: what lies beyond belongs to the next hull (m). */
    private static final double GREATEST_ACROSS = 35;
    private static final int TURN_STEPS = 72;
    /** A mound thinner than this counts as ended (m). */
    private static final double ENDED = 0.02;

    /**
     * The section along the hull's axis.
     *
     * @return the drawing
     */
    public Drawing longSection() {
        return longCut().drawing();
    }

    /**
     * What the section along the hull's axis shows, for drawings of other kinds.
     *
     * @return the section
     */
    public HullSection longCut() {
        DoubleFunction<Point> line = way -> metres().moved(base(), azimuth(), way, 0);
        double from = -reach(w -> line.apply(-w));
        double to = hull.length() + reach(w -> line.apply(hull.length() + w));
        List<Dot> outline = new ArrayList<>();
        List<Dot> under = new ArrayList<>();
        int steps = 120;
        for (int i = 0; i <= steps; i++) {
            double s = hull.length() * i / steps;
            outline.add(along(s, BodyProfile.radiusAt(hull, s)));
            under.add(along(s, -BodyProfile.radiusAt(hull, s)));
        }
        Collections.reverse(under);
        outline.addAll(under);
        List<HullSection.Dimension> dimensions = new ArrayList<>();
        for (double share : new double[] {0.2, 0.5, 0.8}) {
            upright(along(share * hull.length(), BodyProfile.radiusAt(hull, share * hull.length())), line, dimensions);
        }
        PassageOutlines passages = new PassageOutlines(hull, cover.finished());
        List<HullSection.Station> stations = hull.stations().stream().map(station -> new HullSection.Station(
                station.id(), along(station.along(), station.up()))).toList();
        return new HullSection(Drawing.name("long-section", hull.id()), "Hull " + hull.id() + ": long section, azimuth "
                + Words.fixed(azimuth().degrees(), 1) + "°", "along the lay-down azimuth from the base plane (m)",
                surface(line, from, to, cover.natural()), surface(line, from, to, cover.finished()), List.of(outline),
                cuts().along(line, from, to), passages.along(line, this::along), stations, dimensions);
    }

    /**
     * The section across the hull.
     *
     * @param along distance of the cut from the base plane (m)
     * @return the drawing; what lies to the left looking from base to far end is on the left
     */
    public Drawing crossSection(double along) {
        return crossCut(along).drawing();
    }

    /**
     * What the section across the hull shows, for drawings of other kinds.
     *
     * @param along distance of the cut from the base plane (m)
     * @return the section
     */
    public HullSection crossCut(double along) {
        Vec3 axis = at(along, 0, 0);
        DoubleFunction<Point> line = right -> metres().moved(axis.plan(), azimuth(), 0, -right);
        double from = -Math.min(reach(w -> line.apply(-w)), GREATEST_ACROSS);
        double to = Math.min(reach(line), GREATEST_ACROSS);
        double radius = BodyProfile.radiusAt(hull, along);
        List<Dot> circle = new ArrayList<>();
        for (int i = 0; i < TURN_STEPS; i++) {
            double turn = 2 * Math.PI * i / TURN_STEPS;
            circle.add(new Dot(-radius * Math.sin(turn), axis.z() + radius * Math.cos(turn)));
        }
        List<HullSection.Dimension> dimensions = new ArrayList<>();
        upright(new Dot(0, axis.z() + radius), line, dimensions);
        for (int side = -1; side <= 1; side += 2) {
            radial(new Dot(0, axis.z()), radius, side * Math.toRadians(60), line, dimensions);
        }
        PassageOutlines passages = new PassageOutlines(hull, cover.finished());
        List<HullSection.Station> stations = hull.stations().stream()
                .filter(station -> Math.abs(station.along() - along) < hull.length() / 8)
                .map(station -> new HullSection.Station(station.id(), new Dot(-station.across(),
                        axis.z() + station.up()))).toList();
        return new HullSection(Drawing.name("cross-section", hull.id()), "Hull " + hull.id() + ": cross section "
                + Words.fixed(along, 1) + " m from the base plane, looking to the far end",
                "across the axis (m), right positive", surface(line, from, to, cover.natural()),
                surface(line, from, to, cover.finished()), List.of(circle), cuts().along(line, from, to),
                passages.across(along, line, axis.z()), stations, dimensions);
    }

    /**
     * The depth of cover over the skin, unrolled: the nearest way out in any direction.
     *
     * @return the drawing; empty where the hull has no cover
     */
    public Optional<Drawing> unrolled() {
        return cover.hull(hull.id()).filter(c -> hull.cover().isPresent()).map(HullCover::depth).map(this::unrolled);
    }

    private Drawing unrolled(DepthMap depth) {
        List<List<Double>> rows = new ArrayList<>();
        for (int j = 0; j < depth.columns(); j++) {
            List<Double> row = new ArrayList<>();
            for (int i = 0; i < depth.rows(); i++) {
                double found = depth.trueDepth(i, j);
                row.add(found > 0 ? found : Double.NaN);
            }
            rows.add(row);
        }
        return new UnrolledDepth(Drawing.name("depth", hull.id()), "Hull " + hull.id()
                + ": depth of soil over the skin, nearest way out", hull.length(), rows,
                hull.cover().orElseThrow().thickness(), new PassageOutlines(hull, cover.finished()).patches())
                .drawing();
    }

    private List<PassedThrough> passing() {
        return cover.passing().stream().filter(p -> p.hull().equals(hull.id())).toList();
    }

    /**
     * What passes through the cover and how it fares.
     *
     * @return the table; empty where nothing does
     */
    public Optional<Table> passThroughs() {
        return passing().isEmpty() ? Optional.empty() : Optional.of(AnswerSheets.table(Drawing.name("pass-throughs",
                hull.id()), "Hull " + hull.id() + ": what passes through its cover", CoverAnswers.PASSING, passing()));
    }

    private WallCuts cuts() {
        return new WallCuts(walls, cover.prepared());
    }

    private Azimuth azimuth() {
        return hull.layDownAzimuth();
    }

    private TrueMetres metres() {
        return cover.natural().metres();
    }

    private Point base() {
        return pose.axisStart().plan();
    }

    /** A place in body axes, in the plan's projected frame. */
    private Vec3 at(double along, double across, double up) {
        return metres().moved(pose.axisStart(), pose.place(along, across, up).minus(pose.axisStart()));
    }

    private Dot along(double along, double up) {
        Vec3 off = pose.place(along, 0, up).minus(pose.axisStart());
        return new Dot(off.x() * azimuth().east() + off.y() * azimuth().north(), pose.axisStart().z() + off.z());
    }

    private List<Dot> surface(DoubleFunction<Point> line, double from, double to, ElevationGrid grid) {
        int steps = (int) Math.min(600, Math.max(60, Math.ceil((to - from) / (grid.trueSpacing() / 3))));
        List<Dot> dots = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            double way = from + (to - from) * i / steps;
            dots.add(new Dot(way, grid.height(line.apply(way))));
        }
        return dots;
    }

    /** How far the mound runs along a way, with a margin. */
    private double reach(DoubleFunction<Point> line) {
        double last = 0;
        for (double way = 0; way <= GREATEST_REACH; way += cover.natural().trueSpacing() / 2) {
            Point place = line.apply(way);
            double thick = cover.finished().height(place) - cover.prepared().height(place);
            last = thick > ENDED ? way : last;
            if (way > last + 2 * MARGIN + hull.radius()) {
                break;
            }
        }
        return Math.max(last, hull.radius()) + MARGIN;
    }

    private void upright(Dot skin, DoubleFunction<Point> line, List<HullSection.Dimension> into) {
        double top = cover.finished().height(line.apply(skin.x()));
        if (top - skin.y() > 0.05) {
            into.add(new HullSection.Dimension(skin, new Dot(skin.x(), top),
                    Words.fixed(top - skin.y(), 2) + " m straight up"));
        }
    }

    private void radial(Dot middle, double radius, double turn, DoubleFunction<Point> line,
            List<HullSection.Dimension> into) {
        double x = Math.sin(turn);
        double z = Math.cos(turn);
        Dot skin = new Dot(middle.x() + radius * x, middle.y() + radius * z);
        double step = 0.01;
        double way = 0;
        while (way < GREATEST_REACH
                && cover.finished().height(line.apply(skin.x() + way * x)) > skin.y() + way * z) {
            way += step;
        }
        if (way > 0.05 && way < GREATEST_REACH) {
            into.add(new HullSection.Dimension(skin, new Dot(skin.x() + way * x, skin.y() + way * z),
                    Words.fixed(way, 2) + " m square to the skin"));
        }
    }

    /**
     * The covers as placed.
     *
     * @param covers one for each covered hull
     * @return the table
     */
    public static Table covers(List<HullCover> covers) {
        return AnswerSheets.table("covers", "Covers as placed", Answers.COVER, covers);
    }
}
