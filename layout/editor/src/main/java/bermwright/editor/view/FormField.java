// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.FormEntry;
import bermwright.editor.model.FormModel;
import java.util.Objects;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

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
        control.setAccessibleText(field.label() + (field.unit().isEmpty() ? "" : ", in " + field.unit()));
        Label label = new Label(field.label());
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
            boolean isText = field.kind() == FormEntry.Kind.TEXT || field.kind() == FormEntry.Kind.WORDS;
            HBox.setHgrow(isText ? control : label, Priority.ALWAYS);
            (isText ? control : label).setMaxWidth(Double.MAX_VALUE);
            control.setMinWidth(control instanceof ComboBox ? 0 : USE_PREF_SIZE);
            unit.setMinWidth(USE_PREF_SIZE);
            line.getChildren().addAll(label, control, unit);
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
                if (!shown.isNeeded()) {
                    box.getItems().add("");
                }
                box.getItems().addAll(shown.choices());
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
            case NUMBER, TEXT, WORDS -> {
                TextField text = new TextField();
                text.getStyleClass().add(shown.kind() == FormEntry.Kind.NUMBER ? "number" : "words");
                text.setOnAction(event -> take(text.getText()));
                yield listened(text);
            }
        };
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
