// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import java.util.Locale;

/**
 * One thing lost at one tilt, and what then.
 *
 * @param lost     what is lost, in words
 * @param tilt     tilt (rad)
 * @param outcome  what then
 * @param demand   force on the part of what is left with the least margin (N), zero where nothing is left
 * @param capacity what that part bears (N), zero where it is not known
 * @param speed    speed of the far end when the hull comes down (m/s), zero where it does not
 * @param words    what then, in words
 */
public record Loss(String lost, double tilt, Outcome outcome, double demand, double capacity, double speed,
        String words) {
    /** What then. */
    public enum Outcome {
        /** What is left holds. */
        HOLDS,
        /** Some part of what is left is not rated, so nobody knows: never taken as holding. */
        NOT_JUDGED,
        /** The hull rocks back to standing. */
        ROCKS_BACK,
        /** The base slides. */
        SLIDES,
        /** Nothing keeps the hull from turning out of its plane. */
        SWINGS,
        /** The hull falls. */
        FALLS;

        /**
         * The word used in files and pages.
         *
         * @return the words in lower case
         */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}
