// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.foundation.Point;
import bermwright.report.drawing.Dot;
import bermwright.report.paper.Cropped;
import bermwright.report.paper.Lettering;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Paper;
import bermwright.report.paper.Patch;
import bermwright.report.paper.Pen;
import bermwright.site.footprint.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Draws what is seen from above on a sheet.
 *
 * @param sheet the sheet
 * @param view  where places stand on it
 */
record PlanDrawing(Sheet sheet, PlanView view) {
    /** The grid's lines are so far apart on paper at least (mm). */
    private static final double GRID = 40;

    /** An outline in its look, and its sign in the legend. */
    void shape(Shape shape) {
        Looks.Look look = Looks.of(shape);
        List<Dot> ring = view.on(shape.outline().corners());
        List<Dot> seen = Cropped.area(ring, sheet.drawing());
        if (seen.size() < 3) {
            return;
        }
        fill(look, seen, sheet.paper());
        List<Dot> closed = new ArrayList<>(ring);
        closed.add(ring.get(0));
        sheet.line(look.pen(), closed);
        sheet.legend().add(look.words(), (paper, room) -> {
            fill(look, room.corners(), paper);
            paper.outline(look.pen(), room.corners());
        });
    }

    private static void fill(Looks.Look look, List<Dot> ring, Paper paper) {
        if (look.isSolid()) {
            paper.fill(1, ring);
        }
        look.hatch().ifPresent(hatch -> hatch.within(List.of(ring)).forEach(line -> paper.line(hatch.pen(), line)));
    }

    /** A line on the ground. */
    void line(Pen pen, List<Point> places) {
        sheet.line(pen, view.on(places));
    }

    /** Names an outline in its middle, or nearby; what is out of sight is not named. */
    void name(Shape shape, String words) {
        List<Dot> seen = Cropped.area(view.on(shape.outline().corners()), sheet.drawing());
        if (seen.size() > 2) {
            double x = seen.stream().mapToDouble(Dot::x).average().orElse(0);
            double y = seen.stream().mapToDouble(Dot::y).average().orElse(0);
            Patch room = bounds(seen);
            double wide = Lettering.width(words, Lettering.LEAST);
            sheet.name(new Dot(x, y), words, 2 * room.halfWidth() > wide && room.halfHeight() > Lettering.LEAST);
        }
    }

    private static Patch bounds(List<Dot> dots) {
        return Patch.between(new Dot(dots.stream().mapToDouble(Dot::x).min().orElse(0),
                dots.stream().mapToDouble(Dot::y).min().orElse(0)), new Dot(
                dots.stream().mapToDouble(Dot::x).max().orElse(0), dots.stream().mapToDouble(Dot::y).max().orElse(0)));
    }

    /** The grid of coordinates, its figures in the strip around the drawing. */
    void grid() {
        double step = Scales.round(GRID * view.scale() / 1000 / view.metre());
        List<Point> corners = sheet.drawing().corners().stream().map(view::place).toList();
        double west = corners.stream().mapToDouble(Point::east).min().orElse(0);
        double east = corners.stream().mapToDouble(Point::east).max().orElse(0);
        double south = corners.stream().mapToDouble(Point::north).min().orElse(0);
        double north = corners.stream().mapToDouble(Point::north).max().orElse(0);
        List<Patch> taken = new ArrayList<>();
        for (double e = Math.ceil(west / step) * step; e <= east; e += step) {
            gridLine(new Point(e, south), new Point(e, north), "E " + figure(e), taken);
        }
        for (double n = Math.ceil(south / step) * step; n <= north; n += step) {
            gridLine(new Point(west, n), new Point(east, n), "N " + figure(n), taken);
        }
        sheet.legend().add("grid of projected metres, every " + SheetPanel.figure(step) + " m", (paper, room) ->
                paper.line(Pen.FAINT, new Dot(room.middle().x() - room.halfWidth(), room.middle().y()),
                        new Dot(room.middle().x() + room.halfWidth(), room.middle().y())));
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    private void gridLine(Point from, Point to, String words, List<Patch> taken) {
        for (List<Dot> piece : Cropped.line(view.on(List.of(from, to)), sheet.drawing())) {
            sheet.paper().line(Pen.FAINT, piece);
            for (Dot end : List.of(piece.get(0), piece.get(piece.size() - 1))) {
                edge(end, words, taken);
            }
        }
    }

    /** A figure in the strip beside the end of a grid line, where no other stands. */
    private void edge(Dot end, String words, List<Patch> taken) {
        Patch box = sheet.drawing();
        double dx = end.x() - box.middle().x();
        double dy = end.y() - box.middle().y();
        boolean atSide = Math.abs(Math.abs(dx) - box.halfWidth()) < Math.abs(Math.abs(dy) - box.halfHeight());
        double away = Sheet.STRIP / 2;
        Mark.Words figure = atSide
                ? new Mark.Words(new Dot(end.x() + Math.signum(dx) * away + Lettering.LEAST / 2, end.y()), words,
                        Lettering.LEAST, Math.PI / 2, Mark.Align.MIDDLE)
                : new Mark.Words(new Dot(end.x(), end.y() + Math.signum(dy) * away + Lettering.LEAST / 2), words,
                        Lettering.LEAST, 0, Mark.Align.MIDDLE);
        Patch patch = figure.patch();
        boolean fits = atSide ? Math.abs(patch.middle().y() - box.middle().y()) + patch.halfWidth() < box.halfHeight()
                : Math.abs(patch.middle().x() - box.middle().x()) + patch.halfWidth() < box.halfWidth();
        if (fits && taken.stream().noneMatch(patch.wider(1)::overlaps)) {
            sheet.paper().words(figure);
            taken.add(patch);
        }
    }
}
