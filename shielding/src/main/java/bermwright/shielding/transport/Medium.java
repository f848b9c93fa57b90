// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Material;
import bermwright.shielding.spectrum.CosmicSpectrum;

/**
 * A material made ready for transport on an energy grid: ranges, reactions and what they make. Species: 0 neutrons, 1
 * to 28 ions by charge, 29 charged pions, 30 protons that reactions made, 31 muons.
 */
public final class Medium {
    static final int NEUTRON = 0;
    static final int PION = CosmicSpectrum.GREATEST_CHARGE + 1;
    /** Protons that the cascade made, which go their way at an angle. */
    static final int MADE_PROTON = PION + 1;
    static final int MUON = MADE_PROTON + 1;
    static final int SPECIES = MUON + 1;
    /** Projectiles and products that the cascade knows: neutron, proton, pion. */
    static final int HADRONS = 3;

    private static final CascadeYields.Fast[] AHEAD = {CascadeYields.Fast.NEUTRON_AHEAD,
        CascadeYields.Fast.PROTON_AHEAD, CascadeYields.Fast.PION_AHEAD};
    private static final double PION_MEV = 139.57;
    private static final double PROTON_MEV = 938.272;
    private static final double PER_GCM2 = 6.02214e-4;
    /** Parts of a step of the grid over which products are counted. */
    private static final int PARTS = 4;
    /** The same for the step below the projectile, where elastic collisions leave nucleons. */
    private static final int PARTS_AT_TOP = 40;

    private final Material material;
    private final EnergyGrid grid;
    private final Stopping stopping;
    private final double[][] range = new double[SPECIES][];
    private final double[][] loss = new double[SPECIES][];
    private final double[][] reactions = new double[SPECIES][];
    private final double[][][][] products;
    private final MaterialYields[][] yields;
    private final double[][] electromagnetic;
    private final double[][][] local;
    private final double[][] cosine;
    private final Muons muons;
    private final Fragmentation fragmentation;
    private final int fastFrom;

    /**
     * Prepares a material.
     *
     * @param material the material
     * @param grid     energies
     */
    public Medium(Material material, EnergyGrid grid) {
        this.material = material;
        this.grid = grid;
        stopping = Stopping.in(material);
        int first = 0;
        while (grid.upperMeV(first) <= CascadeYields.FAST_FROM_MEV) {
            first++;
        }
        fastFrom = first;
        fragmentation = new Fragmentation(material);
        for (int s = 0; s < SPECIES; s++) {
            fillSpecies(s);
        }
        products = new double[HADRONS][HADRONS][grid.size()][];
        yields = new MaterialYields[HADRONS][grid.size()];
        electromagnetic = new double[HADRONS][grid.size()];
        local = new double[HADRONS][grid.size()][5];
        for (int p = 0; p < HADRONS; p++) {
            for (int k = fastFrom; k < grid.size(); k++) {
                fillProducts(p, k);
            }
        }
        muons = new Muons(grid, material.density());
        cosine = cosines();
    }

    /**
     * The material.
     *
     * @return the material
     */
    public Material material() {
        return material;
    }

    EnergyGrid grid() {
        return grid;
    }

    Stopping stopping() {
        return stopping;
    }

    Fragmentation fragmentation() {
        return fragmentation;
    }

    /** Range (g/cm2) at each energy; none for neutrons. */
    double[] range(int species) {
        return range[species];
    }

    /** Energy lost per nucleon (MeV per g/cm2) at each energy; none for neutrons. */
    double[] loss(int species) {
        return loss[species];
    }

    /** Reactions, and decay of pions (1 per g/cm2), at each energy. */
    double[] reactions(int species) {
        return reactions[species];
    }

    /** Mean cosine between the way of made hadrons (0 neutrons, 1 protons, 2 pions) and the straight line. */
    double cosine(int hadron, int i) {
        return cosine[hadron][i];
    }

    /** First energy of the grid that the cascade makes particles at. */
    int fastFrom() {
        return fastFrom;
    }

    /** Products per areal density and bin of a hadron of energy k: for each energy up to k, per energy (1/MeV). */
    double[] products(int projectile, int product, int k) {
        return products[projectile][product][k];
    }

    /** What a hadron of energy k makes per areal density. */
    MaterialYields yields(int projectile, int k) {
        return yields[projectile][k];
    }

    Muons muons() {
        return muons;
    }

    /** Energy of neutral pions (MeV) per areal density of a hadron of energy k. */
    double electromagnetic(int projectile, int k) {
        return electromagnetic[projectile][k];
    }

    /** Energy left on the spot (MeV per g/cm2): slow and evaporated protons, hydrogen-2 and -3, helium, recoil. */
    double[] local(int projectile, int k) {
        return local[projectile][k];
    }

