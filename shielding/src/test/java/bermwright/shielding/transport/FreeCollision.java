// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.SplittableRandom;

/**
 * Collisions of free nucleons and pions by published parametrisations.
 *
 * @see "Cugnon, L'Hote and Vandermeulen (1996), Nucl. Instrum. Methods B 111, 215 (cross sections, angles); Review of
 *     Particle Physics (1996), Phys. Rev. D 54, 1, p. 191 (fast hadrons); Schuler and Sjostrand (1994), Phys. Rev. D
 *     49, 2257 (slopes); Cugnon et al. (1981), Nucl. Phys. A 352, 505 (pion and nucleon); Ranft (1989), Z. Phys. C 43,
 *     439 (formation); from memory"
 */
final class FreeCollision {
    static final double PION = 138.04;

    /** Momenta (GeV/c) from which the fits of the Review of Particle Physics hold and join the formulas below. */
    private static final double FAST_ELASTIC = 5.2;
    private static final double FAST_TOTAL = 3;
    static final double FAST_PION = 2.5;

    private FreeCollision() {
    }

    /** Elastic cross section of two nucleons (mb) at a laboratory momentum (GeV/c). */
    static double elastic(boolean like, double p) {
        if (p > FAST_ELASTIC) {
            return fit(p, 11.9, 26.9, -1.21, 0.169, -1.85);
        }
        if (p > 2) {
            return 77 / (p + 1.5);
        }
        if (like) {
            if (p < 0.44) {
                return 34 * Math.pow(Math.max(p, 0.1) / 0.4, -2.104);
            }
            return p < 0.8 ? 23.5 + 1000 * Math.pow(p - 0.7, 4) : 1250 / (50 + p) - 4 * (p - 1.3) * (p - 1.3);
        }
        if (p < 0.45) {
            double log = Math.log(Math.max(p, 0.1));
            return 6.3555 * Math.exp(-3.2481 * log - 0.377 * log * log);
        }
        return p < 0.8 ? 33 + 196 * Math.pow(Math.abs(p - 0.95), 2.5) : 31 / Math.sqrt(p);
    }

    /** Total cross section of two nucleons (mb) at a laboratory momentum (GeV/c). */
    static double total(boolean like, double p) {
        if (p < 0.8) {
            return elastic(like, p);
        }
        if (p > FAST_TOTAL) {
            return like ? fit(p, 48.0, 0, 0, 0.522, -4.51) : fit(p, 47.3, 0, 0, 0.513, -4.27);
        }
        if (like) {
            return p < 1.5 ? 23.5 + 24.6 / (1 + Math.exp(-(p - 1.2) / 0.1))
                    : 41 + 60 * (p - 0.9) * Math.exp(-1.2 * p);
        }
        return p < 2 ? 24.2 + 8.9 * p : 42;
    }

    /** Fits of the Review of Particle Physics to cross sections (mb) by the laboratory momentum (GeV/c). */
    private static double fit(double p, double a, double b, double n, double c, double d) {
        double log = Math.log(p);
        return a + b * Math.pow(p, n) + c * log * log + d * log;
    }

    /** Total cross section of a fast pion (mb), mean of both charges. */
    static double fastPion(double p) {
        return (fit(p, 16.4, 19.3, -0.42, 0.19, 0) + fit(p, 33.0, 14.0, -1.36, 0.456, -4.03)) / 2;
    }

    /** Elastic cross section of a fast pion (mb), mean of both charges. */
    static double fastPionElastic(double p) {
        return (fit(p, 0, 11.4, -0.4, 0.079, 0) + fit(p, 1.76, 11.2, -0.64, 0.043, 0)) / 2;
    }

    /** Slope of elastic scattering in the momentum transfer, (GeV/c)^-2, of two fast hadrons. */
    static double regge(boolean pion, double invariantMass) {
        return 2 * (pion ? 1.4 : 2.3) + 2 * 2.3 + 4 * Math.pow(invariantMass * invariantMass / 1e6, 0.0808) - 4.2;
    }

