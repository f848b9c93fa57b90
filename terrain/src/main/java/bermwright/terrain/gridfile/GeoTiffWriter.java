// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Progress;
import bermwright.foundation.Require;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.zip.Deflater;

/**
 * Writes an elevation grid as a GeoTIFF file: heights in metres as 32-bit floating point (right to 0.25 mm at 4 km),
 * tiles of deflate with predictor 3, coordinates of cell areas, missing heights as -9999.
 */
public final class GeoTiffWriter {
    private static final float NODATA = -9999;
    private static final int LARGEST_TILE = 256;
    private static final int TILE_STEP = 16;
    private static final long MOST_BYTES = 0xFFFF_0000L;

    private final ElevationGrid grid;
    private final ReferenceSystem system;
    private final int tile;

    private GeoTiffWriter(ElevationGrid grid, ReferenceSystem system) {
        this.grid = grid;
        this.system = system;
        int longest = Math.max(grid.frame().columns(), grid.frame().rows());
        this.tile = Math.min(LARGEST_TILE, (longest + TILE_STEP - 1) / TILE_STEP * TILE_STEP);
    }

    /**
     * Writes a grid; the file is there whole or not at all.
     *
     * @param file     the file, replaced where it exists
     * @param grid     the ground
     * @param system   the reference system of its coordinates
     * @param progress is told how far the writing has come
     * @throws IOException if the file cannot be written
     */
    public static void write(Path file, ElevationGrid grid, ReferenceSystem system, Progress progress)
            throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        // Made like any other file, so that whoever may read the folder may read it.
        Path part = folder.resolve("." + file.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            try (FileChannel out = FileChannel.open(part, StandardOpenOption.CREATE_NEW,
                    StandardOpenOption.WRITE)) {
                new GeoTiffWriter(grid, system).write(out, progress);
            }
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private void write(FileChannel out, Progress progress) throws IOException {
        GridFrame frame = grid.frame();
        int across = (frame.columns() + tile - 1) / tile;
        int down = (frame.rows() + tile - 1) / tile;
        long[] offsets = new long[across * down];
        long[] lengths = new long[across * down];
        ByteBuffer head = ByteBuffer.allocate(8).order(ByteOrder.LITTLE_ENDIAN).put((byte) 'I').put((byte) 'I')
                .putShort((short) 42).putInt(0).flip();
        long at = put(out, head, 0);
        for (int y = 0; y < down; y++) {
            progress.check();
            int line = y;
            byte[][] packed = IntStream.range(0, across).parallel().mapToObj(x -> packed(x, line))
                    .toArray(byte[][]::new);
            for (int x = 0; x < across; x++) {
                offsets[y * across + x] = at;
                lengths[y * across + x] = packed[x].length;
                at = put(out, ByteBuffer.wrap(packed[x]), at);
            }
            progress.report((double) (y + 1) / down, "writing heights");
        }
        at += at % 2;
        Require.that(at < MOST_BYTES, "the packed heights take %s bytes, too many for a TIFF file.", at);
        TiffDirectoryWriter directory = new TiffDirectoryWriter();
        addImage(directory, offsets, lengths);
        addPlace(directory);
        put(out, directory.bytes(at), at);
        put(out, ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putInt((int) at).flip(), 4);
    }

    private static long put(FileChannel out, ByteBuffer bytes, long at) throws IOException {
        long next = at;
        while (bytes.hasRemaining()) {
            next += out.write(bytes, next);
        }
        return next;
    }

    /** A tile with its rows from north to south, as byte planes of differences, deflated. */
    private byte[] packed(int tileColumn, int tileLine) {
        GridFrame frame = grid.frame();
        byte[] raw = new byte[tile * tile * 4];
        for (int y = 0; y < tile; y++) {
            int row = Math.max(0, frame.rows() - 1 - (tileLine * tile + y));
            int start = y * tile * 4;
            for (int x = 0; x < tile; x++) {
                double height = grid.nodeHeight(row, Math.min(frame.columns() - 1, tileColumn * tile + x));
                int bits = Float.floatToIntBits(Double.isNaN(height) ? NODATA : (float) height);
                for (int plane = 0; plane < 4; plane++) {
                    raw[start + plane * tile + x] = (byte) (bits >>> 24 - 8 * plane);
                }
            }
            for (int i = start + tile * 4 - 1; i > start; i--) {
                raw[i] -= raw[i - 1];
            }
        }
        return deflated(raw);
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

    private void addImage(TiffDirectoryWriter directory, long[] offsets, long[] lengths) {
        directory.longs(TiffRaster.WIDTH, grid.frame().columns());
        directory.longs(TiffRaster.HEIGHT, grid.frame().rows());
        directory.shorts(TiffRaster.BITS, 32);
        directory.shorts(TiffRaster.COMPRESSION, 8);
        directory.shorts(TiffDirectoryWriter.PHOTOMETRIC, 1);
        directory.shorts(TiffRaster.SAMPLES_PER_PIXEL, 1);
        directory.shorts(TiffDirectoryWriter.PLANAR, 1);
        directory.shorts(TiffRaster.PREDICTOR, 3);
        directory.longs(TiffRaster.TILE_WIDTH, tile);
        directory.longs(TiffRaster.TILE_HEIGHT, tile);
        directory.longs(TiffRaster.TILE_OFFSETS, offsets);
        directory.longs(TiffRaster.TILE_BYTE_COUNTS, lengths);
        directory.shorts(TiffRaster.SAMPLE_FORMAT, 3);
    }

    private void addPlace(TiffDirectoryWriter directory) {
        GridFrame frame = grid.frame();
        double spacing = frame.spacing();
        directory.doubles(GeoTiffReader.PIXEL_SCALE, spacing, spacing, 0);
        directory.doubles(GeoTiffReader.TIE_POINTS, 0, 0, 0, frame.west() - spacing / 2,
                frame.northEdge() + spacing / 2, 0);
        GeoKeyWriter keys = new GeoKeyWriter(system);
        directory.shorts(GeoKeys.DIRECTORY, keys.directory());
        directory.doubles(GeoKeys.DOUBLES, keys.doubles());
        directory.text(GeoKeys.TEXTS, keys.texts());
        directory.text(GeoTiffReader.GDAL_METADATA, "<GDALMetadata>\n  <Item name=\"UNITTYPE\" sample=\"0\""
                + " role=\"unittype\">m</Item>\n</GDALMetadata>\n");
        directory.text(GeoTiffReader.GDAL_NODATA, "-9999");
    }
}
