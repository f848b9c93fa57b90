// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.foundation.Progress;
import bermwright.site.clearance.QuickClearance.Pose;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.apache.commons.math3.random.RandomGenerator;

/** Lessens the cost of one start with the covariance matrix adaptation evolution strategy of Commons Math. */
final class Descent {
    private static final int MOST_ROUNDS = 100_000;
    private static final double MANY = 9;
    /** Figures are compared to this share, so that the last bits of a turned plan decide nothing. */
    private static final double ROUNDED = 1e-7;

    private final QuickSite site;
    private final Groups groups;
    private final Avoided avoided;
    private final Progress progress;
    private final Optional<Spread> shown;

    Descent(QuickSite site, Groups groups, Avoided avoided, Progress progress) {
        this(site, groups, avoided, progress, Optional.empty());
    }

    private Descent(QuickSite site, Groups groups, Avoided avoided, Progress progress, Optional<Spread> shown) {
        this.shown = shown;
        this.site = site;
        this.groups = groups;
        this.avoided = avoided;
        this.progress = progress;
    }

    /**
     * What is lessened.
     *
     * @param weights   what counts how much
     * @param reference what figures are shares of
     */
    record Aim(Weights weights, Estimate reference) {
    }

    /**
     * How long and how far is searched.
     *
     * @param evaluations how many arrangements are looked at
     * @param reach       first step of a place (m)
     */
    record Effort(int evaluations, double reach) {
    }

    /** The best arrangement a descent saw. */
    record Best(List<Pose> poses, Estimate estimate, double cost) {
    }

    /** Shows all that descents see to a collection, one thread for each. */
    Descent showing(Spread all) {
        return new Descent(site, groups, avoided, progress, Optional.of(all));
    }

    /** What an arrangement costs. */
    Best look(List<Pose> poses, Aim aim) {
        Estimate seen = site.of(poses);
        double near = avoided.shortfall(poses);
        Estimate estimate = near > 0 ? new Estimate(seen.shortfall() + near, seen.hours(), seen.soil(),
                seen.tunnels(), seen.cut(), seen.warnings()) : seen;
        double cost = estimate.cost(aim.weights, aim.reference);
        return new Best(poses, estimate, Math.rint(cost / ROUNDED) * ROUNDED);
    }

    Best run(List<Pose> start, Aim aim, Effort effort, RandomGenerator random) {
        double[] first = groups.numbers(start);
        Best[] best = {look(start, aim)};
        int numbers = first.length;
        int population = 4 + (int) (3 * Math.log(numbers));
        // Steps of many hulls at once are shorter, or one of them always meets another.
        double reach = effort.reach * Math.min(1, Math.sqrt(MANY / numbers));
        double[] sigma = new double[numbers];
        for (int i = 0; i < numbers; i++) {
            boolean lead = groups.isLead(groups.movable().get(i / Groups.NUMBERS));
            sigma[i] = lead ? reach : reach / 3;
        }
        try {
            new CMAESOptimizer(MOST_ROUNDS, 0, true, 0, 0, random, false, (i, a, b) -> false).optimize(
                    new ObjectiveFunction(x -> {
                        progress.check();
                        Best seen = look(groups.poses(x), aim);
                        shown.ifPresent(s -> s.see(seen.poses, seen.estimate));
                        if (seen.cost < best[0].cost) {
                            best[0] = seen;
                        }
                        return seen.cost;
                    }), GoalType.MINIMIZE, new InitialGuess(first), SimpleBounds.unbounded(numbers),
                    new CMAESOptimizer.Sigma(sigma), new CMAESOptimizer.PopulationSize(population),
                    new MaxEval(effort.evaluations));
        } catch (TooManyEvaluationsException spent) {
            // The best seen so far is the answer: the number of looks is what ends a descent.
            return best[0];
        }
        return best[0];
    }
}
