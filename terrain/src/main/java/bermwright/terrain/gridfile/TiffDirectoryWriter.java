// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** Gathers the tags of a little-endian TIFF or BigTIFF directory and lays them out. */
final class TiffDirectoryWriter {
    static final int PHOTOMETRIC = 262;
    static final int PLANAR = 284;
    private static final int TEXT = 2;
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int DOUBLE = 12;
    private static final int LONG8 = 16;

    private record Entry(int type, int count, byte[] value) {
    }

    private final Map<Integer, Entry> entries = new TreeMap<>();
    private final boolean big;

    TiffDirectoryWriter(boolean big) {
        this.big = big;
    }

    /** The head of a file whose first directory stands at a place. */
    static ByteBuffer head(boolean big, long directory) {
        ByteBuffer head = buffer(big ? 16 : 8).put((byte) 'I').put((byte) 'I').putShort((short) (big ? 43 : 42));
        if (big) {
            head.putShort((short) 8).putShort((short) 0).putLong(directory);
        } else {
            head.putInt((int) directory);
        }
        return head.flip();
    }

    void shorts(int tag, int... values) {
        ByteBuffer bytes = buffer(2 * values.length);
        for (int value : values) {
            bytes.putShort((short) value);
        }
        entries.put(tag, new Entry(SHORT, values.length, bytes.array()));
    }

    /** Whole numbers of 32 bits, in a BigTIFF of 64. */
    void longs(int tag, long... values) {
        ByteBuffer bytes = buffer((big ? 8 : 4) * values.length);
        for (long value : values) {
            if (big) {
                bytes.putLong(value);
            } else {
                bytes.putInt((int) value);
            }
        }
        entries.put(tag, new Entry(big ? LONG8 : LONG, values.length, bytes.array()));
    }

    void doubles(int tag, double... values) {
        ByteBuffer bytes = buffer(8 * values.length);
        for (double value : values) {
            bytes.putDouble(value);
        }
        entries.put(tag, new Entry(DOUBLE, values.length, bytes.array()));
    }

    void text(int tag, String text) {
        byte[] bytes = (text + "\0").getBytes(StandardCharsets.UTF_8);
        entries.put(tag, new Entry(TEXT, bytes.length, bytes));
    }

    /** How many bytes the directory takes with its longer values. */
    int size() {
        int size = table();
        for (Entry entry : entries.values()) {
            size += entry.value.length > width() ? entry.value.length + entry.value.length % 2 : 0;
        }
        return size;
    }

    /** Where in the directory the place of the next one is kept. */
    int placeOfNext() {
        return table() - width();
    }

    private int width() {
        return big ? 8 : 4;
    }

    private int table() {
        return (big ? 8 : 2) + (4 + 2 * width()) * entries.size() + width();
    }

    /** The directory, to be written at an even place in the file; longer values follow it. */
    ByteBuffer bytes(long at) {
        int next = table();
        ByteBuffer out = buffer(size());
        if (big) {
            out.putLong(entries.size());
        } else {
            out.putShort((short) entries.size());
        }
        for (Map.Entry<Integer, Entry> tagged : entries.entrySet()) {
            Entry entry = tagged.getValue();
            out.putShort((short) (int) tagged.getKey()).putShort((short) entry.type);
            number(out, entry.count);
            if (entry.value.length > width()) {
                number(out, at + next);
                out.duplicate().position(next).put(entry.value);
                next += entry.value.length + entry.value.length % 2;
            } else {
                out.put(entry.value).position(out.position() + width() - entry.value.length);
            }
        }
        return out.rewind();
    }

    private void number(ByteBuffer out, long value) {
        if (big) {
            out.putLong(value);
        } else {
            out.putInt((int) value);
        }
    }

    private static ByteBuffer buffer(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
