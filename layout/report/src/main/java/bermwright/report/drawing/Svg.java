// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import bermwright.foundation.Require;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Locale;

/**
 * Builds one SVG picture; every text and attribute is escaped here.
 *
 * <p>Not shared between threads. Attributes are given as name, value, name, value. Ids inside the picture carry its
 * name, so that many pictures can stand in one page.
 */
public final class Svg {
    private static final String FONT = "Liberation Sans, Arial, Helvetica, DejaVu Sans, sans-serif";
    private static final double HEADING = 15;
    private final StringBuilder body = new StringBuilder();
    private final Deque<String> open = new ArrayDeque<>();
    private final String name;

    /**
     * An empty picture.
     *
     * @param name file-safe name that makes the ids in it unique
     */
    public Svg(String name) {
        Require.that(name.matches("[A-Za-z0-9_-]+"), "drawing name is %s; accepted: letters, digits, - and _", name);
        this.name = name;
    }

    /**
     * An id that is unique to this picture.
     *
     * @param part short name
     * @return the id
     */
    public String id(String part) {
        return name + "-" + part;
    }

    /**
     * A reference to something defined in this picture, for a fill or clip.
     *
     * @param part short name
     * @return the reference
     */
    public String reference(String part) {
        return "url(#" + id(part) + ")";
    }

    /**
     * Opens an element that holds others.
     *
     * @param element    its name
     * @param attributes names and values in turn
     * @return this
     */
    public Svg open(String element, String... attributes) {
        start(element, attributes);
        body.append(">\n");
        open.push(element);
        return this;
    }

    /**
     * Closes the element opened last.
     *
     * @return this
     */
    public Svg close() {
        body.append("</").append(open.pop()).append(">\n");
        return this;
    }

    /**
     * An element that holds nothing.
     *
     * @param element    its name
     * @param attributes names and values in turn
     * @return this
     */
    public Svg element(String element, String... attributes) {
        start(element, attributes);
        body.append("/>\n");
        return this;
    }

    /**
     * Words on the paper.
     *
     * @param at         where their base line starts, or is anchored (px)
     * @param words      the words
     * @param attributes names and values in turn
     * @return this
     */
    public Svg text(Dot at, String words, String... attributes) {
        start("text", "x", number(at.x()), "y", number(at.y()));
        attributes(attributes);
        body.append('>').append(escaped(words)).append("</text>\n");
        return this;
    }

    /**
     * The heading of a drawing, cut where it is longer than its room; the drawing's title holds all of it.
     *
     * @param at    where its base line starts (px)
     * @param words the words
     * @param room  how wide it may be (px)
     * @return this
     */
    public Svg heading(Dot at, String words, double room) {
        return text(at, cut(words, HEADING, room), "font-size", number(HEADING), "font-weight", "bold");
    }

    /**
     * Words that fit into a room.
     *
     * @param words the words
     * @param size  font size (px)
     * @param room  the room (px)
     * @return the words, their end replaced by dots where they do not fit
     */
    public static String cut(String words, double size, double room) {
        if (width(words, size) <= room) {
            return words;
        }
        int end = words.length();
        while (end > 0 && width(words.substring(0, end) + "…", size) > room) {
            end -= Character.isLowSurrogate(words.charAt(end - 1)) ? 2 : 1;
        }
        return words.substring(0, Math.max(0, end)).stripTrailing() + "…";
    }

    /**
     * A title, shown by a browser where the pointer rests.
     *
     * @param words the words
     * @return this
     */
    public Svg tip(String words) {
        body.append("<title>").append(escaped(words)).append("</title>\n");
        return this;
    }

    /**
     * A straight line.
     *
     * @param from       start (px)
     * @param to         end (px)
     * @param attributes names and values in turn
     * @return this
     */
    public Svg line(Dot from, Dot to, String... attributes) {
        start("line", "x1", number(from.x()), "y1", number(from.y()), "x2", number(to.x()), "y2", number(to.y()));
        attributes(attributes);
        body.append("/>\n");
        return this;
    }

    /**
     * A curve through dots, broken where a dot is not known; nothing where fewer than two are known.
     *
     * @param dots       the dots (px)
     * @param attributes names and values in turn
     * @return this
     */
    public Svg curve(List<Dot> dots, String... attributes) {
        String path = path(dots, false);
        return path.isEmpty() ? this : element("path", with(attributes, "d", path));
    }

    /**
     * A closed outline; nothing where fewer than three dots are known.
     *
     * @param dots       the corners (px)
     * @param attributes names and values in turn
     * @return this
     */
    public Svg outline(List<Dot> dots, String... attributes) {
        List<Dot> known = dots.stream().filter(Dot::isKnown).toList();
        return known.size() < 3 ? this : element("path", with(attributes, "d", path(known, true)));
    }

