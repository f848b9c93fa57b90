// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.FormEntry;
import bermwright.editor.model.FormModel;
import bermwright.editor.model.Workbench;
import bermwright.finding.Sentence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;

/**
 * The figures of the picked part, each with its unit, its rule and, where it is wrong, what would be accepted.
 *
 * <p>What is shown stays the same node as long as it is there, so that an answer that comes in or a block that becomes
 * the plan's own takes neither the keys nor a keystroke from whoever is typing.
 */
final class FormPane extends ScrollPane {
    private final FormModel model;
    private final VBox content = new VBox();
    private final Map<String, FormField> fields = new LinkedHashMap<>();
    private final Map<String, TitledPane> panes = new HashMap<>();
    private final Map<String, Node> others = new HashMap<>();
    private final Map<String, FormEntry> latest = new HashMap<>();
    private final Map<String, Boolean> opened = new HashMap<>();
    private final Label hint = new Label("Pick something on the map or in the list above to see its figures here.");
    private String shown = "nothing yet";

    FormPane(Workbench bench, FormModel model) {
        this.model = model;
        setId("form");
        setFitToWidth(true);
        content.getStyleClass().add("form");
        content.setPadding(new Insets(8));
        hint.setWrapText(true);
        hint.getStyleClass().add("hint");
        setContent(content);
        bench.calm().listen(this::refresh);
        bench.pickedChanged().listen(this::refresh);
        refresh();
    }

    private void refresh() {
        Optional<FormEntry.Block> form = model.form();
        String now = form.map(f -> f.path() + " " + f.label()).orElse("");
        if (!now.equals(shown)) {
            shown = now;
            fields.clear();
            panes.clear();
            others.clear();
        }
        latest.clear();
        if (form.isPresent()) {
            fill(content, form.get().entries(), List.of());
        } else if (!content.getChildren().equals(List.of(hint))) {
            content.getChildren().setAll(hint);
        }
    }

    /** Puts the nodes of entries into a box, and touches it only where they are others than before. */
    private void fill(VBox box, List<? extends FormEntry> entries, List<Node> below) {
        List<Node> wanted = new ArrayList<>();
        for (FormEntry entry : entries) {
            latest.put(entry.path(), entry);
            wanted.add(node(entry));
        }
        wanted.addAll(below);
        if (!box.getChildren().equals(wanted)) {
            box.getChildren().setAll(wanted);
        }
    }

    private Node node(FormEntry entry) {
        if (entry instanceof FormEntry.Field field) {
            FormField node = fields.get(field.path());
            if (node == null || !node.fits(field)) {
                node = new FormField(model, field);
                fields.put(field.path(), node);
            } else {
                node.show(field);
            }
            return node;
        } else if (entry instanceof FormEntry.Group group) {
            return group(group);
        } else if (entry instanceof FormEntry.Block block) {
            return block.isThere() ? block(block) : button("Add " + block.label(), block.rule(), "+" + block.path(),
                    () -> add(latest.get(block.path()), block.path()));
        } else if (entry instanceof FormEntry.Items items) {
            return items(items);
        }
        throw new AssertionError(entry + " is not shown");
    }

    private VBox group(FormEntry.Group group) {
        VBox box = (VBox) others.computeIfAbsent(group.path(), path -> {
            Label heading = new Label(group.label());
            heading.getStyleClass().add("group-heading");
            VBox inner = new VBox();
            inner.getStyleClass().add("form");
            VBox outer = new VBox(heading, inner);
            outer.getStyleClass().add("group");
            return outer;
        });
        fill((VBox) box.getChildren().get(1), group.entries(), List.of());
        return box;
    }

    private Node items(FormEntry.Items items) {
        TitledPane pane = pane(items.path(), items.rule());
        pane.setText(Sentence.begin(items.label()) + " (" + items.items().size() + ")");
        if (pane.isExpanded()) {
            Node more = button("Add to " + items.label(), items.rule(), "+" + items.path(), () -> {
                FormEntry.Items now = (FormEntry.Items) latest.get(items.path());
                add(now, items.path() + "[" + now.items().size() + "]");
            });
            fill((VBox) pane.getContent(), items.items(), List.of(more));
        }
        return pane;
    }

    private Node block(FormEntry.Block block) {
        TitledPane pane = pane(block.path(), block.rule());
        pane.setText(Sentence.begin(block.label()));
        if (pane.isExpanded()) {
            List<Node> below = block.canGo() ? List.of(button("Take out " + block.label(), "",
                    "-" + block.path(), () -> {
                pane.requestFocus();
                model.remove((FormEntry.Block) latest.get(block.path()));
            })) : List.of();
            fill((VBox) pane.getContent(), block.entries(), below);
        }
        return pane;
    }

    private Node button(String words, String rule, String key, Runnable action) {
        return others.computeIfAbsent(key, k -> {
            Button button = new Button(words);
            button.setId(key);
            if (!rule.isEmpty()) {
                button.setTooltip(Hint.of(rule));
            }
            button.setOnAction(event -> action.run());
            return button;
        });
    }

    /** Adds a block or item and leads into it, so that the keys are not lost with the button. */
    private void add(FormEntry entry, String path) {
        if (model.add(entry)) {
            reveal(path);
        }
    }

    /** A part of the form that can be opened; what is in it is made when it is opened first, to keep picking quick. */
    private TitledPane pane(String path, String rule) {
        return panes.computeIfAbsent(path, p -> {
            VBox inner = new VBox();
            inner.getStyleClass().add("form");
            TitledPane pane = new TitledPane("", inner);
            pane.setAnimated(false);
            pane.setId(path + ":");
            String key = path.replaceAll("^[a-z_]+(\\[\\d+])?", "");
            pane.setExpanded(opened.getOrDefault(key, false));
            pane.expandedProperty().addListener((observed, before, now) -> {
                opened.put(key, now);
                if (now) {
                    refresh();
                }
            });
            if (!rule.isEmpty()) {
                pane.setTooltip(Hint.of(rule));
            }
            return pane;
        });
    }

    /** Opens what a field stands in, shows it and gives it the keys; what is not there, the nearest around it. */
    void reveal(String path) {
        Set<TitledPane> done = new HashSet<>();
        Optional<TitledPane> next = around(path, done);
        Node found = content;
        while (next.isPresent()) {
            found = next.get();
            done.add(next.get());
            next.get().setExpanded(true);
            next = around(path, done);
        }
        FormField field = fields.containsKey(path) ? fields.get(path) : fields.entrySet().stream()
                .filter(e -> e.getKey().startsWith(path + ".")).map(Map.Entry::getValue).findFirst().orElse(null);
        Node target = field == null ? found : field;
        applyCss();
        layout();
        double room = content.getHeight() - getViewportBounds().getHeight();
        double top = content.sceneToLocal(target.localToScene(0, 0)).getY();
        setVvalue(room <= 0 ? 0 : Math.max(0, Math.min(1, (top - 40) / room)));
        if (field != null) {
            field.take();
        } else {
            found.requestFocus();
        }
    }

    private Optional<TitledPane> around(String path, Set<TitledPane> but) {
        return panes.entrySet().stream().filter(e -> !but.contains(e.getValue()) && (path.equals(e.getKey())
                || path.startsWith(e.getKey() + ".") || path.startsWith(e.getKey() + "[")))
                .min(Comparator.comparing(e -> e.getKey().length())).map(Map.Entry::getValue);
    }
}
