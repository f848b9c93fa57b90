// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Point;
import bermwright.report.drawing.Drawing;
import bermwright.report.drawing.DrawingXml;
import bermwright.report.sheet.CoverSheets;
import bermwright.site.assessment.Assessment;
import bermwright.site.assessment.HullAssessment;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Annotations;
import bermwright.site.plan.Wall;
import bermwright.site.planfile.PlanValues;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What passes through a cover or holds it is seen in its sections, and on its unrolled skin. */
class PassagesInSectionsTest {
    private static final String PASSAGES = """
            [{"id": "vent", "kind": "shaft", "along_m": 15, "around_deg": 20, "width_m": 0.8, "length_m": 0.8},
             {"id": "bus", "kind": "cable", "along_m": 24, "around_deg": -70, "width_m": 0.2, "length_m": 0.2},
             {"id": "cooler", "kind": "radiator", "along_m": 8, "around_deg": 30, "width_m": 2, "length_m": 4}]""";

    @TempDir
    private Path folder;

    private static List<String> texts(Drawing drawing) throws IOException {
        Path look = Path.of("target", "look");
        Files.createDirectories(look);
        drawing.write(look);
        assertEquals(List.of(), DrawingXml.troubles(drawing));
        return DrawingXml.texts(DrawingXml.read(drawing.file()));
    }

    @Test
    void sectionsAndUnrolledMapNameThem() throws IOException {
        Assessment assessment = SiteOfTests.assessment(folder);
        HullAssessment assessed = assessment.hulls().stream()
                .filter(h -> h.lying().isPresent() && h.hull().cover().isPresent()).findFirst().orElseThrow();
        int index = assessment.plan().hulls().indexOf(assessed.hull());
        Hull hull = PlanValues.with(assessment.plan(), "hulls[" + index + "].cover.pass_throughs", PASSAGES).hulls()
                .get(index);
        CoverSheets sheets = new CoverSheets(hull, assessed.lying().orElseThrow(), assessment.cover().orElseThrow(),
                List.of());
        List<String> along = texts(sheets.longSection());
        assertTrue(along.containsAll(List.of("vent (shaft, 20° left)", "bus (cable, 70° right)",
                "cooler (radiator, 30° left)")), along.toString());
        List<String> across = texts(sheets.crossSection(15.5));
        assertTrue(across.contains("vent (shaft, at 15.0 m)"), across.toString());
        assertFalse(across.stream().anyMatch(text -> text.startsWith("bus")), "the cable is far from the cut");
        List<String> unrolled = texts(sheets.unrolled().orElseThrow());
        assertTrue(unrolled.containsAll(List.of("vent", "bus", "cooler")), unrolled.toString());
    }

    @Test
    void aWallStandsWhereTheSectionCutsIt() throws IOException {
        Assessment assessment = SiteOfTests.assessment(folder);
        HullAssessment assessed = assessment.hulls().stream()
                .filter(h -> h.lying().isPresent() && h.hull().cover().isPresent()).findFirst().orElseThrow();
        Point base = assessed.lying().orElseThrow().axisStart().plan();
        Azimuth along = assessed.hull().layDownAzimuth();
        Wall cut = new Wall("headwall", List.of(base.moved(along, -2, 9), base.moved(along, -2, -9)), 6, 1,
                Annotations.NOTHING);
        Wall beside = new Wall("beside", List.of(base.moved(along, -2, 9), base.moved(along, -2, 5)), 6, 1,
                Annotations.NOTHING);
        CoverSheets sheets = new CoverSheets(assessed.hull(), assessed.lying().orElseThrow(),
                assessment.cover().orElseThrow(), List.of(cut, beside));
        List<String> texts = texts(sheets.longSection());
        assertTrue(texts.containsAll(List.of("headwall", "wall")), texts.toString());
        assertFalse(texts.contains("beside"));
        assertFalse(texts(sheets.crossSection(assessed.hull().length() / 2)).contains("wall"));
    }
}
