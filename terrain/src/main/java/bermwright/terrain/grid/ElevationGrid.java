// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.foundation.Ring;
import bermwright.foundation.Vec3;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleBinaryOperator;

/**
 * Heights at the nodes of a regular grid; never changes once made, so it can be shared between threads.
 *
 * <p>Places are in projected metres, the same as in plan files. Projected metres are not true metres: the grid
 * carries its {@link #metreScale()}, true metres in one projected metre, and all slopes, distances along profiles,
 * areas and volumes taken from a grid are true. It is 1 unless a file's reference system says otherwise.
 *
 * <p>A grid may carry finer patches ({@link #patches()}) where what is built is described closer than its own nodes
 * can: heights and gradients at a place inside a patch are the patch's. Nodes are always the grid's own.
 */
public final class ElevationGrid implements HeightSource {
    private static final ElevationGrid[] NO_PATCHES = {};

    private final GridFrame frame;
    private final double[] heights;
    private final double metreScale;
    private final int refinement;
    private final ElevationGrid[] patches;

    private ElevationGrid(GridFrame frame, double[] heights, double metreScale, int refinement,
            ElevationGrid[] patches) {
        this.frame = frame;
        this.heights = heights;
        this.metreScale = metreScale;
        this.refinement = refinement;
        this.patches = patches;
    }

    /**
     * A grid from heights.
     *
     * @param frame   where the nodes lie
     * @param heights heights (m), rows x columns, row 0 southernmost, {@code NaN} where missing; copied
     * @return the grid
     * @throws IllegalArgumentException if the number of heights is not that of the nodes, or one is infinite
     */
    public static ElevationGrid of(GridFrame frame, double[] heights) {
        return checked(frame, heights.clone(), 1);
    }

    private static ElevationGrid checked(GridFrame frame, double[] heights, double metreScale) {
        Require.that(heights.length == frame.size(), "%s heights for %s nodes.", heights.length, frame.size());
        for (double h : heights) {
            if (Double.isInfinite(h)) {
                throw new IllegalArgumentException("a height is infinite; missing heights are NaN.");
            }
        }
        return new ElevationGrid(frame, heights, metreScale, 1, NO_PATCHES);
    }

    /**
     * A grid from a formula.
     *
     * @param frame  where the nodes lie
     * @param height height (m) from east (m) and north (m)
     * @return the grid
     */
    public static ElevationGrid sampled(GridFrame frame, DoubleBinaryOperator height) {
        return checked(frame, FinerNodes.sampled(frame, height), 1);
    }

    /** Takes the heights of a grid that is being filled; safe from many threads as long as they share no node. */
    @FunctionalInterface
    public interface HeightSink {
        /**
         * Takes a run of heights along a row.
         *
         * @param row     row (1), 0 is the southernmost
         * @param column  column of the first height (1), 0 is the westernmost
         * @param heights heights (m), {@code NaN} where missing; the first {@code count} are copied
         * @param count   how many (1), not past the row's end
         */
        void put(int row, int column, double[] heights, int count);
    }

    /**
     * A grid filled piece by piece, so that a big one is held only once; nodes never filled are missing.
     *
     * @param frame where the nodes lie
     * @param fill  fills the nodes before it returns
     * @return the grid
     * @throws IllegalArgumentException if a run leaves the frame or a height is infinite
     */
    public static ElevationGrid filled(GridFrame frame, Consumer<HeightSink> fill) {
        double[] heights = new double[frame.size()];
        Arrays.fill(heights, Double.NaN);
        fill.accept((row, column, run, count) -> {
            Require.that(row >= 0 && row < frame.rows() && column >= 0 && count >= 0
                    && column + count <= frame.columns(), "%s heights from row %s, column %s leave the grid.", count,
                    row, column);
            System.arraycopy(run, 0, heights, row * frame.columns() + column, count);
        });
        return checked(frame, heights, 1);
    }

    /**
     * These nodes with other heights, without patches.
     *
     * @param changed heights (m), rows x columns, row 0 southernmost, {@code NaN} where missing; copied
     * @return the changed grid, on the same frame and metre scale
     * @throws IllegalArgumentException if the number of heights is not that of the nodes, or one is infinite
     */
    public ElevationGrid withHeights(double[] changed) {
        return new ElevationGrid(frame, checked(frame, changed.clone(), 1).heights, metreScale, refinement, NO_PATCHES);
    }

