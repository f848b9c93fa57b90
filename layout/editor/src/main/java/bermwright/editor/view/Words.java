// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

/** Words as a screen shows them. */
final class Words {
    private Words() {
    }

    /** The words with their first letter large. */
    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
