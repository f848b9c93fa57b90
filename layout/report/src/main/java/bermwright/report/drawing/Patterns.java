// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

/** Fills that can be told apart in black and white: hatchings, dots and crosses. */
public enum Patterns {
    /** Lines rising to the right. */
    RISING("M-2 2 L2 -2 M0 8 L8 0 M6 10 L10 6"),
    /** Lines falling to the right. */
    FALLING("M-2 6 L2 10 M0 0 L8 8 M6 -2 L10 2"),
    /** Lines both ways. */
    CROSSED("M0 0 L8 8 M8 0 L0 8"),
    /** Level lines. */
    LEVEL("M0 2 L8 2 M0 6 L8 6"),
    /** Upright lines. */
    UPRIGHT("M2 0 L2 8 M6 0 L6 8"),
    /** Dots. */
    DOTTED("M1 1.5 L2 1.5 M5 5.5 L6 5.5");

    private final String path;

    Patterns(String path) {
        this.path = path;
    }

    /**
     * Defines this pattern in a picture.
     *
     * @param svg    the picture
     * @param part   short name to refer to it by
     * @param line   colour of the lines, as {@code #rrggbb}
     * @param ground colour between them, as {@code #rrggbb}, or {@code none}
     * @return the reference for a fill
     */
    public String define(Svg svg, String part, String line, String ground) {
        svg.open("defs").open("pattern", "id", svg.id(part), "width", "8", "height", "8", "patternUnits",
                "userSpaceOnUse");
        if (!"none".equals(ground)) {
            svg.box(new Dot(0, 0), new Dot(8, 8), "fill", ground);
        }
        svg.element("path", "d", path, "fill", "none", "stroke", line, "stroke-width", this == DOTTED ? "1.2" : "1");
        svg.close().close();
        return svg.reference(part);
    }
}
