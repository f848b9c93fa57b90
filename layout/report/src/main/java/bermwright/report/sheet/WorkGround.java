// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.Point;
import bermwright.foundation.Vec3;
import bermwright.shielding.cover.DepthMap;
import bermwright.shielding.scene.HullPose;
import bermwright.shielding.scene.HullSolid;
import bermwright.site.assessment.Assessment;
import bermwright.site.exposure.HullCover;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteScene;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.haulage.DugGround;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The surfaces of a site about its work, on one square of nodes as close as those of its mounds, in projected metres.
 *
 * <p>The nodes are those that the cover itself is described on, so nothing is interpolated where a mound stands.
 */
public final class WorkGround {
    /** Most cells along a side; with 0.25 m they reach 512 m, and farther apart beyond that. */
    private static final int MOST_CELLS = 2048;
    /** Ground shown around the work, in projected metres; our own choice. */
    private static final double AROUND = 10;
    /** Ground that is changed by less counts as it was (m). */
    private static final double BUILT = 0.001;
    private static final Set<ShapeKind> WORK = EnumSet.of(ShapeKind.LYING, ShapeKind.COVER_TOE, ShapeKind.PREPARATION,
            ShapeKind.BORROW, ShapeKind.WALL, ShapeKind.TUNNEL);

    private final Assessment assessment;
    private final SiteCover cover;
    private final GridFrame frame;
    private final double[] natural;
    private final double[] bed;
    private final double[] raised;
    private final double[] dug;

    private WorkGround(Assessment assessment, SiteCover cover, GridFrame frame) {
        this.assessment = assessment;
        this.cover = cover;
        this.frame = frame;
        this.bed = heights(cover.prepared());
        this.natural = cover.natural() == cover.prepared() ? bed : heights(cover.natural());
        this.raised = heights(cover.finished());
        this.dug = dug();
    }

    /**
     * The ground of a plan's work.
     *
     * @param assessment the assessment
     * @param cover      its cover
     * @return the surfaces
     */
    public static WorkGround of(Assessment assessment, SiteCover cover) {
        ElevationGrid grid = cover.finished();
        double spacing = grid.patches().stream().mapToDouble(p -> p.frame().spacing()).min()
                .orElse(grid.frame().spacing());
        List<Point> corners = new ArrayList<>();
        assessment.shapes().all().stream().filter(s -> WORK.contains(s.kind())).map(Shape::outline)
                .forEach(r -> corners.addAll(r.corners()));
        assessment.plan().hulls().forEach(h -> corners.add(h.baseCentre()));
        return new WorkGround(assessment, cover, square(grid.frame(), spacing, corners));
    }

    /**
     * The least square of a power of two of cells that holds places, its nodes on those of a grid.
     *
     * @param grid    the grid
     * @param spacing distance of the nodes wanted (m)
     * @param places  the places
     * @return the nodes
     */
    public static GridFrame square(GridFrame grid, double spacing, List<Point> places) {
        double west = places.stream().mapToDouble(Point::east).min().orElse(grid.west()) - AROUND;
        double south = places.stream().mapToDouble(Point::north).min().orElse(grid.south()) - AROUND;
        double wide = Math.max(places.stream().mapToDouble(Point::east).max().orElse(grid.eastEdge()) + AROUND - west,
                places.stream().mapToDouble(Point::north).max().orElse(grid.northEdge()) + AROUND - south);
        double step = spacing;
        int cells = 2;
        while (cells * step < wide + grid.spacing()) {
            if (cells < MOST_CELLS) {
                cells *= 2;
            } else {
                step *= 2;
            }
        }
        double over = (cells * step - wide) / 2;
        return new GridFrame(cells + 1, cells + 1, snapped(west - over, grid.west(), grid.eastEdge(), cells * step,
                grid.spacing()), snapped(south - over, grid.south(), grid.northEdge(), cells * step, grid.spacing()),
                step);
    }

    private static double snapped(double wanted, double first, double last, double side, double spacing) {
        double inside = Math.max(first, Math.min(wanted, last - side));
        return first + Math.round((inside - first) / spacing) * spacing;
    }

    /**
     * The nodes.
     *
     * @return their frame
     */
    public GridFrame frame() {
        return frame;
    }

    /** Heights of a surface on the nodes; missing where the ground is not known. */
    private double[] heights(ElevationGrid surface) {
        return on(frame, surface);
    }

