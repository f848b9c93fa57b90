// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Require;
import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.WallSolid;
import java.util.Optional;

/**
 * Looks out from one station: all rays of an azimuth share one cut through the ground.
 *
 * <p>Rays above the horizontal reach the sky; what lies beyond the grid is taken as level at the edge's height.
 * Soil inside hulls counts as empty. One sweep belongs to one thread; the field behind it is shared.
 */
public final class SkySweep {
    private static final double[] NOTHING = new double[0];
    /** A wall no further than this from where a ray leaves soil holds that soil (m). */
    private static final double TOUCHING = 1;
    private final SoilFields fields;
    private final SoilField field;
    private final ProfileWalk walk;
    private final ProfileWalk.Way way = new ProfileWalk.Way();
    private final HullSight[] sights;
    private final WallSolid[] walls;
    private final double[] start;
    private final Voids voids;
    private final SoilFaces faces;
    private final Elevations fan = new Elevations();
    private SingleRays singles;
    private final double[] single = new double[1];
    private final SkyRays alone = new SkyRays();

    SkySweep(SoilFields fields, Ground scene, Vec3 station) {
        this.fields = fields;
        this.field = fields.near();
        this.walk = new ProfileWalk(fields);
        this.sights = scene.hulls().stream().map(h -> new HullSight(h, station)).toArray(HullSight[]::new);
        this.walls = scene.walls().toArray(WallSolid[]::new);
        this.start = new double[] {station.x(), station.y(), station.z()};
        this.faces = new SoilFaces(fields, start);
        this.voids = new Voids(Math.max(1, sights.length));
    }

    /** What stands on the soil. */
    record Ground(java.util.List<HullSolid> hulls, java.util.List<WallSolid> walls) {
    }

    /**
     * Looks along one azimuth.
     *
     * @param azimuth the azimuth
     * @param sines   sines of the elevations (1), rising, above 0 and below 1, or a single one, above -1; not changed
     *                while the sweep is in use
     * @param into    takes what each ray crosses
     * @throws IllegalArgumentException if the sines do not rise or are out of range
     */
    public void look(Azimuth azimuth, double[] sines, SkyRays into) {
        way.east = azimuth.east();
        way.north = azimuth.north();
        look(sines, into);
    }

    private void look(double[] sines, SkyRays into) {
        fan.set(sines);
        into.room(sines);
        Optional<HullSight> only = face(way.east, way.north);
        if (only.isPresent()) {
            voids.one(sines.length);
            only.get().leaveAll(fan, voids.until, into.skin);
        } else {
            voids.clear(sines.length);
            for (int k = 0; k < sines.length; k++) {
                into.skin[k] = hulls(k);
            }
        }
        walk.walk(start, way, fan.tangents, voids);
        into.beyondEdge = walk.belowAtEdge;
        into.leave(walk.finished.exit, faces, way.east, way.north);
        soil(into);
        beyond(into);
        into.noneHeld();
        for (int k = 0; walls.length > 0 && k < sines.length; k++) {
            boolean bare = into.placed[k] + into.inPlace[k] == 0;
            walls(k, bare ? Double.NEGATIVE_INFINITY : walk.finished.exit[k], into);
        }
    }

    /**
     * Looks along single rays in any order, none of which shares its azimuth with another.
     *
     * @param east  parts of the unit directions to the east (1)
     * @param north parts to the north (1)
     * @param up    parts upwards (1), above 0 and below 1; not changed while the rays are in use
     * @param into  takes what each ray crosses; {@link SkyRays#beyondEdge} then is the number of those rays, which
     *              are not the lowest ones
     * @throws IllegalArgumentException if a ray does not rise, or rises straight
     */
    public void look(double[] east, double[] north, double[] up, SkyRays into) {
        into.room(up);
        into.beyondEdge = 0;
        into.looked();
        into.noneHeld();
        boolean apart = field.uniform && walls.length == 0;
        if (apart && singles == null) {
            singles = new SingleRays(fields, sights, start);
        }
        double[][] directions = {east, north, up};
        for (int first = 0; apart && first < up.length; first += RayWave.RAYS) {
            singles.look(directions, first, Math.min(RayWave.RAYS, up.length - first), into);
        }
        for (int k = 0; k < up.length; k++) {
            if (!apart || Double.isNaN(into.placed[k])) {
                alone(new double[] {east[k], north[k], up[k]}, k, into);
            }
        }
    }

    /** Looks along one ray as a fan of one. */
    private void alone(double[] direction, int k, SkyRays into) {
        double flat = Math.hypot(direction[0], direction[1]);
        Require.that(direction[2] > 0 && flat > 0, "the upward part of ray %s is %s; accepted: above 0 and below 1", k,
                direction[2]);
        way.east = direction[0] / flat;
        way.north = direction[1] / flat;
        single[0] = direction[2];
        fan.sines = NOTHING;
        look(single, alone);
        into.takeFirst(k, alone);
    }

    /** Turns lengths below the surfaces into areal densities. */
    private void soil(SkyRays into) {
        double[] placed = into.placed;
        double[] inPlace = into.inPlace;
        double[] all = walk.finished.length;
        double[] undisturbed = walk.place.length;
        int rays = fan.count();
        double[] secants = fan.secants;
        double density = field.placedDensity;
        if (walk.plain) {
            java.util.Arrays.fill(placed, 0, rays, 0);
        } else {
            for (int k = 0; k < rays; k++) {
                placed[k] = Math.max(0, all[k] - undisturbed[k]) * secants[k] * density;
            }
        }
        if (field.uniform) {
            double dense = field.uniformDensity;
            for (int k = 0; k < rays; k++) {
                inPlace[k] = undisturbed[k] * secants[k] * dense;
            }
        } else {
            for (int k = 0; k < rays; k++) {
                inPlace[k] = undisturbed[k] > 0 ? massInPlace(k, 0) * secants[k] : 0;
            }
        }
    }

