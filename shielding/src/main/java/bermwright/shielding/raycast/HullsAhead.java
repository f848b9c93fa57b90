// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullCrossing;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.LocalRay;
import java.util.Arrays;
import java.util.List;

/** Where one way enters and leaves the hulls of a scene; filled again and again, for one thread. */
final class HullsAhead {
    final HullSolid[] hulls;
    final Vec3[] lefts;
    final double[] enter;
    final double[] leave;
    /** Slants going in and coming out. */
    final double[][] slant;
    private final Vec3[] middles;
    private final double[] reaches;
    private final double near;
    private final LocalRay ray = new LocalRay();
    private final HullCrossing crossing = new HullCrossing();

    /** Hulls, of which those left within a distance do not count (m). */
    HullsAhead(List<HullSolid> all, double near) {
        this.near = near;
        hulls = all.toArray(HullSolid[]::new);
        lefts = Arrays.stream(hulls).map(h -> h.pose().left()).toArray(Vec3[]::new);
        middles = Arrays.stream(hulls).map(HullSolid::middle).toArray(Vec3[]::new);
        reaches = Arrays.stream(hulls).mapToDouble(HullSolid::reach).toArray();
        enter = new double[hulls.length];
        leave = new double[hulls.length];
        slant = new double[2][hulls.length];
    }

    /** Takes a way from a start in a unit direction. */
    void meet(double[] start, double[] way) {
        for (int h = 0; h < hulls.length; h++) {
            HullSolid hull = hulls[h];
            enter[h] = Double.POSITIVE_INFINITY;
            leave[h] = Double.NEGATIVE_INFINITY;
            Vec3 middle = middles[h];
            double dx = middle.x() - start[0];
            double dy = middle.y() - start[1];
            double dz = middle.z() - start[2];
            double ahead = dx * way[0] + dy * way[1] + dz * way[2];
            double reach = reaches[h];
            if (ahead < -reach || dx * dx + dy * dy + dz * dz - ahead * ahead > reach * reach) {
                continue;
            }
            Vec3 base = hull.pose().base();
            double bx = start[0] - base.x();
            double by = start[1] - base.y();
            double bz = start[2] - base.z();
            Vec3 a = hull.pose().axis();
            Vec3 l = lefts[h];
            Vec3 c = hull.pose().crown();
            ray.origin(bx * a.x() + by * a.y() + bz * a.z(), bx * l.x() + by * l.y() + bz * l.z(),
                    bx * c.x() + by * c.y() + bz * c.z());
            ray.step(way[0] * a.x() + way[1] * a.y() + way[2] * a.z(), way[0] * l.x() + way[1] * l.y() + way[2] * l.z(),
                    way[0] * c.x() + way[1] * c.y() + way[2] * c.z());
            if (hull.shape().cross(ray, crossing) && crossing.leave() > near) {
                enter[h] = crossing.enter();
                leave[h] = crossing.leave();
                slant[0][h] = crossing.enterSlant();
                slant[1][h] = crossing.leaveSlant();
            }
        }
    }

    /** The hull around a place of the way that it leaves last, or -1. */
    int around(double t) {
        int found = -1;
        for (int h = 0; h < hulls.length; h++) {
            if (enter[h] <= t && leave[h] > t && (found < 0 || leave[h] > leave[found])) {
                found = h;
            }
        }
        return found;
    }

    int next(double t) {
        int found = -1;
        for (int h = 0; h < hulls.length; h++) {
            if (enter[h] > t && enter[h] < Double.POSITIVE_INFINITY && (found < 0 || enter[h] < enter[found])) {
                found = h;
            }
        }
        return found;
    }

    /** Whether the skin of a hull is cut away at a place of the way, inside another. */
    boolean isCutAway(int hull, double t) {
        for (int h = 0; h < hulls.length; h++) {
            if (h != hull && enter[h] < t - near && leave[h] > t + near) {
                return true;
            }
        }
        return false;
    }
}
