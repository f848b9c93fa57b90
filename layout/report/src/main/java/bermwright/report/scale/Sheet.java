// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.report.drawing.Dot;
import bermwright.report.paper.Cropped;
import bermwright.report.paper.Lettering;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Occupied;
import bermwright.report.paper.Paper;
import bermwright.report.paper.Patch;
import bermwright.report.paper.Pen;
import java.util.ArrayList;
import java.util.List;

/** A sheet with its border and, to the right, a panel for what is said about the drawing; for one thread. */
final class Sheet {
    /** Margins (mm): wide where the sheet is bound. */
    static final double BOUND = 20;
    static final double MARGIN = 10;
    /** Width of the panel (mm). */
    static final double PANEL = 92;
    /** Strip around a drawing for coordinates (mm). */
    static final double STRIP = 6;

    private final Paper paper;
    private final Patch frame;
    private final Patch drawing;
    private final Occupied occupied;
    private final Legend legend = new Legend();
    private final List<String> notes = new ArrayList<>();
    private final List<String> unnamed = new ArrayList<>();

    Sheet(SheetSize size) {
        this.paper = new Paper(size.width(), size.height());
        this.frame = Patch.between(new Dot(BOUND, MARGIN), new Dot(size.width() - MARGIN, size.height() - MARGIN));
        this.drawing = Patch.between(new Dot(BOUND + STRIP, MARGIN + STRIP),
                new Dot(size.width() - MARGIN - PANEL - STRIP, size.height() - MARGIN - STRIP));
        this.occupied = new Occupied(drawing);
    }

    Paper paper() {
        return paper;
    }

    /** Within the border. */
    Patch frame() {
        return frame;
    }

    /** Where the drawing itself stands. */
    Patch drawing() {
        return drawing;
    }

    Occupied occupied() {
        return occupied;
    }

    Legend legend() {
        return legend;
    }

    List<String> notes() {
        return notes;
    }

    /** What could not be named for want of room. */
    List<String> unnamed() {
        return unnamed;
    }

    /** Draws a line cut off at the drawing's edge, and keeps words off it. */
    void line(Pen pen, List<Dot> points) {
        for (List<Dot> piece : Cropped.line(points, drawing)) {
            paper.line(pen, piece);
            occupied.line(piece);
        }
    }

    /** Words in the drawing at a place that is theirs: nothing else may stand there. */
    void words(Mark.Words words) {
        paper.fill(1, words.patch().corners());
        paper.words(words);
        occupied.take(words.patch());
    }

    /**
     * Names something: at its place where there is room, else nearby with a leader.
     *
     * @param at     the place (mm)
     * @param words  its name
     * @param inside whether the name may stand on the place itself
     */
    void name(Dot at, String words, boolean inside) {
        String shown = Lettering.cut(words, Lettering.LEAST, 70);
        Mark.Words best = null;
        double least = Double.POSITIVE_INFINITY;
        if (inside) {
            Mark.Words on = centred(at, shown);
            if (occupied.isFree(on.patch())) {
                best = on;
                least = occupied.crossings(on.patch());
            }
        }
        double half = Lettering.width(shown, Lettering.LEAST) / 2;
        for (double away : new double[] {2.5, 4, 6, 9, 13, 18, 25, 34, 45, 60}) {
            for (int turn = 0; turn < 24 && least > away * 0.25; turn++) {
                double angle = Math.PI / 12 * turn + Math.PI / 4;
                double x = Math.cos(angle);
                double y = -Math.sin(angle);
                Mark.Words there = centred(new Dot(at.x() + x * away + Math.signum(Math.rint(x * 4)) * half,
                        at.y() + y * (away + 1)), shown);
                double worth = away * 0.25 + occupied.crossings(there.patch());
                if (worth < least && occupied.isFree(there.patch())
                        && occupied.isOpen(start(at, nearest(there, at)), nearest(there, at))) {
                    best = there;
                    least = worth;
                }
            }
        }
        if (best == null) {
            unnamed.add(words);
            return;
        }
        words(best);
        Dot end = nearest(best, at);
        if (!inside || Math.hypot(best.patch().middle().x() - at.x(), best.patch().middle().y() - at.y()) > 0.1) {
            if (Math.hypot(end.x() - at.x(), end.y() - at.y()) > 1.5) {
                paper.line(Pen.THIN, inside ? at : start(at, end), end);
                occupied.bar(start(at, end), end);
            }
        }
    }

    /** Where a leader begins that leads to a mark: at the edge of it. */
    private static Dot start(Dot mark, Dot end) {
        double length = Math.hypot(end.x() - mark.x(), end.y() - mark.y());
        double share = length > 0 ? Math.min(1, 1.3 / length) : 0;
        return new Dot(mark.x() + share * (end.x() - mark.x()), mark.y() + share * (end.y() - mark.y()));
    }

    private static Mark.Words centred(Dot middle, String words) {
        return new Mark.Words(new Dot(middle.x(), middle.y() + Lettering.LEAST / 2), words, Lettering.LEAST, 0,
                Mark.Align.MIDDLE);
    }

    /** The place on the edge of words nearest to another. */
    private static Dot nearest(Mark.Words words, Dot to) {
        Patch p = words.patch();
        return new Dot(Math.max(p.middle().x() - p.halfWidth(), Math.min(p.middle().x() + p.halfWidth(), to.x())),
                Math.max(p.middle().y() - p.halfHeight(), Math.min(p.middle().y() + p.halfHeight(), to.y())));
    }
}
