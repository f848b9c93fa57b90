// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/** A nucleus as the cascade sees it: density and Fermi momentum by radius, and its mass by the liquid drop. */
final class Nuclide {
    static final double HBARC = 197.327;
    static final double PROTON = 938.272;
    static final double NEUTRON = 939.565;
    static final double NUCLEON = 938.92;
    /** Separation energy of the last nucleon inside the potential (MeV), common practice. */
    static final double SEPARATION = 7;
    private static final double DIFFUSENESS = 0.545;
    private static final double LEAST_DENSITY_SHARE = 0.01;

    private final int mass;
    private final int charge;
    private final double half;
    private final double centre;

    Nuclide(int mass, int charge) {
        this.mass = mass;
        this.charge = charge;
        half = 1.07 * Math.cbrt(mass);
        double sum = 0;
        double step = 0.01;
        for (double r = step / 2; r < half + 15 * DIFFUSENESS; r += step) {
            sum += 4 * Math.PI * r * r * step / (1 + Math.exp((r - half) / DIFFUSENESS));
        }
        centre = mass / sum;
    }

    int mass() {
        return mass;
    }

    int charge() {
        return charge;
    }

    /** Radius at which the density has fallen to a hundredth (fm). */
    double edge() {
        return half + DIFFUSENESS * Math.log(1 / LEAST_DENSITY_SHARE);
    }

    /** Nucleons per volume (1/fm3). */
    double density(double radius) {
        return radius > edge() ? 0 : centre / (1 + Math.exp((radius - half) / DIFFUSENESS));
    }

    double centralDensity() {
        return centre;
    }

    /** Fermi momentum (MeV/c) of the local density. */
    double fermiMomentum(double radius) {
        return HBARC * Math.cbrt(1.5 * Math.PI * Math.PI * density(radius));
    }

    double fermiEnergy(double radius) {
        double p = fermiMomentum(radius);
        return Math.sqrt(p * p + NUCLEON * NUCLEON) - NUCLEON;
    }

    /** Depth of the well (MeV): Fermi energy and separation energy; none outside. */
    double well(double radius) {
        return radius > edge() ? 0 : fermiEnergy(radius) + SEPARATION * Math.min(1, density(radius) / centre * 2);
    }

    /** Height of the Coulomb barrier for a proton (MeV). */
    double barrier() {
        return 1.44 * charge / (1.3 * (Math.cbrt(mass) + 1));
    }

    /** Rest energy of a nucleus (MeV): measured for the lightest, else the liquid drop with surface asymmetry. */
    static double restEnergy(int a, int z) {
        double[] light = {0, 1, NEUTRON, 1, 1, PROTON, 2, 1, 1875.613, 3, 1, 2808.921, 3, 2, 2808.391, 4, 2, 3727.379};
        if (a == 1) {
            return z == 1 ? PROTON : NEUTRON;
        }
        for (int i = 6; i + 2 < light.length; i += 3) {
            if (light[i] == a && light[i + 1] == z) {
                return light[i + 2];
            }
        }
        if (a <= 0) {
            return 0;
        }
        double n = a - z;
        double third = Math.cbrt(a);
        double asymmetry = (n - z) * (n - z) / a;
        double binding = 15.5 * a - 17.0 * third * third - 0.7 * z * (z - 1) / third - asymmetry * 23.0;
        double pairing = 11 / Math.sqrt(a);
        if (a % 2 == 0) {
            binding += z % 2 == 0 ? pairing : -pairing;
        }
        return z * PROTON + n * NEUTRON - binding;
    }
}
