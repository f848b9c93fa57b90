// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.util.function.ToDoubleFunction;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;

/** A picture that fills its room, is painted anew when that or the window's dress changes, and has the map's ground. */
abstract class PaintedRegion extends Region {
    private final Canvas canvas = new Canvas();
    private final ToDoubleFunction<Dress> height;
    private Dress dress;

    /**
     * A picture that was not painted yet.
     *
     * @param dress  how the window is dressed
     * @param least  its least height (pixels)
     * @param height the height it would have in a dress (pixels)
     */
    PaintedRegion(Dress dress, double least, ToDoubleFunction<Dress> height) {
        this.dress = dress;
        this.height = height;
        getChildren().add(canvas);
        setMinHeight(least);
        setPrefHeight(height.applyAsDouble(dress));
    }

    final Dress dress() {
        return dress;
    }

    /** Dresses the picture for another window. */
    void dress(Dress changed) {
        dress = changed;
        setPrefHeight(height.applyAsDouble(dress));
        paint();
    }

    @Override
    protected final void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        paint();
    }

    /** Width of what is painted (pixels). */
    final double wide() {
        return canvas.getWidth();
    }

    /** Height of what is painted (pixels). */
    final double high() {
        return canvas.getHeight();
    }

    /** Paints the picture anew. */
    final void paint() {
        GraphicsContext g = canvas.getGraphicsContext2D();
        MapColours colours = MapColours.of(dress.isDark());
        g.setFill(colours.ground());
        g.fillRect(0, 0, wide(), high());
        paint(g, colours);
    }

    /** Paints the picture on its ground. */
    abstract void paint(GraphicsContext g, MapColours colours);

    /** The next of 1, 2, 5 and their tens from a step of a scale on. */
    static double step(double least) {
        double ten = Math.pow(10, Math.floor(Math.log10(Math.max(least, 1e-9))));
        return least <= ten ? ten : least <= 2 * ten ? 2 * ten : least <= 5 * ten ? 5 * ten : 10 * ten;
    }
}
