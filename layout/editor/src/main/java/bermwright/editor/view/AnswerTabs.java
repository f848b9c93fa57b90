// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.mend.MendingField;
import bermwright.editor.model.TiltModel;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.site.stages.Stage;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The answers beside the map, under one heading for each question; the cautions stand over all of them. */
final class AnswerTabs extends VBox {
    /** Narrower than this nothing can be read (pixels); without it the map would give way to the longest line. */
    private static final double LEAST_WIDTH = 260;

    private final TabPane tabs = new TabPane();
    private final LoweringPane lowering;
    private final ComparePane compare;
    private final SoilPane soil;
    private final FindingsPane findings;

    AnswerTabs(Workbench bench, MapPane map, PartActions actions, Background background, Dress dress) {
        TiltModel tilt = new TiltModel(bench);
        map.follow(tilt);
        findings = new FindingsPane(bench, actions, background, dress);
        lowering = new LoweringPane(bench, tilt, dress);
        compare = new ComparePane(bench, background, dress);
        soil = new SoilPane(bench, map);
        CoverPane cover = new CoverPane(bench, background);
        DosePane dose = new DosePane(bench, background);
        tabs.setId("answers");
        tabs.setAccessibleText("Answers");
        tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
        tabs.getTabs().add(tab("Findings", findings));
        tabs.getTabs().add(tab("Lowering", lowering));
        tabs.getTabs().add(tab("Cover", cover));
        tabs.getTabs().add(tab("Dose", dose));
        tabs.getTabs().add(tab("Soil and work", soil));
        tabs.getTabs().add(tab("Compare", compare));
        tabs.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> {
            lowering.shown("Lowering".equals(now.getText()));
            tilt.onMap("Lowering".equals(now.getText()));
            cover.shown("Cover".equals(now.getText()));
            dose.shown("Dose".equals(now.getText()));
            compare.shown("Compare".equals(now.getText()));
            soil.shown("Soil and work".equals(now.getText()));
        });
        VBox.setVgrow(tabs, Priority.ALWAYS);
        setMinWidth(LEAST_WIDTH);
        getChildren().addAll(new CautionLine(), tabs);
    }

    private static Tab tab(String heading, Node content) {
        return new Tab(heading, content);
    }

    TabPane tabs() {
        return tabs;
    }

    /** Shows the answers under a heading. */
    void show(String heading) {
        tabs.getTabs().stream().filter(t -> t.getText().equals(heading)).findFirst()
                .ifPresent(tabs.getSelectionModel()::select);
    }

    /** Asks to be told which stage's ground is to be shown; empty for the ground before any work. */
    void onSurface(Consumer<Optional<Stage>> listener) {
        soil.onSurface(listener);
    }

    /** Asks to be told which field mends a finding and is to be opened. */
    void onField(Consumer<MendingField> listener) {
        findings.detail().onField(listener);
    }

    FindingsPane findings() {
        return findings;
    }

    void compareWith(Path file) {
        show("Compare");
        compare.with(file);
    }

    void dress(Dress dress) {
        findings.dress(dress);
        compare.dress(dress);
        lowering.dress(dress);
    }
}
