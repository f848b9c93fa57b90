// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

/**
 * How a layer is to look in a program that shows it.
 *
 * @param colour colour of lines and marks, as {@code #rrggbb}
 * @param width  width of lines (px)
 * @param dash   lengths of dashes and gaps in turn (px), blanks between; empty for an unbroken line
 * @param fill   filling of areas
 */
public record LayerLook(String colour, double width, String dash, Fill fill) {
    /** A layer that nothing is said of. */
    static final LayerLook PLAIN = new LayerLook("#444444", 1, "", Fill.NONE);

    /** Fillings that can be told apart in black and white; each with its word in the styles of a reader. */
    public enum Fill {
        /** None. */
        NONE("no"),
        /** White, half seen through. */
        WHITE("solid"),
        /** Lines rising to the right. */
        RISING("b_diagonal"),
        /** Lines falling to the right. */
        FALLING("f_diagonal"),
        /** Lines both ways. */
        CROSSED("diagonal_x"),
        /** Level lines. */
        LEVEL("horizontal"),
        /** Upright lines. */
        UPRIGHT("vertical"),
        /** Dots. */
        DOTTED("dense6");

        private final String brush;

        Fill(String brush) {
            this.brush = brush;
        }

        String brush() {
            return brush;
        }
    }
}