    /** Total cross section of a pion on a nucleon (mb): the resonance by isospin, and the mean fit above it. */
    static double pion(int pionCharge, int nucleonCharge, double invariantMass) {
        double m = Nuclide.NUCLEON;
        double s = invariantMass * invariantMass;
        double q = Math.sqrt(Math.max(0, (s - (m + PION) * (m + PION)) * (s - (m - PION) * (m - PION))))
                / (2 * invariantMass);
        double weight = pionCharge == 0 ? 2.0 / 3 : pionCharge + 2 * nucleonCharge == 3 || pionCharge == -1
                && nucleonCharge == 0 ? 1 : 1.0 / 3;
        double wide = (invariantMass - 1215) / 110;
        double cube = q * q * q;
        double resonance = 326.5 / (1 + 4 * wide * wide) * cube / (cube + 180.0 * 180 * 180);
        double momentum = Math.max(FAST_PION, (s - m * m - PION * PION) / (2 * m) / 1000);
        return weight * resonance + fastPion(momentum) / (1 + Math.exp(-(invariantMass - 1450) / 50));
    }

    /** Cosine of the scattering angle of an elastic collision of nucleons, centre of mass momentum q (GeV/c). */
    static double elasticCosine(boolean like, double p, double q, SplittableRandom random) {
        double slope;
        double backward = 0;
        if (like) {
            slope = p < 2 ? 5.5 * Math.pow(p, 8) / (7.7 + Math.pow(p, 8)) : 5.334 + 0.67 * (p - 2);
        } else {
            slope = p < 0.225 ? 0 : p < 0.6 ? 16.53 * (p - 0.225) : p < 1.6 ? 7.16 - 1.63 * p
                    : p < 2 ? 5.5 * Math.pow(p, 8) / (7.7 + Math.pow(p, 8)) : 5.334 + 0.67 * (p - 2);
            backward = p < 0.8 ? 1 : 0.64 / (p * p);
        }
        slope = Math.min(slope, regge(false, 2000 * Math.sqrt(q * q + Nuclide.NUCLEON * Nuclide.NUCLEON / 1e6)));
        double cosine = peaked(slope, q, random);
        return random.nextDouble() < backward / (1 + backward) ? -cosine : cosine;
    }

    /** Cosine drawn from exp(slope t), slope in (GeV/c)^-2. */
    static double peaked(double slope, double q, SplittableRandom random) {
        double range = 4 * slope * q * q;
        if (range < 1e-4) {
            return 2 * random.nextDouble() - 1;
        }
        double u = random.nextDouble();
        return 1 + 2 * Math.log(u + (1 - u) * Math.exp(-range)) / range;
    }

    /** Path before a pion made among others is formed (fm): 2 fm/c m2/(m2+pT2), stretched by its motion. */
    static double formation(double[] four) {
        double transverse = four[1] * four[1] + four[2] * four[2];
        double m2 = PION * PION;
        double p = Math.sqrt(transverse + four[3] * four[3]);
        return 2 * m2 / (m2 + transverse) * p / PION;
    }

    /** Number of pions in an inelastic collision of nucleons, by the mean charged multiplicity of protons. */
    static int pions(double invariantMass, SplittableRandom random) {
        double log = 2 * Math.log(invariantMass / 1000);
        double charged = 0.88 + 0.44 * log + 0.118 * log * log;
        double more = Math.max(0, 1.5 * (charged - 1.3) - 1);
        int count = 1;
        double left = Math.exp(-more);
        double product = random.nextDouble();
        while (product > left) {
            product *= random.nextDouble();
            count++;
        }
        int greatest = (int) ((invariantMass - 2 * Nuclide.NUCLEON - 20) / PION);
        return Math.max(1, Math.min(count, greatest));
    }
}
