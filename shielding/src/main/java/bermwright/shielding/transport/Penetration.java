// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.transport;

import bermwright.foundation.Progress;
import bermwright.shielding.material.Layer;
import bermwright.shielding.material.Material;
import bermwright.shielding.material.Materials;
import bermwright.shielding.material.Shield;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * A field of particles from all sides through soil of growing depth and then a skin: fields at chosen depths, and what
 * open ground sends back.
 *
 * <p>Ions, and protons that did not react, go straight along the ray. What reactions make is carried through a level
 * slab under the half sky by depth and direction ({@link SlabHadrons}); a wall shows in each direction what the slab as
 * thick as it shows at the same slant. Slow neutrons diffuse between the faces of walls.
 */
public final class Penetration {
    /** Along rays nothing is followed beyond this (g/cm2). */
    private static final double DEEPEST_GCM2 = 1900;
    private static final double OPEN_GROUND_GCM2 = 800;
    /** Bounds of the steps of the slab, and the steps (g/cm2). */
    private static final double[] SLAB_GCM2 = {0, 1, 4, 10, 30, 100, 400, 1000, 1500, 1800};
    private static final double[] SLAB_STEP_GCM2 = {0.25, 0.5, 1, 2, 5, 10, 20, 50, 100};
    /** Depths nearer to each other than this are one (g/cm2). */
    private static final double NEAR_GCM2 = 1e-7;
    /** Areal densities of walls that slow neutrons are worked out for (g/cm2). */
    private static final double[] WALLS_GCM2 = {0, 0.5, 1, 2, 3, 5, 7, 10, 15, 20, 25, 30, 40, 50, 60, 75, 90, 105, 125,
        150, 175, 200, 225, 250, 275, 300, 350, 400, 450, 500, 600, 700, 800, 1000, 1200, 1500};
    private static final double MADE_STEP_GCM2 = 4;
    /** Steps through skins and the outer parts of a body, and through its deep parts (g/cm2). */
    private static final double STEP_GCM2 = 2;
    private static final double BODY_STEP_GCM2 = 4;
    /** Share of hydrogen from which a layer of skin slows neutrons by itself (1). */
    private static final double HYDROGEN = 0.01;
    /** Energies by which materials are compared that make slow neutrons, and that stop protons (MeV). */
    private static final double MAKING_MEV = 200;
    private static final double COMPARED_AT_MEV = 100;

    private final Shield shield;
    private final Resolution resolution;
    private final EnergyGrid grid;
    private final BeamTransport soil;
    private final AngularReactions reactions;
    private final List<BeamTransport> skin = new ArrayList<>();
    private final BeamTransport water;
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
    public record Outcome(List<Field> fields, NeutronEnclosure room, double made) {
        /**
         * Slow neutrons that open ground under open sky sends back.
         *
         * @return fluence by group (1/m2)
         */
        public double[] ground() {
            NeutronEnclosure.Walls open = room.walls();
            open.add(0, 0, 1, 1);
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
        soil = new BeamTransport(new Medium(shield.soil(), grid));
        reactions = new AngularReactions(soil.medium());
        for (Layer layer : shield.skin()) {
            skin.add(new BeamTransport(new Medium(layer.material(), grid)));
        }
        water = new BeamTransport(new Medium(Materials.named("water"), grid));
        skinAsSoil = shield.skinArealDensity() / 10 * skinEquivalence;
        neutrons = new SlowNeutrons(new SlowCrossSections(shield.soil()), liner());
        for (int k = 1; k < WALLS_GCM2.length; k++) {
            albedo[k] = neutrons.albedo(WALLS_GCM2[k]);
        }
    }

    /** The layers of the skin that hold hydrogen, together and innermost; other layers count as soil to neutrons. */
    private Optional<SlowNeutrons.Liner> liner() {
        double mass = 0;
        double stopped = 0;
        double all = 0;
        Optional<Layer> thickest = Optional.empty();
        for (Layer layer : shield.skin()) {
            double part = layer.arealDensity() * Stopping.in(layer.material()).protonMeVPerGCm2(COMPARED_AT_MEV);
            all += part;
            boolean hydrogen = layer.material().parts().stream().anyMatch(p -> p.element().charge() == 1
                    && p.share() >= HYDROGEN);
            if (hydrogen && layer.arealDensity() > 0) {
                mass += layer.arealDensity();
                stopped += part;
                thickest = thickest.filter(t -> t.arealDensity() >= layer.arealDensity()).or(() -> Optional.of(layer));
            }
        }
        double share = stopped / all;
        double thickness = mass / 10;
        return thickest.map(Layer::material).map(m -> new SlowNeutrons.Liner(new SlowCrossSections(m), thickness,
                skinAsSoil * share, slowMade(m) / slowMade(shield.soil())));
    }

