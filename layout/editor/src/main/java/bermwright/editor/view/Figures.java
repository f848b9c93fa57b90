// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import java.util.Locale;

/** Numbers as people read them. */
final class Figures {
    private Figures() {
    }

    /** A number with as many digits as say something. */
    static String brief(double value) {
        if (Double.isNaN(value)) {
            return "not known";
        }
        if (value == 0) {
            return "0";
        }
        double size = Math.abs(value);
        String pattern = size >= 1000 ? "%,.0f" : size >= 100 ? "%.0f" : size >= 10 ? "%.1f" : size >= 0.1
                ? "%.2f" : "%.3g";
        return String.format(Locale.ROOT, pattern, value).replace('-', '\u2212');
    }
}
