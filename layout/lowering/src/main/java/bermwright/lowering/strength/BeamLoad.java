// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import bermwright.foundation.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * What a lying hull bears along its length: stretches of load that add up where they lie over each other.
 *
 * <p>All sums along the hull are exact. Loads act square to the hull and press down; none lifts.
 *
 * @param length    length of the hull (m), positive
 * @param stretches what lies on it
 */
public record BeamLoad(double length, List<Stretch> stretches) {
    /** Refuses hulls without length or load and stretches that reach beyond the hull. */
    public BeamLoad {
        Require.positive("length", length, "m");
        stretches = List.copyOf(stretches);
        for (Stretch one : stretches) {
            Require.within("end of the loaded stretch", one.to, 0, length * (1 + 1e-12), "m");
        }
        double all = stretches.stream().mapToDouble(Stretch::load).sum();
        Require.positive("load on the hull", all, "N");
    }

    /**
     * A load that runs as a straight line from one place to another.
     *
     * @param from   where it begins, from the base (m), zero or more
     * @param to     where it ends (m), beyond where it begins
     * @param atFrom load on a length where it begins (N/m), zero or more
     * @param atTo   load on a length where it ends (N/m), zero or more
     */
    public record Stretch(double from, double to, double atFrom, double atTo) {
        /** Refuses stretches without length and loads that lift. */
        public Stretch {
            Require.notNegative("start of the loaded stretch", from, "m");
            Require.that(to > from, "a load from %s m to %s m; it must end beyond where it begins.", from, to);
            Require.notNegative("load on a length", atFrom, "N/m");
            Require.notNegative("load on a length", atTo, "N/m");
        }

        private double load() {
            return (to - from) * (atFrom + atTo) / 2;
        }

        /** The sum of load q(t) times (place - t)^power / power! over what of it lies before the place. */
        private double sum(double place, int power) {
            if (!(place > from)) {
                return 0;
            }
            double reached = Math.min(place, to) - from;
            double rise = (atTo - atFrom) / (to - from);
            double ahead = Math.max(0, place - to);
            double fall = over(place - from, power + 1) - over(ahead, power + 1);
            return atFrom * fall + rise * (over(place - from, power + 2) - over(ahead, power + 2)
                    - reached * over(ahead, power + 1));
        }

        /** x^n / n! (m to that power). */
        private static double over(double x, int n) {
            double made = 1;
            for (int i = 1; i <= n; i++) {
                made *= x / i;
            }
            return made;
        }
    }

    /**
     * A weight of which only its centre is known. Within the middle third it spreads over the whole length as a
     * straight line; outside it as a triangle that is greatest at the nearer end and ends at three times the centre's
     * distance from there, the one straight line that presses nowhere upwards.
     *
     * @param weight weight (N), positive
     * @param length length of the hull (m), positive
     * @param centre its centre from the base (m), above zero, below the length
     * @return the load
     */
    public static BeamLoad weight(double weight, double length, double centre) {
        Require.positive("weight", weight, "N");
        Require.within("centre from the base", centre, Math.nextUp(0.0), Math.nextDown(length), "m");
        double far = length - centre;
        Stretch spread;
        if (3 * centre < length) {
            spread = new Stretch(0, 3 * centre, 2 * weight / (3 * centre), 0);
        } else if (3 * far < length) {
            spread = new Stretch(length - 3 * far, length, 0, 2 * weight / (3 * far));
        } else {
            double mean = weight / length;
            spread = new Stretch(0, length, Math.max(0, mean * (4 - 6 * centre / length)),
                    Math.max(0, mean * (6 * centre / length - 2)));
        }
        return new BeamLoad(length, List.of(spread));
    }

    /**
     * This load with more on it.
     *
     * @param more what is added, within the hull
     * @return both
     */
    public BeamLoad with(List<Stretch> more) {
        List<Stretch> all = new ArrayList<>(stretches);
        all.addAll(more);
        return new BeamLoad(length, all);
    }

    /**
     * All of it.
     *
     * @return the load (N), positive
     */
    public double total() {
        return before(length);
    }

    /**
     * Its centre.
     *
     * @return distance from the base (m), above zero, below the length
     */
    public double centre() {
        return length - turn(length) / total();
    }

    /** What lies before a place (N). */
    double before(double place) {
        return sum(place, 0);
    }

    /** The turn of what lies before a place about that place (N m). */
    double turn(double place) {
        return sum(place, 1);
    }

    /** What lies before a place, each part times the cube of its distance over six (N m3): it bends the beam away. */
    double sagging(double place) {
        return sum(place, 3);
    }

    private double sum(double place, int power) {
        double sum = 0;
        for (Stretch one : stretches) {
            sum += one.sum(place, power);
        }
        return sum;
    }
}
