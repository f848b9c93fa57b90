// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.finding.Finding;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.scene.shape.Polygon;
import javafx.scene.text.Text;

/** Each level of finding has a shape and a colour: an octagon to refuse, a triangle to warn, a round for a note. */
final class FindingBadge {
    private static final int ROUND = 24;

    private FindingBadge() {
    }

    static Color colour(Finding.Level level, boolean dark) {
        return switch (level) {
            case REFUSE -> Color.web(dark ? "#FF8A4A" : "#A33B00");
            case WARN -> Color.web(dark ? "#F5C542" : "#F0B400");
            case NOTE -> Color.web(dark ? "#7CC7F2" : "#1F5F8B");
        };
    }

    static Color ink(Finding.Level level, boolean dark) {
        return dark || level == Finding.Level.WARN ? Color.web("#17130C") : Color.WHITE;
    }

    static double[][] corners(Finding.Level level, double x, double y, double r) {
        int sides = switch (level) {
            case REFUSE -> 8;
            case WARN -> 3;
            case NOTE -> ROUND;
        };
        double radius = level == Finding.Level.WARN ? r * 1.35 : r;
        double start = level == Finding.Level.WARN ? 0 : Math.PI / sides;
        double[][] corners = new double[2][sides];
        for (int i = 0; i < sides; i++) {
            double angle = start + 2 * Math.PI * i / sides;
            corners[0][i] = x + radius * Math.sin(angle);
            corners[1][i] = y - radius * Math.cos(angle);
        }
        return corners;
    }

    /** Size of a number's letters against those of the text, so that it stays inside its badge. */
    static double size(String number) {
        return number.length() > 3 ? 0.55 : number.length() > 2 ? 0.7 : 0.85;
    }

    /** A badge as a node, for lists. */
    static StackPane node(Finding.Level level, String number, boolean dark, double textSize) {
        double r = textSize * 0.85;
        Polygon shape = new Polygon();
        double[][] corners = corners(level, 0, 0, r);
        for (int i = 0; i < corners[0].length; i++) {
            shape.getPoints().addAll(corners[0][i], corners[1][i]);
        }
        shape.setFill(colour(level, dark));
        Text text = new Text(number);
        text.setFill(ink(level, dark));
        text.setStyle("-fx-font-size: " + textSize * size(number) + "px;");
        StackPane pane = new StackPane(shape, text);
        pane.setMinSize(2.6 * r, 2.4 * r);
        return pane;
    }
}
