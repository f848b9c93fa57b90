// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.UnitWords;
import bermwright.editor.model.Workbench;
import bermwright.foundation.Point;
import bermwright.site.assessment.SiteGround;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The strip under the map: what is under the pointer, how fresh the answers are, what is being worked out. */
final class StatusStrip extends HBox {
    private final Workbench bench;
    private final Label pointer = new Label();
    private final Label freshness = new Label();
    private final ProgressBar progress = new ProgressBar(0);
    private final Button stop = new Button("Stop");
    private Runnable stopping = () -> { };

    StatusStrip(Workbench bench) {
        this.bench = bench;
        pointer.setId("pointer");
        freshness.setId("freshness");
        progress.setPrefWidth(120);
        stop.setId("stop");
        stop.setMinWidth(USE_PREF_SIZE);
        freshness.setMinWidth(USE_PREF_SIZE);
        progress.setMinWidth(60);
        stop.setOnAction(event -> stopping.run());
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        getChildren().addAll(pointer, gap, freshness, progress, stop);
        getStyleClass().add("bar");
        point(Optional.empty());
        idle();
    }

    /** As high as with its button, so that the map does not move under the hand when work begins. */
    @Override
    protected double computePrefHeight(double width) {
        return Math.max(super.computePrefHeight(width),
                snappedTopInset() + stop.prefHeight(-1) + snappedBottomInset());
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    void point(Optional<Point> place) {
        pointer.setText(place.map(this::words).orElse("Point at the map: east, north, height, slope"));
    }

    private String words(Point p) {
        String at = UnitWords.place(p);
        Optional<SiteGround> ground = bench.answers().ground();
        if (ground.isEmpty()) {
            return at;
        }
        double height = ground.get().grid().height(p);
        double slope = Math.toDegrees(ground.get().grid().slope(p));
        boolean isUnread = ground.get().file().isPart() && !ground.get().file().grid().frame().contains(p)
                && ground.get().file().whole().contains(p);
        return at + (Double.isNaN(height) ? isUnread ? "   height not read so far from the plan" : "   height not known"
                : String.format(Locale.ROOT, "   height %.2f m   slope %.1f\u00b0", height, slope)
                        .replace('-', '\u2212'));
    }

    void fresh(String words) {
        freshness.setText(words);
    }

    void working(double share, String words, Runnable onStop) {
        progress.setProgress(share);
        show(true);
        freshness.setText(words);
        stopping = onStop;
    }

    void idle() {
        show(false);
    }

    private void show(boolean isWorking) {
        for (Region node : List.of(progress, stop)) {
            node.setVisible(isWorking);
            node.setManaged(isWorking);
        }
    }
}
