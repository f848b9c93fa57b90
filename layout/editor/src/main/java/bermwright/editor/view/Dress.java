// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

/**
 * How the window is dressed.
 *
 * @param isDark whether dark
 * @param scale  text size over the usual (1), 1 to 2
 */
record Dress(boolean isDark, double scale) {
    private static final double TEXT = 13;

    double textSize() {
        return TEXT * scale;
    }
}
