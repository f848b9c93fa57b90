// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import bermwright.shielding.cover.CoverThickness;
import bermwright.site.exposure.CoverTrial;
import bermwright.site.exposure.StationDose;
import bermwright.site.finding.Finding;
import bermwright.site.finding.Finding.Figures;
import bermwright.site.finding.Finding.Level;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;

/** Says which limits no cover of the scan meets, and tries what would help. */
final class SizingFindings {
    private static final double MSV = 1000;
    private static final double MONTH_DAYS = 30;

    private final Plan plan;
    private final CoverTrial.Outcome outcome;

    SizingFindings(Plan plan, CoverTrial.Outcome outcome) {
        this.plan = plan;
        this.outcome = outcome;
    }

    /** A limit that a station does not meet under the best cover. */
    record Unmet(CoverTrial.At station, ExposurePlan.Limit limit, StationDose.Spread dose) {
    }

    /** A cover to be tried for one hull, with ends closed. */
    record Remedy(String hull, Map<String, CoverThickness> thickness, Set<String> closed) {
    }

    List<Finding> of(List<String> hulls, List<Unmet> unmet, ToDoubleFunction<Remedy> used) {
        List<Finding> findings = new ArrayList<>();
        if (outcome.offGround()) {
            findings.add(Finding.of("size-cover-off-ground", Level.REFUSE, "cover", Figures.NONE,
                    "The mound runs off the elevation file or into a hole, so its volume is not known."));
        }
        Map<String, Boolean> helped = new HashMap<>();
        for (Unmet one : unmet) {
            String hull = one.station.hull();
            boolean closing = helped.computeIfAbsent(hull, h -> hasFreeEnd(h) && used.applyAsDouble(new Remedy(h,
                    thickest(hulls), Set.of(h))) <= 1);
            findings.add(finding(one, closing));
        }
        return findings;
    }

    private boolean hasFreeEnd(String hull) {
        return plan.hull(hull).flatMap(Hull::cover).filter(c -> c.baseEnd() != CoverPlan.End.COVERED
                || c.farEnd() != CoverPlan.End.COVERED).isPresent();
    }

    private static Map<String, CoverThickness> thickest(List<String> hulls) {
        Map<String, CoverThickness> all = new HashMap<>();
        hulls.forEach(h -> all.put(h, CoverThickness.uniform(CoverSizing.THICKEST)));
        return all;
    }

    private Finding finding(Unmet one, boolean closing) {
        String help = closing ? "Covering its open or held ends too would meet it, with a tunnel as the way in."
                : hasFreeEnd(one.station.hull())
                        ? "Covering its ends too does not meet it within " + CoverSizing.THICKEST + " m either."
                        : "No cover up to " + CoverSizing.THICKEST + " m meets it.";
        String unit = StationDose.milli(one.limit.quantity());
        String dose = one.limit.quantity().equals(StationDose.QUANTITY) ? "dose" : one.limit.quantity();
        return Finding.of("size-cover-unmet", Level.REFUSE, one.station.hull() + "/" + one.station.station().id(),
                Figures.of(one.dose.high() * MSV, one.limit.limit() * MSV, unit),
                String.format(Locale.ROOT, "At best cover the %s from %s over %s is %.1f %7$s and may be %.1f %7$s"
                        + " (84th percentile); the limit is %.1f %7$s. %8$s %9$s", dose, words(one.limit.from()),
                        one.limit.over().word(), one.dose.best() * MSV, one.dose.high() * MSV,
                        one.limit.limit() * MSV, unit, help, shorter(one))).from(one.limit.source());
    }

    private static String words(ExposurePlan.From from) {
        return from == ExposurePlan.From.ALL ? "all sources" : from.word();
    }

    private String shorter(Unmet one) {
        if (one.limit.from() == ExposurePlan.From.EVENT || one.limit.over() == ExposurePlan.Over.EVENT) {
            return "A shelter deeper in the hull, away from its free ends, would help.";
        }
        double stay = plan.exposure().stayDays();
        double counted = one.limit.over() == ExposurePlan.Over.STAY ? stay : Math.min(stay, MONTH_DAYS);
        double cosmic = one.station.cosmic().high() * counted / stay;
        double left = one.limit.limit() - (one.dose.high() - cosmic);
        double days = Math.floor(counted * left / cosmic);
        return left > 0 && days >= 1 ? String.format(Locale.ROOT, "It holds for %.0f days.", days)
                : "No stay is short enough, since the event alone is above it.";
    }

}
