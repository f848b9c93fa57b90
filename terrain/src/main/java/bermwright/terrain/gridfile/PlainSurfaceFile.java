// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.GridFrame;
import bermwright.terrain.grid.NodeRange;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;

/** Writes a surface as a GeoTIFF of strips of plain numbers, each put where it belongs as soon as it is there. */
final class PlainSurfaceFile extends SurfaceFile {
    private static final long MOST_OF_CLASSIC = 0xFFF0_0000L;
    private static final int BYTES_OF_A_STRIP = 1 << 16;
    private static final float NO_DATA = -9999;
    private static final ThreadLocal<ByteBuffer> BUFFER = ThreadLocal.withInitial(() -> ByteBuffer.allocateDirect(0));

    private final PartFile out;
    private final GridFrame frame;
    private final SurfaceContent content;
    private final int rowsAtATime;
    private final int columnsAtATime;
    private final long start;

    PlainSurfaceFile(Path file, Layer layer, int rowsAtATime, int columnsAtATime) throws IOException {
        this.frame = layer.frame();
        this.content = layer.content();
        this.rowsAtATime = rowsAtATime;
        this.columnsAtATime = columnsAtATime;
        long rowBytes = (long) frame.columns() * content.bytes();
        int rowsOfAStrip = (int) Math.max(1, Math.min(frame.rows(), BYTES_OF_A_STRIP / rowBytes));
        int strips = (frame.rows() - 1) / rowsOfAStrip + 1;
        boolean big = rowBytes * frame.rows() + 32L * strips > MOST_OF_CLASSIC;
        long[] offsets = new long[strips];
        long[] lengths = new long[strips];
        TiffDirectoryWriter directory = new TiffDirectoryWriter(big);
        TiffImageTags tags = new TiffImageTags(frame, layer.system(), content);
        tags.addKind(directory);
        tags.addPlace(directory);
        directory.shorts(TiffRaster.COMPRESSION, 1);
        directory.longs(TiffRaster.ROWS_PER_STRIP, rowsOfAStrip);
        directory.longs(TiffRaster.STRIP_OFFSETS, offsets);
        directory.longs(TiffRaster.STRIP_BYTE_COUNTS, lengths);
        long at = big ? 16 : 8;
        start = (at + directory.size() + 15) / 16 * 16;
        for (int i = 0; i < strips; i++) {
            offsets[i] = start + i * rowsOfAStrip * rowBytes;
            lengths[i] = Math.min(rowsOfAStrip, frame.rows() - i * rowsOfAStrip) * rowBytes;
        }
        directory.longs(TiffRaster.STRIP_OFFSETS, offsets);
        directory.longs(TiffRaster.STRIP_BYTE_COUNTS, lengths);
        out = new PartFile(file);
        try {
            out.put(TiffDirectoryWriter.head(big, at), 0);
            out.put(directory.bytes(at), at);
        } catch (IOException e) {
            out.close();
            throw e;
        }
    }

    @Override
    public int blockRows() {
        return rowsAtATime;
    }

    @Override
    public int blockColumns() {
        return columnsAtATime;
    }

    @Override
    public boolean isByBands() {
        return false;
    }

    @Override
    public void put(NodeRange block, float[] values) {
        int columns = block.columns();
        int size = block.rows() * columns * content.bytes();
        ByteBuffer buffer = BUFFER.get();
        if (buffer.capacity() < size) {
            buffer = ByteBuffer.allocateDirect(size);
            BUFFER.set(buffer);
        }
        buffer.clear().order(ByteOrder.LITTLE_ENDIAN).limit(size);
        for (int line = 0; line < block.rows(); line++) {
            int from = (block.rows() - 1 - line) * columns;
            if (content.kind() == SurfaceContent.Kind.BYTE) {
                putBytes(values, from, columns, buffer);
            } else {
                for (int i = from; i < from + columns; i++) {
                    values[i] = values[i] != values[i] ? NO_DATA : values[i];
                }
                buffer.asFloatBuffer().put(values, from, columns);
                buffer.position(buffer.position() + 4 * columns);
            }
        }
        long firstLine = frame.rows() - (long) block.firstRow() - block.rows();
        try {
            buffer.flip();
            int rowBytes = columns * content.bytes();
            int lines = columns == frame.columns() ? block.rows() : 1;
            for (int line = 0; line < block.rows(); line += lines) {
                buffer.limit((line + lines) * rowBytes).position(line * rowBytes);
                out.put(buffer, start + ((firstLine + line) * frame.columns() + block.firstColumn())
                        * content.bytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void putBytes(float[] values, int from, int count, ByteBuffer buffer) {
        byte[] bytes = new byte[count];
        for (int i = 0; i < count; i++) {
            bytes[i] = (byte) (int) values[from + i];
        }
        buffer.put(bytes);
    }

    @Override
    public void endOfBand() {
        // every block is written as it comes
    }

    @Override
    public void finish(Progress progress) throws IOException {
        out.finish();
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
