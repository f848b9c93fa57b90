// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.view.WindowParts;
import bermwright.finding.Finding;
import bermwright.finding.LoweringRule;
import bermwright.finding.Numbered;
import bermwright.site.planfile.JudgementFiles;
import bermwright.site.planfile.PlanFiles;
import bermwright.site.planfile.PlanValues;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.stage.Window;

/** What a person does with findings, forms, menus and dialogs. */
final class FormScenarios {
    private final Path work;

    private FormScenarios(Path work) {
        this.work = work;
    }

    static Map<String, Consumer<Path>> all() {
        Map<String, Consumer<Path>> all = new LinkedHashMap<>();
        all.put("a finding is found by its words, mended by its button, and another is accepted",
                folder -> new FormScenarios(folder).findAndMend());
        all.put("typing through a form by Tab loses no keystroke and no focus",
                folder -> new FormScenarios(folder).typeThrough());
        all.put("exchange files are handed over from the menu into a folder",
                folder -> new FormScenarios(folder).handOver());
        all.put("a first start offers three ways, and every control has a name", folder -> new FormScenarios(folder)
                .firstStart());
        all.put("dark, twice the size and small: dialogs, drawings and notices keep to the dress",
                folder -> new FormScenarios(folder).smallAndDark());
        all.put("from an elevation file to a plan of three hulls without refusals", folder -> new FormScenarios(folder)
                .threeHulls());
        all.put("a survey lists places, and a plan is begun at one", folder -> new FormScenarios(folder).survey());
        all.put("a search for arrangements runs in its window and stops when asked",
                folder -> new FormScenarios(folder).arrange());
        return all;
    }

    private static String focused(Stagehand hand) {
        return Stagehand.onScreenThread(() -> {
            Node owner = hand.stage().getScene().getFocusOwner();
            return owner == null ? "nothing" : owner.getId() == null ? owner.getClass().getSimpleName()
                    : owner.getId();
        });
    }

    private void typeThrough() {
        Stagehand hand = Stagehand.open(SampleSite.write(work.resolve("typing")));
        hand.pickHull("A");
        hand.settle();
        String seat = "hulls[0].seat";
        hand.await("the block opens", () -> {
            Node pane = hand.stage().getScene().getRoot().lookupAll("*").stream()
                    .filter(n -> (seat + ":").equals(n.getId())).findFirst().orElseThrow();
            ((javafx.scene.control.TitledPane) pane).setExpanded(true);
            return true;
        });
        // The first figure makes a block of defaults the plan's own, which gives it a button and new fields.
        Stagehand.onScreenThread(() -> {
            hand.stage().getScene().getRoot().lookupAll("*").stream().filter(n -> (seat + ".sunk_m").equals(n.getId()))
                    .findFirst().orElseThrow().requestFocus();
            return true;
        });
        hand.settle();
        hand.robot().push(KeyCode.CONTROL, KeyCode.A);
        hand.robot().write("0.48");
        hand.robot().push(KeyCode.TAB);
        hand.robot().write("soft bed");
        hand.robot().push(KeyCode.TAB);
        hand.await("the figure is in the plan", () -> hand.bench().plan().hull("A").orElseThrow().seat().sunk()
                == 0.48);
        hand.screenshot("34-form");
        assertEquals("soft bed", hand.bench().plan().hull("A").orElseThrow().seat().annotations().note().orElse(""));
        assertEquals("-" + seat, focused(hand), "the keys go on to the button after the note");
        hand.pickHull("A");
        Stagehand.onScreenThread(() -> {
            hand.stage().getScene().getRoot().lookupAll("*").stream().filter(n -> "hulls[0].length_m".equals(n.getId()))
                    .findFirst().orElseThrow().requestFocus();
            return true;
        });
        hand.robot().push(KeyCode.CONTROL, KeyCode.A);
        hand.robot().write("41.5");
        hand.robot().push(KeyCode.TAB);
        hand.robot().write("7.8");
        hand.robot().push(KeyCode.TAB);
        hand.await("both figures are in the plan", () -> hand.bench().plan().hull("A").orElseThrow().length() == 41.5
                && hand.bench().plan().hull("A").orElseThrow().diameter() == 7.8);
        assertEquals("A", hand.bench().plan().hulls().get(0).id());
        hand.close();
    }