    private static double slowMade(Material material) {
        double sum = 0;
        for (double group : MaterialYields.of(CascadeYields.Projectile.NEUTRON, material, MAKING_MEV).slow()) {
            sum += group;
        }
        return sum;
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
        march(water, beam, depthGCm2, depthGCm2 > BODY_STEP_GCM2 ? BODY_STEP_GCM2 : STEP_GCM2);
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
        return carry(beam, depths, Double.POSITIVE_INFINITY, progress);
    }

    /**
     * Carries a beam into a shell that bulges.
     *
     * @param beam            beam over the whole sphere, left as it is
     * @param depths          depths of soil and skin counted as soil at which the field is wanted (g/cm2), from 0 up
     * @param outerRadiusGCm2 radius of its outer face (g/cm2), infinite where it is level
     * @param progress        told how far the work has come
     * @return the fields
     */
    public Outcome carry(Beam beam, double[] depths, double outerRadiusGCm2, Progress progress) {
        StraightBeams straight = new StraightBeams(soil, outerRadiusGCm2);
        Beam[] at = straight(beam, depths, straight, progress.part(0, 0.4));
        SlabHadrons slab = new SlabHadrons(reactions, soil.medium(), points(depths), straight,
                soil.showerLengthGCm2());
        progress.report(0.8, "particles made on the way");
        SlabFields made = new SlabFields(slab, soil.medium());
        NeutronEnclosure room = room(made);
        List<Field> fields = new ArrayList<>();
        for (int i = 0; i < depths.length; i++) {
            progress.check();
            fields.add(field(depths[i], at[i], made, room));
            progress.report(0.8 + 0.2 * i / depths.length, "doses");
        }
        return new Outcome(List.copyOf(fields), room, madeInGround(made));
    }

    /**
     * What walks go by that follow the particles of a beam back from a station.
     *
     * @param beam       beam over the whole sphere, left as it is
     * @param depthGCm2  depth of soil by whose field walks are drawn (g/cm2), positive; answers do not hang on it
     * @param counts     what each particle counts at the station
     * @param progress   told how far the work has come
     * @return reactions and sources, read backwards
     */
    public BackwardField backward(Beam beam, double depthGCm2, BackwardField.Counts counts, Progress progress) {
        StraightBeams straight = new StraightBeams(soil, Double.POSITIVE_INFINITY);
        straight(beam, new double[] {0}, straight, progress.part(0, 0.4));
        double[] points = points(new double[] {depthGCm2});
        SlabHadrons slab = new SlabHadrons(reactions, soil.medium(), points, straight, soil.showerLengthGCm2());
        progress.report(0.7, "reactions read backwards");
        List<BeamTransport> media = new ArrayList<>(List.of(soil));
        media.addAll(skin);
        int point = java.util.Arrays.binarySearch(points, depthGCm2);
        return new BackwardField(slab, point >= 0 ? point : -point - 2, straight, media, counts);
    }

    /** Marches what comes in straight along a ray and answers what is left of it at depths. */
    private Beam[] straight(Beam beam, double[] depths, StraightBeams straight, Progress progress) {
        Beam running = beam.copy();
        Beam[] at = new Beam[depths.length];
        double depth = 0;
        int next = 0;
        while (true) {
            while (next < depths.length && soilDepth(depths[next]) <= depth + 1e-9) {
                at[next] = running.copy();
                next++;
            }
            straight.add(depth, running);
            if (next >= depths.length && depth >= DEEPEST_GCM2) {
                return at;
            }
            progress.check();
            double h = Math.min(step(depth), next < depths.length ? soilDepth(depths[next]) - depth : 1e9);
            soil.straight(running, h);
            depth += h;
            progress.report(depth / DEEPEST_GCM2, "particles at " + Math.round(depth) + " g/cm2");
        }
    }

