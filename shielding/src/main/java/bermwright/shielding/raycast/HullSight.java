// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullCrossing;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.LocalRay;

/** One hull as seen from one station: turns rays into the hull's axes and finds where they cross it. */
final class HullSight {
    private final HullSolid hull;
    private final LocalRay ray = new LocalRay();
    private final Vec3 upLocal;
    private final double toEast;
    private final double toNorth;
    final boolean inside;
    final HullCrossing crossing = new HullCrossing();
    boolean ahead;
    boolean crossed;
    double enter;
    double leave;
    private double[] alongBy = new double[0];
    private final double along;
    private final double across;
    private final double up;
    private final double radius;
    private final double skin;
    private final boolean lined;
    private final double reach;
    private final Vec3 axis;
    private final Vec3 side;
    private final Vec3 top;
    /** Parts of the level direction faced in the hull's axes. */
    private double alongPlan;
    private double acrossPlan;
    private double upPlan;

    HullSight(HullSolid hull, Vec3 station) {
        this.hull = hull;
        Vec3 local = hull.pose().local(station);
        ray.origin(local.x(), local.y(), local.z());
        along = local.x();
        across = local.y();
        up = local.z();
        radius = hull.shape().radius();
        skin = hull.shape().skin();
        lined = !hull.shape().inner().isEmpty();
        upLocal = hull.pose().turned(Vec3.UP);
        axis = hull.pose().axis();
        side = hull.pose().left();
        top = hull.pose().crown();
        reach = hull.reach();
        inside = hull.contains(station);
        Vec3 middle = hull.middle();
        toEast = middle.x() - station.x();
        toNorth = middle.y() - station.y();
    }

    /** Turns to an azimuth; afterwards {@link #ahead} says whether any ray of it can meet the hull. */
    void face(double east, double north) {
        ahead = isAhead(east, north);
        if (ahead) {
            alongPlan = east * axis.x() + north * axis.y();
            acrossPlan = east * side.x() + north * side.y();
            upPlan = east * top.x() + north * top.y();
        }
    }

    /** Whether any ray of an azimuth can meet the hull. */
    boolean isAhead(double east, double north) {
        return inside || Math.abs(toEast * north - toNorth * east) <= reach && toEast * east + toNorth * north > -reach;
    }

    /** For a station inside: the way out along one direction; afterwards {@link #leave} holds. */
    void leave(double east, double north, double rise) {
        ray.step(east * axis.x() + north * axis.y() + rise * axis.z(),
                east * side.x() + north * side.y() + rise * side.z(),
                east * top.x() + north * top.y() + rise * top.z());
        hull.shape().leave(ray, crossing);
        leave = crossing.leave();
    }

    /** Looks along one elevation; afterwards {@link #crossed}, {@link #enter} and {@link #leave} hold. */
    void look(double cos, double sin) {
        ray.step(cos * alongPlan + sin * upLocal.x(), cos * acrossPlan + sin * upLocal.y(),
                cos * upPlan + sin * upLocal.z());
        crossed = (inside ? hull.shape().leave(ray, crossing) : hull.shape().cross(ray, crossing))
                && crossing.leave() > 0;
        enter = inside ? 0 : Math.max(0, crossing.enter());
        leave = crossing.leave();
    }

    /**
     * For a station inside: the way out in plan, and the skin on it, along every elevation of an azimuth at once. The
     * plain loop over arrays is what makes it quick; rays that leave through an end are looked at again one by one.
     */
    void leaveAll(Elevations fan, double[] leaveBy, double[] skinBy) {
        int rays = fan.count();
        if (alongBy.length < rays) {
            alongBy = new double[rays];
        }
        barrel(fan, leaveBy, skinBy);
        double[] stations = alongBy;
        double from = hull.shape().barrelStart();
        double to = hull.shape().barrelEnd();
        for (int k = 0; k < rays; k++) {
            if (!(stations[k] >= from && stations[k] <= to)) {
                look(fan.cosines[k], fan.sines[k]);
                leaveBy[k] = leave * fan.cosines[k];
                skinBy[k] = skinOut();
            } else if (lined) {
                double tangent = fan.slopes[k];
                skinBy[k] += inner(acrossPlan + tangent * upLocal.y(), upPlan + tangent * upLocal.z(),
                        leaveBy[k], stations[k]) * fan.secants[k];
            }
        }
    }

