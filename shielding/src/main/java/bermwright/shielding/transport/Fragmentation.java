// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Element;
import bermwright.shielding.material.Material;
import bermwright.shielding.material.Table;
import bermwright.shielding.spectrum.CosmicSpectrum;

/**
 * What one reaction of an ion in a material leaves of it at its own speed: heavier fragments by element, alpha
 * particles and single nucleons; charge and mass are conserved.
 *
 * <p>Participants, A times the nucleon's over the ion's reactions per areal density, react like single nucleons; of the
 * rest beyond the fragments 35 % by mass leave as alpha particles (an assumption), the remainder as nucleons.
 */
final class Fragmentation {
    private static final double REFERENCE_MEV = 1000;
    private static final double ALPHA_SHARE = 0.35;
    private static final double HELIUM_THREE_SHARE = 0.24;
    private static final int GREATEST = CosmicSpectrum.GREATEST_CHARGE;
    private static final int FIRST_BY_FORMULA = 9;
    private static final double[][] LIGHT = Table.numbers(Fragmentation.class, "light-fragments.csv");

    private final double[][] fragments = new double[GREATEST + 1][GREATEST + 1];
    private final double[] participants = new double[GREATEST + 1];

    Fragmentation(Material material) {
        double nucleon = NucleonReactions.perGCm2(false, material, REFERENCE_MEV);
        for (int k = 2; k <= GREATEST; k++) {
            double mass = CosmicSpectrum.massNumber(k);
            double all = IonReactions.perGCm2(k, mass, material, REFERENCE_MEV);
            participants[k] = mass * nucleon / all;
            if (k == 2) {
                fragments[2][2] = HELIUM_THREE_SHARE * 3 / 4;
            } else if (k < FIRST_BY_FORMULA) {
                double[] row = LIGHT[k - 3];
                for (int j = 3; j <= k; j++) {
                    fragments[k][j] = row[j - 1] / row[1];
                }
            } else {
                byFormula(material, k, mass, all);
            }
            close(k, mass);
        }
    }

    /** Fragments of element j for one reaction of element k, alpha particles and lighter ones among them. */
    double yield(int k, int j) {
        return fragments[k][j];
    }

    /** Single neutrons that keep the speed. */
    double neutrons(int k) {
        return fragments[k][0];
    }

    /** Nucleons that react on their own. */
    double participants(int k) {
        return participants[k];
    }

    private void byFormula(Material material, int k, double mass, double all) {
        int ap = (int) Math.round(mass);
        FragmentYields.Nucleus projectile = new FragmentYields.Nucleus(ap, k);
        double sum = 0;
        for (Material.Part part : material.parts()) {
            Element element = part.element();
            double weight = part.moles() * 0.602214 / all;
            for (int j = 3; j <= k; j++) {
                for (int a = (int) (1.5 * j); a < Math.min(ap, 3 * j); a++) {
                    double yield = weight * FragmentYields.crossSectionB(projectile,
                            Math.max(1, Math.rint(element.atomicWeight())), new FragmentYields.Nucleus(a, j));
                    fragments[k][j] += yield;
                    sum += yield;
                }
            }
        }
        if (sum > 1) {
            for (int j = 3; j <= k; j++) {
                fragments[k][j] /= sum;
            }
        }
    }

    /** Shares out what the fragments leave, so that mass and charge are conserved. */
    private void close(int k, double mass) {
        double massLeft = mass;
        double chargeLeft = k;
        for (int j = 2; j <= k; j++) {
            massLeft -= fragments[k][j] * CosmicSpectrum.massNumber(j);
            chargeLeft -= fragments[k][j] * j;
        }
        double limit = Math.min(massLeft, chargeLeft * mass / k);
        participants[k] = Math.max(0, Math.min(participants[k], limit));
        massLeft -= participants[k];
        chargeLeft -= participants[k] * k / mass;
        if (k > 2) {
            double alphas = Math.max(0, Math.min(ALPHA_SHARE * massLeft / 4, Math.min(chargeLeft / 2,
                    (massLeft - chargeLeft) / 2)));
            fragments[k][2] += alphas;
            massLeft -= 4 * alphas;
            chargeLeft -= 2 * alphas;
        }
        fragments[k][1] = Math.max(0, Math.min(chargeLeft, massLeft));
        fragments[k][0] = Math.max(0, massLeft - fragments[k][1]);
    }
}
