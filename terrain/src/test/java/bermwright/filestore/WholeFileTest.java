// SPDX-License-Identifier: Apache-2.0
package bermwright.filestore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WholeFileTest {
    private static final String OLD = "the old content, whole";
    private static final String NEW = "something else, and longer than what stood there before";
    /** More things than a write does: the loop ends when none is left to fail. */
    private static final int MORE_THAN_ALL = 40;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(FaultyStorage.Fault.class)
    void leavesOldOrNewWholeWhateverFailsWhen(FaultyStorage.Fault fault) throws IOException {
        int failures = 0;
        for (int at = 0; at < MORE_THAN_ALL; at++) {
            Path file = folder.resolve(fault + "-" + at + ".json");
            Files.writeString(file, OLD);
            FaultyStorage storage = new FaultyStorage(fault, at);
            boolean isSaid = false;
            try {
                WholeFile.write(storage, file, NEW);
            } catch (IOException said) {
                isSaid = true;
            }
            if (!storage.hasFailed()) {
                assertEquals(NEW, Files.readString(file));
                break;
            }
            failures++;
            assertTrue(isSaid, "a failure at " + at + " must be said");
            storage.restart();
            String now = Files.readString(file);
            assertTrue(now.equals(OLD) || now.equals(NEW), fault + " at " + at + " left: " + now);
        }
        // Open, write, sync, move, sync the folder.
        assertEquals(5, failures);
    }

    @ParameterizedTest
    @EnumSource(FaultyStorage.Fault.class)
    void leavesNothingOrAllOfANewFile(FaultyStorage.Fault fault) throws IOException {
        for (int at = 0; at < MORE_THAN_ALL; at++) {
            Path file = folder.resolve("new-" + fault + "-" + at);
            FaultyStorage storage = new FaultyStorage(fault, at);
            try {
                WholeFile.write(storage, file, NEW);
            } catch (IOException said) {
                storage.restart();
            }
            assertTrue(!Files.exists(file) || Files.readString(file).equals(NEW), fault + " at " + at);
            if (!storage.hasFailed()) {
                return;
            }
        }
        throw new AssertionError("the write never got through");
    }

    /** A file of many pieces, such as a surface: whichever piece fails, the old file stands there whole. */
    @ParameterizedTest
    @EnumSource(FaultyStorage.Fault.class)
    void leavesTheOldFileWhicheverPieceFails(FaultyStorage.Fault fault) throws IOException {
        for (int at = 0; at < MORE_THAN_ALL; at++) {
            Path file = folder.resolve("pieces-" + fault + "-" + at);
            Files.writeString(file, OLD);
            FaultyStorage storage = new FaultyStorage(fault, at);
            try (DraftFile draft = new DraftFile(storage, file)) {
                for (String piece : NEW.split(" ")) {
                    WholeFile.writeAll(draft.channel(), ByteBuffer.wrap(piece.getBytes(StandardCharsets.UTF_8)));
                }
                draft.finish();
            } catch (IOException said) {
                storage.restart();
            }
            String now = Files.readString(file);
            assertTrue(now.equals(OLD) || now.equals(NEW.replace(" ", "")), fault + " at " + at + " left: " + now);
            if (!storage.hasFailed()) {
                return;
            }
        }
        throw new AssertionError("the write never got through");
    }

    @Test
    void leavesNoDraftAfterAFailureThatIsNoPowerCut() throws IOException {
        for (int at = 0; at < 4; at++) {
            FaultyStorage storage = new FaultyStorage(FaultyStorage.Fault.FULL, at);
            Path file = folder.resolve("plan.json");
            assertThrows(IOException.class, () -> WholeFile.write(storage, file, NEW));
            assertEquals(List.of(), names());
        }
    }

    @Test
    void removesWhatAKilledRunLeftButNotWhatARunningOneWrites() throws IOException {
        Path file = folder.resolve("plan.json");
        Path running = Drafts.beside(file);
        Files.writeString(running, "half");
        long gone = Long.MAX_VALUE;
        Files.writeString(folder.resolve(".plan.json.%d.123e4567-e89b-12d3-a456-426614174000.part".formatted(gone)),
                "");
        Files.writeString(folder.resolve(".plan.json.mine.part"), "");
        WholeFile.write(file, NEW);
        assertEquals(List.of(running.getFileName().toString(), ".plan.json.mine.part", "plan.json").stream().sorted()
                .toList(), names());
    }

    @Test
    void writesTheFileBehindALinkAndKeepsLinkAndRights() throws IOException {
        Path real = folder.resolve("real.json");
        Files.writeString(real, OLD);
        Files.setPosixFilePermissions(real, PosixFilePermissions.fromString("rw-r-----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("real.json"));
        WholeFile.write(link, NEW);
        assertTrue(Files.isSymbolicLink(link));
        assertEquals(NEW, Files.readString(real));
        assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(real)));
    }

    @Test
    void writesBehindALinkToAFileThatIsNotThereYet() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), Path.of("later.json"));
        WholeFile.write(link, NEW);
        assertTrue(Files.isSymbolicLink(link));
        assertEquals(NEW, Files.readString(folder.resolve("later.json")));
    }

    @Test
    void refusesARingOfLinks() throws IOException {
        Path one = folder.resolve("one");
        Files.createSymbolicLink(one, Path.of("two"));
        Files.createSymbolicLink(folder.resolve("two"), Path.of("one"));
        assertThrows(FileSystemLoopException.class, () -> WholeFile.write(one, NEW));
    }

    @Test
    void refusesAFileThatMayNotBeWritten() throws IOException {
        Path file = folder.resolve("plan.json");
        Files.writeString(file, OLD);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
        org.junit.jupiter.api.Assumptions.assumeFalse(Files.isWritable(file), "whoever runs this may write everything");
        assertThrows(AccessDeniedException.class, () -> WholeFile.write(file, NEW));
        assertEquals(OLD, Files.readString(file));
    }

    @Test
    void passesOnWhatTheWriterThrowsAndLeavesTheFile() throws IOException {
        Path file = folder.resolve("plan.json");
        Files.writeString(file, OLD);
        assertThrows(IllegalStateException.class, () -> WholeFile.write(Storage.DISK, file, channel -> {
            throw new IllegalStateException("cancelled");
        }));
        assertEquals(OLD, Files.readString(file));
        assertFalse(names().stream().anyMatch(name -> name.endsWith(".part")));
    }

    private List<String> names() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
