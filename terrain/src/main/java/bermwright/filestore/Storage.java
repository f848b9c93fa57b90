// SPDX-License-Identifier: Apache-2.0
package bermwright.filestore;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.util.Set;

/**
 * The few things done to a disk when something is written: tests put one in place that fails at any of them.
 *
 * <p>Writes and syncs go through the channel that {@link #open} gives.
 */
public interface Storage {
    /** The disk of this machine. */
    Storage DISK = new Disk();

    /**
     * Opens a file to be written.
     *
     * @param file       the file
     * @param options    how, as for {@link FileChannel#open}
     * @param attributes rights of a new file
     * @return the channel; {@link FileChannel#force} syncs it
     * @throws IOException if it cannot be opened so
     */
    FileChannel open(Path file, Set<? extends OpenOption> options, FileAttribute<?>... attributes) throws IOException;

    /**
     * Moves a file or folder within its folder, in one step where the file system can.
     *
     * @param from what is moved
     * @param to   its new name; a file that stands there is replaced
     * @throws IOException if it cannot be moved; both are then as before
     */
    void move(Path from, Path to) throws IOException;

    /**
     * Removes a file or an empty folder; nothing happens where it is not there.
     *
     * @param path what is removed
     * @throws IOException if it cannot be removed
     */
    void delete(Path path) throws IOException;

    /**
     * Makes what was moved in a folder lasting, where the system can.
     *
     * @param folder the folder
     * @throws IOException if the disk fails
     */
    void syncFolder(Path folder) throws IOException;

    /** The real one. */
    final class Disk implements Storage {
        private static final boolean SYNCS_FOLDERS = !System.getProperty("os.name", "").startsWith("Windows");

        @Override
        public FileChannel open(Path file, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
                throws IOException {
            return FileChannel.open(file, options, attributes);
        }

        @Override
        public void move(Path from, Path to) throws IOException {
            try {
                Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
            }
        }

        @Override
        public void delete(Path path) throws IOException {
            Files.deleteIfExists(path);
        }

        @Override
        public void syncFolder(Path folder) throws IOException {
            if (SYNCS_FOLDERS) {
                try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                    channel.force(true);
                }
            }
        }
    }
}
