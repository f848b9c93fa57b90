// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import java.util.Base64;
import java.util.List;
import java.util.Optional;

/**
 * One thing on a drawing; a drawing is a list of them, which every way of showing it draws in turn. Places and lengths
 * are in pixels from the upper left corner, x to the right and y down.
 */
public sealed interface Figure {
    /**
     * How it is drawn.
     *
     * @return the style
     */
    Style style();

    /**
     * A rectangle.
     *
     * @param corner upper left corner (px)
     * @param size   width and height (px)
     * @param style  how it is drawn
     */
    record Box(Dot corner, Dot size, Style style) implements Figure {
    }

    /**
     * A straight line.
     *
     * @param from  start (px)
     * @param to    end (px)
     * @param style how it is drawn
     */
    record Line(Dot from, Dot to, Style style) implements Figure {
    }

    /**
     * Straight pieces from dot to dot.
     *
     * @param runs     the dots (px) of each unbroken run
     * @param isClosed whether the last run ends where it began
     * @param style    how it is drawn
     */
    record Path(List<List<Dot>> runs, boolean isClosed, Style style) implements Figure {
        /** Copies the list. */
        public Path {
            runs = List.copyOf(runs);
        }
    }

    /**
     * A circle.
     *
     * @param middle its middle (px)
     * @param radius its radius (px)
     * @param style  how it is drawn
     */
    record Circle(Dot middle, double radius, Style style) implements Figure {
    }

    /**
     * Words.
     *
     * @param at    where their base line starts, or is anchored (px)
     * @param text  the words
     * @param style how they are drawn
     */
    record Words(Dot at, String text, Style style) implements Figure {
    }

    /**
     * A picture of dots.
     *
     * @param corner  upper left corner (px)
     * @param size    width and height (px)
     * @param address the picture as {@link Picture} made it
     * @param style   how it is drawn
     */
    record Image(Dot corner, Dot size, String address, Style style) implements Figure {
        /**
         * The picture as a file.
         *
         * @return the bytes of a PNG file
         */
        public byte[] png() {
            return Base64.getDecoder().decode(address.substring(address.indexOf(',') + 1));
        }
    }

    /**
     * Figures that share a style.
     *
     * @param figures the figures
     * @param tip     words shown where the pointer rests
     * @param style   what they share
     */
    record Group(List<Figure> figures, Optional<String> tip, Style style) implements Figure {
        /** Copies the list. */
        public Group {
            figures = List.copyOf(figures);
        }
    }

    /**
     * A window that groups name as what they are seen through; draws nothing by itself.
     *
     * @param id     its id
     * @param corner upper left corner (px)
     * @param size   width and height (px)
     */
    record Window(String id, Dot corner, Dot size) implements Figure {
        @Override
        public Style style() {
            return Style.of();
        }
    }

    /**
     * A hatching that figures name as their fill; draws nothing by itself.
     *
     * @param id      its id
     * @param pattern what it looks like
     * @param line    colour of the lines, as {@code #rrggbb}
     * @param ground  colour between them, as {@code #rrggbb}, or {@code none}
     */
    record Hatching(String id, Patterns pattern, String line, String ground) implements Figure {
        @Override
        public Style style() {
            return Style.of();
        }
    }
}
