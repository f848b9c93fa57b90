// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.site.planfile.Range;
import java.util.List;
import java.util.Objects;

/**
 * Something that is not known exactly.
 *
 * @param group   what it is, in words; inputs of one group are told as one
 * @param kind    how it enters
 * @param value   its best value, in {@code unit}; a pure number 1 for factors
 * @param spread  one standard deviation, in {@code unit}; 0 where it is a factor with a range of its own
 * @param unit    unit, as people write it
 * @param source  where the spread is from
 * @param finding what finding out would be, in words, such as "ten samples of it"
 * @param targets numbers of the plan that it moves; none for factors
 */
public record UncertainInput(String group, Kind kind, double value, double spread, String unit, String source,
        FindingOut finding, List<Target> targets) {
    /** Copies the list. */
    public UncertainInput {
        Objects.requireNonNull(kind, "kind");
        targets = List.copyOf(targets);
    }

    /** How an input enters. */
    public enum Kind {
        /** Through numbers of the plan. */
        PLAN,
        /** Through a number that shapes what is built: by full assessments one standard deviation either side. */
        SHAPE,
        /** Through the placed density: through numbers of the plan, and the doses' own curve of density. */
        PLACED_DENSITY,
        /** As heights of the ground that are off under one hull, much alike under those that are near. */
        GROUND_UNDER_HULL,
        /** As a factor on doses from cosmic rays. */
        COSMIC_MODEL,
        /** As a factor on doses from the event. */
        EVENT_MODEL,
        /** As a factor on doses from cosmic rays, by the sun. */
        SUN
    }

    /**
     * What finding out would be.
     *
     * @param words   in words, with "ten" where it is done in pieces
     * @param isSampled whether it is done in pieces, each as uncertain as the input itself is now
     */
    public record FindingOut(String words, boolean isSampled) {
    }

    /**
     * A number of the plan that an input moves.
     *
     * @param path   its path in the file
     * @param value  its best value, in the unit of the file
     * @param spread one standard deviation, in the unit of the file
     * @param range  what is accepted
     */
    public record Target(String path, double value, double spread, Range range) {
        /** The number at some standard deviations from its best value, within what is accepted. */
        double at(double deviations) {
            double moved = value + deviations * spread;
            double edge = 1e-6 * Math.max(1, Math.abs(value));
            return Math.max(range.least() + (range.leastItself() ? 0 : edge),
                    Math.min(range.greatest() - (range.greatestItself() ? 0 : edge), moved));
        }
    }
}
