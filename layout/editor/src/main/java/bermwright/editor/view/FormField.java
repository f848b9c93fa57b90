// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.FormEntry;
import bermwright.editor.model.FormModel;
import bermwright.finding.Sentence;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;

/** One field of a form: label, value, unit; under it, where the value is wrong, what would be accepted. */
final class FormField extends VBox {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final PseudoClass DEFAULT = PseudoClass.getPseudoClass("default");
    private static final int CORNER_ROWS = 5;
    /** A form narrower than so many times the text's size has no room for label and value side by side (1). */
    private static final double NARROW = 17.5;

    private final FormModel model;
    private final Control control;
    private final Label trouble = new Label();
    private FormEntry.Field field;
    private final HBox line = new HBox(6);
    private boolean isShowing;
    private boolean isStacked;

    FormField(FormModel model, FormEntry.Field field) {
        this.model = model;
        this.field = field;
        this.control = control(field);
        control.setId(field.path());
        control.setTooltip(Hint.of(field.rule()));
        control.setAccessibleText(Sentence.begin(field.label()) + (field.unit().isEmpty() ? ""
                : ", in " + field.unit()));
        Label label = new Label(Sentence.begin(field.label()));
        label.setLabelFor(control);
        label.setTooltip(Hint.of(field.rule()));
        label.getStyleClass().add("field-label");
        label.setWrapText(true);
        Label unit = new Label(field.unit());
        unit.getStyleClass().add("unit");
        trouble.getStyleClass().add("field-trouble");
        trouble.setWrapText(true);
        trouble.setId(field.path() + "!");
        getStyleClass().add("field");
        // The form is as wide as its column, never wider: what has no room goes under its label.
        setMinWidth(0);
        if (control instanceof TextArea) {
            getChildren().addAll(new HBox(6, label, unit), control, trouble);
        } else {
            boolean isText = field.kind() == FormEntry.Kind.TEXT || field.kind() == FormEntry.Kind.WORDS
                    || field.kind() == FormEntry.Kind.FILE;
            HBox.setHgrow(isText ? control : label, Priority.ALWAYS);
            (isText ? control : label).setMaxWidth(Double.MAX_VALUE);
            control.setMinWidth(control instanceof ComboBox ? 0 : USE_PREF_SIZE);
            unit.setMinWidth(USE_PREF_SIZE);
            line.getChildren().addAll(label, control);
            chooser(field).ifPresent(line.getChildren()::add);
            if (!isText) {
                line.getChildren().add(unit);
            }
            line.getStyleClass().add("field-line");
            getChildren().addAll(line, trouble);
            widthProperty().addListener((observed, before, now) -> arrange(label, now.doubleValue()));
        }
        show(field);
    }

    /** Where label and value have no room beside each other, as with large text, the label stands over the value. */
    private void arrange(Label label, double width) {
        boolean isNarrow = width < NARROW * label.getFont().getSize();
        if (isNarrow != isStacked) {
            isStacked = isNarrow;
            if (control instanceof ComboBox) {
                HBox.setHgrow(control, isNarrow ? Priority.ALWAYS : Priority.NEVER);
                control.setMaxWidth(isNarrow ? Double.MAX_VALUE : USE_COMPUTED_SIZE);
            }
            if (isNarrow) {
                line.getChildren().remove(label);
                getChildren().add(0, label);
            } else {
                getChildren().remove(label);
                line.getChildren().add(0, label);
            }
        }
    }

    private Control control(FormEntry.Field shown) {
        return switch (shown.kind()) {
            case CHOICE -> {
                ComboBox<String> box = new ComboBox<>();
                box.getItems().setAll(words(shown));
                box.setCellFactory(list -> new ChoiceCell(() -> field.sources()));
                box.setOnAction(event -> take(box.getValue()));
                yield box;
            }
            case FLAG -> {
                CheckBox box = new CheckBox();
                box.setOnAction(event -> take(String.valueOf(box.isSelected())));
                yield box;
            }
            case CORNERS -> {
                TextArea area = new TextArea();
                area.setPrefRowCount(CORNER_ROWS);
                area.setPromptText("east north, one corner a line");
                yield listened(area);
            }
            case NUMBER, TEXT, WORDS, FILE -> {
                TextField text = new TextField();
                text.getStyleClass().add(shown.kind() == FormEntry.Kind.NUMBER ? "number" : "words");
                text.setOnAction(event -> take(text.getText()));
                yield listened(text);
            }
        };
    }

