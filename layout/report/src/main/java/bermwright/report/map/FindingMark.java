// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.finding.Finding;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Svg;
import java.util.stream.IntStream;

/** The sign under which a finding stands on paper. */
final class FindingMark {
    private FindingMark() {
    }

    /**
     * Sets a finding's number on paper; the shape tells the level without colour: a full octagon refuses, a square
     * warns, a ring notes.
     *
     * @param svg    the picture
     * @param at     where (px)
     * @param level  how bad it is
     * @param number the number, or other short words
     */
    static void draw(Svg svg, Dot at, Finding.Level level, String number) {
        boolean refuse = level == Finding.Level.REFUSE;
        double r = 10;
        switch (level) {
            case REFUSE -> svg.outline(IntStream.range(0, 8).mapToObj(i -> new Dot(
                    at.x() + (r + 1) * Math.cos(Math.PI * (i + 0.5) / 4),
                    at.y() + (r + 1) * Math.sin(Math.PI * (i + 0.5) / 4))).toList(), "fill", "#a01000", "stroke",
                    "#ffffff", "stroke-width", "1.5");
            case WARN -> svg.box(new Dot(at.x() - r, at.y() - r), new Dot(2 * r, 2 * r), "fill", "#ffffff", "stroke",
                    Ink.RED, "stroke-width", "2.6");
            default -> svg.circle(at, r, "fill", "#ffffff", "stroke", Ink.BLACK, "stroke-width", "1.2");
        }
        svg.text(new Dot(at.x(), at.y() + 4), number, "text-anchor", "middle", "font-size",
                number.length() > 3 ? "7.5" : number.length() > 2 ? "9" : "11", "font-weight", "bold", "fill", refuse
                ? "#ffffff" : Ink.BLACK);
    }
}
