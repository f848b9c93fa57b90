// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.foundation.Progress;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.drawing.Picture;
import bermwright.report.drawing.Svg;
import bermwright.site.survey.ScoreMap;
import bermwright.site.survey.SurveyPlace;
import bermwright.site.survey.SurveyResult;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.HeightSource;
import bermwright.terrain.grid.NodeRange;
import bermwright.terrain.relief.Hillshade;
import bermwright.terrain.relief.Light;
import java.util.Locale;

/**
 * The map of a survey: shaded ground, scores over it where hulls can lie, the best places by number and heading.
 *
 * <p>Where nothing can lie the ground is bare and grey. Scores run from dark to light, so that they read without
 * colour too.
 */
public final class SurveyMap {
    private static final double WIDEST = 1100;
    private static final double LEFT = 20;
    private static final double TOP = 56;
    private static final double LEGEND = 190;
    private static final double SHADE = 0.35;
    /** From dark to light in even steps of lightness: blue, green, yellow. */
    private static final int[][] RAMP = {{54, 30, 110}, {46, 90, 150}, {40, 140, 130}, {120, 190, 80}, {250, 230, 60}};

    private final SurveyResult result;
    private final ScoreMap map;
    private final int columns;
    private final int rows;
    private final byte[] shades;

    private SurveyMap(SurveyResult result, HeightSource ground, Progress progress) {
        this.result = result;
        this.map = result.map();
        GridFrame frame = map.frame();
        double longest = Math.max(frame.columns(), frame.rows());
        // Whole dots for a value or whole values for a dot, so that no lattice shows.
        double scale = longest <= WIDEST ? Math.min(Math.floor(WIDEST / longest), 8) : 1 / Math.ceil(longest / WIDEST);
        columns = Math.max(2, (int) Math.round(frame.columns() * scale));
        rows = Math.max(2, (int) Math.round(frame.rows() * scale));
        shades = Hillshade.of(sampled(ground, progress), Light.OF_MAPS, 1);
    }

    /**
     * The map.
     *
     * @param result   the survey
     * @param ground   its ground, or a coarser overview of it
     * @param progress told how far the reading of the ground has come
     * @return the drawing
     */
    public static Drawing of(SurveyResult result, HeightSource ground, Progress progress) {
        return new SurveyMap(result, ground, progress).drawing();
    }

    private double south() {
        return map.frame().south() - map.frame().spacing() / 2;
    }

    private double west() {
        return map.frame().west() - map.frame().spacing() / 2;
    }

    private double metresADot() {
        return map.frame().columns() * map.frame().spacing() / columns;
    }

    /** One height for each dot of the picture. */
    private ElevationGrid sampled(HeightSource ground, Progress progress) {
        GridFrame frame = ground.frame();
        double dot = metresADot();
        GridFrame dots = new GridFrame(rows, columns, west() + dot / 2, south() + dot / 2, dot);
        return ElevationGrid.filled(dots, sink -> {
            double[] line = new double[frame.columns()];
            double[] heights = new double[columns];
            for (int r = 0; r < rows; r++) {
                progress.check();
                ground.read(new NodeRange(node(dots.north(r) - frame.south(), frame, frame.rows()), 0, 1,
                        frame.columns()), line);
                for (int c = 0; c < columns; c++) {
                    heights[c] = line[node(dots.east(c) - frame.west(), frame, frame.columns())];
                }
                sink.put(r, 0, heights, columns);
            }
        }).withMetreScale(ground.metreScale());
    }

    private static int node(double from, GridFrame frame, int count) {
        return (int) Math.max(0, Math.min(count - 1, Math.rint(from / frame.spacing())));
    }

    private Drawing drawing() {
        Svg svg = new Svg("survey");
        double width = LEFT + columns + LEGEND;
        double height = Math.max(TOP + rows + 40, TOP + 420);
        svg.box(new Dot(0, 0), new Dot(width, height), "fill", "#ffffff");
        svg.text(new Dot(LEFT, 24), "Where the hulls could lie: score of the best heading", "font-size", "17",
                "font-weight", "bold", "fill", Ink.BLACK);
        svg.text(new Dot(LEFT, 44), String.format(Locale.ROOT, "%,d cells of %.2f m, %d headings; one value for %d x %d"
                + " cells; grey: no hull can lie there", result.tally().cells(), result.ground().trueSpacing(),
                result.tally().headings(), map.square(), map.square()), "font-size", "12", "fill", Ink.BLACK);
        svg.image(new Dot(LEFT, TOP), new Dot(columns, rows), Picture.address(columns, rows, this::colour));
        svg.box(new Dot(LEFT, TOP), new Dot(columns, rows), "fill", "none", "stroke", Ink.BLACK);
        result.places().forEach(p -> outlines(svg, p));
        result.places().forEach(p -> mark(svg, p));
        scaleBar(svg);
        legend(svg, LEFT + columns + 20);
        return svg.drawing("Where the hulls could lie", new Dot(width, height));
    }