    /** The sample with one value changed. */
    private Stagehand with(String name, String path, String json) {
        Path file = SampleSite.write(work.resolve(name));
        JudgementFiles.beside(file).toFile().delete();
        PlanFiles.write(PlanValues.with(PlanFiles.read(file), path, json), file);
        return Stagehand.open(file);
    }

    private static Node anywhere(String id) {
        return Stagehand.onScreenThread(() -> Window.getWindows().stream()
                .flatMap(w -> w.getScene().getRoot().lookupAll("*").stream()).filter(n -> id.equals(n.getId()))
                .findFirst().orElseThrow(() -> new AssertionError("there is no node " + id)));
    }

    private static boolean isAnywhere(String id) {
        return Window.getWindows().stream().flatMap(w -> w.getScene().getRoot().lookupAll("*").stream())
                .anyMatch(n -> id.equals(n.getId()));
    }

    /** Clicks on what is drawn last and may still be on its way to its place. */
    private static void click(Stagehand hand, String id) {
        javafx.geometry.Bounds[] last = new javafx.geometry.Bounds[1];
        for (int still = 0; still < 3;) {
            javafx.geometry.Bounds now = Stagehand.onScreenThread(() -> {
                Node node = anywhereNow(id);
                return node.localToScreen(node.getBoundsInLocal());
            });
            still = now.equals(last[0]) ? still + 1 : 0;
            last[0] = now;
            Stagehand.pause(100);
        }
        hand.robot().clickOn(new javafx.geometry.Point2D(last[0].getCenterX(), last[0].getCenterY()));
    }

    private static long weakWinches(Stagehand hand) {
        return hand.bench().findings().stream().map(Numbered::finding).filter(FormScenarios::isWeakWinch).count();
    }

    private static boolean isWeakWinch(Finding f) {
        return f.rule() == LoweringRule.LOWERING_FACTOR && f.subject().equals("A")
                && f.parts().contains("lowering winch");
    }

    private void findAndMend() {
        Stagehand hand = with("mend", "hulls[0].lowering.lines.winch.rating_each_kN", "30");
        hand.await("the weak winch is found", () -> weakWinches(hand) > 0);
        hand.await("all is worked out", () -> hand.bench().answers().isAssessmentFresh(hand.bench().plan()));
        hand.settle();
        hand.screenshot("30-findings-grouped");
        hand.robot().clickOn(hand.node("finding-search"));
        hand.robot().write("winch factor");
        hand.await("few are left", () -> hand.bench().shownFindings().size() < 6);
        pickWinch(hand);
        hand.await("a value is offered", () -> isAnywhere("finding-mend-0"));
        hand.settle();
        hand.screenshot("31-finding-offer");
        click(hand, "finding-field");
        hand.await("the field has the keys", () -> hand.stage().getScene().getFocusOwner() != null
                && "hulls[0].lowering.lines.winch.rating_each_kN".equals(hand.stage().getScene().getFocusOwner()
                .getId()));
        hand.screenshot("32-field-opened");
        Button mend = (Button) hand.node("finding-mend-0");
        assertTrue(mend.getText().startsWith("Take winches rated for "), mend.getText());
        click(hand, "finding-mend-0");
        hand.await("the winch does", () -> weakWinches(hand) == 0);
        hand.robot().push(KeyCode.CONTROL, KeyCode.Z);
        hand.await("undo brings it back", () -> weakWinches(hand) > 0);
        accept(hand);
        hand.close();
    }

