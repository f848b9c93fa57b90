// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.foundation.Vec3;

/**
 * A point to be staked out.
 *
 * @param id      short name on the stake, unique on the site, such as {@code A-toe-03}
 * @param subject id of the plan object it belongs to
 * @param kind    what it marks
 * @param place   east, north and height (m); the height is {@code NaN} where the ground is not known
 */
public record SettingOutPoint(String id, String subject, Kind kind, Vec3 place) {
    /** What a point marks. */
    public enum Kind {
        /** An end of the pivot line. */
        PIVOT("pivot"),
        /** The ground under an end of the lying axis. */
        AXIS("axis"),
        /** An end of the lying axis itself: middle of the base plane, and tip of the far end. */
        AXIS_END("axis end"),
        /** Where a cover meets the ground. */
        TOE("toe"),
        /** The crest of a cover above the hull's axis. */
        CREST("crest"),
        /** A corner of a bench, trench, ramp, pad or spoil ground. */
        PREPARATION("corner"),
        /** An anchor. */
        ANCHOR("anchor"),
        /** A winch. */
        WINCH("winch"),
        /** A pole's foot. */
        POLE_FOOT("pole"),
        /** A corner of a borrow ground. */
        BORROW("borrow"),
        /** A corner of a stockpile. */
        STOCKPILE("stockpile"),
        /** A corner of a keep-out. */
        KEEP_OUT("keep-out"),
        /** The middle of a landing pad. */
        PAD("pad");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /**
         * The word used in files and pages.
         *
         * @return the word
         */
        public String word() {
            return word;
        }

        /**
         * What the height of such a point is the height of.
         *
         * @return the words used in files and pages
         */
        public String heightOf() {
            return switch (this) {
                case AXIS_END -> "axis of the lying hull";
                case CREST -> "finished surface";
                case PREPARATION -> "prepared floor";
                default -> "ground before soil is placed";
            };
        }
    }
}
