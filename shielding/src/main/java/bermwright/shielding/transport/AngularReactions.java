// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Material;

/**
 * What reactions of hadrons in a material make, with the mean angle to the projectile, ahead and back: the part of a
 * medium that a slab needs beyond the straight march.
 */
final class AngularReactions {
    private static final double PER_GCM2 = 6.02214e-4;
    /** Mean cosine with which elastic collisions are carried. */
    static final double ELASTIC_COSINE = 0.45;
    /** Share of the fast pions that come to rest which are negative. */
    private static final double NEGATIVE = 0.5;

    private final Medium medium;
    private final EnergyGrid grid;
    private final int from;
    private final double[][][][] number;
    private final double[][][][] cosine;
    private final double[] elastic;
    private final double[][][] slow;
    private final double[][] slowTotal;
    private final double[][] neutralPions;
    private final double[][] gammas;
    private final double[][] slowNegative;
    private final double[][] captured = new double[2][];
    private final double[] capturedSlow = new double[SlowCrossSections.GROUPS];
    private double capturedGammas;

    AngularReactions(Medium medium) {
        this.medium = medium;
        grid = medium.grid();
        from = medium.fastFrom();
        int n = grid.size();
        number = new double[Medium.HADRONS][Medium.HADRONS][n][];
        cosine = new double[Medium.HADRONS][Medium.HADRONS][n][];
        elastic = new double[n];
        slow = new double[Medium.HADRONS][n][SlowCrossSections.GROUPS];
        slowTotal = new double[Medium.HADRONS][n];
        neutralPions = new double[Medium.HADRONS][n];
        gammas = new double[Medium.HADRONS][n];
        slowNegative = new double[Medium.HADRONS][n];
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = from; k < n; k++) {
                fill(p, k);
            }
        }
        for (int k = from; k < n; k++) {
            fillElastic(k);
        }
        fillCapture();
    }

    /** Products per areal density and bin of a hadron of energy k: for each energy up to k, per energy (1/MeV). */
    double[] number(int projectile, int product, int k) {
        return number[projectile][product][k];
    }

    /** Their mean cosines to the projectile. */
    double[] cosine(int projectile, int product, int k) {
        return cosine[projectile][product][k];
    }

    /**
     * Elastic collisions of nucleons of energy k with nuclei (1 per g/cm2), fewer than there are but each with a mean
     * cosine of {@link #ELASTIC_COSINE}, so that they turn nucleons aside as much.
     */
    double elastic(int k) {
        return elastic[k];
    }

    /** Slow neutrons by group per areal density of a hadron of energy k. */
    double[] slow(int projectile, int k) {
        return slow[projectile][k];
    }

    /** Slow neutrons of all groups per areal density of a hadron of energy k. */
    double slowTotal(int projectile, int k) {
        return slowTotal[projectile][k];
    }

    /** Energy of neutral pions (MeV) per areal density of a hadron of energy k. */
    double neutralPions(int projectile, int k) {
        return neutralPions[projectile][k];
    }

    /** Energy of gammas of nuclei (MeV) per areal density of a hadron of energy k. */
    double gammas(int projectile, int k) {
        return gammas[projectile][k];
    }

    /** Negative pions too slow to be followed per areal density of a hadron of energy k. */
    double slowNegative(int projectile, int k) {
        return slowNegative[projectile][k];
    }

    /** Fast nucleons (0 neutrons, 1 protons) by energy (1/MeV) of one negative pion that is captured. */
    double[] captured(int nucleon) {
        return captured[nucleon];
    }

    /** Slow neutrons by group of one negative pion that is captured. */
    double[] capturedSlow() {
        return capturedSlow;
    }

    /** Energy of gammas of nuclei (MeV) of one negative pion that is captured. */
    double capturedGammas() {
        return capturedGammas;
    }

    /** Share of pions that come to rest which are captured, the negative ones. */
    static double negative() {
        return NEGATIVE;
    }

    private void fill(int p, int k) {
        MaterialYields yields = medium.yields(p, k);
        for (int out = 0; out < Medium.HADRONS; out++) {
            double[] ahead = medium.products(p, out, k);
            double[] back = medium.spread(yields, CascadeYields.Fast.values()[2 * out + 1], k);
            number[p][out][k] = new double[k + 1];
            cosine[p][out][k] = new double[k + 1];
            for (int i = from; i <= k; i++) {
                double all = ahead[i] + back[i];
                number[p][out][k][i] = all;
                cosine[p][out][k][i] = all <= 0 ? 1 : (ahead[i] * yields.cosine(CascadeYields.Fast.values()[2 * out],
                        grid.energyMeV(i)) + back[i] * yields.cosine(CascadeYields.Fast.values()[2 * out + 1],
                        grid.energyMeV(i))) / all;
            }
        }
        double[] groups = yields.slow();
        for (int g = 0; g < groups.length; g++) {
            slow[p][k][g + 1] += groups[g];
            slowTotal[p][k] += groups[g];
        }
        neutralPions[p][k] = yields.energy()[0];
        gammas[p][k] = yields.energy()[6];
        slowNegative[p][k] = yields.slowNegative();
    }

    private void fillElastic(int k) {
        for (Material.Part part : medium.material().parts()) {
            double sigma = part.moles() * PER_GCM2 * NucleonReactions.elasticMb(part.element(), grid.energyMeV(k));
            elastic[k] += sigma <= 0 ? 0 : sigma
                    * (1 - NucleonReactions.elasticCosine(part.element(), grid.energyMeV(k))) / (1 - ELASTIC_COSINE);
        }
    }

    /** Pions are caught by atoms in proportion to the charge of the nucleus (Fermi and Teller 1947). */
    private void fillCapture() {
        int top = from;
        while (grid.energyMeV(top + 1) < CascadeYields.STOPPED_MEV) {
            top++;
        }
        MaterialYields yields = MaterialYields.ofStoppedPions(medium.material());
        for (int nucleon = 0; nucleon < 2; nucleon++) {
            captured[nucleon] = new double[grid.size()];
            for (int way = 0; way < 2; way++) {
                double[] made = medium.spread(yields, CascadeYields.Fast.values()[2 * nucleon + way], top + 1);
                for (int i = 0; i <= top; i++) {
                    captured[nucleon][i] += made[i];
                }
            }
        }
        double[] groups = yields.slow();
        System.arraycopy(groups, 0, capturedSlow, 1, groups.length);
        capturedGammas = yields.energy()[6];
    }
}
