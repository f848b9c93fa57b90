// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.SplittableRandom;

/** Four-momenta as arrays of energy, x, y, z (MeV): boosts, directions and decays by phase space. */
final class Kinematics {
    private Kinematics() {
    }

    static double[] sum(double[] a, double[] b) {
        return new double[] {a[0] + b[0], a[1] + b[1], a[2] + b[2], a[3] + b[3]};
    }

    static double mass(double[] p) {
        return Math.sqrt(Math.max(0, p[0] * p[0] - p[1] * p[1] - p[2] * p[2] - p[3] * p[3]));
    }

    /** A four-momentum given in the rest frame of a total one, seen in the frame of that total one. */
    static double[] boosted(double[] p, double[] total) {
        double m = mass(total);
        double dot = p[1] * total[1] + p[2] * total[2] + p[3] * total[3];
        double energy = (p[0] * total[0] + dot) / m;
        double factor = (p[0] + energy) / (m + total[0]);
        return new double[] {energy, p[1] + factor * total[1], p[2] + factor * total[2], p[3] + factor * total[3]};
    }

    /** The inverse of {@link #boosted}. */
    static double[] inFrameOf(double[] p, double[] total) {
        return boosted(p, new double[] {total[0], -total[1], -total[2], -total[3]});
    }

    static double breakup(double mass, double first, double second) {
        double s = mass * mass;
        return Math.sqrt(Math.max(0, (s - (first + second) * (first + second))
                * (s - (first - second) * (first - second)))) / (2 * mass);
    }

    static double[] isotropic(SplittableRandom random) {
        double cosine = 2 * random.nextDouble() - 1;
        return turned(new double[] {0, 0, 1}, cosine, random);
    }

    /** A direction at a given cosine from another one, evenly around it. */
    static double[] turned(double[] axis, double cosine, SplittableRandom random) {
        double size = Math.sqrt(axis[0] * axis[0] + axis[1] * axis[1] + axis[2] * axis[2]);
        double ax = axis[0] / size;
        double ay = axis[1] / size;
        double az = axis[2] / size;
        double sine = Math.sqrt(Math.max(0, 1 - cosine * cosine));
        double angle = 2 * Math.PI * random.nextDouble();
        double c = sine * Math.cos(angle);
        double s = sine * Math.sin(angle);
        double across = Math.sqrt(ax * ax + ay * ay);
        if (across < 1e-9) {
            return new double[] {c, s, Math.signum(az) * cosine};
        }
        return new double[] {cosine * ax + (c * az * ax - s * ay) / across,
            cosine * ay + (c * az * ay + s * ax) / across, cosine * az - c * across};
    }

    /** Two bodies of given masses leaving each other along a direction, seen in the frame of their total. */
    static double[][] pair(double[] total, double[] masses, double[] direction) {
        double p = breakup(mass(total), masses[0], masses[1]);
        double[][] pair = new double[2][];
        for (int i = 0; i < 2; i++) {
            double sign = i == 0 ? p : -p;
            pair[i] = boosted(new double[] {Math.sqrt(p * p + masses[i] * masses[i]), sign * direction[0],
                sign * direction[1], sign * direction[2]}, total);
        }
        return pair;
    }

    /** Decay of a cluster into bodies of given masses, one after the other with evenly drawn masses between. */
    static double[][] decay(double[] cluster, double[] masses, SplittableRandom random) {
        double[][] bodies = new double[masses.length][];
        double[] left = cluster;
        double rest = 0;
        for (double m : masses) {
            rest += m;
        }
        double free = Math.max(0, mass(cluster) - rest);
        double[] cuts = random.doubles(Math.max(0, masses.length - 2)).sorted().toArray();
        for (int i = 0; i < masses.length - 1; i++) {
            rest -= masses[i];
            double next = i == masses.length - 2 ? masses[masses.length - 1]
                    : rest + free * cuts[masses.length - 3 - i];
            double[][] two = pair(left, new double[] {masses[i], next}, isotropic(random));
            bodies[i] = two[0];
            left = two[1];
        }
        bodies[masses.length - 1] = left;
        return bodies;
    }

    /** The momentum of a four-momentum. */
    static double[] direction(double[] four) {
        return new double[] {four[1], four[2], four[3]};
    }
}
