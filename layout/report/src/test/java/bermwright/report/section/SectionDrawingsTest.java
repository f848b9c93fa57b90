// SPDX-License-Identifier: Apache-2.0
package bermwright.report.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.report.drawing.Classes;
import bermwright.report.drawing.Dot;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.DrawingXml;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SectionDrawingsTest {
    private static void check(Drawing drawing) throws IOException {
        Path look = Path.of("target", "look");
        Files.createDirectories(look);
        drawing.write(look);
        assertEquals(List.of(), DrawingXml.troubles(drawing));
    }

    @Test
    void aSectionShowsGroundCoverHullStationsAndDepths() throws IOException {
        List<Dot> ground = new ArrayList<>();
        List<Dot> cover = new ArrayList<>();
        for (int x = -30; x <= 75; x++) {
            double low = 100 + 0.03 * x + 0.3 * Math.sin(x / 3.0);
            ground.add(new Dot(x, low));
            cover.add(new Dot(x, Math.max(low, Math.min(111.5, 111.5 - 0.65 * Math.max(-x - 2, x - 44)))));
        }
        HullSection section = new HullSection("long-A", "Hull A: long section", "along the lay-down azimuth (m)",
                ground,
                cover, List.of(List.of(new Dot(0, 100), new Dot(38, 101), new Dot(43, 105), new Dot(38, 109),
                new Dot(0, 108))),
                List.of(new HullSection.CutWall("headwall", List.of(new Dot(-1, 110), new Dot(0, 110),
                        new Dot(0, 99.8), new Dot(-1, 99.8)))),
                List.of(new HullSection.Passage("vent (shaft)", List.of(new Dot(30, 111.5),
                        new Dot(31, 111.5), new Dot(31, 108.8), new Dot(30, 108.8)), true)),
                List.of(new HullSection.Station("bunks", new Dot(20, 104)),
                new HullSection.Station("bridge", new Dot(24, 104))),
                List.of(new HullSection.Dimension(new Dot(20, 108.6), new Dot(20, 111.5), "2.5 m over the crown")));
        check(section.drawing());
        List<String> texts = DrawingXml.texts(DrawingXml.read(section.drawing().file()));
        assertTrue(texts.containsAll(List.of("bunks", "bridge", "2.5 m over the crown", "natural ground",
                "vent (shaft)", "headwall", "wall")));
    }

    @Test
    void anUnrolledMapShowsTheLeastDepth() throws IOException {
        List<List<Double>> rows = IntStream.range(0, 36).mapToObj(row -> IntStream.range(0, 60).mapToObj(column -> {
            double turn = Math.toRadians(-175 + row * 10);
            return column < 3 ? Double.NaN : 2.6 + 3 * (1 - Math.cos(turn)) - (column > 50 && row == 20 ? 0.8 : 0);
        }).toList()).toList();
        Drawing drawing = new UnrolledDepth("depth-A", "Hull A: depth of cover over the skin", 43, rows, 2.5,
                List.of(new UnrolledDepth.Patch("vent", 30, 45, 1, 12))).drawing();
        check(drawing);
        assertTrue(DrawingXml.texts(DrawingXml.read(drawing.file())).contains("least shown 1.85 m")
                || drawing.svg().contains("least shown"), "the least depth is named");
        assertTrue(DrawingXml.texts(DrawingXml.read(drawing.file())).contains("vent"), "what passes through is named");
        assertThrows(IllegalArgumentException.class, () -> new UnrolledDepth("x", "x", 1, List.of(List.of(1.0),
                List.of(1.0, 2.0)), 1, List.of()));
    }

    @Test
    void skyPicturesAreOneForEachStation() throws IOException {
        List<SkyPictures.View> views = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            double turn = i;
            views.add(new SkyPictures.View("A/station " + i, (a, e) -> 300 + 900 * (1 - Math.sin(e))
                    - 250 * Math.exp(-Math.pow(Math.cos(a - turn) - 1, 2) * 40 - e), new Azimuth(turn), 0.2, 180 + i));
        }
        check(new SkyPictures("sky-A", "Hull A: the sky through skin and soil", views, new Classes(List.of(100.0, 200.0,
                400.0, 700.0, 1000.0), "g/cm²"), Optional.of(Azimuth.ofDegrees(60))).drawing());
    }
}
