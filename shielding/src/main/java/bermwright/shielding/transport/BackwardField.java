// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What walks by chance go by that start at a station and follow particles back to where they came from: for each
 * particle what may have made it, one step back, in soil and in the layers of a skin, and what comes in straight.
 *
 * <p>It holds the same reactions and cross sections as the slab of {@link Penetration}. Products that go ahead and
 * products that go back are turned apart, each spread evenly about its mean angle; slow neutrons are followed from
 * collision to collision. Which way a walk takes is drawn by the fluence of the slab at one depth, which its weights
 * take out again.
 */
public final class BackwardField {
    private static final double FAINT = 1e-9;
    private static final double LEAST_LOG = -500;

    private final int size;
    private final double[] guess;
    /** By state and depth of the slab, the logarithm of its fluence over the guess. */
    private final double[] depths;
    private final float[][] wealth;
    private final BackwardTable[] tables;
    private final double[] starts;
    private final double startWeight;
    private final double[] places;
    private final double[][][] reacting;
    private final double[][] neutrons;

    /**
     * What a particle at the station counts.
     *
     * @param fast            by kind (neutrons, protons, charged pions, muons) and energy of the grid (Sv m2)
     * @param electromagnetic energy of electrons and gammas (Sv m2 per MeV)
     * @param slow            slow neutrons by group (Sv m2)
     */
    public record Counts(double[][] fast, double electromagnetic, double[] slow) {
    }

    /** The field of a slab at one of its depths, with what comes in straight, and the skin's layers from outside. */
    BackwardField(SlabHadrons slab, int point, StraightBeams straight, List<BeamTransport> media, Counts counts) {
        Medium soil = media.get(0).medium();
        size = soil.grid().size();
        places = straight.places();
        reacting = new double[2][size][];
        neutrons = new double[size][];
        for (int k = 0; k < size; k++) {
            reacting[0][k] = straight.reacting(0, k);
            reacting[1][k] = straight.reacting(1, k);
            neutrons[k] = straight.neutrons(k);
        }
        AngularReactions reactions = new AngularReactions(soil);
        guess = guess(slab, point, soil, reactions, media.get(0).showerLengthGCm2());
        depths = slab.depths();
        wealth = new float[guess.length][depths.length];
        for (int j = 0; j < depths.length; j++) {
            double[] there = guess(slab, j, soil, reactions, media.get(0).showerLengthGCm2());
            for (int state = 0; state < guess.length; state++) {
                wealth[state][j] = (float) (guess[state] > 0 && there[state] > 0
                        ? Math.log(there[state] / guess[state]) : LEAST_LOG);
            }
        }
        List<BackwardTable> made = new ArrayList<>();
        for (BeamTransport medium : media) {
            made.add(new BackwardTable(medium.medium(), made.isEmpty() ? reactions
                    : new AngularReactions(medium.medium()), medium.showerLengthGCm2(), slab.last(), guess));
        }
        tables = made.toArray(BackwardTable[]::new);
        starts = new double[guess.length];
        startWeight = starts(counts, soil);
    }

    private double[] guess(SlabHadrons slab, int point, Medium soil, AngularReactions reactions, double shower) {
        double[] guess = new double[BackwardTable.states(size)];
        double most = 0;
        for (int kind = 0; kind < BackwardTable.KINDS; kind++) {
            for (int i = 0; i <= slab.last(); i++) {
                double sum = 0;
                for (int m = 0; (kind > 0 || i >= soil.fastFrom()) && m < Ordinates.COUNT; m++) {
                    double came = kind > 1 || m >= Ordinates.DOWN ? 0
                            : at(reacting[kind][i], slab.depths()[point] / Ordinates.cosine(m));
                    sum += Ordinates.weight(m) / 2 * (slab.fluence(kind, i, m, point) + came);
                }
                guess[kind * size + i] = sum;
                most = Math.max(most, sum * soil.grid().widthMeV(i));
            }
        }
        for (int kind = 0; kind < BackwardTable.KINDS; kind++) {
            for (int i = kind == 0 ? soil.fastFrom() : 0; i <= slab.last(); i++) {
                double least = FAINT * most / soil.grid().widthMeV(i);
                guess[kind * size + i] = Math.max(least, guess[kind * size + i]);
            }
        }
        guessSlow(guess, soil, reactions, shower, slab.last());
        return guess;
    }

    /** Electrons, gammas and slow neutrons as in soil without end that is full of the fast ones guessed at. */
    private void guessSlow(double[] guess, Medium soil, AngularReactions reactions, double showerLength, int last) {
        SlowCrossSections slow = new SlowCrossSections(soil.material());
        double[] groups = new double[SlowCrossSections.GROUPS];
        double energy = 0;
        for (int p = 0; p < Medium.HADRONS; p++) {
            for (int k = soil.fastFrom(); k <= last; k++) {
                double number = guess[p * size + k] * soil.grid().widthMeV(k);
                energy += number * (reactions.neutralPions(p, k) + reactions.gammas(p, k));
                for (int g = 0; g < groups.length; g++) {
                    groups[g] += number * reactions.slow(p, k)[g];
                }
            }
        }
        guess[BackwardTable.electromagneticState(size)] = energy * showerLength;
        for (int g = groups.length - 1; g >= 0; g--) {
            double fluence = groups[g] / slow.removal(g);
            guess[BackwardTable.slowState(size, g)] = Math.max(fluence, Double.MIN_NORMAL);
            for (int lower = 0; lower < g; lower++) {
                groups[lower] += fluence * slow.transfer(g, lower);
            }
        }
    }

