// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.edit.Move;
import bermwright.editor.edit.Part;
import bermwright.filestore.FaultyStorage;
import bermwright.foundation.InputException;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Edits and saves on a disk that fails at each thing done to it: nothing acknowledged is ever lost. */
class PlanDocumentFaultTest {
    private static final double START = 120;
    private static final int EDITS = 4;
    private static final int MORE_THAN_ALL = 200;
    /** As many things are done to the disk at least. */
    private static final int LEAST_STEPS = 5;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(FaultyStorage.Fault.class)
    void nothingAcknowledgedIsLostWhateverFailsWhen(FaultyStorage.Fault fault) throws IOException {
        for (int at = 0; at < MORE_THAN_ALL; at++) {
            Path file = SampleSite.write(folder.resolve(fault + "-" + at));
            FaultyStorage storage = new FaultyStorage(fault, at);
            double safe = editAndSave(storage, file);
            if (!storage.hasFailed()) {
                assertTrue(at > 12, "every write, sync and move was to fail once; failed: " + at);
                return;
            }
            storage.restart();
            double found = afterRestart(file);
            assertTrue(found >= safe, "%s at %d: %s m east was acknowledged, %s m are left".formatted(fault, at, safe,
                    found));
        }
        throw new AssertionError("the work never got through");
    }

    /** Four edits, a save, four more; returns the place east that the document has called safe (m). */
    private static double editAndSave(FaultyStorage storage, Path file) {
        double safe = START;
        PlanDocument document = PlanDocument.open(storage, file);
        for (int round = 0; round < 2; round++) {
            for (int i = 0; i < EDITS; i++) {
                document.make(new Move(Part.hull("A"), 1, 0));
                document.settleJournal();
                if (document.journalTrouble().isEmpty()) {
                    safe = east(document.plan());
                }
            }
            if (round == 0) {
                try {
                    document.save();
                    safe = east(document.plan());
                } catch (InputException said) {
                    assertTrue(document.isUnsaved(), "what was not saved is still unsaved");
                }
            }
        }
        // Stopped here: neither saved nor closed.
        return safe;
    }

    private static double afterRestart(Path file) {
        Plan onDisk = PlanFiles.read(file);
        try (PlanDocument document = PlanDocument.open(file)) {
            Optional<EditJournal.Content> left = document.leftBehind().filter(c -> !document.isOutdated(c));
            return left.map(c -> east(PlanFiles.read(c.steps().get(c.steps().size() - 1).text(), "journal")))
                    .orElse(east(onDisk));
        }
    }

    /** Stopped while the steps left behind are taken up, they are still left behind. */
    @ParameterizedTest
    @EnumSource(FaultyStorage.Fault.class)
    void takingUpLosesNothingWhateverFailsWhen(FaultyStorage.Fault fault) throws IOException {
        for (int at = 0; at < MORE_THAN_ALL; at++) {
            Path file = SampleSite.write(folder.resolve(fault + "-" + at));
            double safe = leaveBehind(file);
            FaultyStorage storage = new FaultyStorage(fault, at);
            PlanDocument document = PlanDocument.open(storage, file);
            assertEquals(EDITS, document.recover(document.leftBehind().orElseThrow()));
            assertEquals(safe, east(document.plan()));
            assertTrue(afterRestart(file) >= safe, "%s at %d: taken up".formatted(fault, at));
            document.make(new Move(Part.hull("A"), 1, 0));
            document.settleJournal();
            if (document.journalTrouble().isEmpty()) {
                safe = east(document.plan());
            }
            if (!storage.hasFailed()) {
                assertTrue(at >= LEAST_STEPS, "every write and sync was to fail once; failed: " + at);
                return;
            }
            storage.restart();
            double found = afterRestart(file);
            assertTrue(found >= safe, "%s at %d: %s m east was safe, %s m are left".formatted(fault, at, safe, found));
        }
        throw new AssertionError("the work never got through");
    }

    /** A journal of four edits whose program was killed; returns the place east after them (m). */
    private static double leaveBehind(Path file) {
        Plan plan = SampleSite.plan();
        try (EditJournal journal = new EditJournal(file, EditJournal.mark(SampleSite.text()))) {
            for (int i = 0; i < EDITS; i++) {
                plan = new Move(Part.hull("A"), 1, 0).applied(plan);
                journal.write(new EditJournal.Step("step", PlanFiles.text(plan)));
            }
        }
        return east(plan);
    }

