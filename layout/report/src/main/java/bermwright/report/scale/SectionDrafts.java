// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.foundation.Vec3;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Patch;
import bermwright.report.paper.Pen;
import bermwright.report.section.HullSection;
import bermwright.report.sheet.CoverSheets;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.plan.Hatch;
import bermwright.site.plan.Hull;
import bermwright.site.pose.LyingPose;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Sections of a hull under its cover, dimensioned.
 *
 * @param hull   the hull
 * @param pose   how it lies
 * @param sheets what its sections show
 */
record SectionDrafts(Hull hull, LyingPose pose, CoverSheets sheets) {
    /** Soil thinner than this counts as ended (m). */
    private static final double ENDED = 0.02;
    private static final double BETWEEN = 12;

    /**
     * Where a hull is cut across.
     *
     * @param letter its letter
     * @param along  distance from the base plane (m)
     */
    record Cut(String letter, double along) {
    }

    /** Three cuts: a quarter, a half and three quarters along the barrel, or through a hatch in its side. */
    static List<Cut> cuts(Hull hull) {
        double from = hull.baseEnd().depth();
        double barrel = hull.length() - from - hull.farEnd().depth();
        List<Cut> cuts = new ArrayList<>();
        for (int i = 1; i <= 3; i++) {
            double along = from + barrel * i / 4;
            double low = from + barrel * (i / 4.0 - 0.125);
            double high = from + barrel * (i / 4.0 + 0.125);
            along = hull.hatches().stream().filter(h -> h.end() == Hatch.End.SIDE && h.along() >= low
                    && h.along() < high).mapToDouble(Hatch::along).findFirst().orElse(along);
            cuts.add(new Cut(String.valueOf((char) ('A' + i - 1)), along));
        }
        return cuts;
    }

    /** The section along the axis. */
    Draft along() {
        return new Draft(Drawing.name("long-section", hull.id()), "Hull " + hull.id() + ": section along its axis",
                sheet -> {
                    HullSection cut = sheets.longCut();
                    int scale = fit(sheet, List.of(cut));
                    CutDrawing drawing = stacked(sheet, List.of(cut), scale).get(0);
                    common(drawing, cut, true);
                    ends(drawing, cut);
                    hull.hatches().forEach(hatch -> sill(drawing, cut, hatch));
                    notes(sheet, "Ways to the right from the base plane along azimuth " + String.format(Locale.ROOT,
                            "%.1f\u00b0", hull.layDownAzimuth().degrees()) + ", in metres.");
                    return new Draft.Drawn(scale, Optional.empty());
                });
    }

    /** The sections across it, one below the other. */
    Draft across() {
        return new Draft(Drawing.name("cross-sections", hull.id()), "Hull " + hull.id() + ": sections across",
                sheet -> {
                    List<Cut> at = cuts(hull);
                    List<HullSection> cuts = at.stream().map(c -> sheets.crossCut(c.along)).toList();
                    int scale = fit(sheet, cuts);
                    List<CutDrawing> drawings = stacked(sheet, cuts, scale);
                    for (int i = 0; i < cuts.size(); i++) {
                        common(drawings.get(i), cuts.get(i), false);
                        toes(drawings.get(i), cuts.get(i));
                        sideHatches(drawings.get(i), cuts.get(i), at.get(i).along);
                        Patch room = drawings.get(i).room();
                        sheet.words(new Mark.Words(new Dot(room.middle().x() - room.halfWidth() + 2,
                                room.middle().y() - room.halfHeight() + 4), String.format(Locale.ROOT,
                                "%s \u2013 %s: %.2f m from the base plane", at.get(i).letter, at.get(i).letter,
                                at.get(i).along), 2.5, 0, Mark.Align.LEFT));
                    }
                    notes(sheet, "Seen from the base to the far end; ways to the right from the axis, in metres.");
                    return new Draft.Drawn(scale, Optional.empty());
                });
    }

    private static void notes(Sheet sheet, String ways) {
        sheet.notes().add(ways);
        sheet.notes().add("Dimensions in metres. Figures at the soil: upright over the crown, square to the skin at the"
                + " flanks. Levels and ways are drawn at one scale.");
    }

