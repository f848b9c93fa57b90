// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.LongSupplier;

/**
 * How long work that is done again and again will take on: as the time before where it came through once, else by the
 * share that is done; nothing is said in the first second, for then nothing is known.
 */
final class TimeLeft {
    private static final double LEAST_SECONDS = 1;
    private static final double NANOS = 1e9;

    private final LongSupplier clock;
    private TreeMap<Double, Double> before = new TreeMap<>();
    private TreeMap<Double, Double> now = new TreeMap<>();
    private long begun;
    private double share;

    /** Told the time by a clock (ns). */
    TimeLeft(LongSupplier clock) {
        this.clock = clock;
        begins();
    }

    /** The work begins. */
    void begins() {
        begun = clock.getAsLong();
        now = new TreeMap<>();
        share = 0;
    }

    /** The work has come so far (1). */
    void at(double done) {
        share = done;
        now.putIfAbsent(done, elapsed());
    }

    /** The work came to its end. */
    void ended() {
        now.put(1.0, elapsed());
        before = now;
    }

    private double elapsed() {
        return (clock.getAsLong() - begun) / NANOS;
    }

    /** The seconds left; empty while they cannot be known. */
    OptionalDouble seconds() {
        double elapsed = elapsed();
        Map.Entry<Double, Double> then = before.floorEntry(share);
        if (then != null && then.getValue() > 0 && share > 0) {
            // The time before took as long again from here on; this time may be quicker or slower by a factor.
            Optional<Double> here = Optional.ofNullable(now.floorEntry(share)).map(Map.Entry::getValue);
            double pace = Math.max(0.2, Math.min(5, here.map(h -> h / then.getValue()).orElse(1.0)));
            double since = elapsed - here.orElse(0.0);
            return OptionalDouble.of(Math.max(0, pace * (before.get(1.0) - then.getValue()) - since));
        }
        return elapsed < LEAST_SECONDS || share <= 0 ? OptionalDouble.empty()
                : OptionalDouble.of(elapsed * (1 - share) / share);
    }

    /** The time left in words. */
    Optional<String> words() {
        OptionalDouble seconds = seconds();
        if (seconds.isEmpty()) {
            return Optional.empty();
        }
        double left = seconds.getAsDouble();
        return Optional.of(left < 1.5 ? "about a second left" : left < 90
                ? String.format(Locale.ROOT, "about %.0f s left", left)
                : String.format(Locale.ROOT, "about %.0f min left", left / 60));
    }
}