    /**
     * The same ground with nodes put between its own, by the bilinear height.
     *
     * @param times parts into which each cell is cut along each side (1), positive
     * @return the finer grid; it remembers the spacing of what was surveyed
     */
    public ElevationGrid refined(int times) {
        Require.that(times > 0, "a cell is to be cut into %s parts along its side; at least 1.", times);
        return times == 1 ? this : patch(FinerNodes.between(frame, times));
    }

    /**
     * This ground on finer nodes over part of it.
     *
     * @param nodes where the finer nodes lie, inside this grid
     * @return the patch, its heights those of this grid at the nodes; {@code NaN} where they are missing
     */
    public ElevationGrid patch(GridFrame nodes) {
        return new ElevationGrid(nodes, FinerNodes.heights(this, nodes), metreScale,
                (int) Math.max(1, Math.round(refinement * frame.spacing() / nodes.spacing())), NO_PATCHES);
    }

    /**
     * This grid with finer patches.
     *
     * @param finer the patches, of one metre scale with this grid, none over another
     * @return the same nodes with those patches in place of any there were
     */
    public ElevationGrid withPatches(List<ElevationGrid> finer) {
        return new ElevationGrid(frame, heights, metreScale, refinement, finer.toArray(ElevationGrid[]::new));
    }

    /**
     * The same heights on nodes elsewhere, without patches.
     *
     * @param nodes as many rows and columns of nodes
     * @return the grid there; the heights are shared, not copied
     */
    public ElevationGrid moved(GridFrame nodes) {
        Require.that(nodes.rows() == frame.rows() && nodes.columns() == frame.columns(), "other nodes than the grid's");
        return new ElevationGrid(nodes, heights, metreScale, refinement, NO_PATCHES);
    }

    /**
     * Where this ground is described closer than by its own nodes.
     *
     * @return the patches, often none
     */
    public List<ElevationGrid> patches() {
        return List.of(patches);
    }

    /**
     * The patch that holds a place.
     *
     * @param east  east (m)
     * @param north north (m)
     * @return the patch; this grid where there is none
     */
    public ElevationGrid around(double east, double north) {
        for (ElevationGrid patch : patches) {
            if (patch.frame.holds(east, north)) {
                return patch;
            }
        }
        return this;
    }

    /**
     * The true distance between neighbouring surveyed heights, however many nodes were put between them.
     *
     * @return the spacing of the elevation file (m), positive
     */
    public double surveyedSpacing() {
        return trueSpacing() * refinement;
    }

    /**
     * These heights with another metre scale.
     *
     * @param scale true metres in one projected metre (1), positive
     * @return the changed grid; the heights are shared, not copied
     */
    public ElevationGrid withMetreScale(double scale) {
        return new ElevationGrid(frame, heights, Require.positive("metre scale", scale, "1"), refinement,
                Arrays.stream(patches).map(p -> p.withMetreScale(scale)).toArray(ElevationGrid[]::new));
    }

    @Override
    public double metreScale() {
        return metreScale;
    }

    @Override
    public GridFrame frame() {
        return frame;
    }

    @Override
    public void read(NodeRange block, double[] into) {
        Require.that(block.isIn(frame) && into.length >= block.nodes(), "the block leaves the grid, or the array is"
                + " too short for it.");
        for (int i = 0; i < block.rows(); i++) {
            System.arraycopy(heights, (block.firstRow() + i) * frame.columns() + block.firstColumn(), into,
                    i * block.columns(), block.columns());
        }
    }

    /**
     * The height at a node; another word than the height at a place, so that rows are never taken for norths.
     *
     * @param row    row (1), 0 is the southernmost
     * @param column column (1), 0 is the westernmost
     * @return the height (m), {@code NaN} where missing
     */
    public double nodeHeight(int row, int column) {
        return heights[row * frame.columns() + column];
    }

    /**
     * The bilinear height.
     *
     * @param place the place
     * @return the height (m); {@code NaN} outside the grid or where one of the four nodes is missing
     */
    public double height(Point place) {
        return height(place.east(), place.north());
    }

