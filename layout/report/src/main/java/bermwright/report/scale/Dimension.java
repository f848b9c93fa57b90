// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.report.drawing.Dot;
import bermwright.report.paper.Lettering;
import bermwright.report.paper.Mark;
import bermwright.report.paper.Patch;
import bermwright.report.paper.Pen;
import java.util.List;
import java.util.Optional;

/**
 * A distance between two places on paper: lines out from both and an arrow between them.
 *
 * @param sheet the sheet
 * @param from  one place (mm)
 * @param to    the other (mm)
 */
record Dimension(Sheet sheet, Dot from, Dot to) {
    private static final double HEAD = 1.8;

    /**
     * Draws it.
     *
     * @param aside how far aside the arrow runs, to the left looking from one to the other (mm)
     * @param words its words
     */
    void draw(double aside, String words) {
        double length = Math.hypot(to.x() - from.x(), to.y() - from.y());
        if (!(length > 0.3) || !from.isKnown() || !to.isKnown()) {
            return;
        }
        double x = (to.x() - from.x()) / length;
        double y = (to.y() - from.y()) / length;
        Dot a = new Dot(from.x() + aside * y, from.y() - aside * x);
        Dot b = new Dot(to.x() + aside * y, to.y() - aside * x);
        if (!Patch.between(a, b).isInside(sheet.drawing())) {
            return;
        }
        double over = Math.signum(aside) * 1.2;
        if (aside != 0) {
            sheet.line(Pen.THIN, List.of(from, new Dot(a.x() + over * y, a.y() - over * x)));
            sheet.line(Pen.THIN, List.of(to, new Dot(b.x() + over * y, b.y() - over * x)));
        }
        sheet.paper().path(new Mark.Path(List.of(a, b), false, Optional.of(Pen.THIN), Optional.empty(), "dimension"));
        sheet.occupied().line(List.of(a, b));
        boolean outside = length < 3 * HEAD;
        head(a, outside ? -x : x, outside ? -y : y);
        head(b, outside ? x : -x, outside ? y : -y);
        if (outside) {
            sheet.line(Pen.THIN, List.of(a, new Dot(a.x() - 4 * x, a.y() - 4 * y)));
            sheet.line(Pen.THIN, List.of(b, new Dot(b.x() + 4 * x, b.y() + 4 * y)));
        }
        words(new Dot((a.x() + b.x()) / 2, (a.y() + b.y()) / 2), Math.atan2(-y, x), length, words);
    }

    private void words(Dot middle, double angle, double length, String words) {
        double turn = angle > Math.PI / 2 + 1e-9 ? angle - Math.PI : angle <= -Math.PI / 2 + 1e-9 ? angle + Math.PI
                : angle;
        for (double up : new double[] {1, -1 - Lettering.LEAST}) {
            Mark.Words on = new Mark.Words(new Dot(middle.x() - up * Math.sin(turn), middle.y() - up * Math.cos(turn)),
                    words, Lettering.LEAST, turn, Mark.Align.MIDDLE);
            if (Lettering.width(words, Lettering.LEAST) < length && sheet.occupied().isFree(on.patch())) {
                sheet.words(on);
                return;
            }
        }
        sheet.name(middle, words, false);
    }

    /** A filled arrow head with its tip at a place, opening along a direction. */
    private void head(Dot tip, double x, double y) {
        sheet.paper().fill(0, List.of(tip, new Dot(tip.x() + HEAD * x + 0.35 * y, tip.y() + HEAD * y - 0.35 * x),
                new Dot(tip.x() + HEAD * x - 0.35 * y, tip.y() + HEAD * y + 0.35 * x)));
    }
}
