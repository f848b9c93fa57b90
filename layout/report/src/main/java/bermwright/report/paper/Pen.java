// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import bermwright.foundation.Require;
import java.util.List;

/**
 * How a line is drawn: black, or a grey that still shows on a copy.
 *
 * @param width width on paper (mm), positive
 * @param grey  0 black to 1 white (1)
 * @param dash  lengths of dashes and gaps in turn (mm); empty for a full line
 */
public record Pen(double width, double grey, List<Double> dash) {
    /** Outlines of what is cut or built. */
    public static final Pen THICK = new Pen(0.7, 0, List.of());
    /** Outlines of what is seen. */
    public static final Pen MEDIUM = new Pen(0.35, 0, List.of());
    /** Dimensions, leaders, hatches. */
    public static final Pen THIN = new Pen(0.18, 0, List.of());
    /** The grid of coordinates. */
    public static final Pen FAINT = new Pen(0.13, 0.6, List.of());

    /** Refuses a pen without width. */
    public Pen {
        Require.positive("width of a pen", width, "mm");
        Require.within("grey of a pen", grey, 0, 1, "1");
        dash = List.copyOf(dash);
    }

    /**
     * The same pen with dashes.
     *
     * @param lengths lengths of dashes and gaps in turn (mm)
     * @return the pen
     */
    public Pen dashed(Double... lengths) {
        return new Pen(width, grey, List.of(lengths));
    }

    /**
     * The same pen in another grey.
     *
     * @param other 0 black to 1 white (1)
     * @return the pen
     */
    public Pen grey(double other) {
        return new Pen(width, other, dash);
    }
}
