// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.DoseRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.Verdict;
import bermwright.shielding.spectrum.CutSpectrum;
import bermwright.shielding.spectrum.EventSpectra;
import bermwright.shielding.spectrum.EventSpectrum;
import bermwright.shielding.spectrum.TabulatedSpectrum;
import bermwright.site.plan.ExposurePlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** Whether the event of the plan is known at the energies that reach the people who shelter from it. */
final class EventFindings {
    private static final double MSV = 1000;
    /** Share of the dose from beyond the fit or table from which it is said. */
    private static final double NOTED = 0.1;
    /** Another event is named that gives this many times the dose of the plan's. */
    private static final double MUCH_WORSE = 1.25;
    /** An own table that begins above this energy leaves out protons that reach people outside (MeV). */
    private static final double LATEST_BEGIN_MEV = 30;

    private static final double SECONDS_A_MINUTE = 60;
    /** Minutes that people take to a shelter who are not near it: our own planning figure. */
    private static final double MINUTES = 30;

    private EventFindings() {
    }

    /**
     * What the plan's event does not say.
     *
     * @param event   protons of the plan's event
     * @param shelter the station at which the event is judged
     * @param limits  the plan's limits and the crew's doses held against them
     * @param dose    dose of any event at that station (Sv)
     * @return the findings
     */
    static List<Finding> of(EventSpectrum event, StationDose shelter, List<JudgedLimit> limits,
            ToDoubleFunction<EventSpectrum> dose) {
        List<Finding> findings = new ArrayList<>();
        beyond(event, shelter, dose).ifPresent(findings::add);
        worse(event, shelter, limits, dose).ifPresent(findings::add);
        if (event instanceof TabulatedSpectrum && event.range().fromMeV() > LATEST_BEGIN_MEV) {
            findings.add(Finding.of(DoseRule.DOSE_EVENT_BEGINS_LATE, Level.WARN, "exposure",
                    Figures.of(event.range().fromMeV(), LATEST_BEGIN_MEV, "MeV"),
                    text("The table of %s begins at %.0f MeV and nothing is counted below. Doses outside and behind"
                            + " bare skins come out too low.", event.name(), event.range().fromMeV())));
        }
        return findings;
    }

    /**
     * What each minute costs before people are in the shelter, where the plan does not say how long they take.
     *
     * @param exposure the plan's stay
     * @param stations doses at the stations, at least one
     * @param outside  dose in the open
     * @param limits   the plan's limits and the crew's doses held against them
     * @return one finding where the plan has an event and no time on the way is counted
     */
    static List<Finding> way(ExposurePlan exposure, List<StationDose> stations, SiteDose.Outside outside,
            List<JudgedLimit> limits) {
        double minute = CrewDose.before(exposure, stations, outside, StationDose.QUANTITY).best() * SECONDS_A_MINUTE
                / EventSpectra.shortestDuration();
        if (exposure.timeToShelter().isPresent() || !(minute > 0)) {
            return List.of();
        }
        double left = limits.stream().filter(l -> l.limit().countsEvent()
                && StationDose.QUANTITY.equals(l.limit().quantity())).flatMap(l -> l.held().stream()
                .filter(JudgedLimit.Held::isCrew).map(h -> l.limit().limit() - h.dose().best()))
                .mapToDouble(Double::doubleValue).min().orElse(Double.NaN);
        double each = Math.max(0, left) / MINUTES;
        return List.of(Finding.of(DoseRule.DOSE_WAY_NOT_COUNTED, minute > each ? Level.WARN : Level.NOTE, "exposure",
                Double.isNaN(left) ? Figures.measured(minute * MSV, "mSv")
                        : Figures.of(minute * MSV, each * MSV, "mSv"), text("The event is counted as if the crew were"
                        + " in the shelter when it begins. At its greatest flux each minute %s before that gives"
                        + " %.2f mSv%s.",
                        exposure.hoursOutsideADay() > 0 ? "outside" : "at the worst station", minute * MSV,
                        left > 0 ? text("; a limit of the plan would be passed after %.0f minutes", left / minute)
                                : "")));
    }

    private static Optional<Finding> beyond(EventSpectrum event, StationDose shelter,
            ToDoubleFunction<EventSpectrum> dose) {
        double whole = shelter.parts().eventAll().best();
        double share = whole > 0 ? 1 - dose.applyAsDouble(new CutSpectrum(event)) / whole : 0;
        if (!(share > NOTED)) {
            return Optional.empty();
        }
        boolean isOwnLaw = event instanceof TabulatedSpectrum own && own.continues() && !own.isStated();
        return Optional.of(Finding.of(DoseRule.DOSE_EVENT_CONTINUED, isOwnLaw ? Level.WARN : Level.NOTE, shelter.name(),
                Figures.of(share, NOTED, "1"), text("%.0f %% of the event's dose of %.2f mSv here comes from protons"
                        + " above %.0f MeV, where what is known of %s ends; there it is continued %s.", 100 * share,
                        whole * MSV, event.range().toMeV(), event.name(), event.continuation())));
    }

    /** Whether an event that plans are commonly made for reaches deeper than the plan's. */
    private static Optional<Finding> worse(EventSpectrum event, StationDose shelter, List<JudgedLimit> limits,
            ToDoubleFunction<EventSpectrum> dose) {
        double planned = shelter.parts().eventAll().best();
        double worst = planned;
        StringBuilder others = new StringBuilder();
        for (String name : List.of(EventSpectra.DESIGN_REFERENCE, EventSpectra.DEEPEST)) {
            double other = dose.applyAsDouble(EventSpectra.named(name));
            worst = Math.max(worst, other);
            others.append(text(" The event \"%s\" (%s) gives %.2f mSv.", name, origin(name), other * MSV));
        }
        if (!(worst > planned * MUCH_WORSE)) {
            return Optional.empty();
        }
        double more = worst - planned;
        List<String> broken = limits.stream().filter(l -> l.limit().countsEvent()
                && StationDose.QUANTITY.equals(l.limit().quantity()) && l.verdict() == Verdict.MET
                && l.held().stream().filter(JudgedLimit.Held::isCrew)
                        .anyMatch(h -> h.dose().best() + more > l.limit().limit()))
                .map(l -> text("%.0f mSv over %s", l.limit().limit() * MSV, l.limit().over().word())).toList();
        return Optional.of(Finding.of(DoseRule.DOSE_EVENT_NOT_WORST, broken.isEmpty() ? Level.NOTE : Level.WARN,
                shelter.name(), Figures.of(worst * MSV, planned * MSV, "mSv"), text("%s gives %.2f mSv here.%s Which"
                        + " event is worst hangs on the cover: hard spectra reach deep.%s", event.name(), planned * MSV,
                        others, broken.isEmpty() ? "" : " With the worst of them the limit of "
                        + String.join(" and ", broken) + " would not be met.")));
    }

    /** What kind an event is, or where a design reference is from. */
    private static String origin(String name) {
        return EventSpectra.kind(name).filter(k -> !k.equals(name)).orElse(EventSpectra.named(name).source());
    }

    private static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
