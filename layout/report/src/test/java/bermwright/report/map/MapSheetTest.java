// SPDX-License-Identifier: Apache-2.0
package bermwright.report.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.finding.Finding;
import bermwright.finding.Numbered;
import bermwright.finding.SiteRule;
import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.foundation.Ring;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.DrawingXml;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MapSheetTest {
    private static final double NEAR = 1e-9;

    static ElevationGrid ground() {
        return ElevationGrid.sampled(new GridFrame(121, 161, 1000, 2000, 2), (e, n) -> {
            double r = Math.hypot(e - 1240, n - 2170);
            boolean hole = e < 1016 && n < 2020;
            return hole ? Double.NaN : 3 * Math.sin(e / 40) + 0.02 * n - 14 * Math.exp(-r * r / 900)
                    + 5 * Math.exp(-(r - 42) * (r - 42) / 60);
        });
    }

    static Ring box(double east, double north, double width, double height) {
        return new Ring(List.of(new Point(east, north), new Point(east + width, north),
                new Point(east + width, north + height), new Point(east, north + height)));
    }

    static List<MapItem> items() {
        List<MapItem> items = new ArrayList<>();
        Point base = new Point(1090, 2100);
        Azimuth azimuth = Azimuth.ofDegrees(75);
        Point far = base.moved(azimuth, 42, 0);
        items.add(new MapItem.Area(MapStyle.LYING_HULL, "A", new Ring(List.of(base.moved(azimuth, 0, 4),
                base.moved(azimuth, 42, 4), base.moved(azimuth, 42, -4), base.moved(azimuth, 0, -4)))));
        items.add(new MapItem.Area(MapStyle.SWEEP, "", new Ring(List.of(base.moved(azimuth, -4, 7),
                base.moved(azimuth, 46, 12), base.moved(azimuth, 46, -12), base.moved(azimuth, -4, -7)))));
        items.add(new MapItem.Area(MapStyle.STANDING_HULL, "", new Ring(IntStream.range(0, 36).mapToObj(i ->
                base.moved(azimuth, -4 + 4 * Math.cos(i * Math.PI / 18), 4 * Math.sin(i * Math.PI / 18))).toList())));
        items.add(new MapItem.Line(MapStyle.LOWERING_LINE, "", List.of(base.moved(azimuth, 30, 4),
                base.moved(azimuth, -45, 4))));
        items.add(new MapItem.Spot(MapStyle.WINCH, "winch", base.moved(azimuth, -45, 4)));
        items.add(new MapItem.Spot(MapStyle.POLE_FOOT, "", base.moved(azimuth, -10, 6)));
        items.add(new MapItem.Area(MapStyle.SNAP_BACK, "", new Ring(List.of(base.moved(azimuth, -45, 4),
                base.moved(azimuth, -70, 14), base.moved(azimuth, -70, -6)))));
        items.add(new MapItem.Area(MapStyle.KEEP_OUT, "boulders <b>", box(1200, 2030, 40, 30)));
        items.add(new MapItem.Area(MapStyle.BORROW, "east borrow", box(1250, 2060, 50, 60)));
        items.add(new MapItem.Line(MapStyle.HAUL_WAY, "", List.of(new Point(1250, 2080), far)));
        items.add(new MapItem.Area(MapStyle.CORRIDOR, "road", box(1000, 2150, 320, 6)));
        return items;
    }

    @Test
    void aSheetIsValidAndShowsEveryFindingInItsWindow() throws IOException {
        List<Numbered> findings = new ArrayList<>();
        for (Finding.Level level : Finding.Level.values()) {
            for (int i = 0; i < 3; i++) {
                Finding finding = Finding.of(SiteRule.values()[i], level, "A", Finding.Figures.NONE, "words & <more>");
                findings.add(new Numbered("S" + (findings.size() + 1), i == 2 ? finding
                        : finding.at(new Point(1100 + 3 * i, 2102))));
            }
        }
        MapWindow window = MapWindow.around(List.of(new Point(1000, 2000), new Point(1320, 2240)), 1);
        Drawing drawing = new MapSheet("plan", "The whole site", window, ground(),
                Optional.of(Azimuth.ofDegrees(-12.5)),
                items(), findings).drawing();
        Path look = Path.of("target", "look");
        Files.createDirectories(look);
        drawing.write(look);
        assertEquals(List.of(), DrawingXml.troubles(drawing));
        List<String> texts = DrawingXml.texts(DrawingXml.read(drawing.file()));
        for (Numbered numbered : findings) {
            boolean placed = numbered.finding().place().isPresent();
            assertEquals(placed || numbered.number().equals("S1"),
                    texts.contains(numbered.number()), "number " + numbered.number());
        }
        assertTrue(texts.contains("boulders <b>"));
        assertTrue(texts.contains("true north 12.50°") && texts.contains("anticlockwise of grid"), texts::toString);
    }

    /** Winches, their anchors, stays and poles within a few steps of each other, as at the back of a lay-down. */
    @Test
    void wordsInACrowdedYardCoverNeitherEachOtherNorASymbol() throws IOException {
        List<MapItem> yard = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            yard.add(new MapItem.Spot(MapStyle.ANCHOR, "anchor, lowering line " + (i + 1),
                    new Point(1100 + 5 * i, 2100 + 2 * i)));
            yard.add(new MapItem.Spot(MapStyle.SETTING_OUT, "winch-lowering-line-" + (i + 1),
                    new Point(1101 + 5 * i, 2099 + 2 * i)));
            yard.add(new MapItem.Spot(MapStyle.STATION, "", new Point(1108 + 4 * i, 2103)));
        }
        List<Numbered> findings = IntStream.range(0, 5).mapToObj(i -> new Numbered("S" + i, Finding.of(SiteRule.NO_HULL,
                Finding.Level.NOTE, "A", Finding.Figures.NONE, "words").at(new Point(1108, 2102)))).toList();
        MapWindow window = MapWindow.around(List.of(new Point(1060, 2060), new Point(1160, 2150)), 1);
        Drawing drawing = new MapSheet("yard", "A crowded yard", window, ground(), Optional.empty(), yard, findings)
                .drawing();
        drawing.write(Files.createDirectories(Path.of("target", "look")));
        assertEquals(List.of(), DrawingXml.covered(DrawingXml.read(drawing.file())));
    }

    @Test
    void northIsUpAndEastIsRight() {
        MapWindow window = new MapWindow(new Point(0, 0), new Point(100, 50));
        Dot corner = new Dot(10, 20);
        assertEquals(new Dot(10, 20 + 50 * 2), window.paper(new Point(0, 0), corner, 2));
        assertEquals(new Dot(10 + 100 * 2, 20), window.paper(new Point(100, 50), corner, 2));
    }

    @Test
    void aWindowGrowsToItsShapeAroundItsMiddle() {
        MapWindow flat = new MapWindow(new Point(0, 0), new Point(100, 10)).shaped(0.9, 2);
        assertEquals(50, flat.height(), NEAR);
        assertEquals(-20, flat.southwest().north(), NEAR);
        MapWindow tall = new MapWindow(new Point(0, 0), new Point(10, 100)).shaped(0.9, 2);
        assertEquals(90, tall.width(), NEAR);
    }

    @Test
    void everyStyleHasWordsAndCanBeDrawn() {
        List<MapItem> all = new ArrayList<>();
        for (MapStyle style : MapStyle.values()) {
            all.add(style.isMark() ? new MapItem.Spot(style, style.words(), new Point(1100, 2100))
                    : new MapItem.Area(style, style.words(), box(1050, 2050, 40, 30)));
        }
        MapWindow window = MapWindow.around(List.of(new Point(1000, 2000), new Point(1320, 2240)), 1);
        Drawing drawing = new MapSheet("styles", "All", window, ground(), Optional.of(new Azimuth(2.5)),
                all, List.of()).drawing();
        assertEquals(List.of(), DrawingXml.troubles(drawing));
        List<String> texts = DrawingXml.texts(DrawingXml.read(drawing.file()));
        for (MapStyle style : MapStyle.values()) {
            assertEquals(2, texts.stream().filter(style.words()::equals).count(), style.words());
        }
    }
}
