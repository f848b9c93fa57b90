// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.FormEntry;
import bermwright.editor.model.FormModel;
import bermwright.editor.model.Workbench;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The figures of the picked part, each with its unit, its rule and, where it is wrong, what would be accepted. */
final class FormPane extends ScrollPane {
    private final Workbench bench;
    private final FormModel model;
    private final VBox content = new VBox();
    private final Map<String, FormField> fields = new LinkedHashMap<>();
    private final Map<String, Boolean> opened = new HashMap<>();
    private final Map<String, TitledPane> panes = new HashMap<>();
    private String structure = "not made yet";

    FormPane(Workbench bench, FormModel model) {
        this.bench = bench;
        this.model = model;
        setId("form");
        setFitToWidth(true);
        content.getStyleClass().add("form");
        content.setPadding(new Insets(8));
        setContent(content);
        bench.calm().listen(this::refresh);
        bench.pickedChanged().listen(this::refresh);
        refresh();
    }

    private void refresh() {
        Optional<FormEntry.Block> form = model.form();
        String now = form.map(FormPane::structure).orElse("");
        if (!now.equals(structure)) {
            structure = now;
            fields.clear();
            panes.clear();
            content.getChildren().clear();
            if (form.isPresent()) {
                form.get().entries().forEach(entry -> add(content, entry, 1));
            } else {
                Label hint = new Label("Pick something on the map or in the list above to see its figures here.");
                hint.setWrapText(true);
                hint.getStyleClass().add("hint");
                content.getChildren().add(hint);
            }
        } else {
            form.ifPresent(this::update);
        }
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
        FormField field = fields.get(path);
        Node shown = field == null ? found : field;
        applyCss();
        layout();
        double room = content.getHeight() - getViewportBounds().getHeight();
        double top = content.sceneToLocal(shown.localToScene(0, 0)).getY();
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

    private void update(FormEntry entry) {
        if (entry instanceof FormEntry.Field field) {
            Optional.ofNullable(fields.get(field.path())).ifPresent(node -> node.show(field));
        } else if (entry instanceof FormEntry.Block block) {
            block.entries().forEach(this::update);
        } else if (entry instanceof FormEntry.Items items) {
            items.items().forEach(this::update);
        } else {
            throw new AssertionError(entry + " is not shown");
        }
    }

    private static String structure(FormEntry entry) {
        StringBuilder text = new StringBuilder(entry.path()).append(entry.label());
        if (entry instanceof FormEntry.Block block) {
            text.append(block.isThere()).append(block.canGo());
            block.entries().forEach(inner -> text.append(structure(inner)));
        } else if (entry instanceof FormEntry.Items items) {
            items.items().forEach(inner -> text.append(structure(inner)));
        }
        return text.append(';').toString();
    }

    private void add(VBox box, FormEntry entry, int depth) {
        if (entry instanceof FormEntry.Field field) {
            FormField node = new FormField(model, field);
            fields.put(field.path(), node);
            box.getChildren().add(node);
        } else if (entry instanceof FormEntry.Block block) {
            box.getChildren().add(block(block, depth));
        } else if (entry instanceof FormEntry.Items items) {
            box.getChildren().add(titled(items.path(), items.label() + " (" + items.items().size() + ")",
                    items.rule(), () -> list(items, depth)));
        }
    }

    private Node list(FormEntry.Items items, int depth) {
        VBox list = new VBox(4);
        items.items().forEach(item -> list.getChildren().add(block(item, depth + 1)));
        Button more = new Button("Add to " + items.label());
        more.setTooltip(Hint.of(items.rule()));
        more.setOnAction(event -> model.add(items));
        list.getChildren().add(more);
        return list;
    }

    private Node block(FormEntry.Block block, int depth) {
        if (!block.isThere()) {
            Button add = new Button("Add " + block.label());
            add.setTooltip(Hint.of(block.rule()));
            add.setOnAction(event -> model.add(block));
            return add;
        }
        return titled(block.path(), block.label(), block.rule(), () -> {
            VBox inner = new VBox();
            inner.getStyleClass().add("form");
            block.entries().forEach(entry -> add(inner, entry, depth + 1));
            if (block.canGo()) {
                Button remove = new Button("Take out " + block.label());
                remove.setOnAction(event -> model.remove(block));
                inner.getChildren().add(remove);
            }
            return inner;
        });
    }

    /** A part of the form that can be opened; what is in it is made when it is opened first, to keep picking quick. */
    private TitledPane titled(String path, String label, String rule, Supplier<Node> inner) {
        TitledPane pane = new TitledPane(label, new VBox());
        pane.setAnimated(false);
        panes.put(path, pane);
        String key = path.replaceAll("^[a-z_]+(\\[\\d+])?", "");
        boolean isOpen = opened.getOrDefault(key, false);
        AtomicBoolean isMade = new AtomicBoolean(isOpen);
        if (isOpen) {
            pane.setContent(inner.get());
        }
        pane.setExpanded(isOpen);
        pane.expandedProperty().addListener((observed, before, now) -> {
            opened.put(key, now);
            if (now && !isMade.getAndSet(true)) {
                pane.setContent(inner.get());
                model.form().ifPresent(this::update);
            }
        });
        if (!rule.isEmpty()) {
            pane.setTooltip(Hint.of(rule));
        }
        return pane;
    }

    /** The heading over the form: what is picked, and what can be done with it. */
    static FlowPane heading(Workbench bench, PartActions actions) {
        Label name = new Label();
        name.getStyleClass().add("heading");
        Button copy = new Button("Copy");
        copy.setOnAction(event -> actions.copy());
        Button remove = new Button("Remove");
        remove.setOnAction(event -> actions.remove());
        copy.setMinWidth(USE_PREF_SIZE);
        remove.setMinWidth(USE_PREF_SIZE);
        // Buttons go to a line of their own where name and buttons have no room beside each other.
        FlowPane heading = new FlowPane(6, 4, name, copy, remove);
        heading.getStyleClass().addAll("bar", "form-heading");
        Runnable refresh = () -> {
            Optional<Part> picked = bench.picked();
            name.setText(picked.map(Part::words).orElse("Nothing picked"));
            boolean fixed = picked.isEmpty() || picked.get().kind().isSingle();
            copy.setDisable(fixed);
            remove.setDisable(fixed);
        };
        bench.pickedChanged().listen(refresh);
        refresh.run();
        return heading;
    }
}
