// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.Part;
import bermwright.editor.edit.PlanEdit;
import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.site.assessment.SiteGround;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import java.util.function.Predicate;

/**
 * The plan being worked on, what is picked, what is tried out just now, and the answers to it.
 *
 * <p>To be used from the screen thread only.
 */
public final class Workbench {
    /** How often what need not follow the hand is told of it (ns). */
    private static final long CALM_NANOS = 500_000_000;

    private final PlanDocument document;
    private final Answers answers;
    private final Signal changed = new Signal();
    private final Signal calm = new Signal();
    private long calmed = System.nanoTime();
    private final Signal pickedChanged = new Signal();
    private final Signal troubleChanged = new Signal();
    private Optional<Trial> trial = Optional.empty();
    private Optional<Part> picked = Optional.empty();
    private final Set<Part> also = new LinkedHashSet<>();
    private Optional<String> pickedFinding = Optional.empty();
    private Optional<String> trouble = Optional.empty();
    private Predicate<Finding> shown = finding -> true;

    private record Trial(String words, Plan plan) {
    }

    /**
     * A workbench for a document.
     *
     * @param document the document
     * @param answers  what works out the answers
     */
    public Workbench(PlanDocument document, Answers answers) {
        this.document = document;
        this.answers = answers;
        answers.changed().listen(this::raise);
        answers.working().listen(this::calmDown);
        answers.plan(document.plan(), false);
    }

    /**
     * The document.
     *
     * @return the document
     */
    public PlanDocument document() {
        return document;
    }

    /**
     * The answers.
     *
     * @return the answers
     */
    public Answers answers() {
        return answers;
    }

    /**
     * The plan as the hand holds it now: the one tried out, else the one of the document.
     *
     * @return the plan
     */
    public Plan plan() {
        return trial.map(Trial::plan).orElseGet(document::plan);
    }

    /**
     * Raised when plan, file or answers changed.
     *
     * @return the signal
     */
    public Signal changed() {
        return changed;
    }

    /**
     * Raised with {@link #changed}, but while the hand holds something only twice a second; for lists and forms, which
     * cost more to draw than a frame has time for.
     *
     * @return the signal
     */
    public Signal calm() {
        return calm;
    }

    /**
     * Raised when another part or finding was picked.
     *
     * @return the signal
     */
    public Signal pickedChanged() {
        return pickedChanged;
    }

    /**
     * Raised when there is something to tell in {@link #trouble}.
     *
     * @return the signal
     */
    public Signal troubleChanged() {
        return troubleChanged;
    }

    /**
     * Shows a changed plan without making it a step yet.
     *
     * @param words what the step would be called
     * @param plan  the plan
     */
    public void tryOut(String words, Plan plan) {
        trial = Optional.of(new Trial(words, plan));
        answers.plan(plan, true);
        raise();
    }

    /**
     * Whether a changed plan is tried out that is no step yet.
     *
     * @return true while the hand holds it
     */
    public boolean isTrying() {
        return trial.isPresent();
    }

    /** Makes what is tried out a step. */
    public void settle() {
        trial.ifPresent(tried -> {
            trial = Optional.empty();
            make(tried.words, tried.plan);
        });
    }

    /** Gives up what is tried out. */
    public void giveUp() {
        if (trial.isPresent()) {
            trial = Optional.empty();
            planChanged();
        }
    }

    /**
     * Makes an edit a step; what is not accepted is told in {@link #trouble} and changes nothing.
     *
     * @param edit the edit
     * @return true where the plan became another
     */
    public boolean make(PlanEdit edit) {
        try {
            return make(edit.words(), edit.applied(document.plan()));
        } catch (InputException refused) {
            tell(edit.words() + " was not done. " + refused.getMessage());
            return false;
        }
    }

    /**
     * Makes a changed plan a step; what is not accepted is told in {@link #trouble} and changes nothing.
     *
     * @param words what the step is called
     * @param plan  the plan after it
     * @return true where the plan became another
     */
    public boolean make(String words, Plan plan) {
        boolean made = false;
        try {
            made = document.make(words, plan);
            if (made) {
                trouble = document.journalTrouble();
                troubleChanged.raise();
            }
        } catch (InputException refused) {
            tell(words + " was not done. " + refused.getMessage());
        }
        planChanged();
        return made;
    }

    /** Takes the last step back. */
    public void undo() {
        giveUp();
        document.undo();
        planChanged();
    }

    /** Makes the step taken back last once more. */
    public void redo() {
        giveUp();
        document.redo();
        planChanged();
    }

    /** Brings answers and listeners up to the document's plan, after anything that changed it. */
    public void planChanged() {
        if (picked.isPresent() && !picked.get().isIn(document.plan())) {
            pick(Optional.empty());
        }
        answers.plan(document.plan(), false);
        raise();
    }

    private void raise() {
        changed.raise();
        if (trial.isEmpty()) {
            calmed = System.nanoTime();
            calm.raise();
        } else {
            calmDown();
        }
    }

    private void calmDown() {
        long now = System.nanoTime();
        if (trial.isPresent() && now - calmed > CALM_NANOS) {
            calmed = now;
            calm.raise();
        }
    }

    /**
     * Tells the person about something that went wrong.
     *
     * @param words what happened
     */
    public void tell(String words) {
        trouble = Optional.of(words);
        troubleChanged.raise();
    }

