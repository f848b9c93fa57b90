// SPDX-License-Identifier: Apache-2.0
package bermwright.filestore;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
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
 * A file that is written piece by piece beside its place: {@link #finish} syncs it and puts it there whole; closed
 * without that, what stood there is untouched.
 */
public final class DraftFile implements Closeable {
    /** More links behind links than this are taken for a ring, as systems do. */
    private static final int MOST_LINKS = 40;

    private final Storage storage;
    private final Path place;
    private final Path draft;
    private final Optional<Set<PosixFilePermission>> rights;
    private final FileChannel channel;
    private boolean isMoved;

    /**
     * Opens the draft of a file.
     *
     * @param storage the disk
     * @param file    the file; behind a link, what the link names
     * @throws IOException if it cannot be opened or the file that stands there may not be written
     */
    public DraftFile(Storage storage, Path file) throws IOException {
        this.storage = storage;
        place = behindLinks(file.toAbsolutePath().normalize());
        if (Files.exists(place) && !Files.isWritable(place)) {
            throw new AccessDeniedException(place.toString(), null, "the file may not be written");
        }
        Drafts.clear(storage, place);
        rights = rights(place);
        draft = Drafts.beside(place);
        channel = opened();
    }

    private FileChannel opened() throws IOException {
        try {
            return storage.open(draft, Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE,
                    StandardOpenOption.READ), attributes(rights));
        } catch (IOException e) {
            discard();
            throw e;
        }
    }

    /**
     * Where its content goes, and may be read again.
     *
     * @return the draft, open
     */
    public FileChannel channel() {
        return channel;
    }

    /**
     * Where the draft stands, for messages.
     *
     * @return its path
     */
    public Path path() {
        return draft;
    }

    /**
     * Everything is written: the file takes its place.
     *
     * @throws IOException if it cannot be synced or moved; the old content or the new then stands there
     */
    public void finish() throws IOException {
        channel.force(true);
        channel.close();
        if (rights.isPresent()) {
            Files.setPosixFilePermissions(draft, rights.get());
        }
        storage.move(draft, place);
        isMoved = true;
        storage.syncFolder(place.getParent());
    }

    @Override
    public void close() throws IOException {
        try {
            channel.close();
        } finally {
            if (!isMoved) {
                discard();
            }
        }
    }

    private void discard() {
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
