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
import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.zip.Deflater;

/**
 * Writes a surface as a GeoTIFF of tiles packed by deflate, floating point with predictor 3, and overviews of half
 * the nodes a side down to a tile, each node the mean of the values there are among four.
 */
final class PackedSurfaceFile extends SurfaceFile {
    private static final int LARGEST_TILE = 256;
    private static final int TILE_STEP = 16;
    /** Below this many bytes unpacked a file cannot outgrow a classic TIFF. */
    private static final long SURELY_CLASSIC = 3_500_000_000L;
    private static final float NO_DATA = -9999;

    private final PartFile out;
    private final Layer layer;
    private final boolean big;
    private final Level main;
    private long end;
    private long linkPlace;

    /** One image of the file: its size in tiles and where they stand. */
    private final class Level {
        private final GridFrame frame;
        private final int tile;
        private final int across;
        private final long[] offsets;
        private final long[] lengths;
        private final byte[][] band;
        private int line;

        Level(GridFrame frame) {
            this.frame = frame;
            int longest = Math.max(frame.columns(), frame.rows());
            this.tile = Math.min(LARGEST_TILE, (longest + TILE_STEP - 1) / TILE_STEP * TILE_STEP);
            this.across = (frame.columns() - 1) / tile + 1;
            int down = (frame.rows() - 1) / tile + 1;
            this.offsets = new long[Math.multiplyExact(across, down)];
            this.lengths = new long[offsets.length];
            this.band = new byte[across][];
        }

        void put(NodeRange block, float[] values) {
            band[block.firstColumn() / tile] = packed(block, values);
        }

        void endOfBand() throws IOException {
            for (int x = 0; x < across; x++) {
                offsets[line * across + x] = end;
                lengths[line * across + x] = band[x].length;
                end = out.put(ByteBuffer.wrap(band[x]), end);
            }
            line++;
        }

        /** A tile with its rows from north to south; beyond the image its edge is repeated. */
        private byte[] packed(NodeRange block, float[] values) {
            int bytes = layer.content().bytes();
            byte[] raw = new byte[tile * tile * bytes];
            for (int y = 0; y < tile; y++) {
                int from = Math.max(0, block.rows() - 1 - y) * block.columns();
                int start = y * tile * bytes;
                for (int x = 0; x < tile; x++) {
                    float value = values[from + Math.min(block.columns() - 1, x)];
                    if (bytes == 1) {
                        raw[start + x] = (byte) (int) value;
                    } else {
                        int bits = Float.floatToIntBits(Float.isNaN(value) ? NO_DATA : value);
                        for (int plane = 0; plane < 4; plane++) {
                            raw[start + plane * tile + x] = (byte) (bits >>> 24 - 8 * plane);
                        }
                    }
                }
                for (int i = start + tile * bytes - 1; bytes > 1 && i > start; i--) {
                    raw[i] -= raw[i - 1];
                }
            }
            return deflated(raw);
        }

        /** Writes the directory of this image and links it to the one before. */
        void close(boolean isOverview) throws IOException {
            TiffDirectoryWriter directory = new TiffDirectoryWriter(big);
            TiffImageTags tags = new TiffImageTags(frame, layer.system(), layer.content());
            tags.addKind(directory);
            if (isOverview) {
                directory.longs(GeoTiffReader.SUBFILE, GeoTiffReader.REDUCED);
            } else {
                tags.addPlace(directory);
            }
            directory.shorts(TiffRaster.COMPRESSION, 8);
            directory.shorts(TiffRaster.PREDICTOR, layer.content().bytes() == 1 ? 1 : 3);
            directory.longs(TiffRaster.TILE_WIDTH, tile);
            directory.longs(TiffRaster.TILE_HEIGHT, tile);
            directory.longs(TiffRaster.TILE_OFFSETS, offsets);
            directory.longs(TiffRaster.TILE_BYTE_COUNTS, lengths);
            long at = end + end % 2;
            end = at + directory.size();
            if (!big && end > 0xFFFF_0000L) {
                throw new IOException("the packed values take " + end + " bytes, too many for a TIFF file");
            }
            out.put(directory.bytes(at), at);
            ByteBuffer link = ByteBuffer.allocate(big ? 8 : 4).order(ByteOrder.LITTLE_ENDIAN);
            out.put(big ? link.putLong(at).flip() : link.putInt((int) at).flip(), linkPlace);
            linkPlace = at + directory.placeOfNext();
        }
    }