    private int colour(int column, int row) {
        int r = rows - 1 - row;
        double shade = (shades[r * columns + column] & 0xFF) / 255.0;
        double score = best(r, column);
        if (Double.isNaN(score)) {
            return Picture.grey(0.15 + 0.75 * shade);
        }
        int[] c = ramp(score);
        double light = 1 - SHADE + SHADE * Math.min(1.4, shade / 0.7);
        int colour = 0xFF;
        for (int value : c) {
            colour = colour << 8 | (int) Math.max(0, Math.min(255, value * light));
        }
        return colour;
    }

    /** The best score in a dot of the picture. */
    private double best(int row, int column) {
        GridFrame frame = map.frame();
        int firstRow = row * frame.rows() / rows;
        int lastRow = Math.max(firstRow, (row + 1) * frame.rows() / rows - 1);
        int firstColumn = column * frame.columns() / columns;
        int lastColumn = Math.max(firstColumn, (column + 1) * frame.columns() / columns - 1);
        double best = Double.NaN;
        for (int r = firstRow; r <= lastRow; r++) {
            for (int c = firstColumn; c <= lastColumn; c++) {
                double score = map.score(r, c);
                best = best >= score || Double.isNaN(score) ? best : score;
            }
        }
        return best;
    }

    private static int[] ramp(double score) {
        double at = Math.max(0, Math.min(1, score)) * (RAMP.length - 1);
        int low = (int) Math.min(RAMP.length - 2, at);
        int[] colour = new int[3];
        for (int i = 0; i < colour.length; i++) {
            colour[i] = (int) Math.round(RAMP[low][i] + (at - low) * (RAMP[low + 1][i] - RAMP[low][i]));
        }
        return colour;
    }

    private Dot dot(double east, double north) {
        double dot = metresADot();
        return new Dot(LEFT + (east - west()) / dot, TOP + rows - (north - south()) / dot);
    }

    private void outlines(Svg svg, SurveyPlace place) {
        place.outlines().forEach(ring -> svg.outline(ring.corners().stream().map(p -> dot(p.east(), p.north()))
                .toList(), "fill", "none", "stroke", Ink.BLACK, "stroke-width", "1"));
    }

    /** A number in a disc, and a stroke towards which the hull is laid down. */
    private void mark(Svg svg, SurveyPlace place) {
        Dot at = dot(place.centre().east(), place.centre().north());
        Dot tip = new Dot(at.x() + 24 * place.heading().east(), at.y() - 24 * place.heading().north());
        svg.line(at, tip, "stroke", "#ffffff", "stroke-width", "5");
        svg.line(at, tip, "stroke", Ink.BLACK, "stroke-width", "2.5");
        svg.circle(at, 10, "fill", "#ffffff", "stroke", Ink.BLACK, "stroke-width", "1.5");
        svg.text(new Dot(at.x(), at.y() + 4), Integer.toString(place.rank()), "text-anchor", "middle", "font-size",
                "12", "font-weight", "bold", "fill", Ink.BLACK);
    }

    private void scaleBar(Svg svg) {
        double metres = metresADot() * map.metreScale();
        double decade = Math.pow(10, Math.floor(Math.log10(columns * metres / 4)));
        double length = decade * (5 * decade < columns * metres / 4 ? 5 : 2 * decade < columns * metres / 4 ? 2 : 1);
        Dot from = new Dot(LEFT, TOP + rows + 20);
        Dot to = new Dot(LEFT + length / metres, TOP + rows + 20);
        svg.line(from, to, "stroke", Ink.BLACK, "stroke-width", "3");
        svg.text(new Dot(to.x() + 8, to.y() + 4), String.format(Locale.ROOT, length < 1000 ? "%.0f m" : "%2$.0f km",
                length, length / 1000) + ", grid north is up", "font-size", "12", "fill", Ink.BLACK);
    }

    private void legend(Svg svg, double x) {
        svg.text(new Dot(x, TOP + 12), "Score (least margin)", "font-size", "12", "font-weight", "bold", "fill",
                Ink.BLACK);
        int steps = 20;
        for (int i = 0; i < steps; i++) {
            int[] c = ramp((steps - 0.5 - i) / steps);
            svg.box(new Dot(x, TOP + 22 + 6 * i), new Dot(24, 6), "fill", String.format(Locale.ROOT,
                    "#%02x%02x%02x", c[0], c[1],
                    c[2]));
        }
        svg.text(new Dot(x + 30, TOP + 30), "1: far from every limit", "font-size", "11", "fill", Ink.BLACK);
        svg.text(new Dot(x + 30, TOP + 142), "0: on a limit", "font-size", "11", "fill", Ink.BLACK);
        svg.text(new Dot(x, TOP + 172), "Places", "font-size", "12", "font-weight", "bold", "fill", Ink.BLACK);
        int line = 0;
        for (SurveyPlace p : result.places().subList(0, Math.min(15, result.places().size()))) {
            svg.text(new Dot(x, TOP + 190 + 15 * line++), String.format(Locale.ROOT, "%d  score %.2f, laid to %.0f°",
                    p.rank(), p.score(), p.heading().degrees()), "font-size", "11", "fill", Ink.BLACK);
        }
        if (result.places().isEmpty()) {
            svg.text(new Dot(x, TOP + 190), "none found", "font-size", "11", "fill", Ink.BLACK);
        }
    }
}
