// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.TiltModel;
import bermwright.lowering.body.PlanePoint;
import bermwright.site.assessment.HullAtTilt;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** A hull on its way down from the side: body, lines, poles and stays over the fitted ground. */
final class SideView extends PaintedRegion {
    private static final double RIM = 14;
    /** Height with text at its usual size (pixels). */
    private static final double HEIGHT = 210;
    private static final double LEAST_HEIGHT = 120;

    private final TiltModel model;

    SideView(TiltModel model, Dress dress) {
        super(dress, LEAST_HEIGHT, d -> HEIGHT * Math.sqrt(d.scale()));
        this.model = model;
        setId("side-view");
        setAccessibleText("The hull on its way down, from the side");
    }

    /** The lay-down plane on the canvas: scale and where its origin is. */
    private record Window(double scale, double x0, double y0) {
        private double x(PlanePoint p) {
            return x0 + p.x() * scale;
        }

        private double y(PlanePoint p) {
            return y0 - p.z() * scale;
        }
    }

    @Override
    void paint(GraphicsContext g, MapColours style) {
        Optional<HullAtTilt> picture = model.picture();
        if (picture.isEmpty()) {
            words(g, "No lowering to show for this hull.", wide() / 2, high() / 2, style.ink());
            return;
        }
        Window window = window(picture.get());
        g.setStroke(style.ink());
        g.setLineWidth(1.5);
        g.strokeLine(0, window.y0, wide(), window.y0);
        for (double x = 4; x < wide(); x += 10) {
            g.strokeLine(x, window.y0, x - 5, window.y0 + 6);
        }
        for (HullAtTilt.Rope rope : picture.get().ropes()) {
            rope(g, window, rope, style);
        }
        body(g, window, picture.get(), style);
    }

    private Window window(HullAtTilt picture) {
        double left = -5;
        double right = model.hull().map(h -> h.length()).orElse(30.0) + 4;
        double top = right;
        for (HullAtTilt.Rope rope : picture.ropes()) {
            for (PlanePoint p : List.of(rope.from(), rope.to())) {
                left = Math.min(left, p.x());
                right = Math.max(right, p.x());
            }
        }
        double scale = Math.min((wide() - 2 * RIM) / (right - left),
                (high() - 2 * RIM) / (top + 2));
        return new Window(Math.max(scale, 0.1), RIM - left * scale
                + Math.max(0, (wide() - 2 * RIM - (right - left) * scale) / 2), high() - RIM);
    }

    private static void rope(GraphicsContext g, Window w, HullAtTilt.Rope rope, MapColours style) {
        Color colour = style.drawing(bermwright.editor.model.FigureLook.LINE).line();
        g.setStroke(rope.gear() == HullAtTilt.Gear.POLE ? style.ink() : colour);
        g.setLineWidth(rope.gear() == HullAtTilt.Gear.POLE ? 4 : 1.8);
        g.setLineDashes(switch (rope.gear()) {
            case LINE, POLE -> new double[0];
            case STAY -> new double[] {6, 3};
            case PULL_OVER -> new double[] {2, 4};
        });
        g.strokeLine(w.x(rope.from()), w.y(rope.from()), w.x(rope.to()), w.y(rope.to()));
        g.setLineDashes();
    }

    private void body(GraphicsContext g, Window w, HullAtTilt picture, MapColours style) {
        int n = picture.body().size();
        double[] xs = new double[n];
        double[] ys = new double[n];
        for (int i = 0; i < n; i++) {
            xs[i] = w.x(picture.body().get(i));
            ys[i] = w.y(picture.body().get(i));
        }
        MapColours.Drawing look = style.drawing(bermwright.editor.model.FigureLook.STANDING);
        g.setFill(look.line().deriveColor(0, 1, 1, 0.35));
        g.fillPolygon(xs, ys, n);
        g.setStroke(look.line());
        g.setLineWidth(2);
        g.strokePolygon(xs, ys, n);
        double x = w.x(picture.centre());
        double y = w.y(picture.centre());
        g.setStroke(style.ink());
        g.strokeOval(x - 5, y - 5, 10, 10);
        g.strokeLine(x - 8, y, x + 8, y);
        g.strokeLine(x, y - 8, x, y + 8);
        words(g, String.format(Locale.ROOT, "%.1f\u00b0", model.tiltDeg()), w.x0, w.y0 - 12, style.ink());
    }

    private void words(GraphicsContext g, String text, double x, double y, Color colour) {
        g.setFont(Font.font("SansSerif", dress().textSize()));
        g.setTextAlign(TextAlignment.CENTER);
        g.setTextBaseline(VPos.CENTER);
        g.setFill(colour);
        g.fillText(text, x, y);
    }
}
