// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.Require;
import bermwright.shielding.material.Table;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The solar particle events that plans may name: great events of the past and design spectra by return period. */
public final class EventSpectra {
    private static final double CM2_IN_M2 = 1e4;
    private static final Map<String, EventSpectrum> ALL = read();

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

    private static Map<String, EventSpectrum> read() {
        Map<String, EventSpectrum> all = new LinkedHashMap<>();
        for (String[] row : Table.rows(EventSpectra.class, "events.csv", ";")) {
            EventSpectrum.Range range =
                    new EventSpectrum.Range(Double.parseDouble(row[3]), Double.parseDouble(row[4]));
            all.put(row[0], spectrum(row[0], row[1], row[2].split(" "), range, row[5]));
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
