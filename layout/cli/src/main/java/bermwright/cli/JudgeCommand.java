// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.finding.Numbered;
import bermwright.foundation.InputException;
import bermwright.site.assessment.Assessment;
import bermwright.site.exposure.SiteDose;
import bermwright.site.judgement.Judgement;
import bermwright.site.judgement.Judgement.Decision;
import bermwright.site.judgement.Judgements;
import bermwright.site.plan.Annotations;
import bermwright.site.planfile.JudgementFiles;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Keeps what a reviewer judged of a finding or station beside the plan, and lists what was judged. */
@Command(name = "judge", description = "Keeps a judgement of a finding or station in a file beside the plan; without"
        + " --of lists what was judged and whether it still stands.")
final class JudgeCommand extends PlanFileCommand {
    @Option(names = "--of", paramLabel = "ID", description = "Id or number of the finding, or hull/station.")
    private Optional<String> of = Optional.empty();

    @Option(names = "--decision", paramLabel = "WORD", description = "accepted, refused or remark.")
    private Optional<String> decision = Optional.empty();

    @Option(names = "--name", paramLabel = "NAME", description = "Who decides.")
    private Optional<String> name = Optional.empty();

    @Option(names = "--date", paramLabel = "DATE", description = "When, such as 2031-02-14.")
    private Optional<String> date = Optional.empty();

    @Option(names = "--revision", paramLabel = "REVISION", description = "Revision of the plan.")
    private Optional<String> revision = Optional.empty();

    @Option(names = "--remark", paramLabel = "TEXT", description = "In the person's words; a must with the decision"
            + " remark.")
    private Optional<String> remark = Optional.empty();

    @Override
    public Integer call() {
        Console console = console();
        Judgements judgements = JudgementFiles.of(planFile());
        check();
        Assessment assessment = Assessed.plan(planFile(), console.progress());
        console.progress().end();
        Map<String, String> now = Judgements.judged(assessment.findings(), assessment.dose().map(SiteDose::stations)
                .orElse(List.of()));
        if (of.isPresent()) {
            String id = known(of.get(), assessment, now);
            judgements = judgements.with(new Judgement(id, word(), name.orElseThrow(), Options.day("--date",
                    date.orElseThrow()), revision, remark, now.get(id), Annotations.NOTHING));
            JudgementFiles.write(judgements, planFile());
        }
        List<Judgements.Standing> standing = judgements.standing(now);
        if (json()) {
            console.out().println(JsonObjects.text(page(standing)));
        } else if (standing.isEmpty()) {
            console.out().println("Nothing was judged yet; " + JudgementFiles.beside(planFile()) + " is not there.");
        } else {
            CommonText.heading("Judgements in " + JudgementFiles.beside(planFile()), console.out());
            standing.forEach(s -> CommonText.wrapped(s.judgement().of() + ": " + s.words(), 2, console.out()));
        }
        return ExitCode.of(assessment.findings()).number();
    }

    /** Refuses what cannot be kept before the long work. */
    private void check() {
        if (of.isEmpty()) {
            if (decision.isPresent() || name.isPresent() || remark.isPresent()) {
                throw missing("--of", "the id or number of a finding, or hull/station");
            }
            return;
        }
        Decision decided = word();
        if (name.filter(n -> !n.isBlank()).isEmpty()) {
            throw missing("--name", "the name of who decides");
        }
        Options.day("--date", date.orElseThrow(() -> missing("--date", Options.DATE)));
        if (decided == Decision.REMARK && remark.filter(r -> !r.isBlank()).isEmpty()) {
            throw missing("--remark", "the remark");
        }
    }

    private Decision word() {
        String accepted = Arrays.stream(Decision.values()).map(Decision::word).collect(Collectors.joining(", "));
        String word = decision.orElseThrow(() -> missing("--decision", accepted));
        return Arrays.stream(Decision.values()).filter(d -> d.word().equals(word)).findFirst().orElseThrow(() ->
                Options.bad("--decision", word, accepted));
    }

    private static InputException missing(String option, String accepted) {
        return Options.bad(option, "missing", accepted);
    }

    /** The id of what is judged, which may be given by its number. */
    private static String known(String given, Assessment assessment, Map<String, String> now) {
        return Numbered.of(assessment.findings()).stream().filter(n -> n.number().equals(given))
                .map(n -> n.finding().id()).findFirst().or(() -> Optional.of(given).filter(now::containsKey))
                .orElseThrow(() -> Options.bad("--of", given,
                        "one of " + String.join(", ", now.keySet())));
    }

    private ObjectNode page(List<Judgements.Standing> standing) {
        ObjectNode page = JsonObjects.object();
        page.put("plan", planFile().toString()).put("file", JudgementFiles.beside(planFile()).toString());
        ArrayNode all = page.putArray("judgements");
        standing.forEach(s -> {
            ObjectNode entry = all.addObject().put("of", s.judgement().of())
                    .put("decision", s.judgement().decision().word()).put("name", s.judgement().name())
                    .put("date", s.judgement().date().toString());
            s.judgement().revision().ifPresent(r -> entry.put("revision", r));
            s.judgement().remark().ifPresent(r -> entry.put("remark", r));
            entry.put("judged_on", s.judgement().judgedOn()).put("state",
                    s.state().name().toLowerCase(Locale.ROOT));
        });
        return page;
    }
}
