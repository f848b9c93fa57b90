// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.DoseRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.shielding.dose.DoseLimit;
import bermwright.site.plan.ExposurePlan;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.LimitInForce;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;

/** What published standards say of the crew's dose where the plan itself states no such limit. */
final class PublishedLimits {
    private static final double MSV = 1000;
    /** Words in the name of limits that are not for people on the Moon. */
    private static final String NOT_FOR_CREWS = "workers";
    /** Words in the source of what a standard aims at rather than demands. */
    private static final String AIM = "design target";

    private PublishedLimits() {
    }

    /**
     * What is wrong with doses that no limit of the plan judges.
     *
     * @param exposure the stay and its limits
     * @param stations the stations that have a dose
     * @param outside  dose on open ground
     * @param hasEvent whether an event is counted
     * @return a finding where people stay without any limit, and one for each published limit on the effective dose
     *         that the crew's dose is above
     */
    static List<Finding> findings(ExposurePlan exposure, List<StationDose> stations, SiteDose.Outside outside,
            boolean hasEvent) {
        List<Finding> findings = new ArrayList<>();
        if (stations.isEmpty()) {
            return findings;
        }
        if (exposure.limits().isEmpty()) {
            findings.add(Finding.of(DoseRule.DOSE_NO_LIMIT, Level.REFUSE, "exposure", Figures.NONE,
                    "People stay here and the plan states no dose limit, so no dose of theirs is judged. Published"
                            + " ones: "
                            + LimitInForce.names().stream().filter(n -> !n.startsWith(NOT_FOR_CREWS))
                                    .collect(Collectors.joining("; ")) + "."));
        }
        List<LimitInForce> own = exposure.limitsInForce();
        for (LimitInForce limit : narrowest()) {
            boolean isKnown = exposure.judges(limit) && (limit.countsCosmic() || hasEvent);
            Optional<LimitInForce> same = own.stream().filter(o -> isSameKind(o, limit))
                    .min(Comparator.comparingDouble(LimitInForce::limit));
            if (isKnown && same.filter(o -> o.limit() <= limit.limit()).isEmpty()) {
                StationDose.Spread dose = CrewDose.of(exposure, stations, outside, limit.quantity()).against(limit);
                if (!(dose.high() <= limit.limit())) {
                    findings.add(above(limit, dose, same.isPresent()));
                }
            }
        }
        return findings;
    }

    private static boolean isSameKind(LimitInForce one, LimitInForce other) {
        return one.quantity().equals(other.quantity()) && one.from() == other.from() && one.over() == other.over();
    }

    /** The smallest published limit on the effective dose of each time and source. */
    private static List<LimitInForce> narrowest() {
        List<LimitInForce> narrowest = new ArrayList<>();
        for (DoseLimit published : DoseLimit.all()) {
            if (published.quantity().equals(LimitInForce.EFFECTIVE_DOSE)
                    && !published.name().startsWith(NOT_FOR_CREWS)) {
                LimitInForce limit = LimitInForce.of(new ExposurePlan.Limit(Optional.of(published.name()),
                        Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty(),
                        Optional.empty(), Annotations.NOTHING));
                if (narrowest.stream().noneMatch(n -> isSameKind(n, limit) && n.limit() <= limit.limit())) {
                    narrowest.removeIf(n -> isSameKind(n, limit));
                    narrowest.add(limit);
                }
            }
        }
        return narrowest;
    }

    private static Finding above(LimitInForce limit, StationDose.Spread dose, boolean hasOwn) {
        boolean isAbove = dose.best() > limit.limit();
        boolean isAim = limit.source().contains(AIM);
        Level level = isAbove && !hasOwn && !isAim ? Level.REFUSE : Level.WARN;
        return Finding.of(DoseRule.DOSE_ABOVE_PUBLISHED, level, JudgedLimit.CREW,
                Figures.of((isAbove ? dose.best() : dose.high()) * MSV, limit.limit() * MSV, "mSv"),
                String.format(Locale.ROOT, "The crew's effective dose is %.2f mSv (16th to 84th percentile %.2f to"
                        + " %.2f) for the published %s \"%s\" of %.2f mSv, %s.", dose.best() * MSV, dose.low() * MSV,
                        dose.high() * MSV, isAim ? "design target" : "limit",
                        limit.published().map(DoseLimit::name).orElse(""), limit.limit() * MSV,
                        hasOwn ? "below which the plan's own limit does not hold it"
                                : "which the plan does not state")).with(LimitFindings.kind(limit))
                                .from(limit.source());
    }
}
