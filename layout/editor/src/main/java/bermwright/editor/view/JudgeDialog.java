// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.finding.Finding;
import java.util.Optional;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import javafx.stage.Window;

/** Asks who accepts a finding and why. */
final class JudgeDialog {
    private static String lastName = "";

    private JudgeDialog() {
    }

    /** Who and why; neither is blank. */
    record Answer(String name, String reason) {
    }

    static Optional<Answer> ask(Window owner, Finding finding, boolean isBack) {
        Dialog<Answer> dialog = new Dialog<>();
        dialog.setTitle(isBack ? "Take an acceptance back" : "Accept a finding");
        dialog.setHeaderText((isBack ? "The finding is to be seen again. " : "The finding is kept out of the way, and"
                + " stands in the reports with name and reason. ") + (finding.level() == Finding.Level.REFUSE && !isBack
                ? "It still refuses the plan." : ""));
        TextField name = new TextField(lastName);
        name.setId("judge-name");
        TextArea reason = new TextArea();
        reason.setId("judge-reason");
        reason.setPrefRowCount(3);
        reason.setWrapText(true);
        Label nameLabel = new Label("_Name of who decides");
        nameLabel.setMnemonicParsing(true);
        nameLabel.setLabelFor(name);
        Label reasonLabel = new Label("_Reason");
        reasonLabel.setMnemonicParsing(true);
        reasonLabel.setLabelFor(reason);
        Label text = new Label(finding.text());
        text.setWrapText(true);
        dialog.getDialogPane().setContent(new VBox(6, text, nameLabel, name, reasonLabel, reason));
        ButtonType done = new ButtonType(isBack ? "Take it back" : "Accept", ButtonBar.ButtonData.OK_DONE);
        dialog.getDialogPane().getButtonTypes().addAll(done, ButtonType.CANCEL);
        Dialogs.dress(dialog, owner);
        var button = dialog.getDialogPane().lookupButton(done);
        button.disableProperty().bind(javafx.beans.binding.Bindings.createBooleanBinding(
                () -> name.getText().isBlank() || reason.getText().isBlank(), name.textProperty(),
                reason.textProperty()));
        dialog.setOnShown(event -> (name.getText().isBlank() ? name : reason).requestFocus());
        dialog.setResultConverter(type -> type == done ? new Answer(name.getText(), reason.getText()) : null);
        Optional<Answer> answer = dialog.showAndWait();
        answer.ifPresent(a -> lastName = a.name());
        return answer;
    }
}
