// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.report.drawing.Dot;
import bermwright.report.paper.Cropped;
import bermwright.report.paper.Hatching;
import bermwright.report.paper.Lettering;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Patch;
import bermwright.report.paper.Pen;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Draws a section on a sheet: ways to the right, heights upwards.
 *
 * @param sheet  the sheet
 * @param zero   place on paper of way 0 and height 0 (mm)
 * @param scale  scale of ways (1)
 * @param taller heights are drawn so many times larger (1)
 * @param room   the part of the drawing that it has
 */
record CutDrawing(Sheet sheet, Dot zero, int scale, double taller, Patch room) {
    /** Depth of the strip of hatching below the ground (mm). */
    private static final double EARTH = 2.4;
    /** Levels drawn above and below what is cut. */
    private static final int LEVELS_BEYOND = 3;
    private static final Hatching IN_PLACE = new Hatching(Math.PI / 4, 1.2, Pen.THIN);
    private static final Hatching PLACED = new Hatching(-Math.PI / 4, 2.2, Pen.THIN.grey(0.5));

    Dot on(Dot cut) {
        return new Dot(zero.x() + Scales.onPaper(cut.x(), scale), zero.y() - taller * Scales.onPaper(cut.y(), scale));
    }

    List<Dot> on(List<Dot> cut) {
        return cut.stream().map(this::on).toList();
    }

    /** The ground before any work, hatched along its lower side. */
    void ground(List<Dot> surface) {
        List<Dot> top = new ArrayList<>(on(surface).stream().filter(Dot::isKnown).toList());
        if (top.size() < 2) {
            return;
        }
        List<Dot> strip = new ArrayList<>(top);
        List<Dot> below = new ArrayList<>(top.stream().map(p -> new Dot(p.x(), p.y() + EARTH)).toList());
        Collections.reverse(below);
        strip.addAll(below);
        hatch(IN_PLACE, strip);
        line(Pen.MEDIUM.dashed(4.0, 1.2), top);
        sheet.legend().add("ground before any work", (paper, box) -> {
            paper.line(Pen.MEDIUM.dashed(4.0, 1.2), new Dot(box.middle().x() - box.halfWidth(), box.middle().y() - 1),
                    new Dot(box.middle().x() + box.halfWidth(), box.middle().y() - 1));
            IN_PLACE.within(List.of(Patch.between(new Dot(box.middle().x() - box.halfWidth(), box.middle().y() - 1),
                    new Dot(box.middle().x() + box.halfWidth(), box.middle().y() + 1.4)).corners()))
                    .forEach(l -> paper.line(Pen.THIN, l));
        });
    }

    /** Soil between two surfaces over the same ways: placed, or dug away. */
    void between(List<Dot> upper, List<Dot> lower, String words) {
        List<Dot> outline = new ArrayList<>(on(upper).stream().filter(Dot::isKnown).toList());
        List<Dot> back = new ArrayList<>(on(lower).stream().filter(Dot::isKnown).toList());
        Collections.reverse(back);
        outline.addAll(back);
        if (outline.size() > 2) {
            hatch(PLACED, outline);
            sheet.legend().add(words, (paper, box) -> PLACED.within(List.of(box.corners()))
                    .forEach(l -> paper.line(PLACED.pen(), l)));
        }
    }

    /** The surface as it is left. */
    void surface(List<Dot> surface, String words) {
        line(Pen.THICK, on(surface));
        sheet.legend().add(words, (paper, box) -> paper.line(Pen.THICK, new Dot(box.middle().x() - box.halfWidth(),
                box.middle().y()), new Dot(box.middle().x() + box.halfWidth(), box.middle().y())));
    }

    private void hatch(Hatching hatching, List<Dot> outline) {
        List<Dot> seen = Cropped.area(outline, room);
        if (seen.size() > 2) {
            hatching.within(List.of(seen)).forEach(line -> sheet.paper().line(hatching.pen(), line));
        }
    }

    /** A body cut or seen, hiding what is behind it. */
    void body(List<Dot> outline, Pen pen, String words) {
        List<Dot> seen = Cropped.area(on(outline), room);
        if (seen.size() < 3) {
            return;
        }
        sheet.paper().fill(1, seen);
        List<Dot> closed = new ArrayList<>(on(outline));
        closed.add(closed.get(0));
        line(pen, closed);
        sheet.legend().add(words, (paper, box) -> paper.outline(pen, box.corners()));
    }

