// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.TiltModel;
import bermwright.editor.model.Workbench;
import bermwright.lowering.sequence.LoweringResult;
import bermwright.lowering.statics.TiltState;
import bermwright.site.plan.Hull;
import bermwright.site.plan.LoweringGear;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import javafx.animation.AnimationTimer;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** How the picked hull goes down: a slider of tilt, the hull from the side, forces by tilt and what governs. */
final class LoweringPane extends ScrollPane {
    private static final double KILO = 1e-3;

    private final Workbench bench;
    private final TiltModel model;
    private final Label title = new Label();
    private final Slider slider = new Slider(0, 90, 45);
    private final Label figures = new Label();
    private final SideView side;
    private final CurveChart chart;
    private final Label governs = new Label();
    private boolean isShown;
    private boolean isStale;
    private final AnimationTimer eachFrame = new AnimationTimer() {
        @Override
        public void handle(long now) {
            if (isStale) {
                draw();
            }
        }
    };

    LoweringPane(Workbench bench, TiltModel model, Dress dress) {
        this.bench = bench;
        this.model = model;
        this.side = new SideView(model, dress);
        this.chart = new CurveChart(dress);
        chart.setId("tension-chart");
        title.getStyleClass().add("heading");
        title.setWrapText(true);
        slider.setId("tilt");
        slider.setAccessibleText("Tilt in degrees");
        slider.setShowTickLabels(true);
        slider.setLabelFormatter(new StringConverter<>() {
            @Override
            public String toString(Double degrees) {
                // The tilt at rest is the slider's end and no round number.
                return degrees % 15 == 0 && degrees < slider.getMax() - 2 ? String.format(Locale.ROOT,
                        "%.0f\u00b0", degrees)
                        : degrees >= slider.getMax() ? "rest" : "";
            }

            @Override
            public Double fromString(String words) {
                return Double.valueOf(words);
            }
        });
        slider.setShowTickMarks(true);
        slider.setMajorTickUnit(15);
        slider.setBlockIncrement(1);
        slider.setTooltip(Hint.of("Tilt from standing. The hull moves here and on the map; forces are those of this"
                + " tilt, held still."));
        slider.valueProperty().addListener((observed, before, now) -> model.tilt(now.doubleValue()));
        figures.setId("tilt-figures");
        figures.setWrapText(true);
        governs.setWrapText(true);
        VBox box = new VBox(title, slider, side, figures, chart, governs);
        box.getStyleClass().add("answer");
        setContent(box);
        setFitToWidth(true);
        bench.changed().listen(() -> isStale = true);
        model.changed().listen(() -> isStale = true);
        bench.calm().listen(this::tell);
        bench.pickedChanged().listen(this::refresh);
    }

    void dress(Dress dress) {
        side.dress(dress);
        chart.dress(dress);
    }

    /** Draws only while somebody looks. */
    void shown(boolean shownNow) {
        isShown = shownNow;
        if (shownNow) {
            refresh();
            eachFrame.start();
        } else {
            eachFrame.stop();
        }
    }

    private void refresh() {
        draw();
        tell();
    }

    /** What follows the hand: the hull from the side, the curves and the forces at the tilt looked at. */
    private void draw() {
        isStale = false;
        if (!isShown) {
            return;
        }
        slider.setMax(model.restDeg());
        side.paint();
        figures.setText(model.state().map(LoweringPane::words).orElse("No line forces are known for this hull."));
        Optional<LoweringResult> result = model.result();
        chart.setVisible(result.isPresent());
        chart.setManaged(result.isPresent());
        result.ifPresent(r -> chart.show(content(r, model.hull().flatMap(Hull::lowering))));
    }

    /** What is longer to read than a hand holds still. */
    private void tell() {
        if (!isShown) {
            return;
        }
        title.setText(model.hull().map(h -> "Hull " + h.id() + ": " + h.arrival().word()
                + h.lowering().map(g -> " by " + g.means().word()).orElse("")
                + (bench.answers().isLoweringFresh(bench.plan()) ? "" : "  (provisional: being worked out)"))
                .orElse("No hull is lowered"));
        governs.setText(model.result().map(LoweringPane::governing).orElse(""));
    }

    private static String words(TiltState s) {
        return String.format(Locale.ROOT, "At %.1f\u00b0, held still: ", Math.toDegrees(s.tilt())) + (s.lineTotal() > 0
                ? "lines " + kN(s.lineTotal()) + " together, " + kN(s.lineEach()) + " each"
                + (s.handBalance().isPresent() ? " (hand balance " + kN(s.handBalance().getAsDouble()) + ")" : "")
                : "pull-over " + kN(s.pullOver())) + "; pivot " + kN(s.pivotUp()) + " up, " + kN(s.pivotAlong())
                + " along" + (s.poleEach() > 0 ? "; each pole " + kN(s.poleEach()) : "") + ".";
    }

    private static String kN(double newtons) {
        return Figures.brief(newtons * KILO) + " kN";
    }

    private CurveChart.Content content(LoweringResult result, Optional<LoweringGear> gear) {
        List<CurveChart.Curve> curves = new ArrayList<>();
        curves.add(curve(result, "each line", TiltState::lineEach));
        curves.add(curve(result, "all lines", TiltState::lineTotal));
        curves.add(curve(result, "hand balance, all lines", s -> s.handBalance().orElse(Double.NaN)));
        curves.add(curve(result, "each pole", TiltState::poleEach));
        curves.add(curve(result, "pull-over line", TiltState::pullOver));
        List<CurveChart.Level> levels = new ArrayList<>();
        OptionalDouble rating = gear.flatMap(LoweringGear::lines).map(l -> l.winch().ratingEach())
                .orElse(OptionalDouble.empty());
        rating.ifPresent(r -> levels.add(new CurveChart.Level("winch rating, each line", r * KILO)));
        return new CurveChart.Content(curves, levels, "kN", model.tiltDeg(), model.restDeg());
    }

    private static CurveChart.Curve curve(LoweringResult result, String name, ToDoubleFunction<TiltState> force) {
        return new CurveChart.Curve(name, result.tilts().stream().map(s -> {
            double value = force.applyAsDouble(s) * KILO;
            return new double[] {Math.toDegrees(s.tilt()), value == 0 ? Double.NaN : value};
        }).toList(), name.startsWith("hand"));
    }

    private static String governing(LoweringResult r) {
        return String.format(Locale.ROOT, "Balance at %.1f\u00b0, hand-over at %.1f\u00b0, rest at %.1f\u00b0. ",
                Math.toDegrees(r.balanceTilt()), Math.toDegrees(r.handOverTilt()), Math.toDegrees(r.restTilt()))
                + "Greatest line tension " + kN(r.greatestLineTension()) + " at "
                + String.format(Locale.ROOT, "%.1f\u00b0. ", Math.toDegrees(r.atTilt()))
                + "Least margin: " + r.governingPart() + ". "
                + r.balances().words() + "\n" + LoweringResult.CAUTION + "\n\n"
                + String.join("\n", r.sequence());
    }
}
