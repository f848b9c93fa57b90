// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.mend.GearKit;
import bermwright.editor.model.Plainly;
import bermwright.editor.model.Templates;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.finding.Finding;
import bermwright.foundation.InputException;
import bermwright.site.assessment.SiteGround;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.control.Alert;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.TextInputDialog;
import javafx.scene.layout.FlowPane;

/** The heading over the form: what is picked, and what can be done with it. */
final class FormHeading extends FlowPane {
    private static final String LANE = "kit";

    private final Workbench bench;
    private final Background background;
    private final Notices notices;
    private final Label name = new Label();
    private final Button copy = new Button("Copy");
    private final Button remove = new Button("Remove");
    private final Button kit = new Button("Kit of gear\u2026");
    private final MenuButton templates = new MenuButton("Templates");

    FormHeading(Workbench bench, PartActions actions, Background background, Notices notices) {
        // Buttons go to a line of their own where name and buttons have no room beside each other.
        super(6, 4);
        this.bench = bench;
        this.background = background;
        this.notices = notices;
        name.getStyleClass().add("heading");
        copy.setOnAction(event -> actions.copy());
        remove.setOnAction(event -> actions.remove());
        kit.setId("kit");
        kit.setTooltip(Hint.of("Looks for poles, winches, lines, anchors, stays and a hold that lay this hull down"
                + " where it stands, to be taken or not."));
        kit.setOnAction(event -> kit());
        templates.setId("templates");
        templates.setTooltip(Hint.of("Keeps what is picked for other plans, or takes what was kept; the file "
                + Templates.FILE + " beside the plan can be shared."));
        templates.setOnShowing(event -> offerTemplates());
        // A menu without items never shows.
        templates.getItems().add(new MenuItem(""));
        Stream.of(copy, remove, kit, templates).forEach(b -> b.setMinWidth(USE_PREF_SIZE));
        getStyleClass().addAll("bar", "form-heading");
        getChildren().addAll(name, copy, remove);
        bench.pickedChanged().listen(this::refresh);
        refresh();
    }

    private void refresh() {
        Optional<Part> picked = bench.picked();
        name.setText(picked.map(Part::words).orElse("Nothing picked"));
        boolean fixed = picked.isEmpty() || picked.get().kind().isSingle();
        copy.setDisable(fixed);
        remove.setDisable(fixed);
        shown(kit, picked.filter(p -> p.kind() == Part.Kind.HULL).isPresent());
        shown(templates, picked.filter(p -> Stream.of(Templates.Kind.values()).anyMatch(k -> k.isOf(p.kind())))
                .isPresent());
    }

    private void shown(javafx.scene.Node node, boolean isShown) {
        if (isShown && !getChildren().contains(node)) {
            getChildren().add(node);
        } else if (!isShown) {
            getChildren().remove(node);
        }
    }

    /** Looks for a kit for the picked hull and asks whether it is to be taken. */
    void kit() {
        Optional<Part> hull = bench.picked().filter(p -> p.kind() == Part.Kind.HULL);
        Optional<SiteGround> ground = bench.answers().ground();
        if (hull.isEmpty() || ground.isEmpty()) {
            bench.tell(hull.isEmpty() ? "Pick a hull first." : "The ground is not read yet; a kit stands on it.");
            return;
        }
        var plan = bench.document().plan();
        notices.show(LANE, "Looking for a kit of gear for " + hull.get().words() + " \u2026",
                List.of(new Notices.Choice("Stop", () -> background.cancel(LANE))));
        background.start(LANE, progress -> GearKit.of(plan, hull.get().id(), ground.get().grid(), progress),
                new Background.Listener<>(found -> {
                    notices.hide(LANE);
                    ask(hull.get(), found);
                }, failure -> {
                    notices.hide(LANE);
                    bench.tell("No kit was found for " + hull.get().words() + ". " + Plainly.words(failure));
                }, step -> { }, () -> notices.hide(LANE)));
    }

    private void ask(Part hull, GearKit found) {
        String left = found.left().isEmpty() ? "With it nothing refuses the lowering as planned; landings"
                + " beside the planned one are worked out once it is taken."
                : "What still refuses the lowering: " + found.left().stream().map(Finding::text)
                .collect(Collectors.joining(" "));
        Alert alert = new Alert(Alert.AlertType.CONFIRMATION, String.join("\n", found.words()) + "\n\n" + left
                + "\n\nIt is a start to be changed in the form, and one step that can be undone. Have it checked by a"
                + " qualified rigger.", new ButtonType("Take the kit", ButtonBar.ButtonData.OK_DONE),
                ButtonType.CANCEL);
        alert.setTitle("Kit of gear");
        alert.setHeaderText("A kit of gear for " + hull.words());
        alert.getDialogPane().lookupButton(alert.getButtonTypes().get(0)).setId("take-kit");
        Dialogs.dress(alert, getScene().getWindow());
        alert.showAndWait().filter(b -> b.getButtonData() == ButtonBar.ButtonData.OK_DONE)
                .ifPresent(b -> bench.make(found.edit()));
    }

    private void offerTemplates() {
        List<MenuItem> items = new ArrayList<>();
        Optional<Part> picked = bench.picked();
        Templates file = new Templates(bench.document().file());
        for (Templates.Kind kind : Templates.Kind.values()) {
            if (picked.filter(p -> kind.isOf(p.kind())).isPresent()) {
                items.add(item("Keep the " + kind.word() + " as a template\u2026",
                        () -> keep(file, picked.get(), kind)));
            }
        }
        items.add(new SeparatorMenuItem());
        try {
            for (Templates.Template template : file.all()) {
                if (picked.filter(p -> template.kind().isOf(p.kind())).isPresent()) {
                    items.add(item("Take " + template.kind().word() + ": " + template.name(), () -> take(file,
                            picked.get(), template)));
                }
            }
        } catch (InputException unreadable) {
            bench.tell(unreadable.getMessage());
        }
        templates.getItems().setAll(items);
    }

    private static MenuItem item(String words, Runnable action) {
        MenuItem item = new MenuItem(words);
        item.setMnemonicParsing(false);
        item.setOnAction(event -> action.run());
        return item;
    }

    private void keep(Templates file, Part part, Templates.Kind kind) {
        TextInputDialog dialog = new TextInputDialog(part.id().isEmpty() ? kind.word() : part.id());
        dialog.setTitle("Keep a template");
        dialog.setHeaderText("Name of the template; one of the same name is replaced.");
        dialog.getEditor().setId("template-name");
        Dialogs.dress(dialog, getScene().getWindow());
        dialog.showAndWait().filter(n -> !n.isBlank()).ifPresent(chosen -> tried(() -> {
            file.keep(bench.document().plan(), part, kind, chosen);
            notices.show("template", "Kept in " + Templates.FILE + " beside the plan.", List.of());
        }));
    }

    private void take(Templates file, Part part, Templates.Template template) {
        tried(() -> bench.make(file.edit(bench.document().plan(), part, template)));
    }

    private void tried(Runnable work) {
        try {
            work.run();
        } catch (InputException refused) {
            bench.tell(refused.getMessage());
        }
    }
}