    /** Points of the slab: finer towards the surface, among them all depths at which something is asked. */
    private double[] points(double[] depths) {
        TreeSet<Double> points = new TreeSet<>();
        for (int k = 0; k + 1 < SLAB_GCM2.length; k++) {
            double width = SLAB_GCM2[k + 1] - SLAB_GCM2[k];
            int count = (int) Math.ceil(width / (SLAB_STEP_GCM2[k] * resolution.stepShare()));
            for (int i = 0; i < count; i++) {
                points.add(SLAB_GCM2[k] + i * width / count);
            }
        }
        points.add(SLAB_GCM2[SLAB_GCM2.length - 1]);
        for (double wall : WALLS_GCM2) {
            points.add(wall);
        }
        for (double depth : depths) {
            points.add(depth);
        }
        List<Double> apart = new ArrayList<>();
        for (double point : points) {
            if (apart.isEmpty() || point > apart.get(apart.size() - 1) + NEAR_GCM2) {
                apart.add(point);
            }
        }
        return apart.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private NeutronEnclosure room(SlabFields made) {
        int count = WALLS_GCM2.length;
        double[][] emitted = new double[count][SlowCrossSections.GROUPS];
        double[][] floor = new double[count][];
        double[][] lit = new double[count][];
        SlowNeutrons open = new SlowNeutrons(new SlowCrossSections(shield.soil()));
        for (int k = 0; k < count; k++) {
            double cover = WALLS_GCM2[k];
            if (k > 0) {
                emitted[k] = neutrons.emitted(cover, made);
            }
            floor[k] = (k > 0 ? neutrons : open).emitted(OPEN_GROUND_GCM2,
                    depth -> made.at(cover + OPEN_GROUND_GCM2 - depth));
            lit[k] = made.strength(made.point(cover));
        }
        return new NeutronEnclosure(WALLS_GCM2, emitted, albedo, floor, lit);
    }

    private static double madeInGround(SlowNeutrons.Source source) {
        double sum = 0;
        for (double depth = MADE_STEP_GCM2 / 2; depth < OPEN_GROUND_GCM2; depth += MADE_STEP_GCM2) {
            for (double group : source.at(depth)) {
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

    private Field field(double depth, Beam behind, SlabFields made, NeutronEnclosure room) {
        int point = made.point(depth);
        SkinEffect effect = SkinEffect.NONE;
        double share = skinAsSoil <= 0 ? 0 : Math.min(1, depth / skinAsSoil);
        if (share > 0) {
            Beam soilOnly = behind.and(made.down(made.nearest(soilDepth(depth))), 1);
            Beam asSoil = soilOnly.copy();
            march(soil, asSoil, skinAsSoil * share, STEP_GCM2);
            for (int i = 0; i < skin.size(); i++) {
                march(skin.get(i), soilOnly, shield.skin().get(i).arealDensity() / 10 * share, STEP_GCM2);
            }
            effect = SkinEffect.of(soilOnly, asSoil);
            behind = soilOnly.straight();
        }
        List<Beam> level = new ArrayList<>();
        List<Double> strength = new ArrayList<>();
        double[] strengths = made.strength(point);
        for (int m = 0; m < Ordinates.DOWN; m++) {
            level.add(effect.on(made.made(m, point)));
            strength.add(strengths[m]);
        }
        Beam up = made.up(point);
        Beam square = behind.and(effect.on(made.down(point)), 1);
        Field.Returned returned = new Field.Returned(
                up.times(Math.max(0, Ordinates.between(strengths, Ordinates.DOWN - 2, 1)) / 2),
                made.upFrom(point, made.nearest(2 * depth)).times(0.5));
        Field.Level levelField = new Field.Level(level, up, strength);
        if (depth <= 0) {
            double[] none = new double[SlowCrossSections.GROUPS];
            return new Field(depth, square, returned, levelField, none, none);
        }
        NeutronEnclosure.Walls dome = room.walls();
        dome.add(depth, depth, 1, 1);
        double[] around = neutrons.emitted(depth, x -> sum(made.at(x), made.at(2 * depth - x)));
        return new Field(depth, square, returned, levelField, dome.fluence(), room.closed(depth, around));
    }

    private static double[] sum(double[] one, double[] other) {
        double[] sum = one.clone();
        for (int g = 0; g < sum.length; g++) {
            sum[g] += other[g];
        }
        return sum;
    }

    private void march(BeamTransport march, Beam beam, double thickness, double step) {
        int count = (int) Math.max(1, Math.ceil(thickness / (step * resolution.stepShare())));
        for (int i = 0; i < count && thickness > 0; i++) {
            march.step(beam, thickness / count);
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
