// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.foundation.Azimuth;
import bermwright.report.drawing.Dot;
import bermwright.report.paper.Lettering;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Paper;
import bermwright.report.paper.Patch;
import bermwright.report.paper.Pen;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * The panel of a sheet: norths, scale, legend and notes from its top; revisions and title block at its foot.
 *
 * @param sheet the sheet
 * @param info  what every sheet of the plan says
 * @param head  what this one is
 */
record SheetPanel(Sheet sheet, SheetInfo info, Head head) {
    private static final double PAD = 3;
    private static final double LINE = 3.4;
    private static final double BLOCK = 52;
    private static final double REVISIONS = 26;

    /**
     * What a sheet is.
     *
     * @param number number of the sheet (1)
     * @param count  how many there are (1)
     * @param title  what it shows
     * @param scale  its scale (1)
     * @param size   its size
     */
    record Head(int number, int count, String title, int scale, SheetSize size) {
    }

    /** Draws the border and the panel; the azimuth that runs to the right on paper where it is a plan. */
    void draw(Optional<Azimuth> right) {
        Paper paper = sheet.paper();
        paper.box(Pen.THICK, sheet.frame());
        double x = left();
        double bottom = bottom();
        paper.line(Pen.MEDIUM, new Dot(x, top()), new Dot(x, bottom));
        paper.box(Pen.MEDIUM, sheet.drawing());
        double y = top() + PAD + Lettering.HEADING;
        for (String line : Lettering.wrapped(head.title, Lettering.HEADING, width())) {
            paper.words(new Dot(x + PAD, y), line, Lettering.HEADING);
            y += 5.6;
        }
        if (right.isPresent()) {
            y = norths(y, right.get());
        }
        y = bar(y);
        y = legend(y);
        notes(y);
        revisions(bottom - BLOCK - REVISIONS);
        block(bottom - BLOCK);
    }

    private double left() {
        return sheet.frame().middle().x() + sheet.frame().halfWidth() - Sheet.PANEL;
    }

    private double top() {
        return sheet.frame().middle().y() - sheet.frame().halfHeight();
    }

    private double bottom() {
        return sheet.frame().middle().y() + sheet.frame().halfHeight();
    }

    private static double width() {
        return Sheet.PANEL - 2 * PAD;
    }

    private double norths(double y, Azimuth right) {
        double middle = y + 13;
        arrow(new Dot(left() + 13, middle), right.radians(), "GN");
        sheet.paper().words(new Dot(left() + 46, middle - 2), "GN: grid north", Lettering.LEAST);
        if (info.trueNorth().isPresent()) {
            Azimuth north = info.trueNorth().get();
            arrow(new Dot(left() + 31, middle), right.radians() - north.radians(), "TN");
            sheet.paper().words(new Dot(left() + 46, middle + 2), "TN: true north, at", Lettering.LEAST);
            sheet.paper().words(new Dot(left() + 46, middle + 2 + LINE), String.format(Locale.ROOT,
                    "grid azimuth %.2f\u00b0", north.degrees()), Lettering.LEAST);
        } else {
            sheet.paper().words(new Dot(left() + 46, middle + 2), "true north is not known", Lettering.LEAST);
        }
        return y + 30;
    }

    /** An arrow from a place; the angle runs against the clock from the right. */
    private void arrow(Dot from, double angle, String words) {
        double x = Math.cos(angle);
        double y = -Math.sin(angle);
        boolean grid = words.equals("GN");
        Dot tip = new Dot(from.x() + 9 * x, from.y() + 9 * y);
        sheet.paper().line(grid ? Pen.MEDIUM : Pen.MEDIUM.dashed(1.5, 0.8), from, tip);
        List<Dot> head = List.of(tip, new Dot(tip.x() - 3 * x + 1 * y, tip.y() - 3 * y - 1 * x),
                new Dot(tip.x() - 3 * x - 1 * y, tip.y() - 3 * y + 1 * x));
        if (grid) {
            sheet.paper().fill(0, head);
        } else {
            sheet.paper().fill(1, head).outline(Pen.THIN, head);
        }
        sheet.paper().words(new Mark.Words(new Dot(tip.x() + 2.6 * x, tip.y() + 2.6 * y + 1), words, Lettering.LEAST,
                0, Mark.Align.MIDDLE));
    }

    private double bar(double y) {
        Paper paper = sheet.paper();
        double step = Scales.roundBelow((width() - 14) / 4 * head.scale / 1000);
        double wide = Scales.onPaper(step, head.scale);
        double x = left() + PAD + 3;
        paper.words(new Dot(left() + PAD, y + 3), "Scale " + Scales.words(head.scale) + " at " + head.size,
                Lettering.HEADING);
        for (int i = 0; i < 4; i++) {
            List<Dot> part = Patch.between(new Dot(x + i * wide, y + 8), new Dot(x + (i + 1) * wide, y + 9.6))
                    .corners();
            paper.fill(i % 2 == 0 ? 0 : 1, part).path(new Mark.Path(part, true, Optional.of(Pen.THIN),
                    Optional.empty(), "scale-bar"));
        }
        for (int i = 0; i <= 4; i += 2) {
            paper.words(new Mark.Words(new Dot(x + i * wide, y + 13), figure(i * step) + (i == 4 ? " m" : ""),
                    Lettering.LEAST, 0, Mark.Align.MIDDLE));
        }
        return y + 19;
    }

