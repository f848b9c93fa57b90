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
    private final SoilField field;
    private final ProfileWalk walk;
    private final HullSight[] sights;
    private final WallSolid[] walls;
    private final double[] start;
    private final double[] voidFrom;
    private final double[] voidTo;
    private double[] sines = new double[0];
    private double[] cosines = new double[0];
    private double[] secants = new double[0];
    private int voids;

    SkySweep(SoilField field, Ground scene, Vec3 station) {
        this.field = field;
        this.walk = new ProfileWalk(field);
        this.sights = scene.hulls().stream().map(h -> new HullSight(h, station)).toArray(HullSight[]::new);
        this.walls = scene.walls().toArray(WallSolid[]::new);
        this.start = new double[] {station.x(), station.y(), station.z()};
        this.voidFrom = new double[sights.length];
        this.voidTo = new double[sights.length];
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
        set(sines);
        double east = azimuth.east();
        double north = azimuth.north();
        walk.walk(start, east, north);
        into.room(sines.length);
        into.beyondEdge = walk.belowAtEdge;
        Optional<HullSight> only = face(east, north);
        only.ifPresent(own -> own.leaveAll(cosines, sines));
        for (int k = 0; k < sines.length; k++) {
            double sin = sines[k];
            double cos = cosines[k];
            into.skin[k] = only.isPresent() ? ownHull(only.get(), k) : hulls(cos, sin);
            double soil = outsideVoids(walk.finished, k) * secants[k];
            double undisturbed = walk.place == walk.finished ? soil : outsideVoids(walk.place, k) * secants[k];
            double mass = field.uniform ? undisturbed * field.uniformDensity
                    : undisturbed > 0 ? massInPlace(k, cos) : 0;
            into.placed[k] = Math.max(0, soil - undisturbed) * field.placedDensity;
            if (walls.length > 0) {
                into.placed[k] += walls(east, north, k, cos);
            }
            into.inPlace[k] = mass;
            into.rise[k] = soil > 0 ? walk.exitRise[k] : Double.NaN;
            into.sines[k] = sin;
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

    private double ownHull(HullSight own, int k) {
        voids = 1;
        voidFrom[0] = 0;
        voidTo[0] = own.leaveBy[k] * cosines[k];
        return own.skinBy[k];
    }

    private void set(double[] wanted) {
        if (sines == wanted) {
            return;
        }
        for (int k = 0; k < wanted.length; k++) {
            Require.that(wanted[k] > (wanted.length == 1 ? -1 : 0) && wanted[k] < 1
                    && (k == 0 || wanted[k] > wanted[k - 1]),
                    "sine of elevation %s is %s; accepted: rising, above 0 and below 1", k, wanted[k]);
        }
        sines = wanted;
        walk.levels = wanted.length;
        walk.tangents = new double[wanted.length];
        cosines = new double[wanted.length];
        secants = new double[wanted.length];
        for (int k = 0; k < wanted.length; k++) {
            cosines[k] = Math.sqrt(1 - wanted[k] * wanted[k]);
            secants[k] = 1 / cosines[k];
            walk.tangents[k] = wanted[k] * secants[k];
        }
    }

    /** Finds the empty stretches of a ray, in plan, and returns the skin it crosses. */
    private double hulls(double cos, double sin) {
        voids = 0;
        for (HullSight sight : sights) {
            sight.crossed = false;
            if (sight.ahead) {
                sight.look(cos, sin);
                if (sight.crossed) {
                    insert(sight.enter * cos, sight.leave * cos);
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

    private void insert(double from, double to) {
        int at = voids++;
        while (at > 0 && voidFrom[at - 1] > from) {
            voidFrom[at] = voidFrom[at - 1];
            voidTo[at] = voidTo[at - 1];
            at--;
        }
        voidFrom[at] = from;
        voidTo[at] = to;
    }

    /** Length in plan of the stretches below a surface, less what lies inside hulls. */
    private double outsideVoids(Crossings crossings, int ray) {
        double total = 0;
        double from = 0;
        boolean below = crossings.startsBelow;
        int count = crossings.count(ray);
        if (count == 1 && below) {
            return solid(0, crossings.at(ray, 0));
        }
        for (int i = 0; i < count; i++) {
            double at = crossings.at(ray, i);
            if (below) {
                total += solid(from, at);
            }
            from = at;
            below = !below;
        }
        return total;
    }

    private double solid(double from, double to) {
        double at = from;
        double total = 0;
        for (int v = 0; v < voids; v++) {
            if (voidFrom[v] >= to) {
                break;
            }
            if (voidFrom[v] > at) {
                total += voidFrom[v] - at;
            }
            at = Math.max(at, voidTo[v]);
        }
        return total + Math.max(0, to - at);
    }

    private double massInPlace(int k, double cos) {
        double total = 0;
        double from = 0;
        boolean below = walk.place.startsBelow;
        for (int i = 0; i < walk.place.count(k); i++) {
            double at = walk.place.at(k, i);
            if (below) {
                double start = from;
                for (int v = 0; v < voids && voidFrom[v] < at; v++) {
                    if (voidFrom[v] > start) {
                        total += mass(start, voidFrom[v], walk.tangents[k]);
                    }
                    start = Math.max(start, voidTo[v]);
                }
                total += start < at ? mass(start, at, walk.tangents[k]) : 0;
            }
            from = at;
            below = !below;
        }
        return total / cos;
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

    private double walls(double east, double north, int k, double cos) {
        double total = 0;
        for (WallSolid wall : walls) {
            double ex = wall.to().east() - wall.from().east();
            double ny = wall.to().north() - wall.from().north();
            double across = east * ny - north * ex;
            if (Math.abs(across) < 1e-12) {
                continue;
            }
            double fx = wall.from().east() - start[0];
            double fy = wall.from().north() - start[1];
            double at = (fx * ny - fy * ex) / across;
            double share = (fx * north - fy * east) / across;
            double height = start[2] + walk.tangents[k] * at;
            if (at > 0 && share >= 0 && share <= 1 && height >= wall.foot() && height <= wall.top()) {
                total += wall.arealDensity() * Math.hypot(ex, ny) / Math.abs(across) / cos;
            }
        }
        return total;
    }
}
