// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The least cover over hulls on given ground: the higher of the ground and the cones of the stable slope that stand
 * on the skin moved out by the wanted thickness.
 *
 * <p>Placed soil is nowhere steeper than the stable slope, and every covered point of skin keeps its thickness.
 * Exact at the nodes for hulls that lie flatter than the stable slope, or stand. A mound has nodes of its own, no
 * farther apart than {@link #FINE_SPACING}, however far apart those of the ground are: between them the surface is
 * straight, so a crest can be low by at most spacing^2 / (8 (radius + thickness)), 1 mm over a hull of 4 m.
 */
public final class LeastCover {
    /** Nodes of a mound lie no farther apart (m), however far apart those of the ground are. */
    public static final double FINE_SPACING = 0.25;

    private final double spacing;

    private LeastCover(double spacing) {
        this.spacing = spacing;
    }

    /**
     * Covers on nodes farther or less far apart, for many trials.
     *
     * @param spacing greatest distance between nodes of a mound (m), positive
     * @return what raises them
     */
    public static LeastCover on(double spacing) {
        return new LeastCover(Require.positive("distance between nodes of a mound", spacing, "m"));
    }

    /**
     * Raises the cover.
     *
     * @param ground      the ground, cuts included; missing heights stay missing
     * @param hulls       hulls and the cover each is to have; none gives bare ground
     * @param stableSlope steepest slope at which placed soil stands (rad), above 0 and below pi/2
     * @param keptClear   strips that no soil may lie on
     * @return the mound
     * @throws IllegalArgumentException if the slope is out of range
     */
    public Mound raised(ElevationGrid ground, List<CoveredHull> hulls, double stableSlope,
            List<KeptClear> keptClear) {
        Require.that(stableSlope > 0 && stableSlope < Math.PI / 2,
                "stable slope is %s degrees; accepted: above 0 and below 90", Math.toDegrees(stableSlope));
        Repose repose = Repose.of(stableSlope);
        List<HullEnvelope> envelopes = hulls.stream().map(h -> new HullEnvelope(h, repose, ground)).toList();
        Work work = new Work(ground, envelopes, hulls, keptClear, repose);
        Mound.Part rough = work.raised(ground);
        List<Mound.Part> parts = MoundFrames.of(rough, spacing).stream().map(f -> work.raised(ground.patch(f)))
                .toList();
        return new Mound(rough, parts, hulls);
    }

    private record Work(ElevationGrid whole, List<HullEnvelope> envelopes, List<CoveredHull> hulls,
            List<KeptClear> keptClear, Repose repose) {
        /** The cover on the nodes of one grid. */
        Mound.Part raised(ElevationGrid ground) {
            double[] heights = ground.heights();
            double[] asked = new double[heights.length];
            Arrays.fill(asked, Double.NEGATIVE_INFINITY);
            double lowest = Double.POSITIVE_INFINITY;
            for (double h : heights) {
                lowest = h < lowest ? h : lowest;
            }
            int[] owner = new int[heights.length];
            Arrays.fill(owner, -1);
            for (int i = 0; i < hulls.size(); i++) {
                raise(envelopes.get(i), hulls.get(i), new Ground(ground.frame(), heights, lowest),
                        new Asked(asked, owner, i));
            }
            for (KeptClear strip : keptClear) {
                clear(strip, repose, new OnGround(ground, whole), asked);
            }
            double[] finished = new double[heights.length];
            for (int i = 0; i < finished.length; i++) {
                finished[i] = asked[i] > heights[i] ? asked[i] : heights[i];
            }
            return new Mound.Part(ground, ground.withHeights(finished), asked, owner);
        }
    }

    /** Part of the ground, and all of it. */
    private record OnGround(ElevationGrid part, ElevationGrid whole) {
    }

    private record Asked(double[] heights, int[] owner, int hull) {
    }

    private record Ground(GridFrame frame, double[] heights, double lowest) {
    }

    private static void raise(HullEnvelope envelope, CoveredHull hull, Ground ground, Asked asked) {
        GridFrame frame = ground.frame;
        double slack = 2 * frame.spacing();
        double reach = hull.hull().reach() + hull.thickness().greatest() + hull.crownWidth() + slack
                + Math.max(0, envelope.top() - ground.lowest) / envelope.slope();
        Point middle = hull.hull().middle().plan();
        int fromRow = row(frame, middle.north() - reach);
        int toRow = row(frame, middle.north() + reach);
        int fromColumn = column(frame, middle.east() - reach);
        int toColumn = column(frame, middle.east() + reach);
        IntStream.rangeClosed(fromRow, toRow).parallel().forEach(row -> {
            int[] starts = new int[envelope.patches()];
            for (int i = 0; i < starts.length; i++) {
                starts[i] = envelope.middle(i);
            }
            double north = frame.north(row);
            for (int column = fromColumn; column <= toColumn; column++) {
                int at = row * frame.columns() + column;
                // Just outside the toe the height is still needed, to find where it meets the ground.
                double floor = Math.max(asked.heights[at], ground.heights[at] - slack * envelope.slope());
                double behind = envelope.behindWalls(frame.east(column), north, frame.spacing());
                double whole = behind > 0 ? envelope.height(frame.east(column), north, floor, starts)
                        : Double.NEGATIVE_INFINITY;
                double height = behind < 1 && whole > ground.heights[at]
                        ? ground.heights[at] + behind * (whole - ground.heights[at]) : whole;
                if (height > asked.heights[at]) {
                    asked.heights[at] = height;
                    asked.owner[at] = asked.hull;
                }
            }
        });
    }

    private static int row(GridFrame frame, double north) {
        return (int) Math.max(0, Math.min(frame.rows() - 1, Math.floor((north - frame.south()) / frame.spacing())));
    }

    private static int column(GridFrame frame, double east) {
        return (int) Math.max(0, Math.min(frame.columns() - 1, Math.floor((east - frame.west()) / frame.spacing())));
    }

    private static void clear(KeptClear strip, Repose repose, OnGround on, double[] asked) {
        ElevationGrid ground = on.part;
        GridFrame frame = ground.frame();
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < frame.columns(); column++) {
                int at = row * frame.columns() + column;
                if (asked[at] > ground.nodeHeight(row, column)) {
                    Point here = new Point(frame.east(column), frame.north(row));
                    Point near = strip.nearest(here.east(), here.north());
                    double away = Math.max(0, here.distance(near) - strip.width() / 2);
                    double foot = strip.floor().orElse(on.whole.height(near));
                    if (!Double.isNaN(foot)) {
                        asked[at] = away == 0 && strip.floor().isEmpty() ? Double.NEGATIVE_INFINITY
                                : Math.min(asked[at], foot + away * repose.tan);
                    }
                }
            }
        }
    }
}
