// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.edit;

import bermwright.foundation.Point;
import bermwright.site.plan.HatchName;
import bermwright.site.plan.Plan;
import java.util.Optional;

/**
 * Turns and moves a hull so that one of its hatches squarely faces a hatch of another hull, at the distance it has now.
 *
 * @param fixed the hatch that stays, as {@code hull/hatch}
 * @param moved the hatch whose hull is turned and moved, as {@code hull/hatch}
 */
public record AlignHatches(String fixed, String moved) implements PlanEdit {
    /** Hatches that look at each other are left at least this far apart (m), so that two hulls never end up in one. */
    private static final double LEAST_GAP = 2;

    @Override
    public Plan applied(Plan plan) {
        String hull = HatchName.of(moved).hull();
        Optional<HatchAxis> target = HatchAxis.of(plan, fixed);
        Optional<HatchAxis> mine = HatchAxis.of(plan, moved);
        if (target.isEmpty() || mine.isEmpty() || HatchName.of(fixed).hull().equals(hull)) {
            return plan;
        }
        double turn = target.get().turnToFace(mine.get());
        Plan turned = plan.hull(hull)
                .map(h -> new Turn(hull, h.layDownAzimuth().turned(turn)).applied(plan)).orElse(plan);
        HatchAxis axis = target.get();
        Point now = HatchAxis.of(turned, moved).orElseThrow().place();
        double gap = Math.max(LEAST_GAP, axis.place().distance(mine.get().place()));
        Point wanted = axis.place().moved(axis.outward(), gap, 0);
        return new Move(Part.hull(hull), wanted.east() - now.east(), wanted.north() - now.north()).applied(turned);
    }

    @Override
    public String words() {
        return "Align hatch " + moved + " with " + fixed;
    }
}
