// SPDX-License-Identifier: Apache-2.0
package bermwright.report.drawing;

import bermwright.foundation.Require;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.function.IntBinaryOperator;
import javax.imageio.ImageIO;

/** A picture of dots put into a drawing as embedded PNG. */
public final class Picture {
    /** The colour of a dot where nothing is painted. */
    public static final int CLEAR = 0;
    private static final int GREATEST = 4000;

    private Picture() {
    }

    /**
     * Paints a picture.
     *
     * @param columns dots across (1), 1 to 4000
     * @param rows    dots down (1), 1 to 4000
     * @param colour  the colour at column and row as alpha, red, green, blue, a byte each; row 0 is the uppermost
     * @return the picture as a {@code data:} address
     */
    public static String address(int columns, int rows, IntBinaryOperator colour) {
        Require.within("picture columns", columns, 1, GREATEST, "1");
        Require.within("picture rows", rows, 1, GREATEST, "1");
        BufferedImage image = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_ARGB);
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                image.setRGB(column, row, colour.applyAsInt(column, row));
            }
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, "png", bytes);
        } catch (IOException e) {
            throw new UncheckedIOException("a picture of " + columns + " x " + rows + " could not be made", e);
        }
        return "data:image/png;base64," + Base64.getEncoder().encodeToString(bytes.toByteArray());
    }

    /**
     * A grey.
     *
     * @param light how light (1), 0 to 1
     * @return the opaque colour
     */
    public static int grey(double light) {
        int g = (int) Math.round(255 * Math.max(0, Math.min(1, light)));
        return 0xFF000000 | g << 16 | g << 8 | g;
    }
}
