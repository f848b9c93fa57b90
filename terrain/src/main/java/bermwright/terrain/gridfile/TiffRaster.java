// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/**
 * The samples of one image of a TIFF file: one band of numbers in strips or tiles.
 *
 * <p>Every block is held against the file's length, and its packed length against what can be packed so, before
 * memory is taken for any of them.
 */
final class TiffRaster implements Samples {
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

    private static final int NONE = 1;
    private static final int LZW = 5;
    private static final int DEFLATE = 8;
    private static final int DEFLATE_OF_OLD = 32946;
    private static final int SLACK_OF_A_TILE = 1 << 22;
    /** No byte of deflate stands for more than 1,032, none of LZW for more than 2,731. */
    private static final long MOST_FOR_A_BYTE = 2_800;

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
    private final PlainBytes plain;
    private final BlockCache cache;
    private long[] offsets;
    private long[] byteCounts;

    TiffRaster(TiffDirectory directory, FileTrouble trouble) throws IOException {
        this.directory = directory;
        this.trouble = trouble;
        width = size(WIDTH);
        height = size(HEIGHT);
        HeightLimits.checkFrame(TiffTag.name(WIDTH), width, height, trouble);
        long bands = directory.whole(SAMPLES_PER_PIXEL, 1);
        if (bands != 1) {
            throw trouble.badValue(TiffTag.name(SAMPLES_PER_PIXEL), bands,
                    "1, the height; a picture of several bands is no elevation model");
        }
        kind = SampleKind.of(directory.whole(SAMPLE_FORMAT, 1), directory.whole(BITS, 1), trouble);
        long packing = directory.whole(COMPRESSION, 1);
        if (packing != NONE && packing != LZW && packing != DEFLATE && packing != DEFLATE_OF_OLD) {
            throw trouble.badValue(TiffTag.name(COMPRESSION), packing,
                    "1 (none), 5 (LZW), 8 (deflate); gdal_translate -co COMPRESS=DEFLATE rewrites it");
        }
        compression = (int) packing;
        long difference = compression == NONE ? 1 : directory.whole(PREDICTOR, 1);
        if (difference < 1 || difference > 3 || difference == 3 && !kind.isReal()) {
            throw trouble.badValue(TiffTag.name(PREDICTOR), difference, "1, 2, or 3 with floating point");
        }
        predictor = (int) difference;
        tiled = directory.has(TILE_WIDTH) || directory.has(TILE_OFFSETS);
        blockWidth = tiled ? size(TILE_WIDTH) : width;
        blockHeight = tiled ? size(TILE_HEIGHT)
                : (int) Math.min(height, Math.max(1, directory.whole(ROWS_PER_STRIP, height)));
        checkBlocks();
        plain = new PlainBytes(directory.channel(), kind, directory.order(), trouble);
        cache = new BlockCache(HeightLimits.blockBytes(), blockBytes(), this::unpack);
    }

    private int size(int tag) throws IOException {
        long size = directory.whole(tag, 0);
        if (size < 1 || size > Integer.MAX_VALUE) {
            throw trouble.badValue(TiffTag.name(tag), size, "1 to " + Integer.MAX_VALUE + " pixels");
        }
        return (int) size;
    }

    private long blockBytes() {
        return (long) blockWidth * blockHeight * kind.bytes();
    }

    private void checkBlocks() throws IOException {
        int offsetTag = tiled ? TILE_OFFSETS : STRIP_OFFSETS;
        int countTag = tiled ? TILE_BYTE_COUNTS : STRIP_BYTE_COUNTS;
        String sizeKey = TiffTag.name(tiled ? TILE_WIDTH : ROWS_PER_STRIP);
        // Divided, not multiplied: a tile of 2^31 a side has more bytes than a long can count.
        if (blockBytes() / kind.bytes() / blockWidth != blockHeight
                || blockBytes() > (long) width * height * kind.bytes() + SLACK_OF_A_TILE) {
            throw trouble.badValue(sizeKey, blockWidth + " x " + blockHeight, "blocks no larger than the image");
        }
        long most = HeightLimits.blockBytes() / 2;
        if (compression != NONE && blockBytes() > most) {
            throw trouble.badValue(sizeKey, blockWidth + " x " + blockHeight, "packed blocks of up to " + most
                    + " bytes unpacked; gdal_translate -co TILED=YES -co COMPRESS=DEFLATE rewrites it");
        }
        long blocks = (long) across() * down();
        if (directory.count(offsetTag) != blocks || directory.count(countTag) != blocks) {
            throw trouble.badValue(TiffTag.name(offsetTag), directory.count(offsetTag) + " offsets and "
                    + directory.count(countTag) + " lengths", "one of each for the " + blocks
                    + " blocks of the image");
        }
        offsets = directory.wholes(offsetTag);
        byteCounts = directory.wholes(countTag);
        long size = directory.channel().size();
        for (int block = 0; block < blocks; block++) {
            checkBlock(block, size);
        }
    }

