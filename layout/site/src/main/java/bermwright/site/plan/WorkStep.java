// SPDX-License-Identifier: Apache-2.0
package bermwright.site.plan;

import bermwright.foundation.Point;
import java.time.LocalDate;
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
 * @param asBuilt    what was surveyed once it was done; empty before that
 * @param annotations       note, own keys and the keys given
 */
public record WorkStep(String id, Kind step, String of, OptionalInt lift, OptionalDouble upToHeight,
        Optional<String> machine, List<String> after, Optional<AsBuilt> asBuilt, Annotations annotations) {
    /** Copies what comes before. */
    public WorkStep {
        after = List.copyOf(after);
    }

    /**
     * What was surveyed once a step was done.
     *
     * @param elevationFile  elevation file of the survey, as a path beside the plan; empty where the ground was not
     *                       surveyed
     * @param surveyed       day of the survey; empty where it is not stated
     * @param placedDensity  density measured in the placed soil (kg/m3); empty where none was measured
     * @param baseEnd        middle of the base plane of the step's hull as it lies; empty where it was not surveyed
     * @param farEnd         tip of the far end on the axis of the step's hull as it lies; empty where it was not
     *                       surveyed
     * @param annotations    note, own keys and the keys given
     */
    public record AsBuilt(Optional<String> elevationFile, Optional<LocalDate> surveyed, OptionalDouble placedDensity,
            Optional<SurveyedEnd> baseEnd, Optional<SurveyedEnd> farEnd, Annotations annotations) {
    }

    /**
     * An end of a hull as it was surveyed.
     *
     * @param east        projected east (m)
     * @param north       projected north (m)
     * @param height      height as in the elevation file (m); empty where it was not surveyed
     * @param annotations note, own keys and the keys given
     */
    public record SurveyedEnd(double east, double north, OptionalDouble height, Annotations annotations) {
        /**
         * Where it is.
         *
         * @return the place
         */
        public Point place() {
            return new Point(east, north);
        }
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
