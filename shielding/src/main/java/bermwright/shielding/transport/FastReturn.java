// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.ArrayList;
import java.util.List;

/**
 * Nucleons faster than slow neutrons that open ground sends back: those that reactions throw back, half of each
 * collision's directions, out of the ground again.
 *
 * <p>Over an even sky the share 1 - 1/pi of them goes up, taken as even over the half sky; neutrons are thinned by
 * reactions on the way out, protons slow down. What is thrown ahead at a slant and leaves again is left out, and what
 * those that go back make on their way; so it is low by some tenths.
 */
final class FastReturn {
    /** Mean share of an even half space of directions about an even half sky that lies above the horizontal. */
    private static final double UP = 1 - 1 / Math.PI;
    private static final double DEEPEST_GCM2 = 400;
    private static final int COSINES = 24;

    private final Medium medium;
    private final List<Double> places = new ArrayList<>();
    private final List<double[][]> sources = new ArrayList<>();

    FastReturn(Medium medium) {
        this.medium = medium;
    }

    /** Whether this depth along a ray still matters. */
    static boolean matters(double depthGCm2) {
        return depthGCm2 <= DEEPEST_GCM2;
    }

    /** Takes what hadrons of a beam throw back at a depth along a ray, for neutrons and protons (1/MeV per g/cm2). */
    void add(double depthGCm2, double[][] thrown) {
        places.add(depthGCm2);
        sources.add(thrown);
    }

    /** Fluence of neutrons and of protons above the ground by energy (1/m2/MeV). */
    double[][] fluence() {
        EnergyGrid grid = medium.grid();
        double[][] fluence = new double[2][grid.size()];
        for (int k = 0; k + 1 < places.size(); k++) {
            double from = places.get(k);
            double to = places.get(k + 1);
            for (int i = medium.fastFrom(); i < grid.size(); i++) {
                double source = (sources.get(k)[0][i] + sources.get(k + 1)[0][i]) / 2;
                fluence[0][i] += source * escaped(from, to, medium.reactions(Medium.NEUTRON)[i]);
            }
        }
        // Protons come from so near below that their source is that of the surface.
        double above = 0;
        for (int i = grid.size() - 1; i >= medium.fastFrom(); i--) {
            above += sources.get(0)[1][i] * grid.widthMeV(i);
            fluence[1][i] = UP / 2 * above / medium.loss(1)[i];
        }
        return fluence;
    }

    /**
     * Fluence at the surface for one neutron a g/cm2 along rays between two depths: under an even sky rays of cosine m
     * make 1 a g/cm2 at the depth m s, of which e^(-m s R / v) / v comes up at the cosine v.
     */
    private static double escaped(double from, double to, double reactions) {
        double sum = 0;
        for (int r = 0; r < COSINES; r++) {
            double ray = (r + 0.5) / COSINES;
            for (int u = 0; u < COSINES; u++) {
                double way = ray / ((u + 0.5) / COSINES);
                double rate = Math.max(1e-12, way * reactions);
                // d(depth) = ray ds; over the half sky: 1/2 ray / up e^(-s ray R / up) ds
                sum += way / 2 * (Math.exp(-from * rate) - Math.exp(-to * rate)) / rate;
            }
        }
        return UP * sum / COSINES / COSINES;
    }
}
