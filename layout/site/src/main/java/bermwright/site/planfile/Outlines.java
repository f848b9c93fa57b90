// SPDX-License-Identifier: Apache-2.0
package bermwright.site.planfile;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether an outline can enclose an area: enough corners, no crossing, no side walked twice. */
final class Outlines {
    private Outlines() {
    }

    /** What is wrong with an outline, or nothing. */
    static Optional<String> trouble(List<Point> corners) {
        int n = corners.size();
        if (n < 3) {
            return Optional.of("an outline of " + n + " corners");
        }
        for (int i = 0; i < n; i++) {
            if (corners.get(i).equals(corners.get((i + 1) % n))) {
                return Optional.of(String.format(Locale.ROOT, "an outline with corner %d given twice", i));
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (meet(corners, i, j)) {
                    return Optional.of(String.format(Locale.ROOT, "an outline that crosses or touches itself,"
                            + " sides %d and %d near %s", i, j, words(corners.get(j))));
                }
            }
        }
        return new Ring(corners).area() > 0 ? Optional.empty() : Optional.of("an outline that encloses nothing");
    }

    private static String words(Point p) {
        return String.format(Locale.ROOT, "[%.2f, %.2f]", p.east(), p.north());
    }

    /** Whether two sides share a point that no outline lets them share. */
    private static boolean meet(List<Point> corners, int i, int j) {
        int n = corners.size();
        Point a = corners.get(i);
        Point b = corners.get((i + 1) % n);
        Point c = corners.get(j);
        Point d = corners.get((j + 1) % n);
        if (j == i + 1) {
            return foldsBack(a, b, d);
        } else if ((j + 1) % n == i) {
            return foldsBack(c, d, b);
        }
        if (Math.max(a.east(), b.east()) < Math.min(c.east(), d.east())
                || Math.max(c.east(), d.east()) < Math.min(a.east(), b.east())
                || Math.max(a.north(), b.north()) < Math.min(c.north(), d.north())
                || Math.max(c.north(), d.north()) < Math.min(a.north(), b.north())) {
            return false;
        }
        return turn(a, b, c) * turn(a, b, d) <= 0 && turn(c, d, a) * turn(c, d, b) <= 0;
    }

    /** Whether the side after {@code b} runs back over the side before it. */
    private static boolean foldsBack(Point a, Point b, Point d) {
        double dot = (a.east() - b.east()) * (d.east() - b.east()) + (a.north() - b.north()) * (d.north() - b.north());
        return turn(a, b, d) == 0 && dot > 0;
    }

    /** Which side of the line from {@code a} to {@code b} a point lies on: 1 left, -1 right, 0 on it. */
    private static int turn(Point a, Point b, Point p) {
        double cross = (b.east() - a.east()) * (p.north() - a.north())
                - (b.north() - a.north()) * (p.east() - a.east());
        return (int) Math.signum(cross);
    }
}
