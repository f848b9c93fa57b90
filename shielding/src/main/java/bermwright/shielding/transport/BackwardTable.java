// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.Arrays;

/**
 * For every particle of a field in one material, what may have made it there: reactions, collisions and slowing down,
 * read against the way of time.
 *
 * <p>States: neutrons, made protons, charged pions and muons by energy; then the energy of electrons and gammas; then
 * groups of slow neutrons. Which parent is drawn goes by a guess at the field; the weights make the answer one that
 * does not hang on the guess.
 */
final class BackwardTable {
    static final int KINDS = 4;
    private static final int MUON = 3;
    private static final int[] SPECIES = {Medium.NEUTRON, Medium.MADE_PROTON, Medium.PION, Medium.MUON};
    /** Stands for straight ahead. */
    static final float STRAIGHT = Float.POSITIVE_INFINITY;
    private static final float[] STEEPNESS = steepness();

    private final Medium medium;
    private final AngularReactions reactions;
    private final SlowCrossSections slow;
    private final double[] guess;
    private final int size;
    private final int last;
    private final double[] lost;
    private final double[] factor;
    private final int[][] parent;
    private final double[][] chance;
    private final float[][] turn;
    private final boolean[][] reacts;
    /** The entries of the state that is being filled. */
    private int count;
    private int[] parents = new int[256];
    private double[] weights = new double[256];
    private float[] turns = new float[256];
    private boolean[] reacting = new boolean[256];

    /** The table of a material, for energies up to one and a guess at the field by state. */
    BackwardTable(Medium medium, AngularReactions reactions, double showerLength, int last, double[] guess) {
        this.medium = medium;
        this.reactions = reactions;
        this.guess = guess;
        this.last = last;
        slow = new SlowCrossSections(medium.material());
        size = medium.grid().size();
        int states = states(size);
        lost = new double[states];
        factor = new double[states];
        parent = new int[states][];
        chance = new double[states][];
        turn = new float[states][];
        reacts = new boolean[states][];
        for (int kind = 0; kind < KINDS; kind++) {
            for (int i = kind == 0 ? medium.fastFrom() : 0; i <= last; i++) {
                fast(kind, i);
            }
        }
        electromagnetic(showerLength);
        for (int g = 0; g < SlowCrossSections.GROUPS; g++) {
            slow(g);
        }
    }

    static int states(int size) {
        return KINDS * size + 1 + SlowCrossSections.GROUPS;
    }

    static int electromagneticState(int size) {
        return KINDS * size;
    }

    static int slowState(int size, int group) {
        return KINDS * size + 1 + group;
    }

    /** Rate at which a state ends or changes (1 per g/cm2). */
    double lost(int state) {
        return lost[state];
    }

    /** By what a weight, over the guess at its state, changes from a state to any parent (1). */
    double factor(int state) {
        return factor[state];
    }

    /** Draws a parent: the index of the entry. */
    int draw(int state, double at) {
        double[] sums = chance[state];
        int k = Arrays.binarySearch(sums, at);
        return Math.min(sums.length - 1, k >= 0 ? k + 1 : -k - 1);
    }

    int parent(int state, int entry) {
        return parent[state][entry];
    }

    /** The a of a turn whose cosine is spread as exp(a c); {@link #STRAIGHT} where there is none. */
    double turn(int state, int entry) {
        return turn[state][entry];
    }

    /** Whether the parent reacted, so that particles that came in straight may have stood in its place. */
    boolean reacts(int state, int entry) {
        return reacts[state][entry];
    }

    boolean hasParents(int state) {
        return parent[state].length > 0;
    }

    private double width(int k) {
        return medium.grid().widthMeV(k);
    }

    private double slowing(int kind, int i) {
        if (kind == 0) {
            return 0;
        }
        double[] loss = medium.loss(SPECIES[kind]);
        return (i == 0 ? loss[0] : Math.sqrt(loss[i] * loss[i - 1])) / width(i);
    }

