// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.ModelNote;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.TrueMetres;
import java.util.List;

/**
 * How far a cover's depth and volume may be off for what the elevation file does not show, as one standard deviation.
 *
 * <p>The file gives the ground at its nodes, each as good as its spread; between them it is taken as bilinear. How far
 * the true ground leaves that is judged by how far each surveyed height under the hull leaves the middle of its
 * neighbours, an eighth of the second difference: so much a curve of that size bulges between nodes. A hull that lies
 * higher than reckoned by the sum of both loses that depth under a surface that is built to its reckoned heights, and
 * its mound needs that height over its whole plan.
 *
 * @param depth  spread of the depth (m), zero or more
 * @param volume spread of the soil placed (m3), zero or more
 */
public record CoverUncertainty(double depth, double volume) {
    /** Ground beside the hull that is looked at too, in radii. */
    private static final double BESIDE = 2;

    static CoverUncertainty of(Plan plan, Hull hull, ElevationGrid natural, List<Ring> toes) {
        Ring bed = hull.bed(natural.metres());
        double hidden = hidden(natural, bed, natural.metres().onPlan(BESIDE * hull.radius()));
        double depth = Math.hypot(plan.ground().elevationSpread(), hidden);
        Point middle = bed.centre();
        TrueMetres metres = natural.metres();
        double plot = toes.stream().filter(t -> t.contains(middle)).mapToDouble(Ring::area).max().orElse(0);
        long sharing = Math.max(1, toes.stream().filter(t -> t.contains(middle)).findFirst().map(t -> plan.hulls()
                .stream().filter(h -> h.cover().isPresent()
                        && t.contains(h.bed(metres).centre())).count()).orElse(1L));
        return new CoverUncertainty(depth, depth * metres.area(plot) / sharing);
    }

    /** How far the ground leaves straight lines between surveyed nodes around an outline, in the mean (m). */
    private static double hidden(ElevationGrid ground, Ring bed, double beside) {
        double cell = ground.metres().onPlan(ground.surveyedSpacing());
        Ring.Box box = bed.box().wider(beside);
        double sum = 0;
        int many = 0;
        for (double north = box.south(); north <= box.north(); north += cell) {
            for (double east = box.west(); east <= box.east(); east += cell) {
                double here = ground.height(east, north);
                double alongEast = ground.height(east - cell, north) + ground.height(east + cell, north) - 2 * here;
                double alongNorth = ground.height(east, north - cell) + ground.height(east, north + cell) - 2 * here;
                double square = (alongEast * alongEast + alongNorth * alongNorth) / 64;
                if (!Double.isNaN(square)) {
                    sum += square;
                    many++;
                }
            }
        }
        return many > 0 ? Math.sqrt(sum / many) : 0;
    }

    /** What stands behind depth and volume. */
    static ModelNote note() {
        return new ModelNote("cover-surface", "Least cover: the highest cones of the stable slope on the skin moved out"
                + " by the wanted thickness, on nodes at most 0.25 m apart whatever the elevation file's cell; the"
                + " ground between surveyed heights is bilinear, and the hull lies where it comes to rest on it. Beside"
                + " an end that a wall holds, the way out leads through the wall: no more depth is wanted there than"
                + " there is room, and the dose counts soil and wall.",
                "hulls that lie flatter than the stable slope, or stand; stones and steps narrower than the file's cell"
                + " are not in it",
                "each hull's depth and volume carry their own spread from the file's cell and elevation_spread_m; on a"
                + " plane or a smooth slope 0.02 m and 0.1 % remain", ModelNote.Status.COMPUTED,
                "geometry: the lowest surface of that slope over the thickened skin, checked by direct quadrature");
    }
}
