// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.util.Map;

/**
 * Names of the tags of TIFF files that are read here.
 *
 * @see "TIFF revision 6.0 (1992); OGC GeoTIFF standard 1.1 (2019), OGC 19-008r4"
 */
final class TiffTag {
    private static final Map<Integer, String> NAMES = Map.ofEntries(Map.entry(254, "NewSubfileType"),
            Map.entry(256, "ImageWidth"), Map.entry(257, "ImageLength"), Map.entry(258, "BitsPerSample"),
            Map.entry(259, "Compression"), Map.entry(273, "StripOffsets"), Map.entry(277, "SamplesPerPixel"),
            Map.entry(278, "RowsPerStrip"), Map.entry(279, "StripByteCounts"), Map.entry(317, "Predictor"),
            Map.entry(322, "TileWidth"), Map.entry(323, "TileLength"), Map.entry(324, "TileOffsets"),
            Map.entry(325, "TileByteCounts"), Map.entry(339, "SampleFormat"), Map.entry(33550, "ModelPixelScale"),
            Map.entry(33922, "ModelTiepoint"), Map.entry(34264, "ModelTransformation"),
            Map.entry(34735, "GeoKeyDirectory"), Map.entry(34736, "GeoDoubleParams"),
            Map.entry(34737, "GeoAsciiParams"), Map.entry(42112, "GDAL_METADATA"), Map.entry(42113, "GDAL_NODATA"));

    private TiffTag() {
    }

    /** A tag for people: its name and number. */
    static String name(int tag) {
        String name = NAMES.get(tag);
        return name == null ? "tag " + tag : name + " (tag " + tag + ")";
    }
}
