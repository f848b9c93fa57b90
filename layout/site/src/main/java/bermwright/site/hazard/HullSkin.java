// SPDX-License-Identifier: Apache-2.0
package bermwright.site.hazard;

import bermwright.shielding.cover.DepthMap;
import bermwright.shielding.hazard.MeteoroidFlux;
import bermwright.site.exposure.HullCover;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A hull's skin in pieces, each with the soil over it and how much of the sky it sees.
 *
 * @param cells the pieces; a hull without a cover has bare ones
 */
record HullSkin(List<Cell> cells) {
    /** Soil that counts as none (m). */
    static final double BARE = 0.01;

    HullSkin {
        cells = List.copyOf(cells);
    }

    /**
     * A piece of skin.
     *
     * @param along distance from the base plane (m)
     * @param area  its area (m2)
     * @param depth soil over it (m); not a number where it is not known
     * @param seen  share of the sky it would see on open ground (1)
     */
    record Cell(double along, double area, double depth, double seen) {
        boolean isBare() {
            return !(depth > BARE);
        }
    }

    static HullSkin of(Hull hull, Optional<HullCover> cover) {
        List<Cell> cells = new ArrayList<>();
        if (cover.isEmpty()) {
            cells.add(new Cell(hull.length() / 2, 2 * Math.PI * hull.radius() * hull.length(), 0, 0.5));
        } else {
            DepthMap map = cover.get().depth();
            double area = 2 * Math.PI * hull.radius() * hull.length() / (map.rows() * map.columns());
            for (int i = 0; i < map.rows(); i++) {
                for (int j = 0; j < map.columns(); j++) {
                    cells.add(new Cell(map.alongAt(i), area, map.trueDepth(i, j),
                            MeteoroidFlux.seen(map.aroundAt(j))));
                }
            }
        }
        CoverPlan plan = hull.cover().filter(c -> cover.isPresent()).orElse(null);
        end(cells, hull, hull.baseEnd(), 0, plan == null ? 0 : plan.baseThickness());
        end(cells, hull, hull.farEnd(), hull.length(), plan == null ? 0 : plan.farThickness());
        return new HullSkin(cells);
    }

    /** A flat end; others are part of the skin around. An end behind a wall is taken as bare. */
    private static void end(List<Cell> cells, Hull hull, Hull.End end, double along, double soil) {
        if (end.shape() == Hull.Shape.FLAT) {
            cells.add(new Cell(along, Math.PI * hull.radius() * hull.radius(), soil, 0.5));
        }
    }

    /** The skin within a distance of a place along the hull. */
    HullSkin near(double along, double reach) {
        return new HullSkin(cells.stream().filter(c -> Math.abs(c.along - along) <= reach).toList());
    }

    /** The thinnest soil over skin that looks up or sideways (m); NaN where some is not known. */
    double thinnest() {
        double least = Double.POSITIVE_INFINITY;
        for (Cell cell : cells) {
            if (cell.seen >= 0.5) {
                least = Math.min(least, cell.depth);
            }
        }
        return Double.isInfinite(least) ? Double.NaN : least;
    }

    boolean isKnown() {
        return cells.stream().noneMatch(c -> Double.isNaN(c.depth));
    }

    /** Area of bare skin that sees the sky (m2). */
    double bareArea() {
        return cells.stream().filter(c -> c.isBare() && c.seen >= 0.5).mapToDouble(Cell::area).sum();
    }
}
