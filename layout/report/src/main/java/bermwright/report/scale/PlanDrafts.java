// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Pen;
import bermwright.report.sheet.SiteMap;
import bermwright.site.assessment.Assessment;
import bermwright.site.footprint.HullShapes;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.plan.Hull;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Sheets seen from above: the site, each hull with its gear, and the finished ground's contours.
 *
 * @param assessment what they show
 * @param fine       the ground as it is left, on the mounds' own nodes about the work; empty where nothing is covered
 * @param coarse     the same on the nodes of the elevation file, all of it
 */
record PlanDrafts(Assessment assessment, Optional<ElevationGrid> fine, Optional<ElevationGrid> coarse) {
    /** What a site plan must hold; ways, pads and keep-outs may run off it. */
    private static final Set<ShapeKind> CORE = EnumSet.of(ShapeKind.LYING, ShapeKind.SWEEP, ShapeKind.COVER_TOE,
            ShapeKind.BORROW, ShapeKind.STOCKPILE, ShapeKind.PREPARATION, ShapeKind.WALL, ShapeKind.ANCHOR,
            ShapeKind.WINCH, ShapeKind.POLE_FOOT);
    /** What only a hull's own plan shows. */
    private static final Set<ShapeKind> ZONES = EnumSet.of(ShapeKind.SNAP_BACK, ShapeKind.POLE_FALL_ZONE,
            ShapeKind.ANCHOR_SOIL, ShapeKind.THRUSTER_PLUME, ShapeKind.LANDING_PLUME, ShapeKind.PAD_STAND_OFF);
    private static final Set<ShapeKind> LASTING = EnumSet.of(ShapeKind.LYING, ShapeKind.COVER_TOE, ShapeKind.WALL,
            ShapeKind.TUNNEL, ShapeKind.PASS_THROUGH, ShapeKind.BORROW, ShapeKind.PREPARATION);
    /** Names on a site plan. */
    private static final Set<ShapeKind> NAMED = EnumSet.of(ShapeKind.LYING, ShapeKind.KEEP_OUT, ShapeKind.PAD,
            ShapeKind.CORRIDOR, ShapeKind.BORROW, ShapeKind.STOCKPILE, ShapeKind.PREPARATION, ShapeKind.TUNNEL,
            ShapeKind.WALL);
    /** Contours stand no nearer to each other on a stable slope (mm). */
    private static final double APART = 2.7;

    /** The whole site. */
    Draft site() {
        return new Draft("site-plan", "Site plan", sheet -> {
            PlanDrawing plan = plan(sheet, core(), PlanView.EAST);
            plan.grid();
            List<Shape> shown = assessment.shapes().all().stream().filter(s -> !ZONES.contains(s.kind())).toList();
            shapes(plan, shown);
            names(plan, shown.stream().filter(s -> NAMED.contains(s.kind())).toList());
            findings(plan);
            sheet.notes().add("Ways, pads and keep-outs that run off this sheet are on the site map of the report.");
            return new Draft.Drawn(plan.view().scale(), Optional.of(PlanView.EAST));
        });
    }

    private List<Point> core() {
        return places(assessment.shapes().all().stream().filter(s -> CORE.contains(s.kind())).toList());
    }

    private List<Point> places(List<Shape> shapes) {
        List<Point> places = new ArrayList<>();
        shapes.forEach(s -> places.addAll(s.outline().corners()));
        if (places.isEmpty()) {
            places.add(assessment.ground().grid().frame().centre());
        }
        return places;
    }

    private PlanDrawing plan(Sheet sheet, List<Point> places, Azimuth right) {
        sheet.notes().add("Lengths measured on this sheet are true metres; one projected metre is "
                + String.format(Locale.ROOT, "%.6f", assessment.shapes().metres().scale()) + " of them here.");
        return new PlanDrawing(sheet, PlanView.around(places, sheet.drawing(), right,
                assessment.shapes().metres().scale()));
    }

