// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.spectrum;

import bermwright.foundation.InputException;
import bermwright.foundation.InputException.Place;
import bermwright.foundation.Require;
import bermwright.shielding.material.UserTable;
import java.nio.file.Path;
import java.util.List;

/** A user's own event: integral fluence by energy, joined by power laws; nothing above the last energy. */
public final class TabulatedSpectrum implements EventSpectrum {
    /** Least and greatest energy a table may hold (MeV). */
    private static final double LEAST_MEV = 0.1;
    private static final double GREATEST_MEV = 1e5;
    private static final double GREATEST_FLUENCE = 1e14;
    private static final double CM2_IN_M2 = 1e4;

    private final String name;
    private final double[] energies;
    private final double[] fluences;

    private TabulatedSpectrum(String name, double[] energies, double[] fluences) {
        this.name = name;
        this.energies = energies;
        this.fluences = fluences;
    }

    /**
     * A spectrum from points.
     *
     * @param name     name of the event
     * @param energies energies (MeV), rising, at least two
     * @param fluences protons above each energy (1/m2), zero or more, never rising
     * @return the spectrum
     * @throws IllegalArgumentException if energies do not rise, or a fluence is negative or rises
     */
    public static TabulatedSpectrum of(String name, double[] energies, double[] fluences) {
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
        return new TabulatedSpectrum(name, energies.clone(), fluences.clone());
    }

    /**
     * Reads a spectrum from CSV with the columns {@code energy_MeV,fluence_above_per_cm2}.
     *
     * @param file the file
     * @return the spectrum, named after the file
     * @throws InputException if the file cannot be read, energies do not rise, or a fluence is negative or rises
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
        double[] perSquareMetre = java.util.Arrays.stream(fluences).map(f -> f * CM2_IN_M2).toArray();
        return of(String.valueOf(file.getFileName()), table.column(0), perSquareMetre);
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public double above(double energyMeV) {
        int i = interval(energyMeV);
        if (i < 0) {
            return i == -1 ? fluences[0] : 0;
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
        if (i < 0) {
            return 0;
        }
        return fluences[i + 1] <= 0 ? fluences[i] / (energies[i + 1] - energies[i])
                : above(energyMeV) * index(i) / energyMeV;
    }

    @Override
    public Range range() {
        return new Range(energies[0], energies[energies.length - 1]);
    }

    @Override
    public String source() {
        return "handed over by the user as " + name;
    }

    private double index(int i) {
        return Math.log(fluences[i] / fluences[i + 1]) / Math.log(energies[i + 1] / energies[i]);
    }

    /** The interval that holds an energy; -1 below the first energy, -2 from the last on. */
    private int interval(double energyMeV) {
        if (energyMeV < energies[0]) {
            return -1;
        }
        for (int i = 0; i + 1 < energies.length; i++) {
            if (energyMeV < energies[i + 1]) {
                return i;
            }
        }
        return -2;
    }
}
