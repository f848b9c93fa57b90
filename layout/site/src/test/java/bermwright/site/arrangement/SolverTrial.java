// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.foundation.Progress;
import bermwright.site.assessment.SiteGround;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apache.commons.math3.analysis.MultivariateFunction;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;
import org.apache.commons.math3.random.Well19937c;

/**
 * Solvers of Commons Math from the same starts at the same number of looks; use: {@code SolverTrial PLAN}.
 *
 * <p>Prints the cost each comes to, the least of all looks; the planned arrangement costs about 1.
 */
public final class SolverTrial {
    private static final int LOOKS = 1000;
    private static final int STARTS = 3;
    private static final double REACH = 12;

    private final QuickSite site;
    private final Groups groups;
    private final Descent descent;
    private final Descent.Aim aim;

    private SolverTrial(QuickSite site) {
        this.site = site;
        this.groups = Groups.of(site.plan(), site.movable(), site.planned());
        this.descent = new Descent(site, groups, new Avoided(), Progress.NONE);
        this.aim = new Descent.Aim(Weights.IN_TURN.get(0), site.of(site.planned()));
    }

    /** Prints the trial. */
    public static void main(String[] args) {
        Path file = Path.of(args[0]);
        Plan plan = PlanFiles.read(file);
        SiteGround ground = SiteGround.read(plan, file, Progress.NONE);
        new SolverTrial(QuickSite.of(plan, ground.grid(), ArrangementSearch.movable(plan, Set.of()), Progress.NONE))
                .run();
    }

    private void run() {
        Starts starts = Starts.of(site, groups, Progress.NONE);
        System.out.println("start     CMA-ES   simplex  BOBYQA   chance");
        for (int s = 0; s < STARTS; s++) {
            List<Pose> start = starts.start(new Well19937c(s), aim.weights());
            double[] first = groups.numbers(start);
            double evolution = descent.run(start, aim, new Descent.Effort(LOOKS, REACH), new Well19937c(s)).cost();
            double simplex = least(first, f -> new SimplexOptimizer(1e-9, 1e-9).optimize(new MaxEval(LOOKS), f,
                    GoalType.MINIMIZE, new InitialGuess(first), new NelderMeadSimplex(first.length, REACH)));
            double[] low = Arrays.stream(first).map(v -> v - 4 * REACH).toArray();
            double[] high = Arrays.stream(first).map(v -> v + 4 * REACH).toArray();
            double quadratic = least(first, f -> new BOBYQAOptimizer(2 * first.length + 1, REACH, 0.01).optimize(
                    new MaxEval(LOOKS), f, GoalType.MINIMIZE, new InitialGuess(first), new SimpleBounds(low, high)));
            Well19937c random = new Well19937c(s);
            double chance = least(first, f -> {
                for (int i = 0; i < LOOKS; i++) {
                    double spread = REACH * Math.pow(0.01, (double) i / LOOKS);
                    f.getObjectiveFunction().value(Arrays.stream(first).map(v -> v + spread * random.nextGaussian())
                            .toArray());
                }
            });
            System.out.printf(Locale.ROOT, "%.4f    %.4f   %.4f   %.4f   %.4f%n", descent.look(start, aim).cost(),
                    evolution, simplex, quadratic, chance);
        }
    }

    @FunctionalInterface
    private interface Solver {
        void run(ObjectiveFunction function);
    }

    private double least(double[] first, Solver solver) {
        double[] least = {Double.POSITIVE_INFINITY};
        MultivariateFunction cost = x -> {
            double value = descent.look(groups.poses(x), aim).cost();
            least[0] = Math.min(least[0], value);
            return value;
        };
        try {
            solver.run(new ObjectiveFunction(cost));
        } catch (TooManyEvaluationsException spent) {
            return least[0];
        }
        return least[0];
    }
}