    private static List<String> words(FormEntry.Field shown) {
        List<String> words = new ArrayList<>();
        if (!shown.isNeeded()) {
            words.add("");
        }
        words.addAll(shown.choices());
        return words;
    }

    /** Whether this node can show a field: one of the same kind and needs. */
    boolean fits(FormEntry.Field now) {
        return now.kind() == field.kind() && now.unit().equals(field.unit()) && now.isNeeded() == field.isNeeded()
                && now.label().equals(field.label()) && now.choices().isEmpty() == field.choices().isEmpty();
    }

    /** A button beside a field that names files or several things. */
    private Optional<ButtonBase> chooser(FormEntry.Field shown) {
        if (shown.kind() == FormEntry.Kind.FILE) {
            Button button = new Button("\u2026");
            button.setAccessibleText("Choose " + shown.label());
            button.setTooltip(Hint.of("Choose a file"));
            button.setOnAction(event -> chooseFile());
            return Optional.of(button);
        } else if (shown.kind() == FormEntry.Kind.WORDS && !shown.choices().isEmpty()) {
            MenuButton button = new MenuButton("");
            button.setAccessibleText("Choose " + shown.label());
            button.setOnShowing(event -> offer(button));
            // A menu without items never shows.
            button.getItems().add(new MenuItem(""));
            return Optional.of(button);
        }
        return Optional.empty();
    }

    private void chooseFile() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(Sentence.begin(field.label()));
        chooser.setInitialDirectory(model.folder().toFile());
        Optional.ofNullable(chooser.showOpenDialog(getScene().getWindow())).ifPresent(file -> {
            ((TextInputControl) control).setText(model.fileText(file.toPath()));
            take(model.fileText(file.toPath()));
        });
    }

    /** Offers what can be named, with what is named already checked. */
    private void offer(MenuButton button) {
        List<String> named = Stream.of(field.text().split(",")).map(String::strip).filter(w -> !w.isEmpty()).toList();
        button.getItems().clear();
        for (String word : field.choices()) {
            CheckMenuItem item = new CheckMenuItem(word + Optional.ofNullable(field.sources().get(word))
                    .map(s -> "  \u2013  " + s).orElse(""));
            item.setMnemonicParsing(false);
            item.setSelected(named.contains(word));
            item.setOnAction(event -> {
                List<String> now = new ArrayList<>(named);
                if (item.isSelected()) {
                    now.add(word);
                } else {
                    now.remove(word);
                }
                ((TextInputControl) control).setText(String.join(", ", now));
                take(String.join(", ", now));
            });
            button.getItems().add(item);
        }
    }

    private Control listened(TextInputControl text) {
        text.focusedProperty().addListener((observed, before, now) -> {
            if (!now) {
                take(text.getText());
            }
        });
        text.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                text.setText(field.text());
                take(field.text());
                event.consume();
            }
        });
        return text;
    }

    /** Gives the field the keys. */
    void take() {
        control.requestFocus();
    }

    private void take(String typed) {
        if (!isShowing && typed != null) {
            model.type(field, typed);
            mark();
        }
    }

    void show(FormEntry.Field now) {
        field = now;
        Optional<FormModel.Refused> refused = model.refused(now);
        boolean isTyping = control.isFocused() && control instanceof TextInputControl;
        isShowing = true;
        if (control instanceof TextInputControl text) {
            String shown = refused.map(FormModel.Refused::text).orElse(now.text());
            if (!isTyping && !text.getText().equals(shown)) {
                text.setText(shown);
            }
        } else if (control instanceof CheckBox box) {
            box.setSelected("true".equals(now.text()));
        } else if (control instanceof ComboBox<?> box) {
            @SuppressWarnings("unchecked")
            ComboBox<String> words = (ComboBox<String>) box;
            if (!words.getItems().equals(words(now))) {
                words.getItems().setAll(words(now));
            }
            String shown = now.text().isEmpty() ? null : now.text();
            if (!Objects.equals(words.getValue(), shown)) {
                words.setValue(shown);
            }
        }
        isShowing = false;
        mark();
    }

    private void mark() {
        Optional<FormModel.Refused> refused = model.refused(field);
        control.pseudoClassStateChanged(WRONG, refused.isPresent());
        control.pseudoClassStateChanged(DEFAULT, !field.isGiven());
        trouble.setText(refused.map(r -> "\u2716 " + r.reason() + ". The plan still has "
                + (r.standing().isEmpty() ? "none" : r.standing()) + ".").orElse(""));
        trouble.setVisible(refused.isPresent());
        trouble.setManaged(refused.isPresent());
    }
}