    PackedSurfaceFile(Path file, Layer layer) throws IOException {
        this.layer = layer;
        this.big = layer.frame().nodes() * layer.content().bytes() > SURELY_CLASSIC;
        this.main = new Level(layer.frame());
        this.out = new PartFile(file);
        this.end = out.put(TiffDirectoryWriter.head(big, 0), 0);
        this.linkPlace = big ? 8 : 4;
    }

    @Override
    public int blockRows() {
        return main.tile;
    }

    @Override
    public int blockColumns() {
        return main.tile;
    }

    @Override
    public boolean isByBands() {
        return true;
    }

    @Override
    public void put(NodeRange block, float[] values) {
        main.put(block, values);
    }

    @Override
    public void endOfBand() {
        try {
            main.endOfBand();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void finish(Progress progress) throws IOException {
        main.close(false);
        GridFrame frame = layer.frame();
        while (Math.max(frame.columns(), frame.rows()) > LARGEST_TILE
                && Math.min(frame.columns(), frame.rows()) >= 4) {
            progress.report(0, "writing overviews");
            GridFrame half = new GridFrame((frame.rows() + 1) / 2, (frame.columns() + 1) / 2, 0, 0, 1);
            writeOverview(new Level(half), progress);
            frame = half;
        }
        out.finish();
    }

    /** The image last written, with half the nodes a side. */
    private void writeOverview(Level half, Progress progress) throws IOException {
        FileTrouble trouble = new FileTrouble(out.path());
        java.util.List<TiffDirectory> written = TiffDirectory.all(out.channel(), trouble);
        TiffRaster finer = new TiffRaster(written.get(written.size() - 1), trouble);
        boolean heights = layer.content().kind() == SurfaceContent.Kind.FLOAT32;
        int down = half.offsets.length / half.across;
        for (int line = 0; line < down; line++) {
            progress.check();
            int top = line * half.tile;
            int rows = Math.min(half.tile, half.frame.rows() - top);
            IntStream.range(0, half.across).parallel().forEach(x -> {
                int left = x * half.tile;
                NodeRange block = new NodeRange(half.frame.rows() - top - rows, left, rows,
                        Math.min(half.tile, half.frame.columns() - left));
                try {
                    half.put(block, halved(finer, block, top, heights ? NO_DATA : 0));
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
            });
            half.endOfBand();
            progress.report((double) (line + 1) / down, "writing overviews");
        }
        half.close(true);
    }

    private static float[] halved(TiffRaster finer, NodeRange block, int top, float noData) throws IOException {
        int wanted = Math.min(2 * block.columns(), finer.width() - 2 * block.firstColumn());
        double[][] lines = new double[2][wanted];
        float[] values = new float[block.rows() * block.columns()];
        for (int y = 0; y < block.rows(); y++) {
            int line = 2 * (top + y);
            finer.run(line, 2 * block.firstColumn(), wanted, lines[0], 0);
            boolean pair = line + 1 < finer.height();
            if (pair) {
                finer.run(line + 1, 2 * block.firstColumn(), wanted, lines[1], 0);
            }
            int at = (block.rows() - 1 - y) * block.columns();
            for (int x = 0; x < block.columns(); x++) {
                values[at + x] = mean(lines, pair ? 2 : 1, 2 * x, noData);
            }
        }
        return values;
    }

    private static float mean(double[][] lines, int rows, int from, float noData) {
        double sum = 0;
        int count = 0;
        for (int r = 0; r < rows; r++) {
            for (int c = from; c < Math.min(from + 2, lines[r].length); c++) {
                if (lines[r][c] != noData) {
                    sum += lines[r][c];
                    count++;
                }
            }
        }
        return count == 0 ? noData : (float) (noData == 0 ? Math.rint(sum / count) : sum / count);
    }

    private static byte[] deflated(byte[] raw) {
        Deflater deflater = new Deflater();
        deflater.setInput(raw);
        deflater.finish();
        byte[] buffer = new byte[raw.length + raw.length / 100 + 64];
        int length = deflater.deflate(buffer);
        deflater.end();
        return Arrays.copyOf(buffer, length);
    }

    @Override
    public void close() throws IOException {
        out.close();
    }
}
