// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;

/**
 * An outline with the corners left out that lie nearly on the line between those kept.
 *
 * @see "Douglas and Peucker (1973), Cartographica 10, 112-122"
 */
final class FewerCorners {
    private FewerCorners() {
    }

    /** The outline no farther than so much from what it was; the same where too few corners would be left. */
    static Ring of(Ring ring, double within) {
        List<Point> corners = ring.corners();
        int half = farthest(corners, 0);
        BitSet kept = new BitSet();
        kept.set(0);
        kept.set(half);
        Deque<int[]> open = new ArrayDeque<>();
        open.add(new int[] {0, half});
        open.add(new int[] {half, corners.size()});
        while (!open.isEmpty()) {
            int[] stretch = open.poll();
            Point from = corners.get(stretch[0]);
            Point to = corners.get(stretch[1] % corners.size());
            int worst = -1;
            double most = within;
            for (int i = stretch[0] + 1; i < stretch[1]; i++) {
                double away = corners.get(i).distance(from, to);
                if (away > most) {
                    most = away;
                    worst = i;
                }
            }
            if (worst >= 0) {
                kept.set(worst);
                open.add(new int[] {stretch[0], worst});
                open.add(new int[] {worst, stretch[1]});
            }
        }
        List<Point> left = new ArrayList<>();
        kept.stream().forEach(i -> left.add(corners.get(i)));
        return left.size() < 3 ? ring : new Ring(left);
    }

    private static int farthest(List<Point> corners, int from) {
        int found = from;
        for (int i = 0; i < corners.size(); i++) {
            found = corners.get(i).distance(corners.get(from)) > corners.get(found).distance(corners.get(from)) ? i
                    : found;
        }
        return found;
    }
}
