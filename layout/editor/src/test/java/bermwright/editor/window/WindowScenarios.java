// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.Settings;
import bermwright.editor.view.WindowParts;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.site.planfile.PlanFiles;
import bermwright.terrain.grid.TrueMetres;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;

/** What a person does with the editor, step by step, in windows of their own; prints what passed and what failed. */
final class WindowScenarios {
    private final Path work;
    private final Path killed;

    private WindowScenarios(Path work, Path killed) {
        this.work = work;
        this.killed = killed;
    }

    private interface Scenario {
        void play(WindowScenarios with);
    }

    private static Map<String, Scenario> all() {
        Map<String, Scenario> all = new LinkedHashMap<>();
        all.put("dragging a hull into a keep-out brings the finding, and undo takes both back",
                WindowScenarios::dragIntoKeepOut);
        all.put("the demo's answers come in and show in every tab", WindowScenarios::demo);
        all.put("the turn handle turns a hull", WindowScenarios::turn);
        all.put("a bad value stays in its field with what is accepted", WindowScenarios::badValue);
        all.put("saving writes the file and clears the mark", WindowScenarios::save);
        all.put("edits of a killed editor are taken up again", WindowScenarios::recover);
        all.put("dark window and text at twice its size", WindowScenarios::darkAndLarge);
        all.put("columns, layers and view come back in the next window", WindowScenarios::remembersView);
        all.put("the map is written as a picture, and printing without a printer says so", WindowScenarios::export);
        all.put("keys and the guided path lead through the window", WindowScenarios::keysAndGuide);
        all.put("a kept variant and another file are compared figure by figure", WindowScenarios::compare);
        all.put("a plan or an elevation file dropped on the window is taken up", WindowScenarios::drop);
        all.put("the slider shows the work step by step", WindowScenarios::orderOfWork);
        FormScenarios.all().forEach((name, scenario) -> all.put(name, with -> scenario.accept(with.work)));
        MapScenarios.all().forEach((name, scenario) -> all.put(name, with -> scenario.accept(with.work)));
        return all;
    }

    static List<String> names() {
        return new ArrayList<>(all().keySet());
    }

    public static void main(String[] arguments) {
        Path work = Path.of(arguments[0]).toAbsolutePath();
        System.setProperty("bermwright.pictures", work.toString());
        WindowScenarios with = new WindowScenarios(work, Path.of(arguments[1]));
        String wanted = System.getenv().getOrDefault("BERMWRIGHT_SCENARIO", "");
        all().forEach((name, scenario) -> {
            if (java.util.stream.Stream.of(wanted.split(";")).noneMatch(name::contains)) {
                return;
            }
            try {
                scenario.play(with);
                System.out.println("PASS " + name);
            } catch (Throwable failure) {
                StringWriter trace = new StringWriter();
                failure.printStackTrace(new PrintWriter(trace));
                System.out.println("FAIL " + name + "\n" + trace);
                Stagehand.closeAll();
            }
            System.out.flush();
        });
        System.exit(0);
    }

    private Stagehand fresh(String name) {
        return Stagehand.open(SampleSite.write(work.resolve(name)));
    }

    private void dragIntoKeepOut() {
        Stagehand hand = fresh("drag");
        hand.screenshot("01-open");
        Hull before = hand.bench().plan().hull("A").orElseThrow();
        assertFalse(touchesKeepOut(hand), "nothing touches the keep-out at first");
        Point grab = before.lyingAt(TrueMetres.SAME, 12, 0);
        hand.drag(grab, new Point(SampleSite.KEEP_OUT[0] - 8, SampleSite.KEEP_OUT[1]));
        hand.await("the finding comes", () -> touchesKeepOut(hand));
        hand.settle();
        hand.screenshot("02-in-keep-out");
        assertTrue(hand.stage().getTitle().startsWith("\u2022 "), "the title marks what is not saved");
        hand.robot().push(KeyCode.CONTROL, KeyCode.Z);
        hand.await("the hull is back", () -> hand.bench().plan().hull("A").orElseThrow().equals(before));
        hand.await("the finding is gone", () -> !touchesKeepOut(hand));
        hand.close();
    }

