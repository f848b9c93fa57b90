// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.foundation.Point;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.relief.ContourLine;
import bermwright.terrain.relief.Contours;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Contour lines of a ground, ready to be drawn into pictures of any scale. */
public final class ContourSet {
    /** Every so many lines one is drawn stronger and told its height (1). */
    static final int INDEX_EVERY = 5;
    private static final double INDEX_STRENGTH = 0.62;
    private static final double STRENGTH = 0.34;
    /** A line shorter than this in sight is not told its height (pixels). */
    private static final double SHORTEST_NAMED = 170;
    /** Heights stand at least this far apart (pixels). */
    private static final double APART = 130;

    private final double interval;
    private final List<Line> lines;

    /** A line: its number in intervals, its corners and the box around it. */
    private record Line(long number, boolean isClosed, List<Point> points, MapCamera.Box box) {
        Point corner(int i) {
            return points.get(i % points.size());
        }

        int edges() {
            return isClosed ? points.size() : points.size() - 1;
        }
    }

    /**
     * A height to be written on a line.
     *
     * @param place where, in the middle of the words
     * @param turn  turn of the words, clockwise from level (rad), between a quarter turn left and right
     * @param words the height
     */
    public record Height(Point place, double turn, String words) {
    }

    private ContourSet(double interval, List<Line> lines) {
        this.interval = interval;
        this.lines = lines;
    }

    static ContourSet none() {
        return new ContourSet(1, List.of());
    }

    /** The lines of a ground at all multiples of an interval (m). */
    static ContourSet of(ElevationGrid grid, double interval) {
        List<Line> lines = new ArrayList<>();
        for (ContourLine line : Contours.every(grid, interval)) {
            lines.add(new Line(Math.round(line.level() / interval), line.isClosed(), line.points(),
                    MapFigure.around(line.points())));
        }
        return new ContourSet(interval, lines);
    }

    /**
     * Draws the lines in sight.
     *
     * @param pixels  the picture, rows from the northernmost
     * @param camera  what it shows
     * @param every   draws each so many-th line only (1)
     * @param isDark  whether the picture is dark
     */
    void draw(int[] pixels, MapCamera camera, int every, boolean isDark) {
        ContourInk ink = new ContourInk(pixels, (int) Math.ceil(camera.width()), isDark);
        MapCamera.Box sight = camera.box();
        for (Line line : lines) {
            if (line.number % every != 0 || !line.box.meets(sight)) {
                continue;
            }
            double strength = isIndex(line, every) ? INDEX_STRENGTH : STRENGTH;
            Point first = line.corner(0);
            double x0 = camera.x(first.east());
            double y0 = camera.y(first.north());
            for (int i = 1; i <= line.edges(); i++) {
                Point p = line.corner(i);
                double x1 = camera.x(p.east());
                double y1 = camera.y(p.north());
                // Corners nearer than half a pixel change nothing that is seen.
                if (i == line.edges() || Math.abs(x1 - x0) + Math.abs(y1 - y0) > 0.5) {
                    ink.line(x0, y0, x1, y1, strength);
                    x0 = x1;
                    y0 = y1;
                }
            }
        }
    }

    private static boolean isIndex(Line line, int every) {
        return line.number % ((long) every * INDEX_EVERY) == 0;
    }

    /** The heights to be written on the stronger lines in sight, far enough apart. */
    List<Height> heights(MapCamera camera, int every) {
        List<Height> heights = new ArrayList<>();
        MapCamera.Box sight = camera.box();
        int digits = (int) Math.max(0, Math.ceil(-Math.log10(interval * every * INDEX_EVERY) - 1e-9));
        for (Line line : lines) {
            if (isIndex(line, every) && line.box.meets(sight)) {
                String words = String.format(Locale.ROOT, "%." + digits + "f", line.number * interval)
                        .replace('-', '\u2212');
                middle(line, camera).map(at -> new Height(at.place, at.turn, words))
                        .filter(now -> heights.stream().allMatch(other -> other.place.distance(now.place)
                                > APART * camera.metresPerPixel())).ifPresent(heights::add);
            }
        }
        return heights;
    }

    /** The middle of the longest stretch in sight. */
    private static Optional<Height> middle(Line line, MapCamera camera) {
        double best = 0;
        int from = 0;
        int to = 0;
        double length = 0;
        int start = 0;
        for (int i = 0; i < line.edges(); i++) {
            Point a = line.corner(i);
            Point b = line.corner(i + 1);
            boolean isSeen = camera.box().contains(new MapCamera.Box(a.east(), a.north(), a.east(), a.north()));
            length = isSeen ? length + a.distance(b) : 0;
            start = isSeen ? start : i + 1;
            if (length > best) {
                best = length;
                from = start;
                to = i + 1;
            }
        }
        if (best < SHORTEST_NAMED * camera.metresPerPixel()) {
            return Optional.empty();
        }
        int at = (from + to) / 2;
        int reach = Math.max(1, (to - from) / 12);
        Point before = line.corner(Math.max(from, at - reach));
        Point after = line.corner(Math.min(to, at + reach));
        double turn = Math.atan2(before.north() - after.north(), after.east() - before.east());
        double upright = turn > Math.PI / 2 ? turn - Math.PI : turn < -Math.PI / 2 ? turn + Math.PI : turn;
        return Optional.of(new Height(line.corner(at), upright, ""));
    }
}
