// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Makes the shipped table {@code cascade-yields.csv} from the cascade and evaporation; repeatable from its seed.
 *
 * <p>Run: {@code java -cp target/classes:target/test-classes:… bermwright.shielding.transport.CascadeYieldTable FILE}.
 */
final class CascadeYieldTable {
    static final int EVENTS = 5_000;
    static final long SEED = 20_261_130L;
    static final int BINS = 48;
    /** Bins of energy that share one mean cosine. */
    static final int IN_COSINE = 4;
    static final double LEAST = 20;
    static final double[] SLOW = {0.01, 0.1, 0.3, 0.6, 1, 1.5, 2.5, 3.5, 5, 7, 10, 14, 20};
    static final double[] ENERGIES = {20, 30, 45, 70, 100, 150, 200, 300, 450, 700, 1000, 1500, 2200, 3300, 5000, 7000,
        10000, 20000, 50000, 100000, 200000};
    static final int[][] TARGETS = {{12, 6}, {14, 7}, {16, 8}, {24, 12}, {27, 13}, {28, 14}, {40, 20}, {56, 26}};
    static final String[] PROJECTILES = {"n", "p", "pi+", "pi-"};
    static final String[] FAST = {"n forward", "n backward", "p forward", "p backward", "pi forward",
        "pi backward"};
    /** Name and energy (MeV) under which the capture of stopped negative pions stands. */
    static final String STOPPED = "stopped pi-";
    static final double STOPPED_MEV = 140;

    private final double[][] fast = new double[FAST.length][BINS];
    private final double[][] cosine = new double[FAST.length][BINS / IN_COSINE];
    private final double[][] counted = new double[FAST.length][BINS / IN_COSINE];
    private final double[] slow = new double[SLOW.length - 1];
    /**
     * Pi0 energy, slow cascade protons and hydrogen clusters, evaporated protons, deuterons and tritons, helium,
     * recoil, gammas of the nucleus (MeV).
     */
    private final double[] energy = new double[7];
    /** Charged pions below 20 MeV, and the negative ones among them. */
    private final double[] slowPions = new double[2];

    private CascadeYieldTable() {
    }

    public static void main(String[] arguments) throws IOException {
        List<int[]> cases = new ArrayList<>();
        for (int p = 0; p < PROJECTILES.length; p++) {
            for (int t = 0; t < TARGETS.length; t++) {
                for (int e = 0; e < ENERGIES.length; e++) {
                    cases.add(new int[] {p, t, e});
                }
            }
        }
        for (int t = 0; t < TARGETS.length; t++) {
            cases.add(new int[] {PROJECTILES.length, t, 0});
        }
        String[] blocks = new String[cases.size()];
        IntStream.range(0, blocks.length).parallel().forEach(i -> blocks[i] = block(cases.get(i), EVENTS));
        StringBuilder text = new StringBuilder(head());
        for (String block : blocks) {
            text.append(block);
        }
        Files.writeString(Path.of(arguments[0]), text.toString());
    }

    static String head() {
        return """
                # Yields of one nonelastic reaction of a nucleon or pion with a nucleus, by an intranuclear cascade
                # and evaporation made of published formulas (its generator is in the test tree), %d reactions a case,
                # seed %d.
                # fast kinds: particles in %d bins, even in (1 - ln(E'/20 MeV)/ln(E/20 MeV))^(2/3), the lowest energies
                # first, and their mean cosine by %d bins;
                # slow: neutrons in bins with the edges (MeV) %s;
                # energy: MeV a reaction in neutral pions, slow cascade protons and hydrogen clusters, evaporated
                # protons, deuterons and tritons, helium, recoil, gammas of the nucleus;
                # slow pions: charged ones below 20 MeV, and the negative ones among them;
                # stopped pi-: capture of a negative pion at rest, its bins as of a projectile of 140 MeV.
                projectile,mass,charge,energy_MeV,kind,values
                """.formatted(EVENTS, SEED, BINS, IN_COSINE, java.util.Arrays.toString(SLOW));
    }

