// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Material;

/**
 * Density term of the stopping power: how the medium's polarisation lowers the loss of fast particles.
 *
 * @see "Sternheimer and Peierls (1971), Phys. Rev. B 3, 3681, equations for condensed media and gases"
 */
final class DensityTerm {
    private static final double PLASMA_EV = 28.816;
    private static final double TWO_LN_TEN = 2 * Math.log(10);

    private final double c;
    private final double a;
    private final double from;
    private final double to;

    private DensityTerm(double c, double from, double to) {
        this.c = c;
        this.from = from;
        this.to = to;
        this.a = (c - TWO_LN_TEN * from) / Math.pow(to - from, 3);
    }

    static DensityTerm of(Material material) {
        double plasma = PLASMA_EV * Math.sqrt(material.density() / 1000 * material.electrons());
        double excitation = material.excitationEV();
        double c = 2 * Math.log(excitation / plasma) + 1;
        if (material.kind() == Material.Kind.GAS) {
            double from = c < 10 ? 1.6 : c < 10.5 ? 1.7 : c < 11 ? 1.8 : c < 11.5 ? 1.9 : 2.0;
            return new DensityTerm(c, from, c < 13.804 ? 4 : 5);
        }
        boolean light = excitation < 100;
        double bound = light ? 3.681 : 5.215;
        double from = c < bound ? 0.2 : 0.326 * c - (light ? 1.0 : 1.5);
        return new DensityTerm(c, from, light ? 2 : 3);
    }

    /** The term at a momentum over mass (1). */
    double at(double betaGamma) {
        double x = Math.log10(betaGamma);
        if (x < from) {
            return 0;
        }
        double fast = TWO_LN_TEN * x - c;
        return x >= to ? fast : fast + a * Math.pow(to - x, 3);
    }
}
