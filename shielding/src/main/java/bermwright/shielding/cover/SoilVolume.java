// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.cover;

import bermwright.foundation.Vec3;
import bermwright.shielding.scene.HullCrossing;
import bermwright.shielding.scene.HullPose;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.LocalRay;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;
import java.util.function.IntPredicate;

/** Volumes between two surfaces of triangles, and of the part of a hull between them. */
final class SoilVolume {
    private static final int ALONG = 300;
    private static final int ACROSS = 60;

    private SoilVolume() {
    }

    /**
     * Volume by which the upper surface stands above the lower, at chosen nodes; exact for the triangles where the
     * upper nowhere dips below: a node carries a third of each triangle it belongs to.
     */
    static double between(ElevationGrid lower, ElevationGrid upper, IntPredicate counts) {
        GridFrame frame = lower.frame();
        double third = frame.spacing() * frame.spacing() / 6;
        int columns = frame.columns();
        double sum = 0;
        for (int row = 0; row < frame.rows(); row++) {
            for (int column = 0; column < columns; column++) {
                double rise = upper.nodeHeight(row, column) - lower.nodeHeight(row, column);
                if (rise > 0 && counts.test(row * columns + column)) {
                    boolean west = column > 0;
                    boolean east = column + 1 < columns;
                    boolean south = row > 0;
                    boolean north = row + 1 < frame.rows();
                    int triangles = (east && north ? 2 : 0) + (west && south ? 2 : 0) + (east && south ? 1 : 0)
                            + (west && north ? 1 : 0);
                    sum += triangles * rise;
                }
            }
        }
        return sum * third;
    }

    /** The same over a whole grid: in its finer patches by their nodes, which hold all of a mound that has them. */
    static double between(ElevationGrid lower, ElevationGrid upper) {
        List<GridFrame> finer = upper.patches().stream().map(ElevationGrid::frame).toList();
        if (finer.isEmpty() || !finer.equals(lower.patches().stream().map(ElevationGrid::frame).toList())) {
            return between(lower, upper, node -> true);
        }
        GridFrame own = upper.frame();
        double sum = between(lower, upper, node -> finer.stream().noneMatch(f -> f.holds(
                own.east(node % own.columns()), own.north(node / own.columns()))));
        for (int i = 0; i < finer.size(); i++) {
            sum += between(lower.patches().get(i), upper.patches().get(i), node -> true);
        }
        return sum;
    }

    /** Volume of a hull that lies above one surface and below another, by upright chords over its plan. */
    static double hullBetween(HullSolid hull, ElevationGrid lower, ElevationGrid upper) {
        HullPose pose = hull.pose();
        HullShape shape = hull.shape();
        double plan = Math.hypot(pose.axis().x(), pose.axis().y());
        double east = plan > 1e-9 ? pose.axis().x() / plan : 1;
        double north = plan > 1e-9 ? pose.axis().y() / plan : 0;
        double overhang = shape.radius() * Math.abs(pose.axis().z());
        double from = -overhang;
        double width = (shape.length() * plan + 2 * overhang) / ALONG;
        LocalRay ray = new LocalRay();
        HullCrossing crossing = new HullCrossing();
        Vec3 up = pose.turned(Vec3.UP);
        ray.step(up.x(), up.y(), up.z());
        double volume = 0;
        for (int i = 0; i < ALONG; i++) {
            double p = from + (i + 0.5) * width;
            for (int j = 0; j < ACROSS; j++) {
                // Even steps of the angle: chords are short where they are many.
                double angle = Math.PI * ((j + 0.5) / ACROSS - 0.5);
                double q = shape.radius() * Math.sin(angle);
                double x = pose.base().x() + p * east - q * north;
                double y = pose.base().y() + p * north + q * east;
                Vec3 local = pose.local(new Vec3(x, y, 0));
                ray.origin(local.x(), local.y(), local.z());
                if (shape.cross(ray, crossing)) {
                    double low = Math.max(crossing.enter(), lower.height(x, y));
                    double high = Math.min(crossing.leave(), upper.height(x, y));
                    if (high > low) {
                        volume += (high - low) * width * shape.radius() * Math.cos(angle) * Math.PI / ACROSS;
                    }
                }
            }
        }
        return volume;
    }
}