    /** Forgets what went wrong. */
    public void clearTrouble() {
        trouble = Optional.empty();
        troubleChanged.raise();
    }

    /**
     * What went wrong last.
     *
     * @return the words, empty where all is well
     */
    public Optional<String> trouble() {
        return trouble;
    }

    /**
     * Picks a part.
     *
     * @param part the part, empty for none; one that is not in the plan counts as none
     */
    public void pick(Optional<Part> part) {
        Optional<Part> there = part.filter(p -> p.isIn(plan()));
        if (!picked.equals(there) || !also.isEmpty()) {
            picked = there;
            also.clear();
            pickedFinding = Optional.empty();
            pickedChanged.raise();
        }
    }

    /**
     * Picks a part beside what is picked already, or lets go of it where it is picked.
     *
     * @param part the part
     */
    public void pickAlso(Part part) {
        List<Part> all = new ArrayList<>(allPicked());
        if (!all.remove(part)) {
            all.add(part);
        }
        pickAll(all);
    }

    /**
     * Picks several parts.
     *
     * @param parts the parts, the first of which form and answers are about
     */
    public void pickAll(List<Part> parts) {
        List<Part> there = parts.stream().filter(p -> p.isIn(plan())).distinct().toList();
        picked = there.stream().findFirst();
        also.clear();
        also.addAll(there.stream().skip(1).toList());
        pickedFinding = Optional.empty();
        pickedChanged.raise();
    }

    /**
     * All parts picked.
     *
     * @return the parts, the one of {@link #picked} first
     */
    public List<Part> allPicked() {
        return Stream.concat(picked.stream(), also.stream().filter(p -> p.isIn(plan()))).toList();
    }

    /**
     * Picks the next or an earlier part of the plan, as a key does.
     *
     * @param step 1 for the next, -1 for the one before
     */
    public void pickNext(int step) {
        List<Part> parts = Inventory.parts(plan());
        if (!parts.isEmpty()) {
            int now = picked.map(parts::indexOf).orElse(step > 0 ? -1 : 0);
            pick(Optional.of(parts.get(Math.floorMod(now + step, parts.size()))));
        }
    }

    /**
     * Picks a finding and the part it is about.
     *
     * @param finding the finding
     */
    public void pickFinding(Numbered finding) {
        Part.bySubject(plan(), finding.finding().subject()).ifPresent(part -> picked = Optional.of(part));
        pickedFinding = Optional.of(finding.number());
        pickedChanged.raise();
    }

    /**
     * The part picked.
     *
     * @return the part, empty for none
     */
    public Optional<Part> picked() {
        return picked;
    }

    /**
     * The finding picked.
     *
     * @return its number, empty for none
     */
    public Optional<String> pickedFinding() {
        return pickedFinding;
    }

    /**
     * What the map draws.
     *
     * @return the figures in the order they are drawn
     */
    public List<MapFigure> figures() {
        return answers.figures();
    }

    /**
     * The findings, the worst first, numbered.
     *
     * @return the findings
     */
    public List<Numbered> findings() {
        return answers.findings();
    }

    /**
     * The findings that are to be seen on the map: all but those that somebody accepted or that the list leaves out.
     *
     * @return the findings, the worst first
     */
    public List<Numbered> shownFindings() {
        return findings().stream().filter(n -> shown.test(n.finding())).toList();
    }

    /**
     * Says which findings are to be seen on the map.
     *
     * @param which true for those
     */
    public void showFindings(Predicate<Finding> which) {
        shown = which;
        changed.raise();
    }

    /**
     * True metres against those of the plan.
     *
     * @return those of the ground; the same where there is none yet
     */
    public TrueMetres metres() {
        return answers.ground().map(SiteGround::grid).map(ElevationGrid::metres).orElse(TrueMetres.SAME);
    }

    /**
     * Azimuth of true north from grid north.
     *
     * @return the azimuth (rad), empty where it is not known
     */
    public OptionalDouble trueNorth() {
        return answers.ground().flatMap(g -> g.file().scale().trueNorth())
                .map(a -> OptionalDouble.of(a.radians())).orElse(OptionalDouble.empty());
    }

    /**
     * The box around everything in the plan that has a place; that of the ground where nothing has.
     *
     * @return the box, empty for an empty plan without ground
     */
    public Optional<MapCamera.Box> box() {
        return figures().stream().filter(f -> f.look() != FigureLook.STAND_OFF).map(MapFigure::box)
                .reduce(MapCamera.Box::with).or(() -> answers.ground().map(site -> site.file().whole())
                .map(f -> new MapCamera.Box(f.west(), f.south(), f.eastEdge(), f.northEdge())));
    }

    /**
     * The box around a part.
     *
     * @param part the part
     * @return the box, empty where it has no place
     */
    public Optional<MapCamera.Box> box(Part part) {
        return figures().stream()
                .filter(f -> f.look() != FigureLook.STAND_OFF && f.part().filter(part::equals).isPresent())
                .map(MapFigure::box).reduce(MapCamera.Box::with);
    }

    /**
     * Where a finding is.
     *
     * @param finding the finding
     * @return its own place, else the middle of the part it is about
     */
    public Optional<Point> place(Finding finding) {
        return finding.place().or(() -> Part.bySubject(plan(), finding.subject()).flatMap(this::box)
                .map(MapCamera.Box::centre));
    }
}