    static String figure(double value) {
        return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.1f", value);
    }

    private double legend(double from) {
        double y = from;
        double most = bottom() - BLOCK - REVISIONS - 8;
        for (Map.Entry<String, Legend.Sign> sign : sheet.legend().signs().entrySet()) {
            List<String> lines = Lettering.wrapped(sign.getKey(), Lettering.LEAST, width() - 19);
            if (y + LINE * lines.size() > most) {
                break;
            }
            sign.getValue().draw(sheet.paper(), Patch.between(new Dot(left() + PAD, y - 2.2),
                    new Dot(left() + PAD + 15, y + 0.6)));
            for (String line : lines) {
                sheet.paper().words(new Dot(left() + PAD + 19, y), line, Lettering.LEAST);
                y += LINE;
            }
            y += 1.1;
        }
        return y + 2;
    }

    private void notes(double from) {
        double y = from;
        double most = bottom() - BLOCK - REVISIONS - 2;
        if (!sheet.unnamed().isEmpty()) {
            sheet.notes().add("Not named for want of room: " + String.join(", ", sheet.unnamed()) + ".");
        }
        for (String note : sheet.notes()) {
            for (String line : Lettering.wrapped(note, Lettering.LEAST, width())) {
                if (y > most) {
                    return;
                }
                sheet.paper().words(new Dot(left() + PAD, y), line, Lettering.LEAST);
                y += LINE;
            }
            y += 0.8;
        }
    }

    private void revisions(double y) {
        double[] columns = {0, 10, 30, 62, 77, Sheet.PANEL};
        List<String> heads = List.of("Rev", "Date", "What", "By", "Checked");
        Paper paper = sheet.paper();
        paper.line(Pen.MEDIUM, new Dot(left(), y), new Dot(left() + Sheet.PANEL, y));
        for (int row = 1; row <= 4; row++) {
            double at = y + row * REVISIONS / 5;
            paper.line(Pen.THIN, new Dot(left(), at), new Dot(left() + Sheet.PANEL, at));
        }
        for (int i = 0; i < heads.size(); i++) {
            paper.words(new Dot(left() + columns[i] + 1, y + 3.8), heads.get(i), Lettering.LEAST);
            if (i > 0) {
                paper.line(Pen.THIN, new Dot(left() + columns[i], y), new Dot(left() + columns[i], y + REVISIONS));
            }
        }
        paper.words(new Dot(left() + 1, y + REVISIONS / 5 + 3.8), shown(info.issue().revision()), Lettering.LEAST);
        paper.words(new Dot(left() + 11, y + REVISIONS / 5 + 3.8), shown(info.issue().date()), Lettering.LEAST);
        paper.words(new Dot(left() + 31, y + REVISIONS / 5 + 3.8), "from the assessment", Lettering.LEAST);
    }

    private static String shown(String words) {
        return words.isBlank() ? "\u2013" : Lettering.cut(words, Lettering.LEAST, 18);
    }

    private void block(double y) {
        Paper paper = sheet.paper();
        double x = left() + PAD;
        paper.line(Pen.THICK, new Dot(left(), y), new Dot(left() + Sheet.PANEL, y));
        double at = y + 5.5;
        for (String line : Lettering.wrapped(info.title(), 2.5, width()).stream().limit(2).toList()) {
            paper.words(new Dot(x, at), line, 2.5);
            at += 4.2;
        }
        for (String line : List.of("Plan " + info.plan() + ", Bermwright " + info.version(),
                "Places: projected metres, " + info.system(), info.datum())) {
            for (String part : Lettering.wrapped(line, Lettering.LEAST, width()).stream().limit(2).toList()) {
                paper.words(new Dot(x, at), part, Lettering.LEAST);
                at += LINE;
            }
        }
        for (String part : Lettering.wrapped(SheetInfo.CAUTIONS.get(0), Lettering.LEAST, width())) {
            paper.words(new Dot(x, at), part, Lettering.LEAST);
            at += LINE;
        }
        double foot = y + BLOCK - 8.5;
        paper.line(Pen.MEDIUM, new Dot(left(), foot), new Dot(left() + Sheet.PANEL, foot));
        String[] cells = {"Sheet " + head.number + " of " + head.count, Scales.words(head.scale), head.size.name(),
                "Rev " + shown(info.issue().revision())};
        double[] columns = {0, 32, 54, 66};
        for (int i = 0; i < cells.length; i++) {
            paper.words(new Dot(left() + columns[i] + 2, foot + 5.4), cells[i], 2.5);
            if (i > 0) {
                paper.line(Pen.THIN, new Dot(left() + columns[i], foot), new Dot(left() + columns[i], y + BLOCK));
            }
        }
    }
}
