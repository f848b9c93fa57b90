// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.model.FigureLook;
import bermwright.editor.model.MapCamera;
import bermwright.editor.view.WindowParts;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.plan.Plan;
import bermwright.terrain.grid.TrueMetres;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;

/** What a person does on the map, with mouse and keys alone. */
final class MapScenarios {
    private final Path work;

    private MapScenarios(Path work) {
        this.work = work;
    }

    static Map<String, Consumer<Path>> all() {
        Map<String, Consumer<Path>> all = new LinkedHashMap<>();
        all.put("only what is under the pointer moves, and keys in the menu bar move nothing",
                path -> new MapScenarios(path).onlyWhatIsUnderThePointer());
        all.put("without its ground a plan says that nothing is checked, and another file can be chosen",
                path -> new MapScenarios(path).missingGround());
        all.put("removing a hull says what goes with it", path -> new MapScenarios(path).remove());
        all.put("tools place, measure and cut on the map, and several things move together",
                path -> new MapScenarios(path).tools());
        return all;
    }

    private Stagehand fresh(String name) {
        return Stagehand.open(SampleSite.write(work.resolve(name)));
    }

    private static Hull hull(Stagehand hand, String id) {
        return hand.bench().plan().hull(id).orElseThrow();
    }

    private static MapCamera camera(Stagehand hand) {
        return Stagehand.onScreenThread(() -> hand.map().camera());
    }

    private void onlyWhatIsUnderThePointer() {
        Stagehand hand = fresh("under-pointer");
        hand.pickHull("A");
        Plan before = hand.bench().plan();
        hand.robot().push(KeyCode.F10);
        hand.robot().push(KeyCode.RIGHT);
        hand.robot().push(KeyCode.RIGHT);
        hand.screenshot("30-menu-open");
        hand.robot().push(KeyCode.ESCAPE);
        hand.robot().push(KeyCode.ESCAPE);
        assertEquals(before, hand.bench().plan(), "keys of the menu bar move nothing");
        hand.pickHull("A");
        hand.robot().push(KeyCode.RIGHT);
        hand.robot().push(KeyCode.SHIFT, KeyCode.UP);
        hand.await("the hull was moved", () -> hand.bench().plan() != before);
        Label readout = (Label) hand.node("readout");
        hand.await("it is said how far", () -> readout.isVisible() && readout.getText().equals(
                "Hull A: 1.00 m east, 0.10 m north"));
        hand.screenshot("31-nudged");
        Plan nudged = hand.bench().plan();
        Point zone = Stagehand.onScreenThread(() -> hand.bench().figures().stream()
                .filter(f -> f.look() == FigureLook.SNAP_BACK && f.part().orElseThrow().id().equals("A"))
                .map(f -> f.box().centre()).max((a, b) -> Double.compare(a.distance(hull(hand, "A").baseCentre()),
                        b.distance(hull(hand, "A").baseCentre()))).orElseThrow());
        MapCamera from = camera(hand);
        hand.drag(zone, zone.moved(bermwright.foundation.Azimuth.ofDegrees(200), 30, 0));
        assertEquals(nudged, hand.bench().plan(), "a drag that starts in a zone moves no hull");
        assertNotEquals(from.centre(), camera(hand).centre(), "but the map");
        MapCamera still = camera(hand);
        Point body = hull(hand, "B").lyingBase(TrueMetres.SAME).moved(hull(hand, "B").layDownAzimuth(), 15, 0);
        hand.pickHull("B");
        hand.robot().press(KeyCode.SPACE);
        hand.drag(body, body.moved(bermwright.foundation.Azimuth.ofDegrees(90), 20, 0));
        hand.robot().release(KeyCode.SPACE);
        assertEquals(nudged, hand.bench().plan(), "with the space bar held nothing moves");
        assertNotEquals(still.centre(), camera(hand).centre(), "but the map");
        MapCamera middle = camera(hand);
        Point2D at = hand.onScreen(body);
        hand.robot().moveTo(at).press(MouseButton.MIDDLE).moveTo(at.add(40, 10)).release(MouseButton.MIDDLE);
        hand.await("the middle button moves the map", () -> !hand.map().camera().centre().equals(middle.centre()));
        assertEquals(nudged, hand.bench().plan());
        hand.close();
    }

