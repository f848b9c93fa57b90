// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.InputException;
import bermwright.foundation.InputException.Place;
import bermwright.foundation.Require;
import bermwright.shielding.material.UserTable;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A user's own event: integral fluence by energy, joined by power laws of energy, and continued above the last energy
 * by a stated law ({@link Beyond}) that starts from the last two points. Below the first energy nothing is counted.
 *
 * <p>A last fluence of zero says that the event ends there.
 */
public final class TabulatedSpectrum implements EventSpectrum {
    /** Least and greatest energy a table may hold (MeV). */
    private static final double LEAST_MEV = 0.1;
    private static final double GREATEST_MEV = 1e5;
    private static final double GREATEST_FLUENCE = 1e14;
    private static final double CM2_IN_M2 = 1e4;
    /** Least energy to which a table must go to be continued without a stated law (MeV). */
    private static final double LEAST_END_MEV = 100;
    private static final String NOTE = "beyond";
    private static final String LAWS = Arrays.stream(Beyond.values()).map(b -> b.word)
            .collect(Collectors.joining(", or "));

    private static final int BELOW = -1;
    private static final int ABOVE = -2;

    private final String name;
    private final double[] energies;
    private final double[] fluences;
    private final Beyond beyond;
    private final boolean isStated;

    private TabulatedSpectrum(String name, double[][] points, Beyond beyond, boolean isStated) {
        this.name = name;
        this.energies = points[0];
        this.fluences = points[1];
        this.beyond = beyond;
        this.isStated = isStated;
    }

    /** How an event goes on above the last energy of its table. */
    public enum Beyond {
        /**
         * By a power law of rigidity. Taken where nothing is stated: events that were followed to a GeV on the ground
         * fall so, and exponentials have come out with too little dose.
         *
         * @see "Atwell, Tylka et al., Radiation exposures from several ground level enhancements during the 23rd solar
         *     cycle, abstract: the exponential extrapolation consistently under-estimates the human exposure"
         */
        POWER("power law in rigidity"),
        /** By an exponential of rigidity. */
        EXPONENTIAL("exponential in rigidity"),
        /** Not at all. */
        NOTHING("nothing");

        private final String word;

        Beyond(String word) {
            this.word = word;
        }

        /**
         * The words used in files and pages.
         *
         * @return the words
         */
        public String word() {
            return word;
        }

        /** Fall of the logarithm of the fluence per GV at a rigidity, where the law has a pace. */
        private double fall(double pace, double rigidity) {
            return this == POWER ? pace / rigidity : pace;
        }

        private double variable(double rigidity) {
            return this == POWER ? Math.log(rigidity) : rigidity;
        }
    }

    /**
     * A spectrum from points.
     *
     * @param name     name of the event
     * @param energies energies (MeV), rising, at least two
     * @param fluences protons above each energy (1/m2), zero or more, never rising
     * @param beyond   how it goes on above the last energy
     * @return the spectrum
     * @throws IllegalArgumentException if energies do not rise, or a fluence is negative or rises
     */
    static TabulatedSpectrum of(String name, double[] energies, double[] fluences, Beyond beyond) {
        return of(name, new double[][] {energies, fluences}, beyond, true);
    }

    private static TabulatedSpectrum of(String name, double[][] points, Beyond beyond, boolean isStated) {
        double[] energies = points[0];
        double[] fluences = points[1];
        Require.that(energies.length == fluences.length && energies.length >= 2,
                "%s energies and %s fluences; accepted: as many of both, at least two", energies.length,
                fluences.length);
        for (int i = 0; i < energies.length; i++) {
            Require.positive("energy", energies[i], "MeV");
            Require.notNegative("fluence", fluences[i], "1/m2");
            Require.that(i == 0 || energies[i] > energies[i - 1], "energy %s MeV follows %s MeV; accepted: rising",
                    energies[i], i == 0 ? 0.0 : energies[i - 1]);
            Require.that(i == 0 || fluences[i] <= fluences[i - 1],
                    "fluence %s 1/m2 above %s MeV is greater than the one before; accepted: never rising",
                    fluences[i], energies[i]);
        }
        return new TabulatedSpectrum(name, new double[][] {energies.clone(), fluences.clone()}, beyond, isStated);
    }

    /**
     * Reads a spectrum from CSV with the columns {@code energy_MeV,fluence_above_per_cm2}; a note
     * {@code # beyond: power law in rigidity} (or exponential in rigidity, or nothing) says how it goes on above the
     * last energy.
     *
     * @param file the file
     * @return the spectrum, named after the file
     * @throws InputException if the file cannot be read, energies do not rise, a fluence is negative or rises, or the
     *     table ends so early or so flat that nothing says how it goes on
     */
    public static TabulatedSpectrum read(Path file) {
        UserTable table = UserTable.read(file, List.of(new UserTable.Column("energy_MeV", LEAST_MEV, GREATEST_MEV),
                new UserTable.Column("fluence_above_per_cm2", 0, GREATEST_FLUENCE)));
        double[] fluences = table.column(1);
        for (int i = 1; i < fluences.length; i++) {
            if (fluences[i] > fluences[i - 1]) {
                throw InputException.badValue(new Place(file.toString(), table.line(i), "fluence_above_per_cm2"),
                        Double.toString(fluences[i]), "at most " + fluences[i - 1] + " of the row before");
            }
        }
        double[] perSquareMetre = Arrays.stream(fluences).map(f -> f * CM2_IN_M2).toArray();
        Optional<Beyond> stated = table.note(NOTE).map(words -> law(table, words));
        if (fluences[fluences.length - 1] > 0 && stated.filter(b -> b == Beyond.NOTHING).isEmpty()) {
            checkEnd(file, table, stated.isPresent());
        }
        return of(String.valueOf(file.getFileName()), new double[][] {table.column(0), perSquareMetre},
                stated.orElse(Beyond.POWER), stated.isPresent());
    }

