// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.Arrays;
import java.util.Optional;

/**
 * A nucleus as the cascade sees it: density and Fermi momentum by radius, and its mass by the liquid drop.
 *
 * @see "De Vries, De Jager and De Vries (1987), At. Data Nucl. Data Tables 36, 495 (sizes); Glauber
 *     (1959), Lectures in Theoretical Physics 1, 315 (reach); from memory"
 */
final class Nuclide {
    static final double HBARC = 197.327;
    static final double PROTON = 938.272;
    static final double NEUTRON = 939.565;
    static final double NUCLEON = 938.92;
    /** Separation energy of the last nucleon inside the potential (MeV), common practice. */
    static final double SEPARATION = 7;
    private static final double DIFFUSENESS = 0.545;
    private static final double LEAST_DENSITY_SHARE = 0.01;

    /** Light nuclei, density as 1 + alpha (r/a)^2 times exp(-(r/a)^2): mass, alpha and a (fm). */
    private static final double[][] OSCILLATORS = {{12, 1.247, 1.649}, {14, 1.291, 1.729}, {16, 1.544, 1.833}};
    /** Measured root mean squares of the radius: mass and fm. */
    private static final double[][] RADII = {{24, 3.06}, {27, 3.06}, {28, 3.12}, {40, 3.48}, {56, 3.74}};

    /**
     * Added to the mean square of a measured radius (fm2): the reach of nucleons, three times the slope of 9.5
     * (GeV/c)^-2 of their elastic scattering, less the proton's own mean square of 0.74.
     */
    private static final double REACH = 0.37;

    private final int mass;
    private final int charge;
    private final double half;
    /** Alpha, and a stretched by the reach (fm); none where half radius and diffuseness tell the density. */
    private final double[] oscillator;
    private final double centre;
    private final double edge;

    Nuclide(int mass, int charge) {
        this.mass = mass;
        this.charge = charge;
        oscillator = find(OSCILLATORS, mass).map(Nuclide::stretched).orElse(new double[0]);
        half = find(RADII, mass).map(row -> Math.sqrt((row[1] * row[1] + REACH) / 0.6
                - 7.0 / 3 * Math.pow(Math.PI * DIFFUSENESS, 2))).orElse(1.07 * Math.cbrt(mass));
        double sum = 0;
        double most = 0;
        double last = 0;
        double step = 0.01;
        for (double r = step / 2; r < half + 15 * DIFFUSENESS; r += step) {
            double shape = shape(r);
            sum += 4 * Math.PI * r * r * step * shape;
            most = Math.max(most, shape);
            last = shape > LEAST_DENSITY_SHARE * most ? r : last;
        }
        edge = last;
        centre = mass / sum;
    }

    private static Optional<double[]> find(double[][] table, int mass) {
        return Arrays.stream(table).filter(row -> row[0] == mass).findFirst();
    }

    private static double[] stretched(double[] row) {
        double square = 1.5 * row[2] * row[2] * (2 + 5 * row[1]) / (2 + 3 * row[1]);
        return new double[] {row[1], row[2] * Math.sqrt(1 + REACH / square)};
    }

    private double shape(double radius) {
        if (oscillator.length == 0) {
            return 1 / (1 + Math.exp((radius - half) / DIFFUSENESS));
        }
        double square = radius * radius / (oscillator[1] * oscillator[1]);
        return (1 + oscillator[0] * square) * Math.exp(-square);
    }

    int mass() {
        return mass;
    }

    int charge() {
        return charge;
    }

    /** Radius at which the density has fallen to a hundredth of its most (fm). */
    double edge() {
        return edge;
    }

    /** Nucleons per volume (1/fm3). */
    double density(double radius) {
        return radius > edge ? 0 : centre * shape(radius);
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
