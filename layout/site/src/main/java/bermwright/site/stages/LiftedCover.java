// SPDX-License-Identifier: Apache-2.0
package bermwright.site.stages;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.site.footprint.BodyProfile;
import bermwright.site.plan.Hull;
import bermwright.site.pose.LyingPose;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.FittedPlane;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A cover placed in lifts: up to a height over the hull's bed, level across the hull, following the bed along it.
 *
 * <p>So both sides stand equally high against the hull when a lift is done. The volume of a lift is what lies between
 * the lifts, less what the hull takes up, brought to the finished cover's own volume in all.
 */
public final class LiftedCover {
    private final Hull hull;
    private final ElevationGrid ground;
    private final PlacedCover cover;
    private final Layer own;
    private final List<Layer> finer;
    private final double bottom;
    private final double top;
    private final double share;

    private LiftedCover(Hull hull, ElevationGrid ground, PlacedCover cover, FittedPlane plane) {
        this.hull = hull;
        this.ground = ground;
        this.cover = cover;
        this.own = layer(ground, cover.finished(), plane);
        List<ElevationGrid> beds = ground.patches();
        List<ElevationGrid> mounds = cover.finished().patches();
        this.finer = IntStream.range(0, mounds.size()).mapToObj(i -> layer(beds.get(i), mounds.get(i), plane)).toList();
        double highest = 0;
        double lowest = 0;
        for (Layer layer : counted()) {
            for (int k = 0; k < layer.nodes.length; k++) {
                highest = Math.max(highest, layer.mound[k] - layer.bed[k]);
                lowest = Math.min(lowest, layer.ground[k] - layer.bed[k]);
            }
        }
        this.bottom = lowest;
        this.top = highest;
        double all = prism(highest) - displaced(highest);
        this.share = all > 0 ? cover.placed() / all : 0;
    }

    /**
     * The lifts of a cover.
     *
     * @param hull   the hull
     * @param ground the ground it lies on
     * @param cover  its finished cover, on the ground's grid and either on its patches too or without any
     * @return the lifts, empty where the ground under the hull is not known
     */
    public static Optional<LiftedCover> of(Hull hull, ElevationGrid ground, PlacedCover cover) {
        Optional<FittedPlane> plane = hull.arrival() == Hull.Arrival.STAYS_UPRIGHT
                ? ground.fittedPlane(hull.bed(ground.metres()))
                : LyingPose.of(hull, ground).map(LyingPose::bed);
        return plane.map(p -> new LiftedCover(hull, ground, cover, p));
    }

    /** The raised nodes of one grid: heights of the ground, of the finished mound and of the bed beside them. */
    private record Layer(int[] nodes, double[] ground, double[] mound, double[] bed, double cell) {
        double at(int k, double height) {
            return Math.min(mound[k], Math.max(ground[k], bed[k] + height));
        }

        void raise(double[] heights, double height) {
            for (int k = 0; k < nodes.length; k++) {
                heights[nodes[k]] = Math.max(heights[nodes[k]], at(k, height));
            }
        }
    }

    private Layer layer(ElevationGrid before, ElevationGrid after, FittedPlane plane) {
        double[] low = before.heights();
        double[] high = after.heights();
        GridFrame frame = before.frame();
        int[] nodes = IntStream.range(0, low.length).filter(i -> high[i] > low[i]).toArray();
        return new Layer(nodes, Arrays.stream(nodes).mapToDouble(i -> low[i]).toArray(),
                Arrays.stream(nodes).mapToDouble(i -> high[i]).toArray(),
                Arrays.stream(nodes).mapToDouble(i -> plane.height(onAxis(frame, i))).toArray(),
                before.trueSpacing() * before.trueSpacing());
    }

    /** The layers that hold all of the mound, each part once: the finer ones where there are some. */
    private List<Layer> counted() {
        return finer.isEmpty() ? List.of(own) : finer;
    }

    /** The place on the hull's axis beside a node. */
    private Point onAxis(GridFrame frame, int node) {
        Azimuth way = hull.layDownAzimuth();
        Point base = hull.lyingBase(ground.metres());
        double east = frame.east(node % frame.columns()) - base.east();
        double north = frame.north(node / frame.columns()) - base.north();
        double along = east * way.east() + north * way.north();
        double end = ground.metres().onPlan(hull.length());
        return base.moved(way, Math.max(0, Math.min(end, along)), 0);
    }

    /**
     * Height of the lowest ground under the cover against the hull's bed, on ground that falls away from it.
     *
     * @return height (m), zero or less
     */
    public double bottom() {
        return bottom;
    }

    /**
     * Height of the finished cover over the hull's bed.
     *
     * @return height (m), zero or more
     */
    public double top() {
        return top;
    }

    /**
     * Soil in the cover up to a height.
     *
     * @param height height over the bed (m)
     * @return volume once placed (m3), from nothing to the finished cover's
     */
    public double volume(double height) {
        if (height >= top) {
            return cover.placed();
        }
        return Math.max(0, Math.min(cover.placed(), share * (prism(height) - displaced(height))));
    }

    private double prism(double height) {
        double volume = 0;
        for (Layer layer : counted()) {
            double sum = 0;
            for (int k = 0; k < layer.nodes.length; k++) {
                sum += layer.at(k, height) - layer.ground[k];
            }
            volume += sum * layer.cell;
        }
        return volume;
    }

    /** What the hull takes up between its bed and a height. */
    private double displaced(double height) {
        if (hull.arrival() == Hull.Arrival.STAYS_UPRIGHT) {
            return Math.PI * hull.radius() * hull.radius() * Math.max(0, Math.min(height, hull.length()));
        }
        double bottom = hull.seat().cradleHeight() - hull.seat().sunk();
        return Math.max(0, BodyProfile.volumeBelow(hull, height - bottom) - BodyProfile.volumeBelow(hull, -bottom));
    }

    /**
     * A surface raised by the cover up to a height.
     *
     * @param surface a surface on the ground's nodes and patches
     * @param height  height over the bed (m)
     * @return the raised surface
     */
    ElevationGrid raised(ElevationGrid surface, double height) {
        double[] heights = surface.heights();
        own.raise(heights, height);
        List<ElevationGrid> patches = new ArrayList<>(surface.patches());
        for (int i = 0; i < finer.size(); i++) {
            if (finer.get(i).nodes.length > 0) {
                double[] built = patches.get(i).heights();
                finer.get(i).raise(built, height);
                patches.set(i, patches.get(i).withHeights(built));
            }
        }
        return surface.withHeights(heights).withPatches(patches);
    }
}
