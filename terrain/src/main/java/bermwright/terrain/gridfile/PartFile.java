// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.UUID;

/** A file that is being written beside the place where it will stand: there whole or not at all. */
final class PartFile implements Closeable {
    private final Path file;
    private final Path part;
    private final FileChannel channel;

    PartFile(Path file) throws IOException {
        this.file = file;
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(Path.of("."));
        // Made like any other file, so that whoever may read the folder may read it.
        this.part = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
        this.channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE,
                StandardOpenOption.READ);
    }

    FileChannel channel() {
        return channel;
    }

    Path path() {
        return part;
    }

    long put(ByteBuffer bytes, long at) throws IOException {
        long next = at;
        while (bytes.hasRemaining()) {
            next += channel.write(bytes, next);
        }
        return next;
    }

    /** Everything is written: the file takes its place. */
    void finish() throws IOException {
        channel.close();
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }

    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(part);
    }
}
