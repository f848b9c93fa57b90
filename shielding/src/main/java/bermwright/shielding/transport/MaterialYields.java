// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Material;

/**
 * What reactions of a hadron of one energy make per areal density of a material, all its elements together; above the
 * table's last energy the slow products stay as they are and the fast ones keep their share of the projectile's energy
 * (limiting fragmentation and scaling).
 */
final class MaterialYields {
    private static final double PER_GCM2 = 6.02214e-4;
    private static final double SLOW_PRODUCTS_UP_TO_MEV = 500;

    private final double projectile;
    private final double greatest;
    private final CascadeYields.Row row;

    private MaterialYields(double projectileMeV, double greatest, CascadeYields.Row row) {
        this.projectile = projectileMeV;
        this.greatest = greatest;
        this.row = row;
    }

    /** Per areal density (1 per g/cm2) of what a hadron of an energy (MeV) makes. */
    static MaterialYields of(CascadeYields.Projectile projectile, Material material, double energyMeV) {
        CascadeYields.Row sum = CascadeYields.Row.nothing();
        double greatest = 0;
        for (Material.Part part : material.parts()) {
            double sigma = part.moles() * PER_GCM2 * Medium.crossSectionMb(projectile, part, energyMeV);
            CascadeYields yields = CascadeYields.of(projectile, part.element());
            yields.addTo(sum, energyMeV, sigma);
            greatest = yields.greatestMeV();
        }
        return new MaterialYields(energyMeV, greatest, sum.averaged());
    }

    /** The same for negative pions that come to rest, for each of them, caught in proportion to charge. */
    static MaterialYields ofStoppedPions(Material material) {
        CascadeYields.Row sum = CascadeYields.Row.nothing();
        double all = material.parts().stream().mapToDouble(q -> q.moles() * q.element().charge()).sum();
        for (Material.Part part : material.parts()) {
            CascadeYields.of(CascadeYields.Projectile.STOPPED, part.element()).addTo(sum, CascadeYields.STOPPED_MEV,
                    part.moles() * part.element().charge() / all);
        }
        return new MaterialYields(CascadeYields.STOPPED_MEV, Double.POSITIVE_INFINITY, sum.averaged());
    }

    /** Fast products above an energy (MeV). */
    double above(CascadeYields.Fast product, double energyMeV) {
        double from = CascadeYields.FAST_FROM_MEV;
        if (projectile <= from || energyMeV >= projectile) {
            return 0;
        }
        double[] sums = row.fast()[product.ordinal()];
        if (projectile <= greatest) {
            return sum(sums, Math.log(Math.max(1, energyMeV / from)) / Math.log(projectile / from));
        }
        double top = Math.log(greatest / from);
        double join = Math.log(SLOW_PRODUCTS_UP_TO_MEV / from) / top;
        double scaledJoin = SLOW_PRODUCTS_UP_TO_MEV * projectile / greatest;
        if (energyMeV >= scaledJoin) {
            return sum(sums, Math.log(energyMeV * greatest / projectile / from) / top);
        }
        double width = 0.5 / (sums.length - 1);
        double perLog = (sum(sums, join - width) - sum(sums, join + width)) / (2 * width * top);
        double gap = perLog * Math.log(scaledJoin / Math.max(energyMeV, SLOW_PRODUCTS_UP_TO_MEV));
        return gap + sum(sums, Math.log(Math.max(1, Math.min(energyMeV, SLOW_PRODUCTS_UP_TO_MEV) / from)) / top);
    }

    /** Mean cosine of fast products at an energy (MeV). */
    double cosine(CascadeYields.Fast product, double energyMeV) {
        double from = CascadeYields.FAST_FROM_MEV;
        if (projectile <= from) {
            return 1;
        }
        double u = Math.log(Math.max(1, energyMeV / from)) / Math.log(projectile / from);
        double[] bins = row.cosine()[product.ordinal()];
        return bins[Math.min(bins.length - 1, (int) (CascadeYields.place(u) * bins.length))];
    }

    /** Slow neutrons by group of the table. */
    double[] slow() {
        return row.slow();
    }

    /** Energies (MeV) in neutral pions, slow and evaporated protons, hydrogen-2 and -3, helium, recoil, gammas. */
    double[] energy() {
        double[] energy = row.energy().clone();
        energy[0] *= Math.max(1, projectile / greatest);
        return energy;
    }

    /** Negative pions too slow to be followed. */
    double slowNegative() {
        return row.slowPions()[1];
    }

    private static double sum(double[] sums, double u) {
        double place = CascadeYields.place(Math.max(0, u)) * (sums.length - 1);
        int k = (int) place;
        return k >= sums.length - 1 ? 0 : sums[k] + (place - k) * (sums[k + 1] - sums[k]);
    }
}
