// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.util.List;

/**
 * How a curve is drawn: a colour that people with any colour sight can tell from the others, and a dash and a marker
 * that tell it apart in black and white.
 *
 * @param colour colour, as {@code #rrggbb}
 * @param dash   dash pattern (px), empty for a full line
 * @param width  line width (px)
 * @param marker marker set at the curve's points
 * @see "Okabe and Ito (2008), Color universal design: the eight colours; common practice"
 */
public record Ink(String colour, String dash, double width, Marker marker) {
    /** Black. */
    public static final String BLACK = "#000000";
    /** Orange. */
    public static final String ORANGE = "#e69f00";
    /** Sky blue. */
    public static final String SKY = "#56b4e9";
    /** Bluish green. */
    public static final String GREEN = "#009e73";
    /** Yellow. */
    public static final String YELLOW = "#f0e442";
    /** Blue. */
    public static final String BLUE = "#0072b2";
    /** Vermilion. */
    public static final String RED = "#d55e00";
    /** Reddish purple. */
    public static final String PURPLE = "#cc79a7";
    /** Brown of soil. */
    public static final String BROWN = "#7a4a00";
    /** Grey of grid lines. */
    public static final String GREY = "#d0d0d0";
    /** Grey of small words. */
    public static final String DARK_GREY = "#444444";

    private static final List<Ink> CURVES = List.of(
            new Ink(BLUE, "", 2.4, Marker.NONE), new Ink(RED, "8 4", 2.2, Marker.NONE),
            new Ink(GREEN, "2 3", 2.6, Marker.NONE), new Ink(BLACK, "10 3 2 3", 1.8, Marker.NONE),
            new Ink(PURPLE, "", 1.6, Marker.CIRCLE), new Ink(ORANGE, "8 4", 1.8, Marker.SQUARE),
            new Ink(SKY, "", 1.8, Marker.TRIANGLE), new Ink(DARK_GREY, "3 3", 1.4, Marker.CROSS));

    /** Markers at a curve's points. */
    public enum Marker {
        /** No marker. */
        NONE,
        /** A ring. */
        CIRCLE,
        /** A square. */
        SQUARE,
        /** A triangle. */
        TRIANGLE,
        /** A cross. */
        CROSS
    }

    /**
     * The ink of a curve by its number; eight differ in colour, dash and marker, then they come again.
     *
     * @param number number of the curve (1), zero or more
     * @return the ink
     */
    public static Ink of(int number) {
        return CURVES.get(Math.floorMod(number, CURVES.size()));
    }

    /**
     * This ink with another marker.
     *
     * @param other the marker
     * @return the changed copy
     */
    public Ink withMarker(Marker other) {
        return new Ink(colour, dash, width, other);
    }

    /**
     * Ink of single points that no line joins.
     *
     * @param colour colour, as {@code #rrggbb}
     * @param marker marker set at every point
     * @return the ink
     */
    public static Ink scattered(String colour, Marker marker) {
        return new Ink(colour, "", 0, marker);
    }

    /**
     * Whether the points stand alone.
     *
     * @return true where no line joins them
     */
    public boolean isScattered() {
        return width == 0;
    }

    /**
     * The attributes that stroke a line with this ink.
     *
     * @return names and values in turn
     */
    public String[] stroke() {
        return new String[] {"fill", "none", "stroke", colour, "stroke-width", Svg.number(width), "stroke-dasharray",
            dash.isEmpty() ? "none" : dash, "stroke-linejoin", "round"};
    }

    /**
     * Sets this ink's marker on paper.
     *
     * @param svg the picture
     * @param at  where (px)
     */
    public void mark(Svg svg, Dot at) {
        double r = 3.5;
        String[] look = {"fill", "#ffffff", "stroke", colour, "stroke-width", "1.5"};
        switch (marker) {
            case CIRCLE -> svg.circle(at, r, look);
            case SQUARE -> svg.box(new Dot(at.x() - r, at.y() - r), new Dot(2 * r, 2 * r), look);
            case TRIANGLE -> svg.outline(List.of(new Dot(at.x(), at.y() - r - 1), new Dot(at.x() + r + 1, at.y() + r),
                    new Dot(at.x() - r - 1, at.y() + r)), look);
            case CROSS -> {
                svg.line(new Dot(at.x() - r, at.y() - r), new Dot(at.x() + r, at.y() + r), look);
                svg.line(new Dot(at.x() - r, at.y() + r), new Dot(at.x() + r, at.y() - r), look);
            }
            default -> {
            }
        }
    }
}
