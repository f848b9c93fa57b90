// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Formats that are known by their first bytes and not read here; one open command converts each. */
final class OtherFormats {
    private static final String[][] KNOWN = {{"\u0089HDF\r\n\u001a\n", "an HDF5 or netCDF 4 file"},
        {"CDF\u0001", "a netCDF file"}, {"CDF\u0002", "a netCDF file"}, {"\u000e\u0003\u0013\u0001", "an HDF4 file"},
        {"EHFA_HEADER_TAG", "an ERDAS Imagine file"}, {"\u0000\u0000\u0000\u000cjP  ", "a JPEG 2000 file"},
        {"\u0089PNG", "a PNG picture"}, {"\u00ff\u00d8\u00ff", "a JPEG picture"}, {"GIF8", "a GIF picture"},
        {"Object = IsisCube", "an ISIS cube"}, {"DSAA", "a Surfer grid"}, {"DSBB", "a Surfer grid"},
        {"DSRB", "a Surfer grid"}, {"SIMPLE  =", "a FITS file"}, {"ENVI", "an ENVI header"},
        {"SQLite format 3", "a GeoPackage or other SQLite file"}, {"<VRTDataset", "a virtual raster"},
        {"NITF", "a NITF file"}};
    private static final String[][] PACKED = {{"PK\u0003\u0004", "a zip archive", "unzip FILE unpacks it"},
        {"\u001f\u008b", "a gzip file", "gunzip FILE unpacks it"},
        {"LASF", "a cloud of points", "pdal translate IN OUT.tif --writer gdal makes a grid of it"}};

    private OtherFormats() {
    }

    /** What a file is and which command makes a file of it that can be read; absent where it is not known. */
    record Known(String format, String command) {
    }

    static Optional<Known> of(byte[] head) {
        String start = new String(head, StandardCharsets.ISO_8859_1);
        for (String[] known : KNOWN) {
            if (start.startsWith(known[0])) {
                return Optional.of(new Known(known[1], "gdal_translate -of GTiff IN OUT.tif converts it"));
            }
        }
        for (String[] packed : PACKED) {
            if (start.startsWith(packed[0])) {
                return Optional.of(new Known(packed[1], packed[2]));
            }
        }
        return Optional.empty();
    }
}
