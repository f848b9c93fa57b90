// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

/**
 * A range of tilts in which a line holds or pulls nothing, or too little; a plan with one is refused.
 *
 * @param kind       what is wrong there
 * @param from       first tilt of the range (rad)
 * @param to         last tilt of the range (rad)
 * @param worstLever least lever in the range (m)
 * @param limit      the least lever that is accepted (m)
 */
public record DeadPoint(Kind kind, double from, double to, double worstLever, double limit) {
    /** What is wrong. */
    public enum Kind {
        /** The lowering lines pull down instead of holding. */
        LOWERING_LINES_HOLD_NOTHING("the lowering lines hold nothing"),
        /** The lowering lines pass so close to the pivot line that their tension runs away. */
        LOWERING_LINES_PASS_CLOSE("the lowering lines pass too close to the pivot line"),
        /** The pull-over line does not tip the hull. */
        PULL_OVER_TIPS_NOTHING("the pull-over line does not tip the hull"),
        /** The pull-over line passes so close to the pivot line that its tension runs away. */
        PULL_OVER_PASSES_CLOSE("the pull-over line passes too close to the pivot line");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * What is wrong, as a clause.
         *
         * @return the words
         */
        public String words() {
            return words;
        }
    }
}
