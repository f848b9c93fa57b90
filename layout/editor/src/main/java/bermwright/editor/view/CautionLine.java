// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.site.assessment.Cautions;
import javafx.scene.control.Label;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/** The cautions: one line always in view over the answers, all of them behind it. */
final class CautionLine extends TitledPane {
    CautionLine() {
        setId("cautions");
        setText("\u26A0 " + Cautions.all().get(0));
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
