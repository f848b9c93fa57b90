// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.WallSolid;
import java.util.Arrays;
import java.util.List;

/**
 * What a particle crosses that goes through a scene from any place in any direction: stretches of soil and layers of
 * skin, one after the other, and whether it gets to the sky. To be filled again and again; for one thread.
 *
 * <p>Skins are thin: a place may lie within one, at a depth under its outer face. What lies beyond the grid is taken
 * as level at the edge's height. A wall counts as soil where a way passes over its line; within it a place has a depth
 * too.
 */
public final class ScenePath {
    /** A step along the way, where it is near a surface (m), and as a share of the height over it (1). */
    private static final double STEP = 0.2;
    private static final double STEP_SHARE = 0.35;
    private static final double FAR = 20_000;
    /** No skin and no wall; walls are numbered from the next one down. */
    private static final int NOWHERE = -1;
    private static final int WALLS = NOWHERE - 1;
    private static final double NUDGE = 1e-4;
    private static final double LEAST_COSINE = 1e-3;

    private final SceneRays rays;
    private final Skin skin;
    private final HullsAhead ahead;
    private final double top;
    private SoilField near;
    /** Where it starts; the hull or wall that is in, and how deep under its outer or left face (kg/m2). */
    private final double[] start = new double[3];
    private final double[] way = new double[3];
    private int sheet = NOWHERE;
    /** Stretches of the skin that it starts in, and where in plain space that start is. */
    private int leaving;
    private Vec3 first = Vec3.ZERO;
    private double sheetDepth;
    /** The skin of the sheet that stands ready, with what stands against it there (kg/m2). */
    private double whole;
    /** The stretches: material, mass (kg/m2), where they begin and how long they are (m), or where in a skin. */
    private int count;
    private int[] material = new int[64];
    private int[] inSkin = new int[64];
    private double[] mass = new double[64];
    private double[] from = new double[64];
    private double[] length = new double[64];
    private double[] skinFrom = new double[64];
    private double[] skinStep = new double[64];
    private double total;
    private boolean reachesSky;
    private double enough;
    /** Soil at the place looked at last: depth under the finished surface, the soil in place, the natural ground. */
    private double depth;
    private double depthInPlace;
    private double depthNatural;

    /**
     * The skin of hulls.
     *
     * @param layers      areal densities of its layers from outside (kg/m2)
     * @param equivalence what one unit of it counts as in soil (1)
     */
    public record Skin(List<Double> layers, double equivalence) {
        /** Copies the layers. */
        public Skin {
            layers = List.copyOf(layers);
        }

        double mass() {
            return layers.stream().mapToDouble(Double::doubleValue).sum();
        }
    }

    /**
     * Ways through a scene.
     *
     * @param rays the scene
     * @param skin the skin of its hulls; hulls of another areal density have as much more or less of each layer
     */
    public ScenePath(SceneRays rays, Skin skin) {
        this.rays = rays;
        this.skin = skin;
        ahead = new HullsAhead(rays.scene().hulls(), NUDGE);
        top = Arrays.stream(rays.field().finished).filter(h -> !Double.isNaN(h)).max().orElse(0);
        near = rays.field();
    }

    /**
     * A place in the scene, which may lie within a skin.
     *
     * @param point where
     * @param hull  the hull in whose skin it lies, by its number in the scene; -1 outside all skins and walls, lower
     *              ones for walls
     * @param depth how deep under the skin's outer face, or from the left face of a wall (kg/m2)
     */
    public record Place(Vec3 point, int hull, double depth) {
        /**
         * A place outside all skins.
         *
         * @param point where
         * @return the place
         */
        public static Place of(Vec3 point) {
            return new Place(point, NOWHERE, 0);
        }
    }

    /**
     * Begins at a place.
     *
     * @param place the place
     */
    public void at(Place place) {
        start[0] = place.point.x();
        start[1] = place.point.y();
        start[2] = place.point.z();
        sheet = place.hull;
        sheetDepth = place.depth;
    }

