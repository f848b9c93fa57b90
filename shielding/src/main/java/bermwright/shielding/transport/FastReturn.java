// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.ArrayList;
import java.util.List;

/**
 * Nucleons faster than slow neutrons that ground sends back, open or behind a cover: those that reactions throw back,
 * half of each collision's directions, out of the ground again.
 *
 * <p>Over an even sky the share 1 - 1/pi of them goes up, taken as even over the half sky; neutrons are thinned by
 * reactions on the way out, protons slow down. What is thrown ahead at a slant and leaves again is left out, and what
 * those that go back make on their way; so it is low by some tenths.
 */
final class FastReturn {
    /** Mean share of an even half space of directions about an even half sky that lies above the horizontal. */
    private static final double UP = 1 - 1 / Math.PI;
    /** Ground below this still matters little (g/cm2). */
    private static final double GROUND_GCM2 = 400;
    private static final int COSINES = 24;
    private static final double LEAST_WAY = 1e-4;
    private static final double LONGEST_WAY = 100;
    private static final int WAYS = 240;
    private static final double[] LEFT = new double[WAYS];

    static {
        for (int i = 0; i < WAYS; i++) {
            LEFT[i] = left(LEAST_WAY * Math.pow(LONGEST_WAY / LEAST_WAY, i / (WAYS - 1.0)));
        }
    }

    private final Medium medium;
    private final List<Double> places = new ArrayList<>();
    private final List<double[][]> sources = new ArrayList<>();

    FastReturn(Medium medium) {
        this.medium = medium;
    }

    /** Takes what hadrons of a beam throw back at a depth along a ray, for neutrons and protons (1/MeV per g/cm2). */
    void add(double depthGCm2, double[][] thrown) {
        places.add(depthGCm2);
        sources.add(thrown);
    }

    /** Fluence of neutrons and of protons above ground under an even cover by energy (1/m2/MeV). */
    Beam ofGround(double coverGCm2) {
        return fluence(coverGCm2, GROUND_GCM2);
    }

    /** The same from a wall as thick as the cover. */
    Beam ofWall(double coverGCm2) {
        return fluence(coverGCm2, Math.min(coverGCm2, GROUND_GCM2));
    }

    private Beam fluence(double cover, double thickness) {
        EnergyGrid grid = medium.grid();
        double[][] fluence = new double[2][grid.size()];
        int first = -1;
        for (int k = 0; k + 1 < places.size() && places.get(k) < cover + thickness; k++) {
            if (places.get(k) < cover - 1e-9) {
                continue;
            }
            first = first < 0 ? k : first;
            double from = places.get(k) - cover;
            double to = Math.min(thickness, places.get(k + 1) - cover);
            for (int i = medium.fastFrom(); i < grid.size(); i++) {
                double source = (sources.get(k)[0][i] + sources.get(k + 1)[0][i]) / 2;
                double reactions = medium.reactions(Medium.NEUTRON)[i];
                fluence[0][i] += UP * source * (share(from * reactions) - share(to * reactions)) / (2 * reactions);
            }
        }
        // Protons come from so near below that their source is that of the surface.
        double above = 0;
        for (int i = grid.size() - 1; first >= 0 && i >= medium.fastFrom(); i--) {
            above += sources.get(first)[1][i] * grid.widthMeV(i);
            fluence[1][i] = UP / 2 * above / medium.loss(1)[i];
        }
        return Beam.back(fluence);
    }

    /** The share left over a way, from the table. */
    private static double share(double way) {
        if (way <= LEAST_WAY) {
            return 1 - (1 - LEFT[0]) * way / LEAST_WAY;
        }
        double place = Math.log(way / LEAST_WAY) / Math.log(LONGEST_WAY / LEAST_WAY) * (WAYS - 1);
        int i = (int) place;
        return i >= WAYS - 1 ? 0 : LEFT[i] + (place - i) * (LEFT[i + 1] - LEFT[i]);
    }

    /**
     * Share of neutrons left that are made a way along rays, in mean free paths: under an even sky rays of cosine m
     * make theirs at the depth m s, of which e^(-m s / v) comes up at the cosine v; the mean over both.
     */
    private static double left(double way) {
        double sum = 0;
        for (int r = 0; r < COSINES; r++) {
            for (int u = 0; u < COSINES; u++) {
                sum += Math.exp(-way * (r + 0.5) / (u + 0.5));
            }
        }
        return sum / COSINES / COSINES;
    }
}
