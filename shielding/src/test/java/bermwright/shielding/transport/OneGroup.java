// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

/** One group of neutrons, and rooms of walls of it; lengths in g/cm2. */
final class OneGroup implements SlowNeutrons.Groups {
    static final double DEEP = 800;
    private static final double[] WALLS = {0, 2, 5, 10, 15, 20, 30, 40, 50, 60, 75, 90, 105, 125, 150, 175, 200, 250,
        300, 350, 400, 500, 600, 800};
    private static final int SKY = 40;

    private final double diffusion;
    private final double loss;

    OneGroup(double diffusion, double loss) {
        this.diffusion = diffusion;
        this.loss = loss;
    }

    /** The group in which neutrons walk by chance. */
    static OneGroup walking() {
        return new OneGroup(ChanceWalk.DIFFUSION, ChanceWalk.LOSS);
    }

    @Override
    public int count() {
        return 1;
    }

    @Override
    public double diffusion(int group) {
        return diffusion;
    }

    @Override
    public double removal(int group) {
        return loss;
    }

    @Override
    public double transfer(int from, int to) {
        return 0;
    }

    /** Neutrons made at a depth of soil under a dome and the half sky. */
    static double[] sky(double dome, double depth) {
        double sum = 0;
        for (int i = 0; i < SKY; i++) {
            sum += Math.exp(-(dome + depth * SKY / (i + 0.5)) / ChanceWalk.THINNING) / (2 * SKY);
        }
        return new double[] {sum};
    }

    /** How much of what comes through a level cover flies in each direction, over the mean. */
    private static double[] lit(double cover) {
        double[] lit = new double[Ordinates.DOWN];
        double mean = 0;
        for (int m = 0; m < lit.length; m++) {
            lit[m] = Math.exp(-cover / Ordinates.cosine(m) / ChanceWalk.THINNING);
            mean += Ordinates.weight(m) * lit[m];
        }
        for (int m = 0; m < lit.length; m++) {
            lit[m] /= mean;
        }
        return lit;
    }

    /** A room of walls by thickness. */
    NeutronEnclosure room() {
        SlowNeutrons neutrons = new SlowNeutrons(this);
        double[][] emitted = new double[WALLS.length][1];
        double[][] floor = new double[WALLS.length][];
        double[][][] albedo = new double[WALLS.length][][];
        double[][] lit = new double[WALLS.length][];
        for (int k = 0; k < WALLS.length; k++) {
            double cover = WALLS[k];
            if (k > 0) {
                emitted[k] = neutrons.emitted(cover, x -> sky(0, x));
                albedo[k] = neutrons.albedo(cover);
            }
            floor[k] = neutrons.emitted(DEEP, x -> sky(0, cover + DEEP - x));
            lit[k] = lit(cover);
        }
        return new NeutronEnclosure(WALLS, emitted, albedo, floor, lit);
    }
}
