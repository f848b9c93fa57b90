// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Require;
import bermwright.shielding.spectrum.CosmicSpectrum;
import java.util.HashMap;
import java.util.Map;

/**
 * Carries a beam ahead through one medium: continuous slowing down along the characteristics, ions from heavy to light,
 * nucleons and pions by predictor and corrector, so that coarse steps stay stable and second order. What arrives and
 * its fragments go straight; hadrons that reactions make go at the mean angle of their energy.
 *
 * <p>Neutral pions hand their energy to electrons and gammas, which give it up with the mean depth of showers; slow
 * neutrons are not carried but counted where they are made.
 */
public final class BeamTransport {
    /** Mean depth over which showers of some hundred MeV give up their energy, in radiation lengths. */
    private static final double SHOWER_LENGTHS = 3;
    /** Radiation length of silicate and air is near 716.4 A/[Z(Z+1) ln(287/sqrt Z)]. */
    private static final double RADIATION_LENGTH = 716.4;
    private static final double NEGLIGIBLE = 1e-12;
    private static final double FLOOR = 1e-300;

    private final Medium medium;
    private final int size;
    private final double showerLength;
    private final Map<Double, Steps> steps = new HashMap<>();
    private final double[] shiftedPhi;
    private final double[] start;

    /** What belongs to a step length: where each energy comes from, and how it is thinned out. */
    private record Steps(int[][] from, double[][] share, double[][] factor) {
    }

    /**
     * Transport through a medium.
     *
     * @param medium the medium
     */
    public BeamTransport(Medium medium) {
        this.medium = medium;
        size = medium.grid().size();
        shiftedPhi = new double[size];
        start = new double[size];
        double inverse = medium.material().parts().stream().mapToDouble(part -> {
            double z = part.element().charge();
            return part.share() * z * (z + 1) * Math.log(287 / Math.sqrt(z))
                    / (RADIATION_LENGTH * part.element().atomicWeight());
        }).sum();
        showerLength = SHOWER_LENGTHS / inverse;
    }

    /**
     * The medium.
     *
     * @return the medium
     */
    public Medium medium() {
        return medium;
    }

    /**
     * Mean depth over which electrons and gammas give up their energy.
     *
     * @return areal density (g/cm2), positive
     */
    public double showerLengthGCm2() {
        return showerLength;
    }

    /**
     * Carries a beam on by one step.
     *
     * @param beam  the beam, changed by this
     * @param hGCm2 step (g/cm2), positive
     */
    public void step(Beam beam, double hGCm2) {
        Require.positive("step", hGCm2, "g/cm2");
        Steps whole = steps.computeIfAbsent(hGCm2, this::steps);
        double[][] before = production(beam);
        double gammas = electromagnetic(beam);
        double[] speedNeutrons = new double[size];
        double[] speedProtons = new double[size];
        ions(beam, hGCm2, whole, speedNeutrons, speedProtons);
        straightProtons(beam, hGCm2, whole, speedProtons);
        double[] muons = medium.muons().source(beam.of(Medium.PION));
        double[][] old = {beam.of(Medium.NEUTRON).clone(), beam.of(Medium.MADE_PROTON).clone(),
            beam.of(Medium.PION).clone()};
        hadrons(beam, hGCm2, old, new double[][][] {before, before}, speedNeutrons);
        double[][] after = production(beam);
        hadrons(beam, hGCm2, old, new double[][][] {before, after}, speedNeutrons);
        muons(beam, hGCm2, muons, whole);
        double source = (gammas + electromagnetic(beam)) / 2;
        double left = Math.exp(-hGCm2 / showerLength);
        beam.electromagnetic(beam.electromagnetic() * left + source * showerLength * (1 - left));
    }

    /** Carries ions and the protons that go straight on by one step (g/cm2), without what reactions make. */
    void straight(Beam beam, double hGCm2) {
        Require.positive("step", hGCm2, "g/cm2");
        Steps whole = steps.computeIfAbsent(hGCm2, this::steps);
        double[] speedProtons = new double[size];
        ions(beam, hGCm2, whole, new double[size], speedProtons);
        straightProtons(beam, hGCm2, whole, speedProtons);
    }

    /** Neutrons that ions let go where a beam is, at their own speed (1/m2/MeV per g/cm2). */
    double[] letGo(Beam beam) {
        double[] sum = new double[size];
        for (int z = 2; z <= CosmicSpectrum.GREATEST_CHARGE; z++) {
            double[] phi = beam.of(z);
            double[] reactions = medium.reactions(z);
            double yield = medium.fragmentation().neutrons(z);
            for (int i = 0; i < size; i++) {
                sum[i] += yield * reactions[i] * phi[i];
            }
        }
        return sum;
    }

