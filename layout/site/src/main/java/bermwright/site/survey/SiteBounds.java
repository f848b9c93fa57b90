// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.LandingPad;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What of a plan stays where it is when its hulls are moved: keep-outs, corridors and landing pads.
 *
 * <p>A node counts as taken where one of them lies within three quarters of a cell of it, so that what is thinner than
 * a cell is not missed.
 */
final class SiteBounds {
    private static final double BESIDE = 0.75;

    private final List<Taken> taken = new ArrayList<>();
    private final List<LandingPad> pads;
    private final double metreScale;

    /** Ground that is taken: an area, or a line or place with a distance about it (projected metres). */
    private record Taken(List<Point> line, Optional<Ring> area, double about) {
        boolean holds(Point p, double beside) {
            return area.isPresent() && area.get().contains(p) || distance(p) <= about + beside;
        }

        private double distance(Point p) {
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < line.size(); i++) {
                int next = i + 1 < line.size() ? i + 1 : area.isPresent() ? 0 : i;
                least = Math.min(least, line.get(i).equals(line.get(next)) ? p.distance(line.get(i))
                        : p.distance(line.get(i), line.get(next)));
            }
            return least;
        }
    }

    /**
     * The bounds of a plan.
     *
     * @param plan       the plan; absent where the region is not the plan's own
     * @param metreScale true metres in one projected metre (1)
     */
    SiteBounds(Optional<Plan> plan, double metreScale) {
        this.metreScale = metreScale;
        pads = plan.map(Plan::landingPads).orElse(List.of());
        plan.ifPresent(p -> {
            p.keepOuts().forEach(k -> taken.add(new Taken(k.area().corners(), Optional.of(k.area()), 0)));
            for (Corridor c : p.corridors()) {
                taken.add(new Taken(c.line(), Optional.empty(), c.width() / 2 / metreScale));
            }
            for (LandingPad pad : pads) {
                taken.add(new Taken(List.of(pad.centre()), Optional.empty(), pad.radius() / metreScale));
            }
        });
    }

    boolean hasPads() {
        return !pads.isEmpty();
    }

    boolean takesGround() {
        return !taken.isEmpty();
    }

    /** Raises the nodes that are taken out of all reach. */
    void close(GridFrame frame, SurveyGround ground, int south, int west) {
        double beside = BESIDE * frame.spacing();
        for (Taken t : taken) {
            double about = t.about + beside;
            double[] box = box(t.line);
            int firstColumn = cell(box[0] - about - frame.west(), frame, west, ground.stride);
            int lastColumn = cell(box[2] + about - frame.west(), frame, west, ground.stride);
            int firstRow = cell(box[1] - about - frame.south(), frame, south, ground.rows);
            int lastRow = cell(box[3] + about - frame.south(), frame, south, ground.rows);
            for (int r = firstRow; r <= lastRow; r++) {
                for (int c = firstColumn; c <= lastColumn; c++) {
                    if (t.holds(new Point(frame.east(west + c), frame.north(south + r)), beside)) {
                        ground.z[r * ground.stride + c] = Double.POSITIVE_INFINITY;
                    }
                }
            }
        }
    }

    private static int cell(double from, GridFrame frame, int first, int count) {
        return (int) Math.max(0, Math.min(count - 1, Math.floor(from / frame.spacing()) - first));
    }

    private static double[] box(List<Point> line) {
        double[] box = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY,
            Double.NEGATIVE_INFINITY};
        for (Point p : line) {
            box[0] = Math.min(box[0], p.east());
            box[1] = Math.min(box[1], p.north());
            box[2] = Math.max(box[2], p.east());
            box[3] = Math.max(box[3], p.north());
        }
        return box;
    }

    /**
     * The pad whose stand-off is kept least.
     *
     * @param hull   the hull
     * @param centre the group's middle (projected metres)
     * @param east   the group's heading, sine of its azimuth
     * @param north  cosine of it
     * @return the hull's distance to the pad's middle and the distance to be kept (m)
     */
    double[] nearestPad(LaidHull hull, Point centre, double east, double north) {
        double[] nearest = {Double.POSITIVE_INFINITY, 0};
        double ratio = Double.POSITIVE_INFINITY;
        for (LandingPad pad : pads) {
            double dx = (pad.centre().east() - centre.east()) * metreScale;
            double dy = (pad.centre().north() - centre.north()) * metreScale;
            double ahead = dx * east + dy * north - hull.bedAhead();
            double left = dy * east - dx * north - hull.bedLeft();
            double along = ahead * Math.cos(hull.turn()) - left * Math.sin(hull.turn());
            double across = left * Math.cos(hull.turn()) + ahead * Math.sin(hull.turn());
            double lying = Math.hypot(Math.max(0, Math.abs(along) - hull.length() / 2),
                    Math.max(0, Math.abs(across) - hull.width() / 2));
            double standing = Math.hypot(along + hull.length() / 2 + hull.hull().pivotAhead(), across)
                    - hull.width() / 2;
            double distance = Math.max(0, hull.lies() ? Math.min(lying, standing) : lying);
            double kept = Math.max(pad.standOff(), pad.radius());
            if (distance / kept < ratio) {
                ratio = distance / kept;
                nearest[0] = distance;
                nearest[1] = kept;
            }
        }
        return nearest;
    }
}
