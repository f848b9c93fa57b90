// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.FindingBoard;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.control.TreeCell;
import javafx.scene.control.TreeView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A row of the list of findings; its parts are made once and get other words, which costs a tenth of making anew. */
final class FindingCell extends TreeCell<FindingRow> {
    /** Width of scroll bar, arrow and rims beside a line, in sizes of the text (1). */
    private static final double BESIDES = 5.2;
    /** Opacity of words of a finding that is of an earlier plan (1); still over 4.5 to 1 against the list's ground. */
    private static final double STALE = 0.75;

    private final TreeView<FindingRow> tree;
    private final Supplier<Dress> dress;
    private final Predicate<String> accepted;
    private final Predicate<Finding> stale;
    private final Label title = new Label();
    private final Label words = new Label();
    private final VBox text = new VBox(1, title, words);
    private final HBox line = new HBox(8);
    private final Tooltip rule = Hint.of("");
    private Optional<FindingRow> shown = Optional.empty();
    private boolean isStale;
    private Optional<Dress> dressed = Optional.empty();

    FindingCell(TreeView<FindingRow> tree, Supplier<Dress> dress, Predicate<String> accepted,
            Predicate<Finding> stale) {
        this.stale = stale;
        this.tree = tree;
        this.dress = dress;
        this.accepted = accepted;
        title.getStyleClass().add("finding-title");
        title.setWrapText(true);
        words.setWrapText(true);
        HBox.setHgrow(text, Priority.ALWAYS);
    }

    @Override
    protected void updateItem(FindingRow row, boolean isEmpty) {
        super.updateItem(row, isEmpty);
        if (isEmpty || row == null || row.group().isEmpty() && row.finding().isEmpty()) {
            setGraphic(null);
            setTooltip(null);
            return;
        }
        Dress now = dress.get();
        boolean isOld = row.finding().filter(n -> stale.test(n.finding())).isPresent();
        if (isOld != isStale || shown.filter(row::equals).isEmpty() || dressed.filter(now::equals).isEmpty()) {
            isStale = isOld;
            row.group().ifPresent(group -> heading(group, now));
            row.finding().ifPresent(finding -> finding(finding, row.isInner(), now));
            shown = Optional.of(row);
        }
        if (dressed.filter(now::equals).isEmpty()) {
            line.prefWidthProperty().bind(tree.widthProperty().subtract(BESIDES * now.textSize()));
            line.maxWidthProperty().bind(tree.widthProperty().subtract(BESIDES * now.textSize()));
            dressed = Optional.of(now);
        }
        setGraphic(line);
        setTooltip(rule);
    }

    private void heading(FindingBoard.Group group, Dress now) {
        line.getChildren().setAll(FindingBadge.node(group.worst(), String.valueOf(group.members().size()),
                now.isDark(), now.textSize()), text);
        title.setText(group.heading());
        words.setText(group.counts());
        rule.setText(group.heading() + ": " + group.counts());
        setAccessibleText(rule.getText());
        showWords();
    }

    private void finding(Numbered numbered, boolean isInner, Dress now) {
        Finding finding = numbered.finding();
        line.getChildren().setAll(FindingBadge.node(finding.level(), numbered.number(), now.isDark(),
                now.textSize()), text);
        String figures = finding.found();
        title.setText((isStale ? "Of the plan before: " : "")
                + (accepted.test(finding.id()) ? "Accepted: " : "") + finding.subject()
                + (finding.parts().isEmpty() ? "" : ": " + String.join(", ", finding.parts()))
                + (isInner || figures.isEmpty() ? "" : "  \u2013  " + figures));
        words.setText(isInner && !figures.isEmpty() ? figures : finding.text());
        rule.setText(finding.level().word() + ", rule " + finding.rule().id() + ", " + finding.origin() + "\n"
                + finding.text());
        setAccessibleText((isStale ? "of the plan before, " : "")
                + finding.level().word() + ", " + numbered.number() + ", " + finding.subject() + ", "
                + finding.text());
        showWords();
    }

    private void showWords() {
        text.setOpacity(isStale ? STALE : 1);
        words.setVisible(!words.getText().isEmpty());
        words.setManaged(!words.getText().isEmpty());
    }
}
