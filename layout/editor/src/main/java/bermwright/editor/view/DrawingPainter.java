// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.report.drawing.Drawing;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HashMap;
import java.util.Map;
import javafx.geometry.VPos;
import javafx.scene.SnapshotParameters;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.paint.Color;
import javafx.scene.paint.ImagePattern;
import javafx.scene.paint.Paint;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontPosture;
import javafx.scene.text.FontWeight;
import javafx.scene.text.TextAlignment;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/**
 * Paints the report's drawings, so that the window and the hand-over show the very same picture.
 *
 * <p>Knows what those drawings are made of: boxes, lines, paths of straight pieces, circles, texts, groups, patterns,
 * clips and pictures; anything else is left out.
 */
final class DrawingPainter {
    private final Element root;
    private final Map<String, Element> defined = new HashMap<>();
    private final Map<String, Paint> patterns = new HashMap<>();

    DrawingPainter(Drawing drawing) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            root = factory.newDocumentBuilder().parse(new ByteArrayInputStream(
                    drawing.svg().getBytes(StandardCharsets.UTF_8))).getDocumentElement();
        } catch (ParserConfigurationException | SAXException | IOException impossible) {
            throw new IllegalStateException("drawing " + drawing.name() + " is not well-formed: "
                    + impossible.getMessage(), impossible);
        }
        define(root);
    }

    private void define(Element element) {
        if (element.hasAttribute("id")) {
            defined.put(element.getAttribute("id"), element);
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                define(inner);
            }
        }
    }

    /** What is handed down from an element to those inside. */
    private record Ink(String fill, String stroke, double fillShare, double strokeShare, double width, double size,
            String weight, String posture) {
        private Ink of(Element e) {
            return new Ink(text(e, "fill", fill), text(e, "stroke", stroke), number(e, "fill-opacity", fillShare),
                    number(e, "stroke-opacity", strokeShare), number(e, "stroke-width", width),
                    number(e, "font-size", size), text(e, "font-weight", weight), text(e, "font-style", posture));
        }
    }

    void paint(GraphicsContext g) {
        Ink ink = new Ink("#000000", "none", 1, 1, 1, 12, "normal", "normal").of(root);
        inside(g, root, ink);
    }

    private void inside(GraphicsContext g, Element parent, Ink ink) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element) {
                draw(g, element, ink.of(element));
            }
        }
    }

    private void draw(GraphicsContext g, Element e, Ink ink) {
        g.save();
        g.setGlobalAlpha(g.getGlobalAlpha() * number(e, "opacity", 1));
        clip(g, e);
        transform(g, e);
        dashes(g, e);
        switch (e.getTagName()) {
            case "g" -> inside(g, e, ink);
            case "rect" -> box(g, e, ink);
            case "line" -> {
                g.beginPath();
                g.moveTo(number(e, "x1", 0), number(e, "y1", 0));
                g.lineTo(number(e, "x2", 0), number(e, "y2", 0));
                stroke(g, ink);
            }
            case "path" -> {
                g.beginPath();
                g.appendSVGPath(e.getAttribute("d"));
                fill(g, ink);
                stroke(g, ink);
            }
            case "circle" -> {
                double r = number(e, "r", 0);
                g.beginPath();
                g.arc(number(e, "cx", 0), number(e, "cy", 0), r, r, 0, 360);
                g.closePath();
                fill(g, ink);
                stroke(g, ink);
            }
            case "text" -> words(g, e, ink);
            case "image" -> picture(g, e);
            default -> { }
        }
        g.restore();
    }

    private void box(GraphicsContext g, Element e, Ink ink) {
        boolean whole = e.getAttribute("width").endsWith("%");
        double w = whole ? number(root, "width", 0) : number(e, "width", 0);
        double h = whole ? number(root, "height", 0) : number(e, "height", 0);
        g.beginPath();
        g.rect(number(e, "x", 0), number(e, "y", 0), w, h);
        fill(g, ink);
        stroke(g, ink);
    }

    private void fill(GraphicsContext g, Ink ink) {
        if (!"none".equals(ink.fill)) {
            g.setFill(paint(ink.fill, ink.fillShare));
            g.fill();
        }
    }

    private void stroke(GraphicsContext g, Ink ink) {
        if (!"none".equals(ink.stroke)) {
            g.setStroke(paint(ink.stroke, ink.strokeShare));
            g.setLineWidth(ink.width);
            g.setLineJoin(StrokeLineJoin.ROUND);
            g.stroke();
        }
    }

    private Paint paint(String words, double share) {
        if (words.startsWith("url(#")) {
            return patterns.computeIfAbsent(words.substring(5, words.length() - 1), this::pattern);
        }
        Color colour = Color.web(words);
        return share < 1 ? colour.deriveColor(0, 1, 1, share) : colour;
    }

    private Paint pattern(String id) {
        Element element = defined.get(id);
        if (element == null) {
            return Color.TRANSPARENT;
        }
        double w = number(element, "width", 8);
        double h = number(element, "height", 8);
        Canvas tile = new Canvas(w, h);
        inside(tile.getGraphicsContext2D(), element, new Ink("#000000", "none", 1, 1, 1, 12, "normal", "normal"));
        SnapshotParameters clear = new SnapshotParameters();
        clear.setFill(Color.TRANSPARENT);
        return new ImagePattern(tile.snapshot(clear, null), 0, 0, w, h, false);
    }

    private void clip(GraphicsContext g, Element e) {
        String reference = e.getAttribute("clip-path");
        Element shape = reference.startsWith("url(#")
                ? defined.get(reference.substring(5, reference.length() - 1)) : null;
        if (shape == null) {
            return;
        }
        g.beginPath();
        for (Node child = shape.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner && "rect".equals(inner.getTagName())) {
                g.rect(number(inner, "x", 0), number(inner, "y", 0), number(inner, "width", 0),
                        number(inner, "height", 0));
            } else if (child instanceof Element inner && "path".equals(inner.getTagName())) {
                g.appendSVGPath(inner.getAttribute("d"));
            }
        }
        g.clip();
    }

    private static void transform(GraphicsContext g, Element e) {
        String words = e.getAttribute("transform").strip();
        if (words.startsWith("rotate(")) {
            double[] v = numbers(words);
            double x = v.length > 2 ? v[1] : 0;
            double y = v.length > 2 ? v[2] : 0;
            g.translate(x, y);
            g.rotate(v[0]);
            g.translate(-x, -y);
        } else if (words.startsWith("translate(")) {
            double[] v = numbers(words);
            g.translate(v[0], v.length > 1 ? v[1] : 0);
        }
    }

    private static double[] numbers(String words) {
        String[] parts = words.substring(words.indexOf('(') + 1, words.indexOf(')')).trim().split("[ ,]+");
        double[] values = new double[parts.length];
        for (int i = 0; i < parts.length; i++) {
            values[i] = Double.parseDouble(parts[i]);
        }
        return values;
    }

    private static void dashes(GraphicsContext g, Element e) {
        String words = e.getAttribute("stroke-dasharray");
        if (!words.isBlank() && !"none".equals(words)) {
            g.setLineDashes(numbers("(" + words + ")"));
        }
    }

    private void words(GraphicsContext g, Element e, Ink ink) {
        g.setFont(Font.font("SansSerif", "bold".equals(ink.weight) ? FontWeight.BOLD : FontWeight.NORMAL,
                "italic".equals(ink.posture) ? FontPosture.ITALIC : FontPosture.REGULAR, ink.size));
        g.setTextBaseline(VPos.BASELINE);
        g.setTextAlign(switch (e.getAttribute("text-anchor")) {
            case "middle" -> TextAlignment.CENTER;
            case "end" -> TextAlignment.RIGHT;
            default -> TextAlignment.LEFT;
        });
        double x = number(e, "x", 0);
        double y = number(e, "y", 0);
        if (!"none".equals(ink.stroke)) {
            g.setStroke(paint(ink.stroke, ink.strokeShare));
            g.setLineWidth(ink.width);
            g.setLineJoin(StrokeLineJoin.ROUND);
            g.strokeText(e.getTextContent(), x, y);
        }
        if (!"none".equals(ink.fill)) {
            g.setFill(paint(ink.fill, ink.fillShare));
            g.fillText(e.getTextContent(), x, y);
        }
    }

    private static void picture(GraphicsContext g, Element e) {
        String data = text(e, "href", e.getAttribute("xlink:href"));
        int comma = data.indexOf("base64,");
        if (comma > 0) {
            Image image = new Image(new ByteArrayInputStream(Base64.getDecoder().decode(data.substring(comma + 7))));
            g.drawImage(image, number(e, "x", 0), number(e, "y", 0), number(e, "width", image.getWidth()),
                    number(e, "height", image.getHeight()));
        }
    }

    private static String text(Element e, String name, String otherwise) {
        return e.hasAttribute(name) ? e.getAttribute(name) : otherwise;
    }

    private static double number(Element e, String name, double otherwise) {
        try {
            return e.hasAttribute(name) ? Double.parseDouble(e.getAttribute(name).replace("px", "")) : otherwise;
        } catch (NumberFormatException notANumber) {
            return otherwise;
        }
    }
}
