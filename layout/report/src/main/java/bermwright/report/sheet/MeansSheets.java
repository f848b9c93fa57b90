// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.lowering.choice.PayloadSweep.PayloadPoint;
import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.page.Table;
import bermwright.site.answer.LoweringAnswers;
import bermwright.site.laydown.Alternatives;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * What else could be done with a hull: all means side by side, and loads against mass and centre of mass.
 *
 * @param choices the alternatives
 */
public record MeansSheets(Alternatives choices) {
    private static final double KILO = 1000;

    /** All means side by side. */
    public Table means() {
        return AnswerSheets.table(Drawing.name("means", choices.hull()), "Hull " + choices.hull()
                + ": all means side by side; gear mass is good to a factor of two, for ranking only",
                LoweringAnswers.MEANS, choices.comparison());
    }

    /**
     * Load against mass.
     *
     * @return the drawing
     */
    public Drawing byMass() {
        return loads("mass", "mass (t)", choices.byMass(), p -> p.mass() / KILO);
    }

    /**
     * Load against the centre of mass.
     *
     * @return the drawing
     */
    public Drawing byCentre() {
        return loads("centre-of-mass", "centre of mass from the base plane (m)", choices.byCentre(),
                PayloadPoint::centre);
    }

    private Drawing loads(String quantity, String across, List<PayloadPoint> points,
            ToDoubleFunction<PayloadPoint> at) {
        List<Chart.Curve> curves = List.of(curve("one lowering line", points, at, PayloadPoint::lineEach, 0),
                curve("pull-over line", points, at, PayloadPoint::pullOver, 2),
                curve("one pole", points, at, PayloadPoint::poleEach, 3),
                curve("pull along the ground at the pivot", points, at, PayloadPoint::pivotAlong, 1));
        return new Chart(Drawing.name("load-by-" + quantity, choices.hull()), "Hull " + choices.hull()
                + ": greatest loads if the " + quantity.replace('-', ' ') + " were another", across,
                        "greatest force (kN)",
                curves, List.of(), List.of(), Chart.Scale.LINEAR).drawing();
    }

    private static Chart.Curve curve(String name, List<PayloadPoint> points, ToDoubleFunction<PayloadPoint> at,
            ToDoubleFunction<PayloadPoint> force, int ink) {
        return new Chart.Curve(name, points.stream().map(p -> new Dot(at.applyAsDouble(p),
                force.applyAsDouble(p) / KILO)).toList(), Ink.of(ink));
    }
}