    private static void shapes(PlanDrawing plan, List<Shape> shapes) {
        shapes.stream().filter(s -> s.kind() != ShapeKind.LYING).forEach(plan::shape);
        shapes.stream().filter(s -> s.kind() == ShapeKind.LYING).forEach(plan::shape);
    }

    private static void names(PlanDrawing plan, List<Shape> shapes) {
        List<String> named = new ArrayList<>();
        for (Shape shape : shapes) {
            String words = shape.kind() == ShapeKind.LYING ? "hull " + shape.subject() : shape.subject();
            if (!named.contains(shape.kind() + words)) {
                named.add(shape.kind() + words);
                plan.name(shape, words);
            }
        }
    }

    private void findings(PlanDrawing plan) {
        long refusals = assessment.findings().stream().filter(f -> f.level().word().equals("refuse")).count();
        plan.sheet().notes().add(refusals == 0 ? "No finding refuses this plan."
                : refusals + " findings refuse this plan: see the report before any work is done from this sheet.");
    }

    /** A hull and its gear, its axis along the sheet. */
    Draft hull(HullShapes of) {
        Hull hull = of.hull();
        return new Draft(Drawing.name("plan", hull.id()), "Hull " + hull.id() + ": plan", sheet -> {
            Azimuth right = hull.layDownAzimuth();
            PlanDrawing plan = plan(sheet, SiteMap.around(of), right);
            plan.grid();
            List<Shape> others = assessment.shapes().all().stream().filter(s -> !s.subject().equals(hull.id())
                    && LASTING.contains(s.kind())).toList();
            shapes(plan, others);
            shapes(plan, of.shapes().stream().filter(s -> s.kind() != ShapeKind.LANDING_PLUME).toList());
            assessment.hull(hull.id()).flatMap(h -> h.lying()).ifPresent(pose -> axis(plan, hull, pose));
            gear(plan, of);
            names(plan, others.stream().filter(s -> NAMED.contains(s.kind())).toList());
            return new Draft.Drawn(plan.view().scale(), Optional.of(right));
        });
    }

    private static void gear(PlanDrawing plan, HullShapes of) {
        for (Shape shape : of.shapes()) {
            boolean under = shape.kind() == ShapeKind.ANCHOR && of.shapes().stream().anyMatch(s ->
                    s.kind() == ShapeKind.WINCH && s.part().equals(shape.part()));
            switch (shape.kind()) {
                case ANCHOR, WINCH, POLE_FOOT -> {
                    if (!under) {
                        plan.name(shape, shape.kind().word() + (shape.part().isEmpty() ? "" : ", " + shape.part()));
                    }
                }
                case PASS_THROUGH -> plan.name(shape, shape.part());
                case STANDING -> plan.name(shape, "hull " + shape.subject() + ", standing");
                default -> {
                }
            }
        }
    }

    /** Axis, length and where the sections are cut. */
    private void axis(PlanDrawing plan, Hull hull, LyingPose pose) {
        TrueMetres metres = assessment.shapes().metres();
        Azimuth way = hull.layDownAzimuth();
        Point base = pose.axisStart().plan();
        Point far = metres.moved(base, way, hull.length(), 0);
        Sheet sheet = plan.sheet();
        Dot a = plan.view().on(base);
        Dot b = plan.view().on(far);
        Pen chain = Pen.THIN.dashed(6.0, 1.0, 0.6, 1.0);
        sheet.paper().path(new Mark.Path(List.of(a, b), false, Optional.of(chain), Optional.empty(), "hull-axis"));
        sheet.legend().add("axis of the hull", (paper, room) -> paper.line(chain, new Dot(room.middle().x()
                - room.halfWidth(), room.middle().y()), new Dot(room.middle().x() + room.halfWidth(),
                room.middle().y())));
        sheet.occupied().line(List.of(a, b));
        for (SectionDrafts.Cut cut : SectionDrafts.cuts(hull)) {
            for (int side = -1; side <= 1; side += 2) {
                Dot skin = plan.view().on(metres.moved(base, way, cut.along(), side * hull.radius()));
                Dot out = new Dot(skin.x(), skin.y() - side * 5);
                sheet.line(Pen.MEDIUM, List.of(skin, out));
                Mark.Words letter = new Mark.Words(new Dot(out.x(), out.y() + (side > 0 ? -1 : 1 + 2.5)), cut.letter(),
                        2.5, 0, Mark.Align.MIDDLE);
                if (sheet.occupied().isFree(letter.patch())) {
                    sheet.words(letter);
                }
            }
        }
        new Dimension(sheet, a, b).draw(-(Scales.onPaper(hull.radius(), plan.view().scale()) + 16),
                String.format(Locale.ROOT, "%.2f", hull.length()));
        sheet.name(new Dot(a.x() + 0.3 * (b.x() - a.x()), a.y()), "hull " + hull.id(), true);
    }

