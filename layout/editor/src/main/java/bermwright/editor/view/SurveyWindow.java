// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.Plainly;
import bermwright.editor.model.UnitWords;
import bermwright.editor.run.Background;
import bermwright.finding.Sentence;
import bermwright.report.SurveyFolder;
import bermwright.site.survey.LocalSpread;
import bermwright.site.survey.PlanFolders;
import bermwright.site.survey.Reason;
import bermwright.site.survey.Survey;
import bermwright.site.survey.SurveyLimits;
import bermwright.site.survey.SurveyPlace;
import bermwright.site.survey.SurveyResult;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.Spinner;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;

/** Surveys an elevation file for places where hulls can lie, lists them with their reasons, and begins a plan there. */
final class SurveyWindow {
    private static final String LANE = "survey";
    private static final int MOST = 100;
    private static final int USUAL = 10;
    private static final double RIM = 8;
    private static final double LEAST_LIST = 90;

    private final Background background = new Background(Platform::runLater, 1);
    private final Stage stage = new Stage();
    private final Path region;
    private final Optional<Path> plan;
    private final Consumer<Path> opener;
    private final Label words = new Label();
    private final ProgressBar bar = new ProgressBar(0);
    private final Spinner<Integer> best = new Spinner<>(1, MOST, USUAL);
    private final Button run = new Button("_Survey");
    private final Button begin = new Button("_Begin the plan here");
    private final ListView<SurveyPlace> places = new ListView<>();
    private final Label reasons = new Label();

    private SurveyWindow(Path region, Optional<Path> plan, Consumer<Path> opener) {
        this.region = region;
        this.plan = plan;
        this.opener = opener;
    }

    /**
     * Shows the window.
     *
     * @param owner  the window it belongs to
     * @param region the elevation file
     * @param plan   the plan whose hulls are placed; a built-in hull where there is none
     * @param opener takes the plan file of a chosen place
     */
    static void show(Window owner, Path region, Optional<Path> plan, Consumer<Path> opener) {
        new SurveyWindow(region, plan, opener).show(owner);
    }

    private void show(Window owner) {
        words.setId("survey-words");
        // The list gives way before words are cut, for cautions are among them.
        List.of(words, reasons).forEach(label -> {
            label.setWrapText(true);
            label.setMinHeight(Region.USE_PREF_SIZE);
        });
        words.setText("Looks in " + region.getFileName() + " for places where " + plan.map(p -> "the hulls of "
                + p.getFileName()).orElse("a hull of usual size") + " can lie, and writes a map and a plan for each"
                + " into " + folder().getFileName() + ".");
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setMinHeight(Region.USE_PREF_SIZE);
        bar.setVisible(false);
        best.setId("survey-best");
        best.setEditable(true);
        best.setAccessibleText("How many places are wanted");
        Label label = new Label("Places wanted");
        label.setLabelFor(best);
        run.setId("survey-run");
        run.setMnemonicParsing(true);
        run.setDefaultButton(true);
        run.setOnAction(event -> runOrStop());
        begin.setId("survey-begin");
        begin.setMnemonicParsing(true);
        begin.setDisable(true);
        begin.setOnAction(event -> begin());
        places.setId("survey-places");
        places.setAccessibleText("Places found, the best first");
        places.setPlaceholder(new Label("No place looked for yet."));
        places.setCellFactory(list -> new Cell());
        places.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> chosen(now));
        places.setOnMouseClicked(event -> {
            if (event.getClickCount() == 2) {
                begin();
            }
        });
        reasons.setId("survey-reasons");
        places.setMinHeight(LEAST_LIST);
        VBox.setVgrow(places, Priority.ALWAYS);
        VBox root = new VBox(8, words, new FlowPane(8, 4, label, best, run), bar, places, reasons, begin);
        root.setPadding(new Insets(RIM));
        Dialogs.dress(root, owner.getScene());
        stage.initOwner(owner);
        stage.setTitle("Survey for places");
        stage.setScene(new Scene(root, 620, 620));
        Dialogs.closeOnEscape(stage);
        stage.setOnHidden(event -> background.close());
        stage.show();
    }

    private Path folder() {
        return region.toAbsolutePath().resolveSibling(region.getFileName().toString().replaceAll("\\.[^.]*$", "")
                + "-survey");
    }

    private void runOrStop() {
        if (background.isBusy(LANE)) {
            background.cancel(LANE);
            return;
        }
        int wanted = best.getValue();
        run.setText("_Stop");
        bar.setVisible(true);
        places.getItems().clear();
        background.start(LANE, progress -> {
            Path from = plan.map(p -> p.toAbsolutePath().getParent()).orElse(folder());
            SurveyResult result = Survey.run(Survey.order(new Survey.Question(region, plan, plan.isPresent(), List.of(),
                    SurveyLimits.USUAL)), wanted, new PlanFolders(from, folder()), new LocalSpread(),
                    progress.part(0, 0.95));
            try {
                SurveyFolder.write(result, folder(), progress.part(0.95, 1));
            } catch (IOException notWritten) {
                throw new UncheckedIOException(notWritten);
            }
            return result;
        }, new Background.Listener<>(this::found, failure -> ended("The survey came to no end. "
                + Plainly.words(failure)), step -> {
                    bar.setProgress(step.share());
                    words.setText(Sentence.begin(step.words()));
                }, () -> ended("The survey was stopped; nothing was written.")));
    }

    private void ended(String how) {
        run.setText("_Survey");
        bar.setVisible(false);
        words.setText(how);
    }

    private void found(SurveyResult result) {
        SurveyResult.Tally tally = result.tally();
        places.getItems().setAll(result.places());
        places.setPlaceholder(new Label("No place was found where the hulls can lie."));
        ended(String.format(Locale.ROOT, "A hull can lie in %.1f %% of %,d cells; %d places, at least %.0f m apart. Map"
                + " and plans are in %s. %s", 100.0 * tally.admitted() / tally.cells(), tally.cells(),
                result.places().size(), result.apart(), folder(), String.join(" ", result.notes())));
        if (!result.places().isEmpty()) {
            places.getSelectionModel().select(0);
            places.requestFocus();
        }
    }

    private void chosen(SurveyPlace place) {
        begin.setDisable(place == null);
        reasons.setText(place == null ? "" : place.reasons().stream().map(SurveyWindow::words)
                .collect(Collectors.joining("\n")));
    }

    private static String words(Reason reason) {
        return String.format(Locale.ROOT, "%s: %.2f %s, limit %s %.2f", reason.criterion().words(), reason.measured(),
                UnitWords.shown(reason.criterion().unit()), reason.criterion().isLeast() ? "at least" : "at most",
                reason.limit());
    }

    private void begin() {
        Optional.ofNullable(places.getSelectionModel().getSelectedItem()).ifPresent(place -> {
            Path file = folder().resolve(SurveyFolder.plan(place));
            stage.close();
            opener.accept(file);
        });
    }

    /** A place that has as many lines as it needs. */
    private static final class Cell extends ListCell<SurveyPlace> {
        Cell() {
            setWrapText(true);
            setPrefWidth(0);
        }

        @Override
        protected void updateItem(SurveyPlace place, boolean isEmpty) {
            super.updateItem(place, isEmpty);
            setText(isEmpty || place == null ? null : String.format(Locale.ROOT, "%d.  east %.0f m, north %.0f m, laid"
                    + " down to %.0f\u00b0; margin %.2f, tightest: %s", place.rank(), place.centre().east(),
                    place.centre().north(), place.heading().degrees(), place.score(),
                    place.tightest().criterion().words()));
        }
    }
}
