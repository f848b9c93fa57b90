// SPDX-License-Identifier: Apache-2.0
package bermwright.filestore;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;

/**
 * Replaces a file whole: the old content or the new stands there, whatever stops the work.
 *
 * <p>The content is written beside the file, synced, and moved over it; the folder is synced last. A link is followed,
 * so that the file behind it is replaced and the link stays; the file keeps its rights, and one that may not be
 * written is refused.
 */
public final class WholeFile {
    /** More links behind links than this are taken for a ring, as systems do. */
    private static final int MOST_LINKS = 40;

    private WholeFile() {
    }

    /** Writes the content of a file. */
    @FunctionalInterface
    public interface Content {
        /**
         * Writes all of it.
         *
         * @param channel the new, empty file
         * @throws IOException if it cannot be written
         */
        void writeTo(FileChannel channel) throws IOException;
    }

    /**
     * Writes a text, in UTF-8.
     *
     * @param file the file
     * @param text its new content
     * @throws IOException if it cannot be written; what stood there is then untouched
     */
    public static void write(Path file, String text) throws IOException {
        write(Storage.DISK, file, text);
    }

    /**
     * Writes a text, in UTF-8, to a given disk.
     *
     * @param storage the disk
     * @param file    the file
     * @param text    its new content
     * @throws IOException if it cannot be written; what stood there is then untouched
     */
    public static void write(Storage storage, Path file, String text) throws IOException {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        write(storage, file, channel -> writeAll(channel, ByteBuffer.wrap(bytes)));
    }

    /**
     * Writes what a writer gives.
     *
     * @param storage the disk
     * @param file    the file
     * @param content writes the new content; what it throws is passed on, and the file is then untouched
     * @throws IOException if it cannot be written; what stood there is then untouched
     */
    public static void write(Storage storage, Path file, Content content) throws IOException {
        Path place = behindLinks(file.toAbsolutePath().normalize());
        if (Files.exists(place) && !Files.isWritable(place)) {
            throw new AccessDeniedException(place.toString(), null, "the file may not be written");
        }
        Drafts.clear(storage, place);
        Optional<Set<PosixFilePermission>> rights = rights(place);
        Path draft = Drafts.beside(place);
        boolean isMoved = false;
        try {
            try (FileChannel channel = storage.open(draft,
                    Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE), attributes(rights))) {
                content.writeTo(channel);
                channel.force(true);
            }
            if (rights.isPresent()) {
                Files.setPosixFilePermissions(draft, rights.get());
            }
            storage.move(draft, place);
            isMoved = true;
            storage.syncFolder(place.getParent());
        } finally {
            if (!isMoved) {
                discard(storage, draft);
            }
        }
    }

    /**
     * Writes all of a buffer.
     *
     * @param channel where to, at its present end
     * @param bytes   what
     * @throws IOException if the disk fails
     */
    public static void writeAll(FileChannel channel, ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }

    private static void discard(Storage storage, Path draft) {
        try {
            storage.delete(draft);
        } catch (IOException stays) {
            // The next write to this place removes it.
            draft.toFile().deleteOnExit();
        }
    }

    private static Path behindLinks(Path file) throws IOException {
        Path place = file;
        for (int i = 0; i < MOST_LINKS; i++) {
            if (!Files.isSymbolicLink(place)) {
                return place;
            }
            place = place.resolveSibling(Files.readSymbolicLink(place)).normalize();
        }
        throw new FileSystemLoopException(file.toString());
    }

    private static Optional<Set<PosixFilePermission>> rights(Path place) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(place, PosixFileAttributeView.class,
                LinkOption.NOFOLLOW_LINKS);
        return view == null || !Files.exists(place) ? Optional.empty()
                : Optional.of(view.readAttributes().permissions());
    }

    private static FileAttribute<?>[] attributes(Optional<Set<PosixFilePermission>> rights) {
        return rights.map(r -> new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(r)})
                .orElseGet(() -> new FileAttribute<?>[0]);
    }
}
