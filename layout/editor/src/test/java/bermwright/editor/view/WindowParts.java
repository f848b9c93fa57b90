// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.Workbench;
import bermwright.finding.Finding;

/** Opens the window's inside to tests of other packages. */
public final class WindowParts {
    private WindowParts() {
    }

    /** Whether the ground is painted. */
    public static boolean isGroundShown(EditorWindow window) {
        return window.site().filter(SitePane::isGroundShown).isPresent();
    }

    /** Whether work goes on in the background. */
    public static boolean isBusy(EditorWindow window) {
        return window.site().orElseThrow().background().isBusy();
    }

    /** The workbench. */
    public static Workbench bench(EditorWindow window) {
        return window.site().orElseThrow().bench();
    }

    /** The map. */
    public static MapPane map(EditorWindow window) {
        return window.site().orElseThrow().map();
    }

    /** Stops the work behind the window. */
    public static void shut(EditorWindow window) {
        window.site().ifPresent(SitePane::close);
    }

    /** Dresses the window. */
    public static void dress(EditorWindow window, boolean isDark, double scale) {
        window.dress(isDark, scale);
    }

    /** Shows the answers under a heading. */
    public static void showAnswers(EditorWindow window, String heading) {
        var tabs = window.site().orElseThrow().answers().tabs();
        tabs.getSelectionModel().select(tabs.getTabs().stream().filter(t -> t.getText().equals(heading)).findFirst()
                .orElseThrow());
    }

    /** Picks a finding in the list. */
    public static boolean pickFinding(EditorWindow window, java.util.function.Predicate<Finding> wanted) {
        return window.site().orElseThrow().answers().findings().pick(wanted);
    }

    /** Opens a field of the form and gives it the keys. */
    public static void reveal(EditorWindow window, String path) {
        window.site().orElseThrow().reveal(path);
    }

    /** Compares with another plan file. */
    public static void compareWith(EditorWindow window, java.nio.file.Path file) {
        window.site().orElseThrow().answers().compareWith(file);
    }

    /** Whether slope bands are painted. */
    public static boolean hasSlopeBands(EditorWindow window) {
        return window.site().orElseThrow().relief().hasSlopeBands();
    }

    /** Whether list and form are seen. */
    public static boolean hasList(EditorWindow window) {
        return window.site().orElseThrow().hasList();
    }

    /** Whether the answers are seen. */
    public static boolean hasAnswers(EditorWindow window) {
        return window.site().orElseThrow().hasAnswers();
    }

    /** Drops a file on the window, as the system's own hand would. */
    public static boolean dropOn(EditorWindow window, java.nio.file.Path file) {
        return window.take(file);
    }

    /** Names another elevation file in the plan, as the file chooser does. */
    public static boolean takeGround(EditorWindow window, java.nio.file.Path file) {
        window.site().orElseThrow().takeGround(file);
        return true;
    }

    /** The headings of the answers. */
    public static java.util.List<String> headings(EditorWindow window) {
        return window.site().orElseThrow().answers().tabs().getTabs().stream()
                .map(javafx.scene.control.Tab::getText).toList();
    }

    /** The pane. */
    static SitePane site(EditorWindow window) {
        return window.site().orElseThrow();
    }
}
