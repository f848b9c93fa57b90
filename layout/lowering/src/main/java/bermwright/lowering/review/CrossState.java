// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.review;

import java.util.Objects;
import java.util.Optional;

/**
 * What a cross slope does at one tilt, held still in the lay-down plane. The lower side is the one the ground falls
 * to.
 *
 * @param tilt       tilt (rad)
 * @param lower      tension of the outermost line on the lower side (N); the pull-over line's before balance
 * @param upper      tension of the outermost line on the upper side (N); below zero it hangs slack
 * @param lowering   whether these are the lowering lines; else the pull-over line pulls
 * @param linesAcross pull of all lines together across the plane (N), zero or more
 * @param pole       thrust of the harder pressed pole (N), zero without poles or before balance
 * @param pivot      what the ground brings on the pivot
 * @param held       what keeps the hull from turning out of its plane
 * @param sideLine   pull of a level side line at the lugs, on the upper side, without which it leaves its plane (N);
 *                   with the lines in one plane it is made fast in line with pivot and centre of mass
 * @param sway       where the hull would come to rest on its rim without side lines; absent on shoes and legs, and
 *                   while it is pulled over
 */
public record CrossState(double tilt, double lower, double upper, boolean lowering, double linesAcross, double pole,
        PivotLoad pivot, Held held, double sideLine, Optional<Sway> sway) {
    /** Refuses missing parts. */
    public CrossState {
        Objects.requireNonNull(pivot, "pivot");
        Objects.requireNonNull(held, "held");
        Objects.requireNonNull(sway, "sway");
    }

    /**
     * The tension of the hardest pulled line.
     *
     * @return the tension (N)
     */
    public double hardest() {
        return Math.max(lower, upper);
    }

    /**
     * Whether an outermost line hangs slack.
     *
     * @return true where its tension would have to push
     */
    public boolean isSlack() {
        return !(Math.min(lower, upper) > 0);
    }

    /** What keeps the hull from turning out of its plane. */
    public enum Held {
        /** The shoes or feet, by their distance and by friction; the lines pull alike. */
        PIVOT("the pivot"),
        /** Shoes or feet carry side by side, slide round, and unequal lines hold it. */
        LINES("pivot and unequal lines"),
        /** Nothing at the pivot is enough: a point, or a shoe that lifts. */
        SIDE_LINE("a side line");

        private final String word;

        Held(String word) {
            this.word = word;
        }

        /**
         * The name.
         *
         * @return the name in words
         */
        public String word() {
            return word;
        }
    }

    /**
     * What the ground brings on the pivot.
     *
     * @param up         square to the ground (N)
     * @param along      along the lay-down azimuth (N)
     * @param side       across, towards the upper side (N)
     * @param lowerShoe  what the shoe or foot on the lower side carries (N); all for a rim
     * @param upperShoe  what the one on the upper side carries (N); zero for a rim and where it lifts
     * @param holdNeeded what an anchor must take along and across together, f sqrt(H2 + S2) - mu V (N), zero or more
     */
    public record PivotLoad(double up, double along, double side, double lowerShoe, double upperShoe,
            double holdNeeded) {
    }

    /**
     * Where a hull on its rim comes to rest by itself, lines paid out alike.
     *
     * @param finds   whether there is such a place; without it the hull rolls away
     * @param angle   angle of the axis to the lay-down plane there (rad), zero or more
     * @param farEnd  how far the far end then stands out of the plane (m)
     * @param hardest tension of the hardest pulled line there (N)
     */
    public record Sway(boolean finds, double angle, double farEnd, double hardest) {
        /** No place to rest. */
        public static final Sway NONE = new Sway(false, Math.PI / 2, 0, 0);
    }
}