    /**
     * Goes on from the place in a direction.
     *
     * @param east  part of the unit direction to the east (1)
     * @param north part to the north (1)
     * @param up    part upwards (1)
     * @param until areal density after which the rest does not matter (kg/m2)
     */
    public void go(double east, double north, double up, double until) {
        way[0] = east;
        way[1] = north;
        way[2] = up;
        count = 0;
        leaving = 0;
        total = 0;
        enough = until;
        reachesSky = false;
        leaveSkin();
        ahead.meet(start, way);
        double t = 0;
        while (t < FAR && total < enough) {
            int inside = ahead.around(t + NUDGE);
            if (inside >= 0) {
                double out = ahead.leave[inside];
                crossed(inside, out, true);
                t = out;
            } else {
                int next = ahead.next(t);
                double end = next < 0 ? FAR : ahead.enter[next];
                t = soil(t, end);
                if (next >= 0 && t >= end && total < enough) {
                    crossed(next, end, false);
                }
            }
        }
    }

    /** The rest of the skin that the way begins in; the start is then moved out of it. */
    private void leaveSkin() {
        if (sheet < NOWHERE) {
            leaveWall(rays.scene().walls().get(WALLS - sheet));
        }
        if (sheet <= NOWHERE) {
            sheet = NOWHERE;
            return;
        }
        Vec3 at = ahead.hulls[sheet].pose().local(new Vec3(start[0], start[1], start[2]));
        Vec3 local = ahead.hulls[sheet].shape().outward(at);
        Vec3 out = ahead.hulls[sheet].pose().axis().times(local.x()).plus(ahead.lefts[sheet].times(local.y()))
                .plus(ahead.hulls[sheet].pose().crown().times(local.z()));
        double cosine = out.x() * way[0] + out.y() * way[1] + out.z() * way[2];
        whole = ahead.hulls[sheet].shape().skinAt(at.x(), at.y(), at.z());
        layers(sheet, 0, 1 / Math.max(LEAST_COSINE, Math.abs(cosine)), cosine > 0 ? 0 : whole);
        leaving = count;
        first = new Vec3(start[0], start[1], start[2]);
        double nudge = cosine > 0 ? 2 * NUDGE : -2 * NUDGE;
        start[0] += nudge * out.x();
        start[1] += nudge * out.y();
        start[2] += nudge * out.z();
        sheet = NOWHERE;
    }

    /** The rest of the wall that the way begins in, to its face, top or foot; the start is then moved there. */
    private void leaveWall(WallSolid wall) {
        double ex = wall.to().east() - wall.from().east();
        double ny = wall.to().north() - wall.from().north();
        double flat = Math.hypot(ex, ny);
        double cosine = (way[0] * ny - way[1] * ex) / flat;
        double steep = Math.max(LEAST_COSINE, Math.abs(cosine));
        double rest = (cosine > 0 ? wall.arealDensity() - sheetDepth : sheetDepth) / steep;
        double metres = way[2] == 0 ? FAR : ((way[2] > 0 ? wall.top() : wall.foot()) - start[2]) / way[2];
        double ends = Math.max(0, metres) * rays.field().placedDensity;
        leaving = count + 1;
        first = new Vec3(start[0], start[1], start[2]);
        wallPiece(Math.min(rest, ends), 0, Math.min(rest, ends) * (cosine > 0 ? steep : -steep));
        if (ends < rest) {
            for (int k = 0; k < start.length; k++) {
                start[k] += (metres + NUDGE) * way[k];
            }
        } else {
            start[0] += Math.copySign(2 * NUDGE, cosine) * ny / flat;
            start[1] -= Math.copySign(2 * NUDGE, cosine) * ex / flat;
        }
    }

    /** A piece of the wall of the number that stands ready, from the depth that stands ready on. */
    private void wallPiece(double much, double t, double step) {
        add(0, much, t, 0);
        inSkin[count - 1] = sheet;
        skinFrom[count - 1] = sheetDepth;
        skinStep[count - 1] = step;
    }

    /** The skin of a hull, where no other hull has cut it away. */
    private void crossed(int hull, double t, boolean out) {
        if (ahead.isCutAway(hull, t)) {
            return;
        }
        whole = skin(ahead.hulls[hull], t);
        sheetDepth = out ? whole : 0;
        layers(hull, t, ahead.slant[out ? 1 : 0][hull], out ? 0 : whole);
    }

    /** The skin of a hull and what stands against it where the way crosses it (kg/m2). */
    private double skin(HullSolid hull, double t) {
        if (hull.shape().inner().isEmpty()) {
            return hull.shape().skin();
        }
        Vec3 local = hull.pose().local(new Vec3(start[0] + t * way[0], start[1] + t * way[1], start[2] + t * way[2]));
        return hull.shape().skinAt(local.x(), local.y(), local.z());
    }

