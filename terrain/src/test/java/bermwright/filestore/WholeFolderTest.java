// SPDX-License-Identifier: Apache-2.0
package bermwright.filestore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class WholeFolderTest {
    private static final List<String> OLD = List.of("alder.svg", "birch.svg", WholeFolder.LIST, "sub/table.csv");
    private static final List<String> NEW = List.of("alder.svg", "cedar.svg", WholeFolder.LIST, "sub/table.csv");
    private static final int MORE_THAN_ALL = 60;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @EnumSource(FaultyStorage.Fault.class)
    void leavesOldOrNewWholeWhateverFailsWhen(FaultyStorage.Fault fault) throws IOException {
        int failures = 0;
        for (int at = 0; at < MORE_THAN_ALL; at++) {
            Path report = folder.resolve(fault + "-" + at);
            WholeFolder.write(report, content("birch.svg", "old"));
            FaultyStorage storage = new FaultyStorage(fault, at);
            try {
                WholeFolder.write(storage, report, content("cedar.svg", "new"));
            } catch (IOException said) {
                failures++;
            }
            if (!storage.hasFailed()) {
                assertEquals(NEW, files(report));
                assertTrue(failures > 8, "every write, sync and move was to fail once; failed: " + failures);
                return;
            }
            storage.restart();
            WholeFolder.recover(report);
            List<String> now = files(report);
            assertTrue(now.equals(OLD) || now.equals(NEW), fault + " at " + at + " left: " + now);
            String generation = Files.readString(report.resolve("alder.svg"));
            assertEquals(now.equals(OLD) ? "old" : "new", generation);
            assertEquals(generation, Files.readString(report.resolve("sub/table.csv")));
        }
        throw new AssertionError("the write never got through");
    }

    @Test
    void leavesNothingBesideIt() throws IOException {
        Path report = folder.resolve("report");
        WholeFolder.write(report, content("birch.svg", "old"));
        Path killed = folder.resolve(".report.%d.123e4567-e89b-12d3-a456-426614174000.part".formatted(Long.MAX_VALUE));
        Files.createDirectory(killed);
        Files.writeString(killed.resolve("half.svg"), "");
        WholeFolder.write(report, content("cedar.svg", "new"));
        try (Stream<Path> all = Files.list(folder)) {
            assertEquals(List.of("report"), all.map(path -> path.getFileName().toString()).toList());
        }
    }

    @Test
    void refusesAFolderWithFilesOfSomebodyElse() throws IOException {
        Path report = folder.resolve("report");
        WholeFolder.write(report, content("birch.svg", "old"));
        Files.writeString(report.resolve("my notes.txt"), "mine");
        DirectoryNotEmptyException refused = assertThrows(DirectoryNotEmptyException.class,
                () -> WholeFolder.write(report, content("cedar.svg", "new")));
        assertEquals(report.toRealPath() + " holds my notes.txt, which was not written by this program",
                refused.getMessage());
        assertEquals("mine", Files.readString(report.resolve("my notes.txt")));
    }

    @Test
    void takesAwayWhatOtherProgramsLeftBesideItsFilesAndNamesIt() throws IOException {
        Path report = folder.resolve("report");
        WholeFolder.write(report, content("birch.svg", "old"));
        List<String> left = List.of(".DS_Store", ".~lock.birch.svg#", "._birch.svg", "alder.qmd", "alder.svg-journal",
                "alder.svg-shm", "alder.svg-wal", "alder.svg.aux.xml", "alder.svg.lock", "alder.svg.ovr",
                "sub/Thumbs.db", "sub/table.csv.aux.xml");
        for (String file : left) {
            Files.writeString(report.resolve(file), "theirs");
        }
        assertEquals(left.stream().sorted().toList(), WholeFolder.check(report));
        WholeFolder.write(report, content("cedar.svg", "new"));
        assertEquals(NEW, files(report));
        assertEquals(List.of(), WholeFolder.check(report));
    }

    @ParameterizedTest
    @ValueSource(strings = {"other.svg.aux.xml", "sub/alder.svg.aux.xml", "other.qmd", "sub/alder.qmd", "alder.qml",
        "alder.svg.bak", "alder.xml", ".~lock.letter.odt#", "-wal", ".aux.xml", ".qmd", "._letter"})
    void refusesWhatLooksLikeASideFileButBelongsToNoFileOfOurs(String file) throws IOException {
        Path report = folder.resolve("report");
        WholeFolder.write(report, content("birch.svg", "old"));
        Files.writeString(report.resolve(file), "mine");
        DirectoryNotEmptyException refused = assertThrows(DirectoryNotEmptyException.class,
                () -> WholeFolder.check(report));
        assertEquals(report.toRealPath() + " holds " + file + ", which was not written by this program",
                refused.getMessage());
    }

    @Test
    void refusesASideFileThatIsALinkOrAFolder() throws IOException {
        Path report = folder.resolve("report");
        WholeFolder.write(report, content("birch.svg", "old"));
        Path mine = Files.writeString(folder.resolve("mine"), "mine");
        Path link = Files.createSymbolicLink(report.resolve("alder.svg.aux.xml"), mine);
        assertThrows(DirectoryNotEmptyException.class, () -> WholeFolder.check(report));
        Files.delete(link);
        Files.writeString(Files.createDirectory(report.resolve("alder.svg.ovr")).resolve("letter"), "mine");
        assertThrows(DirectoryNotEmptyException.class, () -> WholeFolder.check(report));
    }

    @Test
    void refusesAFolderWithoutItsList() throws IOException {
        Path home = Files.createDirectory(folder.resolve("home"));
        Files.writeString(home.resolve("letter"), "mine");
        assertThrows(DirectoryNotEmptyException.class, () -> WholeFolder.check(home));
        assertThrows(NotDirectoryException.class, () -> WholeFolder.check(home.resolve("letter")));
    }

    @Test
    void takesAnEmptyFolder() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        WholeFolder.write(empty, content("cedar.svg", "new"));
        assertEquals(NEW, files(empty));
    }

    private static WholeFolder.Content content(String second, String generation) {
        return draft -> {
            Files.writeString(draft.resolve("alder.svg"), generation);
            Files.writeString(draft.resolve(second), generation);
            Files.writeString(Files.createDirectory(draft.resolve("sub")).resolve("table.csv"), generation);
        };
    }

    private static List<String> files(Path of) throws IOException {
        try (Stream<Path> all = Files.walk(of)) {
            return all.filter(Files::isRegularFile).map(path -> of.relativize(path).toString()).sorted().toList();
        }
    }
}
