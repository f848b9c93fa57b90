// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import static org.junit.jupiter.api.Assertions.assertEquals;

import bermwright.shielding.material.Material;
import bermwright.shielding.spectrum.CosmicSpectrum;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The slab beside walks by chance in three dimensions, each reaction a cascade of its own, under an even half sky. */
class SlabWalkLawTest {
    private static final double FROM_MEV = 1000;
    private static final double TO_MEV = 30_000;
    private static final double SLOPE = 2.7;
    private static final double[] EDGES = {0, 50, 100, 200, 300};
    private static final double[] POINTS = {0, 1, 2, 4, 6, 8, 10, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100,
        110, 120, 130, 140, 150, 160, 170, 180, 190, 200, 220, 240, 260, 280, 300};
    private static final double DEEPEST = 1900;
    private static final int WALKS = 4000;
    /** What 4000 walks scatter by, and elastic collisions, which walks leave out. */
    private static final double SHARE = 0.1;

    @Test
    void slabAndWalksAgreeOnFastHadronsUnderAnEvenSky() {
        Medium medium = new Medium(Material.of("test", 2000, Material.Kind.GAS, Map.of("O", 1.0), "test"),
                new EnergyGrid(Penetration.Resolution.STANDARD.pointsInDecade()));
        double[][] walks = new CascadeWalk(medium, new Nuclide(16, 8), EDGES, medium.grid().upperMeV(
                medium.fastFrom()), new SplittableRandom(17)).walkFromSky(WALKS, FROM_MEV, TO_MEV, SLOPE);
        SlabHadrons slab = slab(medium);
        String[] kinds = {"neutrons", "protons", "pions"};
        List<String> off = new ArrayList<>();
        for (int kind = 0; kind < kinds.length; kind += 2) {
            for (int layer = 0; layer + 1 < EDGES.length; layer++) {
                double ratio = mean(slab, medium, kind, layer) / walks[kind][layer];
                if (!(Math.abs(ratio - 1) <= (kind == 2 ? 2 * SHARE : SHARE))) {
                    off.add(String.format(Locale.ROOT, "%s from %.0f g/cm2: %.3f", kinds[kind], EDGES[layer], ratio));
                }
            }
        }
        assertEquals(List.of(), off);
    }

    private static SlabHadrons slab(Medium medium) {
        Beam beam = Beam.cosmic(new CosmicSpectrum(0), medium.grid(), Double.MAX_VALUE);
        for (int i = 0; i < medium.grid().size(); i++) {
            double energy = medium.grid().energyMeV(i);
            beam.of(1)[i] = energy < FROM_MEV || energy > TO_MEV ? 0 : Math.pow(energy, -SLOPE);
        }
        BeamTransport march = new BeamTransport(medium);
        StraightBeams straight = new StraightBeams(march, Double.POSITIVE_INFINITY);
        for (double depth = 0; depth < DEEPEST; depth += 2) {
            straight.add(depth, beam);
            march.straight(beam, 2);
        }
        return new SlabHadrons(new AngularReactions(medium), medium, POINTS, straight, march.showerLengthGCm2());
    }

    private static double mean(SlabHadrons slab, Medium medium, int kind, int layer) {
        double sum = 0;
        for (int j = 0; j + 1 < POINTS.length; j++) {
            if (POINTS[j] >= EDGES[layer] && POINTS[j + 1] <= EDGES[layer + 1]) {
                double width = (POINTS[j + 1] - POINTS[j]) / 2;
                sum += width * (at(slab, medium, kind, j) + at(slab, medium, kind, j + 1));
            }
        }
        return sum / (EDGES[layer + 1] - EDGES[layer]);
    }

    private static double at(SlabHadrons slab, Medium medium, int kind, int point) {
        double sum = 0;
        for (int m = 0; m < Ordinates.COUNT; m++) {
            for (int i = medium.fastFrom() + 1; i < medium.grid().size(); i++) {
                sum += Ordinates.weight(m) / 2 * medium.grid().widthMeV(i) * slab.fluence(kind, i, m, point);
            }
        }
        return sum;
    }
}
