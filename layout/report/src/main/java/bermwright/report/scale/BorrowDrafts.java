// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Patch;
import bermwright.report.paper.Pen;
import bermwright.site.assessment.Assessment;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.haulage.DugGround;
import bermwright.site.plan.BorrowGround;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A borrow pit as deep as its soil is needed: plan with the contours of its floor, and two sections.
 *
 * @param assessment what it is part of
 * @param borrow     the borrow ground
 * @param dug        how much of it is dug
 * @param lift       height of the lifts (m)
 */
record BorrowDrafts(Assessment assessment, BorrowGround borrow, DugGround dug, double lift) {
    /** Heights of these sections are drawn so many times larger: a pit is shallow. */
    private static final double TALLER = 5;
    private static final double FLAT = 0.02;
    private static final double AROUND = 10;

    private Azimuth along() {
        List<Point> corners = borrow.area().corners();
        Point from = corners.get(0);
        Point to = corners.get(1);
        for (int i = 1; i < corners.size(); i++) {
            Point a = corners.get(i);
            Point b = corners.get((i + 1) % corners.size());
            if (a.distance(b) > from.distance(to) + 1e-6) {
                from = a;
                to = b;
            }
        }
        return Azimuth.from(from, to);
    }

    private ElevationGrid before() {
        return assessment.ground().grid().withPatches(List.of());
    }

    /** The pit seen from above. */
    Draft plan() {
        return new Draft(Drawing.name("borrow-plan", borrow.id()), "Borrow pit " + borrow.id() + ": plan", sheet -> {
            double k = assessment.shapes().metres().scale();
            PlanDrawing plan = new PlanDrawing(sheet, PlanView.around(seen(), sheet.drawing(), PlanView.EAST,
                    k));
            plan.grid();
            assessment.shapes().all().stream().filter(s -> s.kind() == ShapeKind.CORRIDOR
                    || s.kind() == ShapeKind.KEEP_OUT).forEach(plan::shape);
            List<Point> ring = new ArrayList<>(borrow.area().corners());
            ring.add(ring.get(0));
            plan.line(Pen.THICK, ring);
            sheet.legend().add("border of the borrow ground", (paper, room) -> paper.outline(Pen.THICK,
                    room.corners()));
            cutMarks(plan, along(), "A");
            cutMarks(plan, along().turned(Math.PI / 2), "B");
            new ContourDrawing(plan, interval(plan)).draw(PlanDrafts.shown(dug.dugIn(before()), plan));
            figures(sheet);
            return new Draft.Drawn(plan.view().scale(), Optional.of(PlanView.EAST));
        });
    }

    /** Contours in the lifts' interval, or a multiple of it where its sides have no room for them. */
    private double interval(PlanDrawing plan) {
        double room = Scales.onPaper(lift / Math.tan(borrow.sideSlope()), plan.view().scale());
        return room >= 1.2 ? lift : 2 * lift;
    }

    /** The borrow ground and the ends of its sections. */
    private List<Point> seen() {
        List<Point> seen = new ArrayList<>(borrow.area().corners());
        for (Azimuth way : List.of(along(), along().turned(Math.PI / 2))) {
            for (double end : ends(way)) {
                seen.add(borrow.area().centre().moved(way, end, 0));
            }
        }
        return seen;
    }

    private void cutMarks(PlanDrawing plan, Azimuth way, String letter) {
        double[] ends = ends(way);
        Point middle = borrow.area().centre();
        for (double end : ends) {
            Dot out = plan.view().on(middle.moved(way, end, 0));
            Dot in = plan.view().on(middle.moved(way, end - Math.signum(end) * 6 * plan.view().scale() / 1000, 0));
            plan.sheet().line(Pen.MEDIUM, List.of(out, in));
            plan.sheet().name(out, letter, false);
        }
    }

    /** How far a section runs from the middle, back and forth (projected m). */
    private double[] ends(Azimuth way) {
        Point middle = borrow.area().centre();
        double low = 0;
        double high = 0;
        for (Point p : borrow.area().corners()) {
            double s = (p.east() - middle.east()) * way.east() + (p.north() - middle.north()) * way.north();
            low = Math.min(low, s);
            high = Math.max(high, s);
        }
        return new double[] {low - AROUND, high + AROUND};
    }

