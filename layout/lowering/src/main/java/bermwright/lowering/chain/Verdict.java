// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.chain;

/** Whether a part bears what a load case asks. */
public enum Verdict {
    /** It does, with the required factor of safety. */
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
