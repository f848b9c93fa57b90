// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

/** Words that become a sentence. */
public final class Sentence {
    private Sentence() {
    }

    /**
     * Words with their first letter large.
     *
     * @param words the words
     * @return the same, fit to begin a sentence; nothing where there are none
     */
    public static String begin(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
