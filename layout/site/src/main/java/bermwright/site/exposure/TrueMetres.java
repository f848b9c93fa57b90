// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.foundation.Vec3;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.util.List;

/** Between the projected frame of a plan and the same frame stretched to true metres, in which rays are cast. */
final class TrueMetres {
    private final double scale;

    TrueMetres(double scale) {
        this.scale = scale;
    }

    static TrueMetres of(ElevationGrid grid) {
        return new TrueMetres(grid.metreScale());
    }

    ElevationGrid stretched(ElevationGrid grid) {
        return scale == 1 ? grid : scaled(grid, scale).withMetreScale(1);
    }

    /** The finer patches of a grid, back in the plan's projected frame. */
    List<ElevationGrid> patches(ElevationGrid grid) {
        return scale == 1 ? grid.patches() : grid.patches().stream()
                .map(p -> p.moved(scaled(p.frame(), 1 / scale)).withMetreScale(scale)).toList();
    }

    private static ElevationGrid scaled(ElevationGrid grid, double by) {
        return grid.moved(scaled(grid.frame(), by))
                .withPatches(grid.patches().stream().map(p -> p.moved(scaled(p.frame(), by))).toList());
    }

    private static GridFrame scaled(GridFrame f, double by) {
        return new GridFrame(f.rows(), f.columns(), f.west() * by, f.south() * by, f.spacing() * by);
    }

    Vec3 stretched(Vec3 point) {
        return new Vec3(point.x() * scale, point.y() * scale, point.z());
    }

    Point stretched(Point point) {
        return new Point(point.east() * scale, point.north() * scale);
    }

    Vec3 projected(Vec3 point) {
        return new Vec3(point.x() / scale, point.y() / scale, point.z());
    }

    Ring projected(Ring ring) {
        return new Ring(ring.corners().stream().map(p -> new Point(p.east() / scale, p.north() / scale)).toList());
    }
}
