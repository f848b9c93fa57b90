// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.earthworks;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.foundation.Ring;
import bermwright.numeric.Bracket;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.Gradient;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The plane under an outline for which the least soil is moved, no steeper than a limit.
 *
 * <p>Least is the sum of cut and fill inside the outline; sides are left out, they are small where the plane lies near
 * the ground. The plane is found by search to a ten-thousandth of the limit; moved soil is then within some thousandth
 * of the least.
 */
public final class BenchFit {
    private static final double SAMPLES = 1500;
    private static final double FINEST = 1e-4;
    private static final int DIRECTIONS = 8;

    private final double[] x;
    private final double[] y;
    private final double[] z;
    private final double steepest;
    private final OptionalDouble fillFromCut;

    private BenchFit(double[][] samples, Limits limits) {
        this.x = samples[0];
        this.y = samples[1];
        this.z = samples[2];
        this.steepest = Math.tan(limits.greatestGrade);
        this.fillFromCut = limits.fillFromCut;
    }

    /**
     * What a bench must keep to.
     *
     * @param greatestGrade greatest slope of the plane (rad), zero for a level bench, below pi/2
     * @param fillFromCut   fill volume that one cut volume makes (1), positive, where the two are to balance; absent
     *                      where they need not
     */
    public record Limits(double greatestGrade, OptionalDouble fillFromCut) {
        /** Refuses grades that are no grades. */
        public Limits {
            Require.that(greatestGrade >= 0 && greatestGrade < Math.PI / 2,
                    "greatest grade is %s rad; accepted: 0 to below pi/2.", greatestGrade);
            fillFromCut.ifPresent(f -> Require.positive("fill from cut", f, "1"));
        }
    }

    /**
     * The best plane.
     *
     * @param ground the ground
     * @param area   the outline
     * @param limits what the plane must keep to
     * @return the plane; absent where the outline leaves the grid or some ground inside is missing
     */
    public static Optional<GradePlane> leastMoved(ElevationGrid ground, Ring area, Limits limits) {
        if (ground.isMissing(area)) {
            return Optional.empty();
        }
        Point centre = area.centre();
        BenchFit fit = new BenchFit(samples(ground, area, centre), limits);
        double[] gradient = fit.search();
        double height = fit.height(gradient[0], gradient[1]);
        return Optional.of(new GradePlane(centre, height, new Gradient(gradient[0], gradient[1]),
                ground.metreScale()));
    }

    /** Places in true metres from the centre, and heights. */
    private static double[][] samples(ElevationGrid ground, Ring area, Point centre) {
        GridFrame frame = ground.frame();
        double step = Math.sqrt(area.area() / SAMPLES);
        Ring.Box box = area.box();
        Require.that((box.east() - box.west()) / step * ((box.north() - box.south()) / step) < 1e8,
                "an outline of %s m2 is too thin to carry a bench.", area.area());
        List<Point> places = new ArrayList<>();
        for (double e = box.west() + step / 2; e < box.east(); e += step) {
            for (double n = box.south() + step / 2; n < box.north(); n += step) {
                Point p = new Point(e, n);
                if (area.contains(p) && frame.contains(p)) {
                    places.add(p);
                }
            }
        }
        Require.that(places.size() > 2, "an outline of %s m2 is too thin to carry a bench.", area.area());
        double k = ground.metreScale();
        return new double[][] {places.stream().mapToDouble(p -> k * (p.east() - centre.east())).toArray(),
            places.stream().mapToDouble(p -> k * (p.north() - centre.north())).toArray(),
            places.stream().mapToDouble(ground::height).toArray()};
    }

    /** Walks downhill over gradients in ever finer steps, from level; the sum is convex in the gradient. */
    private double[] search() {
        double[] best = {0, 0};
        double least = moved(0, 0);
        double step = steepest / 2;
        while (steepest > 0 && step > FINEST * steepest) {
            boolean better = false;
            for (int i = 0; i < DIRECTIONS; i++) {
                double turn = 2 * Math.PI * i / DIRECTIONS;
                double[] trial = inDisc(best[0] + step * Math.sin(turn), best[1] + step * Math.cos(turn));
                double sum = moved(trial[0], trial[1]);
                if (sum < least) {
                    least = sum;
                    best = trial;
                    better = true;
                }
            }
            step = better ? step : step / 2;
        }
        return best;
    }

    private double[] inDisc(double a, double b) {
        double norm = Math.hypot(a, b);
        double share = norm > steepest ? steepest / norm : 1;
        return new double[] {a * share, b * share};
    }

    private double moved(double east, double north) {
        double height = height(east, north);
        double sum = 0;
        for (int i = 0; i < z.length; i++) {
            sum += Math.abs(z[i] - east * x[i] - north * y[i] - height);
        }
        return sum;
    }

    /** The best height for a gradient: the median, or the height at which cut and fill balance. */
    private double height(double east, double north) {
        double[] rest = new double[z.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = z[i] - east * x[i] - north * y[i];
        }
        Arrays.sort(rest);
        if (fillFromCut.isEmpty()) {
            int middle = rest.length / 2;
            return rest.length % 2 == 1 ? rest[middle] : (rest[middle - 1] + rest[middle]) / 2;
        }
        return Bracket.halved(rest[0], rest[rest.length - 1], 60, trial -> {
            double spare = 0;
            for (double r : rest) {
                spare += r > trial ? (r - trial) * fillFromCut.getAsDouble() : r - trial;
            }
            return spare > 0;
        }).middle();
    }

    /**
     * What stands behind it.
     *
     * @return the note
     */
    public static ModelNote note() {
        return new ModelNote("bench-fit", "the plane within its grade that moves least soil, cut and fill balanced"
                + " where asked, then its side slopes to the ground",
                "ground known under all of the bench; sides are not part of the balance",
                "the sides' soil, some per cent of a wide bench and more of a narrow one",
                ModelNote.Status.COMPUTED, "search over the gradient, the sum moved being convex in it");
    }
}
