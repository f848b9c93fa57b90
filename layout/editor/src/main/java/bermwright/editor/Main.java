// SPDX-License-Identifier: Apache-2.0
package bermwright.editor;

import java.util.Locale;
import javafx.application.Application;

/** Starts the editor; a class of its own, because a jar of everything cannot start from an application class. */
public final class Main {
    private Main() {
    }

    /**
     * Starts the editor.
     *
     * @param arguments at most one: the plan to open
     */
    public static void main(String[] arguments) {
        Locale.setDefault(Locale.ROOT);
        Application.launch(EditorApplication.class, arguments);
    }
}
