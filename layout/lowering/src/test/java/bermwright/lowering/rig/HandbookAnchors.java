// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.rig;

/** Formulas of handbooks that our anchors are held against. */
final class HandbookAnchors {
    private HandbookAnchors() {
    }

    /**
     * The breakout factor of a shallow square plate, 1 + 2 s n (Ku tan phi).
     *
     * @param depthRatio depth over side n (1), positive
     * @param shape      shape factor s (1), at least 1
     * @param kuTanPhi   Ku tan(phi) (1), zero or more
     * @return the factor (1)
     */
    public static double breakoutFactor(double depthRatio, double shape, double kuTanPhi) {
        return 1 + 2 * shape * depthRatio * kuTanPhi;
    }

    /**
     * The weight of the cone of soil over a disc, a lower bound of its uplift:
     * (pi D/3)(r2 + r R + R2) rho g with R = r + D tan(psi).
     *
     * @param disc       the disc: width its diameter (m), depth its depth (m)
     * @param halfAngle  half angle of the cone psi (rad), 0 up to 45 degrees
     * @param unitWeight weight per volume (N/m3), positive
     * @return the weight (N)
     */
    public static double coneWeight(BuriedAnchor.Flat disc, double halfAngle, double unitWeight) {
        double r = disc.width() / 2;
        double top = r + disc.depth() * Math.tan(halfAngle);
        return Math.PI * disc.depth() / 3 * (r * r + r * top + top * top) * unitWeight;
    }
}
