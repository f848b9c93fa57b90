// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.foundation.Point;
import bermwright.report.map.MapItem;
import bermwright.report.map.MapStyle;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
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
        return new Table("ways-out", "Independent ways out", List.of(Column.words("hull", "hull"),
                Column.words("covered", "covered"), Column.number("ways_1", "ways out")), hulls.stream().map(h ->
                List.of(h.id(), h.cover().isPresent() ? "yes" : "no",
                        Integer.toString(ways.hulls().getOrDefault(h.id(), 0)))).toList());
    }

    /** The way to the nearest storm shelter from each station and from outside. */
    public Table shelters() {
        return new Table("ways-to-shelter", "Ways to the nearest storm shelter", List.of(
                Column.words("from", "from"), Column.words("shelter", "shelter"),
                Column.number("inside_m", "inside (m)"), Column.number("outside_m", "outside (m)"),
                Column.number("time_min", "time (min)")), ways.shelters().stream().map(w -> List.of(w.from(),
                w.shelter(), Words.fixed(w.inside(), 0), Words.fixed(w.outside(), 0),
                Words.fixed(w.seconds() / MINUTE, 1))).toList());
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
