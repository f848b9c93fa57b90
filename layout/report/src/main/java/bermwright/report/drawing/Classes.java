// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Classes of a value, each with its colour; the colours grow darker in even steps, so the order shows in print too.
 *
 * @param bounds where one class ends and the next begins, in the value's unit, rising; one to seven
 * @param unit   the value's unit
 */
public record Classes(List<Double> bounds, String unit) {
    private static final int[] COLOURS = {0xFDF3C4, 0xF6D58B, 0xD9B87F, 0xA8A88E, 0x7492A3, 0x44749D, 0x1F5182,
            0x0B2C52};
    private static final int LAST = COLOURS.length - 1;

    /** Copies the bounds and refuses none, too many, or some out of order. */
    public Classes {
        bounds = List.copyOf(bounds);
        Require.within("number of bounds", bounds.size(), 1, LAST, "1");
        for (int i = 1; i < bounds.size(); i++) {
            Require.that(bounds.get(i) > bounds.get(i - 1), "bound %s comes after %s.", bounds.get(i),
                    bounds.get(i - 1));
        }
    }

    /**
     * The class of a value.
     *
     * @param value the value, in the unit of the bounds
     * @return number of the class (1), 0 for the lowest
     */
    public int of(double value) {
        int number = 0;
        while (number < bounds.size() && value >= bounds.get(number)) {
            number++;
        }
        return number;
    }

    /**
     * The colour of a class.
     *
     * @param number number of the class (1), 0 for the lowest
     * @return red, green, blue, a byte each
     */
    public int colour(int number) {
        return COLOURS[(int) Math.round((double) number * LAST / bounds.size())];
    }

    /**
     * The colour of a class as SVG writes it.
     *
     * @param number number of the class (1), 0 for the lowest
     * @return {@code #rrggbb}
     */
    public String hex(int number) {
        return String.format(Locale.ROOT, "#%06x", colour(number));
    }

    /**
     * Whether words on a class must be light to be read.
     *
     * @param number number of the class (1), 0 for the lowest
     * @return true on dark colours
     */
    public boolean isDark(int number) {
        return (double) number / bounds.size() > 0.5;
    }

    /**
     * The words of each class.
     *
     * @return the words, lowest first
     */
    public List<String> words() {
        List<String> words = new ArrayList<>();
        words.add("under " + Drawing.figure(bounds.get(0), 3));
        for (int i = 1; i < bounds.size(); i++) {
            words.add(Drawing.figure(bounds.get(i - 1), 3) + " to " + Drawing.figure(bounds.get(i), 3));
        }
        words.add(Drawing.figure(bounds.get(bounds.size() - 1), 3) + " and more");
        return words;
    }

    /**
     * The key in a row.
     *
     * @param svg  the picture
     * @param at   its upper left corner (px)
     * @param wide greatest width (px)
     * @return its lower end (px)
     */
    public double key(Svg svg, Dot at, double wide) {
        double x = at.x();
        double y = at.y();
        List<String> words = words();
        for (int i = 0; i < words.size(); i++) {
            String text = words.get(i) + (i == words.size() - 1 ? " " + unit : "");
            double width = 34 + Svg.width(text, 11) + 12;
            if (x > at.x() && x + width > at.x() + wide) {
                x = at.x();
                y += 20;
            }
            svg.box(new Dot(x, y), new Dot(26, 14), "fill", hex(i), "stroke", Ink.BLACK, "stroke-width", "0.7");
            svg.text(new Dot(x + 31, y + 11), text, "font-size", "11");
            x += width;
        }
        return y + 16;
    }
}
