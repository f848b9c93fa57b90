// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.shielding.dose.DoseLimit;
import bermwright.site.answer.Answers;
import bermwright.site.answer.DoseAnswers;
import bermwright.site.answer.Unit;
import bermwright.site.answer.WalkAnswers;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.DoseWalks;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.exposure.WalkedDose;
import bermwright.site.plan.LimitInForce;
import java.io.PrintStream;
import java.util.List;

/** The dose at each station, for people. */
final class DoseText {
    private DoseText() {
    }

    static void write(Assessment assessment, PrintStream out) {
        CommonText.heading("Dose, " + StationDose.QUANTITY + " in mSv over a stay of "
                + TextTable.words(assessment.plan().exposure().stayDays(), 0) + " days with "
                + assessment.dose().map(SiteDose::event).orElse("no event"), out);
        out.println(TextTable.of(Answers.STATIONS, stations(assessment)));
        assessment.dose().filter(dose -> !dose.stations().isEmpty()).ifPresent(dose -> CommonText.wrapped(
                "Somebody at a station all the time. On open ground: cosmic rays %s mSv, %s.".formatted(
                        TextTable.words(Unit.MSV.of(dose.outside().cosmic().best()), 0),
                        dose.hasEvent() ? "the event " + TextTable.words(Unit.MSV.of(
                                dose.outside().event().best()), 0) + " mSv" : dose.event()), 2, out));
        out.println();
        assessment.dose().ifPresent(dose -> dose.crew(assessment.plan().exposure())
                .ifPresent(crew -> crew(assessment, dose, out)));
    }

    /** The crew's dose by where and from what it is got. */
    private static void crew(Assessment assessment, SiteDose dose, PrintStream out) {
        CommonText.heading("The crew's dose, " + StationDose.QUANTITY + " in mSv, sharing time as planned", out);
        out.println(TextTable.of(DoseAnswers.CREW_PARTS, DoseAnswers.CrewPart.of(assessment.plan().exposure(), dose)));
        if (!dose.people().isEmpty()) {
            CommonText.heading("Doses of named persons, " + StationDose.QUANTITY + " in mSv, by their own hours", out);
            out.println(TextTable.of(DoseAnswers.PEOPLE, dose.people()));
        }
    }

    /** Doses by particles that are followed by chance, beside those that are shown. */
    static void walks(List<WalkedDose> walked, PrintStream out) {
        CommonText.heading("Second opinion: doses by particles followed by chance, " + StationDose.QUANTITY + " in mSv",
                out);
        out.println(TextTable.of(WalkAnswers.WALKS.only("station", "source", "walk_mSv", "walk_error_mSv", "shown_mSv",
                "shown_low_mSv", "shown_high_mSv", "ratio", "verdict"), walked));
        CommonText.heading("What they are made of, mSv", out);
        out.println(TextTable.of(WalkAnswers.WALKS.only("station", "source", "straight_mSv", "made_mSv",
                "slow_neutrons_mSv", "ground_mSv", "walks", "reached"), walked));
        long apart = walked.stream().filter(w -> w.verdict() == WalkedDose.Verdict.APART).count();
        long unknown = walked.stream().filter(w -> w.verdict() == WalkedDose.Verdict.UNKNOWN).count();
        CommonText.wrapped(walked.isEmpty() ? "No station of the plan has a dose; nothing was compared."
                : walked.size() - apart - unknown + " of " + walked.size() + " agree within their errors."
                + (apart > 0 ? " " + apart + " do not: ask a qualified health physicist before either is used there."
                : "") + (unknown > 0 ? " Of " + unknown + " nothing can be said: chance alone is a fifth of the dose or"
                + " more; ask for a smaller error." : ""), 2, out);
        CommonText.model(DoseWalks.model(), out);
        out.println();
    }

    /** What low and high are made of. */
    static void uncertainties(Assessment assessment, PrintStream out) {
        CommonText.heading("What makes the doses uncertain, down and up in %, one standard deviation each", out);
        out.println(TextTable.of(DoseAnswers.UNCERTAINTIES, DoseAnswers.FromSource.of(stations(assessment))));
    }

    private static List<StationDose> stations(Assessment assessment) {
        return assessment.hulls().stream().flatMap(h -> h.stations().stream()).toList();
    }

    /** The plan's limits, the crew's doses and those at the worst station held against them. */
    static void judged(Assessment assessment, PrintStream out) {
        List<JudgedLimit> limits = assessment.dose().map(SiteDose::limits).orElse(List.of());
        if (limits.isEmpty()) {
            return;
        }
        CommonText.heading("The plan's dose limits", out);
        out.println(TextTable.of(DoseAnswers.LIMIT_LINES, DoseAnswers.HeldLine.worst(limits)));
        for (JudgedLimit judged : limits) {
            LimitInForce limit = judged.limit();
            CommonText.wrapped("%s%s, %s %s. Limit from: %s. %s".formatted(
                    limit.published().map(p -> p.name() + ": ").orElse(""), limit.words(),
                    TextTable.words(Unit.MSV.of(limit.limit()), 1), judged.unit(),
                    limit.source(), judged.isJudged() ? "Judged by: " + judged.calculation() + "."
                            : "Not judged: " + judged.why() + "."), 2, out);
        }
        out.println();
    }

    /** Limits of published standards. */
    static void limits(Assessment assessment, PrintStream out) {
        CommonText.heading("Limits of published standards, which a plan may name; " + DoseLimit.CONFIRM, out);
        out.println(TextTable.of(DoseAnswers.PUBLISHED_LIMITS, assessment.dose().map(SiteDose::publishedLimits)
                .orElse(List.of())));
    }

    /** Where the sky is seen through least. */
    static void directions(Assessment assessment, PrintStream out) {
        CommonText.heading("Thinnest direction of each station", out);
        out.println(TextTable.of(DoseAnswers.DIRECTIONS, stations(assessment)));
    }
}