    private void checkBlock(int block, long fileSize) {
        long offset = offsets[block];
        long count = byteCounts[block];
        if (isLeftOut(block)) {
            return;
        }
        long wanted = (long) linesKept(block) * blockWidth * kind.bytes();
        long needed = compression == NONE ? wanted : Math.max(1, count);
        if (compression == NONE && count < wanted) {
            throw shortBlock(block, count, wanted);
        }
        if (offset < 0 || needed < 0 || offset > fileSize - needed) {
            throw trouble.unreadable(TiffTag.name(tiled ? TILE_OFFSETS : STRIP_OFFSETS), "block " + block
                    + " should stand at byte " + offset + " for " + needed + " bytes, but the file has " + fileSize
                    + "; it is cut off or damaged", "a whole GeoTIFF file");
        }
        if (compression != NONE && count > Integer.MAX_VALUE - 16 || count < wanted / MOST_FOR_A_BYTE) {
            throw trouble.unreadable(TiffTag.name(tiled ? TILE_BYTE_COUNTS : STRIP_BYTE_COUNTS), "block " + block
                    + " has " + count + " bytes for " + wanted + " unpacked", "what can be packed so");
        }
    }

    private boolean isLeftOut(int block) {
        return offsets[block] == 0 && byteCounts[block] == 0;
    }

    /** The last strip ends with the image; a tile is whole. */
    private int linesKept(int block) {
        return tiled ? blockHeight : Math.min(blockHeight, height - block / across() * blockHeight);
    }

    @Override
    public int width() {
        return width;
    }

    @Override
    public int height() {
        return height;
    }

    @Override
    public SampleKind kind() {
        return kind;
    }

    @Override
    public int blockHeight() {
        return blockHeight;
    }

    @Override
    public boolean isPlain() {
        return compression == NONE;
    }

    private int across() {
        return (int) (((long) width + blockWidth - 1) / blockWidth);
    }

    private int down() {
        return (int) (((long) height + blockHeight - 1) / blockHeight);
    }

    @Override
    public void run(int line, int column, int count, double[] into, int at) throws IOException {
        int inBlock = line % blockHeight;
        int done = 0;
        while (done < count) {
            int block = line / blockHeight * across() + (column + done) / blockWidth;
            int first = (column + done) % blockWidth;
            int now = Math.min(count - done, blockWidth - first);
            long from = ((long) inBlock * blockWidth + first) * kind.bytes();
            if (isLeftOut(block)) {
                java.util.Arrays.fill(into, at + done, at + done + now, Double.NaN);
            } else if (compression == NONE) {
                plain.copy(offsets[block] + from, now, into, at + done);
            } else {
                kind.copy(cache.block(block), (int) from, into, at + done, now);
            }
            done += now;
        }
    }

    /** A block as plain numbers. */
    private ByteBuffer unpack(int block) throws IOException {
        byte[] packed = directory.bytes(offsets[block], byteCounts[block], "block " + block).array();
        byte[] data = new byte[linesKept(block) * blockWidth * kind.bytes()];
        int filled = compression == LZW ? Lzw.unpack(packed, data) : inflate(block, packed, data);
        if (filled < data.length) {
            throw shortBlock(block, filled, data.length);
        }
        ByteOrder order = predictor == 3 ? ByteOrder.BIG_ENDIAN : directory.order();
        ByteBuffer buffer = ByteBuffer.wrap(data).order(order);
        int line = blockWidth * kind.bytes();
        byte[] planes = predictor == 3 ? new byte[line] : data;
        for (int from = 0; predictor > 1 && from < data.length; from += line) {
            if (predictor == 3) {
                joinPlanes(data, from, planes);
            } else {
                addUp(buffer, from);
            }
        }
        return buffer;
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
            throw trouble.unreadable("block " + block, "the image is damaged there (" + e.getMessage() + ")",
                    "whole deflate data", e);
        } finally {
            inflater.end();
        }
    }

    private RuntimeException shortBlock(int block, long found, long wanted) {
        return trouble.unreadable("block " + block, "it holds " + found + " bytes where " + wanted
                + " are needed; it is cut off or damaged", "a whole GeoTIFF file");
    }

    /** Undoes predictor 3 in a line: differences of bytes, kept by planes from the highest byte down. */
    private void joinPlanes(byte[] data, int from, byte[] planes) {
        int bytes = kind.bytes();
        planes[0] = data[from];
        for (int i = 1; i < planes.length; i++) {
            planes[i] = (byte) (planes[i - 1] + data[from + i]);
        }
        for (int plane = 0; plane < bytes; plane++) {
            int to = from + plane;
            int start = plane * blockWidth;
            for (int x = 0; x < blockWidth; x++, to += bytes) {
                data[to] = planes[start + x];
            }
        }
    }

    /** Undoes predictor 2 in a line: differences of numbers. */
    private void addUp(ByteBuffer buffer, int from) {
        int bytes = kind.bytes();
        for (int x = 1; x < blockWidth; x++) {
            int at = from + x * bytes;
            switch (bytes) {
                case 2 -> buffer.putShort(at, (short) (buffer.getShort(at) + buffer.getShort(at - 2)));
                case 4 -> buffer.putInt(at, buffer.getInt(at) + buffer.getInt(at - 4));
                default -> buffer.putLong(at, buffer.getLong(at) + buffer.getLong(at - 8));
            }
        }
    }

    @Override
    public void close() throws IOException {
        directory.channel().close();
    }
}