    /** Two sections through its middle. */
    Draft sections() {
        return new Draft(Drawing.name("borrow-sections", borrow.id()), "Borrow pit " + borrow.id() + ": sections",
                sheet -> {
                    List<Azimuth> ways = List.of(along(), along().turned(Math.PI / 2));
                    Patch drawing = sheet.drawing();
                    double wide = 0;
                    for (Azimuth way : ways) {
                        wide = Math.max(wide, ends(way)[1] - ends(way)[0]);
                    }
                    double high = ways.stream().mapToDouble(w -> range(w)[1] - range(w)[0]).max().orElse(1);
                    int scale = Scales.largest(new double[] {assessment.shapes().metres().length(wide), TALLER * high},
                            new double[] {2 * drawing.halfWidth() - 2, drawing.halfHeight() - 55});
                    for (int i = 0; i < 2; i++) {
                        section(sheet, ways.get(i), i, scale);
                    }
                    sheet.notes().add(String.format(Locale.ROOT, "Heights are drawn %.0f times larger than ways;"
                            + " dimensions are true.", TALLER));
                    sheet.notes().add("Ways from the middle of the borrow ground, in metres. A runs along azimuth "
                            + String.format(Locale.ROOT, "%.1f\u00b0, B square to it.", ways.get(0).degrees()));
                    figures(sheet);
                    return new Draft.Drawn(scale, Optional.empty());
                });
    }

    private List<Dot> surface(ElevationGrid grid, Azimuth way) {
        double[] ends = ends(way);
        TrueMetres metres = assessment.shapes().metres();
        List<Dot> dots = new ArrayList<>();
        int steps = (int) Math.min(800, Math.ceil((ends[1] - ends[0]) / grid.frame().spacing() * 2));
        for (int i = 0; i <= steps; i++) {
            double s = ends[0] + (ends[1] - ends[0]) * i / steps;
            dots.add(new Dot(metres.length(s), grid.height(borrow.area().centre().moved(way, s, 0))));
        }
        return dots;
    }

    private double[] range(Azimuth way) {
        List<Dot> dots = new ArrayList<>(surface(before(), way));
        dots.addAll(surface(dug.dugIn(before()), way));
        return new double[] {dots.stream().mapToDouble(Dot::y).filter(Double::isFinite).min().orElse(0),
            dots.stream().mapToDouble(Dot::y).filter(Double::isFinite).max().orElse(1)};
    }

    private void section(Sheet sheet, Azimuth way, int place, int scale) {
        Patch drawing = sheet.drawing();
        double top = drawing.middle().y() - (place == 0 ? drawing.halfHeight() : 0);
        Patch room = Patch.between(new Dot(drawing.middle().x() - drawing.halfWidth(), top),
                new Dot(drawing.middle().x() + drawing.halfWidth(), top + drawing.halfHeight()));
        double[] range = range(way);
        List<Dot> ground = surface(before(), way);
        double middle = (ground.get(0).x() + ground.get(ground.size() - 1).x()) / 2;
        Dot zero = new Dot(drawing.middle().x() - Scales.onPaper(middle, scale), top + (drawing.halfHeight() - 18) / 2
                + TALLER * Scales.onPaper((range[0] + range[1]) / 2, scale));
        CutDrawing cut = new CutDrawing(sheet, zero, scale, TALLER, room);
        cut.grid(range[0], range[1], place == 1);
        List<Dot> floor = surface(dug.dugIn(before()), way);
        cut.between(ground, floor, "soil borrowed");
        cut.ground(ground);
        cut.surface(floor, "floor as dug");
        int first = -1;
        int last = -1;
        int deepest = 0;
        for (int i = 0; i < floor.size(); i++) {
            double depth = ground.get(i).y() - floor.get(i).y();
            if (depth > FLAT) {
                first = first < 0 ? i : first;
                last = i;
            }
            deepest = depth > ground.get(deepest).y() - floor.get(deepest).y() ? i : deepest;
        }
        String letter = place == 0 ? "A" : "B";
        sheet.words(new Mark.Words(new Dot(room.middle().x() - room.halfWidth() + 2, top + 4), letter + " \u2013 "
                + letter, 2.5, 0, Mark.Align.LEFT));
        if (first >= 0) {
            double level = Math.min(floor.get(first).y(), floor.get(last).y());
            cut.dimension(new Dot(floor.get(first).x(), level), new Dot(floor.get(last).x(), level), -14,
                    String.format(Locale.ROOT, "%.2f", floor.get(last).x() - floor.get(first).x()));
            cut.dimension(floor.get(deepest), ground.get(deepest), 0, String.format(Locale.ROOT, "%.2f deep",
                    ground.get(deepest).y() - floor.get(deepest).y()));
            cut.level(floor.get(first), "edge");
            cut.level(floor.get(last), "edge");
            cut.level(floor.get((first + last) / 2), "floor");
        }
    }

    private void figures(Sheet sheet) {
        sheet.notes().add(String.format(Locale.ROOT, "Dug %.2f m deep of at most %.2f m, sides at %.0f\u00b0: %,.0f"
                + " m\u00b3 bank taken of %,.0f m\u00b3 usable.", dug.depth(), borrow.greatestDepth(),
                Math.toDegrees(borrow.sideSlope()), dug.used(), dug.usable()));
    }
}
