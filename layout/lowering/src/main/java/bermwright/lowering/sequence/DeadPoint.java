// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.sequence;

/**
 * A range of tilts in which a line holds or pulls nothing, or too little.
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
        LOWERING_LINES_HOLD_NOTHING("the lowering lines hold nothing", true),
        /** The lowering lines pass so close to the pivot line that their tension runs away. */
        LOWERING_LINES_PASS_CLOSE("the lowering lines pass too close to the pivot line", true),
        /** The pull-over line does not tip the hull. */
        PULL_OVER_TIPS_NOTHING("the pull-over line does not tip the hull", true),
        /** The pull-over line passes so close to the pivot line that its tension runs away. */
        PULL_OVER_PASSES_CLOSE("the pull-over line passes too close to the pivot line", true);

        private final String words;
        private final boolean refused;

        Kind(String words, boolean refused) {
            this.words = words;
            this.refused = refused;
        }

        /**
         * What is wrong, as a clause.
         *
         * @return the words
         */
        public String words() {
            return words;
        }

        /**
         * Whether a plan with it is refused.
         *
         * @return true where it is
         */
        public boolean isRefused() {
            return refused;
        }
    }
}
