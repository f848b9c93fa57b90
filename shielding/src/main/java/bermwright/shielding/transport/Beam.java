// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Require;
import bermwright.shielding.spectrum.CosmicSpectrum;
import bermwright.shielding.spectrum.EventSpectrum;
import java.util.Arrays;

/**
 * Particles on their way straight ahead: fluence by species and energy (1/m2/MeV per nucleon, per second for cosmic
 * rays), and the energy that electrons and gammas carry (MeV/m2).
 */
public final class Beam {
    private final double[][] fluence;
    private double electromagnetic;

    private Beam(double[][] fluence, double electromagnetic) {
        this.fluence = fluence;
        this.electromagnetic = electromagnetic;
    }

    /**
     * Cosmic rays from all directions, for one second.
     *
     * @param spectrum the spectrum
     * @param grid     energies
     * @param cutoffGV rigidity below which nothing arrives (GV), zero or more
     * @return fluence rates over the whole sphere
     */
    public static Beam cosmic(CosmicSpectrum spectrum, EnergyGrid grid, double cutoffGV) {
        Require.notNegative("cut-off rigidity", cutoffGV, "GV");
        double[][] fluence = new double[Medium.SPECIES][grid.size()];
        for (int z = 1; z <= CosmicSpectrum.GREATEST_CHARGE; z++) {
            for (int i = 0; i < grid.size(); i++) {
                double energy = grid.energyMeV(i);
                if (CosmicSpectrum.rigidityGV(z, energy) >= cutoffGV) {
                    fluence[z][i] = 4 * Math.PI * spectrum.flux(z, energy);
                }
            }
        }
        return new Beam(fluence, 0);
    }

    /**
     * Protons of a solar particle event, for the whole event.
     *
     * @param spectrum the spectrum
     * @param grid     energies
     * @return fluences over the whole sphere
     */
    public static Beam event(EventSpectrum spectrum, EnergyGrid grid) {
        double[][] fluence = new double[Medium.SPECIES][grid.size()];
        for (int i = 0; i < grid.size(); i++) {
            fluence[1][i] = spectrum.perMeV(grid.energyMeV(i));
        }
        return new Beam(fluence, 0);
    }

    /** Some species by energy, and the energy of electrons and gammas. */
    static Beam made(int[] species, double[][] kinds, double electromagnetic) {
        double[][] fluence = new double[Medium.SPECIES][];
        for (int k = 0; k < species.length; k++) {
            fluence[species[k]] = kinds[k].clone();
        }
        for (int s = 0; s < fluence.length; s++) {
            fluence[s] = fluence[s] == null ? new double[kinds[0].length] : fluence[s];
        }
        return new Beam(fluence, electromagnetic);
    }

    /**
     * A copy that may go its own way.
     *
     * @return the copy
     */
    public Beam copy() {
        double[][] copy = new double[fluence.length][];
        for (int s = 0; s < copy.length; s++) {
            copy[s] = fluence[s].clone();
        }
        return new Beam(copy, electromagnetic);
    }

    /** The beam times a factor. */
    Beam times(double factor) {
        return new Beam(new double[fluence.length][fluence[0].length], 0).and(this, factor);
    }

    /**
     * Ions and protons that no reaction turned aside, without what reactions made.
     *
     * @return a beam of its own
     */
    public Beam straight() {
        double[][] alone = new double[fluence.length][fluence[0].length];
        for (int z = 1; z <= CosmicSpectrum.GREATEST_CHARGE; z++) {
            alone[z] = fluence[z].clone();
        }
        return new Beam(alone, 0);
    }

    /** This beam and another one times a factor. */
    Beam and(Beam other, double factor) {
        Beam sum = copy();
        for (int s = 0; s < fluence.length; s++) {
            for (int i = 0; i < fluence[s].length; i++) {
                sum.fluence[s][i] += factor * other.fluence[s][i];
            }
        }
        sum.electromagnetic += factor * other.electromagnetic;
        return sum;
    }

    /**
     * The ions of some charges alone, without anything else.
     *
     * @param least    least charge (1), 2 or more
     * @param greatest greatest charge (1), 28 or less
     * @return a beam of its own
     */
    public Beam ions(int least, int greatest) {
        Require.within("least charge", least, 2, greatest, "");
        Require.within("greatest charge", greatest, least, CosmicSpectrum.GREATEST_CHARGE, "");
        double[][] alone = new double[fluence.length][fluence[0].length];
        for (int z = least; z <= greatest; z++) {
            alone[z] = fluence[z].clone();
        }
        return new Beam(alone, 0);
    }

    /**
     * Whether nothing flies.
     *
     * @return true if each fluence is nought and there are no electrons and gammas
     */
    public boolean isEmpty() {
        return electromagnetic == 0 && Arrays.stream(fluence).flatMapToDouble(Arrays::stream).allMatch(f -> f == 0);
    }

    /**
     * Fluence of a species at an energy.
     *
     * @param species 0 neutrons, 1 to 28 ions by charge, 29 charged pions, 30 protons that reactions made,
     *                31 muons
     * @param i       index of the energy
     * @return fluence (1/m2/MeV per nucleon), zero or more
     */
    public double fluence(int species, int i) {
        return fluence[species][i];
    }

    /**
     * Energy that electrons and gammas carry.
     *
     * @return energy fluence (MeV/m2), zero or more
     */
    public double electromagnetic() {
        return electromagnetic;
    }

    double[] of(int species) {
        return fluence[species];
    }

    void electromagnetic(double energy) {
        electromagnetic = energy;
    }
}
