// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.finding.Finding;
import bermwright.foundation.Azimuth;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Labels;
import bermwright.report.drawing.Svg;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Scale bar, norths and legend of a sheet.
 *
 * @param svg        the picture they are set in
 * @param metreScale true metres in one projected metre (1)
 * @param scale      paper for a projected metre (px/m)
 */
record MapFurniture(Svg svg, double metreScale, double scale) {
    private static final double GREATEST_BAR = 220;

    /**
     * A bar of round true length.
     *
     * @param at     its lower left corner (px)
     * @param labels where it takes room
     */
    void scaleBar(Dot at, Labels labels) {
        double greatest = GREATEST_BAR / scale * metreScale;
        double decade = Math.pow(10, Math.floor(Math.log10(greatest)));
        double length = decade * (greatest / decade >= 5 ? 5 : greatest / decade >= 2 ? 2 : 1);
        double width = length / metreScale * scale;
        Dot plate = new Dot(at.x() - 6, at.y() - 30);
        labels.avoid(plate, new Dot(plate.x() + width + 64, at.y() + 6));
        svg.box(plate, new Dot(width + 64, 36), "fill", "#ffffff", "fill-opacity", "0.9", "stroke", Ink.DARK_GREY);
        for (int part = 0; part < 4; part++) {
            svg.box(new Dot(at.x() + part * width / 4, at.y() - 8), new Dot(width / 4, 7), "fill",
                    part % 2 == 0 ? Ink.BLACK : "#ffffff", "stroke", Ink.BLACK);
        }
        svg.text(new Dot(at.x(), at.y() - 13), "0", "font-size", "11");
        svg.text(new Dot(at.x() + width / 2, at.y() - 13), Drawing.figure(length / 2, 3), "text-anchor", "middle",
                "font-size", "11");
        svg.text(new Dot(at.x() + width - 8, at.y() - 13), Drawing.figure(length, 3) + " m", "font-size", "11");
    }

    /**
     * Grid north upwards, and true north beside it.
     *
     * @param at     where both start (px)
     * @param north  azimuth of true north, clockwise from grid north; empty where it is not known
     * @param labels where they take room
     */
    void norths(Dot at, Optional<Azimuth> north, Labels labels) {
        Dot corner = new Dot(at.x() - 52, at.y() - 72);
        labels.avoid(corner, new Dot(corner.x() + 104, corner.y() + 146));
        svg.box(corner, new Dot(104, 146), "fill", "#ffffff", "fill-opacity", "0.9", "stroke", Ink.DARK_GREY);
        arrow(at, 0, "grid N", Ink.BLACK);
        double wound = Math.IEEEremainder(north.map(Azimuth::radians).orElse(0.0), 2 * Math.PI);
        String words = north.isEmpty() ? "true north" : String.format(Locale.ROOT, "true north %.2f°",
                Math.abs(Math.toDegrees(wound)));
        String side = north.isEmpty() ? "not known" : wound >= 0 ? "clockwise of grid" : "anticlockwise of grid";
        if (north.isPresent()) {
            arrow(at, wound, "true N", Ink.BLUE);
        }
        svg.text(new Dot(at.x(), corner.y() + 124), words, "text-anchor", "middle", "font-size", "10");
        svg.text(new Dot(at.x(), corner.y() + 137), side, "text-anchor", "middle", "font-size", "10");
    }

    private void arrow(Dot from, double turn, String words, String colour) {
        double x = Math.sin(turn);
        double y = -Math.cos(turn);
        double length = Ink.BLACK.equals(colour) ? 46 : 34;
        Dot tip = new Dot(from.x() + length * x, from.y() + length * y);
        String dash = Ink.BLACK.equals(colour) ? "none" : "4 2";
        svg.line(from, tip, "stroke", colour, "stroke-width", "2", "stroke-dasharray", dash);
        svg.outline(List.of(tip, new Dot(tip.x() - 9 * x - 4 * y, tip.y() - 9 * y + 4 * x),
                new Dot(tip.x() - 9 * x + 4 * y, tip.y() - 9 * y - 4 * x)), "fill", colour);
        boolean closeToGrid = !Ink.BLACK.equals(colour) && Math.abs(turn) < 0.6;
        Dot end = new Dot(from.x() + (length + 10) * x, from.y() + (length + 10) * y);
        if (closeToGrid) {
            svg.text(new Dot(from.x() + (turn >= 0 ? 8 : -8) + length * 0.6 * x, from.y() + 4 + length * 0.35 * y),
                    words,
                    "text-anchor", turn >= 0 ? "start" : "end", "font-size", "10", "fill", colour);
        } else {
            svg.text(new Dot(end.x(), end.y() + 4), words, "text-anchor", "middle", "font-size", "10", "fill", colour,
                    "stroke", "#ffffff", "stroke-width", "2.5", "paint-order", "stroke");
        }
    }

    /**
     * The legend.
     *
     * @param at     its upper left corner (px)
     * @param styles the styles in use, in their order
     * @param levels levels of the findings drawn
     * @param notes  further words
     * @return the lower end (px)
     */
    double legend(Dot at, List<MapStyle> styles, List<Finding.Level> levels, List<String> notes) {
        svg.text(new Dot(at.x(), at.y() + 6), "Legend", "font-size", "13", "font-weight", "bold");
        double y = at.y() + 24;
        for (MapStyle style : styles) {
            if (style.isMark()) {
                style.mark(svg, new Dot(at.x() + 17, y));
            } else if (style.isFilled()) {
                svg.box(new Dot(at.x(), y - 8), new Dot(34, 16), style.attributes(svg, true));
            } else {
                svg.line(new Dot(at.x(), y), new Dot(at.x() + 34, y), style.attributes(svg, false));
            }
            svg.text(new Dot(at.x() + 44, y + 4), style.words());
            y += 22;
        }
        y += 6;
        for (Finding.Level level : levels) {
            FindingMark.draw(svg, new Dot(at.x() + 17, y), level, "S1");
            svg.text(new Dot(at.x() + 44, y + 4), switch (level) {
                case REFUSE -> "finding: refuse";
                case WARN -> "finding: warn";
                default -> "finding: note";
            });
            y += 26;
        }
        for (String note : notes) {
            svg.text(new Dot(at.x(), y + 4), note, "font-size", "11", "fill", Ink.DARK_GREY);
            y += 16;
        }
        return y;
    }
}
