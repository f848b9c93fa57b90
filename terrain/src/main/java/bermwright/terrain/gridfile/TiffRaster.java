// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** The samples of a TIFF file's first image: one band of numbers in strips or tiles. */
final class TiffRaster {
    static final int WIDTH = 256;
    static final int HEIGHT = 257;
    static final int BITS = 258;
    static final int COMPRESSION = 259;
    static final int STRIP_OFFSETS = 273;
    static final int SAMPLES_PER_PIXEL = 277;
    static final int ROWS_PER_STRIP = 278;
    static final int STRIP_BYTE_COUNTS = 279;
    static final int PREDICTOR = 317;
    static final int TILE_WIDTH = 322;
    static final int TILE_HEIGHT = 323;
    static final int TILE_OFFSETS = 324;
    static final int TILE_BYTE_COUNTS = 325;
    static final int SAMPLE_FORMAT = 339;

    private static final int SLACK_OF_A_TILE = 1 << 22;

    /** How a stored number becomes a height; {@code NaN} for a missing one. */
    @FunctionalInterface
    interface Conversion {
        double height(double stored);
    }

    private final TiffDirectory directory;
    private final FileTrouble trouble;
    private final int width;
    private final int height;
    private final int compression;
    private final int predictor;
    private final SampleKind kind;
    private final int blockWidth;
    private final int blockHeight;
    private final boolean tiled;
    private long[] offsets;
    private long[] byteCounts;

    TiffRaster(TiffDirectory directory, FileTrouble trouble) throws IOException {
        this.directory = directory;
        this.trouble = trouble;
        width = size("image width", WIDTH);
        height = size("image height", HEIGHT);
        long bands = directory.whole(SAMPLES_PER_PIXEL, 1);
        if (bands != 1) {
            throw trouble.badValue("samples per pixel", bands,
                    "1, the height; a picture of several bands is no elevation model");
        }
        kind = SampleKind.of(directory.whole(SAMPLE_FORMAT, 1), directory.whole(BITS, 1), trouble);
        compression = (int) directory.whole(COMPRESSION, 1);
        if (compression != 1 && compression != 5 && compression != 8 && compression != 32946) {
            throw trouble.badValue("compression", compression,
                    "1 (none), 5 (LZW), 8 (deflate); gdal_translate -co COMPRESS=DEFLATE rewrites it");
        }
        predictor = compression == 1 ? 1 : (int) directory.whole(PREDICTOR, 1);
        if (predictor < 1 || predictor > 3 || predictor == 3 && !kind.isReal()) {
            throw trouble.badValue("predictor", predictor, "1, 2, or 3 with floating point");
        }
        tiled = directory.has(TILE_WIDTH) || directory.has(TILE_OFFSETS);
        blockWidth = tiled ? size("tile width", TILE_WIDTH) : width;
        blockHeight = tiled ? size("tile height", TILE_HEIGHT)
                : (int) Math.min(height, Math.max(1, directory.whole(ROWS_PER_STRIP, height)));
        checkSizes();
    }

    private int size(String what, int tag) throws IOException {
        long size = directory.whole(tag, 0);
        if (size < 1 || size > Integer.MAX_VALUE) {
            throw trouble.badValue(what, size, "1 to " + Integer.MAX_VALUE + " pixels");
        }
        return (int) size;
    }

