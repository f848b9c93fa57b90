// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import javafx.scene.control.Tooltip;
import javafx.util.Duration;

/** Tooltips of one kind. */
final class Hint {
    private static final double WIDEST = 420;

    private Hint() {
    }

    static Tooltip of(String words) {
        Tooltip tooltip = new Tooltip(words);
        tooltip.setWrapText(true);
        tooltip.setMaxWidth(WIDEST);
        tooltip.setShowDelay(Duration.millis(350));
        tooltip.setShowDuration(Duration.seconds(40));
        return tooltip;
    }
}
