// SPDX-License-Identifier: Apache-2.0
package bermwright.filestore;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A disk that fails at the n-th thing done to it, in one of the ways disks do.
 *
 * <p>After a power cut nothing more can be done, and {@link #restart} leaves on the disk what a disk need have kept: of
 * what was written since the last sync a half; moves and new files of a folder never synced since are kept or lost.
 */
public final class FaultyStorage implements Storage {
    /** How it fails. */
    public enum Fault {
        /** There is no room: half of the bytes are written, then an exception. */
        FULL,
        /** No permission. */
        DENIED,
        /** The power goes, and moves that were not synced had reached the disk. */
        CUT_MOVES_KEPT,
        /** The power goes, and moves that were not synced had not reached the disk. */
        CUT_MOVES_LOST
    }

    private final Fault fault;
    private final int at;
    private int done;
    private boolean isOff;
    private final Map<Path, Long> lasting = new HashMap<>();
    private final Set<Path> created = new HashSet<>();
    private final List<Moved> moves = new ArrayList<>();

    private record Moved(Path from, Path to, Path before) {
    }

    /**
     * A disk.
     *
     * @param fault how it fails
     * @param at    at which thing, from 0
     */
    public FaultyStorage(Fault fault, int at) {
        this.fault = fault;
        this.at = at;
    }

    /**
     * How many things were done, the failed one included.
     *
     * @return the number (1)
     */
    public int done() {
        return done;
    }

    /**
     * Whether it has failed.
     *
     * @return true once the n-th thing was asked for
     */
    public boolean hasFailed() {
        return done > at;
    }

    private void step(String what) throws IOException {
        if (isOff) {
            throw new IOException("no power: " + what);
        }
        if (done++ == at) {
            isOff = fault == Fault.CUT_MOVES_KEPT || fault == Fault.CUT_MOVES_LOST;
            if (fault == Fault.DENIED) {
                throw new AccessDeniedException(what);
            }
            throw new IOException(fault + " at " + what);
        }
    }

    @Override
    public FileChannel open(Path file, Set<? extends OpenOption> options, FileAttribute<?>... attributes)
            throws IOException {
        step("open " + file);
        if (!Files.exists(file)) {
            created.add(file);
            lasting.put(file, 0L);
        } else {
            lasting.putIfAbsent(file, Files.isRegularFile(file) ? Files.size(file) : 0);
        }
        return new Channel(FileChannel.open(file, options, attributes), file);
    }

    @Override
    public void move(Path from, Path to) throws IOException {
        step("move " + from);
        Path before = to.resolveSibling(".kept-" + moves.size() + "-" + to.getFileName());
        if (Files.isRegularFile(to)) {
            Files.copy(to, before);
        }
        DISK.move(from, to);
        moves.add(new Moved(from, to, before));
        if (lasting.containsKey(from)) {
            lasting.put(to, lasting.remove(from));
        }
        created.remove(from);
    }

    @Override
    public void delete(Path path) throws IOException {
        step("delete " + path);
        DISK.delete(path);
        lasting.remove(path);
        created.remove(path);
    }

    @Override
    public void syncFolder(Path folder) throws IOException {
        step("sync " + folder);
        for (Moved moved : moves) {
            if (moved.to.getParent().equals(folder)) {
                Files.deleteIfExists(moved.before);
            }
        }
        moves.removeIf(m -> m.to.getParent().equals(folder));
        created.removeIf(f -> f.getParent().equals(folder));
    }

    /**
     * The machine starts again after a power cut.
     *
     * @throws IOException if the test's own folder cannot be written
     */
    public void restart() throws IOException {
        if (!isOff) {
            return;
        }
        for (Map.Entry<Path, Long> file : lasting.entrySet()) {
            if (Files.isRegularFile(file.getKey())) {
                try (FileChannel channel = FileChannel.open(file.getKey(), java.nio.file.StandardOpenOption.WRITE)) {
                    channel.truncate(file.getValue() + Math.max(0, channel.size() - file.getValue()) / 2);
                }
            }
        }
        for (int i = moves.size() - 1; i >= 0; i--) {
            Moved moved = moves.get(i);
            if (fault == Fault.CUT_MOVES_LOST) {
                Files.move(moved.to, moved.from);
                if (Files.exists(moved.before)) {
                    Files.move(moved.before, moved.to);
                }
            }
            Files.deleteIfExists(moved.before);
        }
        if (fault == Fault.CUT_MOVES_LOST) {
            for (Path file : created) {
                Files.deleteIfExists(file);
            }
        }
    }

    /** A channel of this disk. */
    private final class Channel extends FileChannel {
        private final FileChannel disk;
        private final Path file;

        Channel(FileChannel disk, Path file) {
            this.disk = disk;
            this.file = file;
        }

        private void beforeWrite(ByteBuffer bytes) throws IOException {
            if (done == at && fault != Fault.DENIED) {
                ByteBuffer half = bytes.duplicate();
                half.limit(half.position() + half.remaining() / 2);
                disk.write(half);
            }
            step("write " + file);
        }

        @Override
        public int write(ByteBuffer bytes) throws IOException {
            beforeWrite(bytes);
            return disk.write(bytes);
        }

        @Override
        public int write(ByteBuffer bytes, long position) throws IOException {
            step("write " + file);
            return disk.write(bytes, position);
        }

        @Override
        public long write(ByteBuffer[] bytes, int offset, int length) throws IOException {
            long total = 0;
            for (int i = offset; i < offset + length; i++) {
                total += write(bytes[i]);
            }
            return total;
        }

        @Override
        public void force(boolean metaData) throws IOException {
            step("sync " + file);
            disk.force(metaData);
            lasting.put(file, disk.size());
        }

        @Override
        public FileChannel truncate(long size) throws IOException {
            step("truncate " + file);
            disk.truncate(size);
            return this;
        }

        @Override
        public int read(ByteBuffer bytes) throws IOException {
            return disk.read(bytes);
        }

        @Override
        public long read(ByteBuffer[] bytes, int offset, int length) throws IOException {
            return disk.read(bytes, offset, length);
        }

        @Override
        public int read(ByteBuffer bytes, long position) throws IOException {
            return disk.read(bytes, position);
        }

        @Override
        public long position() throws IOException {
            return disk.position();
        }

        @Override
        public FileChannel position(long position) throws IOException {
            disk.position(position);
            return this;
        }

        @Override
        public long size() throws IOException {
            return disk.size();
        }

        @Override
        public long transferTo(long position, long count, WritableByteChannel target) throws IOException {
            return disk.transferTo(position, count, target);
        }

        @Override
        public long transferFrom(ReadableByteChannel source, long position, long count) throws IOException {
            step("write " + file);
            return disk.transferFrom(source, position, count);
        }

        @Override
        public MappedByteBuffer map(MapMode mode, long position, long size) throws IOException {
            return disk.map(mode, position, size);
        }

        @Override
        public FileLock lock(long position, long size, boolean isShared) throws IOException {
            return disk.lock(position, size, isShared);
        }

        @Override
        public FileLock tryLock(long position, long size, boolean isShared) throws IOException {
            return disk.tryLock(position, size, isShared);
        }

        @Override
        protected void implCloseChannel() throws IOException {
            disk.close();
        }
    }
}
