// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.foundation.Ring;
import bermwright.numeric.Bracket;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A borrow ground dug out: no deeper than a limit below the ground as it lies, its sides at a slope, clear of what
 * must not be undercut, strip by strip from the top.
 *
 * <p>The side begins at the outline, and at the clear distance from each ring that is kept clear. Heights are made at
 * the nodes. What boulders and thin soil take off is the yield, a share of the bank volume.
 */
public final class BorrowPit {
    /** A side is followed over this many times its run on level ground, for ground that rises against it. */
    private static final double RUNS = 4;

    private final ElevationGrid ground;
    private final Ground spec;
    private final double[] depths;

    private BorrowPit(ElevationGrid ground, Ground spec, double[] depths) {
        this.ground = ground;
        this.spec = spec;
        this.depths = depths;
    }

    /**
     * Something that a pit must not come near.
     *
     * @param ring     its outline
     * @param distance how far its edge stays away (m, true), zero or more
     */
    public record KeptClear(Ring ring, double distance) {
        /** Refuses a negative distance. */
        public KeptClear {
            Require.notNegative("clear distance", distance, "m");
        }
    }

    /**
     * A borrow ground.
     *
     * @param area          its outline
     * @param greatestDepth greatest depth below the ground (m), positive
     * @param sideSlope     slope of its sides (rad), above 0 and below pi/2
     * @param stripDepth    depth of one strip (m), positive
     * @param keptClear     what it must not come near
     */
    public record Ground(Ring area, double greatestDepth, double sideSlope, double stripDepth,
            List<KeptClear> keptClear) {
        /** Refuses depths and slopes that cannot be; copies the list. */
        public Ground {
            Require.positive("greatest depth", greatestDepth, "m");
            Require.that(sideSlope > 0 && sideSlope < Math.PI / 2,
                    "side slope is %s rad; accepted: above 0 to below pi/2.", sideSlope);
            Require.positive("strip depth", stripDepth, "m");
            keptClear = List.copyOf(keptClear);
        }
    }

    /**
     * One strip.
     *
     * @param number from 1, the uppermost
     * @param top    its top below the ground (m)
     * @param bottom its bottom below the ground (m)
     * @param bank   bank volume in it (m3)
     */
    public record Strip(int number, double top, double bottom, double bank) {
    }

    /**
     * Lays out a pit.
     *
     * @param ground the ground
     * @param spec   the borrow ground
     * @return the pit at its greatest extent
     */
    public static BorrowPit of(ElevationGrid ground, Ground spec) {
        EdgeField field = new EdgeField(ground.frame());
        boolean[] dug = field.inside(spec.area);
        double[] heights = ground.heights();
        double[] least = new double[heights.length];
        Arrays.fill(least, Double.NEGATIVE_INFINITY);
        double k = ground.metreScale();
        double run = RUNS * spec.greatestDepth / Math.tan(spec.sideSlope) / k;
        PitWall wall = new PitWall(ground, Math.tan(spec.sideSlope) * k, least);
        wall.raise(field, field.pieces(spec.area), 0, run);
        for (KeptClear clear : spec.keptClear) {
            double distance = clear.distance / k;
            boolean[] within = field.inside(clear.ring);
            for (int node = 0; node < dug.length; node++) {
                dug[node] &= !within[node];
            }
            wall.keepClear(field, field.pieces(clear.ring), distance, dug);
            wall.raise(field, field.pieces(clear.ring), distance, run);
        }
        double[] depths = new double[heights.length];
        for (int node = 0; node < heights.length; node++) {
            double room = heights[node] - least[node];
            depths[node] = dug[node] && room > 0 ? Math.min(spec.greatestDepth, room) : 0;
        }
        return new BorrowPit(ground, spec, depths);
    }

    /**
     * The surface left when everything down to a depth is dug.
     *
     * @param depth depth below the ground (m), zero or more; below the greatest depth nothing more comes
     * @return the surface
     */
    public ElevationGrid surface(double depth) {
        Require.notNegative("depth", depth, "m");
        double[] heights = ground.heights();
        for (int node = 0; node < heights.length; node++) {
            heights[node] -= Math.min(depths[node], depth);
        }
        return ground.withHeights(heights);
    }

