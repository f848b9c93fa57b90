// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Layer;
import bermwright.shielding.material.Material;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import java.util.ArrayList;
import java.util.List;

/**
 * A field of particles from all sides through soil of growing depth and then a skin: fields at chosen depths, and what
 * open ground sends back.
 *
 * <p>Fast particles go straight along the ray. Slow neutrons are made along rays that come in from the whole half sky
 * above each piece of the cover, and diffuse between its faces.
 */
public final class Penetration {
    private static final int SKY_POINTS = 12;
    private static final double[] SKY_COSINE = new double[SKY_POINTS];
    private static final double DEEPEST_GCM2 = 1500;
    private static final double OPEN_GROUND_GCM2 = 800;
    /** Beyond the deepest step the source falls by e over this (g/cm2), as it does before. */
    private static final double DEEP_RELAXATION_GCM2 = 150;
    /** Areal densities of walls that slow neutrons are worked out for (g/cm2). */
    private static final double[] WALLS_GCM2 = {0, 0.5, 1, 2, 3, 5, 7, 10, 15, 20, 25, 30, 40, 50, 60, 75, 90, 105, 125,
        150, 175, 200, 225, 250, 275, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200, 1500};
    private static final double MADE_STEP_GCM2 = 4;

    static {
        for (int i = 0; i < SKY_POINTS; i++) {
            SKY_COSINE[i] = (i + 0.5) / SKY_POINTS;
        }
    }

    private final Shield shield;
    private final Resolution resolution;
    private final EnergyGrid grid;
    private final March soil;
    private final List<March> skin = new ArrayList<>();
    private final March water;
    private final double skinAsSoil;
    private final SlowNeutrons neutrons;
    private final double[][][] albedo = new double[WALLS_GCM2.length][][];

    /**
     * How finely to march.
     *
     * @param pointsInDecade points of the energy grid in a factor ten
     * @param stepShare      steps as a share of the standard ones (1): 1 g/cm2 to 50, 2 to 200, 5 beyond
     */
    public record Resolution(int pointsInDecade, double stepShare) {
        /** Fine enough that halving changes no dose by a hundredth. */
        public static final Resolution STANDARD = new Resolution(23, 1);
    }

    /**
     * What came through.
     *
     * @param fields fields by depth, the first one without any soil
     * @param room   slow neutrons of a room by its walls
     * @param made   slow neutrons made under open ground (1/m2)
     */
    public record Outcome(List<Field> fields, SlowRoom room, double made) {
        /**
         * Slow neutrons that open ground under open sky sends back.
         *
         * @return fluence by group (1/m2)
         */
        public double[] ground() {
            SlowRoom.Walls open = room.walls();
            open.add(0, 0, 1);
            return open.fluence();
        }
    }

    /**
     * Prepares a shield.
     *
     * @param shield          soil and skin
     * @param skinEquivalence what one unit of the skin counts as in soil (1), positive
     * @param resolution      how finely to march
     */
    public Penetration(Shield shield, double skinEquivalence, Resolution resolution) {
        this.shield = shield;
        this.resolution = resolution;
        grid = new EnergyGrid(resolution.pointsInDecade());
        soil = new March(new Medium(shield.soil(), grid));
        for (Layer layer : shield.skin()) {
            skin.add(new March(new Medium(layer.material(), grid)));
        }
        water = new March(new Medium(Materials.named("water"), grid));
        skinAsSoil = shield.skinArealDensity() / 10 * skinEquivalence;
        neutrons = new SlowNeutrons(new SlowCrossSections(shield.soil()));
        for (int k = 1; k < WALLS_GCM2.length; k++) {
            albedo[k] = neutrons.albedo(WALLS_GCM2[k]);
        }
    }

    /**
     * The energies.
     *
     * @return the grid
     */
    public EnergyGrid grid() {
        return grid;
    }

    /**
     * Stopping in the water that stands for the body.
     *
     * @return stopping powers
     */
    public Stopping water() {
        return water.medium().stopping();
    }

    /**
     * A beam deeper in a body of water.
     *
     * @param behind    beam at the skin, left as it is
     * @param depthGCm2 depth in the body (g/cm2), positive
     * @return the beam there
     */
    public Beam inBody(Beam behind, double depthGCm2) {
        Beam beam = behind.copy();
        march(water, beam, depthGCm2);
        return beam;
    }

    /**
     * Energy that reactions leave where they happen in a body of water.
     *
     * @param beam the beam there
     * @return MeV per g/cm2 and m2 in slow protons, evaporated protons, hydrogen-2 and -3, helium, and recoil
     */
    public double[] leftByReactions(Beam beam) {
        return water.local(beam);
    }

    /**
     * Mean depth over which electrons and gammas give up their energy in the soil.
     *
     * @return areal density (g/cm2), positive
     */
    public double showerLengthGCm2() {
        return soil.showerLengthGCm2();
    }

