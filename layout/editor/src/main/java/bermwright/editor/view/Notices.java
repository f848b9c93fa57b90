// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.FlowPane;
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
        Label label = label(words);
        // The buttons go under the words, so that large text in a narrow window keeps whole lines.
        FlowPane buttons = new FlowPane(8, 4);
        VBox line = new VBox(6, label, buttons);
        line.getStyleClass().addAll("notice", kind);
        line.setId("notice-" + kind);
        for (Choice choice : choices) {
            Button button = new Button(choice.words());
            button.setMinWidth(USE_PREF_SIZE);
            button.setOnAction(event -> {
                hide(kind);
                choice.action().run();
            });
            buttons.getChildren().add(button);
        }
        Button close = new Button("Close");
        close.setMinWidth(USE_PREF_SIZE);
        close.setOnAction(event -> hide(kind));
        if (choices.isEmpty()) {
            buttons.getChildren().add(close);
        }
        shown.put(kind, line);
        getChildren().add(line);
    }

    private static Label label(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMaxWidth(Double.MAX_VALUE);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }

    /** Shows how far a work has come, with a way to stop it; the same notice as long as the work goes on. */
    void working(String kind, String words, double share, Runnable stop) {
        if (shown.get(kind) instanceof VBox line && line.getChildren().size() > 1
                && line.getChildren().get(1) instanceof ProgressBar bar) {
            ((Label) line.getChildren().get(0)).setText(words);
            bar.setProgress(share);
            return;
        }
        hide(kind);
        ProgressBar bar = new ProgressBar(share);
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setAccessibleText(words);
        Button button = new Button("Stop");
        button.setId("stop-" + kind);
        button.setOnAction(event -> stop.run());
        VBox line = new VBox(6, label(words), bar, button);
        line.getStyleClass().addAll("notice", kind);
        line.setId("notice-" + kind);
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
