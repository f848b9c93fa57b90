// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Ring;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Ground that is shaped before the work.
 *
 * @param id            its id
 * @param kind          what is made
 * @param area          its outline
 * @param level         height of its floor (m, same datum as the elevation file); best fit where not stated
 * @param greatestGrade steepest grade of its floor (rad)
 * @param sideSlope     slope of its sides (rad)
 * @param annotations          note, own keys and the keys given
 */
public record Preparation(String id, Kind kind, Ring area, OptionalDouble level, double greatestGrade,
        double sideSlope, Annotations annotations) {
    /** Kinds of preparation. */
    public enum Kind {
        /** A level or graded bench. */
        BENCH,
        /** A trench a hull lies in. */
        TRENCH,
        /** A ramp. */
        RAMP,
        /** A pad under a pole foot or an anchor. */
        PAD,
        /** Where spare soil is left. */
        SPOIL;

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