    private void fillSpecies(int s) {
        int n = grid.size();
        double mass = s >= PION || s < 2 ? 1 : CosmicSpectrum.massNumber(s);
        reactions[s] = new double[n];
        if (s != NEUTRON) {
            loss[s] = new double[n];
            range[s] = new double[n];
        }
        for (int i = 0; i < n; i++) {
            double energy = grid.energyMeV(i);
            reactions[s][i] = reactions(s, mass, energy);
            if (s != NEUTRON) {
                loss[s][i] = loss(s, mass, energy);
                range[s][i] = i == 0 ? energy / loss[s][0] : range[s][i - 1] + between(s, mass, i);
            }
        }
    }

    private double between(int s, double mass, int i) {
        double low = grid.energyMeV(i - 1);
        double middle = Math.sqrt(low * grid.energyMeV(i));
        return (low / loss[s][i - 1] + 4 * middle / loss(s, mass, middle) + grid.energyMeV(i) / loss[s][i])
                * grid.step() / 6;
    }

    private double loss(int s, double mass, double energy) {
        if (s == PION || s == MUON) {
            double share = energy / (s == PION ? PION_MEV : Muons.MUON_MEV);
            return stopping.protonMeVPerGCm2(Math.min(Stopping.GREATEST_MEV, share * PROTON_MEV));
        }
        double e = Math.min(energy, Stopping.GREATEST_MEV);
        return s == 1 || s == MADE_PROTON ? stopping.protonMeVPerGCm2(e) : stopping.ionMeVPerGCm2(s, e) / mass;
    }

    private double reactions(int s, double mass, double energy) {
        if (s < 2 || s == MADE_PROTON) {
            return energy < CascadeYields.FAST_FROM_MEV / 2 ? 0
                    : NucleonReactions.perGCm2(s == NEUTRON, material, energy);
        }
        if (s == MUON) {
            return Muons.ownDecays(energy, material.density());
        }
        if (s != PION) {
            return IonReactions.perGCm2(s, mass, material, energy);
        }
        double sum = Muons.decays(energy, material.density());
        for (Material.Part part : material.parts()) {
            sum += part.moles() * PER_GCM2 * crossSectionMb(CascadeYields.Projectile.PION, part, energy);
        }
        return sum;
    }

    static double crossSectionMb(CascadeYields.Projectile projectile, Material.Part part, double energy) {
        if (projectile == CascadeYields.Projectile.PION && part.element().charge() > 1) {
            return CascadeYields.of(projectile, part.element()).crossSectionMb(energy);
        }
        return NucleonReactions.crossSectionMb(projectile == CascadeYields.Projectile.NEUTRON, part.element(), energy);
    }

    private void fillProducts(int p, int k) {
        MaterialYields made = MaterialYields.of(CascadeYields.Projectile.values()[p], material, grid.energyMeV(k));
        yields[p][k] = made;
        for (int out = 0; out < HADRONS; out++) {
            products[p][out][k] = spread(made, AHEAD[out], k);
        }
        double[] energies = made.energy();
        electromagnetic[p][k] = energies[0] + energies[energies.length - 1];
        System.arraycopy(energies, 1, local[p][k], 0, local[p][k].length);
    }

    /** Gives each product to the two energies it lies between, so that number and energy are kept (1/MeV). */
    double[] spread(MaterialYields made, CascadeYields.Fast product, int k) {
        double[] sums = new double[k + 1];
        double above = 0;
        for (int i = k - 1; i >= fastFrom; i--) {
            double low = grid.energyMeV(i);
            double width = grid.energyMeV(i + 1) - low;
            double all = made.above(product, i == fastFrom ? 0 : low);
            int parts = i == k - 1 ? PARTS_AT_TOP : PARTS;
            double mean = (above + all) / (2 * parts);
            for (int part = 1; part < parts; part++) {
                mean += made.above(product, low + width * part / parts) / parts;
            }
            sums[i + 1] += (mean - above) / grid.widthMeV(i + 1);
            sums[i] += (all - mean) / grid.widthMeV(i);
            above = all;
        }
        return sums;
    }

    /**
     * Mean cosines from the top energy down: that of emission times that of the parent's own way, parents weighted as
     * in a spectrum that falls with the square of the energy; half of the protons that react are straight ones.
     */
    private double[][] cosines() {
        double[][] mean = new double[HADRONS][grid.size()];
        for (double[] row : mean) {
            java.util.Arrays.fill(row, 1);
        }
        for (int i = grid.size() - 2; i >= fastFrom; i--) {
            for (int o = 0; o < HADRONS; o++) {
                double sum = 0;
                double weights = 0;
                for (int k = i + 1; k < grid.size(); k++) {
                    for (int p = 0; p < 2; p++) {
                        double weight = products[p][o][k][i] / grid.energyMeV(k);
                        double parent = p == 0 ? mean[0][k] : (1 + mean[1][k]) / 2;
                        weights += weight;
                        sum += weight * parent * emission(p, o, k, i);
                    }
                }
                mean[o][i] = weights > 0 ? sum / weights : mean[o][i + 1];
            }
        }
        for (int i = 0; i < fastFrom; i++) {
            for (double[] row : mean) {
                row[i] = row[fastFrom];
            }
        }
        return mean;
    }

    private double emission(int p, int o, int k, int i) {
        return yields[p][k].cosine(AHEAD[o], grid.energyMeV(i));
    }
}
