// SPDX-License-Identifier: Apache-2.0
package bermwright.filestore;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * Replaces a folder of our own whole: its old content or its new one, never a mixture.
 *
 * <p>The new folder is made beside the old one, every file in it synced; then the old one is named aside, the new one
 * takes its name, and the old one is removed. Between the two renamings the place is empty for a moment; where the
 * work is stopped just then, {@link #recover} and every later write put the old one back. A folder is ours by the list
 * of its files that stands in it; one that holds anything else is refused and left untouched, so that nobody's files
 * are lost. What other programs put beside our files without being asked (statistics of a raster, logs and locks of a
 * database, what a file manager keeps) goes with them, and {@link #check} names it.
 */
public final class WholeFolder {
    /** The list of its files that marks a folder as written by this program. */
    public static final String LIST = "files.txt";
    private static final String FIRST_LINE = "# Written by Bermwright. This folder is replaced as a whole;"
            + " keep files of your own elsewhere.";

    private WholeFolder() {
    }

    /** Fills a folder. */
    @FunctionalInterface
    public interface Content {
        /**
         * Writes all files.
         *
         * @param folder the new, empty folder
         * @throws IOException if something cannot be written
         */
        void writeTo(Path folder) throws IOException;
    }

    /**
     * Refuses a folder that could not be replaced, before long work begins.
     *
     * @param folder the folder; it need not be there
     * @return side files of other programs that go when it is replaced, by their paths from the folder; mostly none
     * @throws NotDirectoryException      if it is a file
     * @throws DirectoryNotEmptyException if it holds files that are not ours; the message names one
     * @throws IOException                if it cannot be written beside it
     */
    public static List<String> check(Path folder) throws IOException {
        Path place = place(folder);
        recover(Storage.DISK, place);
        Path parent = place.getParent();
        Files.createDirectories(parent);
        if (!Files.isWritable(parent)) {
            throw new java.nio.file.AccessDeniedException(parent.toString(), null, "the folder may not be written");
        }
        return Files.exists(place) ? sideFiles(place) : List.of();
    }

    /**
     * Replaces the folder.
     *
     * @param folder  the folder; made where it is not there
     * @param content writes the new content; what it throws is passed on, and the old content is then untouched
     * @throws IOException as {@link #check}, or if something cannot be written
     */
    public static void write(Path folder, Content content) throws IOException {
        write(Storage.DISK, folder, content);
    }

    /**
     * Replaces the folder on a given disk.
     *
     * @param storage the disk
     * @param folder  the folder
     * @param content writes the new content
     * @throws IOException as {@link #check}, or if something cannot be written
     */
    public static void write(Storage storage, Path folder, Content content) throws IOException {
        Path place = place(folder);
        check(place);
        Drafts.clear(storage, place);
        Path draft = Drafts.beside(place);
        try {
            Files.createDirectory(draft);
            content.writeTo(draft);
            list(storage, draft);
            sync(storage, draft);
            swap(storage, draft, place);
        } finally {
            discard(storage, draft);
        }
    }

    /**
     * Puts back the old folder where a run was stopped between the two renamings.
     *
     * @param folder the folder
     * @throws IOException if it cannot be put back
     */
    public static void recover(Path folder) throws IOException {
        recover(Storage.DISK, place(folder));
    }

    private static void recover(Storage storage, Path place) throws IOException {
        Path aside = aside(place);
        if (Files.isDirectory(aside)) {
            if (Files.exists(place)) {
                discard(storage, aside);
            } else {
                storage.move(aside, place);
            }
        }
    }

    private static void swap(Storage storage, Path draft, Path place) throws IOException {
        Path aside = aside(place);
        boolean isReplaced = Files.exists(place);
        if (isReplaced) {
            storage.move(place, aside);
        }
        try {
            storage.move(draft, place);
        } catch (IOException failed) {
            if (isReplaced) {
                storage.move(aside, place);
            }
            throw failed;
        }
        storage.syncFolder(place.getParent());
        discard(storage, aside);
    }

    private static Path place(Path folder) throws IOException {
        Path whole = folder.toAbsolutePath().normalize();
        Path place = Files.exists(whole) ? whole.toRealPath() : whole;
        if (place.getFileName() == null) {
            throw new DirectoryNotEmptyException(place + " is the root of the disk");
        }
        return place;
    }

    private static Path aside(Path place) {
        return place.resolveSibling("." + place.getFileName() + ".before");
    }

    /** Side files in a folder of ours; refuses one with files of somebody else. */
    private static List<String> sideFiles(Path place) throws IOException {
        if (!Files.isDirectory(place)) {
            throw new NotDirectoryException(place + " is a file");
        }
        Path list = place.resolve(LIST);
        Set<String> ours = new TreeSet<>();
        if (Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS)) {
            List<String> lines = Files.readAllLines(list, StandardCharsets.UTF_8);
            if (!lines.isEmpty() && lines.get(0).equals(FIRST_LINE)) {
                ours.addAll(lines.subList(1, lines.size()));
                ours.add(LIST);
            }
        }
        List<String> beside = files(place).stream().filter(file -> !ours.contains(file)).toList();
        for (String file : beside) {
            if (!SideFiles.holds(place, file, ours)) {
                throw new DirectoryNotEmptyException(place + " holds " + file
                        + ", which was not written by this program");
            }
        }
        return beside;
    }

    private static void list(Storage storage, Path draft) throws IOException {
        StringBuilder text = new StringBuilder(FIRST_LINE).append('\n');
        for (String file : files(draft)) {
            text.append(file).append('\n');
        }
        try (FileChannel channel = storage.open(draft.resolve(LIST),
                Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE))) {
            WholeFile.writeAll(channel, ByteBuffer.wrap(text.toString().getBytes(StandardCharsets.UTF_8)));
        }
    }

    private static List<String> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> !Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS))
                    .map(path -> folder.relativize(path).toString().replace('\\', '/')).sorted().toList();
        }
    }

    private static void sync(Storage storage, Path draft) throws IOException {
        List<Path> all;
        try (Stream<Path> walked = Files.walk(draft)) {
            all = walked.toList();
        }
        for (Path path : all) {
            if (Files.isDirectory(path)) {
                storage.syncFolder(path);
            } else {
                try (FileChannel channel = storage.open(path, Set.of(StandardOpenOption.WRITE))) {
                    channel.force(true);
                }
            }
        }
    }

    private static void discard(Storage storage, Path folder) {
        try {
            Drafts.remove(storage, folder);
        } catch (IOException stays) {
            // The next write to this place removes it.
            return;
        }
    }
}
