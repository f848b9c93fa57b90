// SPDX-License-Identifier: Apache-2.0
package bermwright.report.paper;

import bermwright.report.drawing.Dot;
import java.util.List;
import java.util.Optional;

/** Something drawn on a sheet of paper, in millimetres. */
public sealed interface Mark {
    /** Where words stand about their place. */
    enum Align {
        /** They begin there. */
        LEFT,
        /** Their middle is there. */
        MIDDLE,
        /** They end there. */
        RIGHT
    }

    /**
     * A line or an outline.
     *
     * @param points its corners (mm), two or more
     * @param closed whether it runs back to its first corner
     * @param pen    how its line is drawn; empty for none
     * @param fill   grey of its inside (1), 0 black to 1 white; empty for none
     * @param name   what it shows, for those who look for it in the file; empty for nothing in particular
     */
    record Path(List<Dot> points, boolean closed, Optional<Pen> pen, Optional<Double> fill, String name)
            implements Mark {
        /** Copies the corners. */
        public Path {
            points = List.copyOf(points);
        }
    }

    /**
     * Words on one line.
     *
     * @param at      place on the foot line (mm)
     * @param words   the words
     * @param capital height of a capital letter (mm)
     * @param turn    how far they are turned against the clock (rad)
     * @param align   where they stand about the place
     */
    record Words(Dot at, String words, double capital, double turn, Align align) implements Mark {
        /**
         * The room they take.
         *
         * @return from the foot line to the capitals' height, and a little more around
         */
        public Patch patch() {
            double width = Lettering.width(words, capital);
            double shift = align == Align.LEFT ? width / 2 : align == Align.RIGHT ? -width / 2 : 0;
            double cos = Math.cos(turn);
            double sin = Math.sin(turn);
            Dot middle = new Dot(at.x() + shift * cos - capital / 2 * sin, at.y() - shift * sin - capital / 2 * cos);
            return new Patch(middle,
                    width / 2 + 0.15 * capital, 0.72 * capital, turn);
        }
    }
}