    /** Gentle ground of 600 m by 600 m. */
    private Path gentleGround() {
        StringBuilder text = new StringBuilder("ncols 301\nnrows 301\nxllcenter 0\nyllcenter 0\ncellsize 2\n"
                + "NODATA_value -9999\n");
        for (int row = 300; row >= 0; row--) {
            for (int column = 0; column <= 300; column++) {
                text.append(String.format(java.util.Locale.ROOT, "%.3f ", 0.3 * Math.sin(column / 60.0)
                        * Math.cos(row / 70.0)));
            }
            text.append('\n');
        }
        try {
            Path folder = work.resolve("three-hulls-" + System.nanoTime());
            return Files.writeString(Files.createDirectories(folder).resolve("ground.asc"), text.toString());
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** Opens the menu Add by its key and takes an item with the mouse. */
    private static void add(Stagehand hand, String what) {
        Stagehand.onScreenThread(() -> {
            hand.map().requestFocus();
            return true;
        });
        clickWords(hand, true, "Add");
        Stagehand.pause(150);
        clickWords(hand, false, what);
        Stagehand.pause(150);
    }

    /** Clicks on words in the menu bar, or in a menu that stands open over the window. */
    private static void clickWords(Stagehand hand, boolean inBar, String words) {
        Node[] found = new Node[1];
        hand.await("\u201c" + words + "\u201d is there", () -> {
            found[0] = Window.getWindows().stream().filter(w -> inBar == (w == hand.stage()))
                    .flatMap(w -> w.getScene().getRoot().lookupAll(inBar ? "#menus .label" : ".label").stream())
                    .filter(n -> n instanceof Label label && words.equals(label.getText().replace("_", "")))
                    .findFirst().orElse(null);
            return found[0] != null;
        });
        hand.robot().clickOn(found[0]);
    }

    private static void type(Stagehand hand, String field, String text) {
        Stagehand.onScreenThread(() -> {
            WindowParts.reveal(hand.window(), field);
            return true;
        });
        hand.robot().push(KeyCode.CONTROL, KeyCode.A);
        hand.robot().write(text);
        hand.robot().push(KeyCode.ENTER);
    }

    private static java.util.List<String> refusals(Stagehand hand) {
        return hand.bench().findings().stream().map(Numbered::finding)
                .filter(f -> f.level() == Finding.Level.REFUSE).map(f -> f.id() + ": " + f.text()).toList();
    }

    private void threeHulls() {
        Path ground = gentleGround();
        Stagehand hand = Stagehand.empty(bermwright.editor.model.Settings.forgotten());
        Stagehand.onScreenThread(() -> WindowParts.dropOn(hand.window(), ground));
        hand.await("the ground is shown", () -> WindowParts.isGroundShown(hand.window()));
        hand.settle();
        for (int i = 0; i < 3; i++) {
            int hulls = i + 1;
            add(hand, "Hull");
            hand.await("the hull is there and picked", () -> hand.bench().plan().hulls().size() == hulls
                    && hand.bench().picked().isPresent());
            type(hand, "hulls[" + i + "].base_centre.east_m", "75");
            type(hand, "hulls[" + i + "].base_centre.north_m", String.valueOf(140 + 160 * i));
            click(hand, "kit");
            hand.await("a kit is found", () -> isAnywhere("take-kit"));
            if (i == 0) {
                Stagehand.pause(300);
                Stagehand.picture(anywhereNowOnScreen("take-kit"), "39-kit");
            }
            hand.robot().clickOn("Take the kit");
            hand.await("the hull has gear", () -> hand.bench().plan().hulls().get(hulls - 1).lowering().isPresent());
        }
        add(hand, "Borrow ground");
        add(hand, "Machine");
        hand.await("all is worked out", () -> hand.bench().plan().machines().size() == 1
                && hand.bench().answers().isAssessmentFresh(hand.bench().plan()));
        mendAll(hand);
        hand.settle();
        hand.screenshot("40-three-hulls");
        assertEquals(java.util.List.of(), refusals(hand));
        assertEquals(3, hand.bench().plan().hulls().size());
        hand.robot().push(KeyCode.CONTROL, KeyCode.S);
        hand.await("the plan is saved", () -> !hand.bench().document().isUnsaved());
        hand.close();
    }

    /** Takes what is offered for what still refuses, as long as something is. */
    private static void mendAll(Stagehand hand) {
        for (int i = 0; i < 4 && !Stagehand.onScreenThread(() -> refusals(hand)).isEmpty(); i++) {
            hand.await("the finding is picked", () -> WindowParts.pickFinding(hand.window(), f -> f.level()
                    == Finding.Level.REFUSE));
            hand.await("something is offered", () -> isAnywhere("finding-mend-0"));
            click(hand, "finding-mend-0");
            Stagehand.pause(300);
            hand.await("all is worked out", () -> hand.bench().answers().isAssessmentFresh(hand.bench().plan()));
        }
    }

    private static Node anywhereNowOnScreen(String id) {
        return Stagehand.onScreenThread(() -> anywhereNow(id));
    }

    private void survey() {
        Stagehand hand = Stagehand.open(SampleSite.write(work.resolve("survey-" + System.nanoTime())));
        hand.robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.V);
        hand.await("the window is there", () -> isAnywhere("survey-run"));
        Stagehand.pause(300);
        click(hand, "survey-run");
        var places = (javafx.scene.control.ListView<?>) anywhere("survey-places");
        hand.await("places are listed", () -> !places.getItems().isEmpty());
        Stagehand.pause(300);
        Stagehand.picture(places, "41-survey");
        click(hand, "survey-begin");
        hand.await("the plan of the best place is open", () -> hand.bench().document().file().endsWith(
                Path.of("ground-survey", "place-1.json")) && WindowParts.isGroundShown(hand.window()));
        assertEquals(2, hand.bench().plan().hulls().size());
        hand.close();
    }

    private void arrange() {
        Stagehand hand = Stagehand.open(SampleSite.write(work.resolve("arrange")));
        hand.await("the ground is read", () -> hand.bench().answers().ground().isPresent());
        hand.robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.A);
        hand.await("the window is there", () -> isAnywhere("search-begin"));
        Stagehand.pause(300);
        Node stop = anywhere("search-stop");
        assertTrue(stop.isDisabled(), "nothing runs yet");
        click(hand, "search-begin");
        Label words = (Label) anywhere("search-words");
        hand.await("it runs and says what it does", () -> !stop.isDisabled() && !words.getText().isEmpty());
        Stagehand.picture(words, "42-arrange");
        click(hand, "search-stop");
        hand.await("it stopped and says so", () -> stop.isDisabled() && words.getText().startsWith("Stopped"));
        hand.close();
    }

