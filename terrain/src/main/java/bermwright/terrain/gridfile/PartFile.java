// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.filestore.DraftFile;
import bermwright.filestore.Storage;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;

/** A file that is being written, at any place in it, beside where it will stand: there whole or not at all. */
final class PartFile implements Closeable {
    private final DraftFile draft;

    PartFile(Path file) throws IOException {
        draft = new DraftFile(Storage.DISK, file);
    }

    FileChannel channel() {
        return draft.channel();
    }

    Path path() {
        return draft.path();
    }

    long put(ByteBuffer bytes, long at) throws IOException {
        long next = at;
        while (bytes.hasRemaining()) {
            next += draft.channel().write(bytes, next);
        }
        return next;
    }

    /** Everything is written: the file takes its place. */
    void finish() throws IOException {
        draft.finish();
    }

    @Override
    public void close() throws IOException {
        draft.close();
    }
}
