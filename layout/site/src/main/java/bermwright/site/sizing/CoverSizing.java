// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import bermwright.finding.Finding.Figures;
import bermwright.finding.Finding.Level;
import bermwright.finding.Finding;
import bermwright.finding.SizingRule;
import bermwright.finding.Verdict;
import bermwright.foundation.Progress;
import bermwright.shielding.cover.CoverThickness;
import bermwright.site.exposure.CoverTrial;
import bermwright.site.exposure.DoseSources;
import bermwright.site.exposure.LimitFindings;
import bermwright.site.exposure.SiteCover;
import bermwright.site.exposure.SiteDose;
import bermwright.site.exposure.StationDose;
import bermwright.site.haulage.Earthworks;
import bermwright.site.haulage.EarthworksInput;
import bermwright.site.haulage.SoilNeed;
import bermwright.site.plan.LimitInForce;
import bermwright.site.plan.Plan;
import bermwright.site.plan.PlanSoil;
import bermwright.terrain.grid.ElevationGrid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Looks for the least placed volume at which every station of every covered hull meets the plan's limits.
 *
 * <p>Dose is not monotone in soil, so one thickness everywhere is scanned first; each hull then begins in its thinnest
 * interval whose thicker side also meets the limits, as {@link LimitUse} says, over the spread of the ground's heights,
 * its ends, flanks and crown are thinned one by one, and {@link PartTrade} trades soil between them. What is found is
 * confirmed by the doses on the whole ground, as they are handed out, and thickened where those do not meet a limit.
 */
public final class CoverSizing {
    /** Step, and thickest cover, of the scan (m). */
    static final double STEP = 0.25;
    static final double THICKEST = 6;
    /** Thinnest cover any part is thinned to (m). */
    private static final double THINNEST = 0.05;
    /** Thicknesses are found to a sixteenth of the step, then rounded up to this (m). */
    static final double ROUND = 0.01;
    private static final int HALVINGS = 4;
    /** What a hull's cover is first raised by, so that thinning its parts has room (m). */
    private static final double[] ROOM = {0.15, 0.6};
    /** What every part is thickened by where the doses on the whole ground do not meet a limit (m), how often. */
    private static final double THICKENED = 0.02;
    private static final int MOST_THICKENING = 10;
    /** More soil pays while a share more of it takes off at least this many such shares of the dose. */
    private static final double PAYS = 0.5;
    /** Where limits cannot be met: within this factor of the least share of a limit a cover is as good. */
    private static final double ABOUT_AS_NEAR = 1.02;

    private final Plan plan;
    private final CoverTrial trial;
    private final ElevationGrid natural;
    private final ElevationGrid prepared;
    private final DoseSources sources;
    private final Progress progress;
    private final List<LimitInForce> limits;
    private final LimitUse use;
    private final double tolerance;
    private boolean isConfirmed = true;
    private OptionalDouble uniformVolume = OptionalDouble.empty();
    private int trials;

    private CoverSizing(Plan plan, CoverTrial trial, Ground ground, DoseSources sources, Progress progress) {
        this.plan = plan;
        this.sources = sources;
        this.trial = trial;
        natural = ground.natural;
        prepared = ground.prepared;
        this.progress = progress;
        limits = plan.exposure().judgedLimits();
        use = new LimitUse(plan, trial.outside());
        tolerance = plan.ground().elevationSpread();
    }

    /**
     * Looks for the least cover.
     *
     * @param plan     the plan
     * @param natural  the ground before any work
     * @param prepared the ground after benches and trenches
     * @param sources  where responses come from
     * @param progress told how far the work has come; may cancel it
     * @return the least cover found
     */
    public static SizedCover least(Plan plan, ElevationGrid natural, ElevationGrid prepared, DoseSources sources,
            Progress progress) {
        CoverTrial trial = CoverTrial.of(plan, natural, prepared, sources, progress.part(0, 0.2));
        return new CoverSizing(plan, trial, new Ground(natural, prepared), sources, progress.part(0.2, 1)).search();
    }

    private record Ground(ElevationGrid natural, ElevationGrid prepared) {
    }

