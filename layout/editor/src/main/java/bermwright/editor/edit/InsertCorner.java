// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Point;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * Puts a new corner into an area or line.
 *
 * @param part  the part
 * @param index the number the new corner takes (1), from 0 to the number of corners
 * @param place its place
 */
public record InsertCorner(Part part, int index, Point place) implements PlanEdit {
    @Override
    public Plan applied(Plan plan) {
        List<Point> corners = new ArrayList<>(PartOutline.corners(plan, part));
        if (PartOutline.fewestCorners(part.kind()) < 2 || index < 0 || index > corners.size()) {
            return plan;
        }
        corners.add(index, Move.rounded(place.east(), place.north()));
        return PartOutline.withCorners(plan, part, corners);
    }

    @Override
    public String words() {
        return "Add a corner to " + part.words();
    }
}
