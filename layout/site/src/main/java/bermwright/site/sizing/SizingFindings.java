// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.Sentence;
import bermwright.finding.SizingRule;
import bermwright.shielding.cover.CoverThickness;
import bermwright.site.exposure.CoverTrial;
import bermwright.site.exposure.LimitFindings;
import bermwright.site.exposure.PersonDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Says which limits no cover of the scan meets, and tries what would help. */
final class SizingFindings {
    private static final double MSV = 1000;
    /** Step of the covers tried with closed ends (m). */
    private static final double CLOSING_STEP = 0.5;

    private final Plan plan;
    private final CoverTrial.Outcome outcome;

    SizingFindings(Plan plan, CoverTrial.Outcome outcome) {
        this.plan = plan;
        this.outcome = outcome;
    }

    /** A limit that a station does not meet under the best cover, and the part of the dose that grows with time. */
    record Unmet(CoverTrial.At station, LimitInForce limit, StationDose.Spread dose, double byTime) {
    }

    /** A cover to be tried for one hull, with ends closed. */
    record Remedy(String hull, Map<String, CoverThickness> thickness, Set<String> closed) {
    }

    List<Finding> of(List<String> hulls, List<Unmet> unmet, ToDoubleFunction<Remedy> used) {
        List<Finding> findings = new ArrayList<>();
        if (outcome.offGround()) {
            findings.add(Finding.of(SizingRule.SIZE_COVER_OFF_GROUND, Level.REFUSE, "cover", Figures.NONE,
                    "The mound runs off the elevation file or into a hole, so its volume is not known."));
        }
        outcome.stations().stream().filter(s -> hulls.contains(s.hull()) && !(s.open() <= CoverTrial.SETTLED))
                .forEach(s -> findings.add(unsettled(s)));
        Map<String, OptionalDouble> helped = new HashMap<>();
        for (Unmet one : unmet) {
            findings.add(finding(one, helped.computeIfAbsent(one.station.hull(), h -> closing(h, hulls, used))));
        }
        return findings;
    }

    /** Hulls with people in them that the plan gives no cover, so that none was looked for. */
    List<Finding> uncovered(List<String> covered, LimitUse use) {
        List<Finding> findings = new ArrayList<>();
        for (Hull hull : plan.hulls()) {
            if (!covered.contains(hull.id()) && !hull.stations().isEmpty()) {
                double used = use.usedInside(hull.id(), outcome);
                findings.add(Finding.of(SizingRule.SIZE_COVER_WITHOUT_COVER, used <= 1 ? Level.NOTE : Level.REFUSE,
                        hull.id(),
                        Figures.of(used, 1, "1"), String.format(Locale.ROOT, "People stay in hull %s, which has no"
                                + " cover in the plan or lies on unknown ground, so none was looked for. As it is, its"
                                + " worst station takes %.0f %% of the narrowest limit.", hull.id(), 100 * used)));
            }
        }
        return findings;
    }

    /** Limits that the crew does not meet, sharing its time as planned, hours outside counted. */
    List<Finding> crew(List<LimitInForce> limits, LimitUse use) {
        List<Finding> findings = new ArrayList<>();
        for (LimitInForce limit : limits) {
            StationDose.Spread dose = use.crew(outcome, limit);
            if (!(dose.high() <= limit.limit())) {
                String unit = StationDose.milli(limit.quantity());
                findings.add(Finding.of(SizingRule.SIZE_COVER_UNMET, Level.REFUSE, "crew",
                        Figures.of(dose.high() * MSV, limit.limit() * MSV, unit), String.format(Locale.ROOT,
                        "At best cover the crew's %s from %s over %s, with %.1f h a day outside, is %.1f %7$s and"
                                + " may be %6$.1f %7$s (84th percentile); the limit is %8$.1f %7$s.",
                        limit.quantity(), limit.from().words(),
                        limit.over().words(), plan.exposure().hoursOutsideADay(), dose.best() * MSV, dose.high() * MSV,
                        unit, limit.limit() * MSV)).with(LimitFindings.kind(limit)).from(limit.source())
                        .todo("Shorten the hours outside or the stay, or cover what has no cover."));
            }
            use.persons(outcome, limit).forEach(p -> person(limit, p).ifPresent(findings::add));
        }
        return findings;
    }

