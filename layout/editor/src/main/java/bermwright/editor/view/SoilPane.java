// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.WorkStages;
import bermwright.editor.model.Workbench;
import bermwright.site.stages.Stage;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.layout.VBox;

/** Volumes, machine hours, and the site after each step of the work. */
final class SoilPane extends ScrollPane {
    private final Workbench bench;
    private final MapPane map;
    private final Label step = new Label();
    private final Slider slider = new Slider(0, 1, 1);
    private final Label standing = new Label();
    private final VBox figures = new VBox(4);
    private Consumer<Optional<Stage>> surface = stage -> { };
    private boolean isShown;
    private Optional<Stage> painted = Optional.empty();

    SoilPane(Workbench bench, MapPane map) {
        this.bench = bench;
        this.map = map;
        Label order = new Label("Order of work");
        order.getStyleClass().add("heading");
        step.setId("step-words");
        step.setWrapText(true);
        standing.setId("stage-figures");
        standing.setWrapText(true);
        slider.setId("step");
        slider.setMajorTickUnit(1);
        slider.setMinorTickCount(0);
        slider.setSnapToTicks(true);
        slider.setShowTickMarks(true);
        slider.setBlockIncrement(1);
        slider.setAccessibleText("Steps of the work that are done");
        slider.setTooltip(Hint.of("The map shows the site after this step. All the way to the left: before any work."));
        slider.valueProperty().addListener((observed, before, now) -> stage());
        VBox box = new VBox(order, step, slider, standing, figures);
        box.getStyleClass().add("answer");
        setContent(box);
        setFitToWidth(true);
        bench.calm().listen(this::refresh);
        refresh();
    }

    /** Asks to be told which stage's ground is to be shown; empty for the ground before any work. */
    void onSurface(Consumer<Optional<Stage>> listener) {
        surface = listener;
    }

    /** Shows the stage on the map, or the whole plan again once this pane is left. */
    void shown(boolean shownNow) {
        isShown = shownNow;
        if (isShown) {
            stage();
        } else {
            map.stage(figure -> true);
            paint(Optional.empty());
        }
    }

    private WorkStages stages() {
        return WorkStages.of(bench.plan(), bench.answers().assessment());
    }

    private void stage() {
        WorkStages stages = stages();
        int done = (int) Math.round(Math.min(slider.getValue(), stages.steps().size()));
        step.setText(stages.steps().isEmpty() ? "The plan has no steps of work; add some from the menu Add."
                : stages.words(done));
        String words = SoilFigures.words(stages, done);
        standing.setText(words.isEmpty() || bench.answers().isAssessmentFresh(bench.plan()) ? words
                : "Provisional, of the plan before. " + words);
        if (isShown) {
            map.stage(figure -> stages.steps().isEmpty() || stages.shows(figure, done));
            paint(stages.stage(done).filter(stage -> !stage.coverHeights().isEmpty()));
        }
    }

    private void paint(Optional<Stage> stage) {
        if (!painted.equals(stage)) {
            painted = stage;
            surface.accept(stage);
        }
    }

    private void refresh() {
        int steps = stages().steps().size();
        boolean wasAtEnd = slider.getValue() >= slider.getMax();
        slider.setMax(Math.max(1, steps));
        if (wasAtEnd) {
            slider.setValue(slider.getMax());
        }
        slider.setDisable(steps == 0);
        figures.getChildren().setAll(SoilFigures.nodes(bench));
        stage();
    }
}
