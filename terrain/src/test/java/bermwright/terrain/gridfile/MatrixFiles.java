// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.IOException;
import java.io.InputStream;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/** The small files that GDAL wrote, by name; made by src/test/gdal/make-geotiff-matrix.py. */
final class MatrixFiles {
    private MatrixFiles() {
    }

    static Map<String, byte[]> all() throws IOException {
        return all("geotiff-matrix.zip");
    }

    static Map<String, byte[]> all(String name) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (InputStream in = MatrixFiles.class.getResourceAsStream(name);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
                files.put(e.getName(), zip.readAllBytes());
            }
        }
        return files;
    }
}
