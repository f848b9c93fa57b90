// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.TreeMap;

/** Gathers the tags of a little-endian TIFF directory and lays them out. */
final class TiffDirectoryWriter {
    static final int PHOTOMETRIC = 262;
    static final int PLANAR = 284;
    private static final int TEXT = 2;
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int DOUBLE = 12;
    private static final int ENTRY = 12;

    private record Entry(int type, int count, byte[] value) {
    }

    private final Map<Integer, Entry> entries = new TreeMap<>();

    void shorts(int tag, int... values) {
        ByteBuffer bytes = buffer(2 * values.length);
        for (int value : values) {
            bytes.putShort((short) value);
        }
        entries.put(tag, new Entry(SHORT, values.length, bytes.array()));
    }

    void longs(int tag, long... values) {
        ByteBuffer bytes = buffer(4 * values.length);
        for (long value : values) {
            bytes.putInt((int) value);
        }
        entries.put(tag, new Entry(LONG, values.length, bytes.array()));
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

    /** The directory, to be written at an even place in the file; longer values follow it. */
    ByteBuffer bytes(long at) {
        int table = 2 + ENTRY * entries.size() + 4;
        int size = table;
        for (Entry entry : entries.values()) {
            size += entry.value.length > 4 ? entry.value.length + entry.value.length % 2 : 0;
        }
        ByteBuffer out = buffer(size).putShort((short) entries.size());
        int next = table;
        for (Map.Entry<Integer, Entry> tagged : entries.entrySet()) {
            Entry entry = tagged.getValue();
            out.putShort((short) (int) tagged.getKey()).putShort((short) entry.type).putInt(entry.count);
            if (entry.value.length > 4) {
                out.putInt((int) (at + next));
                out.duplicate().position(next).put(entry.value);
                next += entry.value.length + entry.value.length % 2;
            } else {
                out.put(entry.value).position(out.position() + 4 - entry.value.length);
            }
        }
        return out.rewind();
    }

    private static ByteBuffer buffer(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