    private void missingGround() {
        Path plan = SampleSite.write(work.resolve("no-ground"));
        Path ground = plan.resolveSibling("ground.asc");
        Path elsewhere = plan.resolveSibling("other.asc");
        assertTrue(!elsewhere.toFile().exists() || elsewhere.toFile().delete());
        assertTrue(ground.toFile().renameTo(elsewhere.toFile()));
        Stagehand hand = Stagehand.openWithoutGround(plan);
        hand.await("it is said that there is no ground", () -> hand.find("notice-ground").isPresent());
        Label summary = (Label) hand.node("finding-summary");
        hand.await("nothing is said to be checked", () -> summary.getText().contains(
                "Not checked: the ground could not be read"));
        assertFalse(summary.getText().contains("Nothing found"));
        hand.screenshot("32-no-ground");
        Stagehand.onScreenThread(() -> WindowParts.takeGround(hand.window(), elsewhere));
        hand.await("the ground is shown", () -> WindowParts.isGroundShown(hand.window()));
        hand.await("the notice is gone", () -> hand.find("notice-ground").isEmpty());
        assertEquals("other.asc", hand.bench().plan().ground().elevationFile());
        hand.await("all is worked out", () -> hand.bench().answers().isAssessmentFresh(hand.bench().plan()));
        hand.close();
    }

    private void remove() {
        Stagehand hand = fresh("remove");
        Plan before = hand.bench().plan();
        hand.pickHull("A");
        hand.robot().push(KeyCode.DELETE);
        hand.await("it is said what went", () -> hand.find("notice-removed").isPresent());
        hand.screenshot("33-removed");
        assertEquals(1, hand.bench().plan().orderOfWork().size(), "the steps of the hull are gone");
        javafx.scene.Node undo = Stagehand.onScreenThread(() -> hand.node("notice-removed").lookup(".button"));
        hand.robot().clickOn(undo);
        hand.await("all is back", () -> hand.bench().plan().equals(before));
        hand.close();
    }

    private static void clickOn(Stagehand hand, String id) {
        hand.robot().clickOn(hand.node(id));
    }

    private void tools() {
        Stagehand hand = fresh("tools");
        clickOn(hand, "tool-hull");
        Point base = new Point(250, 220);
        Point2D from = hand.onScreen(base);
        Point2D to = hand.onScreen(base.moved(bermwright.foundation.Azimuth.ofDegrees(60), 45, 0));
        hand.robot().moveTo(from).press(MouseButton.PRIMARY).moveTo(from.midpoint(to)).moveTo(to);
        Label readout = (Label) hand.node("readout");
        hand.await("length, azimuth, place and verdict are read at the pointer", () -> readout.isVisible()
                && readout.getText().contains("azimuth") && readout.getText().contains("cover, dose and soil follow"));
        hand.screenshot("34-placing");
        hand.robot().release(MouseButton.PRIMARY);
        hand.await("the hull is placed", () -> hand.bench().plan().hull("C").isPresent() && !hand.bench().isTrying());
        assertEquals(60, hull(hand, "C").layDownAzimuth().degrees(), 2);
        clickOn(hand, "tool-keep_out");
        hand.drag(new Point(400, 260), new Point(440, 300));
        hand.await("an area is placed", () -> hand.bench().plan().keepOuts().size() == 2);
        clickOn(hand, "tool-section");
        Hull a = hull(hand, "A");
        hand.settle();
        hand.drag(a.lyingAt(TrueMetres.SAME, -30, 0), a.lyingAt(TrueMetres.SAME, 80, 0));
        hand.await("a section is drawn along the whole line", () -> hand.node("section").isVisible()
                && hand.node("section").getAccessibleText().matches("Section of 1(09|10|11) m.*"));
        clickOn(hand, "show-layers");
        hand.robot().clickOn("Slope bands");
        hand.await("bands have a legend", () -> hand.find("slope-legend").isPresent());
        hand.settle();
        hand.screenshot("35-section-and-layers");
        clickOn(hand, "tool-pick");
        Stagehand.onScreenThread(() -> {
            hand.bench().pick(java.util.Optional.empty());
            return true;
        });
        Plan before = hand.bench().plan();
        Point grab = a.lyingAt(TrueMetres.SAME, 15, 0);
        hand.robot().clickOn(hand.onScreen(grab));
        hand.robot().press(KeyCode.CONTROL).clickOn(hand.onScreen(hull(hand, "B").lyingAt(TrueMetres.SAME, 15, 0)))
                .release(KeyCode.CONTROL);
        hand.await("both are picked", () -> hand.bench().allPicked().size() == 2);
        hand.drag(grab, new Point(grab.east() + 30, grab.north() - 20));
        hand.await("both moved", () -> !hand.bench().plan().hull("B").equals(before.hull("B"))
                && !hand.bench().plan().hull("A").equals(before.hull("A")));
        assertEquals(a.baseCentre().distance(before.hull("B").orElseThrow().baseCentre()),
                hull(hand, "A").baseCentre().distance(hull(hand, "B").baseCentre()), 0.01);
        hand.settle();
        hand.screenshot("36-moved-together");
        hand.close();
    }
}
