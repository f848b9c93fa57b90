// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.site.sizing.SizedCover;
import bermwright.site.sizing.TradePoint;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * What soil buys: dose at the station that is farthest from its limit, against the soil placed; also for the editor.
 *
 * @param sized the search for the least cover
 */
public record TradeSheet(SizedCover sized) {
    private static final double PERCENT = 100;

    /**
     * The trade curve, with the cover found, the point where more soil stops paying and what can be dug.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        boolean limited = sized.trade().stream().anyMatch(p -> p.used() > 0);
        List<Chart.Curve> curves = new ArrayList<>();
        if (limited) {
            curves.add(curve("84th percentile, share of the limit", p -> PERCENT * p.used(), Ink.of(0)));
            curves.add(curve("best value, share of the same limit", p -> p.high() > 0
                    ? PERCENT * p.used() * p.best() / p.high() : Double.NaN, Ink.of(1)));
        } else {
            curves.add(curve("84th percentile", p -> 1000 * p.high(), Ink.of(0)));
            curves.add(curve("best value", p -> 1000 * p.best(), Ink.of(1)));
        }
        List<Chart.Mark> places = new ArrayList<>();
        places.add(new Chart.Mark(sized.isMet() ? "least cover found" : "nearest cover", sized.volume(), "m³"));
        sized.stopsPaying().ifPresent(t -> sized.trade().stream().filter(p -> p.thickness() >= t).findFirst()
                .ifPresent(p -> places.add(new Chart.Mark("more soil stops paying", p.volume(), "m³"))));
        double dug = sized.volume() > 0 ? sized.bankVolume() / sized.volume() : 1;
        sized.bankAvailable().ifPresent(bank -> places.add(new Chart.Mark("the borrow grounds give, as placed,",
                bank / dug, "m³")));
        return new Chart("dose-against-soil", "Dose against soil placed, all hulls under one thickness",
                "soil placed (m³)", limited ? "worst station's share of its limit (%)" : "dose at the worst station"
                + " (mSv)", curves, limited ? List.of(new Chart.Mark("limit", PERCENT, "%")) : List.of(), places,
                new Chart.Scale(false, OptionalDouble.of(0), OptionalDouble.empty())).drawing();
    }

    private Chart.Curve curve(String name, ToDoubleFunction<TradePoint> up, Ink ink) {
        return new Chart.Curve(name, sized.trade().stream().map(p -> new Dot(p.volume(), up.applyAsDouble(p)))
                .toList(), ink);
    }
}
