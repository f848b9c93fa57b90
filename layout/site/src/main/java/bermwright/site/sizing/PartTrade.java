// SPDX-License-Identifier: Apache-2.0
package bermwright.site.sizing;

import bermwright.foundation.Progress;
import bermwright.shielding.cover.CoverThickness;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * From covers that meet the limits, trades soil between their parts for as long as less of it still meets them: a part
 * is thinned by a step, or thinned by some steps while another grows by one, with finer and finer steps.
 *
 * <p>What it ends with is least against each such trade, on every hull; a law tries it against all covers of a raster.
 */
final class PartTrade {
    /** Steps that parts are changed by (m). */
    private static final double[] STEPS = {0.2, 0.05, 0.02};
    /** By how many steps a part is thinned while another grows by one. */
    private static final int[] FOR_ONE = {1, 3};
    /** How often all trades of one step are tried. */
    private static final int PASSES = 3;
    /** Volume that has to be won (1), as a share. */
    private static final double WORTH = 1e-4;

    private final Progress progress;
    private final double thinnest;
    private final Function<Map<String, CoverThickness>, Map<String, Double>> volumes;
    private final Function<Map<String, CoverThickness>, Set<String>> failing;

    /**
     * Trades between parts.
     *
     * @param progress told how far it has come; may cancel it
     * @param thinnest thinnest that any part becomes (m)
     * @param volumes  the soil that covers take, by hull (m3)
     * @param failing  the hulls under such covers that do not meet the limits
     */
    PartTrade(Progress progress, double thinnest, Function<Map<String, CoverThickness>, Map<String, Double>> volumes,
            Function<Map<String, CoverThickness>, Set<String>> failing) {
        this.progress = progress;
        this.thinnest = thinnest;
        this.volumes = volumes;
        this.failing = failing;
    }

    /** One trade: what is thinned by how many steps, and what grows by one; nothing where both are one. */
    private record Move(Part thinned, int steps, Part grown) {
        CoverThickness of(CoverThickness t, double step, double thinnest) {
            double thin = Math.max(thinnest, round(thinned.of(t) - steps * step));
            CoverThickness less = thinned.with(t, Math.min(thinned.of(t), thin));
            return grown == thinned ? less : grown.with(less, round(grown.of(t) + step));
        }

        private static double round(double thickness) {
            return Math.round(thickness / CoverSizing.ROUND) * CoverSizing.ROUND;
        }

        static List<Move> all() {
            List<Move> moves = new ArrayList<>();
            for (Part part : Part.values()) {
                moves.add(new Move(part, 1, part));
            }
            for (Part thinned : Part.values()) {
                for (Part grown : Part.values()) {
                    for (int steps : FOR_ONE) {
                        if (thinned != grown) {
                            moves.add(new Move(thinned, steps, grown));
                        }
                    }
                }
            }
            return moves;
        }
    }

    /**
     * Trades until no trade wins soil.
     *
     * @param start thicknesses by hull that meet the limits
     * @return thicknesses that meet them with no more soil
     */
    Map<String, CoverThickness> run(Map<String, CoverThickness> start) {
        Map<String, CoverThickness> best = new LinkedHashMap<>(start);
        Map<String, Double> soil = volumes.apply(best);
        List<Move> moves = Move.all();
        for (int s = 0; s < STEPS.length; s++) {
            boolean won = true;
            for (int pass = 0; pass < PASSES && won; pass++) {
                won = false;
                for (int m = 0; m < moves.size(); m++) {
                    progress.check();
                    progress.report((s + (pass + (double) m / moves.size()) / PASSES) / STEPS.length,
                            "trading soil between crown, flanks and ends");
                    Map<String, CoverThickness> tried = traded(best, soil, moves.get(m), STEPS[s]);
                    if (!tried.isEmpty()) {
                        best.putAll(tried);
                        soil = volumes.apply(best);
                        won = true;
                    }
                }
            }
        }
        return best;
    }

    /** The hulls on which a trade wins soil and the limits are still met, with their new thickness. */
    private Map<String, CoverThickness> traded(Map<String, CoverThickness> best, Map<String, Double> soil, Move move,
            double step) {
        Map<String, CoverThickness> changed = new LinkedHashMap<>();
        best.forEach((hull, t) -> {
            CoverThickness other = move.of(t, step, thinnest);
            if (!other.equals(t)) {
                changed.put(hull, other);
            }
        });
        Set<String> out = new TreeSet<>();
        if (!changed.isEmpty()) {
            Map<String, Double> then = volumes.apply(with(best, changed));
            changed.keySet().stream().filter(h -> !(then.get(h) < soil.get(h) * (1 - WORTH))).forEach(out::add);
        }
        changed.keySet().removeAll(out);
        while (!changed.isEmpty()) {
            Map<String, CoverThickness> tried = with(best, changed);
            Set<String> broken = failing.apply(tried);
            if (broken.isEmpty()) {
                return sum(volumes.apply(tried)) < sum(soil) * (1 - WORTH / best.size()) ? changed : Map.of();
            }
            if (!changed.keySet().removeAll(broken)) {
                return Map.of();
            }
        }
        return changed;
    }

    private static Map<String, CoverThickness> with(Map<String, CoverThickness> best,
            Map<String, CoverThickness> changed) {
        Map<String, CoverThickness> all = new LinkedHashMap<>(best);
        all.putAll(changed);
        return all;
    }

    private static double sum(Map<String, Double> soil) {
        return soil.values().stream().mapToDouble(v -> v).sum();
    }
}
