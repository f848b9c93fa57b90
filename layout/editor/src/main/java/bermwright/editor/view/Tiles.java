// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Patterns;
import java.util.List;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.ImagePattern;
import javafx.scene.paint.Paint;

/** Paints the hatchings of drawings and maps; needs no screen thread. */
final class Tiles {
    private static final int SIDE = (int) Patterns.SIDE;
    private static final int STEPS = 4 * SIDE;

    private Tiles() {
    }

    /** A hatching in its colour on a ground. */
    static Paint of(Patterns pattern, Color line, Color ground) {
        WritableImage image = new WritableImage(SIDE, SIDE);
        for (int y = 0; y < SIDE; y++) {
            for (int x = 0; x < SIDE; x++) {
                image.getPixelWriter().setColor(x, y, ground);
            }
        }
        for (List<Dot> stroke : pattern.strokes()) {
            for (int i = 0; i <= STEPS; i++) {
                double share = (double) i / STEPS;
                int x = (int) Math.floor(stroke.get(0).x() + share * (stroke.get(1).x() - stroke.get(0).x()));
                int y = (int) Math.floor(stroke.get(0).y() + share * (stroke.get(1).y() - stroke.get(0).y()));
                if (x >= 0 && y >= 0 && x < SIDE && y < SIDE) {
                    image.getPixelWriter().setColor(x, y, line);
                }
            }
        }
        return new ImagePattern(image, 0, 0, SIDE, SIDE, false);
    }
}
