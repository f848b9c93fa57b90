// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.report.drawing.Drawing;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.collections.WeakListChangeListener;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Tooltip;
import javafx.scene.effect.Blend;
import javafx.scene.effect.BlendMode;
import javafx.scene.effect.ColorAdjust;
import javafx.scene.effect.ColorInput;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/** Shows a drawing of the report as wide as there is room. */
final class DrawingView extends Region {
    private final Canvas canvas = new Canvas();
    private Prepared content = new Prepared(Optional.empty(), Optional.empty());
    private final ListChangeListener<String> changed = change -> dressUp();
    private final WeakListChangeListener<String> dressed = new WeakListChangeListener<>(changed);
    private double paintedWidth;

    DrawingView() {
        getStyleClass().add("drawing");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        getChildren().add(canvas);
        setFocusTraversable(true);
        sceneProperty().addListener((observed, before, now) -> {
            if (now != null) {
                now.getRoot().getStyleClass().addListener(dressed);
            }
            dressUp();
        });
        Tooltip.install(this, Hint.of("Click, or press Enter here, to see this drawing large."));
        setOnMouseClicked(event -> showLarge());
        setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                showLarge();
                event.consume();
            }
        });
    }

    /** In a dark window a drawing is as dark: light and dark change places, hues stay. */
    private void dressUp() {
        boolean isDark = getScene() != null && getScene().getRoot().getStyleClass().contains("dark");
        if (!isDark) {
            setEffect(null);
            return;
        }
        Blend light = new Blend(BlendMode.DIFFERENCE);
        light.setTopInput(new ColorInput(0, 0, getWidth(), getHeight(), Color.gray(0.93)));
        ColorAdjust hue = new ColorAdjust(1, 0, 0, 0);
        hue.setInput(light);
        setEffect(hue);
    }

    private void showLarge() {
        content.drawing.ifPresent(drawing -> LargeDrawing.show(getScene().getWindow(), content));
    }

    /** A drawing that was read off the screen thread. */
    record Prepared(Optional<Drawing> drawing, Optional<DrawingPainter> painter) {
    }

    /** Reads a drawing; the long part of showing it, to be done off the screen thread. */
    static Prepared prepared(Optional<Drawing> drawing) {
        return new Prepared(drawing, drawing.map(DrawingPainter::new));
    }

    void show(Prepared shown) {
        content = shown;
        setAccessibleText(shown.drawing.map(Drawing::title).orElse("no picture"));
        paintedWidth = 0;
        setVisible(shown.drawing.isPresent());
        setManaged(shown.drawing.isPresent());
        requestLayout();
    }

    @Override
    protected double computePrefHeight(double width) {
        return content.drawing.map(d -> d.size().y() * (width > 0 ? width : getWidth()) / d.size().x()).orElse(0.0);
    }

    @Override
    public javafx.geometry.Orientation getContentBias() {
        return javafx.geometry.Orientation.HORIZONTAL;
    }

    @Override
    protected void layoutChildren() {
        if (content.drawing.isEmpty() || getWidth() < 1 || getWidth() == paintedWidth) {
            return;
        }
        paintedWidth = getWidth();
        dressUp();
        double scale = getWidth() / content.drawing.get().size().x();
        canvas.setWidth(getWidth());
        canvas.setHeight(content.drawing.get().size().y() * scale);
        GraphicsContext g = canvas.getGraphicsContext2D();
        g.save();
        g.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        g.scale(scale, scale);
        content.painter.ifPresent(p -> p.paint(g));
        g.restore();
    }
}
