// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.site.arrangement.Arrangement;
import bermwright.site.arrangement.ArrangementSearch;
import bermwright.site.arrangement.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * Arrangements none of which is better in all: machine hours against soil, each with its number and its warnings.
 *
 * @param found what was found
 */
public record ArrangementSheet(ArrangementSearch.Found found) {
    private static final List<String> COLOURS = List.of(Ink.BLUE, Ink.RED, Ink.GREEN, Ink.BLACK, Ink.PURPLE);
    private static final List<Ink.Marker> MARKERS = List.of(Ink.Marker.CIRCLE, Ink.Marker.SQUARE, Ink.Marker.TRIANGLE,
            Ink.Marker.CROSS);

    /**
     * The chart; the plan as it was given stands beside the arrangements.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        List<Chart.Curve> curves = new ArrayList<>();
        for (int i = 0; i < found.arrangements().size(); i++) {
            Arrangement one = found.arrangements().get(i);
            curves.add(curve((i + 1) + ": " + warnings(one.figures()), one.figures(),
                    Ink.scattered(COLOURS.get(i % COLOURS.size()), MARKERS.get(i % MARKERS.size()))));
        }
        boolean refused = !found.planned().isPassed();
        curves.add(curve("plan as given: " + (refused ? "refused, " : "") + warnings(found.planned().figures()),
                found.planned().figures(), Ink.scattered(Ink.DARK_GREY, Ink.Marker.CROSS)));
        return new Chart("arrangements", "Arrangements: machine hours against soil placed, with warnings",
                "soil placed (m³)", "machine hours (h)", curves, List.of(), List.of(), Chart.Scale.LINEAR).drawing();
    }

    private static String warnings(Figures figures) {
        return figures.warnings() + (figures.warnings() == 1 ? " warning" : " warnings");
    }

    private static Chart.Curve curve(String name, Figures figures, Ink ink) {
        return new Chart.Curve(name, List.of(new Dot(figures.of(Figures.Weighed.SOIL),
                figures.of(Figures.Weighed.HOURS))), ink);
    }
}