    /** Layers of a skin from the depth under its outer face that stands ready to another (kg/m2). */
    private void layers(int hull, double t, double slanted, double until) {
        double scale = skin.mass() > 0 ? whole / skin.mass() : 0;
        boolean outwards = until < sheetDepth;
        int many = skin.layers().size();
        double outer = outwards ? whole : 0;
        for (int k = 0; k < many && scale > 0; k++) {
            int layer = outwards ? many - 1 - k : k;
            double thick = skin.layers().get(layer) * scale;
            double a = outwards ? outer - thick : outer;
            double low = Math.max(a, Math.min(sheetDepth, until));
            double high = Math.min(a + thick, Math.max(sheetDepth, until));
            outer += outwards ? -thick : thick;
            if (high > low) {
                add(1 + layer, (high - low) * slanted, t, 0);
                total += (high - low) * slanted * (skin.equivalence() - 1);
                inSkin[count - 1] = hull;
                skinFrom[count - 1] = outwards ? high : low;
                skinStep[count - 1] = outwards ? low - high : high - low;
            }
        }
    }

    private void add(int of, double much, double begins, double goes) {
        if (count == material.length) {
            int wide = 2 * count;
            material = Arrays.copyOf(material, wide);
            inSkin = Arrays.copyOf(inSkin, wide);
            mass = Arrays.copyOf(mass, wide);
            from = Arrays.copyOf(from, wide);
            length = Arrays.copyOf(length, wide);
            skinFrom = Arrays.copyOf(skinFrom, wide);
            skinStep = Arrays.copyOf(skinStep, wide);
        }
        material[count] = of;
        inSkin[count] = NOWHERE;
        mass[count] = much;
        from[count] = begins;
        length[count++] = goes;
        total += much;
    }

    /** Follows the soil over a part of the way outside all hulls and answers how far it came. */
    private double soil(double begin, double end) {
        double t = begin;
        look(t);
        while (t < end && total < enough) {
            double d = depth;
            double dp = depthInPlace;
            double dn = depthNatural;
            double height = start[2] + t * way[2];
            if (d < 0 && way[2] > 0 && height > top) {
                reachesSky = end >= FAR;
                wall(t, end);
                return end;
            }
            double step = Math.max(STEP, STEP_SHARE * Math.min(Math.abs(d), Math.abs(dp)));
            double next = Math.min(end, t + step);
            look(next);
            piece(t, next, new double[] {d, dp, dn});
            wall(t, next);
            t = next;
        }
        reachesSky |= t >= FAR && way[2] > 0;
        return t;
    }

    private void wall(double t, double next) {
        List<WallSolid> walls = rays.scene().walls();
        for (int w = 0; w < walls.size(); w++) {
            WallSolid wall = walls.get(w);
            double ex = wall.to().east() - wall.from().east();
            double ny = wall.to().north() - wall.from().north();
            double across = way[0] * ny - way[1] * ex;
            if (across == 0) {
                continue;
            }
            double dx = wall.from().east() - start[0];
            double dy = wall.from().north() - start[1];
            double meet = (dx * ny - dy * ex) / across;
            double along = (dx * way[1] - dy * way[0]) / across;
            double z = start[2] + meet * way[2];
            if (meet > t && meet <= next && along >= 0 && along <= 1 && z >= wall.foot() && z <= wall.top()) {
                double cosine = Math.max(LEAST_COSINE, Math.abs(across) / Math.hypot(ex, ny));
                sheet = WALLS - w;
                sheetDepth = across > 0 ? 0 : wall.arealDensity();
                wallPiece(wall.arealDensity() / cosine, meet, Math.copySign(wall.arealDensity(), across));
                sheet = NOWHERE;
            }
        }
    }

    /** Soil between two places near each other, surfaces taken as straight between them. */
    private void piece(double t, double next, double[] before) {
        double d = depth;
        double dp = depthInPlace;
        if (before[0] <= 0 && d <= 0) {
            return;
        }
        double f = before[0] > 0 == d > 0 ? 1 : before[0] / (before[0] - d);
        double n = before[1] > 0 == dp > 0 ? 1 : before[1] / (before[1] - dp);
        double first = Math.min(f, n);
        double second = Math.max(f, n);
        part(t, next, new double[] {0, first}, before);
        part(t, next, new double[] {first, second}, before);
        part(t, next, new double[] {second, 1}, before);
    }

