// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import bermwright.foundation.Require;
import bermwright.shielding.transport.Stopping;

/**
 * How much a deposited energy counts: quality factor of 1990, radiation weights of 2007, relative effectiveness for
 * early effects of 2000.
 *
 * @see "ICRP Publication 60 (1991), table A-1; ICRP Publication 103 (2007), table 2 and equation 4.3; NCRP Report 132
 *     (2000), table 6.4; from memory"
 */
public final class Quality {
    private static final double KEV_UM = 0.1;
    private static final int POINTS = 200;

    private Quality() {
    }

    /**
     * Quality factor Q(L) of 1990.
     *
     * @param keVPerMicrometre unrestricted linear energy transfer in water (keV/um), zero or more
     * @return quality factor (1), 1 to 30
     */
    public static double factor(double keVPerMicrometre) {
        Require.notNegative("linear energy transfer", keVPerMicrometre, "keV/um");
        if (keVPerMicrometre < 10) {
            return 1;
        }
        return keVPerMicrometre <= 100 ? 0.32 * keVPerMicrometre - 2.2 : 300 / Math.sqrt(keVPerMicrometre);
    }

    /**
     * Radiation weight of neutrons of 2007.
     *
     * @param energyMeV kinetic energy (MeV), positive
     * @return weight (1), 2.5 to 20.7
     */
    public static double neutronWeight(double energyMeV) {
        Require.positive("energy", energyMeV, "MeV");
        if (energyMeV < 1) {
            return 2.5 + 18.2 * Math.exp(-square(Math.log(energyMeV)) / 6);
        }
        return energyMeV <= 50 ? 5.0 + 17.0 * Math.exp(-square(Math.log(2 * energyMeV)) / 6)
                : 2.5 + 3.25 * Math.exp(-square(Math.log(0.04 * energyMeV)) / 6);
    }

    /**
     * Relative effectiveness of neutrons for early effects of 2000.
     *
     * @param energyMeV kinetic energy (MeV), positive
     * @return effectiveness (1): 6 from 1 to 5 MeV, 3.5 above, 5 below as for fission neutrons
     */
    public static double neutronEffectiveness(double energyMeV) {
        Require.positive("energy", energyMeV, "MeV");
        return energyMeV < 1 ? 5 : energyMeV <= 5 ? 6 : 3.5;
    }

    /**
     * Mean quality factor of an ion that comes to rest in water.
     *
     * @param water      stopping in water
     * @param charge     charge Z (1), 1 to 28
     * @param massNumber mass number A (1), positive
     * @param energyMeV  kinetic energy of the whole ion (MeV), positive
     * @return quality factor (1), by energy deposited
     */
    public static double mean(Stopping water, int charge, double massNumber, double energyMeV) {
        double sum = 0;
        for (int i = 0; i < POINTS; i++) {
            double perNucleon = Math.max(Stopping.LEAST_MEV, energyMeV * (i + 0.5) / POINTS / massNumber);
            sum += factor(water.ionMeVPerGCm2(charge, perNucleon) * KEV_UM);
        }
        return sum / POINTS;
    }

    private static double square(double x) {
        return x * x;
    }
}
