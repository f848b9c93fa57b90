// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A step of the work.
 *
 * @param id         its id
 * @param step       what is done
 * @param of         id of the hull or preparation it is done to
 * @param lift       cover: number of the lift (1), from 1
 * @param upToHeight cover: height above the ground up to which the lift reaches (m)
 * @param machine    id of the machine that does it
 * @param after      ids of the steps that must come before
 * @param annotations       note, own keys and the keys given
 */
public record WorkStep(String id, Kind step, String of, OptionalInt lift, OptionalDouble upToHeight,
        Optional<String> machine, List<String> after, Annotations annotations) {
    /** Copies what comes before. */
    public WorkStep {
        after = List.copyOf(after);
    }

    /** Kinds of step. */
    public enum Kind {
        /** Shape the ground. */
        PREPARE,
        /** Lay a hull down. */
        LOWER,
        /** Place a lift of cover. */
        COVER,
        /** Close an end or hatch corridor. */
        CLOSE;

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
