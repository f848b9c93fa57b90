// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.dose;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Makes {@code body-depths.csv}: how the depth of skin, lens, red marrow and all other tissues is spread over points
 * and directions of {@link BodyShape}. Run its main method and put what it prints into the resource.
 */
final class BodyDepthTable {
    /** Depths that share each found depth between them, so that its mean is kept (g/cm2). */
    static final double[] NODES =
            {0.01, 0.1, 0.3, 0.6, 1, 1.5, 2.2, 3, 4, 5.5, 7.5, 10, 13, 17, 22, 28, 36, 50};
    /** Skin: the sensitive layer under 0.07 mm (cm). */
    private static final double SKIN = 0.007;
    /** Lens: its front cells behind 3 mm (cm). */
    private static final double LENS = 0.3;
    private static final int RAYS = 24;

    private BodyDepthTable() {
    }

    /** Prints the table. */
    public static void main(String[] arguments) {
        System.out.print(text(table(40_000, 1)));
    }

    /** Shares by node: skin, lens, marrow, others. */
    static double[][] table(int points, long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        double[][] shares = new double[4][NODES.length];
        for (int p = 0; p < points; p++) {
            double[][] from = {BodyShape.underSkin(chance, SKIN), BodyShape.lens(chance, LENS),
                drawn(BodyShape.MARROW, chance), drawn(BodyShape.OTHER, chance)};
            for (int t = 0; t < from.length; t++) {
                for (int r = 0; r < RAYS; r++) {
                    add(shares[t], BodyShape.depth(from[t], BodyShape.direction(chance)), 1.0 / points / RAYS);
                }
            }
        }
        return shares;
    }

    private static double[] drawn(List<BodyShape.Site> sites, SplittableRandom chance) {
        double whole = sites.stream().mapToDouble(BodyShape.Site::share).sum();
        double left = chance.nextDouble() * whole;
        for (BodyShape.Site site : sites) {
            left -= site.share();
            if (left < 0) {
                return site.point(chance);
            }
        }
        return sites.get(0).point(chance);
    }

    private static void add(double[] shares, double depth, double share) {
        int last = NODES.length - 1;
        int k = 0;
        while (k < last && NODES[k + 1] < depth) {
            k++;
        }
        if (k == last || depth <= NODES[0]) {
            shares[k] += share;
            return;
        }
        double part = (depth - NODES[k]) / (NODES[k + 1] - NODES[k]);
        shares[k] += share * (1 - part);
        shares[k + 1] += share * part;
    }

    private static String text(double[][] shares) {
        StringBuilder text = new StringBuilder("""
                # Share of the directions and points of a tissue behind a depth of water; made by BodyDepthTable.
                # Body: mathematical phantom of Snyder et al. (1969, 1978) and Cristy and Eckerman (1987),
                # the size of a small adult, as an open text copy of the Geant4 human_phantom example prints it;
                # some parts, and marrow by bone (ICRP 70), from memory.
                depth_g_cm2,skin,eye,marrow,other
                """);
        for (int k = 0; k < NODES.length; k++) {
            text.append(String.format(Locale.ROOT, "%s", NODES[k]));
            for (double[] tissue : shares) {
                text.append(String.format(Locale.ROOT, ",%.5f", tissue[k]));
            }
            text.append('\n');
        }
        return text.toString();
    }
}
