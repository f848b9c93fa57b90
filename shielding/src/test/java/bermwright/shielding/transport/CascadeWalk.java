// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.SplittableRandom;

/**
 * Nucleons and pions that walk by chance through a medium of one element, in all three dimensions, each reaction a
 * cascade of its own: what the march along the ray stands for, without its straight lines, tables and steps.
 */
final class CascadeWalk {
    private static final double LEAST_MEV = 20;
    private static final double LONGEST_STEP = 5;
    /** Slope of the spectrum that energies are drawn from; each has a weight that makes it the wanted one. */
    private static final double DRAWN_SLOPE = 1.7;

    private final Medium medium;
    private final Cascade cascade;
    private final SplittableRandom random;
    private final double[] edges;
    private final double threshold;
    private final double[][] fluence;
    private boolean captures;

    /** Path length by kind (neutrons, protons, pions) over a threshold (MeV), in layers between edges (g/cm2). */
    CascadeWalk(Medium medium, Nuclide element, double[] edges, double threshold, SplittableRandom random) {
        this.medium = medium;
        this.edges = edges;
        this.threshold = threshold;
        this.random = random;
        cascade = new Cascade(element, random);
        fluence = new double[3][edges.length - 1];
    }

    private static final class Walker {
        private final int kind;
        private final int charge;
        private final double weight;
        private final double[] way;
        private double energy;
        private double depth;

        Walker(int kind, int charge, double weight, double[] way) {
            this.kind = kind;
            this.charge = charge;
            this.weight = weight;
            this.way = way;
        }
    }

    /** Fluence (1 for each arriving proton and MeV to the slope) of protons that arrive upright, E to a power. */
    double[][] walk(int protons, double from, double to, double slope) {
        return walk(protons, new double[] {from, to}, slope, false);
    }

    /** The same where an even half sky sends them, for a fluence of one over the whole sphere. */
    double[][] walkFromSky(int protons, double from, double to, double slope) {
        return walk(protons, new double[] {from, to}, slope, true);
    }

    private double[][] walk(int protons, double[] range, double slope, boolean sky) {
        captures = sky;
        double power = 1 - DRAWN_SLOPE;
        double low = Math.pow(range[0], power);
        double high = Math.pow(range[1], power);
        double whole = (low - high) / -power * (sky ? 0.25 : 1);
        for (int k = 0; k < protons; k++) {
            double energy = Math.pow(low + random.nextDouble() * (high - low), 1 / power);
            double cosine = sky ? Math.sqrt(random.nextDouble()) : 1;
            Walker first = new Walker(1, 1, Math.pow(energy, DRAWN_SLOPE - slope) * whole / protons,
                    new double[] {Math.sqrt(1 - cosine * cosine), 0, cosine});
            first.energy = energy;
            Deque<Walker> all = new ArrayDeque<>();
            all.push(first);
            while (!all.isEmpty()) {
                follow(all.pop(), all);
            }
        }
        for (double[] kind : fluence) {
            for (int i = 0; i < kind.length; i++) {
                kind[i] /= edges[i + 1] - edges[i];
            }
        }
        return fluence;
    }

    private void follow(Walker w, Deque<Walker> all) {
        int species = w.kind == 2 ? Medium.PION : w.kind;
        double left = -Math.log(1 - random.nextDouble());
        while (w.energy > LEAST_MEV && w.depth >= 0 && w.depth < edges[edges.length - 1]) {
            int i = index(w.energy);
            double rate = medium.reactions(species)[i];
            double path = Math.min(LONGEST_STEP, left / rate);
            count(w, path);
            w.depth += path * w.way[2];
            left -= path * rate;
            w.energy -= species == Medium.NEUTRON ? 0 : path * medium.loss(species)[i];
            if (left <= 1e-12) {
                react(w, all);
                return;
            }
        }
        if (w.kind == 2 && w.charge < 0 && w.energy <= LEAST_MEV && w.depth >= 0) {
            capture(w, all);
        }
    }

    /** A negative pion at rest is taken in by a nucleus, where the walker is to follow such pions. */
    private void capture(Walker w, Deque<Walker> all) {
        if (captures) {
            cascade.absorbAtRest();
            emit(w, all);
        }
    }

    private void count(Walker w, double path) {
        double middle = w.depth + path * w.way[2] / 2;
        if (w.energy < threshold) {
            return;
        }
        for (int i = 0; i < edges.length - 1; i++) {
            if (middle >= edges[i] && middle < edges[i + 1]) {
                fluence[w.kind][i] += w.weight * path;
            }
        }
    }

    private void react(Walker w, Deque<Walker> all) {
        if (w.energy <= LEAST_MEV
                || w.kind == 2 && random.nextDouble() * medium.reactions(Medium.PION)[index(w.energy)]
                        < Muons.decays(w.energy, medium.material().density())) {
            return;
        }
        while (cascade.shoot(w.kind == 2, w.charge, w.energy) == null) {
            continue;
        }
        emit(w, all);
    }

    private void emit(Walker w, Deque<Walker> all) {
        for (CascadeParticle p : cascade.emitted()) {
            if ((p.energy > LEAST_MEV || p.pion && p.charge < 0) && !(p.pion && p.charge == 0)) {
                Walker next = new Walker(p.pion ? 2 : p.charge, p.charge, w.weight,
                        Kinematics.turned(w.way, p.uz, random));
                next.energy = p.energy;
                next.depth = w.depth;
                all.push(next);
            }
        }
    }

    private int index(double energy) {
        return (int) Math.round(Math.log(energy / EnergyGrid.LEAST_MEV) / medium.grid().step());
    }
}
