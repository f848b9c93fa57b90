// SPDX-License-Identifier: Apache-2.0
package bermwright.filestore;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Locale;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of what is being written beside its place, and the removal of what a killed run left there. */
final class Drafts {
    /** Hidden, with the name of its place, the process that writes it, and a name of its own. */
    private static final Pattern ENDING = Pattern.compile("\\.(\\d+)\\.[0-9a-f-]{36}\\.part");

    private Drafts() {
    }

    /** A new name beside a place, for this process. */
    static Path beside(Path place) {
        return place.resolveSibling(String.format(Locale.ROOT, ".%s.%d.%s.part", place.getFileName(),
                ProcessHandle.current().pid(),
                UUID.randomUUID()));
    }

    /**
     * Removes what runs that are no longer there left beside a place; what cannot be removed stays.
     *
     * @param storage the disk
     * @param place   the place
     */
    static void clear(Storage storage, Path place) {
        String start = "." + place.getFileName();
        try (DirectoryStream<Path> beside = Files.newDirectoryStream(place.getParent(),
                path -> path.getFileName().toString().startsWith(start))) {
            for (Path path : beside) {
                Matcher ending = ENDING.matcher(path.getFileName().toString().substring(start.length()));
                if (ending.matches() && !isRunning(ending.group(1))) {
                    remove(storage, path);
                }
            }
        } catch (IOException | java.nio.file.DirectoryIteratorException stays) {
            // It does no harm there; the write itself says what is wrong with the folder.
            return;
        }
    }

    private static boolean isRunning(String process) {
        try {
            return ProcessHandle.of(Long.parseLong(process)).isPresent();
        } catch (NumberFormatException notAProcess) {
            return true;
        }
    }

    /**
     * Removes a file, or a folder with all in it; links in it are removed, never followed.
     *
     * @param storage the disk
     * @param path    what is removed
     * @throws IOException if something cannot be removed
     */
    static void remove(Storage storage, Path path) throws IOException {
        if (!Files.exists(path, java.nio.file.LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        Files.walkFileTree(path, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                storage.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path folder, IOException failed) throws IOException {
                storage.delete(folder);
                return FileVisitResult.CONTINUE;
            }
        });
    }
}
