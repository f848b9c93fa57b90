// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Figure;
import bermwright.report.drawing.Style;
import java.io.ByteArrayInputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontPosture;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;

/** Paints the report's drawings, so that the window and the hand-over show the very same picture. */
final class DrawingPainter {
    private static final Ink FIRST = new Ink("#000000", "none", 1, 1, 1, 12, "normal", "normal");
    private final Drawing drawing;
    private final Map<String, Figure> defined = new HashMap<>();
    private final Map<String, Paint> hatchings = new HashMap<>();

    DrawingPainter(Drawing drawing) {
        this.drawing = drawing;
        define(drawing.figures());
    }

    private void define(List<Figure> figures) {
        for (Figure figure : figures) {
            if (figure instanceof Figure.Group group) {
                define(group.figures());
            } else if (figure instanceof Figure.Window window) {
                defined.put("url(#" + window.id() + ")", window);
            } else if (figure instanceof Figure.Hatching hatching) {
                defined.put("url(#" + hatching.id() + ")", hatching);
            }
        }
    }

    /** What is handed down from a group to those inside. */
    private record Ink(String fill, String stroke, double fillShare, double strokeShare, double width, double size,
            String weight, String posture) {
        private Ink of(Style s) {
            return new Ink(s.value("fill").orElse(fill), s.value("stroke").orElse(stroke),
                    s.number("fill-opacity", fillShare), s.number("stroke-opacity", strokeShare),
                    s.number("stroke-width", width), s.number("font-size", size), s.value("font-weight").orElse(weight),
                    s.value("font-style").orElse(posture));
        }
    }

    void paint(GraphicsContext g) {
        g.setFill(Color.WHITE);
        g.fillRect(0, 0, drawing.size().x(), drawing.size().y());
        drawing.figures().forEach(f -> draw(g, f, FIRST));
    }

    private void draw(GraphicsContext g, Figure figure, Ink outer) {
        Style style = figure.style();
        Ink ink = outer.of(style);
        g.save();
        g.setGlobalAlpha(g.getGlobalAlpha() * style.number("opacity", 1));
        style.value("clip-path").ifPresent(id -> clip(g, id));
        style.turn().ifPresent(t -> turn(g, t));
        if (style.value("stroke-dasharray").isPresent()) {
            g.setLineDashes(style.dashes());
        }
        g.beginPath();
        if (figure instanceof Figure.Group group) {
            group.figures().forEach(f -> draw(g, f, ink));
        } else if (figure instanceof Figure.Box box) {
            g.rect(box.corner().x(), box.corner().y(), Math.max(0, box.size().x()), Math.max(0, box.size().y()));
            trace(g, ink, true);
        } else if (figure instanceof Figure.Line line) {
            run(g, List.of(line.from(), line.to()));
            trace(g, ink, false);
        } else if (figure instanceof Figure.Path path) {
            path.runs().forEach(r -> run(g, r));
            if (path.isClosed()) {
                g.closePath();
            }
            trace(g, ink, true);
        } else if (figure instanceof Figure.Circle circle) {
            g.arc(circle.middle().x(), circle.middle().y(), circle.radius(), circle.radius(), 0, 360);
            g.closePath();
            trace(g, ink, true);
        } else if (figure instanceof Figure.Words words) {
            words(g, words, ink);
        } else if (figure instanceof Figure.Image image) {
            g.drawImage(new Image(new ByteArrayInputStream(image.png())), image.corner().x(), image.corner().y(),
                    image.size().x(), image.size().y());
        }
        g.restore();
    }

    private static void run(GraphicsContext g, List<Dot> dots) {
        g.moveTo(dots.get(0).x(), dots.get(0).y());
        dots.stream().skip(1).forEach(d -> g.lineTo(d.x(), d.y()));
    }

    private void trace(GraphicsContext g, Ink ink, boolean isArea) {
        if (isArea && !"none".equals(ink.fill)) {
            g.setFill(paint(ink.fill, ink.fillShare));
            g.fill();
        }
        if (!"none".equals(ink.stroke)) {
            stroke(g, ink);
            g.stroke();
        }
    }

    private void stroke(GraphicsContext g, Ink ink) {
        g.setStroke(paint(ink.stroke, ink.strokeShare));
        g.setLineWidth(ink.width);
        g.setLineJoin(StrokeLineJoin.ROUND);
    }

    private Paint paint(String words, double share) {
        if (defined.get(words) instanceof Figure.Hatching hatching) {
            return hatchings.computeIfAbsent(words, id -> Tiles.of(hatching.pattern(),
                    Color.web(hatching.line()), "none".equals(hatching.ground()) ? Color.TRANSPARENT
                    : Color.web(hatching.ground())));
        }
        Color colour = Color.web(words);
        return share < 1 ? colour.deriveColor(0, 1, 1, share) : colour;
    }

    private void clip(GraphicsContext g, String id) {
        if (defined.get(id) instanceof Figure.Window window) {
            g.beginPath();
            g.rect(window.corner().x(), window.corner().y(), window.size().x(), window.size().y());
            g.clip();
        }
    }

    private static void turn(GraphicsContext g, double[] turn) {
        g.translate(turn[1], turn[2]);
        g.rotate(turn[0]);
        g.translate(-turn[1], -turn[2]);
    }

    private void words(GraphicsContext g, Figure.Words words, Ink ink) {
        g.setFont(Font.font("SansSerif", "bold".equals(ink.weight) ? FontWeight.BOLD : FontWeight.NORMAL,
                "italic".equals(ink.posture) ? FontPosture.ITALIC : FontPosture.REGULAR, ink.size));
        g.setTextBaseline(VPos.BASELINE);
        g.setTextAlign(switch (words.style().value("text-anchor").orElse("")) {
            case "middle" -> TextAlignment.CENTER;
            case "end" -> TextAlignment.RIGHT;
            default -> TextAlignment.LEFT;
        });
        if (!"none".equals(ink.stroke)) {
            stroke(g, ink);
            g.strokeText(words.text(), words.at().x(), words.at().y());
        }
        if (!"none".equals(ink.fill)) {
            g.setFill(paint(ink.fill, ink.fillShare));
            g.fillText(words.text(), words.at().x(), words.at().y());
        }
    }
}
