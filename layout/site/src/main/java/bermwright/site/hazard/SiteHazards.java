// SPDX-License-Identifier: Apache-2.0
package bermwright.site.hazard;

import bermwright.finding.Finding;
import bermwright.finding.Verdict;
import bermwright.foundation.ModelNote;
import bermwright.shielding.hazard.MeteoroidFlux;
import bermwright.shielding.hazard.SoilHeat;
import bermwright.shielding.hazard.ThrownSoil;
import bermwright.site.exposure.JudgedLimit;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Station;
import bermwright.terrain.earthworks.ShakenSlope;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The covers of a plan, judged for all that they keep off.
 *
 * @param judged   one line for each hull and station and each hazard, hull by hull
 * @param hulls    the figures behind them, by hull
 * @param findings what is not kept off
 */
public record SiteHazards(List<JudgedCover> judged, List<HullHazards> hulls, List<Finding> findings) {
    private static final String NO_DOSE = "the dose is worked out by assess and dose";
    private static final double MILLI = 1000;

    /** Copies the lists. */
    public SiteHazards {
        judged = List.copyOf(judged);
        hulls = List.copyOf(hulls);
        findings = List.copyOf(findings);
    }

    /**
     * Judges the covers of a plan.
     *
     * @param plan  the plan
     * @param cover its covers
     * @param dose  its doses; empty where they were not asked for
     * @return the judgement
     */
    public static SiteHazards of(Plan plan, SiteCover cover, Optional<SiteDose> dose) {
        List<JudgedCover> lines = new ArrayList<>();
        List<HullHazards> figures = new ArrayList<>();
        dose.map(SiteHazards::people).ifPresent(lines::addAll);
        for (Hull hull : plan.hulls()) {
            HazardsOfHull of = new HazardsOfHull(plan, hull, cover);
            HullHazards all = of.figures();
            figures.add(all);
            List<JudgedCover> others = of.lines(all);
            others.stream().filter(l -> l.station().isEmpty()).forEach(lines::add);
            for (Station station : hull.stations()) {
                lines.add(radiation(of.place(station), dose));
                others.stream().filter(l -> l.station().equals(station.id())).forEach(lines::add);
            }
        }
        List<JudgedCover> judged = governing(lines);
        return new SiteHazards(judged, figures, HazardFindings.of(plan, judged, figures));
    }

    /** The crew, then each named person: they move about, so no one hull is theirs. */
    private static List<JudgedCover> people(SiteDose dose) {
        return Stream.concat(Stream.of(JudgedLimit.CREW), dose.limits().stream().flatMap(l -> l.held().stream())
                .filter(JudgedLimit.Held::decides).map(JudgedLimit.Held::who)).distinct()
                .map(who -> radiation(new JudgedCover.Place("all", who, Double.NaN), who, dose)).toList();
    }

    private static JudgedCover radiation(JudgedCover.Place place, Optional<SiteDose> dose) {
        return dose.isEmpty() ? JudgedCover.open(place, Hazard.RADIATION, NO_DOSE)
                : radiation(place, place.hull() + "/" + place.station(), dose.get());
    }

    /** The limit that somebody's dose uses up most of. */
    private static JudgedCover radiation(JudgedCover.Place place, String who, SiteDose dose) {
        record Held(JudgedLimit limit, JudgedLimit.Held held) {
            double used() {
                return held.dose().high() / limit.limit().limit();
            }
        }

        List<Held> all = dose.limits().stream().flatMap(l -> l.held().stream().filter(h -> h.who().equals(who))
                .map(h -> new Held(l, h))).toList();
        if (all.isEmpty()) {
            return JudgedCover.open(place, Hazard.RADIATION, dose.limits().isEmpty() ? "the plan states no limit"
                    : "no dose is known here");
        }
        Optional<Held> open = all.stream().filter(h -> h.held.verdict() == Verdict.NOT_JUDGED).findFirst();
        Held worst = all.stream().filter(h -> h.held.verdict() != Verdict.NOT_JUDGED)
                .max(Comparator.comparingDouble(Held::used)).orElse(all.get(0));
        if (open.isPresent() && !(worst.used() > 1)) {
            return JudgedCover.open(place, Hazard.RADIATION, open.get().held.reason());
        }
        return JudgedCover.of(place, Hazard.RADIATION, new JudgedCover.Measure(worst.held.dose().high() * MILLI,
                worst.limit.limit().limit() * MILLI, worst.limit.unit(), false), Double.NaN,
                switch (worst.held.whose()) {
                    case CREW -> "dose of the crew, ";
                    case PERSON -> "dose of this person by own hours, ";
                    case ALONE -> "dose of somebody who never leaves, ";
                }
                        + "84th percentile, against the limit over "
                        + worst.limit.limit().over().words() + "; size-cover gives the depth");
    }

    private static List<JudgedCover> governing(List<JudgedCover> lines) {
        Map<String, JudgedCover> most = new HashMap<>();
        for (JudgedCover line : lines) {
            if (Double.isFinite(line.measure().used())) {
                most.merge(line.subject(), line, (a, b) -> b.measure().used() > a.measure().used() ? b : a);
            }
        }
        return lines.stream().map(l -> most.get(l.subject()) == l ? l.governing() : l).toList();
    }

    /**
     * The models behind the judgement.
     *
     * @return a note for each
     */
    public List<ModelNote> notes() {
        boolean isBeyond = hulls.stream().anyMatch(h -> h.meteoroids().stopped() > MeteoroidFlux.GREATEST_MASS
                && h.meteoroids().byBare() < 0.5);
        List<ModelNote> notes = new ArrayList<>();
        if (!hulls.isEmpty()) {
            notes.add(MeteoroidFlux.note(isBeyond ? ModelNote.Status.EXTRAPOLATED : ModelNote.Status.COMPUTED));
            notes.add(SoilHeat.note());
        }
        if (hulls.stream().anyMatch(h -> Double.isFinite(h.thrown().distance()))) {
            notes.add(ThrownSoil.note());
        }
        if (hulls.stream().anyMatch(h -> Double.isFinite(h.quake().height()))) {
            notes.add(ShakenSlope.note());
        }
        return notes;
    }
}
