// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.filestore.Storage;
import bermwright.filestore.WholeFile;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Every edit since the last save, written beside the plan as it is made, so that nothing is lost when the program or
 * the machine stops.
 *
 * <p>One line of JSON for each step, with the whole plan after it; a line torn off by the stop is left out when
 * reading. The file is locked while it is written to, so that two windows never write one journal. Steps are written
 * one after the other on a lane of their own, so that nobody waits for the disk; {@link #flush} and {@link #close} do.
 */
public final class EditJournal implements AutoCloseable {
    /** A journal larger than this is begun anew from the latest plan (bytes). */
    private static final long LARGEST = 64L * 1024 * 1024;
    private static final String ENDING = ".bermwright-journal";
    private static final String DRAFT = ".draft";
    private static final Set<StandardOpenOption> APPENDING = Set.of(StandardOpenOption.CREATE,
            StandardOpenOption.WRITE, StandardOpenOption.APPEND);
    private static final ObjectMapper JSON = new ObjectMapper();
    /** A disk that has not taken a step by then is not waited for any longer (s). */
    private static final long LONGEST_WAIT = 20;

    private final Storage storage;
    private final Path file;
    private final String mark;
    private final long largest;
    private final ExecutorService lane = Executors.newSingleThreadExecutor(EditJournal::laneThread);
    private final AtomicInteger waiting = new AtomicInteger();
    private volatile Optional<String> trouble = Optional.empty();
    /** Used on the lane only. */
    private Optional<FileChannel> channel = Optional.empty();
    /** Whether the file that is there is this journal's, though others began it; used on the lane only. */
    private boolean isTakenUp;

    /**
     * A journal beside a plan; nothing is written before the first step.
     *
     * @param plan the plan file
     * @param mark what the plan file held when the journal began, as {@link #mark}
     */
    public EditJournal(Path plan, String mark) {
        this(Storage.DISK, plan, mark);
    }

    /**
     * A journal on a given disk.
     *
     * @param storage the disk
     * @param plan    the plan file
     * @param mark    what the plan file held when the journal began, as {@link #mark}
     */
    public EditJournal(Storage storage, Path plan, String mark) {
        this(storage, plan, mark, LARGEST);
    }

    /** A journal that is begun anew once it is larger than that (bytes). */
    EditJournal(Storage storage, Path plan, String mark, long largest) {
        this.storage = storage;
        this.file = beside(plan);
        this.mark = mark;
        this.largest = largest;
    }

    /**
     * A step of a journal.
     *
     * @param words what people call it
     * @param text  the plan after it, as the text of a plan file
     */
    public record Step(String words, String text) {
    }

    /**
     * What a journal left behind holds.
     *
     * @param mark  what the plan file held when it began
     * @param steps the steps in order
     */
    public record Content(String mark, List<Step> steps) {
    }

    /**
     * Where the journal of a plan is.
     *
     * @param plan the plan file
     * @return the journal's file
     */
    public static Path beside(Path plan) {
        return plan.resolveSibling(plan.getFileName() + ENDING);
    }

    /**
     * Names what a text holds, so that two texts can be told apart.
     *
     * @param text the text
     * @return its length and a hash
     */
    public static String mark(String text) {
        try {
            byte[] hash = java.security.MessageDigest.getInstance("SHA-256")
                    .digest(text.getBytes(StandardCharsets.UTF_8));
            return text.length() + "-" + java.util.HexFormat.of().formatHex(hash, 0, 12);
        } catch (java.security.NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("SHA-256 is part of every Java", impossible);
        }
    }

    /**
     * Reads what a journal left behind holds.
     *
     * @param plan the plan file
     * @param mark what the plan file holds now, as {@link #mark}: the steps that were saved to it are left out
     * @return its content, empty where there is none or it holds no whole step that was not saved
     */
    public static Optional<Content> leftBehind(Path plan, String mark) {
        Path file = beside(plan);
        List<Step> steps = new ArrayList<>();
        String began = "";
        try {
            if (!Files.isRegularFile(file)) {
                return Optional.empty();
            }
            for (String line : Files.readString(file).split("\n")) {
                JsonNode node = read(line);
                if (node.has("began")) {
                    began = node.get("began").asText();
                } else if (node.has("saving") && node.get("saving").asText().equals(mark)) {
                    // The plan file was replaced and the program stopped before this journal was removed.
                    began = mark;
                    steps.clear();
                } else if (node.has("plan")) {
                    steps.add(new Step(node.path("step").asText(), node.get("plan").asText()));
                }
            }
        } catch (IOException unreadable) {
            return Optional.empty();
        }
        return steps.isEmpty() ? Optional.empty() : Optional.of(new Content(began, List.copyOf(steps)));
    }

    /** A line; one that was cut off while it was written holds nothing, those before and after it are whole. */
    private static JsonNode read(String line) {
        try {
            return JSON.readTree(line);
        } catch (JsonProcessingException torn) {
            return MissingNode.getInstance();
        }
    }

    /**
     * Notes that the plan file is about to be replaced: should the program stop before the journal is removed, its
     * steps up to here are in the plan file. Waits until the note is on the disk.
     *
     * @param saved what the plan file will hold, as {@link #mark}
     */
    public void saving(String saved) {
        if (!lane.isShutdown()) {
            lane.execute(() -> {
                if (channel.isPresent()) {
                    try {
                        line(channel.get(), Map.of("saving", saved));
                        channel.get().force(false);
                    } catch (IOException notWritten) {
                        trouble = Optional.of(String.valueOf(notWritten.getMessage()));
                    }
                }
            });
            flush();
        }
    }

    /**
     * Whether another window is writing the journal of a plan.
     *
     * @param plan the plan file
     * @return true where its lock is held
     */
    public static boolean isInUse(Path plan) {
        Path file = beside(plan);
        if (!Files.exists(file)) {
            return false;
        }
        try (FileChannel probe = FileChannel.open(file, StandardOpenOption.WRITE); FileLock lock = probe.tryLock()) {
            return lock == null;
        } catch (OverlappingFileLockException ours) {
            return true;
        } catch (IOException unknown) {
            return false;
        }
    }

    private static Thread laneThread(Runnable work) {
        Thread thread = new Thread(work, "edit journal");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Writes a step soon, after those before it; what goes wrong is told by {@link #trouble}.
     *
     * @param step the step
     */
    public void write(Step step) {
        if (lane.isShutdown()) {
            trouble = Optional.of("the journal was ended");
            return;
        }
        waiting.incrementAndGet();
        lane.execute(() -> {
            boolean isLast = waiting.decrementAndGet() == 0;
            try {
                writeNow(step, isLast);
                trouble = Optional.empty();
            } catch (IOException notWritten) {
                trouble = Optional.of(String.valueOf(notWritten.getMessage()));
            }
        });
    }

    private void writeNow(Step step, boolean isLast) throws IOException {
        FileChannel to = open();
        if (to.size() > largest && isBegunAnew(step)) {
            return;
        }
        line(to, Map.of("step", step.words(), "plan", step.text()));
        if (isLast) {
            to.force(false);
        }
    }

    /**
     * Puts a journal of this step alone in the place of the one that grew too large. The steps in the old one stay
     * until the new one is whole; where it cannot be put there the old one goes on growing.
     */
    private boolean isBegunAnew(Step step) throws IOException {
        Path draft = file.resolveSibling(file.getFileName() + DRAFT);
        FileChannel anew;
        try {
            storage.delete(draft);
            anew = storage.open(draft, APPENDING);
        } catch (IOException notOpened) {
            return false;
        }
        try {
            if (anew.tryLock() == null) {
                throw new IOException(draft + " is written to by another window");
            }
            line(anew, Map.of("began", mark));
            line(anew, Map.of("step", step.words(), "plan", step.text()));
            anew.force(false);
            storage.move(draft, file);
        } catch (IOException | OverlappingFileLockException failed) {
            anew.close();
            return false;
        }
        closeChannel();
        channel = Optional.of(anew);
        storage.syncFolder(file.toAbsolutePath().getParent());
        return true;
    }

    /**
     * Goes on with the journal that was left behind, which holds all its steps already: there is no moment at which
     * they stand nowhere. Waits until that is on the disk; where it cannot be written to, {@link #trouble} says so and
     * the next step tries again.
     *
     * @return true where this journal is that one now; false where it holds steps of its own already
     */
    public boolean takeUp() {
        if (lane.isShutdown()) {
            return false;
        }
        AtomicBoolean isTaken = new AtomicBoolean();
        lane.execute(() -> {
            if (channel.isEmpty() && Files.isRegularFile(file)) {
                isTakenUp = true;
                isTaken.set(true);
                try {
                    channel = Optional.of(opened());
                } catch (IOException notWritten) {
                    trouble = Optional.of(String.valueOf(notWritten.getMessage()));
                }
            }
        });
        flush();
        return isTaken.get();
    }

    /**
     * Why the latest step is not on the disk.
     *
     * @return the reason, empty where it is there or still to be written
     */
    public Optional<String> trouble() {
        return trouble;
    }

    /** Waits until everything asked for so far is on the disk. */
    public void flush() {
        if (!lane.isShutdown()) {
            try {
                lane.submit(() -> { }).get(LONGEST_WAIT, TimeUnit.SECONDS);
            } catch (InterruptedException interrupted) {
                Thread.currentThread().interrupt();
            } catch (java.util.concurrent.ExecutionException | java.util.concurrent.TimeoutException stuck) {
                trouble = Optional.of("the disk does not answer");
            }
        }
    }

    private FileChannel open() throws IOException {
        if (channel.isEmpty()) {
            Path plan = file.resolveSibling(file.getFileName().toString().replace(ENDING, ""));
            if (isInUse(plan)) {
                throw new IOException(file + " is written to by another window");
            }
            if (Files.exists(file) && !isTakenUp) {
                // Somebody's steps, not taken up yet: kept under another name, never written over.
                setAside(plan);
            }
            channel = Optional.of(opened());
        }
        return channel.get();
    }

    /** The file, open and locked, with a line that says what the plan file holds. */
    private FileChannel opened() throws IOException {
        FileChannel opened = storage.open(file, APPENDING);
        try {
            if (opened.tryLock() == null) {
                throw new IOException(file + " is written to by another window");
            }
        } catch (IOException | OverlappingFileLockException held) {
            opened.close();
            throw new IOException(file + " is written to by another window", held);
        }
        try {
            line(opened, Map.of("began", mark));
            opened.force(false);
            storage.syncFolder(file.toAbsolutePath().getParent());
        } catch (IOException failed) {
            opened.close();
            throw failed;
        }
        return opened;
    }

    private static void line(FileChannel to, Map<String, String> fields) throws IOException {
        // The line end before it ends what an earlier write may have left torn.
        WholeFile.writeAll(to, ByteBuffer.wrap(("\n" + JSON.writeValueAsString(fields) + "\n")
                .getBytes(StandardCharsets.UTF_8)));
    }

    /** Removes what this journal has written soon, because the plan is saved or its edits are not wanted. */
    public void discard() {
        if (!lane.isShutdown()) {
            lane.execute(this::discardNow);
        }
    }

    private void discardNow() {
        if (channel.isEmpty()) {
            // Nothing was written: a file that is there is somebody's, left behind and not taken up yet.
            return;
        }
        closeChannel();
        try {
            storage.delete(file);
        } catch (IOException stays) {
            // Its steps are in the plan file, and it says so; the next journal puts it aside.
            return;
        }
    }

    /**
     * Puts a journal left behind out of the way without deleting it, or another one that was set aside before.
     *
     * @param plan the plan file
     * @return where it is now
     * @throws IOException if it cannot be moved
     */
    public static Path setAside(Path plan) throws IOException {
        Path aside = plan.resolveSibling(plan.getFileName() + ENDING + ".set-aside");
        for (int n = 2; Files.exists(aside); n++) {
            aside = plan.resolveSibling(plan.getFileName() + ENDING + ".set-aside-" + n);
        }
        return Files.move(beside(plan), aside);
    }

    /** Ends the journal once everything asked for is on the disk. */
    @Override
    public void close() {
        if (!lane.isShutdown()) {
            lane.execute(this::closeChannel);
            flush();
            lane.shutdown();
        }
    }

    private void closeChannel() {
        channel.ifPresent(open -> {
            try {
                open.close();
            } catch (IOException alreadyGone) {
                // Every step was forced to the disk when it was written.
                return;
            }
        });
        channel = Optional.empty();
    }
}
