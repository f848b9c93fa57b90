// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

/**
 * Unpacks the LZW of TIFF: codes of 9 to 12 bits, most significant bit first, each length left one code early.
 *
 * @see "TIFF revision 6.0 (1992), section 13"
 */
final class Lzw {
    private static final int CLEAR = 256;
    private static final int END = 257;
    private static final int FIRST = 258;
    private static final int MOST_CODES = 4096;

    private final byte[] packed;
    private final int[] prefix = new int[MOST_CODES];
    private final byte[] last = new byte[MOST_CODES];
    private final int[] length = new int[MOST_CODES];
    private long bits;

    private Lzw(byte[] packed) {
        this.packed = packed;
        for (int i = 0; i < CLEAR; i++) {
            last[i] = (byte) i;
            length[i] = 1;
        }
    }

    /**
     * Unpacks into an array.
     *
     * @return how many bytes were unpacked; fewer than the array holds where the codes end early or make no sense
     */
    static int unpack(byte[] packed, byte[] to) {
        return new Lzw(packed).run(to);
    }

    private int run(byte[] to) {
        int filled = 0;
        int width = 9;
        int next = FIRST;
        int before = -1;
        while (filled < to.length) {
            int code = code(width);
            if (code < 0 || code == END) {
                return filled;
            }
            if (code == CLEAR) {
                width = 9;
                next = FIRST;
                before = -1;
                continue;
            }
            boolean known = code < CLEAR || code >= FIRST && code < next;
            if (before < 0 ? code >= CLEAR : !known && code != next) {
                return filled;
            }
            if (before >= 0 && next < MOST_CODES) {
                prefix[next] = before;
                length[next] = length[before] + 1;
                last[next] = first(known ? code : before);
                next++;
            } else if (!known) {
                return filled;
            }
            filled += write(code, to, filled);
            before = code;
            if (next >= (1 << width) - 1 && width < 12) {
                width++;
            }
        }
        return filled;
    }

    private byte first(int code) {
        int c = code;
        while (c >= FIRST) {
            c = prefix[c];
        }
        return (byte) c;
    }

    private int write(int code, byte[] to, int at) {
        int c = code;
        for (int i = at + length[code] - 1; i >= at; i--) {
            if (i < to.length) {
                to[i] = last[c];
            }
            c = prefix[c];
        }
        return Math.min(length[code], to.length - at);
    }

    private int code(int width) {
        if (bits + width > 8L * packed.length) {
            return -1;
        }
        int at = (int) (bits >> 3);
        int three = (packed[at] & 255) << 16 | (at + 1 < packed.length ? (packed[at + 1] & 255) << 8 : 0)
                | (at + 2 < packed.length ? packed[at + 2] & 255 : 0);
        int code = three >> 24 - width - (int) (bits & 7) & (1 << width) - 1;
        bits += width;
        return code;
    }
}
