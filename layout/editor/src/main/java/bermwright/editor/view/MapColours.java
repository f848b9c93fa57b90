// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.FigureLook;
import bermwright.report.drawing.Ink;
import bermwright.report.map.MapStyle;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;

/**
 * The symbols of the table in the colours of light and dark windows.
 *
 * <p>The hues are the eight that Okabe and Ito proposed for every kind of colour sight; no two looks that can lie
 * beside each other differ by hue alone.
 */
final class MapColours {
    private static final MapColours LIGHT = new MapColours(false);
    private static final MapColours DARK = new MapColours(true);

    private final boolean dark;
    private final Map<FigureLook, Drawing> drawings = new EnumMap<>(FigureLook.class);

    /**
     * How a look is drawn.
     *
     * @param line   colour of its edge
     * @param width  width of its edge (pixels)
     * @param dashes lengths of dashes and gaps (pixels), none for a whole line
     * @param fill   what fills it
     */
    record Drawing(Color line, double width, double[] dashes, Paint fill) {
    }

    private MapColours(boolean dark) {
        this.dark = dark;
        for (FigureLook look : FigureLook.values()) {
            MapStyle symbol = look.symbol();
            Color line = hue(symbol.colour());
            Color tint = line.deriveColor(0, 1, 1, symbol.tint());
            Paint fill = symbol.pattern().<Paint>map(p -> Tiles.of(p, line.deriveColor(0, 1, 1, 0.55), tint))
                    .orElse(tint);
            drawings.put(look, new Drawing(line, symbol.width(), symbol.dashes(), fill));
        }
    }

    /** The colours of a window, made once: its hatchings are pictures, too dear to be made for each frame. */
    static MapColours of(boolean isDark) {
        return isDark ? DARK : LIGHT;
    }

    /** The hue of the table of symbols, as dark or light as this window needs it; the ink where it is none of them. */
    Color hue(String colour) {
        return switch (colour) {
            case Ink.ORANGE, Ink.BROWN -> Color.web(dark ? "#F5B83D" : "#B87400");
            case Ink.GREEN -> Color.web(dark ? "#37C79B" : "#00694C");
            case Ink.BLUE -> Color.web(dark ? "#6FB7EA" : "#004F80");
            case Ink.RED -> Color.web(dark ? "#FF8A4A" : "#B34700");
            case Ink.PURPLE -> Color.web(dark ? "#E7A4CB" : "#8C3F6B");
            default -> ink();
        };
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
