// SPDX-License-Identifier: Apache-2.0
package bermwright.site.arrangement;

import bermwright.site.clearance.QuickClearance.Pose;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a search saw by the way and no other dominates, one in each box of figures, so that answers can be picked that
 * lie apart.
 *
 * <p>A box is {@value #SHARE} of the reference's hours, soil or cut wide, {@value #METRES} m of tunnel and one warning.
 * Boxes dominate each other as figures do; within one the cheaper stays. What is kept hangs on what was seen and not on
 * the order it was seen in.
 *
 * @see "Laumanns, Thiele, Deb and Zitzler (2002), Evolutionary Computation 10, 263: archives by boxes; from memory"
 */
final class Spread {
    private static final double SHARE = 0.001;
    private static final double METRES = 0.2;
    /** Nothing is picked that takes more than this of the least hours known (1). */
    private static final double DEAREST = 1.25;

    private final Estimate reference;
    private final Map<Box, Seen> kept = new HashMap<>();

    Spread(Estimate reference) {
        this.reference = reference;
    }

    private record Seen(List<Pose> poses, Estimate estimate, double cost) {
    }

    /** A box by its numbers, the less of each the better. */
    private record Box(List<Integer> numbers) {
        boolean dominates(Box other) {
            boolean isBetter = false;
            for (int i = 0; i < numbers.size(); i++) {
                if (numbers.get(i) > other.numbers.get(i)) {
                    return false;
                }
                isBetter |= numbers.get(i) < other.numbers.get(i);
            }
            return isBetter;
        }
    }

    private Box box(Estimate e) {
        double[] shares = shares(e);
        return new Box(Arrays.stream(shares).mapToObj(s -> (int) Math.floor(s)).toList());
    }

    /** Figures in widths of a box. */
    private double[] shares(Estimate e) {
        return new double[] {share(e.hours(), reference.hours()), share(e.soil(), reference.soil()),
            share(e.cut(), reference.cut()), e.tunnels() / METRES, e.warnings()};
    }

    private static double share(double value, double of) {
        return of > 0 ? value / of / SHARE : 0;
    }

    /** Keeps an arrangement if it is allowed and no other is better. */
    void see(List<Pose> poses, Estimate estimate) {
        if (!estimate.isAllowed()) {
            return;
        }
        Box box = box(estimate);
        Seen seen = new Seen(poses, estimate, Arrays.stream(shares(estimate)).sum());
        Seen there = kept.get(box);
        if (there != null) {
            if (seen.cost < there.cost) {
                kept.put(box, seen);
            }
        } else if (kept.keySet().stream().noneMatch(b -> b.dominates(box))) {
            kept.keySet().removeIf(box::dominates);
            kept.put(box, seen);
        }
    }

    /** Takes in what another saw. */
    void add(Spread other) {
        other.kept.values().forEach(s -> see(s.poses, s.estimate));
    }

    /** How the quick engines see an arrangement now. */
    interface Look {
        /** The estimate of poses. */
        Estimate of(List<Pose> poses);
    }

    /**
     * The arrangement seen that lies farthest from those known and that none of them dominates; what is no longer
     * allowed, for more is known, is forgotten.
     */
    Optional<List<Pose>> farthest(Collection<Estimate> known, Look look) {
        kept.values().removeIf(s -> !look.of(s.poses).isAllowed());
        double least = known.stream().mapToDouble(Estimate::hours).min().orElse(Double.POSITIVE_INFINITY);
        List<Box> boxes = known.stream().map(this::box).toList();
        List<Map.Entry<Box, Seen>> open = new ArrayList<>(kept.entrySet().stream().filter(e -> e.getValue().estimate
                .hours() <= DEAREST * least && boxes.stream().noneMatch(b -> b.equals(e.getKey())
                        || b.dominates(e.getKey()))).toList());
        return open.stream().max(Comparator.comparingDouble((Map.Entry<Box, Seen> e) -> apart(e.getValue(), known))
                .thenComparing(Comparator.comparingDouble((Map.Entry<Box, Seen> e) -> e.getValue().cost).reversed()))
                .map(e -> e.getValue().poses);
    }

    /** Forgets an arrangement. */
    void forget(List<Pose> poses) {
        kept.values().removeIf(s -> s.poses.equals(poses));
    }

    /** Distance to the nearest that is known: roots, so that many small differences count more than one great one. */
    private double apart(Seen seen, Collection<Estimate> known) {
        double[] own = shares(seen.estimate);
        return known.stream().mapToDouble(k -> {
            double[] other = shares(k);
            double sum = 0;
            for (int i = 0; i < own.length; i++) {
                sum += Math.sqrt(Math.abs(own[i] - other[i]));
            }
            return sum;
        }).min().orElse(0);
    }
}
