// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/**
 * What arrives at a depth: the beam behind soil and skin, and slow neutrons.
 *
 * @param depthGCm2 areal density of soil and skin, the skin counted as soil (g/cm2)
 * @param beam      particles behind it, from all sides
 * @param returned  fast nucleons that come back from what lies beyond
 * @param slow      fluence of slow neutrons by group (1/m2) in a room under a dome of it on the ground
 * @param sphere    the same in a hollow sphere of it in free space
 */
public record Field(double depthGCm2, Beam beam, Returned returned, double[] slow, double[] sphere) {
    /**
     * Fast nucleons that reactions throw back, over an even half sky.
     *
     * @param ground from the ground of a room under a dome as thick as the depth, at no depth from open ground
     * @param wall   from a far wall as thick as the depth
     */
    public record Returned(Beam ground, Beam wall) {
    }

    /**
     * The beam with what the ground of a room sends back of it: a half sky of it sends back the whole.
     *
     * @return a beam of its own
     */
    public Beam onGround() {
        return beam.and(returned.ground, 2);
    }

    /**
     * The beam with what the far wall of a hollow sphere in free space sends back of it.
     *
     * @return a beam of its own
     */
    public Beam inSpace() {
        return beam.and(returned.wall, 2);
    }

    /** Copies the groups. */
    public Field {
        slow = slow.clone();
        sphere = sphere.clone();
    }

    @Override
    public double[] sphere() {
        return sphere.clone();
    }

    @Override
    public double[] slow() {
        return slow.clone();
    }

    /**
     * Number of groups of slow neutrons.
     *
     * @return the number
     */
    public static int groups() {
        return SlowCrossSections.GROUPS;
    }

    /**
     * Energy that stands for a group of slow neutrons.
     *
     * @param group index, from 0
     * @return geometric middle of the group (MeV)
     */
    public static double groupMeV(int group) {
        return Math.sqrt(SlowCrossSections.EDGES[group] * SlowCrossSections.EDGES[group + 1]);
    }
}