    private SizedCover search() {
        List<String> hulls = trial.covered();
        TreeMap<Double, CoverTrial.Outcome> scan = scan(hulls);
        List<TradePoint> trade = new ArrayList<>();
        scan.forEach((t, outcome) -> trade.add(point(t, outcome)));
        List<SizedCover.Interval> intervals = new ArrayList<>();
        Map<String, Double> start = new LinkedHashMap<>();
        List<String> failing = new ArrayList<>();
        for (String hull : hulls) {
            List<SizedCover.Interval> own = intervals(hull, scan);
            intervals.addAll(own);
            own.stream().filter(i -> i.to() - i.from() >= tolerance || i.to() >= THICKEST).findFirst()
                    .ifPresentOrElse(i -> start.put(hull, i.from()), () -> failing.add(hull));
        }
        Map<String, CoverThickness> best = new LinkedHashMap<>();
        if (failing.isEmpty() && !hulls.isEmpty() && !limits.isEmpty()) {
            best.putAll(confirmed(parts(refined(start))));
        } else {
            hulls.forEach(h -> best.put(h, CoverThickness.uniform(
                    start.getOrDefault(h, nearest(h, scan)))));
        }
        CoverTrial.Outcome outcome = hulls.isEmpty() ? new CoverTrial.Outcome(0, List.of(), false)
                : run(best, Set.of());
        SizingFindings findings = new SizingFindings(plan, outcome);
        List<Finding> unjudged = unjudged();
        boolean met = failing.isEmpty() && isConfirmed
                && plan.hulls().stream().allMatch(h -> use.used(h.id(), outcome) <= 1);
        List<Finding> all = findings.of(hulls, met ? List.of() : unmet(hulls, outcome),
                remedy -> use.usedInside(remedy.hull(), run(remedy.thickness(), remedy.closed())));
        all.addAll(unjudged);
        all.addAll(findings.uncovered(hulls, use));
        if (!met) {
            all.addAll(findings.crew(limits, use));
        }
        all.addAll(trial.notByReviewer());
        all.addAll(SizingFindings.thinnerThanACell(best, prepared.surveyedSpacing(), plan));
        double bank = PlanSoil.borrowed(plan).bankFromPlaced(outcome.volume()).best();
        OptionalDouble available = available(planned(best));
        if (available.isPresent() && bank > available.getAsDouble()) {
            all.add(SizingFindings.borrow(bank, available.getAsDouble(), bank / outcome.volume(), trade));
        }
        progress.report(1, "done");
        List<SizedCover.StationShare> stations = outcome.stations().stream().filter(s -> hulls.contains(s.hull()))
                .map(use::share).toList();
        return new SizedCover(met && unjudged.isEmpty(), best, planned(best), outcome.volume(), uniformVolume,
                stations, use.uses(outcome), bank, available, trade, intervals, stopsPaying(trade), trials, all);
    }

    /** What no cover can be held against. */
    private List<Finding> unjudged() {
        List<Finding> unjudged = new ArrayList<>();
        boolean peopleStay = plan.hulls().stream().anyMatch(h -> !h.stations().isEmpty());
        for (LimitInForce limit : plan.exposure().limitsInForce()) {
            String why = trial.whyNot(limit);
            if (!why.isEmpty()) {
                unjudged.add(LimitFindings.notJudged(limit, why, peopleStay));
            }
        }
        if (plan.exposure().limits().isEmpty()) {
            unjudged.add(Finding.of(SizingRule.SIZE_COVER_NO_LIMIT, Level.REFUSE, "exposure", Figures.NONE,
                    "The plan states no limit, so there is nothing to size a cover against."));
        }
        return unjudged;
    }

    private TreeMap<Double, CoverTrial.Outcome> scan(List<String> hulls) {
        TreeMap<Double, CoverTrial.Outcome> scan = new TreeMap<>();
        int steps = (int) Math.round(THICKEST / STEP);
        for (int i = 1; i <= steps && !hulls.isEmpty(); i++) {
            progress.check();
            progress.report(0.4 * i / steps, "scanning " + i * STEP + " m");
            double t = i * STEP;
            Map<String, CoverThickness> all = new HashMap<>();
            hulls.forEach(h -> all.put(h, CoverThickness.uniform(t)));
            scan.put(t, run(all, Set.of()));
        }
        return scan;
    }

    private CoverTrial.Outcome run(Map<String, CoverThickness> thickness, Set<String> closed) {
        progress.check();
        trials++;
        return trial.with(thickness, closed);
    }

    private TradePoint point(double thickness, CoverTrial.Outcome outcome) {
        return use.worst(outcome).map(w -> new TradePoint(thickness, outcome.volume(), w.station(), w.dose().best(),
                w.dose().high(), w.used(), use.crew(outcome))).orElseGet(() -> new TradePoint(thickness,
                outcome.volume(), "", 0, 0, 0, 0));
    }

