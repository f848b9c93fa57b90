// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.fold;

import bermwright.foundation.Require;
import bermwright.shielding.dose.DiffuseRoom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** How areal density is spread over the sky of one station, from the thinnest direction to the thickest. */
public final class Distribution {
    private final double[] arealDensity;
    private final double[] across;
    private final double[] slant;
    private final double[] share;
    private final SkyView.Direction thinnest;

    private Distribution(double[][] rays, double[] share, SkyView.Direction thinnest) {
        this.arealDensity = rays[0];
        this.across = rays[1];
        this.slant = rays[2];
        this.share = share;
        this.thinnest = thinnest;
    }

    /**
     * Sorts a view.
     *
     * @param view            what a station sees
     * @param skinEquivalence what one unit of skin counts as in soil (1), positive
     * @return the distribution
     */
    public static Distribution of(SkyView view, double skinEquivalence) {
        List<SkyView.Direction> all = new ArrayList<>();
        view.forEach(all::add);
        all.sort(Comparator.comparingDouble(d -> d.arealDensity(skinEquivalence)));
        double[] x = new double[all.size()];
        double[] walls = new double[all.size()];
        double[] slants = new double[all.size()];
        double[] upTo = new double[all.size()];
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            x[i] = all.get(i).arealDensity(skinEquivalence);
            walls[i] = all.get(i).across(skinEquivalence);
            slants[i] = all.get(i).slant();
            sum += 2 * all.get(i).share();
            upTo[i] = sum;
        }
        return new Distribution(new double[][] {x, walls, slants}, upTo, all.get(0));
    }

    /**
     * The least areal density of any direction looked along.
     *
     * @return areal density (kg/m2)
     */
    public double least() {
        return arealDensity[0];
    }

    /**
     * The areal density that a share of the sky stays below.
     *
     * @param skyShare share of the sky (1), 0 to 1
     * @return areal density (kg/m2)
     */
    public double below(double skyShare) {
        Require.within("share of the sky", skyShare, 0, 1, "1");
        int i = java.util.Arrays.binarySearch(share, skyShare);
        int at = i >= 0 ? i : -i - 1;
        return arealDensity[Math.min(at, arealDensity.length - 1)];
    }

    /**
     * Hands out every direction looked along, thinnest first.
     *
     * @param visitor told the areal density (kg/m2), the slant through the cover (1) and the direction's share of the
     *                sky (1); the shares add up to 1
     */
    public void forEach(Visitor visitor) {
        for (int i = 0; i < share.length; i++) {
            visitor.see(arealDensity[i], slant[i], share[i] - (i > 0 ? share[i - 1] : 0));
        }
    }

    /** Told each direction. */
    public interface Visitor {
        /**
         * One direction.
         *
         * @param arealDensity areal density (kg/m2)
         * @param slant        how much longer than thick the way through the cover is (1), 1 or more
         * @param skyShare     share of the sky (1)
         */
        void see(double arealDensity, double slant, double skyShare);
    }

    /**
     * Slow neutrons at the station under this sky.
     *
     * @param room  the room of a response
     * @param share part of every cover that is left (1), 0 to 1
     * @return effective dose (Sv per day or per event), those of the floor among them
     */
    public double in(DiffuseRoom room, double share) {
        Require.within("share of the cover", share, 0, 1, "1");
        DiffuseRoom.Sky sky = room.sky();
        for (int i = 0; i < arealDensity.length; i++) {
            double part = this.share[i] - (i > 0 ? this.share[i - 1] : 0);
            sky.add(across[i] * share, arealDensity[i] * share, slant[i], part);
        }
        return sky.total();
    }

    /**
     * The areal density that half the sky stays below.
     *
     * @return areal density (kg/m2)
     */
    public double median() {
        return below(0.5);
    }

    /**
     * The direction with the least areal density.
     *
     * @return the direction
     */
    public SkyView.Direction thinnest() {
        return thinnest;
    }
}
