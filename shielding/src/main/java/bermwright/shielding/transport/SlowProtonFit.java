// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Material;
import bermwright.shielding.material.Table;

/**
 * Stopping of protons from 10 to 1000 keV by fits to measurements for each element, added by Bragg's rule; an
 * element without a fit takes the one of the nearest charge, in proportion to the charge.
 *
 * @see "Andersen and Ziegler (1977), Hydrogen stopping powers and ranges in all elements"
 */
final class SlowProtonFit {
    private static final double[][] FITS = Table.numbers(SlowProtonFit.class, "andersen-ziegler-1977.csv");
    /** From eV per 1e15 atoms/cm2 and mol/g to MeV cm2/g: Avogadro's number times 1e-21. */
    private static final double MEV_PER_GCM2 = 602.214;

    private final Material material;
    private final double meanCharge;

    SlowProtonFit(Material material) {
        this.material = material;
        meanCharge = material.electrons() / material.parts().stream().mapToDouble(Material.Part::moles).sum();
    }

    /** Mean charge by number of atoms (1). */
    double meanCharge() {
        return meanCharge;
    }

    /** Mass stopping power (MeV per g/cm2) at an energy (MeV), 0.01 to 1. */
    double stopping(double energyMeV) {
        double sum = 0;
        for (Material.Part part : material.parts()) {
            sum += part.moles() * MEV_PER_GCM2 * perAtom(part.element().charge(), energyMeV * 1000);
        }
        return sum;
    }

    private static double perAtom(int charge, double energyKeV) {
        double[] nearest = FITS[0];
        for (double[] row : FITS) {
            if (Math.abs(row[0] - charge) < Math.abs(nearest[0] - charge)) {
                nearest = row;
            }
        }
        double low = nearest[1] * Math.pow(energyKeV, 0.45);
        double high = nearest[2] / energyKeV * Math.log(1 + nearest[3] / energyKeV + nearest[4] * energyKeV);
        return low * high / (low + high) * charge / nearest[0];
    }
}
