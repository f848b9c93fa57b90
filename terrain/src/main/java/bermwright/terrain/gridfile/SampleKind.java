// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

/** How a number is stored in a TIFF file. */
enum SampleKind {
    INT16(2, 2, false), UINT16(1, 2, false), INT32(2, 4, false), UINT32(1, 4, false), FLOAT32(3, 4, true),
    FLOAT64(3, 8, true);

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
        throw trouble.badValue("sample", bits + " bits of format " + format,
                "whole numbers of 16 or 32 bits, floating point of 32 or 64 bits; 8 bits are a picture, not heights");
    }

    int bytes() {
        return bytes;
    }

    boolean isReal() {
        return real;
    }

    /** The number that the low bits stand for. */
    double value(long stored) {
        return switch (this) {
            case INT16 -> (short) stored;
            case UINT16 -> stored & 0xFFFF;
            case INT32 -> (int) stored;
            case UINT32 -> stored & 0xFFFFFFFFL;
            case FLOAT32 -> Float.intBitsToFloat((int) stored);
            case FLOAT64 -> Double.longBitsToDouble(stored);
        };
    }

    /** A number as it looks after being stored and read back. */
    double stored(double value) {
        return this == FLOAT32 ? (float) value : value;
    }
}
