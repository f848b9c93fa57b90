// SPDX-License-Identifier: Apache-2.0
package bermwright.site.survey;

/** What a place is judged by. */
public enum Criterion {
    /** Slope of the bed along the hull. */
    SLOPE_ALONG("slope along the hull", "deg"),
    /** Slope of the bed across the hull. */
    SLOPE_ACROSS("slope across the hull", "deg"),
    /** Highest ground over the bed at the hull's skin. */
    HIGH_SPOT("high spot under the hull", "m"),
    /** Soil cut to make the bed level. */
    BENCH("soil cut for a level bench", "m3"),
    /** Highest ground over the bed at the skin of the hull as it swings. */
    SWEEP("ground standing in the sweep", "m"),
    /** Slope of the ground under winches, pole feet and anchors. */
    GEAR("slope under winches, poles and anchors", "deg"),
    /** Ground between the ends of lines and stays. */
    LINES("height of lines taken by the ground", "share"),
    /** Distance to landing pads. */
    PADS("distance to the nearest pad's stand-off", "m"),
    /** Haul to the soil that the cover needs. */
    SOIL("mean haul to soil enough for the cover", "m"),
    /** Horizon towards what has to be seen. */
    RELAY("relay over the horizon", "deg"),
    /** Hours of sunlight. */
    LIGHT("sunlight", "h");

    private final String words;
    private final String unit;

    Criterion(String words, String unit) {
        this.words = words;
        this.unit = unit;
    }

    /**
     * The criterion in words.
     *
     * @return such as {@code slope along the hull}
     */
    public String words() {
        return words;
    }

    /**
     * The unit of what is measured.
     *
     * @return the unit
     */
    public String unit() {
        return unit;
    }

    /**
     * Whether more is better.
     *
     * @return true where the limit is the least that will do, false where it is the most
     */
    public boolean isLeast() {
        return this == PADS || this == RELAY || this == LIGHT;
    }
}
