// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/**
 * What arrives at a depth: the beam behind soil and skin, and slow neutrons.
 *
 * @param depthGCm2 areal density of soil and skin, the skin counted as soil (g/cm2)
 * @param beam      particles that come square through a wall of it, as if from all sides
 * @param returned  fast hadrons that come back from what lies beyond
 * @param level     what reactions made under a level cover of it, by direction
 * @param slow      fluence of slow neutrons by group (1/m2) in a room under a dome of it on the ground
 * @param sphere    the same in a hollow sphere of it in free space
 */
public record Field(double depthGCm2, Beam beam, Returned returned, Level level, double[] slow, double[] sphere) {
    /**
     * Fast hadrons that come back, over an even half sky.
     *
     * @param ground from the ground of a room under a dome as thick as the depth, at no depth from open ground
     * @param wall   from a far wall as thick as the depth
     */
    public record Returned(Beam ground, Beam wall) {
    }

    /**
     * What reactions made under a level cover; ions and protons that go straight are not among it.
     *
     * @param made     what comes down, by direction ({@link Field#cosine}), as if from all sides
     * @param up       what comes up, the mean of its half space, as if from all sides
     * @param strength by direction down, how much of what comes up is owed to it, over the mean (1)
     */
    public record Level(java.util.List<Beam> made, Beam up, java.util.List<Double> strength) {
        /** Copies the lists. */
        public Level {
            made = java.util.List.copyOf(made);
            strength = java.util.List.copyOf(strength);
        }
    }

    /**
     * How many directions down there are.
     *
     * @return the number (1)
     */
    public static int directions() {
        return Ordinates.DOWN;
    }

    /**
     * Cosine of a direction to the straight way down.
     *
     * @param direction index, from 0, cosines rising
     * @return cosine (1), above 0 to 1
     */
    public static double cosine(int direction) {
        return Ordinates.cosine(direction);
    }

    /**
     * Share of the half space that a direction stands for.
     *
     * @param direction index, from 0
     * @return share (1); all together are 1
     */
    public static double share(int direction) {
        return Ordinates.weight(direction);
    }

    /**
     * Weights by which values of the directions make one at any cosine.
     *
     * @param cosine cosine to the straight way down (1), 0 to 1
     * @return weights (1), some of them negative beyond the outermost directions
     */
    public static double[] line(double cosine) {
        return Ordinates.line(cosine);
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