    /** A wall cut. */
    void wall(List<Dot> outline) {
        Hatching hatching = new Hatching(Math.PI / 4, 0.45, Pen.THIN);
        List<Dot> seen = Cropped.area(on(outline), room);
        if (seen.size() > 2) {
            sheet.paper().fill(1, seen).outline(Pen.MEDIUM, seen);
            hatch(hatching, seen);
            sheet.legend().add("wall", (paper, box) -> {
                paper.outline(Pen.MEDIUM, box.corners());
                hatching.within(List.of(box.corners())).forEach(l -> paper.line(Pen.THIN, l));
            });
        }
    }

    void line(Pen pen, List<Dot> paper) {
        for (List<Dot> piece : Cropped.line(paper, room)) {
            sheet.paper().line(pen, piece);
            sheet.occupied().line(piece);
        }
    }

    /**
     * Lines of equal level with their figures in the strip to the left, and ways in the strip below.
     *
     * @param least     lowest height that is drawn (m)
     * @param greatest  greatest height that is drawn (m)
     * @param waysBelow whether ways have their figures
     */
    void grid(double least, double greatest, boolean waysBelow) {
        double step = Math.max(0.5, Scales.round(9.0 * scale / 1000 / taller));
        double low = (zero.y() - room.middle().y() - room.halfHeight()) / taller / Scales.onPaper(1, scale);
        double high = (zero.y() - room.middle().y() + room.halfHeight()) / taller / Scales.onPaper(1, scale);
        low = Math.max(low, least - LEVELS_BEYOND * step);
        high = Math.min(high, greatest + LEVELS_BEYOND * step);
        double left = room.middle().x() - room.halfWidth();
        double right = room.middle().x() + room.halfWidth();
        for (double z = Math.ceil(low / step) * step; z <= high; z += step) {
            double y = on(new Dot(0, z)).y();
            sheet.paper().line(Pen.FAINT, new Dot(left, y), new Dot(right, y));
            if (Math.abs(y - room.middle().y()) < room.halfHeight() - 4) {
                sheet.paper().words(new Mark.Words(new Dot(left - 1.6, y), SheetPanel.figure(z), Lettering.LEAST,
                        Math.PI / 2, Mark.Align.MIDDLE));
            }
        }
        double along = Scales.round(18.0 * scale / 1000);
        double bottom = room.middle().y() + room.halfHeight();
        double from = (left - zero.x()) / Scales.onPaper(1, scale);
        double to = (right - zero.x()) / Scales.onPaper(1, scale);
        for (double way = Math.ceil(from / along) * along; way <= to && waysBelow; way += along) {
            double x = on(new Dot(way, 0)).x();
            sheet.paper().line(Pen.THIN, new Dot(x, bottom), new Dot(x, bottom - 1.5));
            if (Math.abs(x - room.middle().x()) < room.halfWidth() - 4) {
                sheet.paper().words(new Mark.Words(new Dot(x, bottom + 4), SheetPanel.figure(way), Lettering.LEAST, 0,
                        Mark.Align.MIDDLE));
            }
        }
        sheet.legend().add("level, every " + SheetPanel.figure(step) + " m; figure on the left, in metres",
                (paper, box) -> paper.line(Pen.FAINT, new Dot(box.middle().x() - box.halfWidth(), box.middle().y()),
                        new Dot(box.middle().x() + box.halfWidth(), box.middle().y())));
    }

    /** A level with its mark on a place. */
    void level(Dot cut, String what) {
        Dot p = on(cut);
        if (!p.isKnown() || !Patch.between(p, p).isInside(room)) {
            return;
        }
        sheet.paper().fill(1, List.of(p, new Dot(p.x() - 1.1, p.y() - 1.8), new Dot(p.x() + 1.1, p.y() - 1.8)))
                .outline(Pen.THIN, List.of(p, new Dot(p.x() - 1.1, p.y() - 1.8), new Dot(p.x() + 1.1, p.y() - 1.8)));
        sheet.occupied().take(Patch.between(new Dot(p.x() - 1.1, p.y() - 1.8), p));
        sheet.name(new Dot(p.x(), p.y() - 1.8), (what.isEmpty() ? "" : what + " ")
                + String.format(Locale.ROOT, "%.2f", cut.y()), false);
        sheet.legend().add("level, in metres", (paper, box) -> paper.outline(Pen.THIN, List.of(
                new Dot(box.middle().x(), box.middle().y() + 0.9),
                new Dot(box.middle().x() - 1.1, box.middle().y() - 0.9),
                new Dot(box.middle().x() + 1.1, box.middle().y() - 0.9))));
    }

    /**
     * A distance between two places: lines out from both and an arrow between them at a way aside.
     *
     * @param from  one place
     * @param to    the other
     * @param aside how far aside of them the arrow runs on paper, to the left looking from one to the other (mm)
     * @param words its words
     */
    void dimension(Dot from, Dot to, double aside, String words) {
        new Dimension(sheet, on(from), on(to)).draw(aside, words);
    }
}
