// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * What the planner weighs of an arrangement; the less of each the better.
 *
 * @param hours    machine hours of all hauls (h); empty where the plan has no machine
 * @param soil     soil placed (m3)
 * @param warnings warnings of the full assessment (1)
 * @param tunnels  length of all tunnels between hulls (m)
 * @param cut      soil cut for benches and other preparations (m3)
 * @param dose     dose at the worst station, 84th percentile (Sv); empty where no station has one
 */
public record Figures(OptionalDouble hours, double soil, int warnings, double tunnels, double cut,
        OptionalDouble dose) {
    private static final double MILLI = 1000;
    private static final double PERCENT = 100;

    /** What is weighed, with the digits that count. */
    public enum Weighed {
        /** Machine hours. */
        HOURS("machine hours", "h", 1),
        /** Soil placed. */
        SOIL("soil placed", "m³", 1),
        /** Warnings. */
        WARNINGS("warnings", "", 1),
        /** Length of tunnels. */
        TUNNELS("length of tunnels", "m", 0.1),
        /** Soil cut. */
        CUT("soil cut for preparations", "m³", 1),
        /** Dose at the worst station. */
        DOSE("dose at the worst station, high", "mSv", 0.1);

        private final String word;
        private final String unit;
        private final double digit;

        Weighed(String word, String unit, double digit) {
            this.word = word;
            this.unit = unit;
            this.digit = digit;
        }
    }

    /**
     * One of the figures, in the unit of pages and rounded to the digit that counts.
     *
     * @param what which
     * @return the figure; nothing where it is not known
     */
    public double of(Weighed what) {
        double value = switch (what) {
            case HOURS -> hours.orElse(0);
            case SOIL -> soil;
            case WARNINGS -> warnings;
            case TUNNELS -> tunnels;
            case CUT -> cut;
            case DOSE -> MILLI * dose.orElse(0);
        };
        return Math.rint(value / what.digit) * what.digit;
    }

    /**
     * Whether another is at least as good in all and better in one.
     *
     * @param other the other
     * @return true where this one need not be looked at
     */
    public boolean isDominatedBy(Figures other) {
        boolean better = false;
        for (Weighed what : Weighed.values()) {
            if (other.of(what) > of(what)) {
                return false;
            }
            better |= other.of(what) < of(what);
        }
        return better;
    }

    /**
     * What is given up against the best of a set, in a sentence.
     *
     * @param all the figures of the set, this one among them
     * @return such as "8 % more machine hours than the least, 2 more warnings"; "nothing" for one that is best in all
     */
    public String givenUp(List<Figures> all) {
        List<String> parts = new ArrayList<>();
        for (Weighed what : Weighed.values()) {
            double least = all.stream().mapToDouble(f -> f.of(what)).min().orElse(of(what));
            double more = of(what) - least;
            if (more > 0) {
                parts.add(what == Weighed.WARNINGS ? String.format(Locale.ROOT, "%.0f more warning%s", more,
                        more == 1 ? "" : "s")
                        : least > 0 && more / least >= 0.001
                        ? String.format(Locale.ROOT, "%.1f %% more %s", PERCENT * more / least, what.word)
                        : String.format(Locale.ROOT, "%.1f %s more %s", more, what.unit, what.word));
            }
        }
        return parts.isEmpty() ? "nothing: none is better in anything" : String.join(", ", parts)
                + " than the best of these";
    }
}
