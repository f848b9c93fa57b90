// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.Drafting;
import bermwright.editor.model.MapTool;
import bermwright.editor.model.Workbench;
import bermwright.foundation.Point;
import bermwright.report.drawing.Ink;
import bermwright.site.assessment.SectionAlong;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** The site cut along the line that is drawn on the map, under it; it follows the line and the plan. */
final class SectionDrawer extends PaintedRegion {
    private static final double HEIGHT = 210;
    private static final double LEFT = 62;
    private static final double RIGHT = 16;
    private static final double LEAST_SPAN = 4;

    private final Workbench bench;
    private final Drafting draft;
    private Optional<SectionAlong> shown = Optional.empty();

    SectionDrawer(Workbench bench, Drafting draft, Dress dress) {
        super(dress, HEIGHT * dress.scale(), d -> HEIGHT * d.scale());
        this.bench = bench;
        this.draft = draft;
        setId("section");
        draft.changed().listen(this::refresh);
        bench.calm().listen(this::refresh);
        refresh();
    }

    @Override
    void dress(Dress changed) {
        super.dress(changed);
        setMinHeight(getPrefHeight());
    }

    private void refresh() {
        List<Point> line = draft.tool() == MapTool.SECTION ? draft.outline() : List.of();
        shown = line.size() < 2 || line.get(0).distance(line.get(1)) < 0.01 ? Optional.empty()
                : bench.answers().ground().map(g -> SectionAlong.of(line, g.grid(), bench.answers().assessment()));
        // There with its tool, not with the line, so that the map does not move under the hand that draws.
        setManaged(draft.tool() == MapTool.SECTION);
        setVisible(draft.tool() == MapTool.SECTION);
        setAccessibleText(shown.map(s -> "Section of " + text("%.0f m", last(s)) + " along the line on the map"
                + (s.hulls().isEmpty() ? "" : "; it crosses " + s.hulls().stream().map(SectionAlong.Crossed::id)
                        .reduce((a, b) -> a + ", " + b).orElse(""))).orElse(""));
        paint();
    }

    private static double last(SectionAlong s) {
        return s.samples().get(s.samples().size() - 1).distance();
    }

    /** Where distances and heights are drawn. */
    private record Axes(double length, double low, double high, double width, double top, double bottom) {
        double x(double distance) {
            return LEFT + distance / length * (width - LEFT - RIGHT);
        }

        double y(double height) {
            return bottom - (height - low) / (high - low) * (bottom - top);
        }

        double exaggeration() {
            return (bottom - top) / (high - low) / ((width - LEFT - RIGHT) / length);
        }
    }

    @Override
    void paint(GraphicsContext g, MapColours style) {
        if (wide() < 2 * LEFT) {
            return;
        }
        double size = dress().textSize() * 0.9;
        if (shown.isEmpty()) {
            g.setFont(Font.font("SansSerif", size));
            g.setFill(style.ink());
            g.setTextAlign(TextAlignment.LEFT);
            g.fillText("Draw a line on the map to cut the site along it.", LEFT, high() / 2);
            return;
        }
        SectionAlong s = shown.get();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (SectionAlong.Sample at : s.samples()) {
            for (double z : new double[] {at.natural(), at.bed(), at.finished()}) {
                low = Double.isNaN(z) ? low : Math.min(low, z);
                high = Double.isNaN(z) ? high : Math.max(high, z);
            }
        }
        for (SectionAlong.Crossed hull : s.hulls()) {
            low = Math.min(low, hull.heights().stream().mapToDouble(h -> h[1]).min().orElse(low));
            high = Math.max(high, hull.heights().stream().mapToDouble(h -> h[2]).max().orElse(high));
        }
        g.setFont(Font.font("SansSerif", size));
        g.setFill(style.ink());
        g.setTextBaseline(VPos.CENTER);
        if (low > high) {
            g.fillText("The ground is not known along this line.", LEFT, high() / 2);
            return;
        }
        double more = Math.max(0, LEAST_SPAN - (high - low)) / 2 + 0.04 * (high - low);
        Axes axes = new Axes(last(s), low - more, high + more, wide(), 4.2 * size,
                high() - 2 * size);
        soil(g, axes, s, style);
        hulls(g, axes, s, style);
        g.setStroke(style.ink());
        g.setLineWidth(1.4);
        line(g, axes, s, SectionAlong.Sample::natural);
        g.setStroke(style.hue(Ink.RED));
        g.setLineWidth(2.2);
        line(g, axes, s, SectionAlong.Sample::finished);
        scales(g, axes, style, size);
        g.setTextAlign(TextAlignment.LEFT);
        g.setFill(style.ink());
        String of = bench.answers().standing(bench.plan()).map(w -> "Soil and hulls: " + w).orElse("");
        g.fillText(text("Thin: ground now. Thick: finished soil. Vertical exaggeration %.1f",
                axes.exaggeration()), LEFT, size);
        g.fillText(of, LEFT, 2.4 * size);
    }

