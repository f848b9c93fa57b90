// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.report.HandoverPart;
import bermwright.report.reader.Reader;
import java.io.File;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.CheckBox;
import javafx.scene.control.DatePicker;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;

/** Asks what is to be handed over, to whom, and into which folder. */
final class HandoverDialog {
    private final Window owner;
    private final HandoverPart part;
    private final Map<Reader, CheckBox> readers = new EnumMap<>(Reader.class);
    private final TextField revision = new TextField();
    private final DatePicker date = new DatePicker();
    private final TextField against = new TextField();
    private final TextField folder = new TextField();
    private final GridPane grid = new GridPane();

    /**
     * What was asked for.
     *
     * @param readers  whose reports
     * @param revision letter or number of the revision, may be empty
     * @param date     date stated on it
     * @param against  an earlier plan to compare with
     * @param folder   where it goes
     */
    record Answer(Set<Reader> readers, String revision, Optional<LocalDate> date, Optional<Path> against,
            Path folder) {
    }

    private HandoverDialog(Window owner, HandoverPart part, Path suggested) {
        this.owner = owner;
        this.part = part;
        folder.setText(suggested.toString());
        grid.setHgap(8);
        grid.setVgap(6);
        if (part == HandoverPart.REPORTS) {
            VBox all = new VBox(4);
            for (Reader reader : Reader.values()) {
                CheckBox box = new CheckBox(reader.title());
                box.setId("handover-" + reader.word());
                box.setSelected(true);
                readers.put(reader, box);
                all.getChildren().add(box);
            }
            row("Readers", all, Optional.empty());
        }
        if (part != HandoverPart.EXCHANGE) {
            named(revision, "handover-revision", "Revision");
            row("Revision", revision, Optional.empty());
            named(date, "handover-date", "Date on the reports");
            row("Date", date, Optional.empty());
        }
        if (part == HandoverPart.REPORTS) {
            against.setPromptText("none");
            named(against, "handover-against", "Earlier plan to compare with");
            row("What changed since", against, Optional.of(button("Choose\u2026", this::chooseEarlier)));
        }
        named(folder, "handover-folder", "Folder");
        folder.setPrefColumnCount(28);
        row("Folder", folder, Optional.of(button("Choose\u2026", this::chooseFolder)));
    }

    private static void named(Node node, String id, String words) {
        node.setId(id);
        node.setAccessibleText(words);
    }

    private void row(String words, Node node, Optional<Node> beside) {
        Label label = new Label(words);
        label.setLabelFor(node);
        int at = grid.getRowCount();
        grid.add(label, 0, at);
        HBox line = new HBox(6, node);
        HBox.setHgrow(node, Priority.ALWAYS);
        beside.ifPresent(line.getChildren()::add);
        GridPane.setHgrow(line, Priority.ALWAYS);
        grid.add(line, 1, at);
    }

    private static Button button(String words, Runnable action) {
        Button button = new Button(words);
        button.setMinWidth(Button.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    private void chooseFolder() {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle("Folder for the " + part.word());
        Optional.ofNullable(Path.of(folder.getText()).toAbsolutePath().getParent()).map(Path::toFile)
                .filter(File::isDirectory).ifPresent(chooser::setInitialDirectory);
        Optional.ofNullable(chooser.showDialog(owner)).ifPresent(chosen -> folder.setText(chosen.toString()));
    }

    private void chooseEarlier() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Earlier plan");
        chooser.getExtensionFilters().add(EditorWindow.PLANS);
        Optional.ofNullable(chooser.showOpenDialog(owner)).ifPresent(chosen -> against.setText(chosen.toString()));
    }

    static Optional<Answer> ask(Window owner, HandoverPart part, Path suggested) {
        return new HandoverDialog(owner, part, suggested).ask();
    }

    private Optional<Answer> ask() {
        Dialog<Answer> dialog = new Dialog<>();
        dialog.setTitle("Hand over " + part.word());
        dialog.setHeaderText(switch (part) {
            case REPORTS -> "Reports as pages and PDFs, with drawings, tables and exchange files. Accepted findings"
                    + " stand in them with name and reason.";
            case DRAWINGS -> "Drawings to scale, as PDF and SVG.";
            case EXCHANGE -> "Files for other programs: shapes, surfaces, lifts, and the scene for an independent dose"
                    + " calculation.";
        });
        dialog.getDialogPane().setContent(grid);
        ButtonType done = new ButtonType("Write", ButtonBar.ButtonData.OK_DONE);
        dialog.getDialogPane().getButtonTypes().addAll(done, ButtonType.CANCEL);
        Dialogs.dress(dialog, owner);
        List<javafx.beans.Observable> all = new ArrayList<>(List.of(folder.textProperty()));
        readers.values().forEach(box -> all.add(box.selectedProperty()));
        BooleanBinding isMissing = Bindings.createBooleanBinding(() -> folder.getText().isBlank()
                || !readers.isEmpty() && readers.values().stream().noneMatch(CheckBox::isSelected),
                all.toArray(javafx.beans.Observable[]::new));
        dialog.getDialogPane().lookupButton(done).disableProperty().bind(isMissing);
        dialog.getDialogPane().lookupButton(done).setId("handover-write");
        dialog.setResultConverter(type -> type == done ? answer() : null);
        return dialog.showAndWait();
    }

    private Answer answer() {
        Set<Reader> chosen = EnumSet.noneOf(Reader.class);
        readers.forEach((reader, box) -> {
            if (box.isSelected()) {
                chosen.add(reader);
            }
        });
        return new Answer(chosen.isEmpty() ? EnumSet.allOf(Reader.class) : chosen, revision.getText().strip(),
                Optional.ofNullable(date.getValue()), Optional.of(against.getText()).filter(t -> !t.isBlank())
                .map(Path::of), Path.of(folder.getText().strip()));
    }
}
