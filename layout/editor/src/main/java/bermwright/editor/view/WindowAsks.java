// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.FirstPlan;
import bermwright.report.HandoverPart;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonType;

/** What a window asks before it hands something over, copies the demo or surveys ground. */
final class WindowAsks {
    private final EditorWindow window;

    WindowAsks(EditorWindow window) {
        this.window = window;
    }

    /** Asks what of a kind is to be handed over, and writes it. */
    void handOver(HandoverPart part) {
        window.site().ifPresent(pane -> HandoverDialog.ask(window.stage(), part, HandoverWork.suggested(pane.bench()
                .document().file(), part)).ifPresent(asked -> pane.handover().start(part, asked)));
    }

    /** Shows what the keys do. */
    void showKeys() {
        Alert alert = new Alert(Alert.AlertType.INFORMATION, EditorKeys.WORDS, ButtonType.CLOSE);
        alert.setHeaderText("Keys on the map");
        Dialogs.dress(alert, window.stage());
        alert.show();
    }

    /** Begins with a copy of the demo, in a folder of the person's own. */
    void openDemo() {
        FirstPlan.demoCopy(System.getenv(), System.getProperties()).ifPresentOrElse(file -> {
            if (window.open(file)) {
                window.guide();
            }
        }, () -> window.report("There is no demo to copy", "The demo plan is not beside the program, or no copy can be"
                + " written into your own folder."));
    }

    /** Surveys ground for places: that of the plan, else a file that is asked for. */
    void survey() {
        Optional<SitePane> site = window.site();
        Optional<Path> region = site.map(pane -> pane.bench().document()).map(document -> document.file()
                .resolveSibling(document.plan().ground().elevationFile())).filter(Files::isRegularFile)
                .or(() -> window.beginning().askElevation());
        Optional<Path> plan = site.map(pane -> pane.bench().document()).filter(d -> !d.plan().hulls().isEmpty())
                .map(d -> d.file());
        region.ifPresent(file -> SurveyWindow.show(window.stage(), file, plan, window::open));
    }
}
