// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/**
 * Neutrons below 20 MeV in a wall of soil: groups that diffuse and slow down, their sources spread over depth.
 *
 * <p>A wall has vacuum on its outer side (extrapolated distance 0.7104 transport mean free paths) and a room on its
 * inner side. It emits into the room what is made in it, and gives back a part of what the room sends into it, its
 * albedo, by the partial currents of diffusion theory. Good to a few hundredths where a wall is some mean free paths
 * thick, against walks by chance in the tests; a thin wall's albedo is low by up to 0.03.
 *
 * @see "Lamarsh (1966), Introduction to Nuclear Reactor Theory, ch. 5: partial currents, extrapolation, albedo"
 */
final class SlowNeutrons {
    /** Fluence over the current that leaves into vacuum: three times 0.7104. */
    private static final double VACUUM = 2.1312;
    /** Fluence over the current that leaves into a room that sends nothing back: partial currents. */
    private static final double ROOM = 2;
    private static final int CELLS = 60;

    private final Groups groups;

    SlowNeutrons(Groups groups) {
        this.groups = groups;
    }

    /** Groups of neutrons in a material, the fastest the last; all per areal density (g/cm2). */
    interface Groups {
        /** How many groups there are. */
        int count();

        /** Diffusion constant (g/cm2). */
        double diffusion(int group);

        /** Loss (1 per g/cm2): collisions that leave the group. */
        double removal(int group);

        /** Collisions that bring a neutron from one group into a lower one (1 per g/cm2). */
        double transfer(int from, int to);
    }

    /** Neutrons made by depth under the outer face: for a depth (g/cm2) the source of each group (per g/cm2). */
    interface Source {
        double[] at(double depthGCm2);
    }

    /** Current of each group (second index) that a wall gives back for one neutron of a group (first index) sent in. */
    double[][] albedo(double thickness) {
        double[] edge = edges(thickness);
        int count = groups.count();
        double[][] albedo = new double[count][];
        for (int g = 0; g < count; g++) {
            double[] sent = new double[count];
            sent[g] = 1;
            albedo[g] = intoRoom(edge, new double[CELLS][count], sent, g);
        }
        return albedo;
    }

    /** Current by group (1/m2) that a wall emits into a room that sends nothing back. */
    double[] emitted(double thickness, Source source) {
        double[] edge = edges(thickness);
        double[][] sources = new double[CELLS][];
        for (int i = 0; i < CELLS; i++) {
            sources[i] = source.at((edge[i] + edge[i + 1]) / 2).clone();
        }
        return intoRoom(edge, sources, new double[groups.count()], groups.count() - 1);
    }

    /** Edges of cells, which grow from both faces towards the middle. */
    private static double[] edges(double thickness) {
        double[] edge = new double[CELLS + 1];
        for (int i = 0; i <= CELLS; i++) {
            double t = (double) i / CELLS;
            edge[i] = thickness * (t - 0.8 * Math.sin(2 * Math.PI * t) / (2 * Math.PI));
        }
        return edge;
    }

    private double[] intoRoom(double[] edge, double[][] sources, double[] sent, int fastest) {
        double[] out = new double[groups.count()];
        double half = (edge[CELLS] - edge[CELLS - 1]) / 2;
        for (int g = fastest; g >= 0; g--) {
            double[] fluence = solve(edge, sources, g, sent[g]);
            out[g] = sent[g] + (fluence[CELLS - 1] - 4 * sent[g]) / (ROOM + half / groups.diffusion(g));
            for (int lower = 0; lower < g; lower++) {
                double transfer = groups.transfer(g, lower);
                for (int i = 0; i < CELLS; i++) {
                    sources[i][lower] += transfer * fluence[i];
                }
            }
        }
        return out;
    }

    private double[] solve(double[] edge, double[][] sources, int group, double sent) {
        double d = groups.diffusion(group);
        double removal = groups.removal(group);
        double[] diagonal = new double[CELLS];
        double[] right = new double[CELLS];
        double[] coupling = new double[CELLS];
        for (int i = 0; i < CELLS; i++) {
            double width = edge[i + 1] - edge[i];
            diagonal[i] += removal * width;
            right[i] = sources[i][group] * width;
            if (i + 1 < CELLS) {
                coupling[i] = d / ((edge[i + 2] - edge[i]) / 2);
                diagonal[i] += coupling[i];
                diagonal[i + 1] += coupling[i];
            }
        }
        diagonal[0] += 1 / ((edge[1] - edge[0]) / 2 / d + VACUUM);
        double inner = 1 / ((edge[CELLS] - edge[CELLS - 1]) / 2 / d + ROOM);
        diagonal[CELLS - 1] += inner;
        right[CELLS - 1] += 4 * sent * inner;
        for (int i = 1; i < CELLS; i++) {
            double factor = coupling[i - 1] / diagonal[i - 1];
            diagonal[i] -= factor * coupling[i - 1];
            right[i] += factor * right[i - 1];
        }
        double[] fluence = new double[CELLS];
        for (int i = CELLS - 1; i >= 0; i--) {
            fluence[i] = (right[i] + (i + 1 < CELLS ? coupling[i] * fluence[i + 1] : 0)) / diagonal[i];
        }
        return fluence;
    }
}