    private static Optional<Finding> person(LimitInForce limit, PersonDose person) {
        StationDose.Spread dose = person.against(limit);
        String missing = person.missing(limit);
        if (missing.isEmpty() && dose.high() <= limit.limit()) {
            return Optional.empty();
        }
        String unit = StationDose.milli(limit.quantity());
        return Optional.of(Finding.of(SizingRule.SIZE_COVER_UNMET, Level.REFUSE, person.person().id(),
                Figures.of(dose.high() * MSV, limit.limit() * MSV, unit), String.format(Locale.ROOT,
                "At best cover the %s of %s over %s is %.1f %6$s and may be %5$.1f %6$s (84th percentile); the limit is"
                        + " %7$.1f %6$s.%8$s", limit.quantity(), person.person().id(), limit.over().words(),
                dose.best() * MSV, dose.high() * MSV, unit, limit.limit() * MSV, missing.isEmpty() ? ""
                        : " It is not judged: " + missing + ".")).with(LimitFindings.kind(limit))
                .from(limit.source()).todo("Shorten this person's hours outside or stay, or cover what has no cover."));
    }

    private static Finding unsettled(CoverTrial.At at) {
        return Finding.of(SizingRule.SIZE_COVER_UNSETTLED, Level.WARN, at.name(),
                Figures.of(at.open(), CoverTrial.SETTLED, "1"), String.format(Locale.ROOT, "Under the cover found"
                        + " %.1f %% of the dose is still open after all directions: too much comes through ways too"
                        + " narrow for the rays.", at.open() * 100));
    }

    /** The thinnest cover tried that meets the limits once the hull's ends are covered too (m). */
    private OptionalDouble closing(String hull, List<String> hulls, ToDoubleFunction<Remedy> used) {
        for (double t = CLOSING_STEP; hasFreeEnd(hull) && t <= CoverSizing.THICKEST; t += CLOSING_STEP) {
            Map<String, CoverThickness> all = new HashMap<>();
            CoverThickness thickness = CoverThickness.uniform(t);
            hulls.forEach(h -> all.put(h, thickness));
            if (used.applyAsDouble(new Remedy(hull, all, Set.of(hull))) <= 1) {
                return OptionalDouble.of(t);
            }
        }
        return OptionalDouble.empty();
    }

    /** Covers whose thinnest part is thinner than a cell of the grid. */
    static List<Finding> thinnerThanACell(Map<String, CoverThickness> thickness, double spacing, Plan plan) {
        return thickness.entrySet().stream().sorted(Map.Entry.comparingByKey()).flatMap(entry -> {
            CoverThickness t = entry.getValue();
            double thinnest = Math.min(t.crown(), t.flank());
            return thinnest < spacing ? Stream.of(Finding.of(SizingRule.SIZE_COVER_THINNER_THAN_CELL, Level.WARN,
                    entry.getKey(),
                    Figures.of(thinnest, spacing, "m"), String.format(Locale.ROOT, "The cover found is %.2f m thick at"
                            + " its thinnest, thinner than a cell of the elevation file, %.2f m: stones and steps"
                            + " narrower than the cell are not in its depth and volume.", thinnest, spacing))
                            .at(plan.hull(entry.getKey()).orElseThrow().baseCentre()))
                            : Stream.<Finding>empty();
        }).toList();
    }

