// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import java.util.Arrays;

/** What a fan of rays of one azimuth crosses on its way to the sky; to be filled again and again by one thread. */
public final class SkyRays {
    /** Below this share of a ray's step towards a face the two run side by side, and rounding is all that is left. */
    private static final double SIDE_BY_SIDE = 1e-9;

    double[] placed = new double[0];
    double[] inPlace = new double[0];
    double[] skin = new double[0];
    double[] rise = new double[0];
    double[] sines = new double[0];
    int count;
    int beyondEdge;

    /** Rays to be filled. */
    public SkyRays() {
    }

    /** Makes room for rays along some elevations. */
    void room(double[] elevations) {
        sines = elevations;
        count = elevations.length;
        if (placed.length < count) {
            placed = new double[count];
            inPlace = new double[count];
            skin = new double[count];
            rise = new double[count];
        }
    }

    /** Takes over the only ray of others. */
    void takeFirst(int ray, SkyRays alone) {
        placed[ray] = alone.placed[0];
        inPlace[ray] = alone.inPlace[0];
        skin[ray] = alone.skin[0];
        rise[ray] = alone.rise[0];
        beyondEdge += alone.beyondEdge;
    }

    /**
     * How many rays there are.
     *
     * @return the number (1)
     */
    public int count() {
        return count;
    }

    /**
     * Placed soil on the way.
     *
     * @param ray number of the ray (1), 0 for the lowest
     * @return areal density (kg/m2)
     */
    public double placed(int ray) {
        return placed[ray];
    }

    /**
     * Undisturbed soil on the way.
     *
     * @param ray number of the ray (1), 0 for the lowest
     * @return areal density (kg/m2)
     */
    public double inPlace(int ray) {
        return inPlace[ray];
    }

    /**
     * Skins on the way, at a slant.
     *
     * @param ray number of the ray (1), 0 for the lowest
     * @return areal density (kg/m2)
     */
    public double skin(int ray) {
        return skin[ray];
    }

    /**
     * How much longer the way through a thin layer of the surface is than the layer is thick, where the ray comes
     * out, measured in the ray's vertical plane. Under level ground it is 1 over the sine of the elevation, however low
     * the ray: soil along the ray over its slant is then the depth of the station.
     *
     * @param ray number of the ray (1), 0 for the lowest
     * @return slant (1), 1 or more; 1 where the ray crosses no soil
     */
    public double slant(int ray) {
        if (Double.isNaN(rise[ray]) || !(placed[ray] + inPlace[ray] > 0)) {
            return 1;
        }
        double sin = sines[ray];
        double normal = Math.abs(sin - rise[ray] * Math.sqrt(1 - sin * sin)) / Math.sqrt(1 + rise[ray] * rise[ray]);
        return 1 / Math.max(SIDE_BY_SIDE, normal);
    }

    /**
     * Rays that were still in soil at the edge of the known ground; beyond it level ground is assumed.
     *
     * @return the number of such rays (1), always the lowest ones of a fan
     */
    public int beyondEdge() {
        return beyondEdge;
    }

    /**
     * A copy of what some of the rays crossed.
     *
     * @param first number of the first ray (1)
     * @param many  how many rays (1)
     * @return rows placed, in place, skin and slant, each of that many
     */
    public double[][] copy(int first, int many) {
        double[] slants = new double[many];
        for (int k = 0; k < many; k++) {
            slants[k] = slant(first + k);
        }
        return new double[][] {Arrays.copyOfRange(placed, first, first + many),
            Arrays.copyOfRange(inPlace, first, first + many), Arrays.copyOfRange(skin, first, first + many), slants};
    }
}
