// SPDX-License-Identifier: Apache-2.0
package bermwright.foundation;

import java.util.Locale;

/**
 * What stands behind a physical result: the model, where it holds, how far it may be off, and where it is from.
 *
 * @param id       short name by which results refer to it, such as {@code cosmic-response}
 * @param model    what is computed, in a sentence
 * @param validFor range in which it holds
 * @param spread   how far it may be off
 * @param status   whether it was computed, is provisional, or was used outside its range
 * @param source   published source, or "common practice, no source", or "from memory"
 */
public record ModelNote(String id, String model, String validFor, String spread, Status status, String source) {
    /** How far a result can be leaned on. */
    public enum Status {
        /** Computed inside the model's range. */
        COMPUTED,
        /** A stand-in that a better model is to replace. */
        PROVISIONAL,
        /** Used outside the model's range, and marked so. */
        EXTRAPOLATED;

        /**
         * The word used in files and pages.
         *
         * @return the word in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
