// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.site.assessment.Cautions;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/** The cautions: one line always in view over the answers, all of them behind it. */
final class CautionLine extends TitledPane {
    /** Room for the arrow and the rims beside the words (pixels). */
    private static final double BESIDES = 44;

    CautionLine() {
        setId("cautions");
        Label first = new Label("\u26A0 " + Cautions.all().get(0));
        first.setWrapText(true);
        first.maxWidthProperty().bind(widthProperty().subtract(BESIDES));
        setText(null);
        setGraphic(first);
        setExpanded(false);
        setAnimated(false);
        VBox all = new VBox(4);
        all.getStyleClass().add("answer");
        Cautions.all().forEach(words -> {
            Label label = new Label("\u2022 " + words);
            label.setWrapText(true);
            all.getChildren().add(label);
        });
        setContent(all);
        getStyleClass().add("cautions");
        setTooltip(Hint.of(String.join("\n\n", Cautions.all())));
    }
}