    private void part(double t, double next, double[] shares, double[] before) {
        if (shares[1] <= shares[0]) {
            return;
        }
        double middle = (shares[0] + shares[1]) / 2;
        if (before[0] + middle * (depth - before[0]) <= 0) {
            return;
        }
        SoilField field = rays.field();
        double under = before[2] + middle * (depthNatural - before[2]);
        double density = before[1] + middle * (depthInPlace - before[1]) <= 0 ? field.placedDensity
                : field.uniform ? field.uniformDensity : field.profile.density(Math.max(0, under));
        double begins = t + shares[0] * (next - t);
        double goes = (shares[1] - shares[0]) * (next - t);
        int last = count - 1;
        if (last >= 0 && material[last] == 0 && length[last] > 0
                && Math.abs(from[last] + length[last] - begins) < 1e-9
                && Math.abs(mass[last] - density * length[last]) < 1e-9 * mass[last]) {
            mass[last] += density * goes;
            length[last] += goes;
            total += density * goes;
        } else {
            add(0, density * goes, begins, goes);
        }
    }

    /** Looks how deep a place of the way lies under the surfaces. */
    private void look(double t) {
        double px = start[0] + t * way[0];
        double py = start[1] + t * way[1];
        double pz = start[2] + t * way[2];
        double x = (px - near.west) / near.spacing;
        double y = (py - near.south) / near.spacing;
        if (near == rays.field() || !near.holds(x, y)) {
            near = rays.fieldAt(px, py);
            x = Math.max(0, Math.min(near.columns - 1, (px - near.west) / near.spacing));
            y = Math.max(0, Math.min(near.rows - 1, (py - near.south) / near.spacing));
        }
        double finished = near.onTriangles(near.finished, x, y);
        depth = Double.isNaN(finished) ? -1 : finished - pz;
        depthInPlace = near.inPlace == near.finished ? depth : near.onTriangles(near.inPlace, x, y) - pz;
        depthNatural = near.uniform ? depthInPlace : near.onTriangles(near.natural, x, y) - pz;
        if (Double.isNaN(depthInPlace)) {
            depthInPlace = depth;
        }
    }

    /**
     * How many stretches there are.
     *
     * @return the number
     */
    public int count() {
        return count;
    }

    /**
     * The material of a stretch.
     *
     * @param i the stretch
     * @return 0 soil, 1 and on the layers of the skin from outside
     */
    public int material(int i) {
        return material[i];
    }

    /**
     * The mass of a stretch.
     *
     * @param i the stretch
     * @return areal density (kg/m2)
     */
    public double arealDensity(int i) {
        return mass[i];
    }

    /**
     * Everything up to the sky, skins counted as soil.
     *
     * @return areal density (kg/m2); infinite where the way does not get to the sky
     */
    public double toSky() {
        return reachesSky ? total : Double.POSITIVE_INFINITY;
    }

    /**
     * What lies behind a place on the way.
     *
     * @param i     stretch that the place is in
     * @param share share of the stretch that is behind it (1)
     * @return areal density up to the sky, skins counted as soil (kg/m2); infinite where it does not get there
     */
    public double toSky(int i, double share) {
        if (!reachesSky) {
            return Double.POSITIVE_INFINITY;
        }
        double sum = counted(i) * (1 - share);
        for (int k = i + 1; k < count; k++) {
            sum += counted(k);
        }
        return sum;
    }

    private double counted(int i) {
        return material[i] == 0 ? mass[i] : mass[i] * skin.equivalence();
    }

    /**
     * A place on the way.
     *
     * @param i     stretch that the place is in
     * @param share share of the stretch that is behind it (1)
     * @return the place
     */
    public Place place(int i, double share) {
        double t = from[i] + share * length[i];
        Vec3 point = i < leaving ? first
                : new Vec3(start[0] + t * way[0], start[1] + t * way[1], start[2] + t * way[2]);
        return new Place(point, inSkin[i], inSkin[i] == NOWHERE ? 0 : skinFrom[i] + share * skinStep[i]);
    }
}
