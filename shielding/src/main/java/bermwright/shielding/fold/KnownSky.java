// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.shielding.raycast.SkyChange;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What has been seen from one station of one scene, azimuth by azimuth, and of another scene whatever is the very same
 * there. A view that is made with it is the one that would be made without it, number by number.
 */
final class KnownSky {
    private final Map<Double, Turn> turns = new HashMap<>();
    private Optional<Earlier> earlier;

    private record Earlier(KnownSky sky, SkyChange change) {
    }

    private KnownSky(Optional<Earlier> earlier) {
        this.earlier = earlier;
    }

    /** Nothing seen yet. */
    static KnownSky nothing() {
        return new KnownSky(Optional.empty());
    }

    /** What another scene showed where nothing differs. */
    static KnownSky of(KnownSky sky, SkyChange change) {
        return new KnownSky(Optional.of(new Earlier(sky, change)));
    }

    /** What is known along an azimuth. */
    synchronized Turn turn(double azimuth) {
        Turn known = turns.get(azimuth);
        if (known == null) {
            known = earlier.filter(e -> !e.change.reaches(azimuth)).map(e -> e.sky.turn(azimuth)).orElseGet(Turn::new);
            turns.put(azimuth, known);
        }
        return known;
    }

    /** Lets go of the other scene, once all that was wanted of it was taken over. */
    synchronized void settled() {
        earlier = Optional.empty();
    }

    /** How many panels it holds. */
    synchronized int size() {
        return turns.values().stream().mapToInt(t -> t.panels.size()).sum();
    }

    /** A stretch of elevations, by the sines it reaches from and to. */
    record Span(double from, double to) {
    }

    /** What is known along one azimuth: panels of elevation, and what they gave when they were folded. */
    static final class Turn {
        /** Foldings that are kept; more are asked for only by searches, each once. */
        private static final int FOLDINGS = 8;
        private final Map<Span, SkyPanel> panels = new ConcurrentHashMap<>();
        private List<SkyPanel> folded = List.of();
        private final Map<FoldedDose.Key, FoldedDose.Sums> sums = new HashMap<>();

        Optional<SkyPanel> panel(double from, double to) {
            return Optional.ofNullable(panels.get(new Span(from, to)));
        }

        void keep(SkyPanel panel) {
            panels.put(new Span(panel.from, panel.to), panel);
        }

        /** What panels give that are these very ones; made where that is not known. */
        synchronized FoldedDose.Sums sums(List<SkyPanel> of, FoldedDose.Key key, Supplier<FoldedDose.Sums> make) {
            boolean same = folded.size() == of.size();
            for (int i = 0; same && i < of.size(); i++) {
                same = folded.get(i) == of.get(i);
            }
            if (!same) {
                sums.clear();
                folded = List.copyOf(of);
            }
            FoldedDose.Sums made = sums.get(key);
            if (made == null) {
                made = make.get();
                if (sums.size() < FOLDINGS) {
                    sums.put(key, made);
                }
            }
            return made;
        }
    }
}
