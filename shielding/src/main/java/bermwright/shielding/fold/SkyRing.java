// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import java.util.Arrays;
import java.util.List;

/** All elevations of one azimuth, in panels, and the share of a turn it stands for. */
final class SkyRing {
    final double azimuth;
    List<SkyPanel> panels;
    /** For each response its mean over the sine of the elevation, and how far that may be off. */
    final double[] doses;
    final double[] errors;
    double turnShare;

    SkyRing(double azimuth, List<SkyPanel> panels) {
        this.azimuth = azimuth;
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
}
