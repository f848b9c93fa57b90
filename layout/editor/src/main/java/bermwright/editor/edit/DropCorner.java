// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Point;
import bermwright.site.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/**
 * Takes a corner out of an area or line that can spare one.
 *
 * @param part  the part
 * @param index the corner's number (1), from 0
 */
public record DropCorner(Part part, int index) implements PlanEdit {
    @Override
    public Plan applied(Plan plan) {
        List<Point> corners = new ArrayList<>(PartOutline.corners(plan, part));
        if (index < 0 || index >= corners.size() || corners.size() <= PartOutline.fewestCorners(part.kind())) {
            return plan;
        }
        corners.remove(index);
        return PartOutline.withCorners(plan, part, corners);
    }

    @Override
    public String words() {
        return "Take a corner out of " + part.words();
    }
}
