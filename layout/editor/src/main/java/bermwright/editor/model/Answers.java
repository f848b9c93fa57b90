// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.run.Background;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.Progress;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.LiveSite;
import bermwright.site.assessment.SiteGround;
import bermwright.site.laydown.Laydown;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Answers to the plan as it is now: clearance at once, lowering a blink later, cover, dose and soil when they are
 * worked out; until then the earlier ones are shown and said to be of an earlier plan.
 */
public final class Answers {
    /** The lane of outlines and clearance while the hand moves. */
    public static final String CLEARANCE = "clearance";
    /** The lane of lowering. */
    public static final String LOWERING = "lowering";
    /** The lane of landings all over the dispersion, which follow once lowering as planned is there. */
    public static final String LANDINGS = "landings";
    /** The lane of cover, dose and soil. */
    public static final String ASSESSMENT = "assessment";
    private static final String DEEP = "cover, dose and soil";
    /** How long the hand has to rest before the long work starts. */
    private static final long REST_MILLIS = 350;

    private final Background background;
    private final Assessments assessments;
    private final Signal changed = new Signal();
    private final Signal working = new Signal();
    private final Map<String, String> failures = new LinkedHashMap<>();
    private Optional<SiteGround> ground = Optional.empty();
    private Optional<Live> live = Optional.empty();
    private Optional<Plan> asked = Optional.empty();
    private Optional<Plan> following = Optional.empty();
    private Optional<Assessment> assessment = Optional.empty();
    private final EarlyDose dose = new EarlyDose(this);
    private List<Finding> deepFindings = List.of();
    private List<Numbered> findings = List.of();
    private List<MapFigure> ways = List.of();
    private Optional<Background.Step> step = Optional.empty();
    private Optional<Plan> stopped = Optional.empty();
    private Optional<String> groundTrouble = Optional.empty();
    private boolean isGroundRead = true;
    private final LoweringAnswers lowering;
    private final TimeLeft timeLeft = new TimeLeft(System::nanoTime);

    private record Live(Plan plan, LiveSite site, MapFigures figures) {
    }

    /** An assessment, and what of its findings the quick part does not find by itself. */
    private record Deep(Assessment assessment, LiveSite live, List<Finding> beyondLive) {
    }

    /**
     * Answers worked out in the background.
     *
     * @param background  where
     * @param assessments what works out the whole of it
     */
    public Answers(Background background, Assessments assessments) {
        this.background = background;
        this.assessments = assessments;
        this.lowering = new LoweringAnswers(background, () -> {
            failures.remove(LOWERING);
            gather();
            changed.raise();
        }, failure -> failed(LOWERING, failure));
    }

    /**
     * Raised when an answer came in.
     *
     * @return the signal
     */
    public Signal changed() {
        return changed;
    }

    /**
     * Raised when the long work began, came further or ended.
     *
     * @return the signal
     */
    public Signal working() {
        return working;
    }

    /**
     * Takes the ground.
     *
     * @param site the ground
     */
    public void ground(SiteGround site) {
        ground = Optional.of(site);
        groundTrouble = Optional.empty();
        isGroundRead = true;
        askAgain();
    }

    /** Takes back what was answered and asks for the plan anew. */
    private void askAgain() {
        Optional<Plan> plan = asked;
        asked = Optional.empty();
        live = Optional.empty();
        lowering.forget();
        assessment = Optional.empty();
        dose.forget();
        plan.ifPresent(p -> plan(p, false));
        changed.raise();
    }

    /** Says that the ground is being read: until it is there nothing can be said about the plan. */
    public void readingGround() {
        isGroundRead = false;
        groundTrouble = Optional.empty();
        changed.raise();
    }

    /**
     * Says that there is no ground: the answers to the plan on an earlier one are taken back.
     *
     * @param reason why it could not be read
     */
    public void noGround(String reason) {
        isGroundRead = true;
        groundTrouble = Optional.of(reason);
        ground = Optional.empty();
        background.cancel(ASSESSMENT);
        deepFindings = List.of();
        ways = List.of();
        step = Optional.empty();
        askAgain();
    }

    /**
     * The ground.
     *
     * @return the ground, empty until it was read
     */
    public Optional<SiteGround> ground() {
        return ground;
    }

    /**
     * Takes the plan to answer for.
     *
     * @param plan    the plan
     * @param isTrial whether the hand still holds it
     */
    public void plan(Plan plan, boolean isTrial) {
        boolean isNew = !asked.filter(plan::equals).isPresent();
        asked = Optional.of(plan);
        if (isTrial && live.isPresent() && ground.isPresent()) {
            follow(plan);
        } else {
            following = Optional.empty();
            background.cancel(CLEARANCE);
            if (live.filter(l -> l.plan.equals(plan)).isEmpty()) {
                live = Optional.of(seen(plan, live, assessment, ground));
            }
        }
        ground.ifPresent(site -> {
            lowering.follow(plan, site.grid());
            if (isNew || !background.isBusy(ASSESSMENT)) {
                assess(plan, site, isTrial);
            }
        });
        gather();
    }

