// SPDX-License-Identifier: Apache-2.0
package bermwright.report.planted;

import javafx.scene.control.Label;

/** Planted: a screen library outside the editor. */
final class OpensAWindow {
    private OpensAWindow() {
    }

    static String text(Label label) {
        return label.getText();
    }
}
