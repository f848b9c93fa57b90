// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.Workbench;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.Tooltip;
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
    private final ListView<Numbered> list = new ListView<>();
    private List<Numbered.Block> blocks = List.of();
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
        list.setPlaceholder(new Label(""));
        list.getSelectionModel().selectedItemProperty().addListener((observed, before, now) -> {
            if (!isFollowing && now != null) {
                go(now, actions);
            }
        });
        list.setOnMouseClicked(event -> {
            Numbered at = list.getSelectionModel().getSelectedItem();
            if (at != null && event.getClickCount() == 2) {
                go(at, actions);
            }
        });
        list.setOnKeyPressed(event -> {
            Numbered at = list.getSelectionModel().getSelectedItem();
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

    private void go(Numbered finding, PartActions actions) {
        bench.pickFinding(finding);
        bench.place(finding.finding()).ifPresent(actions::flyTo);
    }

    private void refresh() {
        List<Numbered> findings = bench.findings();
        if (!findings.equals(new ArrayList<>(list.getItems()))) {
            isFollowing = true;
            Numbered kept = list.getSelectionModel().getSelectedItem();
            blocks = Numbered.blocks(findings.stream().map(Numbered::finding).toList());
            list.getItems().setAll(findings);
            if (kept != null) {
                findings.stream().filter(f -> f.finding().id().equals(kept.finding().id())).findFirst()
                        .ifPresent(list.getSelectionModel()::select);
            }
            isFollowing = false;
        }
        summary.setText(summary(findings, bench.answers().unchecked(bench.document().plan())));
    }

    static String summary(List<Numbered> findings, Optional<String> unchecked) {
        String counts = List.of(Finding.Level.values()).stream().map(level -> {
            long count = findings.stream().filter(f -> f.finding().level() == level).count();
            return count + " " + level.word();
        }).collect(Collectors.joining(" \u00b7 "));
        String found = findings.isEmpty() ? unchecked.isPresent() ? "" : "Nothing found against this plan" : counts;
        return unchecked.map(u -> found.isEmpty() ? u : found + ". " + u).orElse(found);
    }

    /** A line of the list; its parts are made once and get other words, which costs a tenth of making them anew. */
    private final class Cell extends ListCell<Numbered> {
        private final Label title = new Label();
        private final Label words = new Label();
        private final Label figures = new Label();
        private final HBox line = new HBox(8);
        private final VBox text = new VBox(1, title, words, figures);
        private final Tooltip rule = Hint.of("");
        private Optional<Numbered> shown = Optional.empty();
        private Optional<Dress> dressed = Optional.empty();

        private Cell() {
            title.getStyleClass().add("finding-title");
            title.setWrapText(true);
            words.setWrapText(true);
            HBox.setHgrow(text, Priority.ALWAYS);
        }

        @Override
        protected void updateItem(Numbered numbered, boolean isEmpty) {
            super.updateItem(numbered, isEmpty);
            if (isEmpty || numbered == null) {
                setGraphic(null);
                setTooltip(null);
                return;
            }
            boolean isDressed = dressed.filter(dress::equals).isPresent();
            if (!isDressed || shown.filter(numbered::equals).isEmpty()) {
                show(numbered, isDressed);
            }
            if (getGraphic() != line) {
                setGraphic(line);
                setTooltip(rule);
            }
        }

        private void show(Numbered numbered, boolean isDressed) {
            Finding finding = numbered.finding();
            if (!isDressed || shown.filter(s -> s.number().equals(numbered.number())
                    && s.finding().level() == finding.level()).isEmpty()) {
                line.getChildren().setAll(FindingBadge.node(finding.level(), numbered.number(), dress.isDark(),
                        dress.textSize()), text);
            }
            title.setText(finding.level().word().toUpperCase(Locale.ROOT) + "  " + finding.subject() + "  \u2013  "
                    + finding.rule().id());
            words.setText(words(numbered));
            String both = finding.figures().words();
            figures.setText(both);
            figures.setVisible(!both.isEmpty());
            figures.setManaged(!both.isEmpty());
            rule.setText("Rule " + finding.rule().id() + ", " + finding.origin());
            if (!isDressed) {
                line.prefWidthProperty().bind(list.widthProperty().subtract(BESIDES * dress.scale()));
                line.maxWidthProperty().bind(list.widthProperty().subtract(BESIDES * dress.scale()));
            }
            shown = Optional.of(numbered);
            dressed = Optional.of(dress);
        }

        /** What it means and what to do, of several read as one only at the first. */
        private String words(Numbered numbered) {
            Numbered.Block block = blocks.stream().filter(b -> b.members().contains(numbered)).findFirst()
                    .orElseGet(() -> new Numbered.Block(numbered.number(), List.of(numbered)));
            String text = block.text(numbered);
            return text.isEmpty() ? "As " + block.members().get(0).number() + "." : text + "\n" + numbered.finding()
                    .todo();
        }
    }
}
