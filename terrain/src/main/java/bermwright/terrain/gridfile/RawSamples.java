// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;

/** Numbers that stand in a file line after line as they are, with or without bytes between the lines. */
final class RawSamples implements Samples {
    /**
     * Where the numbers stand.
     *
     * @param width  numbers a line (1)
     * @param height lines (1)
     * @param offset byte of the first number
     * @param stride bytes from line to line
     */
    record Layout(int width, int height, long offset, long stride) {
    }

    private final FileChannel channel;
    private final Layout layout;
    private final SampleKind kind;
    private final PlainBytes bytes;

    RawSamples(FileChannel channel, Layout layout, SampleKind kind, ByteOrder order, FileTrouble trouble) {
        this.channel = channel;
        this.layout = layout;
        this.kind = kind;
        this.bytes = new PlainBytes(channel, kind, order, trouble);
    }

    @Override
    public int width() {
        return layout.width;
    }

    @Override
    public int height() {
        return layout.height;
    }

    @Override
    public SampleKind kind() {
        return kind;
    }

    @Override
    public int blockHeight() {
        return 1;
    }

    @Override
    public boolean isPlain() {
        return true;
    }

    @Override
    public void run(int line, int column, int count, double[] into, int at) throws IOException {
        bytes.copy(layout.offset + line * layout.stride + (long) column * kind.bytes(), count, into, at);
    }

    @Override
    public void close() throws IOException {
        channel.close();
    }
}