    private void fast(int kind, int i) {
        int state = kind * size + i;
        lost[state] = medium.reactions(SPECIES[kind])[i] + (kind < 2 ? reactions.elastic(i) : 0) + slowing(kind, i);
        if (kind > 0 && i < last) {
            add(state + 1, slowing(kind, i + 1) * width(i + 1) / width(i), STRAIGHT, false);
        }
        if (kind == MUON) {
            for (int k = 0; k <= last; k++) {
                add(2 * size + k, medium.muons().made(k, i) * width(k), STRAIGHT, false);
            }
        } else if (i >= medium.fastFrom()) {
            if (kind < 2) {
                add(state, reactions.elastic(i), steepness(AngularReactions.ELASTIC_COSINE), false);
                captured(reactions.captured(kind)[i]);
            }
            for (int p = 0; p < Medium.HADRONS; p++) {
                for (int k = i; k <= last; k++) {
                    products(p, kind, k, i);
                }
            }
        }
        close(state);
    }

    private void products(int p, int kind, int k, int i) {
        double all = reactions.number(p, kind, k)[i];
        if (all <= 0) {
            return;
        }
        MaterialYields yields = medium.yields(p, k);
        CascadeYields.Fast forward = CascadeYields.Fast.values()[2 * kind];
        CascadeYields.Fast backward = CascadeYields.Fast.values()[2 * kind + 1];
        double ahead = Math.min(all, medium.products(p, kind, k)[i]);
        double energy = medium.grid().energyMeV(i);
        add(p * size + k, ahead * width(k), steepness(yields.cosine(forward, energy)), true);
        add(p * size + k, (all - ahead) * width(k), steepness(yields.cosine(backward, energy)), true);
    }

    /** What a negative pion makes that is captured at rest, so many of it; evenly. */
    private void captured(double number) {
        if (number <= 0) {
            return;
        }
        int first = medium.fastFrom();
        add(2 * size + first, number * slowing(2, first) * width(first) * AngularReactions.negative(), 0, false);
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = first; k <= last; k++) {
                add(p * size + k, number * reactions.slowNegative(p, k) * width(k), 0, true);
            }
        }
    }

    private void electromagnetic(double showerLength) {
        int state = electromagneticState(size);
        lost[state] = 1 / showerLength;
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = medium.fastFrom(); k <= last; k++) {
                add(p * size + k, reactions.neutralPions(p, k) * width(k), STRAIGHT, true);
                add(p * size + k, reactions.gammas(p, k) * width(k), 0, true);
            }
        }
        captured(reactions.capturedGammas());
        close(state);
    }

    private void slow(int g) {
        int state = slowState(size, g);
        lost[state] = slow.total(g);
        add(state, slow.total(g) - slow.removal(g), steepness(slow.cosine(g, g)), false);
        for (int from = g + 1; from < SlowCrossSections.GROUPS; from++) {
            add(slowState(size, from), slow.transfer(from, g), steepness(slow.cosine(from, g)), false);
        }
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = medium.fastFrom(); k <= last; k++) {
                add(p * size + k, reactions.slow(p, k)[g] * width(k), 0, true);
            }
        }
        captured(reactions.capturedSlow()[g]);
        close(state);
    }

    /** Parents by state, so many of the child for one of them, and how the child's way turns off theirs. */
    private void add(int state, double rate, float a, boolean isReaction) {
        double weight = rate * guess[state];
        if (!(weight > 0)) {
            return;
        }
        if (count == parents.length) {
            parents = Arrays.copyOf(parents, 2 * count);
            weights = Arrays.copyOf(weights, 2 * count);
            turns = Arrays.copyOf(turns, 2 * count);
            reacting = Arrays.copyOf(reacting, 2 * count);
        }
        parents[count] = state;
        weights[count] = weight;
        turns[count] = a;
        reacting[count++] = isReaction;
    }

    private void close(int state) {
        double sum = 0;
        double[] sums = new double[count];
        for (int e = 0; e < count; e++) {
            sum += weights[e];
            sums[e] = sum;
        }
        for (int e = 0; e < count; e++) {
            sums[e] /= sum;
        }
        factor[state] = count == 0 ? 0 : sum / (lost[state] * guess[state]);
        parent[state] = Arrays.copyOf(parents, count);
        chance[state] = sums;
        turn[state] = Arrays.copyOf(turns, count);
        reacts[state] = Arrays.copyOf(reacting, count);
        count = 0;
    }

    private static float steepness(double cosine) {
        double place = (Math.max(-1, Math.min(1, cosine)) + 1) / 2 * (STEEPNESS.length - 1);
        return STEEPNESS[(int) Math.round(place)];
    }

    private static float[] steepness() {
        float[] all = new float[2001];
        for (int k = 0; k < all.length; k++) {
            all[k] = (float) Ordinates.steepness(2.0 * k / (all.length - 1) - 1);
        }
        return all;
    }
}