    private double starts(Counts counts, Medium soil) {
        double sum = 0;
        for (int state = 0; state < guess.length; state++) {
            double count = 0;
            if (state < BackwardTable.KINDS * size) {
                count = counts.fast[state / size][state % size] * soil.grid().widthMeV(state % size);
            } else if (state == BackwardTable.electromagneticState(size)) {
                count = counts.electromagnetic;
            } else {
                count = counts.slow[state - BackwardTable.slowState(size, 0)];
            }
            sum += count * guess[state];
            starts[state] = sum;
        }
        for (int state = 0; state < starts.length; state++) {
            starts[state] /= sum;
        }
        return sum;
    }

    /**
     * Draws the particle that a walk starts with.
     *
     * @param at an even chance (1), 0 to below 1
     * @return its state
     */
    public int start(double at) {
        int k = Arrays.binarySearch(starts, at);
        int state = k >= 0 ? k + 1 : -k - 1;
        while (state > 0 && starts[state] == starts[state - 1]) {
            state++;
        }
        return Math.min(state, starts.length - 1);
    }

    /**
     * The weight of a walk at its start (Sv).
     *
     * @return weight
     */
    public double startWeight() {
        return startWeight;
    }

    /**
     * How much more there is of a particle at a depth of level soil than where the guess was taken: what a walk is
     * worth there.
     *
     * @param state    the particle
     * @param depthGCm2 depth (g/cm2), zero or more
     * @return ratio (1), positive
     */
    public double wealth(int state, double depthGCm2) {
        int k = Arrays.binarySearch(depths, depthGCm2);
        k = Math.max(0, Math.min(depths.length - 2, k >= 0 ? k : -k - 2));
        double w = Math.min(1, (depthGCm2 - depths[k]) / (depths[k + 1] - depths[k]));
        return Math.exp(wealth[state][k] + w * (wealth[state][k + 1] - wealth[state][k]));
    }

    /**
     * Whether a state is a slow neutron.
     *
     * @param state the state
     * @return true below 20 MeV
     */
    public boolean isSlow(int state) {
        return state > BackwardTable.electromagneticState(size);
    }

    /**
     * Rate at which a particle collides or changes.
     *
     * @param material 0 soil, 1 and on the layers of the skin from outside
     * @param state    the particle
     * @return rate (1 per g/cm2), positive
     */
    public double lost(int material, int state) {
        return tables[material].lost(state);
    }

    /**
     * The lowest of these rates in any material.
     *
     * @param state the particle
     * @return rate (1 per g/cm2), positive
     */
    public double leastLost(int state) {
        double least = Double.POSITIVE_INFINITY;
        for (BackwardTable table : tables) {
            least = Math.min(least, table.lost(state));
        }
        return least;
    }

    /**
     * Whether anything makes a particle in a material.
     *
     * @param material the material
     * @param state    the particle
     * @return true where a parent can be drawn
     */
    public boolean hasParents(int material, int state) {
        return tables[material].hasParents(state);
    }

    /**
     * Draws what made a particle.
     *
     * @param material the material
     * @param state    the particle
     * @param at       an even chance (1), 0 to below 1
     * @return the entry
     */
    public int draw(int material, int state, double at) {
        return tables[material].draw(state, at);
    }

    /**
     * The parent of an entry.
     *
     * @param material the material
     * @param state    the particle
     * @param entry    the entry
     * @return the parent's state
     */
    public int parent(int material, int state, int entry) {
        return tables[material].parent(state, entry);
    }

    /**
     * How the parent's way turns off the particle's: its cosine c is spread as exp(a c).
     *
     * @param material the material
     * @param state    the particle
     * @param entry    the entry
     * @return a (1); infinite where both go the same way
     */
    public double turn(int material, int state, int entry) {
        return tables[material].turn(state, entry);
    }

    /**
     * By what the weight of a walk changes with a step.
     *
     * @param material the material
     * @param state    the particle
     * @return factor (1)
     */
    public double factor(int material, int state) {
        return tables[material].factor(state);
    }

    /**
     * What particles that came in straight add, which may stand in a parent's place, for a walk of weight one.
     *
     * @param material the material
     * @param state    the particle
     * @param entry    the entry
     * @param wayGCm2  what lies between the place and the sky the way the parent came (g/cm2)
     * @return share of the weight (1); 0 where the parent did not react
     */
    public double came(int material, int state, int entry, double wayGCm2) {
        int parent = tables[material].parent(state, entry);
        return parent < 2 * size && tables[material].reacts(state, entry)
                ? at(reacting[parent / size][parent % size], wayGCm2) / guess[parent] : 0;
    }

    /**
     * What neutrons add that ions let go ahead at a collision, for a walk of weight one.
     *
     * @param material the material
     * @param state    the particle
     * @param wayGCm2  what lies between the place and the sky along the particle's way (g/cm2)
     * @return share of the weight (1)
     */
    public double letGo(int material, int state, double wayGCm2) {
        return state < size ? at(neutrons[state], wayGCm2) / (guess[state] * lost(material, state)) : 0;
    }

    private double at(double[] values, double place) {
        int k = Arrays.binarySearch(places, place);
        k = k >= 0 ? k : -k - 2;
        if (k >= places.length - 1) {
            return 0;
        }
        double w = (place - places[k]) / (places[k + 1] - places[k]);
        return (1 - w) * values[k] + w * values[k + 1];
    }
}
