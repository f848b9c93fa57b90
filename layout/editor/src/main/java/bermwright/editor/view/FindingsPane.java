// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.NumberedFinding;
import bermwright.editor.model.Workbench;
import bermwright.site.finding.Finding;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The findings, the worst first; picking one picks what it is about and flies there. */
final class FindingsPane extends VBox {
    /** Width of scroll bar and rims beside a line, which grows with the text (pixels). */
    private static final double BESIDES = 34;

    private final Workbench bench;
    private Dress dress;
    private final Label summary = new Label();
    private final ListView<NumberedFinding> list = new ListView<>();
    private boolean isFollowing;

    FindingsPane(Workbench bench, PartActions actions, Dress dress) {
        this.bench = bench;
        this.dress = dress;
        summary.setId("finding-summary");
        summary.setWrapText(true);
        summary.getStyleClass().add("heading");
        list.setId("findings");
        list.setAccessibleText("Findings, the worst first");
        list.setCellFactory(view -> new Cell());
        list.setPlaceholder(new Label("No findings."));
        list.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> {
            if (!isFollowing && now != null) {
                go(now, actions);
            }
        });
        list.setOnMouseClicked(event -> {
            NumberedFinding at = list.getSelectionModel().getSelectedItem();
            if (at != null && event.getClickCount() == 2) {
                go(at, actions);
            }
        });
        list.setOnKeyPressed(event -> {
            NumberedFinding at = list.getSelectionModel().getSelectedItem();
            if (at != null && event.getCode() == KeyCode.ENTER) {
                go(at, actions);
            }
        });
        VBox.setVgrow(list, Priority.ALWAYS);
        getChildren().addAll(summary, list);
        getStyleClass().add("answer");
        bench.calm().listen(this::refresh);
        refresh();
    }

    /** Dresses the list for another window. */
    void dress(Dress changed) {
        dress = changed;
        list.refresh();
    }

    private void go(NumberedFinding finding, PartActions actions) {
        bench.pickFinding(finding);
        bench.place(finding.finding()).ifPresent(actions::flyTo);
    }

    private void refresh() {
        List<NumberedFinding> findings = bench.findings();
        if (!findings.equals(new ArrayList<>(list.getItems()))) {
            isFollowing = true;
            NumberedFinding kept = list.getSelectionModel().getSelectedItem();
            list.getItems().setAll(findings);
            if (kept != null) {
                findings.stream().filter(f -> f.finding().rule().equals(kept.finding().rule())
                        && f.finding().subject().equals(kept.finding().subject())).findFirst()
                        .ifPresent(list.getSelectionModel()::select);
            }
            isFollowing = false;
        }
        summary.setText(summary(findings));
    }

    static String summary(List<NumberedFinding> findings) {
        String counts = List.of(Finding.Level.values()).stream().map(level -> {
            long count = findings.stream().filter(f -> f.finding().level() == level).count();
            return count + " " + level.word();
        }).collect(Collectors.joining(" \u00b7 "));
        return findings.isEmpty() ? "Nothing found against this plan" : counts;
    }

    private final class Cell extends ListCell<NumberedFinding> {
        @Override
        protected void updateItem(NumberedFinding numbered, boolean isEmpty) {
            super.updateItem(numbered, isEmpty);
            setText(null);
            if (isEmpty || numbered == null) {
                setGraphic(null);
                setTooltip(null);
                return;
            }
            Finding finding = numbered.finding();
            Label title = new Label(finding.level().word().toUpperCase(Locale.ROOT) + "  " + finding.subject()
                    + "  \u2013  " + finding.rule());
            title.getStyleClass().add("finding-title");
            title.setWrapText(true);
            Label words = new Label(finding.text());
            words.setWrapText(true);
            VBox text = new VBox(1, title, words);
            finding.measured().ifPresent(measured -> text.getChildren().add(new Label(figures(finding))));
            HBox.setHgrow(text, Priority.ALWAYS);
            HBox line = new HBox(8, FindingBadge.node(finding.level(), numbered.number(), dress.isDark(),
                    dress.textSize()), text);
            double besides = BESIDES * dress.scale();
            line.prefWidthProperty().bind(list.widthProperty().subtract(besides));
            line.maxWidthProperty().bind(list.widthProperty().subtract(besides));
            setGraphic(line);
            setTooltip(Hint.of("Rule " + finding.rule() + ", limit from: " + finding.source()));
        }

        private static String figures(Finding finding) {
            String unit = "1".equals(finding.unit()) ? "" : " " + finding.unit();
            return "found " + Figures.brief(finding.measured().orElse(Double.NaN)) + unit + (finding.limit().isPresent()
                    ? ", limit " + Figures.brief(finding.limit().getAsDouble()) + unit : "");
        }
    }
}
