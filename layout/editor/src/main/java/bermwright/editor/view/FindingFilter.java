// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.FindingBoard;
import bermwright.finding.Finding;
import bermwright.report.reader.Reader;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;

/** Which findings are to be seen, and how they are put together. */
final class FindingFilter extends FlowPane {
    private static final String ALL_SUBJECTS = "About everything";
    private static final String ALL_READERS = "For everybody";

    private final TextField search = new TextField();
    private final Map<Finding.Level, ToggleButton> levels = new EnumMap<>(Finding.Level.class);
    private final ComboBox<String> about = new ComboBox<>();
    private final ComboBox<String> reader = new ComboBox<>();
    private final ComboBox<String> grouping = new ComboBox<>();
    private final CheckBox accepted = new CheckBox();
    private final ToggleButton more = new ToggleButton("Filter");
    private final List<Node> inner = new ArrayList<>();
    private Runnable changed = () -> { };
    private boolean isOffering;

    FindingFilter() {
        super(6, 4);
        setId("finding-filter");
        getStyleClass().add("finding-filter");
        search.setId("finding-search");
        search.setPromptText("Search");
        search.setAccessibleText("Search the findings");
        search.setPrefColumnCount(9);
        search.textProperty().addListener((observed, before, now) -> tell());
        more.setId("finding-more");
        more.setSelected(true);
        more.setTooltip(Hint.of("Show or hide by what findings are filtered and put together"));
        more.setOnAction(event -> arrange());
        for (Finding.Level level : Finding.Level.values()) {
            ToggleButton button = new ToggleButton(level.word());
            button.setId("finding-level-" + level.word());
            button.setSelected(true);
            button.setTooltip(Hint.of("Show or leave out findings of level " + level.word()));
            button.setOnAction(event -> tell());
            levels.put(level, button);
            inner.add(button);
        }
        about.getItems().add(ALL_SUBJECTS);
        reader.getItems().add(ALL_READERS);
        Stream.of(Reader.values()).forEach(r -> reader.getItems().add("For the " + r.title().toLowerCase(
                java.util.Locale.ROOT)));
        Stream.of(FindingBoard.Grouping.values()).forEach(g -> grouping.getItems().add(g.words()));
        choice(about, "finding-about", "What the findings are about");
        choice(reader, "finding-reader", "Who decides the findings");
        choice(grouping, "finding-grouping", "How the findings are put together");
        accepted.setId("finding-accepted");
        accepted.setOnAction(event -> tell());
        inner.add(accepted);
        arrange();
        offer(List.of(), List.of(), 0);
    }

    private void choice(ComboBox<String> box, String id, String words) {
        box.setId(id);
        box.setAccessibleText(words);
        box.setTooltip(Hint.of(words));
        box.getSelectionModel().select(0);
        box.setOnAction(event -> tell());
        inner.add(box);
    }

    private void arrange() {
        List<Node> all = new ArrayList<>(List.of(search, more));
        all.addAll(more.isSelected() ? inner : List.of());
        getChildren().setAll(all);
    }

    /** Leaves room for the findings where the text is large. */
    void brief(boolean isBrief) {
        more.setSelected(!isBrief);
        arrange();
    }

    /** Asks to be told when something else is to be seen. */
    void onChange(Runnable listener) {
        changed = listener;
    }

    private void tell() {
        if (!isOffering) {
            changed.run();
        }
    }

    /** What there is to choose from now. */
    void offer(List<String> subjects, List<Finding> findings, int acceptedCount) {
        isOffering = true;
        List<String> all = new ArrayList<>(List.of(ALL_SUBJECTS));
        all.addAll(subjects);
        String chosen = about.getValue();
        if (chosen != null && !all.contains(chosen)) {
            // What is looked at stays chosen although nothing is found about it any more.
            all.add(chosen);
        }
        if (!all.equals(about.getItems())) {
            about.getItems().setAll(all);
            about.setValue(chosen);
        }
        levels.forEach((level, button) -> button.setText(findings.stream().filter(f -> f.level() == level).count()
                + " " + level.word()));
        accepted.setText("Accepted too (" + acceptedCount + ")");
        accepted.setDisable(acceptedCount == 0 && !accepted.isSelected());
        isOffering = false;
    }

    /** What is asked for, accepted findings left out unless they are asked for. */
    FindingBoard.Filter asked(Set<String> acceptedIds) {
        Set<Finding.Level> shown = new HashSet<>();
        levels.forEach((level, button) -> {
            if (button.isSelected()) {
                shown.add(level);
            }
        });
        int who = reader.getSelectionModel().getSelectedIndex();
        return new FindingBoard.Filter(shown, Optional.ofNullable(about.getValue())
                .filter(a -> !a.equals(ALL_SUBJECTS)), who > 0 ? Optional.of(Reader.values()[who - 1])
                : Optional.empty(), search.getText(), accepted.isSelected() ? Set.of() : acceptedIds);
    }

    FindingBoard.Grouping grouping() {
        return FindingBoard.Grouping.values()[Math.max(0, grouping.getSelectionModel().getSelectedIndex())];
    }
}
