// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.editor.edit.PlanEdit;
import bermwright.filestore.Storage;
import bermwright.foundation.InputException;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanBeside;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A plan file being edited: its history, what is saved of it, its journal, and what others do to the file. */
public final class PlanDocument implements AutoCloseable {
    private final Storage storage;
    private Path file;
    private String onDisk;
    private Plan saved;
    private final PlanHistory history;
    private EditJournal journal;

    private PlanDocument(Storage storage, Path file, String onDisk) {
        Plan plan = PlanFiles.read(onDisk, file.toString());
        this.storage = storage;
        this.file = file;
        this.onDisk = onDisk;
        this.saved = plan;
        this.history = new PlanHistory(plan);
        this.journal = new EditJournal(storage, file, EditJournal.mark(onDisk));
    }

    /**
     * Opens a plan file; a journal left behind is not touched before {@link #recover} or {@link #setAside}.
     *
     * @param file the file
     * @return the document
     * @throws InputException if the file cannot be read
     */
    public static PlanDocument open(Path file) {
        return open(Storage.DISK, file);
    }

    /**
     * Opens a plan file on a given disk.
     *
     * @param storage what is written to
     * @param file    the file
     * @return the document
     * @throws InputException if the file cannot be read
     */
    public static PlanDocument open(Storage storage, Path file) {
        Path whole = file.toAbsolutePath().normalize();
        return new PlanDocument(storage, whole, text(whole));
    }

    private static String text(Path file) {
        return PlanFiles.text(file);
    }

    /**
     * The plan file.
     *
     * @return the file, as a whole path
     */
    public Path file() {
        return file;
    }

    /**
     * The plan as it is now.
     *
     * @return the plan
     */
    public Plan plan() {
        return history.plan();
    }

    /**
     * The steps made and taken back.
     *
     * @return the history; to be changed through this document only
     */
    public PlanHistory history() {
        return history;
    }

    /**
     * Whether the plan differs from the file.
     *
     * @return true where there is something to save
     */
    public boolean isUnsaved() {
        return !history.plan().equals(saved);
    }

    /**
     * Makes an edit.
     *
     * @param edit the edit
     * @return true where the plan became another
     * @throws InputException if a plan file could not hold the changed plan
     */
    public boolean make(PlanEdit edit) {
        return make(edit.words(), edit.applied(history.plan()));
    }

    /**
     * Makes a changed plan a step.
     *
     * @param words what people call the step
     * @param plan  the plan after it
     * @return true where the plan became another
     * @throws InputException if a plan file could not hold the changed plan
     */
    public boolean make(String words, Plan plan) {
        if (plan.equals(history.plan())) {
            return false;
        }
        // What could not be read again must not become a step: the next save would be the last.
        PlanFiles.read(PlanFiles.text(plan), "");
        history.make(words, plan);
        write(words);
        return true;
    }

    /**
     * Takes the last step back.
     *
     * @return its words, empty where there is none
     */
    public Optional<String> undo() {
        Optional<String> words = history.undo();
        words.ifPresent(w -> write("Undo: " + w));
        return words;
    }

    /**
     * Makes the step taken back last once more.
     *
     * @return its words, empty where there is none
     */
    public Optional<String> redo() {
        Optional<String> words = history.redo();
        words.ifPresent(w -> write("Redo: " + w));
        return words;
    }

    private void write(String words) {
        if (!isUnsaved()) {
            journal.discard();
            return;
        }
        journal.write(new EditJournal.Step(words, PlanFiles.text(history.plan())));
    }

    /**
     * Why edits are not journaled at present.
     *
     * @return the reason, empty where all is well
     */
    public Optional<String> journalTrouble() {
        return journal.trouble()
                .map(reason -> "Edits are not safe against a crash until you save: " + reason);
    }

    /** Waits until each step made so far is on the disk. */
    public void settleJournal() {
        journal.flush();
    }

    /**
     * Saves to the plan file, unless another program changed it since it was read or saved: then nothing is written,
     * and whoever asked must first choose between {@link #takeTheirs} and {@link #keepMine}.
     *
     * @return the text that another program wrote into the file, empty where the plan was saved
     * @throws InputException if it cannot be written; the work stays as it is
     */
    public Optional<String> save() {
        Optional<String> outside = changedOutside();
        if (outside.isEmpty()) {
            write(file, history.plan());
        }
        return outside;
    }