    /** Follows the hand beside the screen's own work: the newest plan is taken up as soon as the one before is seen. */
    private void follow(Plan plan) {
        if (live.filter(l -> l.plan.equals(plan)).isPresent()) {
            following = Optional.empty();
            return;
        }
        if (background.isBusy(CLEARANCE)) {
            following = Optional.of(plan);
            return;
        }
        following = Optional.empty();
        Optional<Live> before = live;
        Optional<Assessment> known = assessment;
        Optional<SiteGround> site = ground;
        background.start(CLEARANCE, progress -> seen(plan, before, known, site), Background.Listener.of(now -> {
            live = Optional.of(now);
            failures.remove(CLEARANCE);
            following.ifPresent(this::follow);
            gather();
            changed.raise();
        }, failure -> failed(CLEARANCE, failure)));
    }

    private static Live seen(Plan plan, Optional<Live> before, Optional<Assessment> known,
            Optional<SiteGround> ground) {
        LiveSite site = before.map(l -> known.map(a -> l.site.with(plan, a)).orElseGet(() -> l.site.with(plan)))
                .orElseGet(() -> LiveSite.of(plan, ground.map(SiteGround::grid), Map.of()));
        return new Live(plan, site, figures(before, site));
    }

    private static MapFigures figures(Optional<Live> before, LiveSite site) {
        return before.map(l -> l.figures.with(site)).orElseGet(() -> MapFigures.of(site));
    }

    private void assess(Plan plan, SiteGround site, boolean isTrial) {
        if (isAssessmentFresh(plan)) {
            background.cancel(ASSESSMENT);
            return;
        }
        if (stopped.filter(plan::equals).isPresent() && !isTrial) {
            return;
        }
        stopped = Optional.empty();
        timeLeft.begins();
        background.start(ASSESSMENT, progress -> assessed(plan, site, progress), new Background.Listener<Deep>(deep -> {
            assessment = Optional.of(deep.assessment);
            dose.forget();
            deepFindings = deep.beyondLive;
            step = Optional.empty();
            timeLeft.ended();
            failures.remove(DEEP);
            ways = new ArrayList<>(MapFigures.hauls(deep.assessment));
            ways.addAll(MapFigures.footWays(deep.assessment));
            if (live.filter(l -> l.plan.equals(plan)).isPresent()) {
                live = Optional.of(new Live(plan, deep.live, figures(live, deep.live)));
            }
            gather();
            working.raise();
            changed.raise();
        }, failure -> failed(DEEP, failure), now -> {
            step = Optional.of(now);
            timeLeft.at(now.share());
            working.raise();
        }, () -> {
            step = Optional.empty();
            working.raise();
        }));
    }

    private Deep assessed(Plan plan, SiteGround site, Progress progress) {
        rest(progress);
        progress.report(0, "starting");
        Assessment whole = assessments.run(Assessments.Asked.EVERYTHING, new Assessments.Site(plan, "plan", site),
                progress, early -> background.tell(() -> {
                    if (!progress.isCancelled()) {
                        dose.take(early);
                        changed.raise();
                    }
                }));
        LiveSite quick = LiveSite.of(whole);
        Set<Finding> known = new HashSet<>(quick.findings());
        whole.hulls().forEach(h -> h.laydown().ifPresent(l -> known.addAll(l.findings())));
        return new Deep(whole, quick, whole.findings().stream().filter(f -> !known.contains(f)).toList());
    }

    private static void rest(Progress progress) {
        long end = System.nanoTime() + REST_MILLIS * 1_000_000;
        while (System.nanoTime() < end) {
            progress.check();
            try {
                Thread.sleep(10);
            } catch (InterruptedException closing) {
                Thread.currentThread().interrupt();
                throw new java.util.concurrent.CancellationException("closing");
            }
        }
    }

    /** Stops the long work; the answers stay those of the earlier plan until the plan changes or is asked for again. */
    public void stop() {
        stopped = asked;
        background.cancel(ASSESSMENT);
        changed.raise();
    }

    /** Starts the long work again after it was stopped or failed. */
    public void again() {
        stopped = Optional.empty();
        failures.clear();
        asked.ifPresent(plan -> ground.ifPresent(site -> {
            lowering.follow(plan, site.grid());
            assess(plan, site, false);
        }));
        changed.raise();
    }

    private void failed(String check, Throwable failure) {
        failures.put(check, Plainly.words(failure));
        step = Optional.empty();
        working.raise();
        changed.raise();
    }

    private void gather() {
        List<Finding> all = new ArrayList<>();
        live.ifPresent(l -> all.addAll(l.site.findings()));
        all.addAll(lowering.findings());
        all.addAll(deepFindings);
        findings = Numbered.of(all);
    }

    /**
     * Whether outlines and clearance are of a plan.
     *
     * @param plan the plan
     * @return true where they are
     */
    public boolean isClearanceFresh(Plan plan) {
        return live.filter(l -> l.plan.equals(plan)).isPresent();
    }