    /**
     * A rectangle.
     *
     * @param corner     upper left corner (px)
     * @param size       width and height (px)
     * @param attributes names and values in turn
     * @return this
     */
    public Svg box(Dot corner, Dot size, String... attributes) {
        start("rect", "x", number(corner.x()), "y", number(corner.y()), "width", number(Math.max(0, size.x())),
                "height", number(Math.max(0, size.y())));
        attributes(attributes);
        body.append("/>\n");
        return this;
    }

    /**
     * A circle.
     *
     * @param middle     its middle (px)
     * @param radius     its radius (px)
     * @param attributes names and values in turn
     * @return this
     */
    public Svg circle(Dot middle, double radius, String... attributes) {
        start("circle", "cx", number(middle.x()), "cy", number(middle.y()), "r", number(radius));
        attributes(attributes);
        body.append("/>\n");
        return this;
    }

    /**
     * The picture as a drawing.
     *
     * @param title  title for people
     * @param size   width and height (px)
     * @return the drawing
     */
    public Drawing drawing(String title, Dot size) {
        Require.that(open.isEmpty(), "element %s is still open.", open.peek());
        long width = Math.round(size.x());
        long height = Math.round(size.y());
        String head = String.format(Locale.ROOT, "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\""
                + " height=\"%d\" viewBox=\"0 0 %d %d\"", width, height, width, height)
                + " role=\"img\" font-family=\"" + FONT + "\" font-size=\"12\" fill=\"#000000\">\n<title>"
                + escaped(title) + "</title>\n<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n";
        return new Drawing(name, title, new Dot(width, height), head + body + "</svg>\n");
    }

    /**
     * A number as SVG writes it, to a hundredth of a pixel.
     *
     * @param value the value, finite
     * @return the text
     */
    public static String number(double value) {
        Require.finite("number in a drawing", value, "px");
        String text = String.format(Locale.ROOT, "%.2f", value);
        text = text.endsWith("00") ? text.substring(0, text.length() - 3)
                : text.endsWith("0") ? text.substring(0, text.length() - 1) : text;
        return "-0".equals(text) ? "0" : text;
    }

    /**
     * Text made safe for elements and attributes; what XML cannot hold becomes a replacement mark.
     *
     * @param words any text
     * @return the escaped text
     */
    public static String escaped(String words) {
        StringBuilder safe = new StringBuilder(words.length() + 16);
        words.codePoints().forEach(c -> {
            switch (c) {
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '&' -> safe.append("&amp;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isXml(c) ? c : 0xFFFD);
            }
        });
        return safe.toString();
    }

    /**
     * The width of words as drawn, estimated; no font is measured, so that it is the same on every machine.
     *
     * @param words the words
     * @param size  font size (px)
     * @return the width (px)
     */
    public static double width(String words, double size) {
        double width = 0;
        for (int i = 0; i < words.length(); i++) {
            char c = words.charAt(i);
            width += "iljt.,:;|!'()[] ".indexOf(c) >= 0 ? 0.32 : Character.isUpperCase(c) || "mwMW%".indexOf(c) >= 0
                    ? 0.74 : 0.56;
        }
        return width * size;
    }

    private static boolean isXml(int c) {
        return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD
                || c >= 0x10000;
    }

    private static String path(List<Dot> dots, boolean closed) {
        StringBuilder path = new StringBuilder();
        for (int i = 0; i < dots.size(); i++) {
            Dot dot = dots.get(i);
            if (dot.isKnown()) {
                boolean starts = i == 0 || !dots.get(i - 1).isKnown();
                boolean alone = starts && (i == dots.size() - 1 || !dots.get(i + 1).isKnown());
                if (!alone) {
                    path.append(starts ? "M" : "L").append(number(dot.x())).append(' ').append(number(dot.y()));
                }
            }
        }
        return path.append(closed ? "Z" : "").toString();
    }

    private static String[] with(String[] attributes, String key, String value) {
        String[] all = Arrays.copyOf(attributes, attributes.length + 2);
        all[attributes.length] = key;
        all[attributes.length + 1] = value;
        return all;
    }

    private void start(String element, String... attributes) {
        body.append('<').append(element);
        attributes(attributes);
    }

    private void attributes(String... attributes) {
        for (int i = 0; i + 1 < attributes.length; i += 2) {
            body.append(' ').append(attributes[i]).append("=\"").append(escaped(attributes[i + 1])).append('"');
        }
    }
}
