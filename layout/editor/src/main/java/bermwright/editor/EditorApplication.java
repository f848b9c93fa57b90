// SPDX-License-Identifier: Apache-2.0
package bermwright.editor;

import bermwright.editor.model.FirstPlan;
import bermwright.editor.model.Settings;
import bermwright.editor.view.EditorWindow;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.stage.Stage;

/** The editor as JavaFX starts it: on the plan named, else on the one opened last, else with three ways to begin. */
public final class EditorApplication extends Application {
    @Override
    public void start(Stage stage) {
        Settings settings = Settings.ofPerson(System.getenv(), System.getProperties());
        EditorWindow window = new EditorWindow(stage, settings);
        Thread.currentThread().setUncaughtExceptionHandler((thread, mistake) -> window.mistake(mistake));
        stage.show();
        List<String> arguments = getParameters().getUnnamed();
        if (!arguments.isEmpty()) {
            window.open(Path.of(arguments.get(0)));
            return;
        }
        FirstPlan.of(settings).ifPresent(window::open);
    }
}
