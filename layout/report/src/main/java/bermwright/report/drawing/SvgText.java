// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.util.List;
import java.util.Locale;

/** Writes a drawing as SVG; every text and attribute is escaped here. */
final class SvgText {
    private static final String FONT = "Liberation Sans, Arial, Helvetica, DejaVu Sans, sans-serif";
    private final StringBuilder text = new StringBuilder();

    private SvgText() {
    }

    static String of(Drawing drawing) {
        SvgText svg = new SvgText();
        long width = Math.round(drawing.size().x());
        long height = Math.round(drawing.size().y());
        svg.text.append(String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\""
                + " height=\"%d\" viewBox=\"0 0 %d %d\"", width, height, width, height));
        svg.text.append(" role=\"img\" font-family=\"" + FONT + "\" font-size=\"12\" fill=\"#000000\">\n<title>")
                .append(Svg.escaped(drawing.title())).append("</title>\n")
                .append("<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n");
        drawing.figures().forEach(svg::write);
        return svg.text.append("</svg>\n").toString();
    }

    private void write(Figure figure) {
        if (figure instanceof Figure.Box box) {
            box(box.corner(), box.size(), box.style());
        } else if (figure instanceof Figure.Line line) {
            element("line", Style.of("x1", number(line.from().x()), "y1", number(line.from().y()), "x2",
                    number(line.to().x()), "y2", number(line.to().y())), line.style());
        } else if (figure instanceof Figure.Path path) {
            element("path", path.style(), Style.of("d", path(path)));
        } else if (figure instanceof Figure.Circle circle) {
            element("circle", Style.of("cx", number(circle.middle().x()), "cy", number(circle.middle().y()), "r",
                    number(circle.radius())), circle.style());
        } else if (figure instanceof Figure.Words words) {
            start("text", Style.of("x", number(words.at().x()), "y", number(words.at().y())), words.style());
            text.append('>').append(Svg.escaped(words.text())).append("</text>\n");
        } else if (figure instanceof Figure.Image image) {
            start("image", place(image.corner(), image.size()), image.style());
            attributes(Style.of("href", image.address()));
            text.append("/>\n");
        } else if (figure instanceof Figure.Group group) {
            start("g", group.style());
            text.append(">\n");
            group.tip().ifPresent(t -> text.append("<title>").append(Svg.escaped(t)).append("</title>\n"));
            group.figures().forEach(this::write);
            text.append("</g>\n");
        } else if (figure instanceof Figure.Window window) {
            define("clipPath", Style.of("id", window.id()), () -> box(window.corner(), window.size(), Style.of()));
        } else if (figure instanceof Figure.Hatching hatching) {
            hatching(hatching);
        } else {
            throw new AssertionError("a figure nobody writes: " + figure);
        }
    }

    private void hatching(Figure.Hatching hatching) {
        define("pattern", Style.of("id", hatching.id(), "width", "8", "height", "8", "patternUnits",
                "userSpaceOnUse"), () -> {
            if (!"none".equals(hatching.ground())) {
                box(new Dot(0, 0), new Dot(Patterns.SIDE, Patterns.SIDE), Style.of("fill", hatching.ground()));
            }
            StringBuilder path = new StringBuilder();
            for (List<Dot> stroke : hatching.pattern().strokes()) {
                path.append(path.isEmpty() ? "" : " ").append('M').append(dot(stroke.get(0))).append(" L")
                        .append(dot(stroke.get(1)));
            }
            element("path", Style.of("d", path.toString(), "fill", "none", "stroke", hatching.line(), "stroke-width",
                    number(hatching.pattern().width())));
        });
    }

    private void define(String element, Style style, Runnable inside) {
        text.append("<defs>\n");
        start(element, style);
        text.append(">\n");
        inside.run();
        text.append("</").append(element).append(">\n</defs>\n");
    }

    private void box(Dot corner, Dot size, Style style) {
        element("rect", place(corner, new Dot(Math.max(0, size.x()), Math.max(0, size.y()))), style);
    }

    private static Style place(Dot corner, Dot size) {
        return Style.of("x", number(corner.x()), "y", number(corner.y()), "width", number(size.x()), "height",
                number(size.y()));
    }

    private static String path(Figure.Path path) {
        StringBuilder text = new StringBuilder();
        for (List<Dot> run : path.runs()) {
            for (int i = 0; i < run.size(); i++) {
                text.append(i == 0 ? "M" : "L").append(dot(run.get(i)));
            }
        }
        return text.append(path.isClosed() ? "Z" : "").toString();
    }

    private static String dot(Dot dot) {
        return number(dot.x()) + " " + number(dot.y());
    }

    private static String number(double value) {
        return Svg.number(value);
    }

    private void element(String element, Style... styles) {
        start(element, styles);
        text.append("/>\n");
    }

    private void start(String element, Style... styles) {
        text.append('<').append(element);
        for (Style style : styles) {
            attributes(style);
        }
    }

    private void attributes(Style style) {
        for (int i = 0; i + 1 < style.words().size(); i += 2) {
            text.append(' ').append(style.words().get(i)).append("=\"").append(Svg.escaped(style.words().get(i + 1)))
                    .append('"');
        }
    }
}