    private void checkSizes() throws IOException {
        HeightLimits.checkSize(width, height, trouble);
        long blockBytes = (long) blockWidth * blockHeight * kind.bytes();
        if (blockBytes > (long) width * height * kind.bytes() + SLACK_OF_A_TILE
                || blockBytes > Integer.MAX_VALUE - 16) {
            throw trouble.badValue("block size", blockWidth + " x " + blockHeight, "blocks no larger than the image");
        }
        long blocks = (long) across() * down();
        int offsetTag = tiled ? TILE_OFFSETS : STRIP_OFFSETS;
        int countTag = tiled ? TILE_BYTE_COUNTS : STRIP_BYTE_COUNTS;
        if (directory.count(offsetTag) != blocks || directory.count(countTag) != blocks) {
            throw trouble.unreadable("it lists " + directory.count(offsetTag) + " offsets and "
                    + directory.count(countTag) + " lengths for " + blocks + " blocks of the image",
                    "one of each for every block");
        }
        offsets = directory.wholes(offsetTag);
        byteCounts = directory.wholes(countTag);
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    SampleKind kind() {
        return kind;
    }

    private int across() {
        return (int) (((long) width + blockWidth - 1) / blockWidth);
    }

    private int down() {
        return (int) (((long) height + blockHeight - 1) / blockHeight);
    }

    /** Decodes all blocks, on all processors, into a grid whose row 0 is the image's last line, or its first. */
    void fill(ElevationGrid.HeightSink sink, boolean firstLineIsNorth, Conversion conversion, Progress progress) {
        int blocks = across() * down();
        AtomicInteger done = new AtomicInteger();
        IntStream.range(0, blocks).parallel().forEach(block -> {
            progress.check();
            try {
                fillBlock(block, sink, firstLineIsNorth, conversion);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            progress.report((double) done.incrementAndGet() / blocks, "reading heights");
        });
    }

    private void fillBlock(int block, ElevationGrid.HeightSink sink, boolean firstLineIsNorth, Conversion conversion)
            throws IOException {
        int left = block % across() * blockWidth;
        int top = block / across() * blockHeight;
        int lines = Math.min(blockHeight, height - top);
        int columns = Math.min(blockWidth, width - left);
        double[] run = new double[columns];
        boolean sparse = offsets[block] == 0 && byteCounts[block] == 0;
        byte[] data = sparse ? new byte[0] : unpacked(block, tiled ? blockHeight : lines);
        long[] stored = new long[blockWidth];
        byte[] line = new byte[blockWidth * kind.bytes()];
        for (int y = 0; y < lines; y++) {
            if (sparse) {
                Arrays.fill(run, Double.NaN);
            } else {
                System.arraycopy(data, y * line.length, line, 0, line.length);
                unpredict(line, stored);
                for (int x = 0; x < columns; x++) {
                    run[x] = conversion.height(kind.value(stored[x]));
                }
            }
            int imageLine = top + y;
            sink.put(firstLineIsNorth ? height - 1 - imageLine : imageLine, left, run, columns);
        }
    }

    private byte[] unpacked(int block, int lines) throws IOException {
        int wanted = lines * blockWidth * kind.bytes();
        if (compression == 1 && byteCounts[block] < wanted) {
            throw shortBlock(block, byteCounts[block], wanted);
        }
        byte[] packed = directory.bytes(offsets[block], compression == 1 ? wanted : byteCounts[block],
                "block " + block).array();
        if (compression == 1) {
            return packed;
        }
        byte[] data = new byte[wanted];
        int filled = compression == 5 ? Lzw.unpack(packed, data) : inflate(block, packed, data);
        if (filled < wanted) {
            throw shortBlock(block, filled, wanted);
        }
        return data;
    }

    private int inflate(int block, byte[] packed, byte[] data) {
        Inflater inflater = new Inflater();
        try {
            inflater.setInput(packed);
            int filled = 0;
            while (filled < data.length) {
                int more = inflater.inflate(data, filled, data.length - filled);
                if (more == 0) {
                    return filled;
                }
                filled += more;
            }
            return filled;
        } catch (DataFormatException e) {
            throw trouble.unreadable("block " + block + " of the image is damaged (" + e.getMessage() + ")",
                    "whole deflate data", e);
        } finally {
            inflater.end();
        }
    }

    private RuntimeException shortBlock(int block, long found, long wanted) {
        return trouble.unreadable("block " + block + " of the image holds " + found + " bytes where " + wanted
                + " are needed; it is cut off or damaged", "a whole GeoTIFF file");
    }

    /** Turns a line of stored bytes into numbers, undoing the predictor. */
    private void unpredict(byte[] line, long[] stored) {
        int bytes = kind.bytes();
        if (predictor == 3) {
            for (int i = 1; i < line.length; i++) {
                line[i] += line[i - 1];
            }
            for (int x = 0; x < blockWidth; x++) {
                long value = 0;
                for (int plane = 0; plane < bytes; plane++) {
                    value = value << 8 | line[plane * blockWidth + x] & 255;
                }
                stored[x] = value;
            }
            return;
        }
        ByteBuffer buffer = ByteBuffer.wrap(line).order(directory.order());
        for (int x = 0; x < blockWidth; x++) {
            stored[x] = bytes == 2 ? buffer.getShort(2 * x) : bytes == 4 ? buffer.getInt(4 * x)
                    : buffer.getLong(8 * x);
        }
        if (predictor == 2) {
            for (int x = 1; x < blockWidth; x++) {
                stored[x] += stored[x - 1];
            }
        }
    }
}
