// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.InputException;
import bermwright.foundation.Progress;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.Deflater;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that lie about themselves are refused by name, before memory is spent on them. */
class BadGroundTest {
    /** No refusal may take more memory than this (bytes); the files announce gigabytes. */
    private static final long MOST_BYTES = 40_000_000;
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int DOUBLE = 12;
    private static final int SIGNED_SHORT = 8;

    @TempDir
    private Path folder;

    /** A little-endian file of one directory, tag by tag. */
    private static final class Tiff {
        private final Map<Integer, long[]> whole = new TreeMap<>();
        private final Map<Integer, double[]> real = new TreeMap<>();
        private final Map<Integer, Integer> types = new TreeMap<>();
        private byte[] data = new byte[0];

        static Tiff plain(int columns, int rows) {
            Tiff t = new Tiff();
            t.set(256, LONG, columns).set(257, LONG, rows).set(258, SHORT, 32).set(259, SHORT, 1).set(277, SHORT, 1)
                    .set(339, SHORT, 3).set(278, LONG, rows).set(273, LONG, 8).set(279, LONG, 4L * columns * rows);
            t.data = new byte[4 * 16 * 16];
            return t.real(33550, 5, 5, 0).real(33922, 0, 0, 0, 1000, 2000, 0);
        }

        Tiff set(int tag, int type, long... values) {
            whole.put(tag, values);
            types.put(tag, type);
            return this;
        }

        Tiff real(int tag, double... values) {
            real.put(tag, values);
            types.put(tag, DOUBLE);
            return this;
        }

        byte[] bytes() {
            ByteBuffer out = ByteBuffer.allocate(data.length + 20_000).order(ByteOrder.LITTLE_ENDIAN);
            int at = 8 + data.length + data.length % 2;
            out.put(new byte[] {'I', 'I', 42, 0}).putInt(at).put(data).position(at);
            out.putShort((short) types.size());
            int next = at + 2 + 12 * types.size() + 4;
            for (Map.Entry<Integer, Integer> entry : types.entrySet()) {
                int type = entry.getValue();
                int size = type == DOUBLE ? 8 : type == LONG ? 4 : 2;
                int count = type == DOUBLE ? real.get(entry.getKey()).length : whole.get(entry.getKey()).length;
                ByteBuffer value = ByteBuffer.allocate(Math.max(4, size * count)).order(ByteOrder.LITTLE_ENDIAN);
                for (int i = 0; i < count; i++) {
                    if (type == DOUBLE) {
                        value.putDouble(real.get(entry.getKey())[i]);
                    } else if (type == LONG) {
                        value.putInt((int) whole.get(entry.getKey())[i]);
                    } else {
                        value.putShort((short) whole.get(entry.getKey())[i]);
                    }
                }
                out.putShort((short) (int) entry.getKey()).putShort((short) type).putInt(count);
                if (size * count <= 4) {
                    out.put(value.array(), 0, 4);
                } else {
                    out.putInt(next);
                    System.arraycopy(value.array(), 0, out.array(), next, size * count);
                    next += size * count;
                }
            }
            return java.util.Arrays.copyOf(out.array(), Math.max(next, out.position() + 4));
        }
    }

    private void refuses(Tiff tiff, String key, String words) throws IOException {
        Path file = Files.write(folder.resolve("bad.tif"), tiff.bytes());
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        InputException thrown = assertThrows(InputException.class, () -> GroundFiles.read(file,
                GroundFiles.Knowledge.NONE, Progress.NONE), key);
        long spent = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
        assertTrue(thrown.key().contains(key), thrown.getMessage());
        assertTrue(thrown.getMessage().contains(words), thrown.getMessage());
        assertFalse(thrown.value().isEmpty() || thrown.accepted().isEmpty());
        assertTrue(spent < MOST_BYTES, spent + " bytes were spent on: " + thrown.getMessage());
    }

    @Test
    void aGoodOneIsRead() throws IOException {
        Path file = Files.write(folder.resolve("good.tif"), Tiff.plain(16, 16).bytes());
        assertEquals(16, GroundFiles.read(file, GroundFiles.Knowledge.NONE, Progress.NONE).grid().frame().columns());
    }

