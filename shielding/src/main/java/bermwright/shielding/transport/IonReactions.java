// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Require;
import bermwright.shielding.material.Element;
import bermwright.shielding.material.Material;

/**
 * How often nuclei react with nuclei: the strong-absorption form of Kox and others; on hydrogen the nucleon's cross
 * section on the projectile at the same energy per nucleon.
 *
 * <p>Valid from 30 MeV to 10 GeV per nucleon for helium to nickel; scatter 5 to 10 %.
 *
 * @see "Kox et al. (1987), Phys. Rev. C 35, 1678"
 */
public final class IonReactions {
    private static final double PER_GCM2 = 6.02214e-4;
    private static final double LEAST_MEV = 10;
    private static final double NUCLEON_MEV = 931.494;

    private IonReactions() {
    }

    /**
     * Reaction cross section of two nuclei.
     *
     * @param charge     charge of the projectile (1), 2 to 28
     * @param massNumber mass number of the projectile (1), 3 to 60
     * @param target     the target
     * @param energyMeV  kinetic energy per nucleon (MeV), positive
     * @return cross section (mb), positive
     */
    public static double crossSectionMb(int charge, double massNumber, Element target, double energyMeV) {
        Require.positive("energy", energyMeV, "MeV");
        if (target.charge() == 1) {
            Element swapped = new Element("ion", charge, massNumber, 1, 1);
            return NucleonReactions.crossSectionMb(false, swapped, energyMeV);
        }
        double energy = Math.max(LEAST_MEV, energyMeV);
        double at = target.atomicWeight();
        double p = Math.cbrt(massNumber);
        double t = Math.cbrt(at);
        double log = Math.log10(energy);
        double c = log >= 1.5 ? 2 - 10 / Math.pow(log, 5) : (2 - 10 / Math.pow(1.5, 5)) * Math.pow(log / 1.5, 3);
        double skin = 5 * (at - 2 * target.charge()) * charge / (massNumber * at);
        double surface = 1.1 * (1.85 * p * t / (p + t) - c) + skin;
        double barrier = 1.44 * charge * target.charge() / (1.3 * (p + t));
        double radius = 1.1 * (p + t) + surface;
        return 10 * Math.PI * radius * radius
                * Math.max(0, 1 - barrier / centreOfMass(massNumber, at, energy));
    }

    /**
     * Reactions per areal density in a material.
     *
     * @param charge     charge of the projectile (1), 2 to 28
     * @param massNumber mass number of the projectile (1), 3 to 60
     * @param material   the material
     * @param energyMeV  kinetic energy per nucleon (MeV), positive
     * @return reactions per areal density (1 per g/cm2), positive
     */
    public static double perGCm2(int charge, double massNumber, Material material, double energyMeV) {
        double sum = 0;
        for (Material.Part part : material.parts()) {
            sum += part.moles() * PER_GCM2 * crossSectionMb(charge, massNumber, part.element(), energyMeV);
        }
        return sum;
    }

    /** Kinetic energy in the centre of mass (MeV). */
    private static double centreOfMass(double projectile, double target, double energyMeV) {
        double mp = projectile * NUCLEON_MEV;
        double mt = target * NUCLEON_MEV;
        double total = Math.sqrt(mp * mp + mt * mt + 2 * mt * (mp + projectile * energyMeV));
        return total - mp - mt;
    }
}
