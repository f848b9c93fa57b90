// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.finding.Finding;
import bermwright.foundation.Progress;
import bermwright.site.clearance.QuickClearance.Pose;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.Well19937c;

/**
 * Searches for arrangements of a plan's hulls, step by step: each step takes starts from a raster or from what is
 * known, lessens one weighing of the figures over quick estimates, and has the best assessed in full.
 *
 * <p>The same plan, seed and number of steps give the same answer. The plan as it stands is assessed too and is one of
 * the answers where nothing refuses it, so that the answer of a narrower area, given as the plan, is never lost in a
 * wider one.
 */
public final class ArrangementSearch {
    /** Arrangements looked at in a descent, for each number that is searched. */
    private static final int LOOKS = 130;
    private static final int FIRST_LOOKS = 60;
    private static final double REACH = 12;
    private static final double NEAR_REACH = 4;
    /** How often a step tries again where the full assessment refuses what the quick engines let pass. */
    private static final int TRIES = 6;
    private static final int SCREENS = 8;
    private static final int AT_ONCE = 2;
    /** Arrangements no further from each other than this are one (m, a heading as on an arc of 20 m). */
    private static final double SAME = 1;

    private final QuickSite site;
    private final Groups groups;
    private final Judge judge;
    private final Course course;
    private final Avoided avoided = new Avoided();
    private final Map<Integer, List<Pose>> posesOf = new LinkedHashMap<>();
    private final List<Arrangement> passed = new ArrayList<>();
    private final Map<String, Integer> refused = new LinkedHashMap<>();
    private int weighed;

    private ArrangementSearch(QuickSite site, Judge judge, Course course) {
        this.site = site;
        this.groups = Groups.of(site.plan(), site.movable(), site.planned());
        this.judge = judge;
        this.course = course;
    }

    /** Says how long a search goes on and is told what it finds. */
    public interface Course {
        /**
         * Whether another step may begin.
         *
         * @param steps steps done
         * @param found arrangements known that are not dominated
         * @return true to go on
         */
        boolean goesOn(int steps, int found);

        /**
         * Told of an arrangement that passed the full assessment.
         *
         * @param arrangement the arrangement
         */
        default void found(Arrangement arrangement) {
        }
    }

    /**
     * What a search found.
     *
     * @param arrangements arrangements that no other dominates, fewest machine hours first
     * @param planned      the plan as it was given, as the full assessment has it
     * @param steps        steps done
     * @param refused      what the full assessment refused on the way, by rule, and how often
     */
    public record Found(List<Arrangement> arrangements, Judge.Verdict planned, int steps,
            Map<String, Integer> refused) {
        /** Copies the lists. */
        public Found {
            arrangements = List.copyOf(arrangements);
            refused = Map.copyOf(refused);
        }
    }

    /**
     * Which hulls may move.
     *
     * @param plan the plan
     * @param only ids of the hulls that may move; empty for all
     * @return places in the plan of those that are neither held, nor bound to a pad, nor left out
     */
    public static Set<Integer> movable(Plan plan, Set<String> only) {
        Set<Integer> movable = new HashSet<>();
        for (int i = 0; i < plan.hulls().size(); i++) {
            Hull hull = plan.hulls().get(i);
            boolean onPad = hull.lowering().flatMap(g -> g.landing()).flatMap(l -> l.pad()).isPresent();
            if (only.isEmpty() ? !hull.held() && !onPad : only.contains(hull.id())) {
                movable.add(i);
            }
        }
        return movable;
    }

    /**
     * A task.
     *
     * @param plan    the plan
     * @param ground  its ground before any work
     * @param movable places in the plan of the hulls that may move, at least one
     * @param seed    seed of all chance
     */
    public record Task(Plan plan, ElevationGrid ground, Set<Integer> movable, long seed) {
        /** Copies the set. */
        public Task {
            movable = Set.copyOf(movable);
        }
    }

    /**
     * Searches.
     *
     * @param task     what is searched
     * @param judge    assesses in full
     * @param course   how long it goes on
     * @param progress told how far it has come; may cancel it
     * @return what was found
     * @throws java.util.concurrent.CancellationException if it was cancelled
     */
    public static Found run(Task task, Judge judge, Course course, Progress progress) {
        QuickSite site = QuickSite.of(task.plan, task.ground, task.movable, progress.part(0, 0.03));
        return new ArrangementSearch(site, judge, course).search(task.seed, progress);
    }

