// SPDX-License-Identifier: Apache-2.0
package bermwright.site.space;

import bermwright.foundation.Vec3;
import java.util.List;

/** The convex body around some corners: a point, a straight piece of line, a box. */
public final class Corners implements Convex {
    private final List<Vec3> corners;
    private final Vec3 middle;
    private final double reach;

    /**
     * The body around corners.
     *
     * @param corners the corners, at least one
     */
    public Corners(List<Vec3> corners) {
        this.corners = List.copyOf(corners);
        Vec3 sum = Vec3.ZERO;
        for (Vec3 corner : corners) {
            sum = sum.plus(corner);
        }
        this.middle = sum.times(1.0 / corners.size());
        this.reach = corners.stream().mapToDouble(c -> c.minus(middle).norm()).max().orElse(0);
    }

    /**
     * A straight piece.
     *
     * @param from one end
     * @param to   the other end
     * @return the body
     */
    public static Corners between(Vec3 from, Vec3 to) {
        return new Corners(List.of(from, to));
    }

    @Override
    public Vec3 farthest(Vec3 direction) {
        Vec3 best = corners.get(0);
        double most = best.dot(direction);
        for (int i = 1; i < corners.size(); i++) {
            double along = corners.get(i).dot(direction);
            if (along > most) {
                most = along;
                best = corners.get(i);
            }
        }
        return best;
    }

    @Override
    public Vec3 middle() {
        return middle;
    }

    @Override
    public double reach() {
        return reach;
    }
}
