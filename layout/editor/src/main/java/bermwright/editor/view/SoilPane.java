// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.Workbench;
import bermwright.editor.model.WorkStages;
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
    private final VBox figures = new VBox(4);

    SoilPane(Workbench bench, MapPane map) {
        this.bench = bench;
        this.map = map;
        Label order = new Label("Order of work");
        order.getStyleClass().add("heading");
        step.setId("step-words");
        step.setWrapText(true);
        slider.setId("step");
        slider.setMajorTickUnit(1);
        slider.setMinorTickCount(0);
        slider.setSnapToTicks(true);
        slider.setShowTickMarks(true);
        slider.setBlockIncrement(1);
        slider.setAccessibleText("Steps of the work that are done");
        slider.setTooltip(Hint.of("The map shows the site after this step. All the way to the left: before any work."));
        slider.valueProperty().addListener((observed, before, now) -> stage());
        VBox box = new VBox(order, step, slider, figures);
        box.getStyleClass().add("answer");
        setContent(box);
        setFitToWidth(true);
        bench.calm().listen(this::refresh);
        refresh();
    }

    /** Shows the stage on the map, or the whole plan again once this pane is left. */
    void shown(boolean isShown) {
        if (isShown) {
            stage();
        } else {
            map.stage(figure -> true);
        }
    }

    private void stage() {
        WorkStages stages = WorkStages.of(bench.plan());
        int done = (int) Math.round(Math.min(slider.getValue(), stages.steps().size()));
        step.setText(stages.steps().isEmpty() ? "The plan has no steps of work; add some from the menu Add."
                : stages.words(done));
        map.stage(figure -> stages.steps().isEmpty() || stages.shows(figure, done));
    }

    private void refresh() {
        int steps = WorkStages.of(bench.plan()).steps().size();
        boolean wasAtEnd = slider.getValue() >= slider.getMax();
        slider.setMax(Math.max(1, steps));
        if (wasAtEnd) {
            slider.setValue(slider.getMax());
        }
        slider.setDisable(steps == 0);
        figures.getChildren().setAll(SoilFigures.nodes(bench));
        if (isVisible() && getScene() != null && getParent() != null && getParent().isVisible()) {
            step.setText(steps == 0 ? "The plan has no steps of work; add some from the menu Add."
                    : WorkStages.of(bench.plan()).words((int) Math.round(Math.min(slider.getValue(), steps))));
        }
    }
}
