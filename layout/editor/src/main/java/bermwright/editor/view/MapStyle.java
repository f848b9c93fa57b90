// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.FigureLook;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.ImagePattern;
import javafx.scene.paint.Paint;

/**
 * Colours, patterns and line kinds of the map, for light and dark windows.
 *
 * <p>The hues are the eight that Okabe and Ito proposed for every kind of colour sight; no two looks that can lie
 * beside each other differ by hue alone.
 */
final class MapStyle {
    private static final int PATTERN_SIDE = 12;

    private final boolean dark;
    private final Map<FigureLook, Drawing> drawings = new EnumMap<>(FigureLook.class);

    /** What a pattern looks like. */
    enum Pattern {
        NONE, RISING, FALLING, CROSSED, DOTS, LEVEL
    }

    /**
     * How a look is drawn.
     *
     * @param line    colour of its edge
     * @param width   width of its edge (pixels)
     * @param dashes  lengths of dashes and gaps (pixels), none for a whole line
     * @param fill    what fills it, fully transparent for nothing
     * @param pattern its pattern
     */
    record Drawing(Color line, double width, double[] dashes, Paint fill, Pattern pattern) {
    }

    MapStyle(boolean dark) {
        this.dark = dark;
        Color orange = Color.web(dark ? "#F5B83D" : "#B87400");
        Color sky = Color.web(dark ? "#7CC7F2" : "#1F7DB5");
        Color green = Color.web(dark ? "#37C79B" : "#00694C");
        Color yellow = Color.web(dark ? "#F0E442" : "#8A7D00");
        Color blue = Color.web(dark ? "#6FB7EA" : "#004F80");
        Color vermilion = Color.web(dark ? "#FF8A4A" : "#B34700");
        Color purple = Color.web(dark ? "#E7A4CB" : "#8C3F6B");
        Color ink = dark ? Color.web("#F4F1EA") : Color.web("#17130C");
        put(FigureLook.STAND_OFF, sky, new Edge(1.2, 2, 6), 0.0, Pattern.NONE);
        put(FigureLook.BORROW, orange, new Edge(1.8, 10, 4), 0.10, Pattern.DOTS);
        put(FigureLook.STOCKPILE, orange, new Edge(1.8), 0.10, Pattern.LEVEL);
        put(FigureLook.PREPARATION, yellow, new Edge(1.8, 6, 3), 0.08, Pattern.LEVEL);
        put(FigureLook.CORRIDOR, green, new Edge(1.4, 14, 5), 0.14, Pattern.NONE);
        put(FigureLook.HAUL_WAY, orange, new Edge(2.2, 3, 5), 0.0, Pattern.NONE);
        put(FigureLook.FOOT_WAY, green, new Edge(1.8, 1, 4), 0.0, Pattern.NONE);
        put(FigureLook.PAD, sky, new Edge(2.2), 0.18, Pattern.NONE);
        put(FigureLook.COVER_TOE, orange, new Edge(2.0, 8, 3, 2, 3), 0.20, Pattern.NONE);
        put(FigureLook.KEEP_OUT, vermilion, new Edge(2.4), 0.14, Pattern.CROSSED);
        put(FigureLook.PLUME, yellow, new Edge(1.4, 2, 4), 0.06, Pattern.DOTS);
        put(FigureLook.FALL_ZONE, purple, new Edge(1.3, 7, 3, 1, 3), 0.05, Pattern.NONE);
        put(FigureLook.SNAP_BACK, purple, new Edge(1.2), 0.05, Pattern.RISING);
        put(FigureLook.SWEEP, blue, new Edge(1.8, 9, 4), 0.10, Pattern.FALLING);
        put(FigureLook.LANDING_SPREAD, blue, new Edge(1.2, 2, 3), 0.0, Pattern.NONE);
        put(FigureLook.STANDING, blue, new Edge(2.0), 0.22, Pattern.NONE);
        put(FigureLook.LYING, ink, new Edge(2.2), 0.16, Pattern.NONE);
        put(FigureLook.KEPT_CLEAR, green, new Edge(1.2, 2, 3), 0.0, Pattern.NONE);
        put(FigureLook.PASS_THROUGH, green, new Edge(1.8), 0.3, Pattern.RISING);
        put(FigureLook.WALL, ink, new Edge(4.0), 0.3, Pattern.NONE);
        put(FigureLook.TUNNEL, ink, new Edge(1.8, 4, 2), 0.2, Pattern.LEVEL);
        put(FigureLook.ANCHOR_SOIL, purple, new Edge(1.0, 2, 3), 0.06, Pattern.DOTS);
        put(FigureLook.LINE, purple, new Edge(1.4), 0.35, Pattern.NONE);
        put(FigureLook.STAY, purple, new Edge(1.2, 5, 2), 0.2, Pattern.NONE);
        put(FigureLook.WINCH, purple, new Edge(1.6), 0.3, Pattern.LEVEL);
        put(FigureLook.ANCHOR, purple, new Edge(1.4), 0.3, Pattern.NONE);
        put(FigureLook.POLE_FOOT, purple, new Edge(1.4), 0.3, Pattern.NONE);
        for (FigureLook look : FigureLook.values()) {
            if (look.isMark()) {
                Color line = look == FigureLook.STATION ? green : look == FigureLook.HATCH ? ink : purple;
                put(look, line, new Edge(1.8), 0.9, Pattern.NONE);
            }
        }
    }

    /** Width of a line and lengths of its dashes and gaps (pixels). */
    private record Edge(double width, double... dashes) {
    }

    private void put(FigureLook look, Color line, Edge edge, double share, Pattern pattern) {
        Color tint = line.deriveColor(0, 1, 1, share);
        Paint fill = pattern == Pattern.NONE ? tint : patterned(pattern, line, tint);
        drawings.put(look, new Drawing(line, edge.width, edge.dashes, fill, pattern));
    }

    private static Paint patterned(Pattern pattern, Color line, Color tint) {
        WritableImage image = new WritableImage(PATTERN_SIDE, PATTERN_SIDE);
        Color stroke = line.deriveColor(0, 1, 1, 0.55);
        for (int y = 0; y < PATTERN_SIDE; y++) {
            for (int x = 0; x < PATTERN_SIDE; x++) {
                boolean rising = (x + y) % PATTERN_SIDE == 0;
                boolean falling = x == y;
                boolean on = switch (pattern) {
                    case RISING -> rising;
                    case FALLING -> falling;
                    case CROSSED -> rising || falling;
                    case DOTS -> x % 6 < 2 && y % 6 < 2 && (x + y) / 6 % 2 == 0;
                    case LEVEL -> y % 6 == 0;
                    case NONE -> false;
                };
                image.getPixelWriter().setColor(x, y, on ? stroke : tint);
            }
        }
        return new ImagePattern(image, 0, 0, PATTERN_SIDE, PATTERN_SIDE, false);
    }

    Drawing drawing(FigureLook look) {
        return drawings.get(look);
    }

    Color ground() {
        return dark ? Color.web("#1B1822") : Color.web("#D9D4C8");
    }

    Color ink() {
        return dark ? Color.web("#F4F1EA") : Color.web("#17130C");
    }

    Color faint() {
        return dark ? Color.web("#CFC8B8") : Color.web("#4A4335");
    }

    Color halo() {
        return dark ? Color.web("#12101A", 0.8) : Color.web("#FFFDF6", 0.85);
    }

    Color accent() {
        return dark ? Color.web("#FFE27A") : Color.web("#003A66");
    }
}
