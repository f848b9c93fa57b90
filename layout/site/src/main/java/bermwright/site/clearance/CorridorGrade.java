// SPDX-License-Identifier: Apache-2.0
package bermwright.site.clearance;

import bermwright.foundation.Point;
import bermwright.site.finding.Finding;
import bermwright.site.plan.Corridor;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.ProfilePoint;
import java.util.ArrayList;
import java.util.List;

/** The grade along the middle of corridors, over their own width or two cells, whichever is longer. */
final class CorridorGrade {
    private CorridorGrade() {
    }

    static List<Finding> check(Plan plan, ElevationGrid ground) {
        List<Finding> findings = new ArrayList<>();
        for (Corridor corridor : plan.corridors()) {
            double step = Math.max(corridor.width(), 2 * ground.trueSpacing());
            double steepest = 0;
            Point at = corridor.line().get(0);
            Point unknown = null;
            for (int i = 0; i + 1 < corridor.line().size(); i++) {
                if (corridor.line().get(i).equals(corridor.line().get(i + 1))) {
                    continue;
                }
                List<ProfilePoint> profile = ground.profile(corridor.line().get(i), corridor.line().get(i + 1), step);
                for (int j = 0; j + 1 < profile.size(); j++) {
                    ProfilePoint a = profile.get(j);
                    ProfilePoint b = profile.get(j + 1);
                    double grade = Math.atan(Math.abs(b.height() - a.height()) / (b.distance() - a.distance()));
                    if (Double.isNaN(grade)) {
                        unknown = a.place();
                    } else if (grade > steepest) {
                        steepest = grade;
                        at = a.place();
                    }
                }
            }
            report(findings, corridor, steepest, at);
            if (unknown != null) {
                findings.add(Finding.of("corridor-ground-unknown", Finding.Level.WARN, corridor.id(),
                        Finding.Figures.NONE, "Part of corridor %s lies where the elevation file has no data."
                        .formatted(corridor.id())).at(unknown).from("elevation file"));
            }
        }
        return findings;
    }

    private static void report(List<Finding> findings, Corridor corridor, double steepest, Point at) {
        if (steepest > corridor.greatestGrade()) {
            String measured = SitePairs.number(Math.toDegrees(steepest));
            String limit = SitePairs.number(Math.toDegrees(corridor.greatestGrade()));
            findings.add(Finding.of("corridor-grade", Finding.Level.WARN, corridor.id(),
                    Finding.Figures.of(Math.toDegrees(steepest), Math.toDegrees(corridor.greatestGrade()), "deg"),
                    "Corridor %s is as steep as %s deg; %s deg is allowed. Cut it down or lead it another way."
                            .formatted(corridor.id(), measured, limit)).at(at)
                    .from("greatest grade of the corridor in the plan"));
        }
    }
}