    /**
     * The bilinear height.
     *
     * @param east  east (m)
     * @param north north (m)
     * @return the height (m); {@code NaN} outside the grid or where one of the four nodes is missing
     */
    public double height(double east, double north) {
        ElevationGrid patch = around(east, north);
        return patch != this ? patch.height(east, north) : ownHeight(east, north);
    }

    private double ownHeight(double east, double north) {
        double x = (east - frame.west()) / frame.spacing();
        double y = (north - frame.south()) / frame.spacing();
        if (!(x >= 0 && y >= 0 && x <= frame.columns() - 1 && y <= frame.rows() - 1)) {
            return Double.NaN;
        }
        int column = Math.min((int) x, frame.columns() - 2);
        int row = Math.min((int) y, frame.rows() - 2);
        double u = x - column;
        double v = y - row;
        return (1 - v) * ((1 - u) * nodeHeight(row, column) + u * nodeHeight(row, column + 1))
                + v * ((1 - u) * nodeHeight(row + 1, column) + u * nodeHeight(row + 1, column + 1));
    }

    /**
     * The gradient of the bilinear ground.
     *
     * @param place the place
     * @return the gradient, in true metres; unknown outside the grid or where one of the four nodes is missing
     */
    public Gradient gradient(Point place) {
        if (around(place.east(), place.north()) != this) {
            return around(place.east(), place.north()).gradient(place);
        }
        double x = (place.east() - frame.west()) / frame.spacing();
        double y = (place.north() - frame.south()) / frame.spacing();
        if (!(x >= 0 && y >= 0 && x <= frame.columns() - 1 && y <= frame.rows() - 1)) {
            return Gradient.UNKNOWN;
        }
        int column = Math.min((int) x, frame.columns() - 2);
        int row = Math.min((int) y, frame.rows() - 2);
        double u = x - column;
        double v = y - row;
        double southwest = nodeHeight(row, column);
        double southeast = nodeHeight(row, column + 1);
        double northwest = nodeHeight(row + 1, column);
        double northeast = nodeHeight(row + 1, column + 1);
        return new Gradient(((1 - v) * (southeast - southwest) + v * (northeast - northwest)) / trueSpacing(),
                ((1 - u) * (northwest - southwest) + u * (northeast - southeast)) / trueSpacing());
    }

    /**
     * The steepest slope of the bilinear ground; over one cell, so noise in the heights shows fully.
     *
     * @param place the place
     * @return angle to the level (rad); {@code NaN} outside the grid or where one of the four nodes is missing
     */
    public double slope(Point place) {
        return gradient(place).slope();
    }

    /**
     * The bilinear ground along a straight line, both ends included.
     *
     * @param from start
     * @param to   end, another place than the start
     * @param step greatest true distance between two points of the profile (m), positive
     * @return the points, evenly spaced; heights are {@code NaN} where the ground is not known
     */
    public List<ProfilePoint> profile(Point from, Point to, double step) {
        Require.positive("step of a profile", step, "m");
        double length = Require.positive("length of a profile", from.distance(to) * metreScale, "m");
        int steps = Math.max(1, (int) Math.ceil(length / step - 1e-9));
        List<ProfilePoint> points = new ArrayList<>(steps + 1);
        for (int i = 0; i <= steps; i++) {
            double t = (double) i / steps;
            Point place = i == steps ? to : new Point(from.east() + t * (to.east() - from.east()),
                    from.north() + t * (to.north() - from.north()));
            points.add(new ProfilePoint(t * length, place, height(place)));
        }
        return points;
    }

    /**
     * The ground of triangles along a straight line: a point at each end and wherever the line crosses a row, a
     * column or a cell's diagonal, so that the ground is straight between two neighbouring points.
     *
     * @param from start
     * @param to   end, another place than the start
     * @return the points in order; heights are {@code NaN} where the ground is not known
     */
    public List<ProfilePoint> crossings(Point from, Point to) {
        return TriangleCut.of(this, from, to);
    }

    /**
     * The height of the ground of triangles, each cell cut from its south-west to its north-east node.
     *
     * @param place the place
     * @return the height (m); {@code NaN} outside the grid or where a node of the triangle is missing
     */
    public double triangleHeight(Point place) {
        return TriangleCut.height(this, place.east(), place.north());
    }

