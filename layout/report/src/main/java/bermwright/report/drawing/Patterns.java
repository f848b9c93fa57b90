// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.util.ArrayList;
import java.util.List;

/** Fills that can be told apart in black and white: hatchings, dots and crosses. */
public enum Patterns {
    /** Lines rising to the right. */
    RISING(-2, 2, 2, -2, 0, 8, 8, 0, 6, 10, 10, 6),
    /** Lines falling to the right. */
    FALLING(-2, 6, 2, 10, 0, 0, 8, 8, 6, -2, 10, 2),
    /** Lines both ways. */
    CROSSED(0, 0, 8, 8, 8, 0, 0, 8),
    /** Level lines. */
    LEVEL(0, 2, 8, 2, 0, 6, 8, 6),
    /** Upright lines. */
    UPRIGHT(2, 0, 2, 8, 6, 0, 6, 8),
    /** Dots. */
    DOTTED(1, 1.5, 2, 1.5, 5, 5.5, 6, 5.5);

    /** Side of the square that comes again and again (px). */
    public static final double SIDE = 8;

    private final List<List<Dot>> strokes = new ArrayList<>();

    Patterns(double... ends) {
        for (int i = 0; i < ends.length; i += 4) {
            strokes.add(List.of(new Dot(ends[i], ends[i + 1]), new Dot(ends[i + 2], ends[i + 3])));
        }
    }

    /**
     * The lines in one square.
     *
     * @return both ends (px) of each line
     */
    public List<List<Dot>> strokes() {
        return List.copyOf(strokes);
    }

    /**
     * Width of the lines.
     *
     * @return the width (px)
     */
    public double width() {
        return this == DOTTED ? 1.2 : 1;
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
        svg.hatching(part, this, line, ground);
        return svg.reference(part);
    }
}
