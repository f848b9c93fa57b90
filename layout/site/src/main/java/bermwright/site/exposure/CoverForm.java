// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.shielding.cover.Mound;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * The cover of one hull alone on level ground, in the hull's own frame: its toe and its heights on a coarse raster, so
 * that covers of hulls that are moved and turned can be laid over each other in microseconds.
 *
 * <p>On a slope of 5 deg the soil differs by some percent; what is found with it is to be confirmed by
 * {@link SiteCover}.
 */
public final class CoverForm {
    /** Distance of the raster's nodes (m). */
    public static final double STEP = 2;
    private static final double NODES = 1;
    private static final int CORNERS = 20;
    /** Ground kept around a hull (m). */
    private static final double AROUND = 60;

    private final double[] heights;
    private final int rows;
    private final int columns;
    private final double least;
    private final double leastLeft;
    private final double volume;
    private final double density;
    private final List<Point> toe;
    private final List<Point> corners;

    private CoverForm(ElevationGrid surface, List<Point> toe, double volume, double density) {
        GridFrame f = surface.frame();
        this.toe = List.copyOf(toe);
        this.corners = IntStream.range(0, CORNERS).mapToObj(i -> toe.get(i * toe.size() / CORNERS)).toList();
        this.volume = volume;
        this.density = density;
        this.columns = (int) Math.floor((f.eastEdge() - f.west()) / STEP) + 1;
        this.rows = (int) Math.floor((f.northEdge() - f.south()) / STEP) + 1;
        this.least = f.west();
        this.leastLeft = f.south();
        this.heights = new double[rows * columns];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = surface.height(ahead(i), left(i));
        }
    }

    /**
     * Raises the cover of a hull on level ground.
     *
     * @param plan the plan, for its soil
     * @param hull the hull
     * @return its form; empty where it has no cover
     */
    public static Optional<CoverForm> of(Plan plan, Hull hull) {
        if (hull.cover().isEmpty()) {
            return Optional.empty();
        }
        // Looking east, ahead is east and left is north.
        Hull east = hull.withBaseCentre(new Point(0, 0)).withLayDownAzimuth(new Azimuth(Math.PI / 2));
        double reach = Math.ceil(hull.length() + hull.pivotAhead() + AROUND);
        double wide = Math.ceil(hull.diameter() + AROUND);
        int columns = (int) ((reach + AROUND) / NODES) + 1;
        int rows = (int) (2 * wide / NODES) + 1;
        ElevationGrid level = ElevationGrid.sampled(new GridFrame(rows, columns, -AROUND, -wide, NODES),
                (x, y) -> 0);
        Plan alone = plan.withHulls(List.of(east));
        SiteHulls site = new SiteHulls(alone, level);
        Mound mound = SiteCover.mound(alone, site, site.covered(), Set.of(), NODES);
        Optional<Ring> toe = mound.toes().stream().max(Comparator.comparingDouble(Ring::area));
        return toe.map(t -> new CoverForm(mound.finished(), t.corners(), mound.placedVolume(),
                SiteCover.density(plan, hull)));
    }

    private double ahead(int at) {
        return least + at % columns * STEP;
    }

    private double left(int at) {
        return leastLeft + at / columns * STEP;
    }

    /** Height of the cover over its ground at a place in the hull's frame; nothing beyond the raster. */
    private double height(double ahead, double left) {
        double u = (ahead - least) / STEP;
        double v = (left - leastLeft) / STEP;
        if (!(u >= 0 && v >= 0 && u < columns - 1 && v < rows - 1)) {
            return 0;
        }
        int c = (int) u;
        int r = (int) v;
        double p = u - c;
        double q = v - r;
        int at = r * columns + c;
        return (1 - q) * ((1 - p) * heights[at] + p * heights[at + 1])
                + q * ((1 - p) * heights[at + columns] + p * heights[at + columns + 1]);
    }

    /**
     * Corners of the toe in the hull's frame, ahead of the base centre (east) and to its left (north).
     *
     * @return the corners
     */
    public List<Point> toe() {
        return toe;
    }

    /**
     * Some corners of the toe, for a quick look.
     *
     * @return twenty of its corners
     */
    public List<Point> corners() {
        return corners;
    }

    /**
     * Soil of the cover alone on level ground.
     *
     * @return volume (m3)
     */
    public double volume() {
        return volume;
    }

    /**
     * Density of the placed soil.
     *
     * @return density (kg/m3)
     */
    public double density() {
        return density;
    }

    /**
     * The highest point over the ground.
     *
     * @return height (m)
     */
    public double top() {
        double top = 0;
        for (double h : heights) {
            top = Math.max(top, h);
        }
        return top;
    }

    /**
     * A form where its hull lies.
     *
     * @param form    the form
     * @param place   the hull's base centre
     * @param azimuth its lay-down azimuth
     */
    public record Placed(CoverForm form, Point place, Azimuth azimuth) {
    }

    /**
     * Soil of covers laid over each other; where two meet, the higher one counts.
     *
     * @param placed the covers
     * @param scale  true metres in one metre of the plan
     * @return soil of each (m3), in the same order
     */
    public static double[] volumes(List<Placed> placed, double scale) {
        double[] volumes = new double[placed.size()];
        for (int i = 0; i < volumes.length; i++) {
            Placed one = placed.get(i);
            List<Seen> near = new ArrayList<>();
            for (int j = 0; j < volumes.length; j++) {
                if (j != i && one.place.distance(placed.get(j).place) * scale < one.form.reach()
                        + placed.get(j).form.reach()) {
                    near.add(Seen.of(one, placed.get(j), scale, j < i));
                }
            }
            volumes[i] = one.form.volume - (near.isEmpty() ? 0 : one.form.lost(near));
        }
        return volumes;
    }

    private double reach() {
        return Math.hypot(least + STEP * columns, leastLeft);
    }

    /** Another form as it is seen from the frame of one. */
    private record Seen(CoverForm form, double sine, double cosine, Point from, boolean isFirst) {
        static Seen of(Placed one, Placed other, double scale, boolean isFirst) {
            double turn = one.azimuth.radians() - other.azimuth.radians();
            double dx = (one.place.east() - other.place.east()) * scale;
            double dy = (one.place.north() - other.place.north()) * scale;
            double s = other.azimuth.east();
            double c = other.azimuth.north();
            return new Seen(other.form, Math.sin(turn), Math.cos(turn), new Point(dx * s + dy * c, -dx * c + dy * s),
                    isFirst);
        }

        double height(double ahead, double left) {
            return form.height(from.east() + ahead * cosine + left * sine, from.north() - ahead * sine
                    + left * cosine);
        }
    }

    /** Soil of this form under which another's is as high or higher. */
    private double lost(List<Seen> near) {
        double lost = 0;
        for (int i = 0; i < heights.length; i++) {
            double own = heights[i];
            if (own > 0) {
                for (Seen other : near) {
                    double theirs = other.height(ahead(i), left(i));
                    if (theirs > own || theirs == own && other.isFirst) {
                        lost += own * STEP * STEP;
                        break;
                    }
                }
            }
        }
        return Math.min(lost, volume);
    }
}
