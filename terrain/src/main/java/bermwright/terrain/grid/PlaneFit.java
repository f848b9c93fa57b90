// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.grid;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.foundation.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Fits a plane to the ground inside an outline, by least squares over an even lattice that holds the nodes. */
final class PlaneFit {
    /** So many samples a footprint has at least, so that its outline counts and not only its nodes. */
    private static final double LEAST_SAMPLES = 400;

    private PlaneFit() {
    }

    static Optional<FittedPlane> of(ElevationGrid grid, Ring footprint) {
        if (grid.isMissing(footprint)) {
            return Optional.empty();
        }
        List<Point> places = samples(grid.frame(), footprint);
        int n = places.size();
        double east = 0;
        double north = 0;
        double height = 0;
        for (Point p : places) {
            east += p.east() / n;
            north += p.north() / n;
            height += grid.height(p) / n;
        }
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double xz = 0;
        double yz = 0;
        for (Point p : places) {
            double x = p.east() - east;
            double y = p.north() - north;
            double z = grid.height(p) - height;
            xx += x * x;
            xy += x * y;
            yy += y * y;
            xz += x * z;
            yz += y * z;
        }
        double k = grid.metreScale();
        double determinant = xx * yy - xy * xy;
        Require.that(determinant > 0, "a footprint of %s m2 is too thin to carry a plane.", footprint.area());
        Gradient gradient = new Gradient((xz * yy - yz * xy) / determinant / k, (yz * xx - xz * xy) / determinant / k);
        return Optional.of(withResiduals(grid, places, new Point(east, north), height, gradient));
    }

    private static FittedPlane withResiduals(ElevationGrid grid, List<Point> places, Point centre, double height,
            Gradient gradient) {
        FittedPlane.Spot none = new FittedPlane.Spot(centre, 0);
        FittedPlane bare = new FittedPlane(centre, height, gradient, 0, none, none, grid.metreScale());
        FittedPlane.Spot high = new FittedPlane.Spot(centre, Double.NEGATIVE_INFINITY);
        FittedPlane.Spot low = new FittedPlane.Spot(centre, Double.POSITIVE_INFINITY);
        double squares = 0;
        for (Point p : places) {
            double residual = grid.height(p) - bare.height(p);
            squares += residual * residual;
            high = residual > high.residual() ? new FittedPlane.Spot(p, residual) : high;
            low = residual < low.residual() ? new FittedPlane.Spot(p, residual) : low;
        }
        return new FittedPlane(centre, height, gradient, Math.sqrt(squares / places.size()), high, low,
                grid.metreScale());
    }

    static List<FittedPlane.Spot> highSpots(ElevationGrid grid, Ring footprint, FittedPlane plane, double above) {
        return samples(grid.frame(), footprint).stream()
                .map(p -> new FittedPlane.Spot(p, grid.height(p) - plane.height(p)))
                .filter(spot -> spot.residual() > above)
                .sorted(Comparator.comparingDouble(FittedPlane.Spot::residual).reversed()).toList();
    }

    /** An even lattice inside the outline; its step divides the spacing, so that the nodes are part of it. */
    private static List<Point> samples(GridFrame frame, Ring footprint) {
        double area = Require.positive("area of a footprint", footprint.area(), "m2");
        double step = frame.spacing() / Math.ceil(frame.spacing() / Math.sqrt(area / LEAST_SAMPLES));
        Ring.Box box = footprint.box();
        long firstColumn = (long) Math.ceil((box.west() - frame.west()) / step);
        long lastColumn = (long) Math.floor((box.east() - frame.west()) / step);
        long firstRow = (long) Math.ceil((box.south() - frame.south()) / step);
        long lastRow = (long) Math.floor((box.north() - frame.south()) / step);
        Require.that((lastColumn - firstColumn + 1.0) * (lastRow - firstRow + 1.0) < 1e8,
                "a footprint of %s m2 is too thin and long to be sampled.", area);
        List<Point> places = new ArrayList<>();
        for (long row = firstRow; row <= lastRow; row++) {
            double north = frame.south() + row * step;
            double[] crossings = crossings(footprint, north);
            int passed = 0;
            for (long column = firstColumn; column <= lastColumn; column++) {
                double east = frame.west() + column * step;
                while (passed < crossings.length && !(east < crossings[passed])) {
                    passed++;
                }
                Point p = new Point(east, north);
                if ((crossings.length - passed) % 2 == 1 && frame.contains(p)) {
                    places.add(p);
                }
            }
        }
        return places;
    }

    /** Where an outline crosses a row, from west to east; a place is inside where an odd number lies east of it. */
    private static double[] crossings(Ring footprint, double north) {
        List<Point> corners = footprint.corners();
        double[] east = new double[corners.size()];
        int count = 0;
        for (int i = 0, j = corners.size() - 1; i < corners.size(); j = i++) {
            Point a = corners.get(i);
            Point b = corners.get(j);
            if ((a.north() > north) != (b.north() > north)) {
                east[count++] = (b.east() - a.east()) * (north - a.north()) / (b.north() - a.north()) + a.east();
            }
        }
        double[] sorted = Arrays.copyOf(east, count);
        Arrays.sort(sorted);
        return sorted;
    }
}
