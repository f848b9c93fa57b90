// SPDX-License-Identifier: Apache-2.0
package bermwright.lowering.strength;

import bermwright.lowering.rig.Tube;

/** Buckling of the wall of a thin tube pressed along its axis. */
public final class ThinTube {
    private ThinTube() {
    }

    /**
     * The stress at which a perfect wall buckles, E (t/R) / sqrt(3 (1 - nu2)), nu = 0.3.
     *
     * @param tube the tube
     * @return the stress (Pa)
     * @see "Timoshenko and Gere, Theory of Elastic Stability, thin cylinder under axial load"
     */
    public static double perfect(Tube tube) {
        double middle = (tube.diameter() - tube.wall()) / 2;
        return tube.modulus() * tube.wall() / middle / Math.sqrt(3 * (1 - 0.09));
    }

    /**
     * What real walls keep of it, 1 - 0.901 (1 - e^(-sqrt(R/t)/16)).
     *
     * @param radiusOverWall middle radius over wall R/t (1), positive, below 1500
     * @return the share (1)
     * @see "NASA SP-8007 (1968), Buckling of thin-walled circular cylinders (from memory)"
     */
    public static double knockDown(double radiusOverWall) {
        return 1 - 0.901 * (1 - Math.exp(-Math.sqrt(radiusOverWall) / 16));
    }

    /**
     * The thrust at which the wall buckles or yields.
     *
     * @param tube the tube
     * @return the thrust (N)
     */
    public static double capacity(Tube tube) {
        double ratio = (tube.diameter() - tube.wall()) / 2 / tube.wall();
        return Math.min(tube.yield(), knockDown(ratio) * perfect(tube)) * tube.area();
    }
}
