// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import java.util.Optional;

/**
 * Neutrons below 20 MeV in a wall of soil: groups that diffuse and slow down, their sources spread over depth.
 *
 * <p>A wall has vacuum on its outer side (extrapolated distance 0.7104 transport mean free paths) and a room on its
 * inner side. It emits into the room what is made in it, and gives back a part of what the room sends into it, its
 * albedo, by the partial currents of diffusion theory. Good to a few hundredths where a wall is some mean free paths
 * thick, against walks by chance in the tests; a thin wall's albedo is low by up to 0.03. A wall may have a liner on
 * its inner side, of another material, which takes part like the wall itself.
 *
 * @see "Lamarsh (1966), Introduction to Nuclear Reactor Theory, ch. 5: partial currents, extrapolation, albedo"
 */
final class SlowNeutrons {
    /** Fluence over the current that leaves into vacuum: three times 0.7104. */
    private static final double VACUUM = 2.1312;
    /** Fluence over the current that leaves into a room that sends nothing back: partial currents. */
    private static final double ROOM = 2;
    private static final int CELLS = 60;
    private static final int LINER_CELLS = 30;

    private final Groups groups;
    private final Optional<Liner> liner;

    SlowNeutrons(Groups groups) {
        this(groups, Optional.empty());
    }

    /** In walls with a liner, whose thickness counts what stands for it as wall. */
    SlowNeutrons(Groups groups, Optional<Liner> liner) {
        this.groups = groups;
        this.liner = liner;
    }

    /**
     * A layer of another material on the inner side of every wall and floor.
     *
     * @param groups    its neutrons
     * @param thickness its areal density (g/cm2), positive
     * @param asWall    what stands for it in the thickness of a wall (g/cm2), positive; thinner walls have as much less
     * @param made      neutrons made in it over those that the wall would make in its place, by mass (1)
     */
    record Liner(Groups groups, double thickness, double asWall, double made) {
    }

    /** Cells of a wall from its outer face: widths, depths as wall, and what they are of. */
    private record Cells(double[] width, double[] depth, Groups[] of, double[] made) {
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
        Cells cells = cells(thickness);
        int count = groups.count();
        double[][] albedo = new double[count][];
        for (int g = 0; g < count; g++) {
            double[] sent = new double[count];
            sent[g] = 1;
            albedo[g] = intoRoom(cells, new double[cells.width.length][count], sent, g);
        }
        return albedo;
    }

    /** Current by group (1/m2) that a wall emits into a room that sends nothing back. */
    double[] emitted(double thickness, Source source) {
        Cells cells = cells(thickness);
        double[][] sources = new double[cells.width.length][];
        for (int i = 0; i < sources.length; i++) {
            sources[i] = source.at(cells.depth[i]).clone();
            for (int g = 0; g < sources[i].length; g++) {
                sources[i][g] *= cells.made[i];
            }
        }
        return intoRoom(cells, sources, new double[groups.count()], groups.count() - 1);
    }

    /** Cells that grow from both faces of the wall towards its middle, and even ones in its liner. */
    private Cells cells(double thickness) {
        double asWall = Math.min(thickness, liner.map(Liner::asWall).orElse(0.0));
        int wall = thickness - asWall > 1e-9 ? CELLS : 0;
        int all = wall + (asWall > 0 ? LINER_CELLS : 0);
        Cells cells = new Cells(new double[all], new double[all], new Groups[all], new double[all]);
        double before = 0;
        for (int i = 0; i < wall; i++) {
            double t = (i + 1.0) / CELLS;
            double edge = (thickness - asWall) * (t - 0.8 * Math.sin(2 * Math.PI * t) / (2 * Math.PI));
            cells.width[i] = edge - before;
            cells.depth[i] = (before + edge) / 2;
            cells.of[i] = groups;
            cells.made[i] = 1;
            before = edge;
        }
        for (int i = wall; i < all; i++) {
            Liner inner = liner.orElseThrow();
            cells.width[i] = inner.thickness * asWall / inner.asWall / LINER_CELLS;
            cells.depth[i] = thickness - asWall + asWall * (i - wall + 0.5) / LINER_CELLS;
            cells.of[i] = inner.groups;
            cells.made[i] = inner.made;
        }
        return cells;
    }

    private double[] intoRoom(Cells cells, double[][] sources, double[] sent, int fastest) {
        double[] out = new double[groups.count()];
        int last = cells.width.length - 1;
        double half = cells.width[last] / 2;
        for (int g = fastest; g >= 0; g--) {
            double[] fluence = solve(cells, sources, g, sent[g]);
            out[g] = sent[g] + (fluence[last] - 4 * sent[g]) / (ROOM + half / cells.of[last].diffusion(g));
            for (int lower = 0; lower < g; lower++) {
                for (int i = 0; i <= last; i++) {
                    sources[i][lower] += cells.of[i].transfer(g, lower) * fluence[i];
                }
            }
        }
        return out;
    }

    private static double[] solve(Cells cells, double[][] sources, int group, double sent) {
        int count = cells.width.length;
        double[] diagonal = new double[count];
        double[] right = new double[count];
        double[] coupling = new double[count];
        double[] way = new double[count];
        for (int i = 0; i < count; i++) {
            way[i] = cells.width[i] / 2 / cells.of[i].diffusion(group);
        }
        for (int i = 0; i < count; i++) {
            diagonal[i] += cells.of[i].removal(group) * cells.width[i];
            right[i] = sources[i][group] * cells.width[i];
            if (i + 1 < count) {
                coupling[i] = 1 / (way[i] + way[i + 1]);
                diagonal[i] += coupling[i];
                diagonal[i + 1] += coupling[i];
            }
        }
        diagonal[0] += 1 / (way[0] + VACUUM);
        double inner = 1 / (way[count - 1] + ROOM);
        diagonal[count - 1] += inner;
        right[count - 1] += 4 * sent * inner;
        for (int i = 1; i < count; i++) {
            double factor = coupling[i - 1] / diagonal[i - 1];
            diagonal[i] -= factor * coupling[i - 1];
            right[i] += factor * right[i - 1];
        }
        double[] fluence = new double[count];
        for (int i = count - 1; i >= 0; i--) {
            fluence[i] = (right[i] + (i + 1 < count ? coupling[i] * fluence[i + 1] : 0)) / diagonal[i];
        }
        return fluence;
    }
}
