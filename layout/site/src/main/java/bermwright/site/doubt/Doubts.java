// SPDX-License-Identifier: Apache-2.0
package bermwright.site.doubt;

import bermwright.finding.Finding.Level;
import bermwright.foundation.InputException;
import bermwright.foundation.ModelNote;
import bermwright.foundation.Progress;
import bermwright.site.assessment.Assessment;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;

/**
 * What is in doubt about a plan.
 *
 * @param inputs    what is not known exactly
 * @param samples   samples worked out
 * @param failed    samples that could not be worked out, which are left out
 * @param seed      the seed that repeats them
 * @param figures   the main figures
 * @param findings  the chance of each finding that the samples touch
 * @param inFull    what some samples gave that were assessed in full
 */
public record Doubts(List<UncertainInput> inputs, int samples, int failed, long seed, List<FigureDoubt> figures,
        List<FindingChance> findings, InFull inFull) {
    /** Samples after which a first answer is told. */
    public static final int FIRST = 100;
    private static final double SMALLEST = 1e-9;

    /** Copies the lists. */
    public Doubts {
        inputs = List.copyOf(inputs);
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }

    /**
     * What is asked.
     *
     * @param samples samples, at least 20
     * @param seed    seed
     * @param confirm samples assessed in full
     */
    public record Asked(int samples, long seed, int confirm) {
    }

    /**
     * The chance of a finding.
     *
     * @param id      the finding, by rule, subject and parts
     * @param refuses chance that it refuses (1)
     * @param warns   chance that it warns (1)
     * @param notes   chance that it is only worth knowing (1)
     * @param best    its level with every input at its best; empty where it is not found then
     */
    public record FindingChance(String id, double refuses, double warns, double notes, Optional<Level> best) {
    }

    /**
     * Samples that were assessed in full, on ground whose heights are off as a random field.
     *
     * @param samples   how many
     * @param confirmed how far their figures are from those of the quick sample
     * @param findings  the chance, among these samples, of findings that quick samples do not work out, where it is
     *                  not the same in all of them
     */
    public record InFull(int samples, List<Confirmed> confirmed, List<FindingChance> findings) {
        static final InFull NONE = new InFull(0, List.of(), List.of());

        /** Copies the lists. */
        public InFull {
            confirmed = List.copyOf(confirmed);
            findings = List.copyOf(findings);
        }
    }

    /**
     * How well what was kept holds.
     *
     * @param figure   the figure
     * @param middle   difference that half of the samples do not exceed, as a share of the figure (1)
     * @param greatest greatest difference, as a share of the figure (1)
     */
    public record Confirmed(Figure figure, double middle, double greatest) {
    }

    /** Told when a first answer is there. */
    public interface FirstAnswer {
        /**
         * Tells it.
         *
         * @param first what is known after {@link #FIRST} samples
         */
        void tell(Doubts first);
    }

    /**
     * Works out what is in doubt.
     *
     * @param best     the assessment of the plan with everything at its best
     * @param asked    how many samples, from which seed
     * @param first    told after the first hundred
     * @param progress told how far the work has come; may cancel it
     * @return the doubts; without figures where the plan has no cover or nothing uncertain
     * @throws InputException if the plan cannot be worked out one standard deviation off in a number that shapes what
     *                        is built
     * @throws java.util.concurrent.CancellationException if the work was cancelled
     */
    public static Doubts of(Assessment best, Asked asked, FirstAnswer first, Progress progress) {
        List<UncertainInput> inputs = best.cover().isEmpty() ? List.of() : InputsOfPlan.of(best);
        if (inputs.isEmpty()) {
            return new Doubts(inputs, 0, 0, asked.seed, List.of(), List.of(), InFull.NONE);
        }
        SampledSite site = new SampledSite(best, inputs);
        site.learn(progress.part(0, 0.1));
        double[][] off = QuasiRandom.normal(inputs.size(), asked.samples, asked.seed);
        SampledSite.Outcome middle = site.at(new double[inputs.size()]);
        SampledSite.Outcome[] outcomes = new SampledSite.Outcome[asked.samples];
        int early = Math.min(FIRST, asked.samples);
        run(site, off, outcomes, new int[] {0, early}, progress.part(0.1, 0.15));
        if (asked.samples > FIRST) {
            first.tell(told(inputs, off, Arrays.copyOf(outcomes, early), new Told(middle, asked.seed, InFull.NONE)));
        }
        run(site, off, outcomes, new int[] {early, asked.samples}, progress.part(0.15, 0.5));
        InFull confirmed = confirmed(site, off, outcomes, asked, progress.part(0.5, 0.97));
        progress.report(0.97, "what decides");
        return told(inputs, off, outcomes, new Told(middle, asked.seed, confirmed));
    }

    private static void run(SampledSite site, double[][] off, SampledSite.Outcome[] outcomes, int[] range,
            Progress progress) {
        AtomicInteger done = new AtomicInteger();
        IntStream.range(range[0], range[1]).parallel().forEach(n -> {
            progress.check();
            outcomes[n] = outcome(site, off[n]).orElse(null);
            int now = done.incrementAndGet();
            synchronized (progress) {
                progress.report((double) now / (range[1] - range[0]), "samples");
            }
        });
    }

    private static Optional<SampledSite.Outcome> outcome(SampledSite site, double[] off) {
        try {
            return Optional.of(site.at(off));
        } catch (IllegalArgumentException | InputException unusable) {
            return Optional.empty();
        }
    }

    private static InFull confirmed(SampledSite site, double[][] off, SampledSite.Outcome[] outcomes, Asked asked,
            Progress progress) {
        Map<Figure, List<Double>> differences = new LinkedHashMap<>();
        Set<String> quick = new HashSet<>();
        Arrays.stream(outcomes).filter(Objects::nonNull).forEach(o -> quick.addAll(o.findings().keySet()));
        Map<String, int[]> counts = new TreeMap<>();
        int many = Math.min(asked.confirm, outcomes.length);
        int worked = 0;
        for (int k = 0; k < many; k++) {
            progress.check();
            progress.report((double) k / many, "assessing samples in full");
            int n = (int) ((long) k * outcomes.length / many);
            Optional<SampledSite.Outcome> full = outcomes[n] == null ? Optional.empty()
                    : inFull(site, off[n], asked.seed + n);
            if (full.isEmpty()) {
                continue;
            }
            worked++;
            Map<Figure, Double> fast = site.likeInFull(off[n]);
            full.get().figures().forEach((figure, value) -> Optional.ofNullable(fast.get(figure)).ifPresent(f ->
                    differences.computeIfAbsent(figure, x -> new ArrayList<>()).add(Math.abs(f - value)
                            / Math.max(Math.abs(value), SMALLEST))));
            full.get().findings().forEach((id, level) -> {
                if (!quick.contains(id)) {
                    counts.computeIfAbsent(id, x -> new int[Level.values().length])[level.ordinal()]++;
                }
            });
        }
        int times = worked;
        List<FindingChance> others = chances(counts, times, Map.of()).stream().filter(f -> f.refuses() + f.warns() > 0
                && Math.max(f.refuses(), Math.max(f.warns(), f.notes())) < 1).toList();
        return new InFull(times, differences.entrySet().stream().map(e -> {
            double[] sorted = e.getValue().stream().mapToDouble(d -> d).sorted().toArray();
            return new Confirmed(e.getKey(), sorted[sorted.length / 2], sorted[sorted.length - 1]);
        }).toList(), others);
    }

    private static Optional<SampledSite.Outcome> inFull(SampledSite site, double[] off, long seed) {
        try {
            return Optional.of(site.inFull(off, seed));
        } catch (IllegalArgumentException | InputException unusable) {
            return Optional.empty();
        }
    }

    private record Told(SampledSite.Outcome best, long seed, InFull inFull) {
    }

    private static Doubts told(List<UncertainInput> inputs, double[][] off, SampledSite.Outcome[] outcomes, Told told) {
        List<double[]> rows = new ArrayList<>();
        List<SampledSite.Outcome> good = new ArrayList<>();
        for (int n = 0; n < outcomes.length; n++) {
            if (outcomes[n] != null && outcomes[n].figures().keySet().equals(told.best.figures().keySet())) {
                rows.add(off[n]);
                good.add(outcomes[n]);
            }
        }
        int failed = outcomes.length - good.size();
        if (good.size() < 3) {
            return new Doubts(inputs, good.size(), failed, told.seed, List.of(), List.of(), told.inFull);
        }
        Decider decider = new Decider(inputs, rows.toArray(double[][]::new), told.seed);
        List<FigureDoubt> figures = told.best.figures().entrySet().parallelStream().map(e -> decider.of(e.getKey(),
                e.getValue(), good.stream().mapToDouble(o -> o.figures().get(e.getKey())).toArray())).toList();
        return new Doubts(inputs, good.size(), failed, told.seed, figures, chances(good, told.best), told.inFull);
    }

    private static List<FindingChance> chances(List<SampledSite.Outcome> all, SampledSite.Outcome best) {
        Map<String, int[]> counts = new TreeMap<>();
        best.findings().keySet().forEach(id -> counts.put(id, new int[Level.values().length]));
        all.forEach(o -> o.findings().forEach((id, level) -> counts.computeIfAbsent(id,
                k -> new int[Level.values().length])[level.ordinal()]++));
        return chances(counts, all.size(), best.findings());
    }

    private static List<FindingChance> chances(Map<String, int[]> counts, double size, Map<String, Level> best) {
        return counts.entrySet().stream().map(e -> new FindingChance(e.getKey(),
                e.getValue()[Level.REFUSE.ordinal()] / size, e.getValue()[Level.WARN.ordinal()] / size,
                e.getValue()[Level.NOTE.ordinal()] / size, Optional.ofNullable(best.get(e.getKey()))))
                .toList();
    }

    /**
     * Where the model holds.
     *
     * @return the note
     */
    public static ModelNote note() {
        return new ModelNote("doubts", "quasi-random samples of all inputs at once through the same rules; shares from"
                + " a sum of orthogonal polynomials fitted to the samples; finding out by the same surrogate",
                "independent normal inputs within 3.5 standard deviations, heights of the ground as one field whose"
                        + " errors go together over elevation_correlation_m; covers,"
                        + " clearances, ways and landings off the planned place are kept as they are, heights move"
                        + " depth and volume of each cover by its own spread and no hull; a spread of a number that"
                        + " shapes what is built (size, skin, cover, seat, station) moves figures by full assessments"
                        + " one standard deviation either side, each by itself, and of findings only those on dose"
                        + " limits; some samples are assessed in full on ground that is off"
                        + " as such a field, without part-built covers; within a sample"
                        + " the plan's spreads are nothing",
                "shares carry their own error; chances of p from n samples scatter by sqrt(p (1 - p) / n) at most",
                ModelNote.Status.COMPUTED, "Sobol' (1967); Sudret (2008), Reliability Engineering and System Safety 93,"
                        + " 964; field: Shinozuka and Deodatis (1996), Applied Mechanics Reviews 49, 29");
    }
}
