// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.util.Map;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.VBox;

/** A word to choose, with its source under it. */
final class ChoiceCell extends ListCell<String> {
    private static final double WIDE_EM = 30;

    private final Supplier<Map<String, String>> sources;
    private final Label word = new Label();
    private final Label source = new Label();
    private final VBox both = new VBox(word, source);

    ChoiceCell(Supplier<Map<String, String>> sources) {
        this.sources = sources;
        source.setWrapText(true);
        source.getStyleClass().add("choice-source");
    }

    @Override
    protected void updateItem(String item, boolean isEmpty) {
        super.updateItem(item, isEmpty);
        if (isEmpty || item == null) {
            setText(null);
            setGraphic(null);
            return;
        }
        String from = sources.get().getOrDefault(item, "");
        setAccessibleText(item + (from.isEmpty() ? "" : ", " + from));
        if (from.isEmpty()) {
            setGraphic(null);
            setText(item.isEmpty() ? "(left out)" : item);
            return;
        }
        setText(null);
        word.setText(item);
        source.setText(from);
        source.setMaxWidth(WIDE_EM * word.getFont().getSize());
        setGraphic(both);
    }
}