    private static Beyond law(UserTable table, String words) {
        return Arrays.stream(Beyond.values()).filter(b -> b.word.equals(words)).findFirst().orElseThrow(
                () -> InputException.badValue(table.place(NOTE), words, LAWS));
    }

    /** Refuses a table whose end does not say how the event goes on. */
    private static void checkEnd(Path file, UserTable table, boolean isStated) {
        double[] energies = table.column(0);
        double[] fluences = table.column(1);
        int last = energies.length - 1;
        if (!(fluences[last] < fluences[last - 1])) {
            throw InputException.badValue(new Place(file.toString(), table.line(last), "fluence_above_per_cm2"),
                    Double.toString(fluences[last]), "less than the row before, so that the event can be continued, or"
                            + " a note \"# beyond: nothing\"");
        }
        if (!isStated && energies[last] < LEAST_END_MEV) {
            throw InputException.badValue(new Place(file.toString(), table.line(last), "energy_MeV"),
                    Double.toString(energies[last]), "a last energy of " + LEAST_END_MEV + " MeV or more, a last"
                            + " fluence of 0, or a note \"# beyond:\" with " + LAWS
                            + ": what comes through hull and cover is above that energy");
        }
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public double above(double energyMeV) {
        int i = interval(energyMeV);
        if (i < 0) {
            return i == BELOW ? fluences[0] : continued(energyMeV);
        }
        if (fluences[i + 1] <= 0) {
            double share = (energies[i + 1] - energyMeV) / (energies[i + 1] - energies[i]);
            return fluences[i] * share;
        }
        return fluences[i] * Math.pow(energyMeV / energies[i], -index(i));
    }

    @Override
    public double perMeV(double energyMeV) {
        int i = interval(energyMeV);
        if (i == BELOW) {
            return 0;
        } else if (i < 0) {
            return continues() ? continued(energyMeV) * beyond.fall(pace(), Rigidity.gigavolts(energyMeV))
                    * Rigidity.perMeV(energyMeV) : 0;
        }
        return fluences[i + 1] <= 0 ? fluences[i] / (energies[i + 1] - energies[i])
                : above(energyMeV) * index(i) / energyMeV;
    }

    @Override
    public Range range() {
        return new Range(energies[0], energies[energies.length - 1]);
    }

    @Override
    public String continuation() {
        return continues() ? "by a " + beyond.word() + " through the last two points of its table, "
                + (isStated ? "as its file states" : "taken here since its file states no law") : "not at all";
    }

    @Override
    public List<EventSpectrum> otherwise() {
        return isStated || !continues() ? List.of() : List.of(new TabulatedSpectrum(name,
                new double[][] {energies, fluences}, Beyond.EXPONENTIAL, true));
    }

    /**
     * Whether the event goes on above the last energy of its table.
     *
     * @return false where its last fluence is zero or its file says that nothing follows
     */
    public boolean continues() {
        return beyond != Beyond.NOTHING && fluences[fluences.length - 1] > 0;
    }

    /**
     * Whether the law above the last energy is the user's own.
     *
     * @return false where it was taken here
     */
    public boolean isStated() {
        return isStated;
    }

    private double continued(double energyMeV) {
        int last = energies.length - 1;
        return continues() ? fluences[last] * Math.exp(-pace() * (beyond.variable(Rigidity.gigavolts(energyMeV))
                - beyond.variable(Rigidity.gigavolts(energies[last])))) : 0;
    }

    /** Fall of the logarithm of the fluence between the last two points, by the law's own variable. */
    private double pace() {
        int last = energies.length - 1;
        return Math.log(fluences[last - 1] / fluences[last])
                / (beyond.variable(Rigidity.gigavolts(energies[last]))
                - beyond.variable(Rigidity.gigavolts(energies[last - 1])));
    }

    @Override
    public String source() {
        return "handed over by the user as " + name;
    }

    private double index(int i) {
        return Math.log(fluences[i] / fluences[i + 1]) / Math.log(energies[i + 1] / energies[i]);
    }

    /** The interval that holds an energy; below the first energy, or beyond from the last on. */
    private int interval(double energyMeV) {
        if (energyMeV < energies[0]) {
            return BELOW;
        }
        for (int i = 0; i + 1 < energies.length; i++) {
            if (energyMeV < energies[i + 1]) {
                return i;
            }
        }
        return ABOVE;
    }
}
