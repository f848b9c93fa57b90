// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;

/** Reads runs of numbers that stand in a file as they are. */
final class PlainBytes {
    private static final int MOST_AT_ONCE = 1 << 20;
    private static final ThreadLocal<ByteBuffer> BUFFER =
            ThreadLocal.withInitial(() -> ByteBuffer.allocateDirect(MOST_AT_ONCE));

    private final FileChannel channel;
    private final SampleKind kind;
    private final ByteOrder order;
    private final FileTrouble trouble;

    PlainBytes(FileChannel channel, SampleKind kind, ByteOrder order, FileTrouble trouble) {
        this.channel = channel;
        this.kind = kind;
        this.order = order;
        this.trouble = trouble;
    }

    void copy(long offset, int count, double[] into, int at) throws IOException {
        ByteBuffer buffer = BUFFER.get().order(order);
        int most = MOST_AT_ONCE / kind.bytes();
        for (int done = 0; done < count; done += most) {
            int now = Math.min(most, count - done);
            long from = offset + (long) done * kind.bytes();
            buffer.clear().limit(now * kind.bytes());
            while (buffer.hasRemaining()) {
                if (channel.read(buffer, from + buffer.position()) < 0) {
                    throw trouble.unreadable("heights", "the file ends at byte " + (from + buffer.position())
                            + " where heights are announced", "a whole file");
                }
            }
            kind.copy(buffer, 0, into, at + done, now);
        }
    }
}
