// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.finding.Finding;
import bermwright.foundation.InputException;
import bermwright.site.judgement.Judgement;
import bermwright.site.judgement.Judgements;
import bermwright.site.plan.Annotations;
import bermwright.site.planfile.JudgementFiles;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The findings of a plan that somebody accepted, with name, day and reason; kept in the file of judgements beside the
 * plan, which the reports show.
 */
public final class Acceptance {
    private Path plan;
    private Judgements judgements = Judgements.NONE;
    private Optional<String> trouble = Optional.empty();

    /**
     * What was judged of a plan.
     *
     * @param plan the plan file
     */
    public Acceptance(Path plan) {
        this.plan = plan;
        read();
    }

    /**
     * Reads the judgements of a plan file anew, where it is another one than before.
     *
     * @param now the plan file
     */
    public void follow(Path now) {
        if (!now.equals(plan)) {
            plan = now;
            read();
        }
    }

    private void read() {
        try {
            judgements = JudgementFiles.of(plan);
            trouble = Optional.empty();
        } catch (InputException unreadable) {
            judgements = Judgements.NONE;
            trouble = Optional.of(unreadable.getMessage());
        }
    }

    /**
     * Why nothing is known of what was judged.
     *
     * @return what is wrong with the file of judgements, empty where all is well
     */
    public Optional<String> trouble() {
        return trouble;
    }

    /**
     * Who judged which findings, where that still stands for what they say now.
     *
     * @param findings the findings
     * @return by id of the finding the judgement in words, of those that are accepted
     */
    public Map<String, String> accepted(List<Finding> findings) {
        return words(findings, Judgements.State.STANDS);
    }

    /**
     * Findings that were accepted when they said something else.
     *
     * @param findings the findings
     * @return by id the judgement in words
     */
    public Map<String, String> outdated(List<Finding> findings) {
        return words(findings, Judgements.State.CHANGED);
    }

    private Map<String, String> words(List<Finding> findings, Judgements.State state) {
        Map<String, String> words = new HashMap<>();
        for (Judgements.Standing standing : judgements.standing(Judgements.judged(findings, List.of()))) {
            boolean isAccepted = standing.judgement().decision() == Judgement.Decision.ACCEPTED;
            if (standing.state() == state && isAccepted) {
                words.put(standing.judgement().of(), standing.judgement().words());
            } else if (!isAccepted) {
                words.remove(standing.judgement().of());
            }
        }
        return words;
    }

    /**
     * Accepts a finding, or takes an acceptance back.
     *
     * @param finding  the finding
     * @param decision what is decided
     * @param name     who decides, not blank
     * @param reason   why, not blank
     * @throws InputException if the file of judgements cannot be written; nothing is changed then
     */
    public void judge(Finding finding, Judgement.Decision decision, String name, String reason) {
        // What another program added since is kept.
        Judgements now = JudgementFiles.of(plan).with(new Judgement(finding.id(), decision, name.strip(),
                LocalDate.now(), Optional.empty(), Optional.of(reason.strip()),
                Judgements.judged(List.of(finding), List.of()).get(finding.id()), Annotations.NOTHING));
        JudgementFiles.write(now, plan);
        judgements = now;
        trouble = Optional.empty();
    }
}
