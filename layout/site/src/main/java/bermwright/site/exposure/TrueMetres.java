// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.foundation.Vec3;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;

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
        GridFrame f = grid.frame();
        return scale == 1 ? grid : ElevationGrid.of(new GridFrame(f.rows(), f.columns(), f.west() * scale,
                f.south() * scale, f.spacing() * scale), grid.heights());
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
