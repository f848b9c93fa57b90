// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.report.drawing.Drawing;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;

/** Shows a drawing of the report as wide as there is room. */
final class DrawingView extends Region {
    private final Canvas canvas = new Canvas();
    private Optional<Drawing> drawing = Optional.empty();
    private Optional<DrawingPainter> painter = Optional.empty();
    private double paintedWidth;

    DrawingView() {
        getStyleClass().add("drawing");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().add(canvas);
    }

    void show(Optional<Drawing> shown) {
        if (!shown.equals(drawing)) {
            drawing = shown;
            painter = shown.map(DrawingPainter::new);
            setAccessibleText(shown.map(Drawing::title).orElse("no picture"));
            paintedWidth = 0;
            setVisible(shown.isPresent());
            setManaged(shown.isPresent());
            requestLayout();
        }
    }

    @Override
    protected double computePrefHeight(double width) {
        return drawing.map(d -> d.size().y() * (width > 0 ? width : getWidth()) / d.size().x()).orElse(0.0);
    }

    @Override
    public javafx.geometry.Orientation getContentBias() {
        return javafx.geometry.Orientation.HORIZONTAL;
    }

    @Override
    protected void layoutChildren() {
        if (drawing.isEmpty() || getWidth() < 1 || getWidth() == paintedWidth) {
            return;
        }
        paintedWidth = getWidth();
        double scale = getWidth() / drawing.get().size().x();
        canvas.setWidth(getWidth());
        canvas.setHeight(drawing.get().size().y() * scale);
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.save();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        g.scale(scale, scale);
        painter.ifPresent(p -> p.paint(g));
        g.restore();
    }
}