    /**
     * Heights of a surface on nodes.
     *
     * @param nodes   the nodes
     * @param surface the surface
     * @return the heights (m), rows x columns; {@code NaN} where the ground is not known
     */
    public static double[] on(GridFrame nodes, ElevationGrid surface) {
        double[] heights = new double[nodes.size()];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = surface.height(nodes.east(i % nodes.columns()), nodes.north(i / nodes.columns()));
        }
        return heights;
    }

    /**
     * The ground with benches, mounds and, as deep as their soil is needed, borrow pits.
     *
     * @return heights (m), rows x columns
     */
    public double[] finished() {
        double[] heights = raised.clone();
        for (int i = 0; i < heights.length; i++) {
            heights[i] -= dug[i];
        }
        return heights;
    }

    /**
     * The ground after benches, before soil is placed or borrowed.
     *
     * @return heights (m), rows x columns
     */
    public double[] prepared() {
        return bed.clone();
    }

    /**
     * Soil placed as cover, upright.
     *
     * @return thickness (m), rows x columns, nothing where there is none
     */
    public double[] placed() {
        double[] thickness = raised.clone();
        for (int i = 0; i < thickness.length; i++) {
            thickness[i] -= bed[i];
        }
        return thickness;
    }

    /**
     * Whether soil is borrowed at a node.
     *
     * @param node its number: row times columns plus column
     * @return true where it is
     */
    public boolean isDug(int node) {
        return dug[node] > BUILT;
    }

    /**
     * Whether soil is placed or a bed prepared at a node; a borrow pit's floor is known no better than its ground.
     *
     * @param node its number: row times columns plus column
     * @return true where it is
     */
    public boolean isBuilt(int node) {
        return Math.abs(raised[node] - bed[node]) > BUILT || Math.abs(bed[node] - natural[node]) > BUILT;
    }

    private double[] dug() {
        ElevationGrid before = cover.prepared().withPatches(List.of());
        ElevationGrid after = before;
        for (DugGround pit : assessment.earthworks().map(e -> e.dug()).orElse(List.of())) {
            after = pit.dugIn(after);
        }
        double[] depth = new double[frame.size()];
        if (after != before) {
            double[] from = heights(before);
            double[] to = heights(after);
            for (int i = 0; i < depth.length; i++) {
                depth[i] = from[i] - to[i];
            }
        }
        return depth;
    }

    /**
     * The least way from the skin seen from above to the surface.
     *
     * @return depth (m), rows x columns; missing beside the covered hulls
     */
    public double[] coverDepth() {
        double[] depths = new double[frame.size()];
        Arrays.fill(depths, Double.NaN);
        SiteScene scene = SiteScene.of(assessment.plan(), cover);
        for (HullCover of : cover.hulls()) {
            scene.hull(of.id()).ifPresent(solid -> depths(of.depth(), solid, scene.metreScale(), depths));
        }
        return depths;
    }

    private void depths(DepthMap map, HullSolid solid, double scale, double[] into) {
        double reach = solid.reach() / scale;
        Point middle = new Point(solid.middle().x() / scale, solid.middle().y() / scale);
        int first = (int) Math.max(0, Math.floor((middle.north() - reach - frame.south()) / frame.spacing()));
        int last = (int) Math.min(frame.rows() - 1, Math.ceil((middle.north() + reach - frame.south())
                / frame.spacing()));
        for (int row = first; row <= last; row++) {
            for (int column = 0; column < frame.columns(); column++) {
                Point at = new Point(frame.east(column) * scale, frame.north(row) * scale);
                if (Math.abs(frame.east(column) - middle.east()) <= reach) {
                    double depth = depth(map, solid, at);
                    if (!Double.isNaN(depth)) {
                        into[row * frame.columns() + column] = depth;
                    }
                }
            }
        }
    }

    /** Depth over the upper skin under a place in true metres; missing beside the hull. */
    private static double depth(DepthMap map, HullSolid solid, Point at) {
        HullPose pose = solid.pose();
        if (pose.crown().z() < 0.5) {
            return Double.NaN;
        }
        double height = pose.base().z();
        Vec3 local = pose.local(at.at(height));
        for (int i = 0; i < 8; i++) {
            double r = solid.shape().radiusAt(local.x());
            if (!(Math.abs(local.y()) <= r)) {
                return Double.NaN;
            }
            height += (Math.sqrt(r * r - local.y() * local.y()) - local.z()) / pose.crown().z();
            local = pose.local(at.at(height));
        }
        if (!(local.x() >= 0 && local.x() <= solid.shape().length())) {
            return Double.NaN;
        }
        int i = (int) Math.min(map.rows() - 1, local.x() / solid.shape().length() * map.rows());
        double turn = (Math.atan2(local.y(), local.z()) / Math.PI + 1) / 2;
        int j = (int) Math.min(map.columns() - 1, turn * map.columns());
        return map.trueDepth(i, j);
    }
}
