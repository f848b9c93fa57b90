// SPDX-License-Identifier: Apache-2.0
package bermwright.editor;

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
        Application.launch(EditorApplication.class, arguments);
    }
}