    /**
     * Whether the answers about lowering are of a plan.
     *
     * @param plan the plan
     * @return true where they are
     */
    public boolean isLoweringFresh(Plan plan) {
        return lowering.isFresh(plan);
    }

    /**
     * Whether cover, dose and soil are of a plan; else they are of an earlier one and provisional.
     *
     * @param plan the plan
     * @return true where they are
     */
    public boolean isAssessmentFresh(Plan plan) {
        return assessment.filter(a -> a.plan().equals(plan)).isPresent();
    }

    /**
     * The latest whole assessment.
     *
     * @return the assessment, perhaps of an earlier plan; empty until there is one
     */
    public Optional<Assessment> assessment() {
        return assessment;
    }

    /**
     * Doses as designed.
     *
     * @return those that come first
     */
    public EarlyDose dose() {
        return dose;
    }

    boolean isAtWork() {
        return step.isPresent() || background.isBusy(ASSESSMENT);
    }

    /**
     * How far the long work has come.
     *
     * @return share and words, empty while none runs
     */
    public Optional<Background.Step> step() {
        return step;
    }

    /**
     * How a hull comes to lie.
     *
     * @param hull its id
     * @return the answer, empty where there is none yet
     */
    public Optional<Laydown> laydown(String hull) {
        return lowering.laydown(hull);
    }

    /**
     * What no finding can speak of yet, so that an empty list is not taken for a plan without fault.
     *
     * @param plan the plan
     * @return why the list of findings is not whole; empty where it is
     */
    public Optional<String> unchecked(Plan plan) {
        if (ground.isEmpty()) {
            return Optional.of(groundTrouble.isPresent() ? "Not checked: the ground could not be read, so ground,"
                    + " lowering, cover and dose are not looked at" : "Not checked yet: the ground is being read");
        } else if (!isGroundRead) {
            return Optional.of("Of the ground read before: the ground is being read anew");
        } else if (!failures.isEmpty()) {
            return Optional.of("Not all is checked; not worked out: " + failures.keySet().stream().sorted()
                    .collect(Collectors.joining(", ")));
        } else if (stopped.isPresent()) {
            return Optional.of("Not all is checked; the work was stopped" + kept());
        }
        return isClearanceFresh(plan) && isLoweringFresh(plan) && isAssessmentFresh(plan) ? Optional.empty()
                : Optional.of("Not all is checked yet" + kept());
    }

    private String kept() {
        return assessment.isPresent() ? "; what is of the plan before is marked" : "";
    }

    /**
     * How cover, dose and soil stand, in words for a heading: never that something is worked out while nothing runs.
     *
     * @param plan the plan
     * @return such as {@code being worked out}; empty where they are of this plan
     */
    public Optional<String> standing(Plan plan) {
        if (ground.isEmpty()) {
            return Optional.of(groundTrouble.isPresent() ? "not worked out: the ground could not be read"
                    : "not worked out yet: the ground is being read");
        } else if (isAssessmentFresh(plan)) {
            return Optional.empty();
        }
        String shown = assessment.isPresent() ? "of the plan before; " : "";
        if (failures.containsKey(DEEP)) {
            return Optional.of(shown + "could not be worked out");
        }
        return Optional.of(shown + (stopped.isPresent() ? "the work was stopped" : isAtWork()
                ? "being worked out" : "not worked out yet"));
    }

    /**
     * A heading over what cover, dose and soil say, with how they stand where they are not of this plan.
     *
     * @param words the heading
     * @param plan  the plan
     * @return the heading, such as {@code Soil – of the plan before; being worked out}
     */
    public String heading(String words, Plan plan) {
        return words + standing(plan).map(s -> " \u2013 " + s).orElse("");
    }

    /**
     * How long the long work will take on, judged by how it went so far and the time before.
     *
     * @return such as {@code about 20 s left}; empty while that cannot be known
     */
    public Optional<String> timeLeft() {
        return step.flatMap(s -> timeLeft.words());
    }

    /**
     * Whether a finding shown was found in an earlier plan and was not looked for in this one yet.
     *
     * @param plan    the plan
     * @param finding the finding
     * @return true where it is stale
     */
    public boolean isStale(Plan plan, Finding finding) {
        if (live.isPresent() && live.get().site.findings().contains(finding)) {
            return !isClearanceFresh(plan);
        }
        return lowering.isStale(plan, finding).orElseGet(() -> !isAssessmentFresh(plan));
    }

    /**
     * The findings, the worst first, numbered.
     *
     * @return the findings
     */
    public List<Numbered> findings() {
        return findings;
    }

    /**
     * What the map draws.
     *
     * @return the figures in the order they are drawn
     */
    public List<MapFigure> figures() {
        if (live.isEmpty()) {
            return List.of();
        }
        List<MapFigure> all = new ArrayList<>(ways);
        all.addAll(live.get().figures.figures());
        return all;
    }

    /**
     * What could not be worked out.
     *
     * @return what failed and why
     */
    public Map<String, String> failures() {
        return Map.copyOf(failures);
    }
}