    private List<SizedCover.Interval> intervals(String hull, TreeMap<Double, CoverTrial.Outcome> scan) {
        List<SizedCover.Interval> found = new ArrayList<>();
        double from = Double.NaN;
        double last = Double.NaN;
        for (Map.Entry<Double, CoverTrial.Outcome> entry : scan.entrySet()) {
            boolean met = use.used(hull, entry.getValue()) <= 1;
            if (met && Double.isNaN(from)) {
                from = entry.getKey();
            } else if (!met && !Double.isNaN(from)) {
                found.add(new SizedCover.Interval(hull, from, last));
                from = Double.NaN;
            }
            last = entry.getKey();
        }
        if (!Double.isNaN(from)) {
            found.add(new SizedCover.Interval(hull, from, last));
        }
        return found;
    }

    /** The thinnest cover that comes about as near to the limits as any: soil beyond it protects nobody. */
    private double nearest(String hull, TreeMap<Double, CoverTrial.Outcome> scan) {
        double least = scan.values().stream().mapToDouble(o -> use.used(hull, o)).min().orElse(0);
        return scan.entrySet().stream().filter(e -> use.used(hull, e.getValue()) <= least * ABOUT_AS_NEAR).findFirst()
                .map(Map.Entry::getKey).orElse(THICKEST);
    }

    /** Halves the step below each hull's start, all hulls at once. */
    private Map<String, CoverThickness> refined(Map<String, Double> start) {
        Map<String, CoverThickness> found = new LinkedHashMap<>();
        start.forEach((h, t) -> found.put(h, CoverThickness.uniform(t)));
        Halving halving = new Halving(found, (t, value) -> CoverThickness.uniform(value), CoverThickness::crown);
        halving.low.replaceAll((h, t) -> Math.max(THINNEST, start.get(h) - STEP));
        return halving.run();
    }

    /** From covers with some room, thins ends, flanks and crowns in two orders and keeps the least volume. */
    private Map<String, CoverThickness> parts(Map<String, CoverThickness> uniform) {
        Map<String, CoverThickness> best = uniform;
        double least = run(uniform, Set.of()).volume();
        uniformVolume = OptionalDouble.of(least);
        List<List<Part>> orders = List.of(List.of(Part.BASE, Part.FAR, Part.FLANK, Part.CROWN),
                List.of(Part.FLANK, Part.CROWN, Part.BASE, Part.FAR));
        int done = 0;
        for (double room : ROOM) {
            for (List<Part> order : orders) {
                Map<String, CoverThickness> now = new LinkedHashMap<>();
                uniform.forEach((h, t) -> now.put(h, CoverThickness.uniform(t.crown() + room)));
                Map<String, CoverThickness> thinned = now;
                for (Part part : order) {
                    progress.report(0.4 + 0.2 * done++ / (ROOM.length * orders.size() * order.size()),
                            "thinning " + part.name().toLowerCase(Locale.ROOT));
                    thinned = new Halving(thinned, part::with, part::of).run();
                }
                CoverTrial.Outcome outcome = run(thinned, Set.of());
                if (outcome.volume() < least && thicker(thinned)) {
                    least = outcome.volume();
                    best = thinned;
                }
            }
        }
        Map<String, CoverThickness> traded = new PartTrade(progress.part(0.6, 0.9), THINNEST, trial::volumes,
                this::failing).run(best);
        return thicker(traded) ? traded : best;
    }

    /** The hulls that do not meet the limits under covers on trial. */
    private Set<String> failing(Map<String, CoverThickness> thickness) {
        CoverTrial.Outcome outcome = run(thickness, Set.of());
        return thickness.keySet().stream().filter(h -> !(use.used(h, outcome) <= 1)).collect(Collectors.toSet());
    }

    /** Covers under which the doses as they are handed out meet the limits too: thickened, where they do not. */
    private Map<String, CoverThickness> confirmed(Map<String, CoverThickness> found) {
        Map<String, CoverThickness> now = found;
        for (int i = 0; i <= MOST_THICKENING; i++) {
            progress.report(0.9 + 0.1 * i / MOST_THICKENING, "confirming on the whole ground");
            Plan covered = planned(now);
            SiteDose dose = SiteDose.of(covered, SiteCover.raised(covered, natural, prepared), sources,
                    Progress.NONE.part(0, 1));
            isConfirmed = dose.limits().stream().noneMatch(l -> l.verdict() == Verdict.NOT_MET);
            if (isConfirmed) {
                return now;
            }
            Map<String, CoverThickness> more = new LinkedHashMap<>();
            now.forEach((h, t) -> more.put(h, new CoverThickness(t.crown() + THICKENED, t.flank() + THICKENED,
                    t.baseEnd() + THICKENED, t.farEnd() + THICKENED)));
            now = more;
        }
        return found;
    }

