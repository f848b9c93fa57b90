// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.finding.DoseRule;
import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.foundation.Progress;
import bermwright.shielding.dose.Response;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Whether cosmic rays give more dose under the planned cover than under a thinner one or none: soil of some depth makes
 * more neutrons than it stops particles.
 *
 * <p>The covers are raised again with parts of their thickness, their toes lying as they would, and every station is
 * folded anew. Hulls under so much soil that the response itself only falls are not tried.
 */
public final class ThinnerCover {
    /** What has to be won before it is said, as a share of the dose; three times what one trial may leave open. */
    public static final double WORTH = 0.03;
    /** Parts of the planned thickness that are tried, beside no cover at all. */
    private static final double[] TRIED = {0.1, 0.2, 0.35, 0.5, 0.7};
    /** A hull is not tried if under any less soil the response by itself gives this many times as much. */
    private static final double CLEAR = 1.25;
    private static final int STEPS = 20;
    private static final double MSV = 1000;

    private ThinnerCover() {
    }

    /**
     * Tries thinner covers where they might be better.
     *
     * @param plan    the plan
     * @param cover   its cover
     * @param sources where responses come from
     * @param dose    the doses under that cover
     * @return one finding for each station that a thinner cover would serve better by more than {@link #WORTH}
     */
    public static List<Finding> findings(Plan plan, SiteCover cover, DoseSources sources, SiteDose dose) {
        Map<String, Response> cosmic = new HashMap<>();
        for (Hull hull : plan.hulls()) {
            if (hull.cover().isPresent() && dose.stations().stream().anyMatch(s -> s.hull().equals(hull.id()))) {
                cosmic.put(hull.id(), sources.of(plan, hull).cosmic());
            }
        }
        Set<String> hulls = dose.stations().stream()
                .filter(s -> cosmic.containsKey(s.hull()) && mayBeWorse(cosmic.get(s.hull()), s.seen()))
                .map(StationDose::hull).collect(Collectors.toSet());
        if (hulls.isEmpty()) {
            return List.of();
        }
        CoverTrial trial = CoverTrial.of(plan, cover.natural(), cover.prepared(), sources, Progress.NONE);
        Map<String, Double> best = new HashMap<>();
        Map<String, Double> at = new HashMap<>();
        keepBetter(best, at, trial.cosmicBare(), 0);
        for (double share : TRIED) {
            keepBetter(best, at, trial.cosmic(hulls, share), share);
        }
        Map<String, Double> planned = trial.cosmic(hulls, 1);
        Set<String> better = plan.hulls().stream().filter(h -> hulls.contains(h.id()))
                .flatMap(h -> h.stations().stream().map(s -> h.named(s.id())))
                .filter(id -> planned.containsKey(id) && best.get(id) < planned.get(id) * (1 - WORTH))
                .collect(Collectors.toSet());
        return better.isEmpty() ? List.of() : said(trial, hulls, better, at, dose);
    }

    private static void keepBetter(Map<String, Double> best, Map<String, Double> at, Map<String, Double> doses,
            double share) {
        doses.forEach((id, there) -> {
            if (!best.containsKey(id) || there < best.get(id)) {
                best.put(id, there);
                at.put(id, share);
            }
        });
    }

    /** The stations that a thinner cover serves better, folded again with the event and the spreads. */
    private static List<Finding> said(CoverTrial trial, Set<String> hulls, Set<String> better, Map<String, Double> at,
            SiteDose dose) {
        Map<Double, Map<String, CoverTrial.At>> thinner = new HashMap<>();
        better.forEach(id -> thinner.computeIfAbsent(at.get(id), share ->
                (share > 0 ? trial.thinned(hulls, share) : trial.bare()).stations().stream()
                        .collect(Collectors.toMap(CoverTrial.At::name, t -> t, (a, b) -> a))));
        List<Finding> findings = new ArrayList<>();
        for (CoverTrial.At now : trial.with(Map.of(), Set.of()).stations()) {
            String id = now.name();
            if (better.contains(id)) {
                Finding finding = finding(now, new Thinner(thinner.get(at.get(id)).get(id), at.get(id)));
                findings.add(dose.stations().stream().filter(s -> id.equals(s.name()))
                        .findFirst().map(s -> finding.at(s.place().plan())).orElse(finding));
            }
        }
        return findings;
    }

    private record Thinner(CoverTrial.At at, double share) {
    }

    /** Whether the response alone, at the station's areal densities and parts of them, leaves it open. */
    private static boolean mayBeWorse(Response response, StationDose.Seen seen) {
        double now = level(response, seen, 1);
        for (int i = 0; i < STEPS; i++) {
            if (level(response, seen, (double) i / STEPS) < CLEAR * now) {
                return true;
            }
        }
        return false;
    }

    private static double level(Response response, StationDose.Seen seen, double share) {
        double straight = seen.medianArealDensity() * share;
        double open = response.isotropicDose(0) - response.diffuseDose(0);
        double sky = response.isotropicDose(straight) - response.diffuseDose(straight);
        double bare = response.room().map(r -> seen.distribution().in(r, 0)).orElse(0.0);
        return sky / 2 + Math.max(0, response.openGroundReturn() - bare) * Math.min(1, sky / open)
                + response.room().map(r -> seen.distribution().in(r, share)).orElse(0.0);
    }

    private static Finding finding(CoverTrial.At planned, Thinner thinner) {
        double now = planned.cosmic().best() * MSV;
        double then = thinner.at.cosmic().best() * MSV;
        String under = thinner.share > 0 ? text("under %.0f %% of its thickness", thinner.share * 100)
                : "without any cover";
        return Finding.of(DoseRule.DOSE_THINNER_IS_BETTER, Level.WARN, planned.name(), Figures.of(now, then, "mSv"),
                text("Cosmic rays, albedo of the ground included, give %.1f mSv over the stay under this cover and"
                        + " %.1f mSv %s: soil of this depth makes more neutrons than it stops particles. Make it much"
                        + " thicker, or thinner.%s%s", now, then, under,
                        then > planned.cosmic().low() * MSV
                                ? " They are closer than either is known, but both are off alike." : "",
                        event(planned, thinner, under)))
                .from(text("the covers raised and folded again, thinner; said from %.0f %% of the dose", WORTH * 100));
    }

    /** What the event says to it. */
    private static String event(CoverTrial.At planned, Thinner thinner, String under) {
        if (!(planned.event().best() > 0)) {
            return "";
        }
        double now = (planned.cosmic().best() + planned.event().best()) * MSV;
        double then = (thinner.at.cosmic().best() + thinner.at.event().best()) * MSV;
        return text(then > now
                ? " The event hides it: with the event it is %.1f mSv under this cover and %.1f mSv %s, but the event"
                        + " may never come."
                : " It is so with the event too: %.1f mSv under this cover and %.1f mSv %s.", now, then, under);
    }

    private static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