    private Found search(long seed, Progress progress) {
        Starts starts = Starts.of(site, groups, progress.part(0.03, 0.08));
        Estimate reference = site.of(site.planned());
        Spread spread = new Spread(reference);
        int steps = 0;
        Optional<Judge.Verdict> planned = Optional.empty();
        while (course.goesOn(steps, best().size())) {
            Progress part = progress.part(0.1 + 0.9 * (1 - 1 / (1 + steps / 8.0)), 0.1 + 0.9 * (1 - 1 / (1
                    + (steps + 1) / 8.0)));
            if (passed.size() < 2 || steps % 2 == 0 || !stepAside(spread, reference, steps, part)) {
                step(starts, spread, new Turn(reference, steps), new Seeds(seed, steps), part);
            }
            steps++;
            if (planned.isEmpty()) {
                planned = Optional.of(planned(part));
            }
        }
        Judge.Verdict asGiven = planned.isPresent() ? planned.get() : planned(progress);
        return new Found(best(), asGiven, steps, refused);
    }

    private Judge.Verdict planned(Progress progress) {
        progress.report(1, "assessing the plan as it stands");
        Judge.Verdict verdict = judge.of(site.plan(), progress.part(1, 1));
        if (verdict.isPassed() && isWithin()) {
            keep(new Arrangement(verdict.plan(), verdict.figures(), 0), site.planned());
        }
        return verdict;
    }

    private boolean isWithin() {
        return groups.movable().stream().allMatch(h -> site.isWithin(h, site.planned().get(h)));
    }

    private record Seeds(long seed, int step) {
        Well19937c random(int run) {
            return new Well19937c(new int[] {(int) seed, (int) (seed >>> 32), step, run});
        }
    }

    /**
     * A step without search: of what was seen by the way, what lies farthest from all that is known is asked about.
     *
     * @return false where nothing was left to ask about
     */
    private boolean stepAside(Spread spread, Estimate reference, int step, Progress progress) {
        Descent descent = new Descent(site, groups, avoided, progress);
        Descent.Aim aim = new Descent.Aim(Weights.IN_TURN.get(0), reference);
        for (int attempt = 0; attempt < SCREENS; attempt++) {
            progress.check();
            List<Estimate> known = posesOf.values().stream().map(p -> descent.look(p, aim).estimate()).toList();
            Optional<List<Pose>> apart = spread.farthest(known, p -> descent.look(rounded(p), aim).estimate());
            if (apart.isEmpty()) {
                return false;
            }
            List<Pose> poses = rounded(apart.get());
            spread.forget(apart.get());
            List<Finding> quick = isKnown(poses) ? List.of() : site.screened(poses);
            learn(quick, poses);
            if (isKnown(poses) || !quick.isEmpty()) {
                continue;
            }
            progress.report(0.5, "step " + (step + 1) + ", another kind: assessing in full" + known());
            Judge.Verdict verdict = judge.of(site.moves().at(poses), progress.part(0.5, 0.5));
            if (verdict.isPassed()) {
                keep(new Arrangement(verdict.plan(), verdict.figures(), step + 1), poses);
                return true;
            }
            learn(verdict.refusals(), poses);
        }
        return false;
    }

    private record Turn(Estimate reference, int step) {
    }

    private void step(Starts starts, Spread spread, Turn turn, Seeds seeds, Progress progress) {
        int step = turn.step;
        Weights weights = Weights.IN_TURN.get(weighed++ % Weights.IN_TURN.size());
        Descent.Aim aim = new Descent.Aim(weights, turn.reference);
        Descent descent = new Descent(site, groups, avoided, progress);
        progress.report(0, "step " + (step + 1) + ", " + weights.name() + ": searching" + known());
        int looks = (step == 0 ? FIRST_LOOKS : LOOKS) * groups.numbers();
        List<Run> runs = IntStream.range(0, AT_ONCE).parallel().mapToObj(number -> {
            Well19937c random = seeds.random(number);
            // Every other run goes on from what is known to be good, once there is something.
            boolean goesOn = number == 1 && !passed.isEmpty();
            List<Pose> start = goesOn ? bestBy(descent, aim).poses() : starts.start(random, weights);
            Spread seen = new Spread(turn.reference);
            return new Run(start, descent.showing(seen).run(start, aim, new Descent.Effort(looks, goesOn ? NEAR_REACH
                    : REACH), random), seen);
        }).sorted(Comparator.comparingDouble(r -> r.best.cost())).toList();
        runs.forEach(r -> spread.add(r.seen));
        // What is known already says nothing new, so the next best is asked about then.
        Run run = runs.stream().filter(r -> !isKnown(rounded(r.best.poses()))).findFirst().orElse(runs.get(0));
        Descent.Best best = run.best;
        for (int attempt = 0; attempt < TRIES; attempt++) {
            best = screened(descent, aim, new Run(run.start, best, run.seen), seeds.random(AT_ONCE + attempt));
            List<Pose> poses = rounded(best.poses());
            boolean room = descent.look(poses, aim).estimate().isAllowed();
            if (!room || isKnown(poses)) {
                refused.merge(room ? "known already" : "no room found by the quick engines", 1, Integer::sum);
                return;
            }
            progress.report(0.5, "step " + (step + 1) + ", " + weights.name() + ": assessing in full" + known());
            Judge.Verdict verdict = judge.of(site.moves().at(poses), progress.part(0.5, 0.5));
            if (verdict.isPassed()) {
                keep(new Arrangement(verdict.plan(), verdict.figures(), step + 1), poses);
                return;
            }
            learn(verdict.refusals(), poses);
            best = descent.run(poses, aim, new Descent.Effort(FIRST_LOOKS * groups.numbers(), NEAR_REACH),
                    seeds.random(AT_ONCE + TRIES + attempt));
        }
    }

