// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.Drafting;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.MapHands;
import bermwright.foundation.Point;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.paint.Color;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;

/** What is being drawn or measured, over the map. */
final class DraftLayer extends Group {
    private static final double CORNER = 4;

    DraftLayer() {
        setManaged(false);
        setMouseTransparent(true);
    }

    void show(Drafting draft, MapCamera camera, Color colour) {
        getChildren().clear();
        List<Point> outline = draft.outline();
        for (MapHands.SnapLine guide : draft.guides()) {
            Line line = new Line(camera.x(guide.from().east()), camera.y(guide.from().north()),
                    camera.x(guide.to().east()), camera.y(guide.to().north()));
            line.getStrokeDashArray().addAll(3.0, 4.0);
            add(line, colour, 1.2);
        }
        if (outline.isEmpty()) {
            return;
        }
        Polyline line = new Polyline();
        outline.forEach(p -> line.getPoints().addAll(camera.x(p.east()), camera.y(p.north())));
        if (draft.tool().isRing() && outline.size() > 2) {
            line.getPoints().addAll(camera.x(outline.get(0).east()), camera.y(outline.get(0).north()));
        }
        Polyline halo = new Polyline();
        halo.getPoints().addAll(line.getPoints());
        add(halo, Color.color(1, 1, 1, 0.8), 5);
        add(line, colour, 2.2);
        for (Point p : outline) {
            add(new Circle(camera.x(p.east()), camera.y(p.north()), CORNER, Color.WHITE), colour, 2);
        }
    }

    /** A frame that is drawn to pick what lies in it. */
    void frame(MapCamera camera, Point one, Point other, Color colour) {
        getChildren().clear();
        double x = Math.min(camera.x(one.east()), camera.x(other.east()));
        double y = Math.min(camera.y(one.north()), camera.y(other.north()));
        Rectangle frame = new Rectangle(x, y, Math.abs(camera.x(one.east()) - camera.x(other.east())),
                Math.abs(camera.y(one.north()) - camera.y(other.north())));
        frame.setFill(colour.deriveColor(0, 1, 1, 0.12));
        frame.getStrokeDashArray().addAll(6.0, 4.0);
        add(frame, colour, 1.5);
    }

    private void add(Shape shape, Color colour, double width) {
        shape.setStroke(colour);
        shape.setStrokeWidth(width);
        if (shape instanceof Polyline) {
            shape.setFill(null);
        }
        getChildren().add(shape);
    }
}
