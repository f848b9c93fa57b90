// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Vec3;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Inelastic collision of two fast hadrons: each goes on with a share x of its momentum, a nucleon with any as likely, a
 * pion as 1 - x, and what they lose in the centre of mass becomes pions with limited transverse momentum, evenly spread
 * in rapidity.
 *
 * @see "Brodsky and Gunion (1978), Phys. Rev. D 17, 848 (pions, by counting quarks); Basile et al. (1981), Nuovo Cimento A 65, 400 (even share of leading protons; multiplicity by the energy they
 *     leave); Jadach (1975), Comput. Phys. Commun. 9, 297 (cylindrical phase space); Hagedorn (1965), Suppl. Nuovo
 *     Cimento 3, 147 (transverse mass); from memory"
 */
final class LeadingParticles {
    /** Slope of pions in their transverse mass (MeV): 250 MeV beyond their mass in the mean. */
    private static final double TRANSVERSE_SLOPE = 160;
    private static final int TRIES = 100;
    private static final int HALVINGS = 60;

    private final SplittableRandom random;

    LeadingParticles(SplittableRandom random) {
        this.random = random;
    }

    /**
     * The two leading particles in their order, then the pions, each as energy and momentum (MeV); empty where no three
     * pions find room.
     *
     * @param total  energy and momentum of the collision
     * @param axis   direction of the first one in the centre of mass
     * @param masses rest energies of the two
     */
    List<double[]> part(double[] total, double[] axis, double[] masses) {
        double mass = Kinematics.mass(total);
        for (int tries = 0; tries < TRIES; tries++) {
            double[] first = leading(axis, 1, mass, masses[0]);
            double[] second = leading(axis, -1, mass, masses[1]);
            double[] rest = {mass - first[0] - second[0], -first[1] - second[1], -first[2] - second[2],
                -first[3] - second[3]};
            double spare = rest[0] <= 0 ? 0 : Kinematics.mass(rest);
            if (spare * spare < 1 || rest[0] * rest[0] < square(rest) || spare < 3 * (FreeCollision.PION + 5)) {
                continue;
            }
            // Leading particles keep half of the energy in the mean: a mass makes what twice as much to spare makes.
            int count = Math.max(3, Math.min(FreeCollision.pions(2 * spare + 2 * Nuclide.NUCLEON, random),
                    (int) (spare / (FreeCollision.PION + 5))));
            List<double[]> made = new ArrayList<>();
            made.add(Kinematics.boosted(first, total));
            made.add(Kinematics.boosted(second, total));
            for (double[] pion : pions(spare, count, axis)) {
                made.add(Kinematics.boosted(Kinematics.boosted(pion, rest), total));
            }
            return made;
        }
        return List.of();
    }

    private static double square(double[] four) {
        return four[1] * four[1] + four[2] * four[2] + four[3] * four[3];
    }

    private double[] leading(double[] axis, int sign, double mass, double rest) {
        double greatest = Kinematics.breakup(mass, rest, Nuclide.NUCLEON);
        double share = random.nextDouble();
        double along = sign * greatest * (rest < Nuclide.NUCLEON / 2 ? 1 - Math.sqrt(share) : share);
        double across = 1000 * Math.sqrt(-Math.log(1 - random.nextDouble()) / Cascade.INELASTIC_SLOPE);
        Vec3 p = composed(axis, along, across, 2 * Math.PI * random.nextDouble());
        return new double[] {Math.sqrt(rest * rest + along * along + across * across), p.x(), p.y(), p.z()};
    }

    /** A vector by its parts along an axis and across it. */
    private static Vec3 composed(double[] axis, double along, double across, double angle) {
        Vec3 u = new Vec3(axis[0], axis[1], axis[2]).direction();
        Vec3 v = u.cross(Math.abs(u.z()) < 0.9 ? Vec3.UP : new Vec3(1, 0, 0)).direction();
        return u.times(along).plus(v.times(across * Math.cos(angle))).plus(u.cross(v).times(across * Math.sin(angle)));
    }

    /** Pions of a system at rest. */
    private double[][] pions(double mass, int count, double[] axis) {
        for (int tries = 0; tries < TRIES ; tries++) {
            double[][] across = across(count);
            double sum = 0;
            for (double[] pion : across) {
                sum += pion[2];
            }
            if (sum < mass) {
                return spread(mass, across, axis);
            }
        }
        double[] masses = new double[count];
        java.util.Arrays.fill(masses, FreeCollision.PION);
        return Kinematics.decay(new double[] {mass, 0, 0, 0}, masses, random);
    }

    /** Transverse momenta that add up to nothing, two components and the transverse mass each (MeV). */
    private double[][] across(int count) {
        double[][] across = new double[count][3];
        double[] mean = new double[2];
        for (double[] pion : across) {
            double size = transverse();
            double angle = 2 * Math.PI * random.nextDouble();
            pion[0] = size * Math.cos(angle);
            pion[1] = size * Math.sin(angle);
            mean[0] += pion[0] / count;
            mean[1] += pion[1] / count;
        }
        for (double[] pion : across) {
            pion[0] -= mean[0];
            pion[1] -= mean[1];
            pion[2] = Math.sqrt(pion[0] * pion[0] + pion[1] * pion[1] + FreeCollision.PION * FreeCollision.PION);
        }
        return across;
    }

    /** A transverse momentum (MeV/c), evenly weighted in its plane times exp(-transverse mass / slope). */
    private double transverse() {
        double m = FreeCollision.PION;
        double t = TRANSVERSE_SLOPE;
        double over = -t * Math.log(1 - random.nextDouble());
        if (random.nextDouble() * (m + t) >= m) {
            over -= t * Math.log(1 - random.nextDouble());
        }
        return Math.sqrt(over * (over + 2 * m));
    }

    private double[][] spread(double mass, double[][] across, double[] axis) {
        int n = across.length;
        double[] place = random.doubles(n).toArray();
        double low = 0;
        double high = 60;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (sum(across, place, middle) * sum(across, place, -middle) < mass * mass) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double shift = Math.log(sum(across, place, -low) / sum(across, place, low)) / 2;
        double[][] made = new double[n][];
        for (int i = 0; i < n; i++) {
            double rapidity = low * place[i] + shift;
            double along = across[i][2] * Math.sinh(rapidity);
            double size = Math.hypot(across[i][0], across[i][1]);
            Vec3 p = composed(axis, along, size, Math.atan2(across[i][1], across[i][0]));
            made[i] = new double[] {across[i][2] * Math.cosh(rapidity), p.x(), p.y(), p.z()};
        }
        return made;
    }

    private static double sum(double[][] across, double[] place, double width) {
        double sum = 0;
        for (int i = 0; i < place.length; i++) {
            sum += across[i][2] * Math.exp(width * place[i]);
        }
        return sum;
    }
}