    /** Contours of the finished ground: of the whole site, or about some places. */
    Draft contours(String name, String title, List<Point> about) {
        return new Draft(name, title, sheet -> {
            PlanDrawing plan = plan(sheet, about.isEmpty() ? core() : about, PlanView.EAST);
            plan.grid();
            List<Shape> lasting = assessment.shapes().all().stream().filter(s -> LASTING.contains(s.kind())
                    && s.kind() != ShapeKind.BORROW && s.kind() != ShapeKind.LYING).toList();
            lasting.forEach(plan::shape);
            hullsBelow(plan);
            double interval = interval(plan.view().scale());
            (about.isEmpty() ? coarse : fine).ifPresent(ground ->
                    new ContourDrawing(plan, interval).draw(shown(ground, plan)));
            lasting.stream().filter(s -> s.kind() == ShapeKind.WALL).forEach(plan::shape);
            sheet.notes().add(String.format(Locale.ROOT, "Lines shorter than %.0f mm on this sheet are left out. The"
                    + " lifts are %s m; the interval is that, or a multiple of it where lines would stand nearer than"
                    + " %.1f mm on a stable slope.", ContourDrawing.SHORTEST, SheetPanel.figure(lift()), APART));
            return new Draft.Drawn(plan.view().scale(), Optional.of(PlanView.EAST));
        });
    }

    private void hullsBelow(PlanDrawing plan) {
        Pen pen = Pen.THIN.dashed(2.0, 1.0);
        for (Shape shape : assessment.shapes().all()) {
            if (shape.kind() == ShapeKind.LYING) {
                List<Point> ring = new ArrayList<>(shape.outline().corners());
                ring.add(ring.get(0));
                plan.line(pen, ring);
                plan.sheet().legend().add("hull below the surface", (paper, room) ->
                        paper.outline(pen, room.corners()));
            }
        }
    }

    private double lift() {
        return assessment.plan().hulls().stream().flatMap(h -> h.cover().stream()).mapToDouble(c -> c.lift()).min()
                .orElse(1);
    }

    /** The lifts' height, or a multiple of it that a stable slope has room for. */
    private double interval(int scale) {
        double slope = Math.tan(assessment.plan().ground().regolith().stableSlope());
        for (int times : new int[] {1, 2, 4, 10, 20}) {
            if (Scales.onPaper(times * lift() / slope, scale) >= APART) {
                return times * lift();
            }
        }
        return 40 * lift();
    }

    /** The part of a surface that a sheet shows. */
    static ElevationGrid shown(ElevationGrid ground, PlanDrawing plan) {
        Ring ring = new Ring(plan.sheet().drawing().corners().stream().map(plan.view()::place).toList());
        Ring.Box box = ring.box().wider(2 * ground.frame().spacing());
        Ring.Box all = new Ring.Box(ground.frame().west(), ground.frame().south(), ground.frame().eastEdge(),
                ground.frame().northEdge());
        return ground.window(new Point(Math.max(box.west(), all.west()), Math.max(box.south(), all.south())),
                new Point(Math.min(box.east(), all.east()), Math.min(box.north(), all.north())));
    }
}
