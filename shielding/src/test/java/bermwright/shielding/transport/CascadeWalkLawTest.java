// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.shielding.material.Material;
import bermwright.shielding.spectrum.CosmicSpectrum;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class CascadeWalkLawTest {
    private static final double FROM_MEV = 3000;
    private static final double TO_MEV = 300_000;
    private static final double SLOPE = 2.7;
    private static final double[] EDGES = {50, 100, 150, 200, 250, 300, 400, 500};
    private static final double STEP = 1;
    /** What the mean angle and the lost way back cost, and what 1500 walks scatter by. */
    private static final double FAST = 0.15;

    @Test
    void marchAndWalksAgreeOnFastHadronsThroughOxygen() {
        agree("O", 2000);
    }

    @Test
    void marchAndWalksAgreeWherePionsDecay() {
        agree("N", 0.5);
    }

    private static void agree(String element, double density) {
        Medium medium = new Medium(Material.of("test", density, Material.Kind.GAS, Map.of(element, 1.0), "test"),
                new EnergyGrid(Penetration.Resolution.STANDARD.pointsInDecade()));
        Nuclide nuclide = element.equals("O") ? new Nuclide(16, 8) : new Nuclide(14, 7);
        // The grid stands for half a step beyond its points.
        int least = 0;
        while (medium.grid().energyMeV(least) < 100) {
            least++;
        }
        double threshold = medium.grid().upperMeV(least - 1);
        double[][] walks = new CascadeWalk(medium, nuclide, EDGES, threshold, new SplittableRandom(11))
                .walk(1500, FROM_MEV, TO_MEV, SLOPE);
        double[][] march = march(medium, least);
        String[] kinds = {"neutrons", "protons", "pions"};
        for (int kind = 0; kind < kinds.length; kind++) {
            double sumWalks = 0;
            double sumMarch = 0;
            for (int i = 0; i < EDGES.length - 1; i++) {
                sumWalks += walks[kind][i] * (EDGES[i + 1] - EDGES[i]);
                sumMarch += march[kind][i] * (EDGES[i + 1] - EDGES[i]);
            }
            assertEquals(1, sumMarch / sumWalks, FAST, kinds[kind] + " through " + element);
        }
    }

    private static double[][] march(Medium medium, int least) {
        Beam beam = Beam.cosmic(new CosmicSpectrum(0), medium.grid(), Double.MAX_VALUE);
        for (int i = 0; i < medium.grid().size(); i++) {
            double energy = medium.grid().energyMeV(i);
            beam.of(1)[i] = energy < FROM_MEV || energy > TO_MEV ? 0 : Math.pow(energy, -SLOPE);
        }
        BeamTransport march = new BeamTransport(medium);
        double[][] mean = new double[3][EDGES.length - 1];
        for (double depth = STEP / 2; depth < EDGES[EDGES.length - 1]; depth += STEP) {
            march.step(beam, STEP);
            for (int i = 0; i < EDGES.length - 1; i++) {
                if (depth >= EDGES[i] && depth < EDGES[i + 1]) {
                    add(mean, i, beam, medium, least);
                }
            }
        }
        return mean;
    }

    private static void add(double[][] mean, int layer, Beam beam, Medium medium, int least) {
        double share = STEP / (EDGES[layer + 1] - EDGES[layer]);
        for (int i = least; i < medium.grid().size(); i++) {
            double width = medium.grid().widthMeV(i) * share;
            mean[0][layer] += beam.of(0)[i] * width;
            mean[1][layer] += (beam.of(1)[i] + beam.of(Medium.MADE_PROTON)[i]) * width;
            mean[2][layer] += beam.of(Medium.PION)[i] * width;
        }
    }
}