    /** The same along single directions. */
    void leaveAll(SingleRays rays, int many, double[] leaveBy, double[] skinBy) {
        if (alongBy.length < many) {
            alongBy = new double[many];
        }
        barrel(rays, many, leaveBy, skinBy);
        double from = hull.shape().barrelStart();
        double to = hull.shape().barrelEnd();
        for (int k = 0; k < many; k++) {
            if (!(alongBy[k] >= from && alongBy[k] <= to)) {
                double flat = 1 / rays.slants[k];
                leave(rays.east[k] * flat, rays.north[k] * flat, rays.tangents[k] * flat);
                leaveBy[k] = leave * flat;
                skinBy[k] = skinOut();
            } else if (lined) {
                skinBy[k] += inner(rays.east[k] * side.x() + rays.north[k] * side.y() + rays.tangents[k] * side.z(),
                        rays.east[k] * top.x() + rays.north[k] * top.y() + rays.tangents[k] * top.z(),
                        leaveBy[k], alongBy[k]) * rays.slants[k];
            }
        }
    }

    /** What stands against the barrel's skin where a way leaves it, for each unit of its length in plan. */
    private double inner(double acrossStep, double upStep, double distance, double station) {
        double a = across + distance * acrossStep;
        double b = up + distance * upStep;
        return (hull.shape().skinAt(station, a, b) - skin) * radius / (a * acrossStep + b * upStep);
    }

    private void barrel(SingleRays rays, int many, double[] leaveBy, double[] skinBy) {
        double[] stations = alongBy;
        double[] east = rays.east;
        double[] north = rays.north;
        double[] tangents = rays.tangents;
        double[] slants = rays.slants;
        double start = along;
        double left = across;
        double crown = up;
        double rest = left * left + crown * crown - radius * radius;
        double mass = skin * radius;
        double ax = axis.x();
        double ay = axis.y();
        double az = axis.z();
        double sx = side.x();
        double sy = side.y();
        double sz = side.z();
        double tx = top.x();
        double ty = top.y();
        double tz = top.z();
        for (int k = 0; k < many; k++) {
            double a = east[k] * sx + north[k] * sy + tangents[k] * sz;
            double b = east[k] * tx + north[k] * ty + tangents[k] * tz;
            double quadratic = a * a + b * b;
            double half = left * a + crown * b;
            double root = Math.sqrt(half * half - quadratic * rest);
            double distance = (root - half) / quadratic;
            leaveBy[k] = distance;
            stations[k] = start + distance * (east[k] * ax + north[k] * ay + tangents[k] * az);
            skinBy[k] = mass * slants[k] / root;
        }
    }

    private void barrel(Elevations fan, double[] leaveBy, double[] skinBy) {
        double[] stations = alongBy;
        double[] slopes = fan.slopes;
        double[] secants = fan.secants;
        double start = along;
        double left = across;
        double crown = up;
        double rest = left * left + crown * crown - radius * radius;
        double px = alongPlan;
        double py = acrossPlan;
        double pz = upPlan;
        double ux = upLocal.x();
        double uy = upLocal.y();
        double uz = upLocal.z();
        double mass = skin * radius;
        int rays = fan.count();
        for (int k = 0; k < rays; k++) {
            double tangent = slopes[k];
            double a = py + tangent * uy;
            double b = pz + tangent * uz;
            double quadratic = a * a + b * b;
            double half = left * a + crown * b;
            double root = Math.sqrt(half * half - quadratic * rest);
            double distance = (root - half) / quadratic;
            leaveBy[k] = distance;
            stations[k] = start + distance * (px + tangent * ux);
            skinBy[k] = mass * secants[k] / root;
        }
    }

    boolean holds(double distance) {
        return crossed && distance > enter + 1e-7 && distance < leave - 1e-7;
    }

    double skinIn() {
        return !inside && crossing.enter() > 0 ? hull.shape().skinAt(ray, crossing.enter()) * crossing.enterSlant() : 0;
    }

    double skinOut() {
        return hull.shape().skinAt(ray, crossing.leave()) * crossing.leaveSlant();
    }
}