    private void learn(List<Finding> refusals, List<Pose> poses) {
        refusals.stream().map(f -> f.rule().id()).distinct().forEach(rule -> refused.merge(rule, 1, Integer::sum));
        avoided.learn(site.plan(), refusals, groups.movable(), poses);
    }

    /** What a descent found, and where it began: each hull by itself may lie there. */
    private record Run(List<Pose> start, Descent.Best best, Spread seen) {
    }

    /**
     * The best, moved on while clearance in space or lowering refuse it: they cost far less than assessing in full.
     * Hulls that are refused go back to where the descent began, if there is still room, else all go on searching.
     */
    private Descent.Best screened(Descent descent, Descent.Aim aim, Run run, Well19937c random) {
        Descent.Best best = run.best;
        for (int i = 0; i < SCREENS; i++) {
            List<Pose> poses = rounded(best.poses());
            List<Finding> refusals = descent.look(poses, aim).estimate().isAllowed() ? site.screened(poses)
                    : List.of();
            if (refusals.isEmpty()) {
                return best;
            }
            learn(refusals, poses);
            Descent.Best back = descent.look(putBack(refusals, poses, run.start), aim);
            best = back.estimate().isAllowed() && !back.poses().equals(poses) ? back : descent.run(poses, aim,
                    new Descent.Effort(FIRST_LOOKS * groups.numbers(), NEAR_REACH), random);
        }
        return best;
    }

    /** The poses with the groups of the hulls that findings name where they were at the start. */
    private List<Pose> putBack(List<Finding> refusals, List<Pose> poses, List<Pose> start) {
        List<Pose> back = new ArrayList<>(poses);
        for (int hull : groups.movable()) {
            String id = site.plan().hulls().get(hull).id();
            if (refusals.stream().anyMatch(f -> QuickSite.names(f, id))) {
                groups.movable().stream().filter(h -> groups.lead(h) == groups.lead(hull))
                        .forEach(h -> back.set(h, start.get(h)));
            }
        }
        return back;
    }

    private String known() {
        return passed.isEmpty() ? "" : String.format(Locale.ROOT, " (%d found, best %.0f h)", best().size(),
                best().get(0).figures().hours().orElse(0));
    }

    private Descent.Best bestBy(Descent descent, Descent.Aim aim) {
        return passed.stream().map(a -> descent.look(posesOf.get(passed.indexOf(a)), aim))
                .min(Comparator.comparingDouble(Descent.Best::cost)).orElseThrow();
    }

    private List<Pose> rounded(List<Pose> poses) {
        List<Pose> all = new ArrayList<>(poses);
        groups.movable().forEach(h -> all.set(h, MovedPlan.rounded(poses.get(h))));
        return all;
    }

    private boolean isKnown(List<Pose> poses) {
        return posesOf.values().stream().anyMatch(other -> groups.movable().stream().allMatch(h ->
                Math.hypot(Math.hypot(other.get(h).east() - poses.get(h).east(),
                        other.get(h).north() - poses.get(h).north()), Groups.ARC
                        * Groups.turn(other.get(h).azimuth() - poses.get(h).azimuth())) < SAME));
    }

    private void keep(Arrangement arrangement, List<Pose> poses) {
        posesOf.put(passed.size(), poses);
        passed.add(arrangement);
        course.found(arrangement);
    }

    /** What no other dominates, fewest hours first; of equals the first. */
    private List<Arrangement> best() {
        List<Arrangement> best = new ArrayList<>();
        for (Arrangement one : passed) {
            boolean dominated = passed.stream().anyMatch(o -> one.figures().isDominatedBy(o.figures()));
            if (!dominated && best.stream().noneMatch(b -> isEqual(b.figures(), one.figures()))) {
                best.add(one);
            }
        }
        best.sort(Comparator.comparingDouble((Arrangement a) -> a.figures().of(Figures.Weighed.HOURS))
                .thenComparingInt(Arrangement::step));
        return best;
    }

    private static boolean isEqual(Figures one, Figures other) {
        for (Figures.Weighed what : Figures.Weighed.values()) {
            if (one.of(what) != other.of(what)) {
                return false;
            }
        }
        return true;
    }
}
