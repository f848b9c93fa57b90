// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Curves over tilt with ratings as level lines and a cursor; each curve has dashes of its own as well as a colour. */
final class CurveChart extends PaintedRegion {
    private static final double[][] DASHES = {{}, {8, 4}, {2, 3}, {10, 3, 2, 3}, {4, 2}};
    private static final double TICKS = 5;
    /** Height with text at its usual size (pixels). */
    private static final double HEIGHT = 250;
    private static final double LEAST_HEIGHT = 150;
    /** Wider than so many times the text's size the names of curves stand in two columns (1). */
    private static final double TWO_COLUMNS = 30;

    private Content content = new Content(List.of(), List.of(), "", 0, 90);

    /**
     * A curve.
     *
     * @param name   its name
     * @param points x and y of each point, in the axes' units
     * @param isLoose whether it may run out of the top instead of setting the scale
     */
    record Curve(String name, List<double[]> points, boolean isLoose) {
    }

    /**
     * A level line.
     *
     * @param name its name
     * @param y    its value, in the axis' unit
     */
    record Level(String name, double y) {
    }

    /** What is shown. */
    record Content(List<Curve> curves, List<Level> levels, String unit, double cursor, double most) {
    }

    CurveChart(Dress dress) {
        super(dress, LEAST_HEIGHT, d -> HEIGHT * d.scale());
    }

    void show(Content shown) {
        content = shown;
        paint();
    }

    private Color colour(int index) {
        String[] light = {"#004F80", "#B34700", "#00694C", "#8C3F6B", "#5b5446"};
        String[] dark = {"#7CC7F2", "#FF8A4A", "#37C79B", "#E7A4CB", "#b9b2a4"};
        return Color.web((dress().isDark() ? dark : light)[index % light.length]);
    }

    @Override
    void paint(GraphicsContext g, MapColours style) {
        double text = dress().textSize() * 0.9;
        g.setFont(Font.font("SansSerif", text));
        g.setFill(style.ink());
        double greatest = content.curves.stream().filter(c -> !c.isLoose).flatMap(c -> c.points.stream())
                .mapToDouble(p -> p[1]).filter(Double::isFinite).max().orElse(1);
        for (Level level : content.levels) {
            greatest = level.y < 3 * greatest ? Math.max(greatest, level.y) : greatest;
        }
        int columns = wide() > TWO_COLUMNS * text ? 2 : 1;
        double legend = (content.curves.size() + columns - 1) / columns * text * 1.5 + 8 + text;
        Frame frame = new Frame(4.2 * text, legend + text, wide() - 10, high() - 2.6 * text,
                content.most, greatest * 1.08);
        axes(g, frame, style, text);
        for (int i = 0; i < content.curves.size(); i++) {
            curve(g, frame, i);
            legend(g, i, columns, text);
        }
        for (Level level : content.levels) {
            if (level.y <= frame.top) {
                g.setStroke(style.ink());
                g.setLineWidth(1.2);
                g.setLineDashes(12, 4);
                g.strokeLine(frame.left, frame.y(level.y), frame.right, frame.y(level.y));
                g.setLineDashes();
                words(g, level.name, frame.left + 4, frame.y(level.y) - text * 0.6, TextAlignment.LEFT);
            }
        }
        g.setStroke(style.accent());
        g.setLineWidth(2);
        g.strokeLine(frame.x(content.cursor), frame.up, frame.x(content.cursor), frame.down);
    }

    private record Frame(double left, double up, double right, double down, double most, double top) {
        private double x(double value) {
            return left + value / most * (right - left);
        }

        private double y(double value) {
            return down - value / top * (down - up);
        }
    }

    private void axes(GraphicsContext g, Frame f, MapColours style, double text) {
        g.setStroke(style.ink().deriveColor(0, 1, 1, 0.25));
        g.setLineWidth(1);
        double step = step(f.top / TICKS);
        for (double v = 0; v <= f.top; v += step) {
            g.strokeLine(f.left, f.y(v), f.right, f.y(v));
            words(g, Figures.brief(v), f.left - 5, f.y(v), TextAlignment.RIGHT);
        }
        for (double v = 0; v <= f.most + 1e-9; v += 15) {
            g.strokeLine(f.x(v), f.up, f.x(v), f.down);
            words(g, String.format(Locale.ROOT, "%.0f\u00b0", v), f.x(v), f.down + text * 0.8, TextAlignment.CENTER);
        }
        words(g, content.unit, f.left - 5, f.up - text, TextAlignment.RIGHT);
        words(g, "tilt", f.right, f.down + text * 1.9, TextAlignment.RIGHT);
    }

    private void curve(GraphicsContext g, Frame f, int index) {
        g.setStroke(colour(index));
        g.setLineWidth(2.2);
        g.setLineDashes(DASHES[index % DASHES.length]);
        boolean isDown = false;
        g.beginPath();
        for (double[] point : content.curves.get(index).points) {
            boolean known = Double.isFinite(point[1]) && point[1] <= f.top;
            if (known && isDown) {
                g.lineTo(f.x(point[0]), f.y(point[1]));
            } else if (known) {
                g.moveTo(f.x(point[0]), f.y(point[1]));
            }
            isDown = known;
        }
        g.stroke();
        g.setLineDashes();
    }

    private void legend(GraphicsContext g, int index, int columns, double text) {
        double x = 8 + index % columns * wide() / columns;
        double y = 4 + (index / columns + 0.5) * text * 1.5;
        g.setStroke(colour(index));
        g.setLineWidth(2.2);
        g.setLineDashes(DASHES[index % DASHES.length]);
        g.strokeLine(x, y, x + 26, y);
        g.setLineDashes();
        words(g, content.curves.get(index).name, x + 32, y, TextAlignment.LEFT);
    }

    private static void words(GraphicsContext g, String words, double x, double y, TextAlignment side) {
        g.setTextAlign(side);
        g.setTextBaseline(VPos.CENTER);
        g.fillText(words, x, y);
    }
}