    /**
     * The borrow grounds do not give the soil.
     *
     * @param bank      soil that has to be dug (m3, in place)
     * @param available soil the borrow grounds give (m3, in place)
     * @param dug       soil dug for soil placed (1)
     * @param trade     dose against soil
     */
    static Finding borrow(double bank, double available, double dug, List<TradePoint> trade) {
        String enough = trade.stream().filter(p -> p.volume() * dug <= available)
                .reduce((thin, thick) -> thick).map(p -> String.format(Locale.ROOT, "What they give covers all hulls"
                        + " %.2f m thick everywhere; %s then takes %.0f %% of its limit.", p.thickness(), p.station(),
                        100 * p.used())).orElse("What they give does not cover the hulls even thinly.");
        return Finding.of(SizingRule.SIZE_COVER_BORROW, Level.REFUSE, "earthworks", Figures.of(bank, available, "m3"),
                String.format(Locale.ROOT, "The least cover requires %.0f m3 of bank volume; the borrow grounds give"
                        + " %.0f m3 with their side slopes and what must not be undercut left standing. %s", bank,
                        available, enough));
    }

    private boolean hasFreeEnd(String hull) {
        return plan.hull(hull).flatMap(Hull::cover).filter(c -> c.baseEnd() != CoverPlan.End.COVERED
                || c.farEnd() != CoverPlan.End.COVERED).isPresent();
    }

    private Finding finding(Unmet one, OptionalDouble closing) {
        String help = closing.isPresent() ? String.format(Locale.ROOT, "Covering its open or held ends too, %.1f m"
                + " thick everywhere, would meet it, with a tunnel as the way in.", closing.getAsDouble())
                : hasFreeEnd(one.station.hull())
                        ? "Covering its ends too does not meet it within " + CoverSizing.THICKEST + " m either."
                        : "No cover up to " + CoverSizing.THICKEST + " m meets it.";
        String unit = StationDose.milli(one.limit.quantity());
        String dose = one.limit.quantity().equals(StationDose.QUANTITY) ? "dose" : one.limit.quantity();
        return Finding.of(SizingRule.SIZE_COVER_UNMET, Level.REFUSE, one.station.name(),
                Figures.of(one.dose.high() * MSV, one.limit.limit() * MSV, unit),
                String.format(Locale.ROOT, "At best cover the %s from %s over %s%10$s is %.1f %7$s and may be %.1f %7$s"
                        + " (84th percentile); the limit is %.1f %7$s. %8$s %9$s", dose, one.limit.from().words(),
                        one.limit.over().words(), one.dose.best() * MSV, one.dose.high() * MSV,
                        one.limit.limit() * MSV, unit, help, shorter(one, plan.exposure().stayDays()),
                        !countsOutside(one.limit) ? "" : String.format(Locale.ROOT, ", with %.1f h a day outside,",
                                plan.exposure().hoursOutsideADay())))
                .with(LimitFindings.kind(one.limit)).from(one.limit.source()).todo(remedy(one, closing.isPresent()));
    }

    private boolean countsOutside(LimitInForce limit) {
        return limit.countsCosmic() && plan.exposure().hoursOutsideADay() > 0;
    }

    /** What helps: ends to be covered only where covering them was seen to be enough. */
    private String remedy(Unmet one, boolean closing) {
        String time = !one.limit.countsCosmic() ? "move the shelter deeper into the hull"
                : countsOutside(one.limit) ? "shorten the hours outside or the stay" : "shorten the stay";
        return closing ? "Cover its ends too, or " + time + "." : Sentence.begin(time) + ".";
    }

    /** What a shorter time would help, of a stay in days. */
    static String shorter(Unmet one, double stay) {
        if (!one.limit.countsCosmic()) {
            return "A shelter deeper in the hull, away from its free ends, would help.";
        }
        double counted = one.limit.over().days(stay);
        double left = one.limit.limit() - (one.dose.high() - one.byTime);
        if (!(left > 0)) {
            return "No stay is short enough, since the event alone is above it.";
        }
        double days = Math.floor(counted * left / one.byTime);
        return days < 1 ? "It does not hold for a day." : String.format(Locale.ROOT, "It holds for %.0f days.", days);
    }
}
