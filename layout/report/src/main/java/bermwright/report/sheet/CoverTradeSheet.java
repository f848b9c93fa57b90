// SPDX-License-Identifier: Apache-2.0
package bermwright.report.sheet;

import bermwright.report.drawing.Chart;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.Ink;
import bermwright.report.page.Table;
import bermwright.report.page.Table.Column;
import bermwright.site.assessment.CoverTrade;
import bermwright.site.assessment.CoverTrade.Step;
import bermwright.site.plan.CoverPlan;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.site.sizing.SizedCover.StationShare;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * What thinner and thicker covers than the planned ones would cost and save.
 *
 * @param plan  the plan
 * @param trade covers that were tried, at least the planned one
 */
public record CoverTradeSheet(Plan plan, CoverTrade trade) {
    private static final double PERCENT = 100;
    private static final double MSV = 1000;

    /**
     * Dose, soil and machine hours against the thickness of all covers, each as a share: dose of its limit or, without
     * limits, of the planned one's, soil and hours of the planned ones.
     *
     * @return the drawing
     */
    public Drawing drawing() {
        List<Chart.Curve> curves = new ArrayList<>();
        curves.add(curve(isLimited() ? "dose at the worst station, 84th percentile, of its limit"
                : "dose at the worst station, 84th percentile, of the planned", Ink.of(0).withMarker(Ink.Marker.CIRCLE),
                step -> step.worst().map(this::dose).map(OptionalDouble::of).orElse(OptionalDouble.empty())));
        curves.add(curve("soil placed, of the planned", Ink.of(1).withMarker(Ink.Marker.SQUARE),
                step -> over(step.volume(), planned().volume())));
        curves.add(curve("machine hours, of the planned", Ink.of(2).withMarker(Ink.Marker.CROSS),
                step -> step.hours().isPresent() && planned().hours().isPresent()
                        ? over(step.hours().getAsDouble(), planned().hours().getAsDouble()) : OptionalDouble.empty()));
        return new Chart("cover-trade", "What thinner and thicker covers would give",
                "thickness of every cover, share of the planned (%)", "share (%)",
                curves.stream().filter(c -> c.points().stream().anyMatch(Dot::isKnown)).toList(),
                List.of(new Chart.Mark(isLimited() ? "limit, and as planned:" : "as planned:", PERCENT, "%")),
                List.of(new Chart.Mark("planned", PERCENT, "%")),
                new Chart.Scale(false, OptionalDouble.of(0), OptionalDouble.empty())).drawing();
    }

    private Chart.Curve curve(String name, Ink ink, Function<Step, OptionalDouble> share) {
        return new Chart.Curve(name, trade.steps().stream().map(step -> new Dot(PERCENT * step.share(),
                PERCENT * share.apply(step).orElse(Double.NaN))).toList(), ink);
    }

    private static OptionalDouble over(double value, double planned) {
        return planned > 0 ? OptionalDouble.of(value / planned) : OptionalDouble.empty();
    }

    private boolean isLimited() {
        return !plan.exposure().judgedLimits().isEmpty();
    }

    private double dose(StationShare worst) {
        return isLimited() ? worst.used() : worst.dose().high()
                / planned().worst().map(w -> w.dose().high()).orElse(Double.NaN);
    }

    private Step planned() {
        return trade.steps().stream().filter(Step::isPlanned).findFirst().orElseThrow();
    }

    /** The same as a table, in figures. */
    public Table table() {
        return new Table("cover-trade", "What thinner and thicker covers would give, in figures", List.of(
                Column.number("thickness_share_percent", "of the planned thickness (%)"),
                Column.words("crown_thickness_m", "over the crowns (m)"), Column.number("soil_m3", "soil placed (m³)"),
                Column.number("machine_work_h", "machine hours (h)"),
                Column.number("soil_short_m3", "soil short, in the ground (m³)"),
                Column.words("worst_station", "worst station"), Column.number("best_mSv", "dose, best (mSv)"),
                Column.number("high_mSv", "high (mSv)"),
                Column.number("share_of_limit_percent", "of the narrowest limit (%)")),
                trade.steps().stream().map(this::row).toList());
    }

    private List<String> row(Step step) {
        return List.of(Words.fixed(PERCENT * step.share(), 0), crowns(step.share()), Words.fixed(step.volume(), 0),
                Words.fixed(step.hours(), 0), Words.fixed(step.shortage(), 0),
                step.worst().map(StationShare::station).orElse(""),
                step.worst().map(w -> Words.fixed(MSV * w.dose().best(), 1)).orElse(""),
                step.worst().map(w -> Words.fixed(MSV * w.dose().high(), 1)).orElse(""),
                isLimited() ? step.worst().map(w -> Words.fixed(PERCENT * w.used(), 1)).orElse("") : "");
    }

    private String crowns(double share) {
        double[] crowns = plan.hulls().stream().map(Hull::cover).flatMap(Optional::stream)
                .mapToDouble(CoverPlan::crownThickness).map(t -> t * share).sorted().toArray();
        String least = Words.fixed(crowns[0], 2);
        String greatest = Words.fixed(crowns[crowns.length - 1], 2);
        return least.equals(greatest) ? least : least + " to " + greatest;
    }

    /** What it means, in plain words. */
    public List<String> words() {
        List<String> words = new ArrayList<>();
        Step now = planned();
        words.add("As planned: " + said(now) + ".");
        List<Step> steps = trade.steps();
        int at = steps.indexOf(now);
        steps.subList(0, at).stream().reduce((a, b) -> b).ifPresent(step -> words.add(change(step, now)));
        steps.subList(at + 1, steps.size()).stream().findFirst().ifPresent(step -> words.add(change(step, now)));
        if (isLimited() && now.worst().isPresent()) {
            words.add(steps.stream().filter(this::meets).findFirst().map(step -> "The thinnest of the covers tried that"
                    + " meets every limit at every station has " + percent(step.share()) + " of the planned thickness;"
                    + " size-cover looks for the least one, part by part.")
                    .orElse("None of the covers tried meets every limit at every station: soil alone does not do it."));
        }
        if (!plan.borrowGrounds().isEmpty()) {
            steps.stream().filter(step -> step.shortage() > 0).findFirst().ifPresent(step -> words.add("From "
                    + percent(step.share()) + " on the borrow grounds do not give enough soil: no hours stand there."));
        }
        return words;
    }

    private boolean meets(Step step) {
        return step.worst().filter(w -> w.used() <= 1).isPresent();
    }

    private String change(Step step, Step now) {
        return "With " + percent(step.share()) + " of the thickness: " + said(step) + " ("
                + (step.volume() < now.volume() ? Words.said(now.volume() - step.volume(), "m³") + " less soil"
                : Words.said(step.volume() - now.volume(), "m³") + " more soil") + ").";
    }

    private String said(Step step) {
        return Words.said(step.volume(), "m³") + " of soil" + (step.hours().isPresent() ? ", "
                + Words.said(step.hours().getAsDouble(), "machine hours") : "") + step.worst().map(w -> ", "
                + Words.said(MSV * w.dose().best(), "mSv") + " (high " + Words.said(MSV * w.dose().high(), "mSv")
                + (isLimited() ? ", " + Words.fixed(PERCENT * w.used(), 1) + " % of the narrowest limit" : "")
                + ") at " + w.station()).orElse("");
    }

    private static String percent(double share) {
        return Words.fixed(PERCENT * share, 0) + " %";
    }
}