    private void handOver() {
        Path file = SampleSite.write(work.resolve("hand-over"));
        Stagehand hand = Stagehand.open(file);
        hand.await("all is worked out", () -> hand.bench().answers().isAssessmentFresh(hand.bench().plan()));
        hand.robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.X);
        hand.await("the question is there", () -> isAnywhere("handover-write"));
        hand.robot().clickOn(anywhere("handover-write"));
        Path folder = file.resolveSibling("plan-exchange-files");
        hand.await("the files are there", () -> Files.exists(folder.resolve("site.gpkg")) && isAnywhere(
                "notice-handover"));
        hand.await("the folder can be opened", () -> hand.stage().getScene().getRoot().lookupAll(".button").stream()
                .anyMatch(b -> ((Button) b).getText().equals("Open folder")));
        hand.screenshot("35-handed-over");
        // Closer by the key that has the plus on this keyboard, from wherever the keys are.
        double before = Stagehand.onScreenThread(() -> hand.map().camera().metresPerPixel());
        hand.robot().push(KeyCode.CONTROL, KeyCode.EQUALS);
        hand.await("the map is closer", () -> hand.map().camera().metresPerPixel() < before);
        hand.robot().push(KeyCode.F8);
        hand.await("the text is larger", () -> hand.stage().getScene().getRoot().getStyle().matches(".*1[6-9].*"));
        hand.close();
    }

    private void firstStart() {
        System.setProperty("user.home", work.resolve("home").toString());
        System.setProperty("bermwright.demo", SampleSite.write(work.resolve("shipped")).toString());
        Stagehand hand = Stagehand.empty(bermwright.editor.model.Settings.forgotten());
        hand.screenshot("36-first-start");
        for (String way : java.util.List.of("welcome-new", "welcome-open", "welcome-demo")) {
            assertTrue(hand.node(way).isFocusTraversable(), way);
        }
        hand.robot().clickOn(hand.node("welcome-demo"));
        hand.await("the copy is open", () -> WindowParts.isGroundShown(hand.window()));
        assertEquals(work.resolve("home/bermwright-demo/plan.json"), hand.bench().document().file());
        hand.pickHull("A");
        hand.settle();
        for (String heading : WindowParts.headings(hand.window())) {
            Stagehand.onScreenThread(() -> {
                WindowParts.showAnswers(hand.window(), heading);
                return true;
            });
            hand.settle();
            assertEquals(java.util.List.of(), Stagehand.onScreenThread(() -> nameless(hand)), heading);
        }
        hand.close();
    }

    private static boolean isSeen(Node node) {
        return node == null || node.isVisible() && isSeen(node.getParent());
    }

    /** Controls that can have the keys and that a screen reader would have no name for. */
    private static java.util.List<String> nameless(Stagehand hand) {
        java.util.Set<Node> labelled = new java.util.HashSet<>();
        hand.stage().getScene().getRoot().lookupAll("*").forEach(n -> {
            if (n instanceof Label label && label.getLabelFor() != null) {
                labelled.add(label.getLabelFor());
            }
        });
        return hand.stage().getScene().getRoot().lookupAll("*").stream()
                .filter(n -> n instanceof javafx.scene.control.Control && n.isFocusTraversable() && isSeen(n))
                .filter(n -> n.getAccessibleText() == null || n.getAccessibleText().isBlank())
                .filter(n -> !(n instanceof javafx.scene.control.Labeled l && l.getText() != null
                        && !l.getText().isBlank()))
                .filter(n -> !labelled.contains(n)).map(n -> n.getClass().getSimpleName() + " " + n.getId()).toList();
    }

    private void smallAndDark() {
        Stagehand hand = Stagehand.open(SampleSite.write(work.resolve("small")));
        hand.await("all is worked out", () -> hand.bench().answers().isAssessmentFresh(hand.bench().plan()));
        Stagehand.onScreenThread(() -> {
            hand.stage().setWidth(1024);
            hand.stage().setHeight(700);
            WindowParts.dress(hand.window(), true, 1);
            WindowParts.showAnswers(hand.window(), "Cover");
            return true;
        });
        hand.await("nothing is being drawn", () -> !WindowParts.isBusy(hand.window()));
        hand.settle();
        hand.screenshot("37-dark-drawings");
        Stagehand.onScreenThread(() -> {
            WindowParts.dress(hand.window(), true, 2);
            WindowParts.showAnswers(hand.window(), "Findings");
            hand.bench().tell("Move hull A was not done. This stands here to see whether a notice keeps whole lines"
                    + " where there is little room.");
            return true;
        });
        hand.settle();
        hand.screenshot("38-small-and-large");
        Label words = (Label) hand.node("notice-trouble").lookup(".label");
        assertTrue(words.getWidth() > 5.5 * words.getFont().getSize(), "a line of the notice holds whole words");
        assertTrue(Stagehand.onScreenThread(() -> hand.stage().getMinWidth() >= 640));
        hand.robot().push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.R);
        hand.await("the question is there", () -> isAnywhere("handover-write"));
        Node root = Stagehand.onScreenThread(() -> anywhereNow("handover-write").getScene().getRoot());
        assertTrue(root.getStyleClass().contains("dark"), root.getStyleClass().toString());
        Stagehand.onScreenThread(() -> {
            var picture = root.getScene().snapshot(null);
            assertTrue(picture.getPixelReader().getColor(3, (int) picture.getHeight() - 3).getBrightness() < 0.5,
                    "a dialog of a dark window is dark");
            return true;
        });
        hand.robot().push(KeyCode.ESCAPE);
        hand.close();
    }

    private static Node anywhereNow(String id) {
        return Window.getWindows().stream().flatMap(w -> w.getScene().getRoot().lookupAll("*").stream())
                .filter(n -> id.equals(n.getId())).findFirst().orElseThrow();
    }

    private void accept(Stagehand hand) {
        int before = hand.bench().shownFindings().size();
        pickWinch(hand);
        click(hand, "finding-accept");
        hand.await("the question is there", () -> isAnywhere("judge-name"));
        hand.robot().write("A. Reviewer");
        hand.robot().push(KeyCode.TAB);
        hand.robot().write("the winch is hired, see the log");
        Stagehand.pause(200);
        hand.robot().clickOn("Accept");
        hand.await("it is kept", () -> Files.exists(JudgementFiles.beside(hand.bench().document().file())));
        hand.await("it is out of the way", () -> hand.bench().shownFindings().size() == before - 1);
        assertEquals("A. Reviewer", JudgementFiles.of(hand.bench().document().file()).judgements().get(0).name());
        click(hand, "finding-accepted");
        hand.await("it is seen again when asked for", () -> hand.bench().shownFindings().size() == before);
        hand.settle();
        hand.screenshot("33-accepted");
        assertFalse(((Label) hand.node("finding-summary")).getText().isEmpty());
    }

    private static void pickWinch(Stagehand hand) {
        hand.await("the winch is picked", () -> WindowParts.pickFinding(hand.window(), FormScenarios::isWeakWinch));
    }
}