    @Test
    void sizesThatTheFileCannotHold() throws IOException {
        refuses(Tiff.plain(16, 16).set(257, LONG, 20_000).set(279, LONG, 4L * 16 * 20_000).set(278, LONG, 20_000),
                "StripOffsets", "cut off or damaged");
        refuses(Tiff.plain(16, 16).set(256, LONG, 2_000_000_000).set(257, LONG, 2_000_000_000), "RowsPerStrip", "");
        refuses(Tiff.plain(16, 16).set(256, LONG, 0xFFFFFFFFL), "ImageWidth", "4294967295");
        refuses(Tiff.plain(16, 16).set(256, LONG, 1), "ImageWidth", "1 x 16");
        refuses(Tiff.plain(16, 16).set(279, LONG, 100), "block 0", "100 bytes where 1024");
        refuses(Tiff.plain(16, 16).set(273, LONG, 4_000_000_000L), "StripOffsets", "4000000000");
        refuses(Tiff.plain(16, 16).set(273, LONG, 8, 9, 10), "StripOffsets", "3 offsets");
    }

    @Test
    void aTileOfTwoToTheThirtyFirstASide() throws IOException {
        refuses(Tiff.plain(16, 16).set(322, LONG, 0x7FFFFFFF).set(323, LONG, 0x7FFFFFFF).set(324, LONG, 8)
                .set(325, LONG, 1024), "TileWidth", "2147483647 x 2147483647");
        refuses(Tiff.plain(16, 16).set(322, LONG, 0x80000000L).set(323, LONG, 16).set(324, LONG, 8)
                .set(325, LONG, 1024), "TileWidth", "2147483648");
    }

    @Test
    void aFewBytesThatUnpackToGigabytes() throws IOException {
        Deflater deflater = new Deflater();
        byte[] zeros = new byte[1 << 20];
        deflater.setInput(zeros);
        deflater.finish();
        byte[] packed = new byte[4096];
        int length = deflater.deflate(packed);
        Tiff tiff = Tiff.plain(20_000, 20_000).set(259, SHORT, 8).set(279, LONG, length);
        tiff.data = java.util.Arrays.copyOf(packed, length);
        refuses(tiff, "RowsPerStrip", "20000 x 20000");
        Tiff small = Tiff.plain(2000, 2000).set(259, SHORT, 8).set(279, LONG, length);
        small.data = tiff.data;
        refuses(small, "StripByteCounts", "for 16000000 unpacked");
        Tiff shorter = Tiff.plain(600, 600).set(259, SHORT, 8).set(279, LONG, length);
        shorter.data = tiff.data;
        refuses(shorter, "block 0", "1048576 bytes where 1440000");
    }

    @Test
    void placesThatCannotBe() throws IOException {
        refuses(Tiff.plain(16, 16).real(33550, 1e308, 1e308, 0), "ModelPixelScale", "1.0E308");
        refuses(Tiff.plain(16, 16).real(33550, Double.NaN, 5, 0), "ModelPixelScale", "NaN");
        refuses(Tiff.plain(16, 16).real(33550, -5, 5, 0), "ModelPixelScale", "-5");
        refuses(Tiff.plain(16, 16).real(33922, 0, 0, 0, 1e300, 0, 0), "ModelTiepoint", "1.0E300");
        refuses(Tiff.plain(16, 16).real(34264, 4, 3, 0, 0, 3, -4, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1), "ModelTransformation",
                "neither turned nor skewed");
        refuses(Tiff.plain(16, 16).real(34264, 5, 0, 0, 0, 1, -5, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1), "ModelTransformation",
                "neither turned nor skewed");
    }

    @Test
    void keysThatPointNowhere() throws IOException {
        refuses(Tiff.plain(16, 16).set(34735, SIGNED_SHORT, 1, 1, 0, 1, 2057, (short) 34736, 1, -1)
                .real(34736, 1_737_400), "GeoKeyDirectory", "-30800");
        refuses(Tiff.plain(16, 16).set(34735, SHORT, 1, 1, 0, 1, 2057, 34736, 1, 9).real(34736, 1_737_400),
                "GeoKey 2057", "at place 9");
        refuses(Tiff.plain(16, 16).set(34735, SHORT, 1, 1, 0, 1, 1026, 34737, 500, 9), "GeoKey 1026", "for 500");
    }
}
