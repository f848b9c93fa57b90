// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

/**
 * Bands of slope, told apart by colour and by pattern.
 *
 * <p>The colours run from light to dark in one order of brightness, so that they keep their order for every kind of
 * colour sight and in grey print.
 */
public enum SlopeBand {
    /** Below 5 degrees: left as it is. */
    LEVEL(0, 0x000000, 0),
    /** 5 to 10 degrees: sparse dots. */
    GENTLE(5, 0xF6E27A, 1),
    /** 10 to 15 degrees: lines one way. */
    MARKED(10, 0xE9A13B, 2),
    /** 15 to 20 degrees: close lines one way. */
    STEEP(15, 0xC2573F, 3),
    /** 20 to 30 degrees: lines both ways. */
    HARD(20, 0x8A2A6B, 4),
    /** 30 degrees and more, where loose soil starts to run: close lines both ways. */
    RUNNING(30, 0x3C1053, 5);

    private final double fromDeg;
    private final int colour;
    private final int pattern;

    SlopeBand(double fromDeg, int colour, int pattern) {
        this.fromDeg = fromDeg;
        this.colour = colour;
        this.pattern = pattern;
    }

    /**
     * The band of a slope.
     *
     * @param slopeDeg the slope in degrees, 0 or more
     * @return the band
     */
    public static SlopeBand of(double slopeDeg) {
        return slopeDeg < 5 ? LEVEL : slopeDeg < 10 ? GENTLE : slopeDeg < 15 ? MARKED : slopeDeg < 20 ? STEEP
                : slopeDeg < 30 ? HARD : RUNNING;
    }

    /**
     * Where the band begins.
     *
     * @return the least slope in it, in degrees
     */
    public double fromDeg() {
        return fromDeg;
    }

    /**
     * The band's colour.
     *
     * @return red, green and blue in one number (1)
     */
    public int colour() {
        return colour;
    }

    /**
     * Whether the band's pattern has ink on a pixel.
     *
     * @param x x (pixels)
     * @param y y (pixels)
     * @return true where it has
     */
    public boolean hasInk(int x, int y) {
        return switch (pattern) {
            case 1 -> x % 7 == 0 && y % 7 == 0 || x % 7 == 3 && y % 7 == 4;
            case 2 -> (x + y) % 9 == 0;
            case 3 -> (x + y) % 5 == 0;
            case 4 -> (x + y) % 7 == 0 || Math.floorMod(x - y, 7) == 0;
            case 5 -> (x + y) % 4 == 0 || Math.floorMod(x - y, 4) == 0;
            default -> false;
        };
    }
}
