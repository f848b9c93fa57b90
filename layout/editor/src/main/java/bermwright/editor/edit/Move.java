// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Point;
import bermwright.foundation.Require;
import bermwright.site.plan.Plan;
import java.util.List;

/**
 * Moves a part.
 *
 * @param part  the part
 * @param east  how far east (m), finite
 * @param north how far north (m), finite
 */
public record Move(Part part, double east, double north) implements PlanEdit {
    /** Places are kept to a millimetre, so that a drag leaves no row of digits behind (1/m). */
    private static final double GRAINS = 1000;

    /** Refuses ways that are not finite. */
    public Move {
        Require.finite("way east", east, "m");
        Require.finite("way north", north, "m");
    }

    @Override
    public Plan applied(Plan plan) {
        List<Point> corners = PartOutline.corners(plan, part);
        if (corners.isEmpty()) {
            return plan;
        }
        return PartOutline.withCorners(plan, part,
                corners.stream().map(p -> rounded(p.east() + east, p.north() + north)).toList());
    }

    /**
     * A place to the millimetre.
     *
     * @param east  east (m)
     * @param north north (m)
     * @return the place
     */
    static Point rounded(double east, double north) {
        return new Point(Math.rint(east * GRAINS) / GRAINS, Math.rint(north * GRAINS) / GRAINS);
    }

    @Override
    public String words() {
        return "Move " + part.words();
    }
}