    /**
     * The surface left when all is dug.
     *
     * @return the surface
     */
    ElevationGrid surface() {
        return surface(spec.greatestDepth);
    }

    /**
     * Bank volume down to a depth; the same as cut between the ground and {@link #surface(double)} where no height is
     * missing.
     *
     * @param depth depth below the ground (m), zero or more
     * @return bank volume (m3)
     */
    public double bank(double depth) {
        Require.notNegative("depth", depth, "m");
        int rows = ground.frame().rows();
        int columns = ground.frame().columns();
        double sum = 0;
        for (int row = 0; row < rows; row++) {
            double share = row == 0 || row == rows - 1 ? 0.5 : 1;
            double line = 0;
            for (int column = 0; column < columns; column++) {
                double here = Math.min(depths[row * columns + column], depth);
                line += column == 0 || column == columns - 1 ? here / 2 : here;
            }
            sum += share * line;
        }
        return sum * ground.trueSpacing() * ground.trueSpacing();
    }

    /**
     * Bank volume of the whole pit.
     *
     * @return bank volume (m3)
     */
    public double bank() {
        return bank(spec.greatestDepth);
    }

    /**
     * The strips from the top.
     *
     * @return the strips; the last may be thinner
     */
    List<Strip> strips() {
        List<Strip> strips = new ArrayList<>();
        double before = 0;
        double top = 0;
        while (top < spec.greatestDepth - 1e-9) {
            double bottom = Math.min(spec.greatestDepth, spec.stripDepth * (strips.size() + 1));
            double all = bank(bottom);
            strips.add(new Strip(strips.size() + 1, top, bottom, all - before));
            before = all;
            top = bottom;
        }
        return strips;
    }

    /**
     * The depth that yields a bank volume.
     *
     * @param bank bank volume wanted (m3), zero or more
     * @return depth below the ground (m), the greatest where the pit does not hold so much
     */
    public double depthFor(double bank) {
        Require.notNegative("bank volume", bank, "m3");
        if (bank >= bank()) {
            return spec.greatestDepth;
        }
        return Bracket.halved(0, spec.greatestDepth, 40, depth -> bank(depth) < bank).high();
    }

    /** Raises the lowest allowed heights along the sides of a pit. */
    private record PitWall(ElevationGrid ground, double rise, double[] least) {
        void raise(EdgeField field, List<Point> line, double clear, double run) {
            for (int i = 1; i < line.size(); i++) {
                Point a = line.get(i - 1);
                Point b = line.get(i);
                field.visit(a, b, clear + run, (node, share, distance) -> {
                    Point onLine = new Point(a.east() + share * (b.east() - a.east()),
                            a.north() + share * (b.north() - a.north()));
                    double rim = rim(onLine, field.place(node), distance > 0 ? Math.min(1, clear / distance) : 0);
                    if (!Double.isNaN(rim)) {
                        least[node] = Math.max(least[node], rim - Math.max(0, distance - clear) * rise);
                    }
                });
            }
        }

        /** The ground where the side begins: a share of the way from the line to the node. */
        private double rim(Point onLine, Point node, double share) {
            return ground.height(onLine.east() + share * (node.east() - onLine.east()),
                    onLine.north() + share * (node.north() - onLine.north()));
        }

        void keepClear(EdgeField field, List<Point> line, double clear, boolean[] dug) {
            for (int i = 1; i < line.size(); i++) {
                field.visit(line.get(i - 1), line.get(i), clear, (node, share, distance) -> dug[node] = false);
            }
        }
    }

    /**
     * What stands behind it.
     *
     * @return the note
     */
    public static ModelNote note() {
        return new ModelNote("borrow-pit", "a floor no deeper than allowed, rising at the side slope from the outline"
                + " and from what is kept clear; dug in level strips",
                "slopes its soil keeps, cells smaller than the pit is wide",
                "the outline is known to half a cell: perimeter x depth x half a cell",
                ModelNote.Status.COMPUTED, "geometry; depth of a strip common practice, no source");
    }
}
