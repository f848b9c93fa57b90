// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Dialog;
import javafx.scene.control.DialogPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javafx.stage.Window;

/** Dresses dialogs as the window they belong to: colours, size of text, room for all words. */
final class Dialogs {
    private static final double WIDEST_EM = 44;

    private Dialogs() {
    }

    /** Gives a dialog its owner and the owner's dress. */
    static void dress(Dialog<?> dialog, Window owner) {
        dialog.initOwner(owner);
        dialog.setResizable(true);
        DialogPane pane = dialog.getDialogPane();
        dress(pane, owner.getScene());
        pane.setMinHeight(DialogPane.USE_PREF_SIZE);
        // A bar of buttons makes all as wide as it thinks; none may cut its own words.
        pane.getButtonTypes().forEach(type -> ((Region) pane.lookupButton(type)).setMinWidth(Region.USE_PREF_SIZE));
    }

    /** Gives the root of a window of its own the dress of another. */
    static void dress(Parent root, Scene as) {
        Parent like = as.getRoot();
        root.getStylesheets().setAll(as.getStylesheets());
        root.getStyleClass().removeAll("dark", "light");
        root.getStyleClass().addAll(like.getStyleClass().stream().filter(c -> c.equals("editor") || c.equals("dark")
                || c.equals("light")).toList());
        root.setStyle(like.getStyle());
        if (root instanceof DialogPane pane) {
            pane.setPrefWidth(Math.min(WIDEST_EM * size(like.getStyle()), as.getWidth() * 0.9));
        }
    }

    /** Lets Escape close a window of its own. */
    static void closeOnEscape(Stage stage) {
        stage.getScene().addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                stage.close();
            }
        });
    }

    /** Size of the text that a style sets (pixels). */
    private static double size(String style) {
        String digits = style.replaceAll(".*-fx-font-size: *([0-9.]+)px.*", "$1");
        return digits.matches("[0-9.]+") ? Double.parseDouble(digits) : 13;
    }
}
