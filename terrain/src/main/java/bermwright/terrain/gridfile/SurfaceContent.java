// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.util.Objects;
import java.util.Optional;

/**
 * What the numbers of a written file are.
 *
 * @param kind        how they are stored
 * @param unit        their unit, as GDAL and others show it; {@code 1} for pure numbers
 * @param description what they are, in a few words; empty where nothing need be said
 */
public record SurfaceContent(Kind kind, String unit, Optional<String> description) {
    /** Heights in metres. */
    public static final SurfaceContent HEIGHTS = new SurfaceContent(Kind.FLOAT32, "m", Optional.empty());

    /** How numbers are stored. */
    public enum Kind {
        /** Floating point of 32 bits, -9999 where there is no value. */
        FLOAT32,
        /** Whole numbers from 0 to 255, 0 where there is no value. */
        BYTE
    }

    /** Refuses null. */
    public SurfaceContent {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(description, "description");
    }

    int bytes() {
        return kind == Kind.FLOAT32 ? 4 : 1;
    }

    String metadata() {
        String unitText = unit.equals("1") ? "" : "  <Item name=\"UNITTYPE\" sample=\"0\" role=\"unittype\">" + unit
                + "</Item>\n";
        String text = description.map(d -> "  <Item name=\"DESCRIPTION\" sample=\"0\" role=\"description\">" + d
                + "</Item>\n").orElse("");
        return "<GDALMetadata>\n" + unitText + text + "</GDALMetadata>\n";
    }
}