    /**
     * How far a straight line stands clear of the ground of triangles at its worst.
     *
     * <p>Leaves out the curvature of the body: the horizon of the Moon drops d&#178;/2R, 0.29 m in 1 km.
     *
     * @param from one end
     * @param to   the other end, at another place in plan
     * @return the least height of the line over the ground (m), negative where the ground stands in the way;
     *     {@code NaN} where some ground under it is not known
     */
    public double clearance(Vec3 from, Vec3 to) {
        double least = Double.POSITIVE_INFINITY;
        List<ProfilePoint> ground = crossings(from.plan(), to.plan());
        double length = ground.get(ground.size() - 1).distance();
        for (ProfilePoint p : ground) {
            double line = from.z() + (to.z() - from.z()) * p.distance() / length;
            least = Math.min(least, line - p.height());
        }
        return least;
    }

    /**
     * Whether one point can be seen from another over the ground of triangles.
     *
     * @param from one end
     * @param to   the other end, at another place in plan
     * @return true where the line nowhere dips below the ground; false where some ground under it is not known
     */
    boolean hasLineOfSight(Vec3 from, Vec3 to) {
        return clearance(from, to) >= 0;
    }

    /**
     * The plane that fits the ground inside an outline best.
     *
     * @param footprint the outline, of some area
     * @return the plane; absent where the outline leaves the grid or some ground inside is missing
     */
    public Optional<FittedPlane> fittedPlane(Ring footprint) {
        return PlaneFit.of(this, footprint);
    }

    /**
     * The ground inside an outline that stands above a plane by more than an allowance.
     *
     * @param footprint the outline
     * @param plane     the plane
     * @param above     the allowance (m)
     * @return the spots, highest first; one for each sample, which lie a cell apart or closer
     */
    List<FittedPlane.Spot> highSpots(Ring footprint, FittedPlane plane, double above) {
        return PlaneFit.highSpots(this, footprint, plane, above);
    }

    /**
     * Whether the ground is not known at a place.
     *
     * @param place the place
     * @return true outside the grid and where one of the four nodes around it is missing
     */
    public boolean isMissing(Point place) {
        return Double.isNaN(height(place));
    }

    /**
     * Whether some ground inside an outline is not known.
     *
     * @param area the outline
     * @return true where the outline leaves the grid or a cell that may touch it has a missing node
     */
    public boolean isMissing(Ring area) {
        return RingNodes.touchesGap(this, area);
    }

    /**
     * How many heights are missing.
     *
     * @return the number of nodes without a height (1)
     */
    public long missing() {
        return Arrays.stream(heights).filter(Double::isNaN).count();
    }

    /**
     * The lowest height.
     *
     * @return the height (m), {@code NaN} where all are missing
     */
    public double lowest() {
        return Arrays.stream(heights).filter(h -> !Double.isNaN(h)).min().orElse(Double.NaN);
    }

    /**
     * The highest height.
     *
     * @return the height (m), {@code NaN} where all are missing
     */
    public double highest() {
        return Arrays.stream(heights).filter(h -> !Double.isNaN(h)).max().orElse(Double.NaN);
    }

    /**
     * The part of this grid around an area.
     *
     * @param southwest south-west corner of the area
     * @param northeast north-east corner of the area
     * @return the smallest part on the same nodes that holds what of the area lies in this grid, with its patches
     * @throws IllegalArgumentException if nothing of the area lies in this grid
     */
    public ElevationGrid window(Point southwest, Point northeast) {
        int[] nodes = FinerNodes.window(frame, southwest, northeast);
        GridFrame part = frame.part(nodes[0], nodes[1], nodes[2], nodes[3]);
        return new ElevationGrid(part, FinerNodes.part(this, part, nodes[0], nodes[1]), metreScale, refinement,
                FinerNodes.patches(this, part));
    }

    /**
     * A copy of all heights.
     *
     * @return heights (m), rows x columns, row 0 southernmost, {@code NaN} where missing
     */
    public double[] heights() {
        return heights.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof ElevationGrid that && frame.equals(that.frame)
                && metreScale == that.metreScale && Arrays.equals(heights, that.heights)
                && Arrays.equals(patches, that.patches);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * frame.hashCode() + Double.hashCode(metreScale)) + Arrays.hashCode(heights);
    }
}
