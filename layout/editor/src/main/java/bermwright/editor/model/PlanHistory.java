// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.PlanEdit;
import bermwright.site.plan.Plan;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/** A plan with all the plans it was before and, after undo, those it can be again; there is no limit to either. */
public final class PlanHistory {
    private final Deque<State> before = new ArrayDeque<>();
    private final Deque<State> after = new ArrayDeque<>();
    private State now;

    /**
     * A history that begins with a plan.
     *
     * @param plan the plan
     */
    public PlanHistory(Plan plan) {
        this.now = new State("", plan);
    }

    private record State(String words, Plan plan) {
    }

    /**
     * The plan as it is now.
     *
     * @return the plan
     */
    public Plan plan() {
        return now.plan;
    }

    /**
     * Makes an edit a step of its own.
     *
     * @param edit the edit
     * @return true where the plan became another; an edit that changes nothing leaves no step
     */
    public boolean make(PlanEdit edit) {
        return make(edit.words(), edit.applied(now.plan));
    }

    /**
     * Makes a changed plan a step of its own.
     *
     * @param words   what people call the step
     * @param changed the plan after it
     * @return true where the plan became another
     */
    public boolean make(String words, Plan changed) {
        if (changed.equals(now.plan)) {
            return false;
        }
        before.push(now);
        now = new State(words, changed);
        after.clear();
        return true;
    }

    /**
     * Goes back to the plan before the last step.
     *
     * @return the words of the step taken back, empty where there is none
     */
    public Optional<String> undo() {
        if (before.isEmpty()) {
            return Optional.empty();
        }
        String words = now.words;
        after.push(now);
        now = before.pop();
        return Optional.of(words);
    }

    /**
     * Makes the step that was taken back last once more.
     *
     * @return the words of the step, empty where there is none
     */
    public Optional<String> redo() {
        if (after.isEmpty()) {
            return Optional.empty();
        }
        before.push(now);
        now = after.pop();
        return Optional.of(now.words);
    }

    /**
     * The step that undo would take back.
     *
     * @return its words, empty where there is none
     */
    public Optional<String> undoWords() {
        return before.isEmpty() ? Optional.empty() : Optional.of(now.words);
    }

    /**
     * The step that redo would make again.
     *
     * @return its words, empty where there is none
     */
    public Optional<String> redoWords() {
        return Optional.ofNullable(after.peek()).map(State::words);
    }

    /**
     * The steps made so far.
     *
     * @return their words, the latest first
     */
    public List<String> steps() {
        List<String> words = new ArrayList<>();
        if (!before.isEmpty()) {
            words.add(now.words);
            before.stream().map(State::words).filter(w -> !w.isEmpty()).forEach(words::add);
        }
        return words;
    }
}
