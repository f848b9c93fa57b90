// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.Arrays;

/** What a slab holds, read out as beams by depth and direction, and as sources of slow neutrons. */
final class SlabFields implements SlowNeutrons.Source {
    /** Beyond the deepest point sources fall by e over this, as they do before (g/cm2). */
    private static final double DEEP_RELAXATION_GCM2 = 150;
    private static final int[] SPECIES = {Medium.NEUTRON, Medium.MADE_PROTON, Medium.PION, Medium.MUON};

    private final SlabHadrons slab;
    private final Medium medium;
    private final double[] depth;
    private final double[][] sources;

    SlabFields(SlabHadrons slab, Medium medium) {
        this.slab = slab;
        this.medium = medium;
        depth = slab.depths();
        sources = new double[depth.length][];
        for (int j = 0; j < depth.length; j++) {
            sources[j] = slab.slowNeutrons(j);
        }
    }

    /** Slow neutrons made at a depth (1/m2 per g/cm2). */
    @Override
    public double[] at(double depthGCm2) {
        double inside = Math.min(depthGCm2, depth[depth.length - 1]);
        double beyond = Math.exp((inside - depthGCm2) / DEEP_RELAXATION_GCM2);
        int i = Math.max(0, Math.min(depth.length - 2, below(inside)));
        double w = (inside - depth[i]) / (depth[i + 1] - depth[i]);
        double[] sum = new double[SlowCrossSections.GROUPS];
        for (int g = 0; g < sum.length; g++) {
            double low = sources[i][g];
            double high = sources[i + 1][g];
            sum[g] = beyond * (low > 0 && high > 0 ? low * Math.pow(high / low, w) : (1 - w) * low + w * high);
        }
        return sum;
    }

    private int below(double depthGCm2) {
        int k = Arrays.binarySearch(depth, depthGCm2);
        return k >= 0 ? k : -k - 2;
    }

    /** The point of the slab at a depth (g/cm2). */
    int point(double depthGCm2) {
        int k = below(depthGCm2 + 1e-9);
        if (Math.abs(depth[k] - depthGCm2) > 1e-6) {
            throw new IllegalStateException("no point of the slab at " + depthGCm2 + " g/cm2");
        }
        return k;
    }

    /** The point of the slab next to a depth (g/cm2). */
    int nearest(double depthGCm2) {
        int k = Math.min(depth.length - 2, below(depthGCm2));
        return depthGCm2 - depth[k] < depth[k + 1] - depthGCm2 ? k : k + 1;
    }

    /** What reactions made that goes in one direction at a point, as if from all sides. */
    Beam made(int direction, int point) {
        double[] weights = new double[Ordinates.COUNT];
        weights[direction] = 1;
        return mixed(weights, point, point, 1);
    }

    /** What goes straight down at a point, from the two directions nearest to it. */
    Beam down(int point) {
        return mixed(upright(0), point, point, 1);
    }

    /** All that comes up at a point, its mean over the half space. */
    Beam up(int point) {
        double[] weights = new double[Ordinates.COUNT];
        for (int m = Ordinates.DOWN; m < Ordinates.COUNT; m++) {
            weights[m] = Ordinates.weight(m);
        }
        return mixed(weights, point, point, 1);
    }

    /** What comes straight up at a point out of a layer between it and a deeper point. */
    Beam upFrom(int point, int deeper) {
        return mixed(upright(Ordinates.DOWN), point, deeper, -1);
    }

    private static double[] upright(int first) {
        double[] weights = new double[Ordinates.COUNT];
        double[] line = Ordinates.line(1);
        System.arraycopy(line, 0, weights, first, Ordinates.DOWN);
        return weights;
    }

    /** A mean over directions; with a sign of -1 less what reaches the point of what stands deeper. */
    private Beam mixed(double[] weights, int point, int deeper, int sign) {
        int size = medium.grid().size();
        double[][] kinds = new double[SlabHadrons.KINDS][size];
        double electromagnetic = 0;
        for (int m = 0; m < weights.length; m++) {
            if (weights[m] == 0) {
                continue;
            }
            double path = (depth[deeper] - depth[point]) / Math.abs(Ordinates.cosine(m));
            for (int kind = 0; kind < kinds.length; kind++) {
                for (int i = kind == 0 ? medium.fastFrom() : 0; i < size; i++) {
                    double fluence = slab.fluence(kind, i, m, point);
                    if (sign < 0) {
                        fluence = Math.max(0, fluence - slab.fluence(kind, i, m, deeper) * left(kind, i, path));
                    }
                    kinds[kind][i] += weights[m] * fluence;
                }
            }
            electromagnetic += weights[m] * slab.electromagnetic(m, point);
        }
        for (double[] kind : kinds) {
            for (int i = 0; i < size; i++) {
                kind[i] = Math.max(0, kind[i]);
            }
        }
        return Beam.made(SPECIES, kinds, Math.max(0, electromagnetic));
    }

    private double left(int kind, int i, double path) {
        double slowing = kind == 0 ? 0 : medium.loss(SPECIES[kind])[i] / medium.grid().energyMeV(i);
        return Math.exp(-path * (medium.reactions(SPECIES[kind])[i] + slowing));
    }

    /**
     * By direction down, how much what comes from there does in what lies deeper, counted by the slow neutrons that it
     * makes, over the mean of all.
     */
    double[] strength(int point) {
        double[] strength = new double[Ordinates.DOWN];
        double mean = 0;
        for (int m = 0; m < strength.length; m++) {
            strength[m] = slab.strength(m, point);
            mean += Ordinates.weight(m) * strength[m];
        }
        for (int m = 0; m < strength.length; m++) {
            strength[m] = mean > 0 ? strength[m] / mean : 1;
        }
        return strength;
    }
}
