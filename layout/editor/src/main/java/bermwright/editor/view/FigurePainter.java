// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.FigureLook;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.MapFigure;
import bermwright.foundation.Point;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Rectangle2D;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Draws the things on the map: areas with their patterns, lines, marks and labels. */
final class FigurePainter {
    private static final double MARK = 6;
    /** Width of a letter over the text's size (1). */
    private static final double LETTER = 0.58;

    private final MapColours style;
    private final double textSize;
    private double[] xs = new double[64];
    private double[] ys = new double[64];

    FigurePainter(MapColours style, double textSize) {
        this.style = style;
        this.textSize = textSize;
    }

    void paint(GraphicsContext g, MapCamera camera, List<MapFigure> figures, List<Part> picked) {
        MapCamera.Box sight = camera.box().grown(20 * camera.metresPerPixel());
        for (MapFigure figure : figures) {
            if (figure.box().meets(sight)) {
                draw(g, camera, figure, figure.part().filter(picked::contains).isPresent());
            }
        }
        g.setLineDashes();
        // What is drawn last is said first; a name that would lie over another is left out until one looks closer.
        List<Rectangle2D> said = new ArrayList<>();
        for (int i = figures.size() - 1; i >= 0; i--) {
            if (!figures.get(i).label().isEmpty() && figures.get(i).box().meets(sight)) {
                label(g, camera, figures.get(i), said);
            }
        }
    }

    /** How far figures with their marks and labels reach. */
    void reach(Reach reach, MapCamera camera, List<MapFigure> figures) {
        MapCamera.Box sight = camera.box().grown(20 * camera.metresPerPixel());
        for (MapFigure figure : figures) {
            if (figure.box().meets(sight)) {
                reach.add(camera, figure.box(), 2 * MARK);
                if (!figure.label().isEmpty()) {
                    Point middle = figure.box().centre();
                    reach.add(camera.x(middle.east()), camera.y(middle.north()),
                            Math.max(2.5, 0.5 * figure.label().length()) * textSize);
                }
            }
        }
    }

    private void draw(GraphicsContext g, MapCamera camera, MapFigure figure, boolean isPicked) {
        MapColours.Drawing drawing = style.drawing(figure.look());
        if (figure.look().isMark()) {
            mark(g, camera, figure, drawing, isPicked);
            return;
        }
        int n = project(camera, figure.corners());
        if (figure.isClosed()) {
            g.setFill(drawing.fill());
            g.fillPolygon(xs, ys, n);
        }
        if (isPicked) {
            g.setLineDashes();
            g.setStroke(style.halo());
            g.setLineWidth(drawing.width() + 4);
            stroke(g, figure.isClosed(), n);
        }
        g.setLineCap(StrokeLineCap.BUTT);
        g.setLineDashes(drawing.dashes());
        g.setStroke(drawing.line());
        g.setLineWidth(isPicked ? drawing.width() + 1.2 : drawing.width());
        stroke(g, figure.isClosed(), n);
    }

    private void stroke(GraphicsContext g, boolean isClosed, int n) {
        if (isClosed) {
            g.strokePolygon(xs, ys, n);
        } else {
            g.strokePolyline(xs, ys, n);
        }
    }

    private int project(MapCamera camera, List<Point> corners) {
        int n = corners.size();
        if (n > xs.length) {
            xs = new double[2 * n];
            ys = new double[2 * n];
        }
        for (int i = 0; i < n; i++) {
            xs[i] = camera.x(corners.get(i).east());
            ys[i] = camera.y(corners.get(i).north());
        }
        return n;
    }

    private void mark(GraphicsContext g, MapCamera camera, MapFigure figure, MapColours.Drawing drawing,
            boolean isPicked) {
        double x = camera.x(figure.corners().get(0).east());
        double y = camera.y(figure.corners().get(0).north());
        double r = isPicked ? MARK + 2 : MARK;
        g.setLineDashes();
        g.setLineWidth(4);
        g.setStroke(style.halo());
        outline(g, figure.look(), x, y, r);
        g.setLineWidth(drawing.width());
        g.setStroke(drawing.line());
        g.setFill(drawing.line());
        outline(g, figure.look(), x, y, r);
    }

    /** Each kind of mark has a shape of its own, so that it is known without its colour. */
    private static void outline(GraphicsContext g, FigureLook look, double x, double y, double r) {
        switch (look) {
            case ANCHOR_OTHER -> g.strokePolygon(new double[] {x, x + r, x, x - r}, new double[] {y - r, y, y + r, y},
                    4);
            case ANCHOR_PLATE -> {
                g.strokeRect(x - r, y - r / 3, 2 * r, 2 * r / 3);
                g.strokeLine(x, y - r, x, y + r);
            }
            case ANCHOR_BLOCK -> g.strokeRect(x - r * 0.8, y - r * 0.8, 1.6 * r, 1.6 * r);
            case ANCHOR_BALLAST -> {
                g.strokeOval(x - r, y - r, 2 * r, 2 * r);
                g.strokeLine(x - r * 0.7, y, x + r * 0.7, y);
            }
            case ANCHOR_SCREW -> {
                g.strokeLine(x - r, y - r, x + r, y + r);
                g.strokeLine(x - r, y + r, x + r, y - r);
            }
            case ANCHOR_PILE -> g.strokePolygon(new double[] {x, x + r, x - r}, new double[] {y + r, y - r, y - r}, 3);
            case POLE_MARK -> {
                g.strokeOval(x - r * 0.8, y - r * 0.8, 1.6 * r, 1.6 * r);
                g.fillOval(x - 2, y - 2, 4, 4);
            }
            case HATCH -> {
                g.strokeLine(x - r * 0.8, y - r * 0.6, x - r * 0.8, y + r * 0.6);
                g.strokeLine(x + r * 0.8, y - r * 0.6, x + r * 0.8, y + r * 0.6);
                g.strokeLine(x - r * 0.8, y + r * 0.6, x + r * 0.8, y + r * 0.6);
            }
            default -> {
                g.strokeOval(x - 3, y - r, 6, 6);
                g.strokeArc(x - r * 0.7, y - 1, 1.4 * r, 1.6 * r, 0, 180, javafx.scene.shape.ArcType.CHORD);
            }
        }
    }

    private void label(GraphicsContext g, MapCamera camera, MapFigure figure, List<Rectangle2D> said) {
        double size = (figure.box().east() - figure.box().west() + figure.box().north() - figure.box().south())
                / camera.metresPerPixel();
        if (!figure.look().isMark() && size < 24 || figure.look().isMark() && camera.metresPerPixel() > 0.12) {
            return;
        }
        Point at = figure.look().isMark() ? figure.corners().get(0) : figure.box().centre();
        double y = camera.y(at.north()) + (figure.look().isMark() ? 1.4 * textSize : 0);
        double wide = LETTER * figure.label().length() * textSize;
        Rectangle2D room = new Rectangle2D(camera.x(at.east()) - wide / 2, y - 0.6 * textSize, wide, 1.2 * textSize);
        if (said.stream().noneMatch(room::intersects)) {
            said.add(room);
            text(g, figure.label(), camera.x(at.east()), y, style.ink());
        }
    }

    void text(GraphicsContext g, String words, double x, double y, Color colour) {
        g.setFont(Font.font("SansSerif", textSize));
        g.setTextAlign(TextAlignment.CENTER);
        g.setTextBaseline(VPos.CENTER);
        g.setLineWidth(3);
        g.setStroke(style.halo());
        g.strokeText(words, x, y);
        g.setFill(colour);
        g.fillText(words, x, y);
    }
}