    private static double[] extent(HullSection cut) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        List<Dot> all = new ArrayList<>(cut.ground());
        all.addAll(cut.cover());
        cut.hulls().forEach(all::addAll);
        cut.walls().forEach(w -> all.addAll(w.outline()));
        for (Dot dot : all) {
            low = dot.isKnown() ? Math.min(low, dot.y()) : low;
            high = dot.isKnown() ? Math.max(high, dot.y()) : high;
        }
        return new double[] {cut.ground().get(0).x(), cut.ground().get(cut.ground().size() - 1).x(), low, high};
    }

    /** Room beside a section for dimensions and names, up and down (mm). */
    private static final double[] AROUND = {16, 30};

    private static int fit(Sheet sheet, List<HullSection> cuts) {
        Patch drawing = sheet.drawing();
        double wide = cuts.stream().mapToDouble(c -> extent(c)[1]).max().orElse(0)
                - cuts.stream().mapToDouble(c -> extent(c)[0]).min().orElse(0);
        double high = cuts.stream().mapToDouble(c -> extent(c)[3] - extent(c)[2]).max().orElse(0);
        double up = 2 * drawing.halfHeight() / cuts.size() - AROUND[0] - AROUND[1] - BETWEEN / 2;
        return Scales.largest(new double[] {wide, high}, new double[] {2 * drawing.halfWidth() - 2, up});
    }

    private static List<CutDrawing> stacked(Sheet sheet, List<HullSection> cuts, int scale) {
        Patch drawing = sheet.drawing();
        double each = 2 * drawing.halfHeight() / cuts.size();
        double low = cuts.stream().mapToDouble(c -> extent(c)[0]).min().orElse(0);
        double high = cuts.stream().mapToDouble(c -> extent(c)[1]).max().orElse(0);
        List<CutDrawing> all = new ArrayList<>();
        for (int i = 0; i < cuts.size(); i++) {
            double top = drawing.middle().y() - drawing.halfHeight() + i * each;
            Patch room = Patch.between(new Dot(drawing.middle().x() - drawing.halfWidth(), top),
                    new Dot(drawing.middle().x() + drawing.halfWidth(), top + each));
            double[] e = extent(cuts.get(i));
            Dot zero = new Dot(drawing.middle().x() - Scales.onPaper((low + high) / 2, scale),
                    top + (each + AROUND[0] - AROUND[1]) / 2 + Scales.onPaper((e[2] + e[3]) / 2, scale));
            CutDrawing cut = new CutDrawing(sheet, zero, scale, 1, room);
            cut.grid(e[2], e[3], i == cuts.size() - 1);
            all.add(cut);
        }
        return all;
    }

    private void common(CutDrawing drawing, HullSection cut, boolean isLong) {
        if (!cut.cover().isEmpty()) {
            drawing.between(cut.cover(), cut.ground(), "soil placed");
        }
        drawing.ground(cut.ground());
        if (!cut.cover().isEmpty()) {
            drawing.surface(cut.cover(), "finished surface");
        }
        cut.hulls().forEach(body -> drawing.body(body, Pen.THICK, "hull"));
        if (isLong) {
            List<Dot> axis = drawing.on(List.of(new Dot(0, pose.axisStart().z()), new Dot(run(), pose.axisEnd().z())));
            drawing.sheet().paper().path(new Mark.Path(axis, false, Optional.of(Pen.THIN.dashed(6.0, 1.0, 0.6, 1.0)),
                    Optional.empty(), "hull-axis"));
            drawing.sheet().occupied().line(axis);
        } else {
            Dot middle = axis(cut);
            double top = height(cut.cover().isEmpty() ? cut.ground() : cut.cover(), middle.x());
            drawing.line(Pen.THIN.dashed(6.0, 1.0, 0.6, 1.0), drawing.on(List.of(new Dot(middle.x(), top + 1.5),
                    new Dot(middle.x(), middle.y() - BodyProfile.radiusAt(hull, hull.length() / 2) - 1.5))));
        }
        cut.passages().forEach(p -> drawing.body(p.outline(), Pen.THIN.dashed(1.2, 0.6), "passage through the cover"));
        cut.walls().forEach(w -> drawing.wall(w.outline()));
        for (HullSection.Dimension dimension : cut.dimensions()) {
            drawing.dimension(dimension.from(), dimension.to(), 0, dimension.label().split(" ")[0]);
        }
        cut.walls().forEach(w -> drawing.sheet().name(drawing.on(w.outline().get(0)), w.label(), false));
        for (HullSection.Station station : cut.stations()) {
            Dot at = drawing.on(station.at());
            drawing.sheet().line(Pen.MEDIUM, List.of(new Dot(at.x() - 1, at.y()), new Dot(at.x() + 1, at.y())));
            drawing.sheet().line(Pen.MEDIUM, List.of(new Dot(at.x(), at.y() - 1), new Dot(at.x(), at.y() + 1)));
            drawing.sheet().name(at, station.label(), false);
            drawing.sheet().legend().add("crew station", (paper, box) -> paper.line(Pen.MEDIUM, new Dot(
                    box.middle().x() - 1, box.middle().y()), new Dot(box.middle().x() + 1, box.middle().y()))
                    .line(Pen.MEDIUM, new Dot(box.middle().x(), box.middle().y() - 1), new Dot(box.middle().x(),
                            box.middle().y() + 1)));
        }
    }

    /** Height of a line at a way; not a number beyond its ends. */
    private static double height(List<Dot> line, double way) {
        for (int i = 0; i + 1 < line.size(); i++) {
            Dot a = line.get(i);
            Dot b = line.get(i + 1);
            if (way >= a.x() && way <= b.x()) {
                return a.y() + (b.y() - a.y()) * (way - a.x()) / (b.x() - a.x());
            }
        }
        return Double.NaN;
    }

    /** Where soil ends when one walks outwards from a way; empty where it runs off the section. */
    private static Optional<Dot> toe(HullSection cut, double from, int side) {
        if (cut.cover().size() != cut.ground().size() || cut.cover().isEmpty()) {
            return Optional.empty();
        }
        Dot last = null;
        for (int k = 0; k < cut.ground().size(); k++) {
            int i = side > 0 ? k : cut.ground().size() - 1 - k;
            Dot bed = cut.ground().get(i);
            if (side * (bed.x() - from) >= 0) {
                if (!(cut.cover().get(i).y() - bed.y() > ENDED)) {
                    return Optional.ofNullable(last);
                }
                last = bed;
            }
        }
        return Optional.empty();
    }

    private double run() {
        Vec3 along = pose.axisEnd().minus(pose.axisStart());
        return Math.hypot(along.x(), along.y());
    }

    private void ends(CutDrawing drawing, HullSection cut) {
        List<Dot> outline = cut.hulls().get(0);
        Dot base = outline.get(0);
        Dot far = outline.get(outline.size() / 2 - 1);
        double run = run();
        Dot axisBase = new Dot(0, pose.axisStart().z());
        Dot axisFar = new Dot(run, pose.axisEnd().z());
        double below = Scales.onPaper(hull.radius(), drawing.scale()) + 13;
        drawing.dimension(axisBase, axisFar, -below, String.format(Locale.ROOT, "%.2f", hull.length()));
        toe(cut, Math.min(base.x(), 0) - 0.3, -1).ifPresent(toe -> toeTo(drawing, toe, new Dot(0, toe.y())));
        toe(cut, far.x() + 0.3, 1).ifPresent(toe -> toeTo(drawing, toe, new Dot(far.x(), toe.y())));
        drawing.level(axisBase, "axis");
        drawing.level(axisFar, "axis");
        double middle = run / 2;
        drawing.level(new Dot(middle, height(cut.cover().isEmpty() ? cut.ground() : cut.cover(), middle)), "");
    }

    private static void toeTo(CutDrawing drawing, Dot toe, Dot to) {
        Dot left = toe.x() < to.x() ? toe : to;
        Dot right = toe.x() < to.x() ? to : toe;
        drawing.dimension(left, right, -8, String.format(Locale.ROOT, "%.2f", right.x() - left.x()));
        drawing.level(toe, "toe");
    }

    /** A hatch in an end: how high its sill stands over the ground before it. */
    private void sill(CutDrawing drawing, HullSection cut, Hatch hatch) {
        if (hatch.end() == Hatch.End.SIDE) {
            return;
        }
        boolean base = hatch.end() == Hatch.End.BASE;
        double up = hatch.sill() - hull.radius();
        Vec3 place = pose.place(base ? 0 : hull.length(), 0, up);
        Vec3 off = place.minus(pose.axisStart());
        Dot sill = new Dot(off.x() * hull.layDownAzimuth().east() + off.y() * hull.layDownAzimuth().north(), place.z());
        Dot top = new Dot(sill.x(), sill.y() + hatch.height());
        drawing.line(Pen.THICK, drawing.on(List.of(new Dot(sill.x() - 0.15, sill.y()), new Dot(sill.x() + 0.6,
                sill.y()))));
        drawing.line(Pen.MEDIUM.dashed(1.0, 0.6), drawing.on(List.of(sill, top)));
        double outside = height(cut.ground(), sill.x() + (base ? -0.5 : 0.5));
        drawing.dimension(new Dot(sill.x(), outside), sill, base ? 5 : -5, String.format(Locale.ROOT,
                "sill of %s %.2f", hatch.id(), sill.y() - outside));
    }

    private void sideHatches(CutDrawing drawing, HullSection cut, double along) {
        for (Hatch hatch : hull.hatches()) {
            if (hatch.end() == Hatch.End.SIDE && Math.abs(hatch.along() - along) < hatch.width() / 2) {
                Dot axis = axis(cut);
                double half = hatch.height() / 2 / hull.radius();
                List<Dot> arc = new ArrayList<>();
                for (int i = -4; i <= 4; i++) {
                    double turn = hatch.around() + half * i / 4;
                    arc.add(new Dot(axis.x() - hull.radius() * Math.sin(turn), axis.y()
                            + hull.radius() * Math.cos(turn)));
                }
                Pen pen = new Pen(1.2, 0, List.of());
                drawing.line(pen, drawing.on(arc));
                drawing.sheet().legend().add("hatch", (paper, box) -> paper.line(pen, new Dot(box.middle().x() - 4,
                        box.middle().y()), new Dot(box.middle().x() + 4, box.middle().y())));
                Dot foot = arc.get(0).y() < arc.get(8).y() ? arc.get(0) : arc.get(8);
                drawing.level(foot, "sill of " + hatch.id());
            }
        }
    }

    private static Dot axis(HullSection cut) {
        List<Dot> circle = cut.hulls().get(0);
        return new Dot(circle.stream().mapToDouble(Dot::x).average().orElse(0),
                circle.stream().mapToDouble(Dot::y).average().orElse(0));
    }

    private void toes(CutDrawing drawing, HullSection cut) {
        Dot axis = axis(cut);
        double radius = cut.hulls().get(0).stream().mapToDouble(d -> Math.abs(d.x() - axis.x())).max().orElse(0);
        double below = Scales.onPaper(radius, drawing.scale()) + 4;
        drawing.dimension(new Dot(axis.x() - radius, axis.y()), new Dot(axis.x() + radius, axis.y()), -below - 14,
                String.format(Locale.ROOT, "%.2f", 2 * radius));
        for (int side = -1; side <= 1; side += 2) {
            int towards = side;
            toe(cut, axis.x(), side).ifPresent(toe -> {
                Dot centre = new Dot(axis.x(), toe.y());
                drawing.dimension(towards < 0 ? toe : centre, towards < 0 ? centre : toe, -8,
                        String.format(Locale.ROOT, "%.2f", Math.abs(toe.x() - axis.x())));
                drawing.level(toe, "toe");
            });
        }
        double top = height(cut.cover().isEmpty() ? cut.ground() : cut.cover(), axis.x());
        drawing.level(new Dot(axis.x(), top), "");
        drawing.level(new Dot(axis.x(), axis.y() - radius), "invert");
    }
}
