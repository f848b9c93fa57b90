// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.shielding.material.Material;

/**
 * Neutrons below 20 MeV in soil: groups that diffuse and slow down, their sources spread over depth.
 *
 * <p>A cover lets neutrons out above (extrapolated distance 0.71 transport mean free paths) and gives back inside what
 * the opposite wall sends (no net current); open ground is a cover deep enough that its bottom does not matter.
 */
final class SlowNeutrons {
    private static final double EXTRAPOLATION = 2.1312;
    private static final int CELLS = 60;

    private final SlowCrossSections groups;

    SlowNeutrons(Material material) {
        groups = new SlowCrossSections(material);
    }

    /** Neutrons made by depth: for a depth (g/cm2) the source of each group (per g/cm2). */
    interface Source {
        double[] at(double depthGCm2);
    }

    /**
     * Fluence by group at both faces of a cover.
     *
     * @param thickness areal density (g/cm2), positive
     * @param source    neutrons made by depth
     * @return fluence at the outer face and at the inner face
     */
    double[][] faces(double thickness, Source source) {
        double[] edge = new double[CELLS + 1];
        // Cells grow from both faces towards the middle.
        for (int i = 0; i <= CELLS; i++) {
            double t = (double) i / CELLS;
            edge[i] = thickness * (t - 0.8 * Math.sin(2 * Math.PI * t) / (2 * Math.PI));
        }
        double[][] sources = new double[CELLS][];
        for (int i = 0; i < CELLS; i++) {
            sources[i] = source.at((edge[i] + edge[i + 1]) / 2).clone();
        }
        double[][] faces = new double[2][SlowCrossSections.GROUPS];
        for (int g = SlowCrossSections.GROUPS - 1; g >= 0; g--) {
            double[] fluence = solve(edge, sources, g);
            double d = groups.diffusion(g);
            double half = (edge[1] - edge[0]) / 2;
            faces[0][g] = fluence[0] * EXTRAPOLATION * d / (EXTRAPOLATION * d + half);
            faces[1][g] = fluence[CELLS - 1];
            for (int lower = 0; lower < g; lower++) {
                double transfer = groups.transfer(g, lower);
                for (int i = 0; i < CELLS; i++) {
                    sources[i][lower] += transfer * fluence[i];
                }
            }
        }
        return faces;
    }

    private double[] solve(double[] edge, double[][] sources, int group) {
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
        diagonal[0] += 1 / ((edge[1] - edge[0]) / 2 / d + EXTRAPOLATION);
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
