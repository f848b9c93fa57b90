// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Assessment;
import bermwright.site.egress.WaysOut;
import bermwright.site.haulage.FootWays;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

/** Ways out of the hulls and to the storm shelters, for programs. */
final class WaysOutJson {
    private WaysOutJson() {
    }

    static void put(ObjectNode page, Assessment assessment) {
        WaysOut ways = assessment.waysOut();
        ObjectNode entry = page.putObject("ways_out");
        JsonObjects.put(entry, "inside_speed_m_s", WaysOut.WALK_SPEED);
        JsonObjects.put(entry, "outside_speed_m_s", WaysOut.OUTSIDE_SPEED);
        JsonObjects.put(entry, "steepest_walked_deg", FootWays.STEEPEST_DEG);
        ArrayNode hulls = entry.putArray("hulls");
        assessment.plan().hulls().forEach(hull -> hulls.addObject().put("id", hull.id())
                .put("independent_ways", ways.hulls().getOrDefault(hull.id(), 0)));
        ArrayNode shelters = entry.putArray("to_shelter");
        ways.shelters().forEach(way -> {
            ObjectNode row = shelters.addObject().put("from", way.from()).put("shelter", way.shelter());
            JsonObjects.put(row, "inside_m", way.inside());
            JsonObjects.put(row, "outside_m", way.outside());
            JsonObjects.put(row, "time_min", way.seconds() / 60);
            ArrayNode bends = row.putArray("way");
            way.way().forEach(place -> bends.add(JsonObjects.place(place)));
        });
    }
}
