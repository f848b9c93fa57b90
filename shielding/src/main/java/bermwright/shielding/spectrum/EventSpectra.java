// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.Require;
import bermwright.shielding.material.Table;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The solar particle events that plans may name: great events of the past and design spectra by return period. */
public final class EventSpectra {
    /** The event to plan with where nobody has chosen another. */
    public static final String DESIGN_REFERENCE = "design reference";
    /** The ground-level event that reached deepest. */
    public static final String DEEPEST = "february 1956";
    private static final double CM2_IN_M2 = 1e4;
    private static final List<String[]> ROWS = Table.rows(EventSpectra.class, "events.csv", ";");
    private static final Map<String, EventSpectrum> ALL = read();
    /**
     * Fluence of one event in 100 years over its greatest flux, above this energy (MeV), where people behind a hull are
     * reached.
     */
    private static final double DECISIVE_MEV = 100;

    private EventSpectra() {
    }

    /**
     * The event with a name.
     *
     * @param name name, such as {@code august 1972} or {@code one in 100 years}; capitals do not matter
     * @return the spectrum
     * @throws IllegalArgumentException if the event is unknown; the message lists those known
     */
    public static EventSpectrum named(String name) {
        EventSpectrum found = ALL.get(name.toLowerCase(Locale.ROOT));
        Require.that(found != null, "event %s is unknown; accepted: %s", name, String.join("; ", names()));
        return found;
    }

    /**
     * Names of all events.
     *
     * @return the names in the order of the table
     */
    public static List<String> names() {
        return List.copyOf(ALL.keySet());
    }

    /**
     * What kinds of events there are, each with its names.
     *
     * @return one sentence part a kind, such as "ground-level: november 1960, february 1956"
     */
    public static List<String> kinds() {
        return ROWS.stream().map(row -> row[1]).distinct().map(kind -> kind + ": " + ROWS.stream()
                .filter(row -> row[1].equals(kind)).map(row -> row[0]).collect(Collectors.joining(", "))).toList();
    }

    /**
     * The kind of an event.
     *
     * @param name name of the event; capitals do not matter
     * @return historic, ground-level or design reference; empty where the event is unknown
     */
    public static Optional<String> kind(String name) {
        return ROWS.stream().filter(row -> row[0].equalsIgnoreCase(name)).findFirst().map(row -> row[1]);
    }

    /**
     * The shortest time in which a great event can bring its whole fluence: as if it came at its greatest flux all the
     * time. What a person is exposed to in a shorter time is then at most that share of the event.
     *
     * @return time (s), about eight hours
     * @see "Jiggens et al. (2018), J. Space Weather Space Clim. 8, A31, table 8: fluence and greatest flux of one event
     *     in 100 years, above 100 MeV"
     */
    public static double shortestDuration() {
        EventSpectrum flux = new RigidityBandSpectrum("greatest flux", 5.64e4 * CM2_IN_M2, 2.09, 0.111, 5.25, "");
        return named("one in 100 years").above(DECISIVE_MEV) / flux.above(DECISIVE_MEV);
    }

    private static Map<String, EventSpectrum> read() {
        Map<String, EventSpectrum> all = new LinkedHashMap<>();
        for (String[] row : ROWS) {
            EventSpectrum.Range range =
                    new EventSpectrum.Range(Double.parseDouble(row[4]), Double.parseDouble(row[5]));
            all.put(row[0], spectrum(row[0], row[2], row[3].split(" "), range, row[6]));
        }
        return all;
    }

    private static EventSpectrum spectrum(String name, String form, String[] figures, EventSpectrum.Range range,
            String source) {
        switch (form) {
            case "exponentials":
                return new ExponentialSpectrum(name, Arrays.stream(figures).map(EventSpectra::term).toList(), range,
                        source);
            case "weibull":
                double[] w = numbers(figures);
                return new WeibullSpectrum(name, w[0] * CM2_IN_M2, w[1], w[2], range, source);
            case "band":
                double[] b = numbers(figures);
                return new RigidityBandSpectrum(name, b[0] * CM2_IN_M2, b[1], b[2], b[3], source);
            default:
                throw new IllegalStateException("unknown form " + form + " in events.csv");
        }
    }

    private static ExponentialSpectrum.Term term(String figures) {
        double[] f = numbers(figures.split(":"));
        return new ExponentialSpectrum.Term(f[0] * CM2_IN_M2, f[1], f[2]);
    }

    private static double[] numbers(String[] figures) {
        return Arrays.stream(figures).mapToDouble(Double::parseDouble).toArray();
    }
}
