// SPDX-License-Identifier: Apache-2.0
package bermwright.filestore;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * Replaces a file whole: the old content or the new stands there, whatever stops the work.
 *
 * <p>The content is written beside the file, synced, and moved over it; the folder is synced last. A link is followed,
 * so that the file behind it is replaced and the link stays; the file keeps its rights, and one that may not be
 * written is refused.
 */
public final class WholeFile {
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
        try (DraftFile draft = new DraftFile(storage, file)) {
            content.writeTo(draft.channel());
            draft.finish();
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
}
