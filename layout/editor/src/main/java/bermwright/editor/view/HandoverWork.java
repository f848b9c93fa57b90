// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.Plainly;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.finding.Sentence;
import bermwright.foundation.Progress;
import bermwright.report.HandoverPart;
import bermwright.report.Reports;
import bermwright.report.reader.DocumentControl;
import bermwright.report.reader.Handover;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.Assessments;
import bermwright.site.assessment.SiteGround;
import bermwright.site.comparison.Comparison;
import bermwright.site.judgement.Judgements;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.JudgementFiles;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Writes what is handed over, beside the work on the plan, with progress and a way to stop. */
final class HandoverWork {
    private static final String LANE = "handover";

    private final Workbench bench;
    private final Background background;
    private final Notices notices;

    HandoverWork(Workbench bench, Background background, Notices notices) {
        this.bench = bench;
        this.background = background;
        this.notices = notices;
    }

    /** Where it goes unless somebody says otherwise: a folder beside the plan. */
    static Path suggested(Path plan, HandoverPart part) {
        String name = plan.getFileName().toString().replaceAll("(?i)\\.json$", "");
        return plan.resolveSibling(name + "-" + part.word().replace(' ', '-'));
    }

    void start(HandoverPart part, HandoverDialog.Answer asked) {
        Plan plan = bench.document().plan();
        Path file = bench.document().file();
        Optional<Assessment> known = bench.answers().isAssessmentFresh(plan) ? bench.answers().assessment()
                : Optional.empty();
        Optional<SiteGround> ground = bench.answers().ground();
        notices.working(LANE, "Writing " + part.word() + " \u2026", -1, () -> background.cancel(LANE));
        background.start(LANE, progress -> {
            Judgements judgements = JudgementFiles.of(file);
            Optional<Assessment> earlier = asked.against().map(old -> assessed(PlanFiles.read(old), old,
                    Optional.empty(), progress.part(0, 0.3)));
            Assessment now = known.orElseGet(() -> assessed(plan, file, ground, progress.part(0.3, 0.6)));
            Reports.Order order = new Reports.Order(asked.readers(), new DocumentControl.Issue(asked.revision(),
                    asked.date()), new Handover.Review(judgements, earlier.map(e -> Comparison.of(e, now))));
            try {
                Optional<String> goes = HandoverPart.goesToo(asked.folder());
                return new Done(part.write(now, order, asked.folder(), progress.part(known.isPresent() ? 0 : 0.6, 1)),
                        goes);
            } catch (IOException notWritten) {
                throw new UncheckedIOException(notWritten);
            }
        }, new Background.Listener<>(done -> written(part, asked.folder(), done), failure -> notices.show(LANE,
                "No " + part.word() + " were written. " + Plainly.words(failure), List.of()),
                step -> notices.working(LANE, "Writing " + part.word() + ": " + step.words(), step.share(),
                        () -> background.cancel(LANE)), () -> notices.show(LANE, "Writing " + part.word()
                + " was stopped; the folder is as it was.", List.of())));
    }

    private static Assessment assessed(Plan plan, Path file, Optional<SiteGround> ground, Progress progress) {
        return Assessments.standard().run(plan, file.toString(), ground.orElseGet(() -> SiteGround.read(plan, file,
                progress.part(0, 0.1))), progress.part(0.1, 1));
    }

    /** What to open first, and what went with the earlier files. */
    private record Done(Path first, Optional<String> goes) {
    }

    private void written(HandoverPart part, Path folder, Done done) {
        Notices.Choice open = new Notices.Choice("Open folder", () -> tell(Shown.open(folder)));
        Notices.Choice close = new Notices.Choice("Close", () -> { });
        notices.show(LANE, Sentence.begin(part.word()) + " are in " + folder.toAbsolutePath() + "."
                + done.goes.map(words -> " " + words).orElse(""),
                part == HandoverPart.REPORTS ? List.of(new Notices.Choice("Open the start page",
                        () -> tell(Shown.open(done.first))), open, close) : List.of(open, close));
    }

    private void tell(Optional<String> trouble) {
        trouble.ifPresent(bench::tell);
    }
}