    /** The rows of one case. */
    static String block(int[] which, int events) {
        int[] target = TARGETS[which[1]];
        boolean stopped = which[0] == PROJECTILES.length;
        double projectile = stopped ? STOPPED_MEV : ENERGIES[which[2]];
        CascadeYieldTable tally = new CascadeYieldTable();
        SplittableRandom random = new SplittableRandom(SEED + which[0] * 1000L + which[1] * 100L + which[2]);
        Cascade cascade = new Cascade(new Nuclide(target[0], target[1]), random);
        boolean pion = which[0] > 1;
        int charge = new int[] {0, 1, 1, -1, -1}[which[0]];
        int done = 0;
        int shots = 0;
        while (done < events) {
            shots++;
            Residue residue = stopped ? cascade.absorbAtRest() : cascade.shoot(pion, charge, projectile);
            if (residue != null) {
                tally.add(cascade, residue, random, projectile);
                done++;
            }
        }
        StringBuilder rows = new StringBuilder();
        String start = (stopped ? STOPPED : PROJECTILES[which[0]]) + "," + target[0] + "," + target[1] + ","
                + String.format(Locale.ROOT, "%.0f", projectile) + ",";
        for (int k = 0; k < FAST.length; k++) {
            rows.append(start).append(FAST[k]).append(',').append(words(tally.fast[k], events)).append('\n');
        }
        for (int k = 0; k < FAST.length; k++) {
            double[] mean = tally.cosine[k].clone();
            for (int b = 0; b < mean.length; b++) {
                mean[b] = events * (tally.counted[k][b] > 0 ? mean[b] / tally.counted[k][b] : k % 2 == 0 ? 1 : -0.5);
            }
            rows.append(start).append(FAST[k]).append(" cosine,").append(words(mean, events)).append('\n');
        }
        rows.append(start).append("slow,").append(words(tally.slow, events)).append('\n');
        rows.append(start).append("energy,").append(words(tally.energy, events)).append('\n');
        rows.append(start).append("slow pions,").append(words(tally.slowPions, events)).append('\n');
        double edge = new Nuclide(target[0], target[1]).edge();
        rows.append(start).append("cross section mb,").append(brief(Math.PI * edge * edge * 10 * events / shots))
                .append('\n');
        return rows.toString();
    }

    private void add(Cascade cascade, Residue residue, SplittableRandom random, double projectile) {
        for (CascadeParticle p : cascade.emitted()) {
            if (p.pion && p.charge == 0) {
                energy[0] += p.energy + FreeCollision.PION;
            } else if (p.pion) {
                fast(p, p.uz >= 0 ? 4 : 5, projectile);
                slowPions[0] += p.energy < LEAST ? 1 : 0;
                slowPions[1] += p.energy < LEAST && p.charge < 0 ? 1 : 0;
            } else if (p.charge == 1) {
                fast(p, p.uz >= 0 ? 2 : 3, projectile);
                energy[1] += p.energy < LEAST ? p.energy : 0;
            } else if (p.energy < LEAST) {
                slow(p.energy);
            } else {
                fast(p, p.uz >= 0 ? 0 : 1, projectile);
            }
        }
        for (Coalescence.Cluster cluster : cascade.clusters()) {
            energy[cluster.charge() == 2 ? 4 : 1] += cluster.energy();
        }
        List<Evaporation.Emission> emissions = new ArrayList<>();
        energy[6] += Evaporation.cool(residue, random, emissions);
        for (Evaporation.Emission e : emissions) {
            if (e.charge() == 0) {
                slow(Math.min(e.energy(), LEAST * 0.999));
            } else {
                energy[e.charge() == 2 ? 4 : e.mass() == 1 ? 2 : 3] += e.energy();
            }
        }
        energy[5] += residue.recoil();
    }

    private void fast(CascadeParticle p, int kind, double projectile) {
        if (p.energy > LEAST && projectile > LEAST) {
            double u = Math.log(p.energy / LEAST) / Math.log(projectile / LEAST);
            int bin = Math.min(BINS - 1, (int) (CascadeYields.place(u) * BINS));
            fast[kind][bin]++;
            cosine[kind][bin / IN_COSINE] += p.uz;
            counted[kind][bin / IN_COSINE]++;
        }
    }

    private void slow(double neutron) {
        for (int i = 0; i < slow.length; i++) {
            if (neutron < SLOW[i + 1]) {
                slow[i]++;
                return;
            }
        }
    }

    private static String words(double[] sums, int events) {
        StringBuilder words = new StringBuilder();
        for (double sum : sums) {
            words.append(words.isEmpty() ? "" : " ").append(brief(sum / events));
        }
        return words.toString();
    }

    private static String brief(double value) {
        return value == 0 ? "0" : String.format(Locale.ROOT, "%.3g", value).replaceAll("(\\.\\d*?)0+$", "$1")
                .replaceAll("\\.$", "");
    }
}
