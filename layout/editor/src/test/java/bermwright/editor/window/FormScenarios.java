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
        hand.robot().clickOn(hand.node("finding-field"));
        hand.await("the field has the keys", () -> hand.stage().getScene().getFocusOwner() != null
                && "hulls[0].lowering.lines.winch.rating_each_kN".equals(hand.stage().getScene().getFocusOwner()
                .getId()));
        hand.screenshot("32-field-opened");
        Button mend = (Button) hand.node("finding-mend-0");
        assertTrue(mend.getText().startsWith("Take winches rated for "), mend.getText());
        hand.robot().clickOn(mend);
        hand.await("the winch does", () -> weakWinches(hand) == 0);
        hand.robot().push(KeyCode.CONTROL, KeyCode.Z);
        hand.await("undo brings it back", () -> weakWinches(hand) > 0);
        accept(hand);
        hand.close();
    }

    private void accept(Stagehand hand) {
        int before = hand.bench().shownFindings().size();
        pickWinch(hand);
        hand.robot().clickOn(hand.node("finding-accept"));
        hand.await("the question is there", () -> isAnywhere("judge-name"));
        hand.robot().write("A. Reviewer");
        hand.robot().push(KeyCode.TAB);
        hand.robot().write("the winch is hired, see the log");
        Stagehand.pause(200);
        hand.robot().clickOn("Accept");
        hand.await("it is kept", () -> Files.exists(JudgementFiles.beside(hand.bench().document().file())));
        hand.await("it is out of the way", () -> hand.bench().shownFindings().size() == before - 1);
        assertEquals("A. Reviewer", JudgementFiles.of(hand.bench().document().file()).judgements().get(0).name());
        hand.robot().clickOn(hand.node("finding-accepted"));
        hand.await("it is seen again when asked for", () -> hand.bench().shownFindings().size() == before);
        hand.settle();
        hand.screenshot("33-accepted");
        assertFalse(((Label) hand.node("finding-summary")).getText().isEmpty());
    }

    private static void pickWinch(Stagehand hand) {
        hand.await("the winch is picked", () -> WindowParts.pickFinding(hand.window(), FormScenarios::isWeakWinch));
    }
}
