// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.shape;

/**
 * Whole numbers that look like chance but follow from a place and a seed alone, so that ground of any size can be made
 * piece by piece, in any order, on any number of processors.
 *
 * @see "Steele, Lea and Flood (2014), Fast splittable pseudorandom number generators, OOPSLA (the mixing function)"
 */
final class LatticeNoise {
    private static final double ONE_IN_2_53 = 0x1.0p-53;

    private LatticeNoise() {
    }

    static long mixed(long seed, long i, long j) {
        return mix(mix(mix(seed + 0x9E3779B97F4A7C15L) + i * 0xD1B54A32D192ED03L) + j * 0x8CB92BA72F3D8DD7L);
    }

    static long mix(long value) {
        long z = value;
        z = (z ^ z >>> 30) * 0xBF58476D1CE4E5B9L;
        z = (z ^ z >>> 27) * 0x94D049BB133111EBL;
        return z ^ z >>> 31;
    }

    /** A number from 0 up to 1, the {@code which}-th of a place. */
    static double share(long mixed, int which) {
        return (mix(mixed + which * 0x9E3779B97F4A7C15L) >>> 11) * ONE_IN_2_53;
    }

    /** A number from -1 to 1. */
    static double swing(long seed, long i, long j) {
        return 2 * ((mixed(seed, i, j) >>> 11) * ONE_IN_2_53) - 1;
    }
}
