// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.Numbered;
import bermwright.finding.SiteRule;
import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.foundation.Ring;
import bermwright.site.assessment.LiveSite;
import bermwright.site.footprint.GearRole;
import bermwright.site.footprint.Shape;
import bermwright.site.footprint.ShapeKind;
import bermwright.site.planfile.PlanFiles;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ViewModelsTest {
    private static final double ROUNDING = 1e-9;

    @TempDir
    private Path folder;

    @Test
    void theCameraMapsThereAndBack() {
        MapCamera camera = new MapCamera(new Point(100, 200), 0.5, 800, 600);
        Point place = camera.place(123, 456);
        assertEquals(123, camera.x(place.east()), ROUNDING);
        assertEquals(456, camera.y(place.north()), ROUNDING);
        assertTrue(camera.place(0, 0).north() > camera.place(0, 600).north(), "north is up");
    }

    @Test
    void zoomingKeepsThePlaceUnderThePointer() {
        MapCamera camera = new MapCamera(new Point(100, 200), 0.5, 800, 600);
        Point before = camera.place(700, 50);
        Point after = camera.zoomed(1.7, 700, 50).place(700, 50);
        assertEquals(0, before.distance(after), ROUNDING);
    }

    @Test
    void fittingShowsTheWholeBox() {
        MapCamera.Box box = new MapCamera.Box(0, 0, 300, 40);
        MapCamera camera = new MapCamera(new Point(0, 0), 1, 800, 600).fitting(box, 0.9);
        assertEquals(720, camera.x(300) - camera.x(0), 1e-6);
        assertEquals(300, camera.y(20), 1e-6);
        MapCamera half = new MapCamera(new Point(0, 0), 1, 800, 600).onTheWay(camera, 1);
        assertEquals(camera, half);
    }

    @Test
    void scaleBarsAreRoundAndFit() {
        for (double mpp : new double[] {0.003, 0.04, 0.3, 1.7, 12, 900}) {
            ScaleBar bar = ScaleBar.fitting(mpp, 200);
            assertTrue(bar.pixels() <= 200 + 1e-6 && bar.pixels() > 200 / 2.6, bar.toString());
            double leading = bar.length() / Math.pow(10, Math.floor(Math.log10(bar.length()) + 1e-9));
            assertTrue(Stream.of(1.0, 2.0, 5.0).anyMatch(r -> Math.abs(r - leading) < 1e-6), bar.toString());
        }
        assertEquals("2 km", ScaleBar.fitting(12, 200).words());
    }

    @Test
    void findingsAreNumberedTheWorstFirst() {
        Finding note = Finding.of(SiteRule.TUNNEL_REACH, Finding.Level.NOTE, "A", Finding.Figures.NONE, "note");
        Finding refuse = Finding.of(SiteRule.NO_HULL, Finding.Level.REFUSE, "A", Finding.Figures.NONE, "refuse");
        Finding warn = Finding.of(LoweringRule.REST_ROCKS, Finding.Level.WARN, "A", Finding.Figures.NONE, "warn");
        List<Numbered> numbered = Numbered.of(List.of(note, refuse, warn));
        assertEquals(List.of(refuse, warn, note), numbered.stream().map(Numbered::finding).toList());
        assertEquals(List.of("S1", "L1", "S2"), numbered.stream().map(Numbered::number).toList());
    }

    @Test
    void settingsOutliveTheProgramAndABrokenFileCostsOnlyComfort() throws IOException {
        Path file = folder.resolve("deep/settings.properties");
        Settings settings = Settings.in(file);
        settings.put("width", 1234.5);
        settings.put("dark", true);
        settings.opened(Path.of("a.json"));
        settings.opened(Path.of("b.json"));
        settings.opened(Path.of("a.json"));
        settings.keep();
        Path other = Files.writeString(folder.resolve("other"), "");
        if (Files.getFileStore(file).supportsFileAttributeView(PosixFileAttributeView.class)) {
            assertEquals(Files.getPosixFilePermissions(other), Files.getPosixFilePermissions(file),
                    "as readable as any other file");
        }
        Settings again = Settings.in(file);
        assertEquals(1234.5, again.number("width", 0));
        assertTrue(again.flag("dark", false));
        assertEquals(List.of(Path.of("a.json").toAbsolutePath(), Path.of("b.json").toAbsolutePath()),
                again.recentFiles());
        Files.writeString(file, "width=wide\\u12");
        assertEquals(7, Settings.in(file).number("width", 7));
    }

    @Test
    void copiesTheDemoWhenAskedAndOpensTheLatestPlan() throws IOException {
        Path shipped = Files.createDirectory(folder.resolve("shipped"));
        Path demo = SampleSite.write(shipped);
        Path mine = Files.writeString(folder.resolve("mine.json"), "{}");
        Properties properties = new Properties();
        properties.setProperty("bermwright.demo", demo.toString());
        properties.setProperty("user.home", folder.toString());
        Settings settings = Settings.forgotten();
        assertEquals(Optional.empty(), FirstPlan.of(settings), "the first start offers ways to begin");
        Path copy = FirstPlan.demoCopy(Map.of(), properties).orElseThrow();
        assertEquals(folder.resolve("bermwright-demo/plan.json"), copy);
        assertEquals(Files.readString(demo), Files.readString(copy));
        assertTrue(Files.exists(copy.resolveSibling(PlanFiles.read(copy).ground().elevationFile())));
        Files.writeString(copy, SampleSite.text().replace("\"A\"", "\"changed\""));
        String changed = Files.readString(copy);
        FirstPlan.demoCopy(Map.of(), properties);
        assertEquals(changed, Files.readString(copy), "a copy that was edited is left as it is");
        settings.opened(mine);
        assertEquals(Optional.of(mine.toAbsolutePath()), FirstPlan.of(settings));
        Files.delete(mine);
        assertEquals(Optional.empty(), FirstPlan.of(settings), "a file that is gone is skipped");
    }

    @Test
    void everyKindOfOutlineHasALook() {
        Ring outline = new Ring(List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1)));
        for (ShapeKind kind : ShapeKind.values()) {
            for (GearRole role : GearRole.values()) {
                Shape shape = new Shape(kind, "A", "", outline, role, Optional.empty());
                assertFalse(FigureLook.of(shape).rule().isBlank(), kind.word());
            }
        }
    }

    @Test
    void figuresOfWhatStayedTheSameAreKept() {
        LiveSite site = LiveSite.of(SampleSite.plan(), Optional.empty(), Map.of());
        MapFigures before = MapFigures.of(site);
        LiveSite moved = site.with(SampleSite.plan().withHull("A", h -> h.withBaseCentre(new Point(130, 220))));
        MapFigures after = before.with(moved);
        List<MapFigure> kept = new ArrayList<>(after.figures());
        kept.removeIf(f -> before.figures().stream().noneMatch(b -> b == f));
        assertTrue(kept.stream().anyMatch(f -> f.look() == FigureLook.KEEP_OUT));
        assertTrue(kept.stream().noneMatch(f -> f.look() == FigureLook.LYING && f.label().equals("A")));
    }

    @Test
    void thePictureOfTheGroundHasEverySizeAndMarksWhatIsNotKnown() {
        GridFrame frame = new GridFrame(700, 900, 0, 0, 1);
        ElevationGrid grid = ElevationGrid.sampled(frame, (e, n) -> e < 100 ? Double.NaN : Math.sin(e / 30) * 3);
        ReliefData data = ReliefData.of(grid, Progress.NONE);
        assertEquals(0, data.shade(0, 10, 10));
        assertTrue(data.shade(0, 500, 10) > 0);
        assertTrue(data.levels() >= 3);
        ReliefLook look = new ReliefLook(true, true, true, false, 1);
        ReliefPicture picture = ReliefPicture.of(data, look, Progress.NONE);
        MapCamera far = new MapCamera(new Point(450, 350), 4, 225, 175);
        MapCamera near = new MapCamera(new Point(450, 350), 0.2, 400, 300);
        int farPixels = picture.tiles(far).stream().mapToInt(t -> t.pixels().length).sum();
        assertTrue(farPixels <= 4 * 225 * 175 * 2, "far off, few pixels are drawn: " + farPixels);
        assertTrue(picture.isCoarseFor(near));
        ReliefPicture.Tile detail = picture.detail(near, Progress.NONE);
        assertEquals(400 * 300, detail.pixels().length);
        assertNotEquals(0, detail.pixels()[200]);
    }

    @Test
    void stagesFollowWhatComesBefore() {
        WorkStages stages = WorkStages.of(SampleSite.plan());
        assertEquals(List.of("1", "2", "3"), stages.steps().stream().map(s -> s.id()).toList());
        List<MapFigure> figures = MapFigures.of(LiveSite.of(SampleSite.plan(), Optional.empty(), Map.of())).figures();
        MapFigure standing = figures.stream().filter(f -> f.look() == FigureLook.STANDING).findFirst().orElseThrow();
        MapFigure lying = figures.stream().filter(f -> f.look() == FigureLook.LYING && f.label().equals("A"))
                .findFirst().orElseThrow();
        assertTrue(stages.shows(standing, 0));
        assertFalse(stages.shows(lying, 0));
        assertTrue(stages.shows(lying, 2));
        assertFalse(stages.shows(standing, 2));
    }

    @Test
    void stagesOfAnotherPlanAreNotTakenForThisOne() {
        WorkStages stages = WorkStages.of(SampleSite.plan(), Optional.empty());
        assertEquals(List.of("1", "2", "3"), stages.steps().stream().map(s -> s.id()).toList());
        assertTrue(stages.stage(2).isEmpty());
        assertTrue(WorkStages.of(NewPlan.on(folder.resolve("a.tif"), folder.resolve("a.json")), Optional.empty())
                .steps().isEmpty(), "a new plan has no steps");
        assertTrue(stages.doses(2).isEmpty());
    }

    @Test
    void comparesFigureByFigure() {
        List<Comparison.Row> rows = Comparison.rows(
                List.of(new Figure("A", "mass", "t", 10), new Figure("A", "gone", "m", 1)),
                List.of(new Figure("A", "mass", "t", 12.5), new Figure("B", "new", "m", 3)));
        assertEquals(3, rows.size());
        assertEquals(2.5, rows.get(0).difference(), ROUNDING);
        assertTrue(Double.isNaN(rows.get(1).other()));
        assertTrue(Double.isNaN(rows.get(2).mine()));
    }

    @Test
    void theGuideLeadsThroughTheThreePeoplesQuestions() {
        Guide guide = new Guide();
        StringBuilder words = new StringBuilder();
        do {
            words.append(guide.stop().words());
        } while (guide.next());
        assertTrue(guide.isLast());
        for (String person : List.of("surface planner", "crew-safety reviewer", "excavation lead")) {
            assertTrue(words.toString().contains(person), person);
        }
    }
}
