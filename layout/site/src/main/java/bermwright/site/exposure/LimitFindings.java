// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.DoseRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.Verdict;
import bermwright.foundation.ModelNote;
import bermwright.shielding.dose.DoseLimit;
import bermwright.shielding.spectrum.SolarActivity;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.LimitInForce;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** What the plan's limits say, what is held against them, and what of them cannot be judged. */
public final class LimitFindings {
    /** Id of the model note behind doses held against a limit over a career. */
    public static final String CAREER_MODEL = "career-dose";
    static final String NO_STAY = "no length of stay is given, so no dose of a career can be reckoned; give stay_days";
    static final String NO_EVENT = "it counts an event, and the plan names none; name one in exposure.event";
    private static final double MSV = 1000;
    private static final double YEAR_DAYS = 365.25;
    private static final int STEP_DAYS = 30;

    private LimitFindings() {
    }

    static List<Finding> of(List<JudgedLimit> limits, boolean peopleStay) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < limits.size(); i++) {
            JudgedLimit one = limits.get(i);
            findings.addAll(given(one.limit(), "exposure.limits[" + i + "]"));
            if (one.limit().published().isEmpty()) {
                published(one.limit()).ifPresent(findings::add);
            }
            one.held().stream().filter(h -> h.verdict() == Verdict.NOT_MET)
                    .forEach(h -> findings.add(broken(one.limit(), h)));
            if (one.limit().over() == ExposurePlan.Over.CAREER) {
                boolean hasPersons = one.held().stream().anyMatch(h -> h.whose() == JudgedLimit.Whose.PERSON);
                one.held().stream().filter(h -> h.decides() && h.isCrew() != hasPersons)
                        .forEach(h -> findings.add(career(one.limit(), h)));
            }
        }
        for (JudgedLimit one : limits) {
            if (!one.isJudged()) {
                findings.add(notJudged(one.limit(), one.why(), peopleStay));
            }
            one.held().stream().filter(h -> h.whose() == JudgedLimit.Whose.PERSON
                    && h.verdict() == Verdict.NOT_JUDGED && !h.reason().equals(one.why()))
                    .forEach(h -> findings.add(notJudged(one.limit(), h.reason(), peopleStay)));
        }
        return findings;
    }

    /**
     * Says of a limit that there is no verdict on it.
     *
     * @param limit      the limit
     * @param why        why not
     * @param peopleStay whether people stay in a hull of the plan
     * @return the finding: what is not judged is not met, so it refuses where people stay
     */
    public static Finding notJudged(LimitInForce limit, String why, boolean peopleStay) {
        String unit = StationDose.milli(limit.quantity());
        return Finding.of(DoseRule.DOSE_LIMIT_NOT_JUDGED, peopleStay ? Level.REFUSE : Level.WARN, "exposure",
                new Figures(OptionalDouble.empty(), OptionalDouble.of(limit.limit() * MSV), unit),
                text("The limit of %.0f %s on %s from %s over %s is not judged, so it is not met: %s.",
                        limit.limit() * MSV, unit, limit.quantity(), sources(limit), over(limit), why))
                .with(kind(limit)).from(limit.source());
    }

    /**
     * Why a limit can't be judged by the sun's particles that the plan counts.
     *
     * @param exposure the plan's exposure
     * @param limit    the limit
     * @param hasEvent whether there is a response for an event
     * @return the words; empty where the limit counts no event or there is one
     */
    public static String noEvent(ExposurePlan exposure, LimitInForce limit, boolean hasEvent) {
        return !limit.countsEvent() || hasEvent ? "" : exposure.event().map(e -> "it counts an event, and the event \""
                + e + "\" is not known here; name one that is, or give event_spectrum_file").orElse(NO_EVENT);
    }

    /**
     * What tells findings about one limit from those about another.
     *
     * @param limit the limit
     * @return quantity, source and time, in this order
     */
    public static String[] kind(LimitInForce limit) {
        return new String[] {limit.quantity(), limit.from().word(), limit.over().word()};
    }

    private static String sources(LimitInForce limit) {
        return limit.from() == ExposurePlan.From.ALL ? "all sources" : limit.from() == ExposurePlan.From.COSMIC
                ? "cosmic rays" : "an event";
    }

    private static String over(LimitInForce limit) {
        return switch (limit.over()) {
            case CAREER -> "a career";
            case STAY -> "the stay";
            case EVENT -> "an event";
            case DAY, THIRTY_DAYS, YEAR -> limit.over().word();
        };
    }

    /**
     * Says of each limit which of its doses are not by the reviewer's own response, in a plan that brings one.
     *
     * @param exposure the limits and their tables
     * @param any      the responses of a hull, none where the plan has none
     * @return a warning for each limit that the built-in calculation judges, wholly or in part; none where no reviewer
     *         handed anything over
     */
    static List<Finding> notByReviewer(ExposurePlan exposure, Optional<DoseSources.OfHull> any) {
        List<Finding> findings = new ArrayList<>();
        if (any.filter(DoseSources.OfHull::isReviewed).isEmpty()) {
            return findings;
        }
        DoseSources.OfHull responses = any.get();
        for (LimitInForce limit : exposure.judgedLimits()) {
            List<String> builtIn = JudgedLimit.by(limit, responses).stream().filter(b -> !b.isReviewed())
                    .map(JudgedLimit.By::source).toList();
            if (!builtIn.isEmpty()) {
                String unit = StationDose.milli(limit.quantity());
                findings.add(Finding.of(DoseRule.DOSE_LIMIT_NOT_BY_REVIEWER, Level.WARN, "exposure",
                        new Figures(OptionalDouble.empty(), OptionalDouble.of(limit.limit() * MSV), unit),
                        text("The plan brings a reviewer's own response, but not all that this limit needs: the limit"
                                + " of %.1f %s on %s over %s is judged by the built-in calculation for %s. Take the"
                                + " verdict as the planner's, not the reviewer's, until tables of that quantity are"
                                + " handed over in more_responses.", limit.limit() * MSV, unit, limit.quantity(),
                                limit.over().words(), String.join(" and ", builtIn))).with(kind(limit))
                                .from(limit.source()));
            }
        }
        return findings;
    }

    /** What the plan gives beside the name of a published limit and that does not hold. */
    private static List<Finding> given(LimitInForce limit, String subject) {
        if (limit.differences().isEmpty()) {
            return List.of();
        }
        DoseLimit published = limit.published().orElseThrow();
        String unit = StationDose.milli(limit.quantity());
        return List.of(Finding.of(DoseRule.DOSE_LIMIT_DIFFERS_FROM_PUBLISHED, Level.WARN, subject,
                new Figures(OptionalDouble.empty(), OptionalDouble.of(published.limit() * MSV), unit),
                text("The limit names the published \"%s\" and gives otherwise: %s. The published quantity, time and"
                        + " sources hold, and of two values the smaller, here %.1f %s.",
                        published.name(), String.join("; ", limit.differences()), limit.limit() * MSV, unit))
                .from(published.source() + "; " + DoseLimit.CONFIRM));
    }

    /** Whether the plan allows more than a published standard does for the same quantity and time. */
    private static Optional<Finding> published(LimitInForce limit) {
        String unit = StationDose.milli(limit.quantity());
        return DoseLimit.all().stream().filter(p -> p.quantity().equals(limit.quantity())
                        && p.over().equals(limit.over().word()) && p.limit() < limit.limit())
                .filter(p -> !p.name().startsWith("workers"))
                .findFirst().map(p -> Finding.of(DoseRule.DOSE_LIMIT_ABOVE_PUBLISHED, Level.NOTE, "exposure",
                        Figures.of(limit.limit() * MSV, p.limit() * MSV, unit),
                        text("The plan's limit on %s over %s is %.0f %s; a published standard has %.0f %s (%s).",
                                limit.quantity(), limit.over().words(), limit.limit() * MSV, unit, p.limit() * MSV,
                                unit, p.name())).with(kind(limit)).from(p.source() + "; " + DoseLimit.CONFIRM));
    }

    private static Finding broken(LimitInForce limit, JudgedLimit.Held held) {
        StationDose.Spread dose = held.dose();
        boolean above = held.verdict() == Verdict.NOT_MET;
        Level level = !held.decides() ? Level.NOTE : above ? Level.REFUSE : Level.WARN;
        double shown = above ? dose.best() : dose.high();
        String unit = StationDose.milli(limit.quantity());
        String form = above ? "The %s from %s over %s is %.1f %7$s (16th to 84th percentile %.1f to %.1f); the limit is"
                + " %8$.1f %7$s." : "The %s from %s over %s is %.1f %7$s at best and may be %.1f to %.1f %7$s (16th to"
                + " 84th percentile); the limit of %8$.1f %7$s is met only if it is not high.";
        String whose = held.decides() ? "" : " For somebody who stays at this station all the time.";
        return Finding.of(held.decides() ? DoseRule.DOSE_LIMIT : DoseRule.DOSE_LIMIT_FULL_TIME, level, held.who(),
                Figures.of(shown * MSV, limit.limit() * MSV, unit),
                text(form, limit.quantity(), limit.from().words(), over(limit, held), dose.best() * MSV,
                        dose.low() * MSV, dose.high() * MSV, unit,
                        limit.limit() * MSV) + whose).with(kind(limit)).from(limit.source());
    }

    /** The time that a dose is counted over, in words. */
    private static String over(LimitInForce limit, JudgedLimit.Held held) {
        return limit.over() != ExposurePlan.Over.CAREER ? limit.over().words()
                : held.whose() == JudgedLimit.Whose.PERSON ? "this stay and all years before" : "this stay alone";
    }

    /** What a stay takes of a limit over a career, with what a named person received before. */
    private static Finding career(LimitInForce limit, JudgedLimit.Held held) {
        StationDose.Spread dose = held.dose();
        boolean isPerson = held.whose() == JudgedLimit.Whose.PERSON;
        String unit = StationDose.milli(limit.quantity());
        Finding finding = Finding.of(DoseRule.DOSE_CAREER, Level.NOTE, held.who(),
                Figures.of(dose.high() * MSV, limit.limit() * MSV, unit),
                text("%s %.0f %% (16th to 84th percentile %.0f to %.0f %%) of the limit of %.0f %s on %s"
                        + " over a career. %s", !isPerson ? "This stay takes" : held.reason().isEmpty()
                        ? "What this person received before and this stay take" : "This stay, without what this person"
                        + " received before, takes", 100 * dose.best() / limit.limit(),
                        100 * dose.low() / limit.limit(),
                        100 * dose.high() / limit.limit(), limit.limit() * MSV, unit, limit.quantity(),
                        isPerson ? "What will be received after it comes on top." : "What a person got before and will"
                        + " get after it is not in the plan and comes on top."))
                .with(kind(limit)).from(limit.source());
        return isPerson && held.reason().isEmpty() ? finding.todo("Keep this person's dose record; doses of later stays"
                + " count against the same limit.") : finding;
    }

    /**
     * What stands behind doses held against limits over a career.
     *
     * @param exposure the stay and the sun
     * @return the note; empty where no such limit is judged
     */
    static Optional<ModelNote> careerModel(ExposurePlan exposure) {
        if (exposure.judgedLimits().stream().noneMatch(l -> l.over() == ExposurePlan.Over.CAREER)) {
            return Optional.empty();
        }
        Sun sun = Sun.of(exposure);
        return Optional.of(new ModelNote(CAREER_MODEL, text("the dose of one stay of %.0f days at the plan's sun,"
                + " modulation %.0f all the time, held against the whole limit over a career; doses of other stays are"
                + " not counted", exposure.stayDays(), exposure.modulation()), sun.validFor(),
                "that of each dose, its term of solar activity about the plan's sun", sun.status(),
                "dose times time, no source"));
    }

    /** How far the plan's one sun stands for the whole stay. */
    private record Sun(String validFor, ModelNote.Status status) {
        static Sun of(ExposurePlan exposure) {
            Optional<LocalDate> day = exposure.dayInForce();
            if (day.isEmpty()) {
                boolean isLong = exposure.stayDays() > YEAR_DAYS;
                return new Sun("stays of up to a year; the mean over a solar cycle is not known, since the plan gives"
                        + " no solar_date" + (isLong ? "; this stay is longer" : ""),
                        isLong ? ModelNote.Status.EXTRAPOLATED : ModelNote.Status.COMPUTED);
            }
            bermwright.shielding.spectrum.Sun sun = exposure.sun();
            double planned = sun.modulationW();
            double least = planned;
            double greatest = planned;
            LocalDate last = day.get().plusDays(Math.round(exposure.stayDays()));
            for (LocalDate now = day.get(); !now.isAfter(last) && !now.isAfter(SolarActivity.LAST_DAY);
                    now = now.plusDays(STEP_DAYS)) {
                double modulation = SolarActivity.modulationW(now);
                least = Math.min(least, modulation);
                greatest = Math.max(greatest, modulation);
            }
            boolean holds = !last.isAfter(SolarActivity.LAST_DAY)
                    && greatest <= sun.activeW() && least >= sun.quietW();
            return new Sun(text("a sun of modulation %.0f to %.0f; from %s to %s the sketch of the cycle goes from %.0f"
                    + " to %.0f", sun.quietW(), sun.activeW(), day.get(), last, least, greatest),
                    holds ? ModelNote.Status.COMPUTED : ModelNote.Status.EXTRAPOLATED);
        }
    }

    private static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
