// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.Arrays;

/**
 * Hadrons, muons and the energy of electrons and gammas in a level slab, by depth, direction and energy, made by what
 * comes in straight: discrete ordinates, energies from the top down.
 *
 * <p>All fluences are in units of an even one: what would be the fluence if all directions were as full. Sources run in
 * straight lines between the depths; charged particles hand what slows out of a bin to the next. Nothing comes up
 * through the lowest face.
 *
 * @see "Lewis and Miller (1984), Computational Methods of Neutron Transport, ch. 2 and 3"
 */
final class SlabHadrons {
    /** Neutrons, made protons, charged pions, muons. */
    static final int KINDS = 4;
    private static final int MUON = 3;
    private static final int[] SPECIES = {Medium.NEUTRON, Medium.MADE_PROTON, Medium.PION, Medium.MUON};
    private static final int ROUNDS = 4;
    private static final double NEGLIGIBLE = 1e-5;
    /** Bins that hold less than this of the fullest one are left out (1). */
    private static final double FAINT = 1e-12;
    /** Stopped pions' nucleons are slower than this (MeV). */
    private static final double SLOW_MEV = 160;

    private final Medium medium;
    private final AngularReactions reactions;
    private final double[] depth;
    private final int points;
    private final int length;
    private final double[][][] fluence;
    private final double[][][] reacting = new double[Medium.HADRONS][][];
    private final double[] electromagnetic;
    private final double[] captures;
    private final double[] source;
    private final double[][] classes = new double[Ordinates.MEAN.length][];
    private final int[] before;
    private final double[] share;
    /** Highest energy at which anything flies. */
    private final int last;
    private final boolean[] used = new boolean[Ordinates.MEAN.length];

    SlabHadrons(AngularReactions reactions, Medium medium, double[] depth, StraightBeams straight,
            double showerLength) {
        this.medium = medium;
        this.reactions = reactions;
        this.depth = depth.clone();
        points = depth.length;
        length = Ordinates.COUNT * points;
        int size = medium.grid().size();
        fluence = new double[KINDS][size][];
        source = new double[length];
        captures = new double[points];
        before = new int[Ordinates.DOWN * points];
        share = new double[Ordinates.DOWN * points];
        place(straight);
        for (int c = 0; c < classes.length; c++) {
            classes[c] = new double[length];
        }
        for (int p = 0; p < Medium.HADRONS; p++) {
            reacting[p] = new double[size][];
        }
        last = top(straight);
        int join = last + 1;
        for (int i = last; i >= medium.fastFrom() && medium.grid().energyMeV(i) > SLOW_MEV; i--) {
            group(i, straight, 0, Medium.HADRONS - 1);
            join = i;
        }
        for (int i = join - 1; i >= medium.fastFrom(); i--) {
            group(i, straight, 2, 2);
        }
        stop();
        for (int i = join - 1; i >= medium.fastFrom(); i--) {
            group(i, straight, 0, 1);
        }
        for (int i = medium.fastFrom() - 1; i >= 0; i--) {
            slowDown(1, i);
            slowDown(2, i);
        }
        for (int i = last; i >= 0; i--) {
            muons(i);
        }
        double[] nothing = new double[length];
        for (int i = last + 1; i < size; i++) {
            for (int kind = 0; kind < KINDS; kind++) {
                fluence[kind][i] = nothing;
            }
        }
        electromagnetic = electromagnetic(showerLength);
    }

    private int top(StraightBeams straight) {
        int top = medium.fastFrom() + 1;
        double most = 0;
        for (int i = top; i < medium.grid().size(); i++) {
            double number = (straight.reacting(0, i)[0] + straight.reacting(1, i)[0]) * medium.grid().widthMeV(i);
            most = Math.max(most, number);
            top = number > FAINT * most ? i : top;
        }
        return top;
    }

    /** Highest energy of the grid at which anything flies. */
    int last() {
        return last;
    }

    /** Depths (g/cm2). */
    double[] depths() {
        return depth;
    }

    /** Fluence of a kind at an energy, a direction and a depth (1/m2/MeV). */
    double fluence(int kind, int energy, int direction, int point) {
        return fluence[kind][energy][direction * points + point];
    }

