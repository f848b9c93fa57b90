// SPDX-License-Identifier: Apache-2.0
package bermwright.site.exposure;

import bermwright.foundation.Point;
import bermwright.shielding.scene.WallSolid;
import bermwright.site.plan.Plan;
import bermwright.site.plan.Wall;
import java.util.ArrayList;
import java.util.List;

/** Walls of a plan as shielding takes them. */
final class WallsOfPlan {
    private WallsOfPlan() {
    }

    /** Walls taken as placed soil in bags: their thickness at the placed density. */
    static List<WallSolid> walls(Plan plan, SiteHulls site) {
        List<WallSolid> walls = new ArrayList<>();
        double density = plan.ground().regolith().placedDensity();
        for (Wall wall : plan.walls()) {
            for (int i = 0; i + 1 < wall.line().size(); i++) {
                Point a = site.metres().stretched(wall.line().get(i));
                Point b = site.metres().stretched(wall.line().get(i + 1));
                double foot = wall.foot(site.ground().height(a), site.ground().height(b));
                if (!Double.isNaN(foot) && a.distance(b) > 0) {
                    walls.add(new WallSolid(a, b, foot, foot + wall.height(), wall.thickness(),
                            wall.thickness() * density));
                }
            }
        }
        return walls;
    }
}
