// SPDX-License-Identifier: Apache-2.0
package bermwright.finding;

/** Whether something keeps what is required of it. What is not judged is not met either. */
public enum Verdict {
    /** It does, with the required margin. */
    MET("met"),
    /** It does not. */
    NOT_MET("not met"),
    /** Nobody knows, for a figure is missing: never taken as met. */
    NOT_JUDGED("not judged");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /**
     * The word used in files and pages.
     *
     * @return the words in lower case
     */
    public String word() {
        return word;
    }
}