    /**
     * Saves to another file, which becomes the plan file; paths to files beside the plan are made to fit.
     *
     * @param other the file
     * @throws InputException if it cannot be written; the work stays as it is
     */
    public void saveAs(Path other) {
        Path target = other.toAbsolutePath().normalize();
        Plan moved = file.getParent().equals(target.getParent()) ? history.plan()
                : PlanBeside.moved(history.plan(), file.getParent(), target.getParent());
        write(target, moved);
        history.make("Save as " + target.getFileName(), moved);
        saved = history.plan();
    }

    private void write(Path target, Plan plan) {
        String text = PlanFiles.text(plan);
        journal.saving(EditJournal.mark(text));
        PlanFiles.write(storage, plan, target);
        journal.discard();
        journal.close();
        file = target;
        saved = plan;
        onDisk = text;
        journal = new EditJournal(storage, file, EditJournal.mark(onDisk));
    }

    /**
     * Steps that were made and never saved before the program stopped.
     *
     * @return what the journal left behind holds; empty where there is none
     */
    public Optional<EditJournal.Content> leftBehind() {
        return EditJournal.leftBehind(file, EditJournal.mark(onDisk))
                .filter(c -> !c.steps().get(c.steps().size() - 1).text().equals(onDisk));
    }

    /**
     * Whether the plan file was written after the last step of a journal left behind that does not fit it: such a
     * journal is put aside, never offered, since taking it up would undo what was saved since.
     *
     * @param content what the journal holds
     * @return true where the journal is older than what is saved
     */
    public boolean isOutdated(EditJournal.Content content) {
        try {
            return !fits(content) && Files.getLastModifiedTime(file)
                    .compareTo(Files.getLastModifiedTime(EditJournal.beside(file))) >= 0;
        } catch (IOException unknown) {
            return false;
        }
    }

    /**
     * Whether the plan file is still what it was when a journal began.
     *
     * @param content what the journal holds
     * @return false where somebody changed the file in between
     */
    public boolean fits(EditJournal.Content content) {
        return content.mark().equals(EditJournal.mark(onDisk));
    }

    /**
     * Takes up the steps of a journal left behind; each can be undone.
     *
     * @param content what the journal holds
     * @return how many steps were taken up (1)
     */
    public int recover(EditJournal.Content content) {
        int taken = 0;
        String last = "";
        for (EditJournal.Step step : content.steps()) {
            Plan plan = PlanFiles.read(step.text(), file.toString());
            if (!plan.equals(history.plan())) {
                history.make(step.words(), plan);
                last = step.words();
                taken++;
            }
        }
        if (taken > 0 && !journal.takeUp()) {
            // Edits were made before these were taken up: the plan after all of them is one more step.
            write(last);
            journal.flush();
        }
        return taken;
    }

    /**
     * Puts a journal left behind aside without taking it up; its file is kept under another name.
     *
     * @return where it is now
     * @throws IOException if it cannot be moved
     */
    public Path setAside() throws IOException {
        return EditJournal.setAside(file);
    }

    /**
     * Looks whether somebody else changed the plan file since it was read or saved.
     *
     * @return the text that stands there now, empty where it is the same or not there for the moment
     */
    public Optional<String> changedOutside() {
        try {
            String now = PlanFiles.text(file);
            return now.equals(onDisk) ? Optional.empty() : Optional.of(now);
        } catch (InputException notThere) {
            return Optional.empty();
        }
    }

    /**
     * Keeps the work in the window although the file holds something else; not asked again for the same text.
     *
     * @param outside the text that stands in the file
     */
    public void keepMine(String outside) {
        onDisk = outside;
        saved = readable(outside).orElse(saved);
        write("Kept over a change of the file");
    }

    private Optional<Plan> readable(String outside) {
        try {
            return Optional.of(PlanFiles.read(outside, file.toString()));
        } catch (InputException notAPlan) {
            return Optional.empty();
        }
    }

    /**
     * Takes what somebody else wrote into the file; the work in the window is one undo away.
     *
     * @param outside the text that stands in the file
     * @throws InputException if it is not a plan
     */
    public void takeTheirs(String outside) {
        Plan theirs = PlanFiles.read(outside, file.toString());
        onDisk = outside;
        saved = theirs;
        make("Take the file as changed outside", theirs);
    }

    /** Ends the journal; unsaved edits are given up. */
    @Override
    public void close() {
        journal.discard();
        journal.close();
    }
}
