// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.shielding.dose.Response;
import bermwright.shielding.raycast.SkyRays;
import java.util.List;

/** A stretch of elevations of one azimuth, with what its rays cross and the doses that come through it. */
final class SkyPanel {
    /** Sines of the elevations it reaches from and to. */
    final double from;
    final double to;
    /** Rows placed, in place, skin, slant and beyond by ray. */
    final double[][] crossed;
    /** For each response its dose over the panel, as if from all sides, and how far that may be off. */
    final double[] doses;
    final double[] errors;
    /** Share of the sine whose rays were still in soil at the edge of the known ground. */
    final double beyondEdge;

    /** Takes its rays out of a fan, from one of them on. */
    SkyPanel(double from, double to, SkyRays rays, int first, List<Response> responses) {
        this.from = from;
        this.to = to;
        int nodes = KronrodNodes.NODES;
        crossed = rays.copy(first, nodes);
        doses = new double[responses.size()];
        errors = new double[responses.size()];
        for (int r = 0; r < doses.length; r++) {
            Response response = responses.get(r);
            double equivalence = response.skinEquivalence();
            double fine = 0;
            double coarse = 0;
            for (int k = 0; k < nodes; k++) {
                double x = crossed[0][k] + crossed[1][k] + crossed[2][k] * equivalence;
                double dose = response.rayDose(x, crossed[3][k]);
                fine += KronrodNodes.SHARE[k] * dose;
                coarse += KronrodNodes.COARSE[k] * dose;
            }
            doses[r] = fine * (to - from);
            errors[r] = Math.abs(fine - coarse) * (to - from);
        }
        double beyond = 0;
        for (int k = 0; k < nodes && first + k < rays.beyondEdge(); k++) {
            beyond += KronrodNodes.SHARE[k] * (to - from);
        }
        beyondEdge = beyond;
    }

    double sine(int ray) {
        return from + KronrodNodes.AT[ray] * (to - from);
    }

    double share(int ray) {
        return KronrodNodes.SHARE[ray] * (to - from);
    }

    /** Writes the sines of a panel's rays into a fan. */
    static void sines(double from, double to, double[] into, int first) {
        for (int k = 0; k < KronrodNodes.NODES; k++) {
            into[first + k] = from + KronrodNodes.AT[k] * (to - from);
        }
    }
}
