// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.report.drawing.Drawing;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.paint.Color;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.Window;

/** A drawing in a window of its own, as large as the window is wide; Escape closes it. */
final class LargeDrawing {
    private static final double SHARE = 0.94;
    private static final double LARGEST = 1.6;

    private LargeDrawing() {
    }

    static void show(Window owner, DrawingView.Prepared content) {
        Drawing drawing = content.drawing().orElseThrow();
        DrawingView view = new DrawingView();
        view.show(content);
        ScrollPane scroll = new ScrollPane(view);
        scroll.setFitToWidth(true);
        Dialogs.dress(scroll, owner.getScene());
        Rectangle2D screen = Screen.getScreensForRectangle(owner.getX(), owner.getY(), owner.getWidth(),
                owner.getHeight()).stream().findFirst().orElse(Screen.getPrimary()).getVisualBounds();
        double scale = Math.min(LARGEST, Math.min(SHARE * screen.getWidth() / drawing.size().x(),
                SHARE * screen.getHeight() / drawing.size().y()));
        Stage stage = new Stage();
        stage.initOwner(owner);
        stage.setTitle(drawing.title());
        stage.setScene(new Scene(scroll, scale * drawing.size().x() + 4, scale * drawing.size().y() + 4, Color.WHITE));
        Dialogs.closeOnEscape(stage);
        stage.show();
    }
}