    /**
     * Carries a beam in.
     *
     * @param beam     beam over the whole sphere, left as it is
     * @param depths   depths of soil and skin counted as soil at which the field is wanted (g/cm2), rising from 0
     * @param progress told how far the work has come
     * @return the fields
     */
    public Outcome carry(Beam beam, double[] depths, Progress progress) {
        Beam running = beam.copy();
        List<double[]> sources = new ArrayList<>();
        List<Double> places = new ArrayList<>();
        FastReturn back = new FastReturn(soil.medium());
        Beam[] at = new Beam[depths.length];
        double depth = 0;
        int next = 0;
        while (true) {
            while (next < depths.length && soilDepth(depths[next]) <= depth + 1e-9) {
                at[next] = running.copy();
                next++;
            }
            sources.add(soil.slowNeutrons(running));
            places.add(depth);
            back.add(depth, soil.thrownBack(running));
            if (next >= depths.length && depth >= DEEPEST_GCM2) {
                break;
            }
            progress.check();
            double h = Math.min(step(depth), next < depths.length ? soilDepth(depths[next]) - depth : 1e9);
            soil.step(running, h);
            depth += h;
            progress.report(0.8 * depth / DEEPEST_GCM2, "particles at " + Math.round(depth) + " g/cm2");
        }
        SkySource sky = new SkySource(places, sources);
        SlowRoom room = room(sky);
        List<Field> fields = new ArrayList<>();
        for (int i = 0; i < depths.length; i++) {
            progress.check();
            Field.Returned returned = new Field.Returned(back.ofGround(depths[i]), back.ofWall(depths[i]));
            fields.add(field(depths[i], at[i], returned, room, sky));
            progress.report(0.8 + 0.2 * i / depths.length, "doses");
        }
        return new Outcome(List.copyOf(fields), room, made(sky));
    }

    private SlowRoom room(SkySource sky) {
        int count = WALLS_GCM2.length;
        double[][] emitted = new double[count][SlowCrossSections.GROUPS];
        double[][] floor = new double[count][];
        for (int k = 0; k < count; k++) {
            double cover = WALLS_GCM2[k];
            if (k > 0) {
                emitted[k] = neutrons.emitted(cover, sky);
            }
            floor[k] = neutrons.emitted(OPEN_GROUND_GCM2, depth -> sky.at(cover, OPEN_GROUND_GCM2 - depth));
        }
        return new SlowRoom(WALLS_GCM2, emitted, albedo, floor);
    }

    private static double made(SlowNeutrons.Source sky) {
        double sum = 0;
        for (double depth = MADE_STEP_GCM2 / 2; depth < OPEN_GROUND_GCM2; depth += MADE_STEP_GCM2) {
            for (double group : sky.at(depth)) {
                sum += group * MADE_STEP_GCM2;
            }
        }
        return sum;
    }

    private double soilDepth(double depth) {
        return Math.max(0, depth - skinAsSoil);
    }

    private double step(double depth) {
        double standard = depth < 50 ? 1 : depth < 200 ? 2 : 5;
        double h = standard * resolution.stepShare();
        double bound = depth < 50 ? 50 : depth < 200 ? 200 : Double.POSITIVE_INFINITY;
        return Math.min(h, Math.max(1e-6, bound - depth));
    }

    private Field field(double depth, Beam behind, Field.Returned returned, SlowRoom room, SkySource sky) {
        double share = skinAsSoil <= 0 ? 0 : Math.min(1, depth / skinAsSoil);
        for (int i = 0; i < skin.size() && share > 0; i++) {
            march(skin.get(i), behind, shield.skin().get(i).arealDensity() / 10 * share);
        }
        if (depth <= 0) {
            double[] none = new double[SlowCrossSections.GROUPS];
            return new Field(depth, behind, returned, none, none);
        }
        SlowRoom.Walls dome = room.walls();
        dome.add(depth, depth, 1);
        double[] around = neutrons.emitted(depth, x -> sum(sky.at(x), sky.at(depth, depth - x)));
        return new Field(depth, behind, returned, dome.fluence(), room.closed(depth, around));
    }

    private static double[] sum(double[] one, double[] other) {
        double[] sum = one.clone();
        for (int g = 0; g < sum.length; g++) {
            sum[g] += other[g];
        }
        return sum;
    }

    private void march(March march, Beam beam, double thickness) {
        int count = (int) Math.max(1, Math.ceil(thickness / (2 * resolution.stepShare())));
        for (int i = 0; i < count && thickness > 0; i++) {
            march.step(beam, thickness / count);
        }
    }

    /** Slow neutrons made at a depth under the half sky: the mean over the cosine of what slanted rays make. */
    private static final class SkySource implements SlowNeutrons.Source {
        private final double[] places;
        private final double[][] sources;

        SkySource(List<Double> places, List<double[]> sources) {
            this.places = places.stream().mapToDouble(Double::doubleValue).toArray();
            this.sources = sources.toArray(double[][]::new);
        }

        @Override
        public double[] at(double depthGCm2) {
            return at(0, depthGCm2);
        }

        /** The source at a depth of a floor under a dome, both in g/cm2. */
        double[] at(double dome, double depthGCm2) {
            double[] sum = new double[SlowCrossSections.GROUPS];
            for (double cosine : SKY_COSINE) {
                double slant = dome + depthGCm2 / cosine;
                double inside = Math.min(slant, places[places.length - 1]);
                double beyond = Math.exp((inside - slant) / DEEP_RELAXATION_GCM2);
                int k = java.util.Arrays.binarySearch(places, inside);
                int i = Math.min(places.length - 2, k >= 0 ? k : -k - 2);
                double w = (inside - places[i]) / (places[i + 1] - places[i]);
                for (int g = 0; g < sum.length; g++) {
                    sum[g] += ((1 - w) * sources[i][g] + w * sources[i + 1][g]) / (2.0 * SKY_POINTS) * beyond;
                }
            }
            return sum;
        }
    }

    /**
     * The soil.
     *
     * @return the material under which the fields are
     */
    public Material soil() {
        return shield.soil();
    }
}
