// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.edit.Move;
import bermwright.editor.edit.Part;
import bermwright.editor.edit.PartOutline;
import bermwright.editor.edit.ShiftCorner;
import bermwright.foundation.InputException;
import bermwright.foundation.Point;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PlanDocumentTest {
    private static final int MANY = 500;

    @TempDir
    private Path folder;
    private Path file;

    @BeforeEach
    void write() {
        file = SampleSite.write(folder);
    }

    private static Move step(double east) {
        return new Move(Part.hull("A"), east, 0);
    }

    private static double east(PlanDocument document) {
        return document.plan().hull("A").orElseThrow().baseCentre().east();
    }

    @Test
    void undoesAndRedoesWithoutLimitAndByName() {
        try (PlanDocument document = PlanDocument.open(file)) {
            for (int i = 0; i < MANY; i++) {
                document.make(step(1));
            }
            assertEquals(120 + MANY, east(document));
            assertEquals(Optional.of("Move Hull A"), document.history().undoWords());
            for (int i = 0; i < MANY; i++) {
                document.undo();
            }
            assertEquals(120, east(document));
            assertEquals(Optional.empty(), document.undo());
            assertFalse(document.isUnsaved(), "all the way back there is nothing to save");
            document.redo();
            assertEquals(121, east(document));
            document.make(step(5));
            assertEquals(Optional.empty(), document.history().redoWords(), "a new step ends what could be redone");
        }
    }

    @Test
    void aStepThatCouldNotBeReadAgainIsRefused() {
        try (PlanDocument document = PlanDocument.open(file)) {
            Part boulders = new Part(Part.Kind.KEEP_OUT, "boulders");
            assertThrows(InputException.class,
                    () -> document.make(new ShiftCorner(boulders, 0, new Point(340, 300))), "it would cross itself");
            assertEquals(SampleSite.plan(), document.plan());
            assertEquals(4, PartOutline.corners(document.plan(), boulders).size());
        }
    }

    @Test
    void savesWhatIsThereAndEndsTheJournal() {
        try (PlanDocument document = PlanDocument.open(file)) {
            document.make(step(2));
            assertTrue(document.isUnsaved());
            document.settleJournal();
            assertTrue(Files.exists(EditJournal.beside(file)));
            assertEquals(Optional.empty(), document.save());
            assertFalse(document.isUnsaved());
            assertFalse(Files.exists(EditJournal.beside(file)));
            assertEquals(document.plan(), PlanFiles.read(file));
            assertEquals(Optional.empty(), document.changedOutside());
        }
    }

    @Test
    void takesUpTheStepsOfAKilledProgram() throws IOException {
        EditJournal killed = new EditJournal(file, EditJournal.mark(Files.readString(file)));
        Plan one = step(1).applied(SampleSite.plan());
        Plan two = step(1).applied(one);
        killed.write(new EditJournal.Step("first", PlanFiles.text(one)));
        killed.write(new EditJournal.Step("second", PlanFiles.text(two)));
        killed.close();
        Files.writeString(EditJournal.beside(file), "{\"step\":\"third\",\"pl", StandardOpenOption.APPEND);
        try (PlanDocument document = PlanDocument.open(file)) {
            EditJournal.Content content = document.leftBehind().orElseThrow();
            assertEquals(2, content.steps().size(), "the torn line is left out");
            assertTrue(document.fits(content));
            assertEquals(2, document.recover(content));
            assertEquals(122, east(document));
            document.undo();
            assertEquals(121, east(document), "each step can be undone");
            document.settleJournal();
            assertEquals(3, EditJournal.leftBehind(file, EditJournal.mark(Files.readString(file))).orElseThrow()
                    .steps().size(), "the journal went on");
            try (Stream<Path> all = Files.list(folder)) {
                assertEquals(List.of(), all.filter(f -> f.toString().contains("set-aside")).toList());
            }
        }
    }

    @Test
    void editingWithoutAnswerKeepsTheJournalLeftBehind() throws IOException {
        EditJournal killed = new EditJournal(file, "");
        killed.write(new EditJournal.Step("first", PlanFiles.text(step(9).applied(SampleSite.plan()))));
        killed.close();
        try (PlanDocument document = PlanDocument.open(file)) {
            document.make(step(1));
            document.settleJournal();
            assertTrue(Files.readString(aside("")).contains("first"));
        }
    }

    @Test
    void whatWasSetAsideIsNotWrittenOverByWhatIsSetAsideLater() throws IOException {
        for (String words : List.of("first", "second")) {
            EditJournal killed = new EditJournal(file, "");
            killed.write(new EditJournal.Step(words, PlanFiles.text(step(9).applied(SampleSite.plan()))));
            killed.close();
            try (PlanDocument document = PlanDocument.open(file)) {
                assertEquals(aside(words.equals("first") ? "" : "-2"), document.setAside());
            }
        }
        assertTrue(Files.readString(aside("")).contains("first"));
        assertTrue(Files.readString(aside("-2")).contains("second"));
    }

    private Path aside(String number) {
        return file.resolveSibling(EditJournal.beside(file).getFileName() + ".set-aside" + number);
    }

    @Test
    void stepsAreWrittenInTheirOrderAndAllOfThemByTheEnd() throws IOException {
        try (EditJournal journal = new EditJournal(file, "")) {
            for (int i = 0; i < 200; i++) {
                journal.write(new EditJournal.Step("step " + i, "{}"));
            }
        }
        List<EditJournal.Step> steps = EditJournal.leftBehind(file, "").orElseThrow().steps();
        assertEquals(200, steps.size());
        for (int i = 0; i < 200; i++) {
            assertEquals("step " + i, steps.get(i).words());
        }
    }

    @Test
    void aStepTakenBackAndMadeAgainIsJournaledAnew() {
        try (PlanDocument document = PlanDocument.open(file)) {
            document.make(step(1));
            document.undo();
            document.settleJournal();
            assertFalse(Files.exists(EditJournal.beside(file)), "there is nothing to save");
            document.redo();
            document.settleJournal();
            assertEquals(1, EditJournal.leftBehind(file, "").orElseThrow().steps().size());
        }
    }

    @Test
    void aWindowClosedWithoutAnAnswerLeavesTheJournalForTheNext() {
        try (EditJournal killed = new EditJournal(file, "")) {
            killed.write(new EditJournal.Step("first", PlanFiles.text(step(9).applied(SampleSite.plan()))));
        }
        PlanDocument.open(file).close();
        assertEquals(1, EditJournal.leftBehind(file, "").orElseThrow().steps().size());
    }

    @Test
    void twoWindowsNeverWriteOneJournal() {
        try (PlanDocument first = PlanDocument.open(file); PlanDocument second = PlanDocument.open(file)) {
            first.make(step(1));
            first.settleJournal();
            assertTrue(EditJournal.isInUse(file));
            second.make(step(2));
            second.settleJournal();
            assertTrue(second.journalTrouble().orElseThrow().contains("another window"));
            assertEquals(Optional.empty(), first.journalTrouble());
        }
    }

    @Test
    void noticesAChangeFromOutsideAndKeepsEitherSide() throws IOException {
        try (PlanDocument document = PlanDocument.open(file)) {
            document.make(step(3));
            String theirs = PlanFiles.text(step(-7).applied(SampleSite.plan()));
            Files.writeString(file, theirs);
            String seen = document.changedOutside().orElseThrow();
            document.takeTheirs(seen);
            assertEquals(113, east(document));
            assertFalse(document.isUnsaved());
            document.undo();
            assertEquals(123, east(document), "the work in the window is one undo away");
            Files.writeString(file, SampleSite.text());
            document.keepMine(document.changedOutside().orElseThrow());
            assertEquals(Optional.empty(), document.changedOutside(), "not asked twice for the same text");
            assertTrue(document.isUnsaved());
        }
    }

    @Test
    void savingElsewhereKeepsTheGroundInReach() throws IOException {
        try (PlanDocument document = PlanDocument.open(file)) {
            Path other = Files.createDirectories(folder.resolve("variants/two")).resolve("other.json");
            document.saveAs(other);
            Plan read = PlanFiles.read(other);
            assertEquals("../../ground.asc", read.ground().elevationFile());
            assertTrue(Files.exists(other.resolveSibling(read.ground().elevationFile())));
            assertEquals(other.toAbsolutePath(), document.file());
            assertFalse(document.isUnsaved());
        }
    }

    @Test
    void aFailedSaveLeavesFileAndWorkAsTheyAre() throws IOException {
        try (PlanDocument document = PlanDocument.open(file)) {
            document.make(step(4));
            Path nowhere = folder.resolve("no/such/folder/plan.json");
            assertThrows(InputException.class, () -> document.saveAs(nowhere));
            assertEquals(124, east(document));
            assertTrue(document.isUnsaved());
            assertEquals(SampleSite.text(), Files.readString(file));
        }
    }
}
