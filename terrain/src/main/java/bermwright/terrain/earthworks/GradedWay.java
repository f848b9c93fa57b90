// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.numeric.Bracket;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A way of some width along a line, level across, nowhere steeper along than a limit, cut and filled with the least
 * soil moved along its middle: ramps and corridors.
 */
public final class GradedWay {
    /** Stations lie no closer (m), so that a way is the same on finer nodes. */
    private static final double STATIONS = 1;

    private GradedWay() {
    }

    /**
     * The way wanted.
     *
     * @param line          its middle line, at least two places
     * @param width         its width (m, true), positive
     * @param greatestGrade greatest slope along (rad), above 0 and below pi/2
     * @param sides         slopes of the sides
     * @param ends          heights wanted at its ends
     */
    public record Way(List<Point> line, double width, double greatestGrade, SideSlopes sides, Ends ends) {
        /** Copies the line; refuses ways without length or width. */
        public Way {
            line = List.copyOf(line);
            Require.that(line.size() >= 2, "a way of %s places; at least two are needed.", line.size());
            for (int i = 1; i < line.size(); i++) {
                Require.positive("length of a part of the way", line.get(i - 1).distance(line.get(i)), "m");
            }
            Require.positive("width of the way", width, "m");
            Require.that(greatestGrade > 0 && greatestGrade < Math.PI / 2,
                    "greatest grade is %s rad; accepted: above 0 to below pi/2.", greatestGrade);
        }
    }

    /**
     * Heights wanted at the ends of a way.
     *
     * @param start       at its start (m); free where absent
     * @param end         at its end (m); free where absent
     * @param fillFromCut fill volume that one cut volume makes (1), where both are to balance along the middle line
     *                    and no end is held; absent where they need not
     */
    public record Ends(OptionalDouble start, OptionalDouble end, OptionalDouble fillFromCut) {
        /** Both ends free, no balance. */
        public static final Ends FREE = new Ends(OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty());

        /** Refuses a balance with an end held. */
        public Ends {
            Require.that(fillFromCut.isEmpty() || start.isEmpty() && end.isEmpty(),
                    "cut and fill cannot be balanced with the height of an end held.");
            fillFromCut.ifPresent(f -> Require.positive("fill from cut", f, "1"));
        }
    }

    /**
     * The heights of a way along its middle line.
     *
     * @param places  stations along the middle line
     * @param heights height of the way at each (m)
     */
    public record Profile(List<Point> places, List<Double> heights) {
        /** Copies the lists. */
        public Profile {
            places = List.copyOf(places);
            heights = List.copyOf(heights);
        }
    }

    /**
     * A way made.
     *
     * @param ground  the ground before and after
     * @param profile its heights along the middle line
     */
    record Made(ShapedGround ground, Profile profile) {
        /**
         * Stations.
         *
         * @return places along the middle line
         */
        List<Point> places() {
            return profile.places;
        }

        /**
         * Heights of the way.
         *
         * @return height at each station (m)
         */
        List<Double> heights() {
            return profile.heights;
        }
    }

    /**
     * Makes a way.
     *
     * @param ground the ground
     * @param way    the way wanted
     * @return the way made; absent where ground under its middle line is missing, or where the heights wanted at its
     *     ends are too far apart for its length and grade
     */
    static Optional<Made> made(ElevationGrid ground, Way way) {
        return profile(ground, way).map(p -> new Made(shaped(ground, way, p), p));
    }

    /**
     * Finds the heights of a way.
     *
     * @param ground the ground
     * @param way    the way wanted
     * @return its heights; absent where ground under its middle line is missing, or where the heights wanted at its
     *     ends are too far apart for its length and grade
     */
    public static Optional<Profile> profile(ElevationGrid ground, Way way) {
        List<Point> stations = stations(way.line,
                Math.max(ground.frame().spacing(), STATIONS / ground.metreScale()));
        double[] heights = stations.stream().mapToDouble(ground::height).toArray();
        if (Arrays.stream(heights).anyMatch(Double::isNaN)) {
            return Optional.empty();
        }
        double shortest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < stations.size(); i++) {
            shortest = Math.min(shortest, stations.get(i - 1).distance(stations.get(i)) * ground.metreScale());
        }
        GradedProfile.Limits limits = new GradedProfile.Limits(shortest, Math.tan(way.greatestGrade),
                way.ends.start, way.ends.end);
        return GradedProfile.leastMoved(heights, limits)
                .map(z -> way.ends.fillFromCut.isPresent() ? balanced(heights, z, way.ends.fillFromCut.getAsDouble())
                        : z)
                .map(z -> new Profile(stations, Arrays.stream(z).boxed().toList()));
    }

    /** Stations so far apart or closer; each part of the line is cut evenly. */
    private static List<Point> stations(List<Point> line, double spacing) {
        List<Point> stations = new ArrayList<>();
        stations.add(line.get(0));
        double shortest = Double.POSITIVE_INFINITY;
        for (int i = 1; i < line.size(); i++) {
            shortest = Math.min(shortest, line.get(i - 1).distance(line.get(i)));
        }
        double step = Math.min(spacing, shortest);
        for (int i = 1; i < line.size(); i++) {
            Point a = line.get(i - 1);
            Point b = line.get(i);
            int count = (int) Math.max(1, Math.floor(a.distance(b) / step + 1e-9));
            for (int k = 1; k <= count; k++) {
                double t = (double) k / count;
                stations.add(k == count ? b : new Point(a.east() + t * (b.east() - a.east()),
                        a.north() + t * (b.north() - a.north())));
            }
        }
        return stations;
    }

    private static double[] balanced(double[] ground, double[] heights, double fillFromCut) {
        double low = -1;
        double high = 1;
        for (int i = 0; i < ground.length; i++) {
            low = Math.min(low, ground[i] - heights[i]);
            high = Math.max(high, ground[i] - heights[i]);
        }
        double rise = Bracket.halved(low, high, 60, by -> {
            double spare = 0;
            for (int i = 0; i < ground.length; i++) {
                double above = ground[i] - heights[i] - by;
                spare += above > 0 ? above * fillFromCut : above;
            }
            return spare > 0;
        }).middle();
        return Arrays.stream(heights).map(z -> z + rise).toArray();
    }

    /**
     * Shapes ground to a way.
     *
     * @param ground  the ground, whichever nodes it has
     * @param way     the way wanted
     * @param profile its heights
     * @return the ground before and after
     */
    public static ShapedGround shaped(ElevationGrid ground, Way way, Profile profile) {
        double half = way.width / 2 / ground.metreScale();
        double[] z = profile.heights.stream().mapToDouble(h -> h).toArray();
        return SideField.shaped(ground, new SideField.Line(profile.places, z, half), way.sides,
                (node, distance, onLine) -> distance <= half ? onLine : Double.NaN);
    }

    /**
     * What stands behind it.
     *
     * @return the note
     */
    public static ModelNote note() {
        return new ModelNote("graded-way", "least soil moved along the middle line within the grade, level across,"
                + " then side slopes to the ground", "ways longer than wide on ground known under their middle line",
                "cross-fall is not in the choice of the grade line: half width x cross slope off the least cut",
                ModelNote.Status.COMPUTED, "dynamic programming over stations and height steps");
    }
}
