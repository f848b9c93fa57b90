// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Point;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts one corner of an area or line elsewhere.
 *
 * @param part  the part
 * @param index the corner's number (1), from 0
 * @param place its new place
 */
public record ShiftCorner(Part part, int index, Point place) implements PlanEdit {
    @Override
    public Plan applied(Plan plan) {
        List<Point> corners = new ArrayList<>(PartOutline.corners(plan, part));
        if (index < 0 || index >= corners.size()) {
            return plan;
        }
        corners.set(index, Move.rounded(place.east(), place.north()));
        return PartOutline.withCorners(plan, part, corners);
    }

    @Override
    public String words() {
        return "Shift a corner of " + part.words();
    }
}
