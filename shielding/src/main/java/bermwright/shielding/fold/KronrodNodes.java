// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

/**
 * Fifteen nodes on 0 to 1 with two weights each: of Kronrod's rule over all of them, and of Gauss's over every second,
 * whose difference tells how far the mean is off.
 *
 * @see "Kronrod (1965), Nodes and Weights of Quadrature Formulas, Consultants Bureau, table for 7 and 15 points"
 */
final class KronrodNodes {
    private static final double[] X = {0.991455371120812639206854697526329, 0.949107912342758524526189684047851,
        0.864864423359769072789712788640926, 0.741531185599394439863864773280788, 0.586087235467691130294144838258730,
        0.405845151377397166906606412076961, 0.207784955007898467600689403773245, 0};
    private static final double[] KRONROD = {0.022935322010529224963732008058970, 0.063092092629978553290700663189204,
        0.104790010322250183839876322541518, 0.140653259715525918745189590510238, 0.169004726639267902826583426598550,
        0.190350578064785409913256402421014, 0.204432940075298892414161999234649, 0.209482141084727828012999174891714};
    private static final double[] GAUSS = {0, 0.129484966168869693270611432679082, 0,
        0.279705391489276667901467771423780, 0, 0.381830050505118944950369775488975, 0,
        0.417959183673469387755102040816327};

    /** How many there are. */
    static final int NODES = 2 * X.length - 1;
    /** Where they are, rising. */
    static final double[] AT = new double[NODES];
    /** Their weights in the better rule; all together 1. */
    static final double[] SHARE = new double[NODES];
    /** Their weights in the coarser rule; all together 1. */
    static final double[] COARSE = new double[NODES];

    static {
        for (int i = 0; i < NODES; i++) {
            int k = Math.min(i, NODES - 1 - i);
            AT[i] = (1 + (i < X.length ? -X[k] : X[k])) / 2;
            SHARE[i] = KRONROD[k] / 2;
            COARSE[i] = GAUSS[k] / 2;
        }
    }

    private KronrodNodes() {
    }
}
