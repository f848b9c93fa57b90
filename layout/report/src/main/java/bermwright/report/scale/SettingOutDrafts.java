// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.paper.Lettering;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Patch;
import bermwright.report.paper.Pen;
import bermwright.site.assessment.Assessment;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.stages.SettingOutPoint;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Points to be staked out: numbered on a plan, with their places and heights in a table beside it.
 *
 * @param assessment what they belong to
 */
record SettingOutDrafts(Assessment assessment) {
    private static final double ROW = 3.7;
    private static final double[] COLUMNS = {0, 8, 52, 72, 93, 110, 118};
    private static final List<String> HEADS = List.of("No.", "Point", "East m", "North m", "Height m", "of");
    private static final Set<ShapeKind> SHOWN = EnumSet.of(ShapeKind.LYING, ShapeKind.COVER_TOE, ShapeKind.BORROW,
            ShapeKind.STOCKPILE, ShapeKind.PREPARATION, ShapeKind.WALL, ShapeKind.KEEP_OUT, ShapeKind.PAD,
            ShapeKind.ANCHOR, ShapeKind.WINCH, ShapeKind.POLE_FOOT);

    /** The sheets of one subject, as many as its points need. */
    List<Draft> of(String name, String title, List<SettingOutPoint> points, Azimuth right, SheetSize size) {
        List<Draft> drafts = new ArrayList<>();
        int rows = (int) ((size.height() - 2 * (Sheet.MARGIN + Sheet.STRIP) - 8) / ROW) - 1;
        int sheets = (points.size() + rows - 1) / rows;
        for (int i = 0; i < sheets; i++) {
            int from = i * rows;
            List<SettingOutPoint> some = points.subList(from, Math.min(points.size(), from + rows));
            String part = sheets == 1 ? "" : " (" + (i + 1) + " of " + sheets + ")";
            drafts.add(new Draft(Drawing.name("setting-out", name) + (sheets == 1 ? "" : "-" + (i + 1)), title + part,
                    sheet -> draw(sheet, some, right, from)));
        }
        return drafts;
    }

    private Draft.Drawn draw(Sheet sheet, List<SettingOutPoint> points, Azimuth right, int from) {
        Patch all = sheet.drawing();
        double wide = COLUMNS[COLUMNS.length - 1];
        double edge = all.middle().x() + all.halfWidth();
        Patch table = Patch.between(new Dot(edge - wide, all.middle().y() - all.halfHeight()), new Dot(edge,
                all.middle().y() + all.halfHeight()));
        Patch room = Patch.between(new Dot(all.middle().x() - all.halfWidth(), all.middle().y() - all.halfHeight()),
                new Dot(edge - wide, all.middle().y() + all.halfHeight()));
        List<Point> places = points.stream().map(p -> p.place().plan()).toList();
        PlanDrawing plan = new PlanDrawing(sheet, PlanView.around(places, room, right,
                assessment.shapes().metres().scale()));
        plan.grid();
        Pen light = Pen.THIN.grey(0.4);
        for (Shape shape : assessment.shapes().all()) {
            if (SHOWN.contains(shape.kind())) {
                List<Point> ring = new ArrayList<>(shape.outline().corners());
                ring.add(ring.get(0));
                plan.line(light, ring);
            }
        }
        sheet.legend().add("outlines of hulls, covers, gear and ground", (paper, box) ->
                paper.outline(light, box.corners()));
        sheet.paper().fill(1, table.corners()).line(Pen.MEDIUM, new Dot(edge - wide, all.middle().y()
                - all.halfHeight()), new Dot(edge - wide, all.middle().y() + all.halfHeight()));
        sheet.occupied().take(table);
        points(plan, points, from);
        table(sheet, points, from, new Dot(edge - wide, all.middle().y() - all.halfHeight()));
        sheet.notes().add("East, north: projected metres. Height: of the ground before soil is placed (g), of the"
                + " finished surface (f), of a prepared floor (p), or of the axis of the lying hull (a).");
        sheet.notes().add("All points are in tables/setting-out.csv and in the exchange files, to the millimetre.");
        return new Draft.Drawn(plan.view().scale(), Optional.of(right));
    }

    private static void points(PlanDrawing plan, List<SettingOutPoint> points, int from) {
        for (SettingOutPoint point : points) {
            cross(plan, plan.view().on(point.place().plan()));
        }
        List<Dot> named = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            Dot at = plan.view().on(points.get(i).place().plan());
            // Points one above the other share a mark and stand beside each other in the name.
            if (named.stream().noneMatch(d -> Math.hypot(d.x() - at.x(), d.y() - at.y()) < 0.3)) {
                StringBuilder words = new StringBuilder();
                for (int k = i; k < points.size(); k++) {
                    Dot other = plan.view().on(points.get(k).place().plan());
                    if (Math.hypot(other.x() - at.x(), other.y() - at.y()) < 0.3) {
                        words.append(words.isEmpty() ? "" : ", ").append(from + k + 1);
                    }
                }
                plan.sheet().name(at, words.toString(), false);
                named.add(at);
            }
        }
        plan.sheet().legend().add("point to set out, with its number", (paper, box) -> {
            Dot p = box.middle();
            paper.line(Pen.MEDIUM, new Dot(p.x() - 1, p.y()), new Dot(p.x() + 1, p.y()))
                    .line(Pen.MEDIUM, new Dot(p.x(), p.y() - 1), new Dot(p.x(), p.y() + 1));
        });
    }

    private static void cross(PlanDrawing plan, Dot p) {
        plan.sheet().line(Pen.MEDIUM, List.of(new Dot(p.x() - 1, p.y()), new Dot(p.x() + 1, p.y())));
        plan.sheet().line(Pen.MEDIUM, List.of(new Dot(p.x(), p.y() - 1), new Dot(p.x(), p.y() + 1)));
        plan.sheet().occupied().take(Patch.between(new Dot(p.x() - 0.6, p.y() - 0.6),
                new Dot(p.x() + 0.6, p.y() + 0.6)));
    }

    private static void table(Sheet sheet, List<SettingOutPoint> points, int from, Dot corner) {
        double y = corner.y() + 4.6;
        for (int i = 0; i < HEADS.size(); i++) {
            sheet.paper().words(new Dot(corner.x() + COLUMNS[i] + 1, y), HEADS.get(i), Lettering.LEAST);
        }
        sheet.paper().line(Pen.MEDIUM, new Dot(corner.x(), y + 1.3), new Dot(corner.x()
                + COLUMNS[COLUMNS.length - 1], y + 1.3));
        for (int i = 0; i < points.size(); i++) {
            SettingOutPoint p = points.get(i);
            y += ROW;
            String[] cells = {String.valueOf(from + i + 1), Lettering.cut(p.id(), Lettering.LEAST, 42),
                number(p.place().x(), 2), number(p.place().y(), 2), number(p.place().z(), 2),
                p.kind().heightOf().substring(0, 1)};
            for (int c = 0; c < cells.length; c++) {
                boolean right = c > 1 && c < 5;
                sheet.paper().words(new Mark.Words(new Dot(corner.x() + (right ? COLUMNS[c + 1] - 2 : COLUMNS[c] + 1),
                        y), cells[c], Lettering.LEAST, 0, right ? Mark.Align.RIGHT : Mark.Align.LEFT));
            }
            if (i % 5 == 4) {
                sheet.paper().line(Pen.FAINT, new Dot(corner.x(), y + 1), new Dot(corner.x()
                        + COLUMNS[COLUMNS.length - 1], y + 1));
            }
        }
    }

    private static String number(double value, int decimals) {
        return Double.isNaN(value) ? "\u2013" : String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
