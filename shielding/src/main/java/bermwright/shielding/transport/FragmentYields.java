// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Require;

/**
 * Yields of projectile fragments: for projectiles from fluorine on the empirical form of 2012, below it measured yields
 * on hydrogen in proportion to the reaction cross section.
 *
 * <p>The form is independent of energy, for more than about 150 MeV per nucleon; made for projectiles heavier than
 * argon, used to fluorine; scatter 25 % for each element.
 *
 * @see "Suemmerer (2012), Phys. Rev. C 86, 014601, with erratum 87, 039903 (2013)"
 */
public final class FragmentYields {
    private static final double LINE_TENTH = Math.log(10);

    private FragmentYields() {
    }

    /**
     * Cross section of making one nuclide.
     *
     * @param projectile mass and charge number of the projectile
     * @param targetMass mass number of the target (1), 1 or more
     * @param fragment   mass and charge number of the fragment, lighter than the projectile
     * @return cross section (b), zero or more
     */
    public static double crossSectionB(Nucleus projectile, double targetMass, Nucleus fragment) {
        double ap = projectile.mass();
        double a = fragment.mass();
        Require.that(a < ap, "mass number %s of the fragment is not below the projectile's %s", a, ap);
        double share = a / ap;
        double s = 0.27 * (Math.cbrt(ap) + Math.cbrt(targetMass) - 1.80);
        double p = Math.exp(-1.731 - 0.01399 * ap);
        double yield = s * p * Math.exp(-p * (ap - a));
        if (share >= 0.75) {
            yield *= Math.exp(0.10 * ap * (share - 0.75) * (share - 0.75));
        }
        double stable = stableCharge(a);
        double dz = projectile.charge() - stableCharge(ap);
        double probable = probableCharge(a, share, stable, dz);
        double r = 2.78 * Math.exp((dz > 0 ? 0.124 : 0.0412) * dz) * Math.exp(-0.015 * a + 3.2e-5 * a * a);
        if (share > 0.85) {
            r *= Math.exp(30 * Math.sqrt(ap) * Math.pow(share - 0.85, 3));
        }
        return yield * Math.sqrt(r / Math.PI) * chargeShare(fragment, r, probable, stable, dz);
    }

    /**
     * A nucleus by its numbers.
     *
     * @param mass   mass number A (1), positive
     * @param charge charge Z (1), positive
     */
    public record Nucleus(int mass, int charge) {
    }

    private static double stableCharge(double a) {
        return a / (1.98 + 0.0155 * Math.pow(a, 2.0 / 3));
    }

    private static double probableCharge(double a, double share, double stable, double dz) {
        double delta = a >= 71.35 ? -1.087 + 0.03047 * a : 2.1353e-4 * a * a;
        if (share > 0.8) {
            delta *= 1 - 25.0 * (share - 0.8) * (share - 0.8);
        }
        double memory = dz > 0 ? Math.exp(-10.25 + 10.25 * share) * dz
                : (0.4 * share * share + 0.6 * Math.pow(share, 4)) * dz;
        return stable + delta + memory + 0.0020 * a;
    }

    private static double chargeShare(Nucleus fragment, double r, double probable, double stable, double dz) {
        double z = fragment.charge();
        double a = fragment.mass();
        if (z >= probable) {
            double slope = 1.20 + 0.647 * Math.pow(a / 2, 0.3);
            double turn = probable + slope * LINE_TENTH / (2 * r);
            if (z > turn) {
                return Math.exp(-r * Math.pow(turn - probable, 2.10)) * Math.pow(10, -slope * (z - turn));
            }
            return Math.exp(-r * Math.pow(z - probable, 2.10));
        }
        double value = Math.exp(-r * Math.pow(probable - z, 1.65));
        if (dz < 0 && stable - z > 2.4 + dz) {
            value *= Math.pow(10, -2.3e-3 * Math.abs(dz) * Math.pow(stable - z + dz + 2.4, 3));
        }
        return value;
    }
}
