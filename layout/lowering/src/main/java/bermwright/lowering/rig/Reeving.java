// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

import bermwright.foundation.Require;

/**
 * Which line runs over which pole, and how far each part stands to the left of the lay-down plane: the one place that
 * says so, read by statics, map, clearance, setting-out and drawings alike.
 *
 * <p>Lines are counted from right to left, poles and stays too, from 0. Lugs and poles stand evenly between the
 * outermost ones. Lines are shared over the poles in order, each over a sheave of its own at the head of its pole, and
 * on to a winch of its own right behind that pole; winches that share a pole stand side by side, closer where the next
 * pole leaves no room. Without poles a line runs straight to a winch as far to the left as its lug. Each set of stays
 * has one stay to a pole; a single pole has two where the stays are spread.
 *
 * @param lines         number of lowering lines (1), at least 1
 * @param poles         number of poles (1), zero where the lines run straight to the winches
 * @param lugHalf       half the distance between the outermost lugs (m), zero or more
 * @param poleHalf      half the distance between the outermost poles (m), zero or more
 * @param winchSpacing  distance between winches that share a pole (m), zero or more
 */
public record Reeving(int lines, int poles, double lugHalf, double poleHalf, double winchSpacing) {
    /** Refuses no lines, and sizes below zero. */
    public Reeving {
        Require.atLeast("number of lowering lines", lines, 1, "1");
        Require.atLeast("number of poles", poles, 0, "1");
        Require.notNegative("half-spread of the lugs", lugHalf, "m");
        Require.notNegative("half-spread of the poles", poleHalf, "m");
        Require.notNegative("distance between winches", winchSpacing, "m");
    }

    /**
     * How many poles there are where nobody says: one in the plane where they have no spread, else a pair.
     *
     * @param poleHalf half the distance between the outermost poles (m)
     * @return the number (1)
     */
    public static int usualPoles(double poleHalf) {
        return poleHalf > 0 ? 2 : 1;
    }

    /**
     * Whether every pole leads equally many lines, so that the hull is pulled alike on both sides.
     *
     * @return true where it does, and where there are no poles
     */
    public boolean isEven() {
        return poles == 0 || lines % poles == 0;
    }

    /**
     * How far a lug stands to the left.
     *
     * @param line number of the line
     * @return the distance (m), negative to the right
     */
    public double lugLeft(int line) {
        return spread(line, lines, lugHalf);
    }

    /**
     * The pole a line runs over.
     *
     * @param line number of the line
     * @return number of the pole; the first where there are more poles than lines
     * @throws IllegalArgumentException if there are no poles
     */
    public int poleOf(int line) {
        Require.atLeast("number of poles", poles, 1, "1");
        return (int) ((long) line * poles / lines);
    }

    /**
     * How far a pole stands to the left.
     *
     * @param pole number of the pole
     * @return the distance (m), negative to the right
     */
    public double poleLeft(int pole) {
        return spread(pole, poles, poleHalf);
    }

    /**
     * How far the winch of a line stands to the left.
     *
     * @param line number of the line
     * @return the distance (m), negative to the right
     */
    public double winchLeft(int line) {
        if (poles == 0) {
            return lugLeft(line);
        }
        int first = line;
        while (first > 0 && poleOf(first - 1) == poleOf(line)) {
            first--;
        }
        int count = linesOf(poleOf(line));
        double room = poles > 1 && poleHalf > 0 ? 2 * poleHalf / (poles - 1) / count : winchSpacing;
        return poleLeft(poleOf(line)) + (line - first - (count - 1) / 2.0) * Math.min(winchSpacing, room);
    }

    /**
     * How many lines run over a pole.
     *
     * @param pole number of the pole
     * @return the number (1)
     */
    public int linesOf(int pole) {
        int count = 0;
        for (int i = 0; i < lines; i++) {
            count += poleOf(i) == pole ? 1 : 0;
        }
        return count;
    }

    /**
     * How many stays a set has.
     *
     * @param stayHalf half the distance between the outermost anchors of the set (m), zero or more
     * @return the number (1), zero without poles
     */
    public int stays(double stayHalf) {
        return poles == 1 && stayHalf > 0 ? 2 : poles;
    }

    /**
     * The pole that a stay holds.
     *
     * @param stay number of the stay in its set
     * @return number of the pole
     */
    public int poleOfStay(int stay) {
        return poles == 1 ? 0 : stay;
    }

    /**
     * How far the anchor of a stay stands to the left.
     *
     * @param stay     number of the stay in its set
     * @param stayHalf half the distance between the outermost anchors of the set (m), zero or more
     * @return the distance (m), negative to the right
     */
    public double stayLeft(int stay, double stayHalf) {
        return spread(stay, stays(stayHalf), stayHalf);
    }

    private static double spread(int number, int count, double half) {
        return count <= 1 ? 0 : half * (2.0 * number / (count - 1) - 1);
    }
}
