// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What the window shows before a plan is open: three ways to begin, and the plans opened lately. */
final class WelcomePane extends VBox {
    private static final int MOST_RECENT = 5;

    WelcomePane(EditorWindow window) {
        super(10);
        setId("welcome");
        setAlignment(Pos.CENTER);
        getStyleClass().add("welcome");
        Label title = new Label("Bermwright");
        title.getStyleClass().add("welcome-title");
        Label words = new Label("Where landers lie, how they are laid down, and how deep they are buried.");
        words.setWrapText(true);
        getChildren().addAll(title, words,
                way("welcome-new", "_New plan from an elevation file\u2026", () -> window.beginning().ask()),
                way("welcome-open", "_Open a plan\u2026", window::askOpen),
                way("welcome-demo", "A _copy of the demo", new WindowAsks(window)::openDemo),
                way("welcome-survey", "_Survey an elevation file for places\u2026", new WindowAsks(window)::survey));
        List<Path> recent = window.settings().recentFiles().stream().filter(Files::isRegularFile).limit(MOST_RECENT)
                .toList();
        if (!recent.isEmpty()) {
            getChildren().add(new Label("Opened lately"));
            for (Path file : recent) {
                Hyperlink link = new Hyperlink(file.toString());
                link.setOnAction(event -> window.open(file));
                getChildren().add(link);
            }
        }
        Label drop = new Label("Or drop a plan or an elevation file here.");
        drop.getStyleClass().add("hint");
        getChildren().add(drop);
    }

    private static Button way(String id, String words, Runnable action) {
        Button button = new Button(words);
        button.setId(id);
        button.setMnemonicParsing(true);
        button.getStyleClass().add("way");
        button.setOnAction(event -> action.run());
        return button;
    }
}