    /** A journal that grew too large is begun anew only when the new one is whole. */
    @ParameterizedTest
    @EnumSource(FaultyStorage.Fault.class)
    void aJournalBegunAnewLosesNothingWhateverFailsWhen(FaultyStorage.Fault fault) throws IOException {
        for (int at = 0; at < MORE_THAN_ALL; at++) {
            Path file = SampleSite.write(folder.resolve(fault + "-" + at));
            FaultyStorage storage = new FaultyStorage(fault, at);
            EditJournal journal = new EditJournal(storage, file, EditJournal.mark(SampleSite.text()), 1);
            double safe = START;
            Plan plan = SampleSite.plan();
            for (int i = 0; i < EDITS; i++) {
                plan = new Move(Part.hull("A"), 1, 0).applied(plan);
                journal.write(new EditJournal.Step("step", PlanFiles.text(plan)));
                journal.flush();
                if (journal.trouble().isEmpty()) {
                    safe = east(plan);
                }
            }
            journal.close();
            if (!storage.hasFailed()) {
                assertTrue(at >= LEAST_STEPS, "every write, sync and move was to fail once; failed: " + at);
                assertEquals(1, EditJournal.leftBehind(file, "").orElseThrow().steps().size(), "begun anew each time");
                return;
            }
            storage.restart();
            double found = afterRestart(file);
            assertTrue(found >= safe, "%s at %d: %s m east was safe, %s m are left".formatted(fault, at, safe, found));
        }
        throw new AssertionError("the work never got through");
    }

    @Test
    void aJournalWhosePlanWasSavedIsNotOfferedThoughItCouldNotBeRemoved() throws IOException {
        Path file = SampleSite.write(folder);
        Plan later = new Move(Part.hull("A"), 1, 0).applied(SampleSite.plan());
        Plan latest = new Move(Part.hull("A"), 1, 0).applied(later);
        String saved = PlanFiles.text(latest);
        EditJournal journal = new EditJournal(file, EditJournal.mark(SampleSite.text()));
        journal.write(new EditJournal.Step("first", PlanFiles.text(later)));
        journal.saving(EditJournal.mark(saved));
        journal.close();
        Files.writeString(file, saved);
        try (PlanDocument document = PlanDocument.open(file)) {
            assertEquals(Optional.empty(), document.leftBehind());
        }
        Files.writeString(file, SampleSite.text());
        try (PlanDocument document = PlanDocument.open(file)) {
            assertEquals(1, document.leftBehind().orElseThrow().steps().size(), "the save never came about");
        }
    }

    @Test
    void aJournalOlderThanTheSavedPlanIsOutdated() throws IOException {
        Path file = SampleSite.write(folder);
        try (EditJournal journal = new EditJournal(file, "another text")) {
            journal.write(new EditJournal.Step("first", PlanFiles.text(
                    new Move(Part.hull("A"), 1, 0).applied(SampleSite.plan()))));
        }
        Files.writeString(file, SampleSite.text() + "\n");
        try (PlanDocument document = PlanDocument.open(file)) {
            EditJournal.Content content = document.leftBehind().orElseThrow();
            Files.setLastModifiedTime(file, Files.getLastModifiedTime(EditJournal.beside(file)));
            assertTrue(document.isOutdated(content));
            Files.writeString(EditJournal.beside(file), "\n", StandardOpenOption.APPEND);
            Files.setLastModifiedTime(EditJournal.beside(file), java.nio.file.attribute.FileTime.fromMillis(
                    Files.getLastModifiedTime(file).toMillis() + 1000));
            assertEquals(false, document.isOutdated(content));
        }
    }

    @Test
    void savingAsksWhereAnotherProgramChangedTheFile() throws IOException {
        Path file = SampleSite.write(folder);
        try (PlanDocument document = PlanDocument.open(file)) {
            document.make(new Move(Part.hull("A"), 3, 0));
            String theirs = PlanFiles.text(new Move(Part.hull("A"), -7, 0).applied(SampleSite.plan()));
            Files.writeString(file, theirs);
            assertEquals(Optional.of(theirs), document.save());
            assertEquals(theirs, Files.readString(file), "nothing was written over it");
            assertTrue(document.isUnsaved());
            document.keepMine(theirs);
            assertEquals(Optional.empty(), document.save());
            assertEquals(START + 3, east(PlanFiles.read(file)));
        }
    }

    static double east(Plan plan) {
        return plan.hull("A").orElseThrow().baseCentre().east();
    }
}
