// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.Point;
import bermwright.report.map.MapItem;
import bermwright.report.map.MapStyle;
import bermwright.report.page.Table;
import bermwright.site.answer.WorkAnswers;
import bermwright.site.egress.WaysOut;
import bermwright.site.haulage.FootWays;
import bermwright.site.plan.Hull;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Ways out of the hulls and to the storm shelters, also for the editor.
 *
 * @param hulls the plan's hulls
 * @param ways  the ways
 */
public record EgressSheets(List<Hull> hulls, WaysOut ways) {
    private static final double MINUTE = 60;

    /** Copies the list. */
    public EgressSheets {
        hulls = List.copyOf(hulls);
    }

    /** Independent ways out by hull. */
    public Table out() {
        return AnswerSheets.table("ways-out", WorkAnswers.WAYS.meaning(), WorkAnswers.WAYS,
                WorkAnswers.WaysOfHull.of(hulls, ways));
    }

    /** The way to the nearest storm shelter from each station and from outside. */
    public Table shelters() {
        return AnswerSheets.table("ways-to-shelter", WorkAnswers.SHELTERS.meaning(), WorkAnswers.SHELTERS,
                ways.shelters());
    }

    /** What the times take for granted. */
    public String words() {
        return "People walk " + Words.said(WaysOut.WALK_SPEED, "m/s") + " inside and "
                + Words.said(WaysOut.OUTSIDE_SPEED, "m/s") + " outside, around hulls, walls and keep-outs and over"
                + " ground no steeper than " + Words.said(FootWays.STEEPEST_DEG, "deg") + "; time in locks is not in"
                + " it. Longer than " + Words.said(WaysOut.WANTED_SECONDS / MINUTE, "min") + " is a finding.";
    }

    /** The ways over open ground, for the plan drawing; one that several people share is drawn once. */
    List<MapItem> outside() {
        Map<List<Point>, String> shared = new LinkedHashMap<>();
        ways.shelters().stream().filter(w -> w.way().size() > 1).forEach(w -> shared.put(w.way(), w.from() + ", "
                + Words.fixed(w.seconds() / MINUTE, 0) + " min"));
        List<MapItem> items = new ArrayList<>();
        shared.forEach((way, label) -> items.add(new MapItem.Line(MapStyle.FOOT_WAY, label, way)));
        return items;
    }
}
