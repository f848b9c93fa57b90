// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.arrangement.ArrangeModel;
import bermwright.editor.arrangement.DoubtModel;
import bermwright.editor.arrangement.SearchModel;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.report.drawing.Drawing;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;

/** A window with one search: begin, stop, how far it has come, and what it says line by line. */
final class SearchWindow {
    private static final double WIDE_EM = 52;
    private static final double HIGH_EM = 32;
    private static final double EM = 13;
    private static final double GAP = 8;

    private final Background background = new Background(Platform::runLater, 1);
    private final Stage stage = new Stage();
    private final ListView<String> lines = new ListView<>();
    private final ProgressBar bar = new ProgressBar(0);
    private final Label words = new Label();
    private final Button begin = new Button();
    private final Button stop = new Button("_Stop");
    private final FlowPane buttons = new FlowPane(GAP, GAP, begin, stop);
    private final ComboBox<String> figures = new ComboBox<>();
    private final VBox root;
    private List<Drawing> drawings = List.of();
    private Runnable more = () -> { };
    private SearchModel model;

    private SearchWindow(Stage owner, String title, String help) {
        stage.initOwner(owner);
        stage.setTitle(title);
        Label head = new Label(help);
        // The list gives way before words are cut.
        List.of(head, words).forEach(label -> {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
        });
        words.setId("search-words");
        lines.setId("search-lines");
        lines.setAccessibleText(title);
        lines.setPlaceholder(new Label("Nothing yet."));
        lines.setCellFactory(list -> new Wrapped());
        VBox.setVgrow(lines, Priority.ALWAYS);
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setMinHeight(Region.USE_PREF_SIZE);
        bar.setAccessibleText("How far it has come");
        begin.setId("search-begin");
        stop.setId("search-stop");
        stop.setDisable(true);
        root = new VBox(GAP, head, buttons, bar, words, lines);
        root.setPadding(new Insets(GAP));
        Dialogs.dress(root, owner.getScene());
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

    private void refresh() {
        boolean isBusy = model.isBusy();
        begin.setDisable(isBusy);
        stop.setDisable(!isBusy);
        bar.setVisible(isBusy);
        bar.setProgress(model.share());
        words.setText(model.words());
        more.run();
        if (!lines.getItems().equals(model.lines())) {
            // Another line may stand at the place of the picked one now; only the same line stays picked.
            String kept = lines.getSelectionModel().getSelectedItem();
            lines.getItems().setAll(model.lines());
            lines.getSelectionModel().clearSelection();
            if (lines.getItems().contains(kept)) {
                lines.getSelectionModel().select(kept);
            }
        }
    }

    /**
     * Opens a window that looks for arrangements.
     *
     * @param owner the editor's window
     * @param bench holds the plan
     */
    static void arrange(Stage owner, Workbench bench) {
        SearchWindow window = new SearchWindow(owner, "Arrange", "Moves and turns the hulls that are not held, gear"
                + " with its hull, so that nothing refuses the plan and the work gets less. Nothing refuses"
                + " any that is listed. What is taken can be undone.");
        CheckBox sizes = new CheckBox("Si_ze the covers too");
        sizes.setId("search-sizes");
        Button take = new Button("_Take the one picked");
        take.setId("search-take");
        ArrangeModel model = new ArrangeModel(bench, window.background, Platform::runLater, window::refresh);
        window.buttons.getChildren().addAll(take, sizes);
        take.disableProperty().bind(window.lines.getSelectionModel().selectedItemProperty().isNull());
        take.setOnAction(event -> model.take(window.lines.getSelectionModel().getSelectedIndex()));
        window.open(model, "_Arrange", () -> model.begin(sizes.isSelected()));
    }

    /**
     * Opens a window that says what is in doubt.
     *
     * @param owner the editor's window
     * @param bench holds the plan
     */
    static void doubts(Stage owner, Workbench bench) {
        SearchWindow window = new SearchWindow(owner, "What is in doubt", "Tries a thousand samples of all that the"
                + " plan does not know exactly: the chance that each limit is kept, what decides it, and what finding"
                + " out would be worth. A first answer comes after a hundred.");
        DoubtModel model = new DoubtModel(bench, window.background, Platform::runLater, window::refresh);
        window.pictures(model);
        window.open(model, "_Sample", model::begin);
    }

    /** Under the sentences: a figure to pick, how it may come out, and what decides it. */
    private void pictures(DoubtModel doubts) {
        figures.setId("doubt-figures");
        figures.setMaxWidth(Double.MAX_VALUE);
        figures.setAccessibleText("Figure to be shown");
        figures.setPromptText("The figures that vary come here");
        List<DrawingView> views = List.of(new DrawingView(), new DrawingView());
        views.forEach(view -> view.show(DrawingView.prepared(Optional.empty())));
        VBox drawn = new VBox(GAP);
        drawn.getChildren().addAll(views);
        ScrollPane scroll = new ScrollPane(drawn);
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        root.getChildren().addAll(figures, scroll);
        stage.setHeight(1.7 * HIGH_EM * EM);
        figures.valueProperty().addListener((observed, before, now) -> draw(doubts, views));
        more = () -> {
            String kept = figures.getValue();
            if (!figures.getItems().equals(doubts.figures())) {
                figures.getItems().setAll(doubts.figures());
            }
            if (kept == null || !figures.getItems().contains(kept)) {
                figures.getSelectionModel().selectFirst();
            }
            draw(doubts, views);
        };
    }

    /** Draws anew only where the drawings are other ones. */
    private void draw(DoubtModel doubts, List<DrawingView> views) {
        List<Drawing> pictures = figures.getValue() == null ? List.of() : doubts.pictures(figures.getValue());
        if (!pictures.equals(drawings)) {
            drawings = pictures;
            for (int i = 0; i < views.size(); i++) {
                views.get(i).show(DrawingView.prepared(i < pictures.size() ? Optional.of(pictures.get(i))
                        : Optional.empty()));
            }
        }
    }

    private void open(SearchModel search, String verb, Runnable starts) {
        model = search;
        begin.setText(verb);
        begin.setOnAction(event -> {
            starts.run();
            refresh();
        });
        stop.setOnAction(event -> {
            search.stop();
            refresh();
        });
        stage.setOnHidden(event -> background.close());
        refresh();
        stage.show();
        begin.requestFocus();
    }
}
