// SPDX-License-Identifier: Apache-2.0
package bermwright.site.assessment;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.site.plan.Hull;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The site cut upright along a line: the ground before any work, the bed, the finished soil and the lying hulls.
 *
 * <p>Heights are those of the site's own nodes, bilinear between them; a hull is cut as the cylinder of its diameter
 * between its end planes, so that domes and cones of its ends are not shown.
 *
 * @param samples heights along the line, from its start
 * @param hulls   where the line crosses hulls
 */
public record SectionAlong(List<Sample> samples, List<Crossed> hulls) {
    private static final int SAMPLES = 480;

    /**
     * Heights at a place of the line.
     *
     * @param distance true distance from the start of the line (m)
     * @param natural  the ground before any work (m), {@code NaN} where it is not known
     * @param bed      the ground that is prepared (m), {@code NaN} where it is not known
     * @param finished the surface with the covers (m), {@code NaN} where it is not known
     */
    public record Sample(double distance, double natural, double bed, double finished) {
    }

    /**
     * A hull that the line crosses.
     *
     * @param id     its id
     * @param heights distance (m), lower and upper height (m) of its skin, in order along the line
     */
    public record Crossed(String id, List<double[]> heights) {
        /** Copies the list. */
        public Crossed {
            heights = List.copyOf(heights);
        }
    }

    /** Copies the lists. */
    public SectionAlong {
        samples = List.copyOf(samples);
        hulls = List.copyOf(hulls);
    }

    /**
     * Cuts the site.
     *
     * @param line   corners of the line, two or more
     * @param ground the ground, for as long as nothing is assessed
     * @param site   the assessed site; empty for the ground alone
     * @return the section
     */
    public static SectionAlong of(List<Point> line, ElevationGrid ground, Optional<Assessment> site) {
        TrueMetres metres = ground.metres();
        ElevationGrid natural = site.flatMap(Assessment::cover).map(c -> c.natural()).orElse(ground);
        ElevationGrid bed = site.flatMap(Assessment::cover).map(c -> c.prepared()).orElse(ground);
        ElevationGrid finished = site.flatMap(Assessment::cover).map(c -> c.finished()).orElse(ground);
        List<Sample> samples = new ArrayList<>();
        List<Point> places = new ArrayList<>();
        double length = 0;
        for (int i = 1; i < line.size(); i++) {
            length += metres.distance(line.get(i - 1), line.get(i));
        }
        double begun = 0;
        for (int i = 1; i < line.size(); i++) {
            Point from = line.get(i - 1);
            Point to = line.get(i);
            double piece = metres.distance(from, to);
            int steps = (int) Math.max(2, Math.ceil(SAMPLES * piece / Math.max(length, 1e-9)));
            for (int k = i == 1 ? 0 : 1; k <= steps; k++) {
                double share = (double) k / steps;
                Point at = new Point(from.east() + share * (to.east() - from.east()),
                        from.north() + share * (to.north() - from.north()));
                places.add(at);
                samples.add(new Sample(begun + share * piece, natural.height(at), bed.height(at),
                        finished.height(at)));
            }
            begun += piece;
        }
        List<Crossed> hulls = new ArrayList<>();
        site.ifPresent(s -> s.hulls().forEach(h -> h.lying().ifPresent(pose -> {
            List<double[]> heights = crossed(h.hull(), pose, places, samples, metres);
            if (!heights.isEmpty()) {
                hulls.add(new Crossed(h.hull().id(), heights));
            }
        })));
        return new SectionAlong(samples, hulls);
    }

    /** Where an upright line through each place meets the cylinder. */
    private static List<double[]> crossed(Hull hull, LyingPose pose, List<Point> places, List<Sample> samples,
            TrueMetres metres) {
        List<double[]> heights = new ArrayList<>();
        Vec3 start = metres.stretched(pose.axisStart());
        Vec3 way = pose.direction();
        double level = Math.hypot(way.x(), way.y());
        for (int i = 0; i < places.size(); i++) {
            Point at = metres.stretched(places.get(i));
            double east = at.east() - start.x();
            double north = at.north() - start.y();
            double along = (east * way.x() + north * way.y()) / level;
            double aside = (east * way.y() - north * way.x()) / level;
            double half = Math.sqrt(Math.max(0, hull.radius() * hull.radius() - aside * aside)) / level;
            double axis = start.z() + along * way.z() / level;
            if (Math.abs(aside) < hull.radius() && along >= 0 && along <= hull.length() * level) {
                heights.add(new double[] {samples.get(i).distance(), axis - half, axis + half});
            }
        }
        return heights;
    }
}