    /** Whether limits are also met with every part thicker by the tolerance. */
    private boolean thicker(Map<String, CoverThickness> thickness) {
        Map<String, CoverThickness> more = new HashMap<>();
        thickness.forEach((h, t) -> more.put(h, new CoverThickness(t.crown() + tolerance, t.flank() + tolerance,
                t.baseEnd() + tolerance, t.farEnd() + tolerance)));
        CoverTrial.Outcome outcome = run(more, Set.of());
        return thickness.keySet().stream().allMatch(h -> use.used(h, outcome) <= 1);
    }

    @FunctionalInterface
    private interface Change {
        CoverThickness with(CoverThickness thickness, double value);
    }

    @FunctionalInterface
    private interface Value {
        double of(CoverThickness thickness);
    }

    /** Thins one part of every hull at once: each halves its own range while its stations still meet the limits. */
    private final class Halving {
        private final Map<String, CoverThickness> from;
        private final Change change;
        private final Map<String, Double> low = new LinkedHashMap<>();
        private final Map<String, Double> high = new LinkedHashMap<>();

        Halving(Map<String, CoverThickness> from, Change change, Value value) {
            this.from = from;
            this.change = change;
            from.forEach((h, t) -> {
                high.put(h, value.of(t));
                low.put(h, Math.min(THINNEST, value.of(t)));
            });
        }

        Map<String, CoverThickness> run() {
            for (int i = 0; i < HALVINGS; i++) {
                Map<String, Double> middle = new HashMap<>();
                high.forEach((h, v) -> middle.put(h, (v + low.get(h)) / 2));
                CoverTrial.Outcome outcome = CoverSizing.this.run(at(middle), Set.of());
                middle.forEach((h, v) -> (use.used(h, outcome) <= 1 ? high : low).put(h, v));
            }
            Map<String, Double> up = new LinkedHashMap<>();
            high.forEach((h, v) -> up.put(h, Math.ceil(v / ROUND - 1e-9) * ROUND));
            return at(up);
        }

        private Map<String, CoverThickness> at(Map<String, Double> values) {
            Map<String, CoverThickness> changed = new LinkedHashMap<>();
            from.forEach((h, t) -> changed.put(h, change.with(t, values.get(h))));
            return changed;
        }
    }

    private List<SizingFindings.Unmet> unmet(List<String> hulls, CoverTrial.Outcome outcome) {
        List<SizingFindings.Unmet> unmet = new ArrayList<>();
        for (CoverTrial.At station : outcome.stations()) {
            for (LimitInForce limit : limits) {
                StationDose.Spread dose = use.counted(station, limit);
                if (hulls.contains(station.hull()) && !(dose.high() <= limit.limit())) {
                    unmet.add(new SizingFindings.Unmet(station, limit, dose,
                            use.byTime(station, limit).high()));
                }
            }
        }
        return unmet;
    }

    private Plan planned(Map<String, CoverThickness> thickness) {
        Plan changed = plan;
        for (Map.Entry<String, CoverThickness> entry : thickness.entrySet()) {
            CoverThickness t = entry.getValue();
            changed = changed.withHull(entry.getKey(), h -> h.withCover(h.cover().map(c -> c.withParts(t.crown(),
                    t.flank(), t.baseEnd(), t.farEnd()))));
        }
        return changed;
    }

    /** What the borrow grounds hold under these covers, whose toes must not be undercut. */
    private OptionalDouble available(Plan covered) {
        if (plan.borrowGrounds().isEmpty()) {
            return OptionalDouble.empty();
        }
        SiteCover cover = SiteCover.raised(covered, natural, prepared);
        List<SoilNeed> needs = cover.toes().isEmpty() ? List.of() : List.of(new SoilNeed("cover",
                SoilNeed.Kind.COVER, cover.volume(), plan.ground().regolith().placedDensity(), cover.toes()));
        return OptionalDouble.of(Earthworks.usable(new EarthworksInput(covered, prepared, needs, List.of(),
                EarthworksInput.Objective.MACHINE_HOURS)));
    }

    private static OptionalDouble stopsPaying(List<TradePoint> trade) {
        for (int i = trade.size() - 1; i > 0; i--) {
            TradePoint thin = trade.get(i - 1);
            TradePoint thick = trade.get(i);
            double soil = Math.log(thick.volume() / thin.volume());
            double dose = Math.log(thin.best() / thick.best());
            if (dose >= PAYS * soil) {
                return i == trade.size() - 1 ? OptionalDouble.empty() : OptionalDouble.of(thick.thickness());
            }
        }
        return trade.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(trade.get(0).thickness());
    }
}
