// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import bermwright.foundation.Require;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Puts a drawing together, figure by figure.
 *
 * <p>Not shared between threads. Attributes are given as name, value, name, value. Ids inside the picture carry its
 * name, so that many pictures can stand in one page.
 */
public final class Svg {
    private static final double HEADING = 15;
    private final List<Figure> figures = new ArrayList<>();
    private final Deque<Opened> open = new ArrayDeque<>();
    private final String name;

    /** A group that is not closed yet. */
    private record Opened(List<Figure> figures, Optional<String> tip, Style style) {
    }

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
     * Opens a group.
     *
     * @param style names and values in turn, of what is inside
     * @return this
     */
    public Svg open(String... style) {
        open.push(new Opened(new ArrayList<>(), Optional.empty(), Style.of(style)));
        return this;
    }

    /**
     * Opens a group with a title, shown by a browser where the pointer rests.
     *
     * @param words the title
     * @return this
     */
    public Svg openTitled(String words) {
        open.push(new Opened(new ArrayList<>(), Optional.of(words), Style.of()));
        return this;
    }

    /**
     * Opens a group of which only what lies inside a window is seen.
     *
     * @param part short name of the window
     * @return this
     */
    public Svg openInside(String part) {
        return open("clip-path", reference(part));
    }

    /**
     * Closes the group opened last.
     *
     * @return this
     */
    public Svg close() {
        Opened group = open.pop();
        return add(new Figure.Group(group.figures, group.tip, group.style));
    }

    private Svg add(Figure figure) {
        (open.isEmpty() ? figures : open.peek().figures).add(figure);
        return this;
    }

    /**
     * A window through which groups are seen.
     *
     * @param part   short name to refer to it by
     * @param corner upper left corner (px)
     * @param size   width and height (px)
     * @return this
     */
    public Svg window(String part, Dot corner, Dot size) {
        return add(new Figure.Window(id(part), corner, size));
    }

    Svg hatching(String part, Patterns pattern, String line, String ground) {
        return add(new Figure.Hatching(id(part), pattern, line, ground));
    }

    /**
     * A picture of dots.
     *
     * @param corner     upper left corner (px)
     * @param size       width and height (px)
     * @param address    the picture as {@link Picture} made it
     * @param attributes names and values in turn
     * @return this
     */
    public Svg image(Dot corner, Dot size, String address, String... attributes) {
        return add(new Figure.Image(corner, size, address, Style.of(attributes)));
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
        return add(new Figure.Words(at, words, Style.of(attributes)));
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
     * A straight line.
     *
     * @param from       start (px)
     * @param to         end (px)
     * @param attributes names and values in turn
     * @return this
     */
    public Svg line(Dot from, Dot to, String... attributes) {
        return add(new Figure.Line(from, to, Style.of(attributes)));
    }

    /**
     * A curve through dots, broken where a dot is not known; nothing where fewer than two are known.
     *
     * @param dots       the dots (px)
     * @param attributes names and values in turn
     * @return this
     */
    public Svg curve(List<Dot> dots, String... attributes) {
        List<List<Dot>> runs = runs(dots);
        return runs.isEmpty() ? this : add(new Figure.Path(runs, false, Style.of(attributes)));
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
        return known.size() < 3 ? this : add(new Figure.Path(List.of(known), true, Style.of(attributes)));
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
        return add(new Figure.Box(corner, size, Style.of(attributes)));
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
        return add(new Figure.Circle(middle, radius, Style.of(attributes)));
    }

    /**
     * The picture as a drawing.
     *
     * @param title  title for people
     * @param size   width and height (px)
     * @return the drawing
     */
    public Drawing drawing(String title, Dot size) {
        Require.that(open.isEmpty(), "%s groups are still open.", open.size());
        return new Drawing(name, title, new Dot(Math.round(size.x()), Math.round(size.y())), figures);
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

    /** The dots of each run of two or more that are known. */
    private static List<List<Dot>> runs(List<Dot> dots) {
        List<List<Dot>> runs = new ArrayList<>();
        int from = 0;
        for (int i = 0; i <= dots.size(); i++) {
            if (i == dots.size() || !dots.get(i).isKnown()) {
                if (i - from > 1) {
                    runs.add(List.copyOf(dots.subList(from, i)));
                }
                from = i + 1;
            }
        }
        return runs;
    }
}