    private static void soil(GraphicsContext g, Axes axes, SectionAlong s, MapColours style) {
        g.setFill(style.faint().deriveColor(0, 1, 1, 0.35));
        for (int i = 1; i < s.samples().size(); i++) {
            SectionAlong.Sample a = s.samples().get(i - 1);
            SectionAlong.Sample b = s.samples().get(i);
            if (!Double.isNaN(a.finished() + b.finished() + a.bed() + b.bed())) {
                g.fillPolygon(new double[] {axes.x(a.distance()), axes.x(b.distance()), axes.x(b.distance()),
                    axes.x(a.distance())}, new double[] {axes.y(a.finished()), axes.y(b.finished()), axes.y(b.bed()),
                        axes.y(a.bed())}, 4);
            }
        }
    }

    private static void hulls(GraphicsContext g, Axes axes, SectionAlong s, MapColours style) {
        for (SectionAlong.Crossed hull : s.hulls()) {
            int n = hull.heights().size();
            double[] xs = new double[2 * n];
            double[] ys = new double[2 * n];
            for (int i = 0; i < n; i++) {
                double[] at = hull.heights().get(i);
                xs[i] = axes.x(at[0]);
                ys[i] = axes.y(at[1]);
                xs[2 * n - 1 - i] = xs[i];
                ys[2 * n - 1 - i] = axes.y(at[2]);
            }
            g.setFill(style.accent().deriveColor(0, 1, 1, 0.3));
            g.fillPolygon(xs, ys, 2 * n);
            g.setStroke(style.accent());
            g.setLineWidth(2);
            g.strokePolygon(xs, ys, 2 * n);
            g.setFill(style.ink());
            g.setTextAlign(TextAlignment.CENTER);
            g.fillText(hull.id(), (xs[0] + xs[n - 1]) / 2, (ys[n / 2] + ys[n + n / 2]) / 2);
        }
    }

    private static void line(GraphicsContext g, Axes axes, SectionAlong s,
            ToDoubleFunction<SectionAlong.Sample> height) {
        for (int i = 1; i < s.samples().size(); i++) {
            double from = height.applyAsDouble(s.samples().get(i - 1));
            double to = height.applyAsDouble(s.samples().get(i));
            if (!Double.isNaN(from + to)) {
                g.strokeLine(axes.x(s.samples().get(i - 1).distance()), axes.y(from),
                        axes.x(s.samples().get(i).distance()), axes.y(to));
            }
        }
    }

    private static void scales(GraphicsContext g, Axes axes, MapColours style, double size) {
        g.setStroke(style.faint());
        g.setFill(style.ink());
        g.setLineWidth(1);
        double step = step((axes.high - axes.low) / 4);
        g.setTextAlign(TextAlignment.RIGHT);
        for (double z = Math.ceil(axes.low / step) * step; z <= axes.high; z += step) {
            g.strokeLine(LEFT - 4, axes.y(z), LEFT, axes.y(z));
            g.fillText(text(step < 1 ? "%.1f m" : "%.0f m", Math.abs(z) < step / 2 ? 0 : z).replace('-', '\u2212'),
                    LEFT - 6, axes.y(z));
        }
        double along = step(axes.length / 6);
        g.setTextAlign(TextAlignment.CENTER);
        for (double d = 0; d <= axes.length; d += along) {
            g.strokeLine(axes.x(d), axes.bottom, axes.x(d), axes.bottom + 4);
            g.fillText(text(along < 1 ? "%.1f m" : "%.0f m", d), axes.x(d), axes.bottom + size);
        }
    }

    private static String text(String form, Object... parts) {
        return String.format(Locale.ROOT, form, parts);
    }
}