    /** Energy fluence of electrons and gammas (MeV/m2). */
    double electromagnetic(int direction, int point) {
        return electromagnetic[direction * points + point];
    }

    /** Slow neutrons made by group (1/m2 per g/cm2) at a depth. */
    double[] slowNeutrons(int point) {
        double[] sum = new double[SlowCrossSections.GROUPS];
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = medium.fastFrom(); k <= last; k++) {
                double number = mean(reacting[p][k], point) * medium.grid().widthMeV(k);
                double[] groups = reactions.slow(p, k);
                for (int g = 0; number > 0 && g < sum.length; g++) {
                    sum[g] += number * groups[g];
                }
            }
        }
        for (int g = 0; g < sum.length; g++) {
            sum[g] += captures[point] * reactions.capturedSlow()[g];
        }
        return sum;
    }

    /** Slow neutrons that what goes in a direction makes at a depth, if all directions were as full. */
    double strength(int direction, int point) {
        double sum = 0;
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = medium.fastFrom(); k <= last; k++) {
                sum += reacting[p][k][direction * points + point] * medium.grid().widthMeV(k)
                        * reactions.slowTotal(p, k);
            }
        }
        return sum;
    }

    private double mean(double[] values, int point) {
        double sum = 0;
        for (int m = 0; m < Ordinates.COUNT; m++) {
            sum += Ordinates.weight(m) / 2 * values[m * points + point];
        }
        return sum;
    }

    private void group(int i, StraightBeams straight, int first, int until) {
        double[][] fixed = new double[Medium.HADRONS][];
        double[][][] sweeps = new double[Medium.HADRONS][][];
        double[][] came = new double[2][];
        for (int o = first; o <= until; o++) {
            fixed[o] = made(o, i);
            slowedInto(o, i, fixed[o]);
            if (o == 0) {
                addAlong(fixed[0], straight.neutrons(i));
            }
            if (o < 2) {
                came[o] = new double[length];
                addAlong(came[o], straight.reacting(o, i));
                addCaptured(fixed[o], o, i);
            }
            sweeps[o] = sweeps(lost(o, i));
            fluence[o][i] = new double[length];
        }
        double[][][] within = within(i, first, until);
        double[] elastic = mixed(reactions.elastic(i), AngularReactions.ELASTIC_COSINE);
        for (int round = 0; round < ROUNDS; round++) {
            for (int o = first; o <= until; o++) {
                System.arraycopy(fixed[o], 0, source, 0, length);
                for (int p = first; p <= until; p++) {
                    if (within[p][o].length > 0) {
                        addFrom(within[p][o], fluence[p][i]);
                        if (p < 2) {
                            addFrom(within[p][o], came[p]);
                        }
                    }
                }
                if (o < 2) {
                    addFrom(elastic, fluence[o][i]);
                }
                sweep(sweeps[o], source, fluence[o][i]);
            }
        }
        for (int o = first; o <= until; o++) {
            double[] sum = fluence[o][i].clone();
            for (int j = 0; o < 2 && j < length; j++) {
                sum[j] += came[o][j];
            }
            reacting[o][i] = sum;
        }
    }

    /** What in one bin of energy makes more in the same bin, direction to direction; empty where next to nothing. */
    private double[][][] within(int i, int first, int until) {
        double[][][] all = new double[Medium.HADRONS][Medium.HADRONS][0];
        for (int p = first; p <= until; p++) {
            for (int o = first; o <= until; o++) {
                double number = reactions.number(p, o, i)[i] * medium.grid().widthMeV(i);
                if (number > NEGLIGIBLE * medium.reactions(SPECIES[p])[i]) {
                    all[p][o] = mixed(number, reactions.cosine(p, o, i)[i]);
                }

            }
        }
        return all;
    }

    private static double[] mixed(double number, double cosine) {
        int c = Ordinates.lower(cosine);
        double w = Ordinates.upper(c, cosine);
        double[] flat = new double[Ordinates.COUNT * Ordinates.COUNT];
        for (int to = 0; to < Ordinates.COUNT; to++) {
            for (int from = 0; from < Ordinates.COUNT; from++) {
                flat[to * Ordinates.COUNT + from] = number * ((1 - w) * Ordinates.kernel(c)[to][from]
                        + w * Ordinates.kernel(c + 1)[to][from]);
            }
        }
        return flat;
    }

    private void addFrom(double[] flat, double[] values) {
        for (int to = 0; to < Ordinates.COUNT; to++) {
            for (int from = 0; from < Ordinates.COUNT; from++) {
                double factor = flat[to * Ordinates.COUNT + from];
                if (factor > 0) {
                    add(source, to * points, values, from * points, factor);
                }
            }
        }
    }

    private void add(double[] sum, int to, double[] values, int from, double factor) {
        for (int j = 0; j < points; j++) {
            sum[to + j] += factor * values[from + j];
        }
    }

    /** Source of a kind from all higher energies. */
    private double[] made(int o, int i) {
        Arrays.fill(used, false);
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = i + 1; k <= last; k++) {
                double number = reactions.number(p, o, k)[i] * medium.grid().widthMeV(k);
                if (number > 0 && reacting[p][k] != null) {
                    double cosine = reactions.cosine(p, o, k)[i];
                    int c = Ordinates.lower(cosine);
                    double w = Ordinates.upper(c, cosine);
                    collect(c, number * (1 - w), reacting[p][k]);
                    collect(c + 1, number * w, reacting[p][k]);
                }
            }
        }
        double[] sum = new double[length];
        for (int c = 0; c < classes.length; c++) {
            if (used[c]) {
                double[][] kernel = Ordinates.kernel(c);
                for (int to = 0; to < Ordinates.COUNT; to++) {
                    for (int from = 0; from < Ordinates.COUNT; from++) {
                        if (kernel[to][from] > 0) {
                            add(sum, to * points, classes[c], from * points, kernel[to][from]);
                        }
                    }
                }
            }
        }
        return sum;
    }

    private void collect(int c, double factor, double[] values) {
        if (factor <= 0) {
            return;
        }
        double[] sum = classes[c];
        if (!used[c]) {
            used[c] = true;
            for (int j = 0; j < length; j++) {
                sum[j] = factor * values[j];
            }
            return;
        }
        for (int j = 0; j < length; j++) {
            sum[j] += factor * values[j];
        }
    }

    /** Rate at which charged particles leave a bin downward (1 per g/cm2). */
    private double slowing(int o, int i) {
        if (o == 0) {
            return 0;
        }
        double[] loss = medium.loss(SPECIES[o]);
        double edge = i == 0 ? loss[0] : Math.sqrt(loss[i] * loss[i - 1]);
        return edge / medium.grid().widthMeV(i);
    }

    private double lost(int o, int i) {
        return medium.reactions(SPECIES[o])[i] + (o < 2 ? reactions.elastic(i) : 0) + slowing(o, i);
    }

    private void slowedInto(int o, int i, double[] sum) {
        if (o > 0 && i < last && fluence[o][i + 1] != null) {
            double factor = slowing(o, i + 1) * medium.grid().widthMeV(i + 1) / medium.grid().widthMeV(i);
            for (int j = 0; j < length; j++) {
                sum[j] += factor * fluence[o][i + 1][j];
            }
        }
    }

    private void place(StraightBeams straight) {
        double[] along = straight.places();
        for (int m = 0; m < Ordinates.DOWN; m++) {
            int k = 0;
            for (int j = 0; j < points; j++) {
                double x = straight.along(depth[j], Ordinates.cosine(m));
                while (k < along.length - 2 && along[k + 1] < x) {
                    k++;
                }
                before[m * points + j] = k;
                share[m * points + j] = x > along[along.length - 1] ? -1 : (x - along[k]) / (along[k + 1] - along[k]);
            }
        }
    }

    /** Adds what stands along rays to all directions down. */
    private void addAlong(double[] sum, double[] along) {
        for (int at = 0; at < before.length; at++) {
            double w = share[at];
            sum[at] += w < 0 ? 0 : (1 - w) * along[before[at]] + w * along[before[at] + 1];
        }
    }

    private void addCaptured(double[] sum, int nucleon, int i) {
        double number = reactions.captured(nucleon)[i];
        for (int m = 0; number > 0 && m < Ordinates.COUNT; m++) {
            for (int j = 0; j < points; j++) {
                sum[m * points + j] += number * captures[j];
            }
        }
    }

    /** Negative pions that come to rest, by depth. */
    private void stop() {
        int first = medium.fastFrom();
        double rate = slowing(2, first) * medium.grid().widthMeV(first) * AngularReactions.negative();
        for (int j = 0; j < points; j++) {
            captures[j] = rate * mean(fluence[2][first], j);
        }
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = first; k <= last; k++) {
                double number = reactions.slowNegative(p, k) * medium.grid().widthMeV(k);
                for (int j = 0; number > 0 && reacting[p][k] != null && j < points; j++) {
                    captures[j] += number * mean(reacting[p][k], j);
                }
            }
        }
    }

    private void slowDown(int o, int i) {
        double[] sum = new double[length];
        slowedInto(o, i, sum);
        fluence[o][i] = new double[length];
        sweep(sweeps(lost(o, i)), sum, fluence[o][i]);
    }

    private void muons(int i) {
        double[] sum = new double[length];
        for (int k = 0; k <= last; k++) {
            double number = medium.muons().made(k, i) * medium.grid().widthMeV(k);
            for (int j = 0; number > 0 && j < length; j++) {
                sum[j] += number * fluence[2][k][j];
            }
        }
        slowedInto(MUON, i, sum);
        fluence[MUON][i] = new double[length];
        sweep(sweeps(lost(MUON, i)), sum, fluence[MUON][i]);
    }

    private double[] electromagnetic(double showerLength) {
        double[] sum = new double[length];
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = medium.fastFrom(); k <= last; k++) {
                double width = medium.grid().widthMeV(k);
                double ahead = reactions.neutralPions(p, k) * width;
                double even = reactions.gammas(p, k) * width;
                for (int j = 0; j < points; j++) {
                    double all = even * mean(reacting[p][k], j);
                    for (int m = 0; m < Ordinates.COUNT; m++) {
                        sum[m * points + j] += ahead * reacting[p][k][m * points + j] + all;
                    }
                }
            }
        }
        for (int m = 0; m < Ordinates.COUNT; m++) {
            for (int j = 0; j < points; j++) {
                sum[m * points + j] += captures[j] * reactions.capturedGammas();
            }
        }
        double[] energy = new double[length];
        sweep(sweeps(1 / showerLength), sum, energy);
        return energy;
    }

    /** By cell and direction: what is left of the fluence, and how much of the sources at both ends of the way. */
    private double[][] sweeps(double lost) {
        double[][] all = new double[3][Ordinates.DOWN * (points - 1)];
        double lastStep = -1;
        for (int m = 0; m < Ordinates.DOWN; m++) {
            for (int j = 0; j + 1 < points; j++) {
                int at = m * (points - 1) + j;
                double step = depth[j + 1] - depth[j];
                if (j > 0 && Math.abs(step - lastStep) < 1e-9) {
                    for (double[] part : all) {
                        part[at] = part[at - 1];
                    }
                    continue;
                }
                lastStep = step;
                double path = step / Ordinates.cosine(m);
                double tau = lost * path;
                double left = Math.exp(-tau);
                double mean = tau < 1e-3 ? 1 - tau / 2 + tau * tau / 6 : -Math.expm1(-tau) / tau;
                double near = tau < 1e-3 ? path * (0.5 - tau / 6) : (1 - mean) / lost;
                all[0][at] = left;
                all[1][at] = tau < 1e-3 ? path * (0.5 - tau / 3) : (mean - left) / lost;
                all[2][at] = near;
            }
        }
        return all;
    }

    private void sweep(double[][] sweeps, double[] made, double[] result) {
        int cells = points - 1;
        for (int m = 0; m < Ordinates.DOWN; m++) {
            int at = m * points;
            double running = 0;
            result[at] = 0;
            for (int j = 0; j < cells; j++) {
                int cell = m * cells + j;
                running = running * sweeps[0][cell] + made[at + j] * sweeps[1][cell]
                        + made[at + j + 1] * sweeps[2][cell];
                result[at + j + 1] = running;
            }
            at = (m + Ordinates.DOWN) * points;
            running = 0;
            result[at + cells] = 0;
            for (int j = cells - 1; j >= 0; j--) {
                int cell = m * cells + j;
                running = running * sweeps[0][cell] + made[at + j + 1] * sweeps[1][cell]
                        + made[at + j] * sweeps[2][cell];
                result[at + j] = running;
            }
        }
    }
}
