// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import bermwright.report.drawing.Dot;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * Leaves out the dots of a line that are nearly on the straight line between others.
 *
 * @see "Douglas and Peucker (1973), Algorithms for the reduction of the number of points required to represent a
 *      digitized line or its caricature, Cartographica 10, 112-122"
 */
final class Thinning {
    private Thinning() {
    }

    /**
     * Thins a line.
     *
     * @param dots the line; closed where its last dot is its first
     * @param off  how far a left-out dot may be off (px), zero or more
     * @return the dots that stay, the first and the last among them
     */
    static List<Dot> of(List<Dot> dots, double off) {
        BitSet stays = new BitSet(dots.size());
        stays.set(0);
        stays.set(dots.size() - 1);
        Deque<int[]> open = new ArrayDeque<>();
        open.push(new int[] {0, dots.size() - 1});
        while (!open.isEmpty()) {
            int[] part = open.pop();
            int farthest = -1;
            double most = off;
            for (int i = part[0] + 1; i < part[1]; i++) {
                double here = apart(dots.get(i), dots.get(part[0]), dots.get(part[1]));
                if (here > most) {
                    most = here;
                    farthest = i;
                }
            }
            if (farthest >= 0) {
                stays.set(farthest);
                open.push(new int[] {part[0], farthest});
                open.push(new int[] {farthest, part[1]});
            }
        }
        List<Dot> kept = new ArrayList<>();
        stays.stream().forEach(i -> kept.add(dots.get(i)));
        return kept;
    }

    /** How far a dot is from the straight line between two others (px). */
    private static double apart(Dot dot, Dot from, Dot to) {
        double x = to.x() - from.x();
        double y = to.y() - from.y();
        double length = x * x + y * y;
        double along = length > 0 ? ((dot.x() - from.x()) * x + (dot.y() - from.y()) * y) / length : 0;
        double share = Math.max(0, Math.min(1, along));
        return Math.hypot(dot.x() - from.x() - share * x, dot.y() - from.y() - share * y);
    }
}
