// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A directory of a TIFF or BigTIFF file; every offset and count is held against the file's real length
 * before it is followed, so that a file that lies about itself is refused at once.
 *
 * @see "TIFF revision 6.0 (1992), sections 2 and 15; BigTIFF design of 2007"
 */
final class TiffDirectory {
    private static final String ACCEPTED = "a whole GeoTIFF file";
    private static final int MOST_ENTRIES = 4096;
    private static final int MOST_DIRECTORIES = 64;
    private static final int[] SIZES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8, 4, 0, 0, 8, 8, 8};

    private record Entry(int type, long count, long offset) {
    }

    private final FileChannel channel;
    private final FileTrouble trouble;
    private final ByteOrder order;
    private final Map<Integer, Entry> entries = new HashMap<>();

    private TiffDirectory(FileChannel channel, FileTrouble trouble, ByteOrder order) {
        this.channel = channel;
        this.trouble = trouble;
        this.order = order;
    }

    /** Whether the first four bytes are those of a TIFF or BigTIFF file. */
    static boolean isTiff(byte[] head) {
        return head.length >= 4 && (head[0] == 'I' && head[1] == 'I' && (head[2] == 42 || head[2] == 43) && head[3] == 0
                || head[0] == 'M' && head[1] == 'M' && head[2] == 0 && (head[3] == 42 || head[3] == 43));
    }

    /** All directories of a file, the main image first. */
    static List<TiffDirectory> all(FileChannel channel, FileTrouble trouble) throws IOException {
        ByteBuffer start = ByteBuffer.allocate(4);
        channel.read(start, 0);
        ByteOrder order = start.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
        boolean big = start.order(order).getShort(2) == 43;
        List<TiffDirectory> directories = new ArrayList<>();
        long at = new TiffDirectory(channel, trouble, order).firstPlace(big);
        Set<Long> seen = new HashSet<>();
        while (at != 0 && directories.size() < MOST_DIRECTORIES && seen.add(at)) {
            TiffDirectory directory = new TiffDirectory(channel, trouble, order);
            at = directory.readEntries(big, at);
            directories.add(directory);
        }
        if (directories.isEmpty()) {
            throw trouble.unreadable("header", "it names no directory", ACCEPTED);
        }
        return directories;
    }

    private long firstPlace(boolean big) throws IOException {
        if (!big) {
            return Integer.toUnsignedLong(bytes(4, 4, "header").getInt(0));
        }
        ByteBuffer head = bytes(4, 12, "header");
        if (head.getShort(0) != 8) {
            throw trouble.unreadable("header", "this BigTIFF names offsets of " + head.getShort(0) + " bytes",
                    "offsets of 8 bytes");
        }
        return head.getLong(4);
    }

    /** Reads the directory at a place; gives the place of the next one, or 0. */
    private long readEntries(boolean big, long at) throws IOException {
        ByteBuffer number = bytes(at, big ? 8 : 2, "directory");
        long count = big ? number.getLong(0) : Short.toUnsignedInt(number.getShort(0));
        if (count < 1 || count > MOST_ENTRIES) {
            throw trouble.unreadable("directory", "it claims " + count + " entries", "1 to " + MOST_ENTRIES);
        }
        int width = big ? 8 : 4;
        int length = 4 + 2 * width;
        long start = at + (big ? 8 : 2);
        ByteBuffer table = bytes(start, count * length, "directory");
        for (int i = 0; i < count; i++) {
            int from = i * length;
            int type = Short.toUnsignedInt(table.getShort(from + 2));
            long values = big ? table.getLong(from + 4) : Integer.toUnsignedLong(table.getInt(from + 4));
            int size = type < SIZES.length ? SIZES[type] : 0;
            if (size > 0 && values > 0 && values <= channel.size() / size) {
                long offset = size * values <= width ? start + from + 4 + width
                        : big ? table.getLong(from + 4 + width)
                        : Integer.toUnsignedLong(table.getInt(from + 4 + width));
                entries.put(Short.toUnsignedInt(table.getShort(from)), new Entry(type, values, offset));
            } else if (size > 0 && values != 0) {
                throw trouble.unreadable(TiffTag.name(Short.toUnsignedInt(table.getShort(from))), "it claims " + values
                        + " values, more than the file can hold", ACCEPTED);
            }
        }
        long end = start + count * length;
        if (end > channel.size() - width) {
            return 0;
        }
        return big ? bytes(end, 8, "directory").getLong(0)
                : Integer.toUnsignedLong(bytes(end, 4, "directory").getInt(0));
    }

    /** A part of the file, in the file's byte order; refused where it leaves the file. */
    ByteBuffer bytes(long offset, long length, String field) throws IOException {
        long size = channel.size();
        if (offset < 0 || length < 0 || length > Integer.MAX_VALUE || offset > size - length) {
            throw trouble.unreadable(field, "it should stand at byte " + offset + " for " + length
                    + " bytes, but the file has " + size + "; it is cut off or damaged", ACCEPTED);
        }
        ByteBuffer buffer = ByteBuffer.allocate((int) length).order(order);
        while (buffer.hasRemaining()) {
            if (channel.read(buffer, offset + buffer.position()) < 0) {
                throw trouble.unreadable(field, "the file ended while being read", ACCEPTED);
            }
        }
        return buffer.flip().order(order);
    }

    FileChannel channel() {
        return channel;
    }

    ByteOrder order() {
        return order;
    }

    boolean has(int tag) {
        return entries.containsKey(tag);
    }

    long count(int tag) {
        Entry entry = entries.get(tag);
        return entry == null ? 0 : entry.count;
    }

    /** The single whole number of a tag, or a default where the tag is not there. */
    long whole(int tag, long otherwise) throws IOException {
        return has(tag) ? wholes(tag)[0] : otherwise;
    }

    /** The whole numbers of a tag; none where the tag is not there. */
    long[] wholes(int tag) throws IOException {
        Entry entry = entries.get(tag);
        if (entry == null) {
            return new long[0];
        }
        ByteBuffer raw = bytes(entry.offset, entry.count * SIZES[entry.type], TiffTag.name(tag));
        long[] values = new long[(int) entry.count];
        for (int i = 0; i < values.length; i++) {
            values[i] = switch (entry.type) {
                case 1, 7 -> Byte.toUnsignedLong(raw.get(i));
                case 3 -> Short.toUnsignedLong(raw.getShort(2 * i));
                case 4, 13 -> Integer.toUnsignedLong(raw.getInt(4 * i));
                case 6 -> raw.get(i);
                case 8 -> raw.getShort(2 * i);
                case 9 -> raw.getInt(4 * i);
                case 16, 17, 18 -> raw.getLong(8 * i);
                default -> throw trouble.badValue("type of " + TiffTag.name(tag), entry.type,
                        "a type of whole numbers");
            };
        }
        return values;
    }

    /** The real numbers of a tag; none where the tag is not there. */
    double[] reals(int tag) throws IOException {
        Entry entry = entries.get(tag);
        if (entry == null) {
            return new double[0];
        }
        if (entry.type != 12 && entry.type != 11) {
            throw trouble.badValue("type of " + TiffTag.name(tag), entry.type, "11 or 12, real numbers");
        }
        ByteBuffer raw = bytes(entry.offset, entry.count * SIZES[entry.type], TiffTag.name(tag));
        double[] values = new double[(int) entry.count];
        for (int i = 0; i < values.length; i++) {
            values[i] = entry.type == 12 ? raw.getDouble(8 * i) : raw.getFloat(4 * i);
        }
        return values;
    }

    /** The text of a tag without its closing zero bytes. */
    Optional<String> text(int tag) throws IOException {
        Entry entry = entries.get(tag);
        if (entry == null || entry.type != 2) {
            return Optional.empty();
        }
        byte[] raw = bytes(entry.offset, entry.count, TiffTag.name(tag)).array();
        int end = raw.length;
        while (end > 0 && raw[end - 1] == 0) {
            end--;
        }
        return Optional.of(new String(raw, 0, end, StandardCharsets.UTF_8));
    }
}
