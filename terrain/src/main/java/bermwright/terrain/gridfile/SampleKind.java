// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.nio.ByteBuffer;

/** How a number is stored in a file. */
enum SampleKind {
    INT16(2, 2, false), UINT16(1, 2, false), INT32(2, 4, false), UINT32(1, 4, false), FLOAT32(3, 4, true),
    FLOAT64(3, 8, true), UINT8(1, 1, false);

    private static final int PIECE = 4096;
    private static final ThreadLocal<float[]> FLOATS = ThreadLocal.withInitial(() -> new float[PIECE]);
    private static final ThreadLocal<short[]> SHORTS = ThreadLocal.withInitial(() -> new short[PIECE]);

    private final int format;
    private final int bytes;
    private final boolean real;

    SampleKind(int format, int bytes, boolean real) {
        this.format = format;
        this.bytes = bytes;
        this.real = real;
    }

    static SampleKind of(long format, long bits, FileTrouble trouble) {
        for (SampleKind kind : values()) {
            if (kind.format == format && kind.bytes * 8L == bits) {
                return kind;
            }
        }
        throw refused(bits, format, trouble);
    }

    static RuntimeException refused(long bits, long format, FileTrouble trouble) {
        return trouble.badValue(TiffTag.name(TiffRaster.BITS), bits + " bits of format " + format,
                "whole numbers of 16 or 32 bits, floating point of 32 or 64 bits; 8 bits are a picture, not heights");
    }

    int bytes() {
        return bytes;
    }

    boolean isReal() {
        return real;
    }

    /** A number as it looks after being stored and read back. */
    double stored(double value) {
        return this == FLOAT32 ? (float) value : value;
    }

    /** Copies numbers from bytes in the buffer's own order, from its byte {@code from} on. */
    void copy(ByteBuffer buffer, int from, double[] into, int at, int count) {
        switch (this) {
            case FLOAT32 -> floats(buffer, from, into, at, count);
            case INT16, UINT16 -> shorts(buffer, from, into, at, count);
            case UINT8 -> {
                for (int i = 0; i < count; i++) {
                    into[at + i] = buffer.get(from + i) & 0xFF;
                }
            }
            default -> {
                for (int i = 0; i < count; i++) {
                    into[at + i] = this == FLOAT64 ? buffer.getDouble(from + 8 * i) : this == INT32
                            ? buffer.getInt(from + 4 * i) : buffer.getInt(from + 4 * i) & 0xFFFFFFFFL;
                }
            }
        }
    }

    private static void floats(ByteBuffer buffer, int from, double[] into, int at, int count) {
        float[] piece = FLOATS.get();
        for (int done = 0; done < count; done += PIECE) {
            int now = Math.min(PIECE, count - done);
            buffer.duplicate().order(buffer.order()).position(from + 4 * done).asFloatBuffer().get(piece, 0, now);
            for (int i = 0; i < now; i++) {
                into[at + done + i] = piece[i];
            }
        }
    }

    private void shorts(ByteBuffer buffer, int from, double[] into, int at, int count) {
        short[] piece = SHORTS.get();
        int mask = this == INT16 ? -1 : 0xFFFF;
        for (int done = 0; done < count; done += PIECE) {
            int now = Math.min(PIECE, count - done);
            buffer.duplicate().order(buffer.order()).position(from + 2 * done).asShortBuffer().get(piece, 0, now);
            for (int i = 0; i < now; i++) {
                into[at + done + i] = piece[i] & mask;
            }
        }
    }
}
