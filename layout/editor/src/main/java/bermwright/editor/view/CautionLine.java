// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.site.assessment.Cautions;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The cautions: the first always in view over the answers, all of them behind it. */
final class CautionLine extends VBox {
    private final Label arrow = new Label();
    private final VBox all = new VBox(4);

    CautionLine() {
        setId("cautions");
        Label first = words("\u26A0 " + Cautions.all().get(0));
        HBox.setHgrow(first, Priority.ALWAYS);
        HBox line = new HBox(6, arrow, first);
        line.getStyleClass().add("caution-line");
        line.setFocusTraversable(true);
        line.setAccessibleRole(AccessibleRole.BUTTON);
        line.setAccessibleText("Cautions: " + Cautions.all().get(0));
        line.setOnMouseClicked(event -> open(!all.isVisible()));
        line.setOnKeyPressed(event -> {
            if (List.of(KeyCode.ENTER, KeyCode.SPACE).contains(event.getCode())) {
                open(!all.isVisible());
                event.consume();
            }
        });
        all.getStyleClass().add("answer");
        Cautions.all().forEach(caution -> all.getChildren().add(words("\u2022 " + caution)));
        getChildren().addAll(line, all);
        getStyleClass().add("cautions");
        setMinHeight(USE_PREF_SIZE);
        Tooltip.install(line, Hint.of(String.join("\n\n", Cautions.all())));
        open(false);
    }

    private static Label words(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinWidth(0);
        label.setMinHeight(USE_PREF_SIZE);
        label.setMaxWidth(Double.MAX_VALUE);
        return label;
    }

    private void open(boolean isOpen) {
        arrow.setText(isOpen ? "\u25BE" : "\u25B8");
        all.setVisible(isOpen);
        all.setManaged(isOpen);
    }
}
