// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * How far the response may be off for a stated sun or event, from its parts, each a standard deviation of the logarithm
 * by depth; together they are the root of the sum of squares. Deeper than 1000 g/cm2, where nothing is left to compare
 * with, the whole grows with the depth.
 *
 * <p>No part is fitted to a row of comparisons: the page of validation counts how many of them the band holds.
 */
enum ModelSpread {
    /**
     * Nuclear models: a second cascade gives 0.89 of the dose of the first; deep down, where fast hadrons decide,
     * strings and cascades differ by two in slow products, and pions by more.
     */
    REACTIONS("reactions", new double[] {0.12, 0.12, 0.14, 0.20, 0.32}, new double[] {0.12, 0.14, 0.17, 0.25, 0.40}),
    /** Steps, directions and energies of the slab, against walks by chance. */
    TRANSPORT("transport", new double[] {0.05, 0.05, 0.06, 0.12, 0.20}, new double[] {0.05, 0.06, 0.08, 0.15, 0.30}),
    /** What arrives: published spectra differ by 8 %, above 30 GeV by up to a quarter; fits of events by more. */
    SPECTRUM("spectrum", new double[] {0.08, 0.08, 0.10, 0.14, 0.20}, new double[] {0.15, 0.18, 0.22, 0.30, 0.40}),
    /** What a person's dose is: heavy ions, which no longer count behind 100 g/cm2, and coefficients. */
    BODY("body", new double[] {0.28, 0.12, 0.09, 0.09, 0.09}, new double[] {0.20, 0.10, 0.09, 0.09, 0.09}),
    /** Shape of walls and room: bulging walls let through up to a tenth more, slow neutrons of a room 20 %. */
    GEOMETRY("geometry", new double[] {0.05, 0.09, 0.10, 0.12, 0.15}, new double[] {0.05, 0.09, 0.10, 0.12, 0.15});

    /** Depth to which ours is held against others (kg/m2). */
    static final double TESTED = 10_000;
    private static final double[] DEPTHS = {0, 1000, 3000, 5000, TESTED};
    /** Where tables end and their last value is taken (kg/m2). */
    private static final double DEEPEST_TABLE = 15_000;

    private static final int PARTS = values().length;
    private static final CurveFan COSMIC = new CurveFan(DEPTHS,
            Arrays.stream(values()).map(p -> p.cosmicShares).toArray(double[][]::new));
    private static final CurveFan EVENT = new CurveFan(DEPTHS,
            Arrays.stream(values()).map(p -> p.eventShares).toArray(double[][]::new));

    private final String word;
    private final double[] cosmicShares;
    private final double[] eventShares;

    ModelSpread(String word, double[] cosmic, double[] event) {
        this.word = word;
        cosmicShares = cosmic;
        eventShares = event;
    }

    /** The band of cosmic rays at an areal density (kg/m2). */
    static Band cosmic(double arealDensity) {
        return band(arealDensity, true);
    }

    /** The band of an event of a stated spectrum at an areal density (kg/m2). */
    static Band event(double arealDensity) {
        return band(arealDensity, false);
    }

    private static Band band(double arealDensity, boolean cosmic) {
        double depth = Math.min(arealDensity, DEEPEST_TABLE);
        double square = 0;
        CurveFan parts = cosmic ? COSMIC : EVENT;
        CurveFan.Spot spot = parts.at(depth);
        for (int part = 0; part < PARTS; part++) {
            double one = parts.value(part, spot);
            square += one * one;
        }
        double spread = Math.sqrt(square) * Math.max(1, depth / TESTED);
        return new Band(Math.exp(-spread), Math.exp(spread));
    }

    /** The parts in words, and the whole. */
    static String words(boolean cosmic) {
        String factors = Arrays.stream(DEPTHS)
                .mapToObj(d -> String.format(Locale.ROOT, "%.2f", band(d, cosmic).high()))
                .collect(Collectors.joining(", "));
        String parts = Arrays.stream(values()).map(p -> p.word + " " + Arrays.stream(cosmic ? p.cosmicShares
                : p.eventShares).mapToObj(s -> String.format(Locale.ROOT, "%.0f", 100 * s))
                .collect(Collectors.joining(", ")) + " %").collect(Collectors.joining("; "));
        return "a factor " + factors + " at 0, 100, 300, 500 and 1000 g/cm2, growing with the depth beyond; its parts: "
                + parts;
    }
}
