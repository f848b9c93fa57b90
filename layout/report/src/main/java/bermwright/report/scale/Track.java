// SPDX-License-Identifier: Apache-2.0
package bermwright.report.scale;

import bermwright.report.drawing.Dot;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A line on paper as a way along it. */
final class Track {
    /** No more points than these are looked at for one that can be left out. */
    private static final int LOOKED_AT = 40;

    private final List<Dot> points;
    private final double[] ways;

    private Track(List<Dot> points) {
        this.points = List.copyOf(points);
        this.ways = new double[points.size()];
        for (int i = 1; i < ways.length; i++) {
            ways[i] = ways[i - 1] + Math.hypot(points.get(i).x() - points.get(i - 1).x(),
                    points.get(i).y() - points.get(i - 1).y());
        }
    }

    /** A line without the points that are nearer than a distance (mm) to the way between their neighbours. */
    static Track of(List<Dot> points, double close) {
        List<Dot> kept = new ArrayList<>(List.of(points.get(0)));
        int last = 0;
        for (int i = 1; i + 1 < points.size(); i++) {
            boolean needed = i - last > LOOKED_AT;
            for (int k = last + 1; k <= i && !needed; k++) {
                needed = off(points.get(k), points.get(last), points.get(i + 1)) > close;
            }
            if (needed) {
                kept.add(points.get(i));
                last = i;
            }
        }
        kept.add(points.get(points.size() - 1));
        return new Track(kept);
    }

    List<Dot> points() {
        return points;
    }

    /** Its length (mm). */
    double length() {
        return ways[ways.length - 1];
    }

    /** The place at a way along it (mm). */
    Dot at(double way) {
        int i = Math.min(points.size() - 2, piece(way));
        double length = ways[i + 1] - ways[i];
        double t = length > 0 ? Math.max(0, Math.min(1, (way - ways[i]) / length)) : 0;
        Dot a = points.get(i);
        Dot b = points.get(i + 1);
        return new Dot(a.x() + t * (b.x() - a.x()), a.y() + t * (b.y() - a.y()));
    }

    private int piece(double way) {
        int found = Arrays.binarySearch(ways, way);
        return Math.max(0, found >= 0 ? found : -found - 2);
    }

    /** What lies between two ways along it (mm). */
    List<Dot> part(double from, double to) {
        List<Dot> part = new ArrayList<>(List.of(at(from)));
        for (int i = piece(from) + 1; i < ways.length && ways[i] < to; i++) {
            part.add(points.get(i));
        }
        part.add(at(to));
        return part;
    }

    /** How far it is off the straight way about a place at most (mm). */
    double bend(double way, double half) {
        Dot a = at(way - half);
        Dot b = at(way + half);
        double most = 0;
        for (double share : new double[] {-0.6, -0.3, 0, 0.3, 0.6}) {
            most = Math.max(most, off(at(way + share * half), a, b));
        }
        return most;
    }

    private static double off(Dot p, Dot a, Dot b) {
        double x = b.x() - a.x();
        double y = b.y() - a.y();
        double length = Math.hypot(x, y);
        return length > 0 ? Math.abs((p.x() - a.x()) * y - (p.y() - a.y()) * x) / length
                : Math.hypot(p.x() - a.x(), p.y() - a.y());
    }
}
