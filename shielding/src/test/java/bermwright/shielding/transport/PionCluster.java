// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/** A nucleon, or none, with its pions; goes as one body until it decays. */
final class PionCluster {
    final boolean baryon;
    int pions;
    double mass;

    PionCluster(boolean baryon) {
        this.baryon = baryon;
    }

    double least() {
        return (baryon ? Nuclide.NUCLEON : 0) + pions * FreeCollision.PION;
    }
}
