// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** Gauss-Legendre nodes on 0 to 1. */
final class GaussNodes {
    private static final int NODES = 8;
    static final double[] AT = new double[NODES];
    static final double[] SHARE = new double[NODES];

    static {
        GaussIntegrator rule = new GaussIntegratorFactory().legendre(NODES, 0, 1);
        for (int i = 0; i < NODES; i++) {
            AT[i] = rule.getPoint(i);
            SHARE[i] = rule.getWeight(i);
        }
    }

    private GaussNodes() {
    }
}
