// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.arrangement;

import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;

/** A window with one search: begin, stop, how far it has come, and what it says line by line. */
public final class SearchWindow {
    private static final double WIDE_EM = 52;
    private static final double HIGH_EM = 32;
    private static final double EM = 13;
    private static final double GAP = 8;

    private final Stage stage = new Stage();
    private final ListView<String> lines = new ListView<>();
    private final ProgressBar bar = new ProgressBar(0);
    private final Label words = new Label();
    private final Button begin = new Button();
    private final Button stop = new Button("_Stop");
    private final FlowPane buttons = new FlowPane(GAP, GAP, begin, stop);

    private SearchWindow(Stage owner, String title, String help) {
        stage.initOwner(owner);
        stage.setTitle(title);
        Label head = new Label(help);
        head.setWrapText(true);
        words.setWrapText(true);
        words.setId("search-words");
        lines.setId("search-lines");
        lines.setAccessibleText(title);
        lines.setPlaceholder(new Label("Nothing yet."));
        lines.setCellFactory(list -> new Wrapped());
        VBox.setVgrow(lines, Priority.ALWAYS);
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setAccessibleText("How far it has come");
        begin.setId("search-begin");
        stop.setId("search-stop");
        stop.setDisable(true);
        VBox root = new VBox(GAP, head, buttons, bar, words, lines);
        root.setPadding(new Insets(GAP));
        root.getStylesheets().setAll(owner.getScene().getStylesheets());
        root.getStyleClass().addAll(owner.getScene().getRoot().getStyleClass());
        root.setStyle(owner.getScene().getRoot().getStyle());
        stage.setScene(new Scene(root, WIDE_EM * EM, HIGH_EM * EM));
    }

    /** A line that is as long as it is. */
    private static final class Wrapped extends ListCell<String> {
        Wrapped() {
            setWrapText(true);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(String item, boolean empty) {
            super.updateItem(item, empty);
            setText(empty ? null : item);
        }
    }

    private void show(boolean busy, double share, String said, List<String> now) {
        begin.setDisable(busy);
        stop.setDisable(!busy);
        bar.setVisible(busy);
        bar.setProgress(share);
        words.setText(said);
        if (!lines.getItems().equals(now)) {
            int kept = lines.getSelectionModel().getSelectedIndex();
            lines.getItems().setAll(now);
            lines.getSelectionModel().select(Math.min(kept, now.size() - 1));
        }
    }

    /**
     * Opens a window that looks for arrangements.
     *
     * @param owner the editor's window
     * @param bench holds the plan
     */
    public static void arrange(Stage owner, Workbench bench) {
        SearchWindow window = new SearchWindow(owner, "Arrange", "Moves and turns the hulls that are not held, gear"
                + " with its hull, so that nothing refuses the plan and the work gets less. Each that is listed has"
                + " passed the full assessment. What is taken can be undone.");
        Background background = new Background(Platform::runLater, 1);
        CheckBox sizes = new CheckBox("Si_ze the covers too");
        sizes.setId("search-sizes");
        Button take = new Button("_Take the one picked");
        take.setId("search-take");
        ArrangeModel[] model = new ArrangeModel[1];
        Runnable shown = () -> window.show(model[0].isBusy(), model[0].share(), model[0].words(), model[0].lines());
        model[0] = new ArrangeModel(bench, background, Platform::runLater, shown);
        window.buttons.getChildren().addAll(take, sizes);
        take.disableProperty().bind(window.lines.getSelectionModel().selectedItemProperty().isNull());
        take.setOnAction(event -> model[0].take(window.lines.getSelectionModel().getSelectedIndex()));
        window.open("_Arrange", () -> model[0].begin(sizes.isSelected()), model[0]::stop, shown, background);
    }

    /**
     * Opens a window that says what is in doubt.
     *
     * @param owner the editor's window
     * @param bench holds the plan
     */
    public static void doubts(Stage owner, Workbench bench) {
        SearchWindow window = new SearchWindow(owner, "What is in doubt", "Tries a thousand samples of all that the"
                + " plan does not know exactly: the chance that each limit is kept, what decides it, and what finding"
                + " out would be worth. A first answer comes after a hundred.");
        Background background = new Background(Platform::runLater, 1);
        DoubtModel[] model = new DoubtModel[1];
        Runnable shown = () -> window.show(model[0].isBusy(), model[0].share(), model[0].words(), model[0].lines());
        model[0] = new DoubtModel(bench, background, Platform::runLater, shown);
        window.open("_Sample", model[0]::begin, model[0]::stop, shown, background);
    }

    private void open(String verb, Runnable starts, Runnable stops, Runnable shown, Background background) {
        begin.setText(verb);
        begin.setOnAction(event -> {
            starts.run();
            shown.run();
        });
        stop.setOnAction(event -> {
            stops.run();
            shown.run();
        });
        stage.setOnHidden(event -> background.close());
        shown.run();
        stage.show();
        begin.requestFocus();
    }
}
