// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.window;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.TransferMode;
import javafx.stage.Stage;

/** A window of its own that holds a file to be dragged away, as a file list of the system does. */
final class DragSource {
    private static final double SIDE = 60;

    private final Stage stage;
    private final Label file;

    private DragSource(Stage stage, Label file) {
        this.stage = stage;
        this.file = file;
    }

    /** Opens the window at a place of the screen (pixels). */
    static DragSource open(Path held, double x, double y) {
        return Stagehand.onScreenThread(() -> {
            Label label = new Label("file");
            label.setMinSize(SIDE, SIDE);
            label.setOnDragDetected(event -> {
                ClipboardContent content = new ClipboardContent();
                content.putFiles(List.of(held.toFile()));
                label.startDragAndDrop(TransferMode.COPY).setContent(content);
                event.consume();
            });
            Stage stage = new Stage();
            stage.setX(x);
            stage.setY(y);
            stage.setScene(new Scene(label, SIDE, SIDE));
            stage.show();
            stage.toFront();
            return new DragSource(stage, label);
        });
    }

    /** The middle of the file on the screen. */
    Point2D middle() {
        return Stagehand.onScreenThread(() -> file.localToScreen(SIDE / 2, SIDE / 2));
    }

    void close() {
        Stagehand.onScreenThread(() -> {
            stage.close();
            return true;
        });
    }
}