    /** Turns to an azimuth; the hull around the station, where no other lies in the way. */
    private Optional<HullSight> face(double east, double north) {
        HullSight only = null;
        int ahead = 0;
        for (HullSight sight : sights) {
            sight.face(east, north);
            ahead += sight.ahead ? 1 : 0;
            only = sight.inside ? sight : only;
        }
        return ahead == 1 ? Optional.ofNullable(only) : Optional.empty();
    }

    /** Finds the empty stretches of a ray, in plan, and returns the skin it crosses. */
    private double hulls(int ray) {
        double cos = fan.cosines[ray];
        for (HullSight sight : sights) {
            sight.crossed = false;
            if (sight.ahead) {
                sight.look(cos, fan.sines[ray]);
                if (sight.crossed) {
                    voids.add(ray, sight.enter * cos, sight.leave * cos);
                }
            }
        }
        double skin = 0;
        for (HullSight sight : sights) {
            if (sight.crossed) {
                skin += insideAnother(sight, sight.enter) ? 0 : sight.skinIn();
                skin += insideAnother(sight, sight.leave) ? 0 : sight.skinOut();
            }
        }
        return skin;
    }

    private boolean insideAnother(HullSight own, double distance) {
        for (HullSight other : sights) {
            if (other != own && other.holds(distance)) {
                return true;
            }
        }
        return false;
    }

    /** Of all the soil, what lies beyond the first that each ray leaves. */
    private void beyond(SkyRays into) {
        into.noneBeyond();
        for (int k = 0; k < walk.finished.mostAgain; k++) {
            if (walk.finished.isAgain(k)) {
                double length = walk.finished.length[k] - walk.finished.first[k];
                double undisturbed = !walk.place.isAgain(k) ? 0 : walk.place.length[k] - walk.place.first[k];
                double inPlace = undisturbed <= 0 ? 0 : field.uniform ? undisturbed * field.uniformDensity
                        : massInPlace(k, SurfaceFan.SAME * walk.finished.again[k]);
                into.setBeyond(k, (Math.max(0, length - undisturbed) * field.placedDensity + inPlace) * fan.secants[k]);
            }
        }
    }

    /** Mass of undisturbed soil over the way in plan, of stretches that begin at a place or further out. */
    private double massInPlace(int k, double least) {
        Crossings crossings = walk.place.crossings;
        double tangent = fan.tangents[k + 1];
        double[] total = new double[1];
        double from = 0;
        boolean below = walk.place.startsBelow;
        for (int i = 0; i < crossings.count(k); i++) {
            double at = crossings.at(k, i);
            if (below && from >= least) {
                voids.outside(k, from, at, (start, end) -> total[0] += mass(start, end, tangent));
            }
            from = at;
            below = !below;
        }
        return total[0];
    }

    /** Mass along a stretch in plan whose depth runs straight between the vertices of the natural ground. */
    private double mass(double from, double to, double tangent) {
        double total = 0;
        int v = java.util.Arrays.binarySearch(walk.vertexAt, 0, walk.vertices, from);
        v = Math.max(0, v >= 0 ? v : -v - 2);
        double at = from;
        double depth = natural(v, at) - start[2] - tangent * at;
        while (at < to) {
            double next = v + 1 < walk.vertices ? Math.min(to, walk.vertexAt[v + 1]) : to;
            double nextDepth = natural(v, next) - start[2] - tangent * next;
            double fall = nextDepth - depth;
            total += (next - at) * (Math.abs(fall) < 1e-9 ? field.profile.density((depth + nextDepth) / 2)
                    : (field.profile.columnMass(nextDepth) - field.profile.columnMass(depth)) / fall);
            at = next;
            depth = nextDepth;
            v++;
        }
        return total;
    }

    private double natural(int vertex, double at) {
        int v = Math.min(vertex, walk.vertices - 1);
        if (v + 1 >= walk.vertices) {
            return walk.vertexNatural[v];
        }
        double width = walk.vertexAt[v + 1] - walk.vertexAt[v];
        double share = width > 0 ? (at - walk.vertexAt[v]) / width : 0;
        return walk.vertexNatural[v] + share * (walk.vertexNatural[v + 1] - walk.vertexNatural[v]);
    }

    /** Adds the walls on the way of a ray; one that holds its first soil, left there, gives that soil its face. */
    private void walls(int k, double left, SkyRays into) {
        double nearest = Double.POSITIVE_INFINITY;
        for (WallSolid wall : walls) {
            double ex = wall.to().east() - wall.from().east();
            double ny = wall.to().north() - wall.from().north();
            double across = way.east * ny - way.north * ex;
            if (Math.abs(across) < 1e-12) {
                continue;
            }
            double fx = wall.from().east() - start[0];
            double fy = wall.from().north() - start[1];
            double at = (fx * ny - fy * ex) / across;
            double share = (fx * way.north - fy * way.east) / across;
            double height = start[2] + fan.tangents[k + 1] * at;
            if (at > 0 && share >= 0 && share <= 1 && height >= wall.foot() && height <= wall.top()) {
                double square = Math.abs(across) / Math.hypot(ex, ny);
                double slant = 1 / (square * fan.cosines[k]);
                into.placed[k] += wall.arealDensity() * slant;
                boolean holds = left == Double.NEGATIVE_INFINITY
                        || Math.abs(at - left) * square <= wall.thickness() / 2 + TOUCHING;
                if (holds && at < nearest) {
                    nearest = at;
                    into.setHeld(k, slant);
                }
            }
        }
    }
}
