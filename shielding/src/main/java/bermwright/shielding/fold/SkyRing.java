// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import java.util.Arrays;
import java.util.List;

/** All elevations of one azimuth, in panels, and the share of a turn it stands for. */
final class SkyRing {
    final double azimuth;
    private final KnownSky.Turn known;
    List<SkyPanel> panels;
    /** For each response its mean over the sine of the elevation, and how far that may be off. */
    final double[] doses;
    final double[] errors;
    double turnShare;

    SkyRing(double azimuth, List<SkyPanel> panels, KnownSky.Turn known) {
        this.azimuth = azimuth;
        this.known = known;
        int responses = panels.get(0).doses.length;
        doses = new double[responses];
        errors = new double[responses];
        take(panels);
    }

    void take(List<SkyPanel> changed) {
        panels = changed;
        Arrays.fill(doses, 0);
        Arrays.fill(errors, 0);
        for (SkyPanel panel : panels) {
            for (int r = 0; r < doses.length; r++) {
                doses[r] += panel.doses[r];
                errors[r] += panel.errors[r];
            }
        }
    }

    int directions() {
        return panels.size() * KronrodNodes.NODES;
    }

    double beyondEdge() {
        double share = 0;
        for (SkyPanel panel : panels) {
            share += panel.beyondEdge;
        }
        return share;
    }

    /** Goes through its directions as if it stood for a share of a turn. */
    void forEach(double share, SkyView.Visitor visitor) {
        for (SkyPanel panel : panels) {
            double[][] crossed = panel.crossed;
            for (int k = 0; k < KronrodNodes.NODES; k++) {
                visitor.visit(new SkyView.Direction(azimuth, panel.sine(k), share * panel.share(k) / 2, crossed[0][k],
                        crossed[1][k], crossed[2][k], crossed[3][k], crossed[4][k]));
            }
        }
    }

    /** What its directions give when they are folded, as if it stood for the whole turn. */
    FoldedDose.Sums folded(FoldedDose.Key key) {
        return known.sums(panels, key, () -> {
            FoldedDose.Sums sums = new FoldedDose.Sums(key);
            forEach(1, sums::add);
            return sums;
        });
    }

    KnownSky.Turn known() {
        return known;
    }
}
