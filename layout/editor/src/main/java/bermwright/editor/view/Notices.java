// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Messages over the map that need an answer or a look, without stopping the work. */
final class Notices extends VBox {
    private final Map<String, Node> shown = new LinkedHashMap<>();

    /** A button of a notice. */
    record Choice(String words, Runnable action) {
    }

    Notices() {
        setId("notices");
        setPickOnBounds(false);
        getStyleClass().add("notices");
    }

    /** Shows a notice; another of the same kind takes its place. */
    void show(String kind, String words, List<Choice> choices) {
        hide(kind);
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(label, Priority.ALWAYS);
        HBox line = new HBox(8, label);
        line.getStyleClass().addAll("notice", kind);
        line.setId("notice-" + kind);
        for (Choice choice : choices) {
            Button button = new Button(choice.words());
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(event -> {
                hide(kind);
                choice.action().run();
            });
            line.getChildren().add(button);
        }
        Button close = new Button("Close");
        close.setMinWidth(USE_PREF_SIZE);
        close.setOnAction(event -> hide(kind));
        if (choices.isEmpty()) {
            line.getChildren().add(close);
        }
        shown.put(kind, line);
        getChildren().add(line);
    }

    void hide(String kind) {
        Node node = shown.remove(kind);
        if (node != null) {
            getChildren().remove(node);
        }
    }
}