    /** Energy that reactions leave on the spot, by kind (MeV per g/cm2 and m2). */
    double[] local(Beam beam) {
        double[] sum = new double[medium.local(0, 0).length];
        double[][] hadrons = effective(beam);
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = medium.fastFrom(); k < size; k++) {
                double number = hadrons[p][k] * medium.grid().widthMeV(k);
                double[] kinds = medium.local(p, k);
                for (int e = 0; e < sum.length; e++) {
                    sum[e] += number * kinds[e];
                }
            }
        }
        return sum;
    }

    private double electromagnetic(Beam beam) {
        double sum = 0;
        double[][] hadrons = effective(beam);
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = medium.fastFrom(); k < size; k++) {
                sum += hadrons[p][k] * medium.grid().widthMeV(k) * medium.electromagnetic(p, k);
            }
        }
        return sum;
    }

    /** Hadrons that react: single ones, and the participants of ions counted as single nucleons. */
    double[][] effective(Beam beam) {
        double[][] sum = {beam.of(Medium.NEUTRON).clone(), beam.of(1).clone(), beam.of(Medium.PION)};
        for (int i = 0; i < size; i++) {
            sum[1][i] += beam.of(Medium.MADE_PROTON)[i];
        }
        for (int z = 2; z <= CosmicSpectrum.GREATEST_CHARGE; z++) {
            double mass = CosmicSpectrum.massNumber(z);
            double participants = medium.fragmentation().participants(z);
            double[] phi = beam.of(z);
            double[] ion = medium.reactions(z);
            double[] nucleon = medium.reactions(1);
            for (int i = medium.fastFrom(); i < size; i++) {
                double number = nucleon[i] <= 0 ? 0 : phi[i] * participants * ion[i] / nucleon[i];
                sum[1][i] += number * z / mass;
                sum[0][i] += number * (1 - z / mass);
            }
        }
        return sum;
    }

    private double[][] production(Beam beam) {
        double[][] out = new double[Medium.HADRONS][size];
        double[][] hadrons = effective(beam);
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = medium.fastFrom(); k < size; k++) {
                double number = hadrons[p][k] * medium.grid().widthMeV(k);
                if (number <= 0) {
                    continue;
                }
                for (int o = 0; o < Medium.HADRONS; o++) {
                    double[] products = medium.products(p, o, k);
                    double[] sum = out[o];
                    for (int i = medium.fastFrom(); i <= k; i++) {
                        sum[i] += number * products[i];
                    }
                }
            }
        }
        return out;
    }

    private void ions(Beam beam, double h, Steps whole, double[] speedNeutrons, double[] speedProtons) {
        double[][] sourceBefore = new double[CosmicSpectrum.GREATEST_CHARGE + 1][size];
        double[][] sourceAfter = new double[CosmicSpectrum.GREATEST_CHARGE + 1][size];
        for (int z = CosmicSpectrum.GREATEST_CHARGE; z >= 2; z--) {
            double[] phi = beam.of(z);
            if (isNegligible(phi) && isNegligible(sourceBefore[z])) {
                java.util.Arrays.fill(phi, 0);
                continue;
            }
            addFragments(z, phi, sourceBefore);
            double self = medium.fragmentation().yield(z, z);
            double[] reactions = medium.reactions(z);
            for (int i = 0; i < size; i++) {
                start[i] = phi[i] + h / 2 * sourceBefore[z][i];
            }
            shift(start, whole, z);
            for (int i = 0; i < size; i++) {
                phi[i] = shiftedPhi[i] * Math.exp(self * reactions[i] * h) + h / 2 * sourceAfter[z][i];
            }
            addFragments(z, phi, sourceAfter);
        }
        for (int i = 0; i < size; i++) {
            speedNeutrons[i] = (sourceBefore[0][i] + sourceAfter[0][i]) / 2;
            speedProtons[i] = (sourceBefore[1][i] + sourceAfter[1][i]) / 2;
        }
    }

    private void addFragments(int z, double[] phi, double[][] source) {
        double[] reactions = medium.reactions(z);
        for (int j = 0; j < z; j++) {
            double yield = j == 0 ? medium.fragmentation().neutrons(z) : medium.fragmentation().yield(z, j);
            if (yield > 0) {
                double[] sum = source[j];
                for (int i = 0; i < size; i++) {
                    sum[i] += yield * reactions[i] * phi[i];
                }
            }
        }
    }

    private static boolean isNegligible(double[] values) {
        for (double value : values) {
            if (value > NEGLIGIBLE) {
                return false;
            }
        }
        return true;
    }

    /** Protons that go straight: the incident ones and those that ions let go. */
    private void straightProtons(Beam beam, double h, Steps whole, double[] source) {
        double[] phi = beam.of(1);
        for (int i = 0; i < size; i++) {
            start[i] = phi[i] + h / 2 * source[i];
        }
        shift(start, whole, 1);
        for (int i = 0; i < size; i++) {
            phi[i] = shiftedPhi[i] + h / 2 * source[i];
        }
    }

    private void muons(Beam beam, double h, double[] before, Steps whole) {
        double[] phi = beam.of(Medium.MUON);
        double[] after = medium.muons().source(beam.of(Medium.PION));
        for (int i = 0; i < size; i++) {
            start[i] = phi[i] + h / cosine(Medium.MUON, i) / 2 * before[i];
        }
        shift(start, whole, Medium.MUON);
        for (int i = 0; i < size; i++) {
            phi[i] = shiftedPhi[i] + h / cosine(Medium.MUON, i) / 2 * after[i];
        }
    }

    private void hadrons(Beam beam, double h, double[][] old, double[][][] made, double[] speedNeutrons) {
        double[][] before = made[0];
        double[][] after = made[1];
        Steps whole = steps.computeIfAbsent(h, this::steps);
        Steps half = steps.computeIfAbsent(h / 2, this::steps);
        int[] species = {Medium.NEUTRON, Medium.MADE_PROTON, Medium.PION};
        for (int o = 0; o < Medium.HADRONS; o++) {
            double[] phi = beam.of(species[o]);
            double[] first = new double[size];
            double[] middle = new double[size];
            for (int i = 0; i < size; i++) {
                double path = h / medium.cosine(o, i);
                double fragment = o == 0 ? speedNeutrons[i] * medium.cosine(0, i) : 0;
                first[i] = old[o][i] + path / 6 * (before[o][i] + fragment);
                middle[i] = path / 3 * (before[o][i] + after[o][i] + 2 * fragment);
                phi[i] = path / 6 * (after[o][i] + fragment);
            }
            shift(first, whole, species[o]);
            for (int i = 0; i < size; i++) {
                phi[i] += shiftedPhi[i];
            }
            shift(middle, half, species[o]);
            for (int i = 0; i < size; i++) {
                phi[i] += shiftedPhi[i];
            }
        }
    }

    /** Moves a spectrum down the characteristics of one species. */
    private void shift(double[] phi, Steps step, int species) {
        double[] factor = step.factor[species];
        if (species == Medium.NEUTRON) {
            for (int i = 0; i < size; i++) {
                shiftedPhi[i] = phi[i] * factor[i];
            }
            return;
        }
        int[] from = step.from[species];
        double[] share = step.share[species];
        for (int i = 0; i < size; i++) {
            int k = from[i];
            double low = phi[k];
            double high = phi[k + 1];
            double value = low > FLOOR && high > FLOOR ? low * Math.exp(share[i] * Math.log(high / low))
                    : low + share[i] * (high - low);
            shiftedPhi[i] = value * factor[i];
        }
    }

    private Steps steps(double h) {
        int[][] from = new int[Medium.SPECIES][size];
        double[][] share = new double[Medium.SPECIES][size];
        double[][] factor = new double[Medium.SPECIES][size];
        for (int s = 0; s < Medium.SPECIES; s++) {
            double[] reactions = medium.reactions(s);
            for (int i = 0; i < size; i++) {
                double path = h / cosine(s, i);
                if (s == Medium.NEUTRON) {
                    factor[s][i] = Math.exp(-reactions[i] * path);
                    continue;
                }
                double[] range = medium.range(s);
                double[] loss = medium.loss(s);
                double wanted = range[i] + path;
                int k = Math.min(i, size - 2);
                while (k < size - 2 && range[k + 1] < wanted) {
                    k++;
                }
                double w = Math.log(wanted / range[k]) / Math.log(range[k + 1] / range[k]);
                from[s][i] = k;
                share[s][i] = Math.min(1, w);
                double w1 = share[s][i];
                double lossThere = loss[k] * Math.pow(loss[k + 1] / loss[k], w1);
                double there = reactions[k] + w1 * (reactions[k + 1] - reactions[k]);
                factor[s][i] = lossThere / loss[i] * Math.exp(-(reactions[i] + there) / 2 * path);
            }
        }
        return new Steps(from, share, factor);
    }

    private double cosine(int species, int i) {
        if (species == Medium.NEUTRON) {
            return medium.cosine(0, i);
        }
        return species == Medium.MADE_PROTON ? medium.cosine(1, i) : species == Medium.PION || species == Medium.MUON
                ? medium.cosine(2, i) : 1;
    }
}
