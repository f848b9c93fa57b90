// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.site.assessment.Assessments.Designed;
import bermwright.site.plan.Plan;
import java.util.Optional;

/** Doses under covers as designed, which are there before the rest of an assessment is. */
public final class EarlyDose {
    private final Answers answers;
    private Optional<Designed> early = Optional.empty();

    EarlyDose(Answers answers) {
        this.answers = answers;
    }

    void take(Designed designed) {
        early = Optional.of(designed);
    }

    /** Forgets it: the whole assessment is there, or none can be. */
    void forget() {
        early = Optional.empty();
    }

    /**
     * The latest doses.
     *
     * @return plan and doses, perhaps of an earlier plan; empty until there are any
     */
    public Optional<Designed> latest() {
        return early.or(() -> answers.assessment().flatMap(a -> a.dose().map(d -> new Designed(a.plan(), d))));
    }

    /**
     * How the doses stand, in words for a heading.
     *
     * @param plan the plan
     * @return such as {@code being worked out}; empty where they are of this plan and no more is worked out about them
     */
    public Optional<String> standing(Plan plan) {
        if (answers.isAssessmentFresh(plan) || early.filter(d -> d.plan().equals(plan)).isEmpty()) {
            return answers.standing(plan);
        }
        return Optional.of("of this plan, as designed; thinner and part-built covers " + (answers.isAtWork()
                ? "are being worked out" : "are not worked out"));
    }
}
