// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.lowering.chain.Chain;
import bermwright.lowering.chain.ChainRow;
import bermwright.lowering.chain.Factors;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.thrust.ThrusterResult;
import bermwright.site.answer.Answers;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.plan.LoweringGear;
import bermwright.site.pose.LyingPose;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** How a hull comes to lie, for programs. */
final class LoweringJson {
    private LoweringJson() {
    }

    static void put(ObjectNode entry, HullAssessment hull) {
        entry.put("id", hull.hull().id());
        hull.lying().ifPresent(pose -> lying(entry.putObject("lying"), pose));
        boolean byThrusters = hull.hull().lowering().map(LoweringGear::means)
                .filter(m -> m == LoweringGear.Means.SIDE_THRUSTERS).isPresent();
        Optional<LoweringResult> lines = hull.laydown().flatMap(l -> l.lowering());
        Optional<ThrusterResult> thrusters = hull.laydown().flatMap(l -> l.thrusters());
        if (byThrusters) {
            thrusters.ifPresent(result -> ThrusterJson.put(means(entry, hull), result));
        } else {
            lines.ifPresent(result -> lowering(means(entry, hull), result));
        }
    }

    private static ObjectNode means(ObjectNode entry, HullAssessment hull) {
        ObjectNode lowering = entry.putObject("lowering");
        hull.hull().lowering().ifPresent(gear -> lowering.put("means", gear.means().word()));
        return lowering;
    }

    private static void lying(ObjectNode entry, LyingPose pose) {
        entry.set("axis_start", JsonObjects.point(pose.axisStart()));
        entry.set("axis_end", JsonObjects.point(pose.axisEnd()));
        entry.put("slope_along_deg", InUnits.degrees(pose.slopeAlong()));
        entry.put("slope_across_deg", InUnits.degrees(pose.slopeAcross()));
    }

    private static void lowering(ObjectNode entry, LoweringResult result) {
        JsonObjects.put(entry, Answers.LOWERING, result);
        entry.put("balances", result.balances().words());
        ArrayNode tilts = entry.putArray("tilts");
        result.tilts().forEach(state -> JsonObjects.put(tilts.addObject(), Answers.TILTS, state));
        factors(entry.putObject("factors"), result.factors());
        entry.put("governing", result.governingPart());
        chain(entry.putArray("chain"), result.chain());
        ArrayNode holds = entry.putArray("hold_points");
        result.holdPoints().forEach(hold -> holds.addObject().put("tilt_deg", InUnits.degrees(hold.tilt()))
                .put("check", hold.check()));
        result.sequence().forEach(entry.putArray("sequence")::add);
    }

    private static void chain(ArrayNode rows, Chain chain) {
        for (ChainRow row : chain.rows()) {
            ObjectNode line = rows.addObject();
            line.put("part", row.part().words()).put("case", row.loadWords());
            JsonObjects.put(line, "demand", row.demandShown());
            JsonObjects.put(line, "capacity", row.capacityShown());
            JsonObjects.put(line, "factor", row.factor());
            JsonObjects.put(line, "required", row.required());
            line.put("unit", row.unitShown());
            JsonObjects.put(line, "tilt_deg", InUnits.degrees(row.tilt()));
            line.put("verdict", row.verdict().word()).put("governs", chain.governs(row)).put("source", row.source());
            chain.soil(row).ifPresent(soil -> SoilJson.put(line.putObject("soil"), soil));
        }
    }

    private static void factors(ObjectNode entry, Factors factors) {
        JsonObjects.put(entry, "line", factors.line());
        JsonObjects.put(entry, "winch", factors.winch());
        JsonObjects.put(entry, "pole", factors.pole());
        JsonObjects.put(entry, "anchor", factors.anchor());
        JsonObjects.put(entry, "pivot_hold", factors.pivotHold());
    }
}