    private static boolean touchesKeepOut(Stagehand hand) {
        return hand.bench().findings().stream().anyMatch(f -> f.finding().text().contains("boulders")
                && f.finding().level() == bermwright.finding.Finding.Level.REFUSE);
    }

    private void demo() {
        Path demo = Path.of(System.getProperty("bermwright.root"), "demo-site");
        Path folder = work.resolve("demo");
        try {
            Files.createDirectories(folder);
            for (String file : List.of("plan.json", "ground.tif", "survey-low-lifts.tif")) {
                Files.copy(demo.resolve(file), folder.resolve(file), StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Stagehand hand = Stagehand.open(folder.resolve("plan.json"));
        hand.await("cover, dose and soil are worked out", () -> hand.bench().answers()
                .isAssessmentFresh(hand.bench().plan()));
        hand.pickHull("alder");
        hand.settle();
        hand.screenshot("10-demo-findings");
        for (String heading : WindowParts.headings(hand.window())) {
            Stagehand.onScreenThread(() -> {
                WindowParts.showAnswers(hand.window(), heading);
                return true;
            });
            hand.await("nothing is being drawn", () -> !WindowParts.isBusy(hand.window()));
            hand.settle();
            hand.screenshot("11-demo-" + heading.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
        }
        hand.close();
    }

    private void turn() {
        Stagehand hand = fresh("turn");
        hand.pickHull("B");
        hand.settle();
        Hull before = hand.bench().plan().hull("B").orElseThrow();
        MapCamera camera = Stagehand.onScreenThread(() -> hand.map().camera());
        Point handle = before.lyingBase(TrueMetres.SAME).moved(before.layDownAzimuth(), before.length()
                + 22 * camera.metresPerPixel(), 0);
        hand.drag(handle, before.baseCentre().moved(bermwright.foundation.Azimuth.ofDegrees(60), 60, 0));
        assertEquals(camera, Stagehand.onScreenThread(() -> hand.map().camera()), "the map stays under the hand");
        assertEquals(60, hand.bench().plan().hull("B").orElseThrow().layDownAzimuth().degrees(), 1.0);
        assertEquals(before.baseCentre(), hand.bench().plan().hull("B").orElseThrow().baseCentre());
        hand.screenshot("03-turned");
        hand.close();
    }

    private void badValue() {
        Stagehand hand = fresh("bad-value");
        hand.pickHull("A");
        hand.settle();
        TextField field = (TextField) hand.node("hulls[0].length_m");
        hand.robot().clickOn(field);
        hand.robot().push(KeyCode.CONTROL, KeyCode.A);
        hand.robot().write("-3");
        hand.robot().push(KeyCode.ENTER);
        Label trouble = (Label) hand.node("hulls[0].length_m!");
        hand.await("the field is marked", trouble::isVisible);
        assertTrue(trouble.getText().contains("0.1 to "), trouble.getText());
        assertEquals("-3", field.getText(), "what was typed is not lost");
        assertEquals(38, hand.bench().plan().hull("A").orElseThrow().length(), 0);
        hand.screenshot("04-bad-value");
        hand.robot().clickOn(field);
        hand.robot().push(KeyCode.CONTROL, KeyCode.A);
        hand.robot().write("41.5");
        hand.robot().push(KeyCode.ENTER);
        hand.await("the value is taken", () -> hand.bench().plan().hull("A").orElseThrow().length() == 41.5);
        assertFalse(trouble.isVisible());
        hand.close();
    }

    private void save() {
        Stagehand hand = fresh("save");
        hand.pickHull("A");
        hand.robot().type(KeyCode.UP);
        hand.await("the hull has moved", () -> hand.bench().document().isUnsaved());
        hand.robot().push(KeyCode.CONTROL, KeyCode.S);
        hand.await("the plan is saved", () -> !hand.bench().document().isUnsaved());
        assertFalse(hand.stage().getTitle().startsWith("\u2022 "));
        assertEquals(221, PlanFiles.read(hand.bench().document().file()).hull("A").orElseThrow().baseCentre().north(),
                1e-9);
        hand.close();
    }

    private void recover() {
        Stagehand hand = Stagehand.open(killed);
        assertTrue(hand.find("notice-journal").isPresent(), "the journal left behind is noticed");
        hand.screenshot("05-recovery");
        hand.robot().clickOn("Take them up");
        hand.await("the steps are back", () -> hand.bench().plan().hull("A").orElseThrow().baseCentre().east()
                == 120 + EditUntilKilled.STEPS);
        assertTrue(hand.bench().document().isUnsaved());
        hand.robot().push(KeyCode.CONTROL, KeyCode.Z);
        hand.await("the last step is undone", () -> hand.bench().plan().hull("A").orElseThrow().baseCentre().east()
                == 120 + EditUntilKilled.STEPS - 1);
        hand.close();
    }

    private void darkAndLarge() {
        Stagehand hand = fresh("dress");
        hand.pickHull("A");
        Stagehand.onScreenThread(() -> {
            WindowParts.dress(hand.window(), true, 1);
            return true;
        });
        hand.await("the ground is shown", () -> WindowParts.isGroundShown(hand.window()));
        hand.settle();
        hand.screenshot("06-dark");
        Stagehand.onScreenThread(() -> {
            WindowParts.dress(hand.window(), false, 2);
            return true;
        });
        hand.await("the ground is shown", () -> WindowParts.isGroundShown(hand.window()));
        hand.settle();
        hand.screenshot("07-text-at-200-percent");
        MapCamera.Box plan = Stagehand.onScreenThread(() -> hand.bench().box().orElseThrow());
        assertTrue(Stagehand.onScreenThread(() -> hand.map().camera().box()).contains(plan), "the plan stays in sight");
        double beside = hand.map().getWidth();
        hand.robot().push(KeyCode.CONTROL, KeyCode.DIGIT8);
        hand.await("the map takes the room of list and form", () -> hand.map().getWidth() > beside + 200);
        hand.settle();
        assertTrue(Stagehand.onScreenThread(() -> hand.map().camera().box()).contains(plan), "and shows it whole");
        hand.screenshot("07-list-hidden");
        hand.close();
    }

    private void remembersView() {
        Settings settings = Settings.forgotten();
        Path plan = SampleSite.write(work.resolve("view"));
        Stagehand hand = Stagehand.open(plan, settings);
        MapCamera seen = Stagehand.onScreenThread(() -> {
            hand.map().look(hand.map().camera().at(new Point(200, 150)).zoomed(2, 100, 100));
            hand.map().requestFocus();
            return hand.map().camera();
        });
        hand.robot().push(KeyCode.CONTROL, KeyCode.DIGIT3);
        hand.robot().push(KeyCode.CONTROL, KeyCode.DIGIT4);
        hand.robot().push(KeyCode.CONTROL, KeyCode.DIGIT9);
        hand.await("the ground is shown", () -> WindowParts.isGroundShown(hand.window()));
        Stagehand.onScreenThread(() -> {
            hand.window().close();
            return true;
        });
        hand.close();
        Stagehand again = Stagehand.open(plan, settings);
        MapCamera now = Stagehand.onScreenThread(() -> again.map().camera());
        assertEquals(seen.centre(), now.centre());
        assertEquals(seen.metresPerPixel(), now.metresPerPixel(), 0);
        assertTrue(WindowParts.hasSlopeBands(again.window()), "slope bands are shown again");
        assertFalse(again.map().dress().hasGear(), "gear is hidden again");
        assertTrue(WindowParts.hasList(again.window()), "the list is seen as it was");
        assertFalse(WindowParts.hasAnswers(again.window()), "the answers are hidden again");
        again.screenshot("08-view-remembered");
        again.robot().push(KeyCode.CONTROL, KeyCode.DIGIT9);
        again.await("the answers are back", () -> WindowParts.hasAnswers(again.window()));
        again.close();
    }

    private void export() {
        Stagehand hand = fresh("export");
        Path picture = work.resolve("export").resolve("map.png");
        Stagehand.onScreenThread(() -> {
            hand.window().writePicture(picture);
            return true;
        });
        try {
            var image = javax.imageio.ImageIO.read(picture.toFile());
            assertEquals(2 * Math.round(hand.map().getWidth()), image.getWidth(), 2);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        assertTrue(hand.find("notice-picture").isPresent(), "it is said where the picture is");
        hand.robot().push(KeyCode.CONTROL, KeyCode.P);
        hand.await("it is said that there is no printer", () -> hand.robot().lookup("#trouble-dialog").tryQuery()
                .isPresent());
        hand.robot().push(KeyCode.ESCAPE);
        hand.await("the dialog is closed", () -> hand.robot().lookup("#trouble-dialog").tryQuery().isEmpty());
        hand.close();
    }

    private void keysAndGuide() {
        Stagehand hand = fresh("keys");
        hand.pickHull("A");
        Hull before = hand.bench().plan().hull("A").orElseThrow();
        hand.robot().push(KeyCode.SHIFT, KeyCode.RIGHT);
        hand.robot().type(KeyCode.W);
        hand.await("the hull was moved and turned", () -> {
            Hull now = hand.bench().plan().hull("A").orElseThrow();
            return Math.abs(now.baseCentre().east() - before.baseCentre().east() - 0.1) < 1e-9
                    && Math.abs(now.layDownAzimuth().degrees() - before.layDownAzimuth().degrees() - 1) < 1e-9;
        });
        hand.robot().push(KeyCode.CONTROL, KeyCode.DOWN);
        hand.await("the next thing is picked", () -> hand.bench().picked()
                .filter(p -> !p.equals(bermwright.editor.edit.Part.hull("A"))).isPresent());
        hand.robot().type(KeyCode.F6);
        hand.await("the list has the keys", () -> "inventory".equals(hand.stage().getScene().getFocusOwner().getId()));
        hand.robot().type(KeyCode.F1);
        int stops = 0;
        while (hand.find("notice-guide").isPresent() && stops < 20) {
            stops++;
            hand.screenshot("09-guide-" + stops);
            boolean isLast = hand.robot().lookup("Done").tryQuery().isPresent();
            hand.robot().clickOn(isLast ? "Done" : "Next");
        }
        assertTrue(stops > 3 && stops < 20, "the guided path has an end, after " + stops + " stops");
        hand.close();
    }

    private void compare() {
        Stagehand hand = fresh("compare");
        Path other = SampleSite.write(work.resolve("compare-other"));
        try {
            Files.writeString(other, Files.readString(other).replace("\"thickness_m\": 2.5", "\"thickness_m\": 3.5"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        hand.await("all is worked out", () -> hand.bench().answers().isAssessmentFresh(hand.bench().plan()));
        Stagehand.onScreenThread(() -> {
            WindowParts.compareWith(hand.window(), other);
            return true;
        });
        var table = (javafx.scene.control.TableView<?>) hand.node("comparison");
        hand.await("the other file's figures are compared", () -> !table.getItems().isEmpty());
        hand.settle();
        hand.screenshot("20-compare-file");
        hand.robot().clickOn("#keep-variant");
        hand.await("the plan itself is the variant", () -> table.getItems().isEmpty());
        hand.pickHull("A");
        hand.robot().type(KeyCode.RIGHT);
        hand.await("the step shows in the figures", () -> !table.getItems().isEmpty());
        hand.screenshot("21-compare-kept");
        hand.close();
    }

    private void drop() {
        Stagehand hand = fresh("drop");
        Path folder = hand.bench().document().file().getParent();
        for (String left : List.of("ground-plan.json", "notes.txt")) {
            folder.resolve(left).toFile().delete();
        }
        Stagehand.onScreenThread(() -> WindowParts.dropOn(hand.window(), folder.resolve("ground.asc")));
        hand.await("a new plan is open", () -> hand.bench().document().file().endsWith("ground-plan.json"));
        hand.await("the ground is shown", () -> WindowParts.isGroundShown(hand.window()));
        assertTrue(hand.bench().plan().hulls().isEmpty());
        MapCamera.Box sight = Stagehand.onScreenThread(() -> hand.map().camera().box());
        assertTrue(sight.west() <= 0 && sight.east() >= 480, "the whole ground is in sight: " + sight);
        hand.settle();
        hand.screenshot("23-new-plan");
        try {
            Files.writeString(folder.resolve("notes.txt"), "no heights in here");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Stagehand.onScreenThread(() -> WindowParts.dropOn(hand.window(), folder.resolve("notes.txt")));
        hand.await("it is said that these are no heights", () -> hand.robot().lookup("#trouble-dialog").tryQuery()
                .isPresent());
        assertTrue(hand.bench().document().file().endsWith("ground-plan.json"), "the plan in the window stays");
        assertFalse(Files.exists(folder.resolve("notes-plan.json")));
        hand.robot().push(KeyCode.ESCAPE);
        hand.await("the dialog is closed", () -> hand.robot().lookup("#trouble-dialog").tryQuery().isEmpty());
        BooleanSupplier isDropped = () -> hand.bench().document().file().endsWith("plan.json")
                && hand.bench().plan().hulls().size() == 2;
        for (int tries = 0; tries < 4 && !hand.comesTrue(isDropped, 0); tries++) {
            dragOnto(hand, folder.resolve("plan.json"), isDropped);
        }
        hand.await("the plan dropped is open", isDropped);
        hand.close();
    }

    /**
     * Drags a file out of another window and lets it go over the map, through the system's own drag and drop; a busy
     * machine may lose the hand on its way, so the caller looks whether it came to something.
     */
    private static void dragOnto(Stagehand hand, Path file, BooleanSupplier isDropped) {
        DragSource source = DragSource.open(file, 1300, 800);
        Point2D from = source.middle();
        Point2D to = Stagehand.onScreenThread(() -> hand.map().localToScreen(100, 100));
        hand.robot().moveTo(from);
        hand.robot().press(MouseButton.PRIMARY);
        for (int i = 1; i <= 30; i++) {
            hand.robot().moveTo(from.interpolate(to, i / 30.0));
            Stagehand.pause(20);
        }
        Stagehand.pause(300);
        hand.robot().release(MouseButton.PRIMARY);
        hand.comesTrue(isDropped, 20_000);
        source.close();
    }

    private void orderOfWork() {
        Stagehand hand = fresh("order");
        hand.await("all is worked out", () -> hand.bench().answers().isAssessmentFresh(hand.bench().plan()));
        Stagehand.onScreenThread(() -> {
            WindowParts.showAnswers(hand.window(), "Soil and work");
            return true;
        });
        var slider = (javafx.scene.control.Slider) hand.node("step");
        Label words = (Label) hand.node("stage-figures");
        List<String> told = new ArrayList<>();
        for (int step = 0; step <= 3; step++) {
            int done = step;
            Stagehand.onScreenThread(() -> {
                slider.setValue(done);
                return true;
            });
            hand.await("the stage is painted", () -> WindowParts.isGroundShown(hand.window()));
            hand.settle();
            hand.screenshot("22-step-" + step);
            told.add(words.getText());
        }
        assertEquals("", told.get(0), "before any work nothing was placed");
        assertTrue(told.get(1).contains("lying: A"), told.get(1));
        assertTrue(told.get(2).contains("Places ") && told.get(2).contains("A, bunks"), told.get(2));
        assertTrue(told.get(3).contains("lying: A, B"), told.get(3));
        hand.close();
    }
}
