// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.answer.LoweringAnswers;
import bermwright.site.answer.ReviewAnswers;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.laydown.Laydown;
import bermwright.site.plan.LoweringGear;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** How a hull comes to lie, for programs. */
final class LoweringJson {
    private LoweringJson() {
    }

    static void put(ObjectNode entry, HullAssessment hull) {
        entry.put("id", hull.hull().id());
        hull.lying().ifPresent(pose -> JsonObjects.put(entry.putObject("lying"), LoweringAnswers.LYING, pose));
        if (hull.hull().lowering().filter(g -> g.means() == LoweringGear.Means.SIDE_THRUSTERS).isPresent()) {
            hull.laydown().flatMap(Laydown::thrusters).ifPresent(result -> JsonObjects.put(means(entry, hull),
                    LoweringAnswers.THRUSTERS, result));
        } else {
            hull.laydown().flatMap(Laydown::lowering).ifPresent(result -> JsonObjects.put(means(entry, hull),
                    LoweringAnswers.BY_LINES, result));
        }
    }

    private static ObjectNode means(ObjectNode entry, HullAssessment hull) {
        ObjectNode lowering = entry.putObject("lowering");
        hull.hull().lowering().ifPresent(gear -> lowering.put("means", gear.means().word()));
        return lowering;
    }

    /** The lowering under review, thrusters, landings and rest. */
    static void putReview(ObjectNode hull, Laydown laydown) {
        laydown.review().ifPresent(r -> JsonObjects.put(hull.putObject("review"), ReviewAnswers.REVIEW, r));
        laydown.thrusters().ifPresent(t -> JsonObjects.put(hull.putObject("side_thrusters"), LoweringAnswers.THRUSTERS,
                t));
        laydown.landing().ifPresent(l -> JsonObjects.put(hull.putObject("landing"), LoweringAnswers.LANDING, l));
        laydown.disc().ifPresent(d -> JsonObjects.put(hull.putObject("landings"), LoweringAnswers.LANDINGS, d));
        laydown.rest().ifPresent(r -> JsonObjects.put(hull.putObject("rest"), LoweringAnswers.REST, r));
    }
}
