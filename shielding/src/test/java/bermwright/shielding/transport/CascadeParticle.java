// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/** A nucleon or pion in the cascade: charge, place, direction, and its kinetic energy as it would be outside (MeV). */
final class CascadeParticle {
    final boolean pion;
    final int charge;
    double x;
    double y;
    double z;
    double ux;
    double uy;
    double uz;
    /** Kinetic energy outside the well (MeV); inside, the well's depth comes on top for nucleons. */
    double energy;
    /** Path that a new pion goes before it is formed and can react (fm). */
    double unformed;

    CascadeParticle(boolean pion, int charge) {
        this.pion = pion;
        this.charge = charge;
    }

    double restEnergy() {
        return pion ? FreeCollision.PION : Nuclide.NUCLEON;
    }

    double radius() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    void at(CascadeParticle other) {
        x = other.x;
        y = other.y;
        z = other.z;
    }

    /** Sets direction and energy from a momentum inside the well of a given depth. */
    void momentum(double[] p, double well) {
        double square = p[0] * p[0] + p[1] * p[1] + p[2] * p[2];
        double size = Math.sqrt(square);
        ux = p[0] / size;
        uy = p[1] / size;
        uz = p[2] / size;
        double m = restEnergy();
        energy = Math.sqrt(square + m * m) - m - (pion ? 0 : well);
    }

    /** Four-momentum inside the well: energy, x, y, z (MeV). */
    double[] fourMomentum(double well) {
        double m = restEnergy();
        double kinetic = Math.max(1e-3, energy + (pion ? 0 : well));
        double p = Math.sqrt(kinetic * (kinetic + 2 * m));
        return new double[] {kinetic + m, p * ux, p * uy, p * uz};
    }
}
