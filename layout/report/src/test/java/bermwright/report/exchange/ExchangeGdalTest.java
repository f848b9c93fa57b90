// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Vec3;
import bermwright.outside.OutsideProgram;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What GDAL reads in the files written here: counts, extents, areas, names, reference system. */
class ExchangeGdalTest {
    private static final Feature WIDE = new Feature("hulls", "\u6708\u9762 \u041b", Feature.Shape.AREA,
            List.of(new Vec3(100, 200, 1), new Vec3(112, 200, 1), new Vec3(112, 230, 1), new Vec3(100, 230, 1)),
            Map.of("length_m", 30.0));

    @TempDir
    private Path directory;

    @BeforeAll
    static void needGdal() throws InterruptedException {
        OutsideProgram.GDAL.need("ogrinfo");
    }

    private static List<Feature> features() {
        return Stream.concat(ExchangeFilesTest.features().stream(), Stream.of(WIDE)).toList();
    }

    @Test
    void aGeoPackageIsReadWithIndexAreaAndTheLunarSystem() throws Exception {
        Path file = directory.resolve("site.gpkg");
        GeoPackageFile.write(file, features(), ExchangeFilesTest.FRAME, Map.of("hulls", new LayerLook("#009e73",
                2, "10 3", LayerLook.Fill.CROSSED)));
        String said = OutsideProgram.run("ogrinfo", "-so", "-al", file.toString());
        assertTrue(!said.contains("Warning") && !said.contains("ERROR"), said);
        assertTrue(said.contains("Feature Count: 3") && said.contains("length_m: Real"), said);
        assertTrue(said.contains("Extent: (0.000000, 0.000000) - (112.000000, 230.000000)"), said);
        assertTrue(said.contains("Moon south polar stereographic") && said.contains("1737400"), said);
        String index = OutsideProgram.run("ogrinfo", file.toString(), "-sql",
                "SELECT HasSpatialIndex('hulls_areas', 'geom')");
        assertTrue(index.contains("HasSpatialIndex (Integer) = 1"), index);
        assertTrue(OutsideProgram.run("ogrinfo", file.toString(), "-sql", "SELECT ST_Area(geom) AS m2 FROM hulls_areas"
                + " WHERE length_m = 30").contains("m2 (Real) = 360"));
        assertTrue(OutsideProgram.run("ogrinfo", "-al", "-spat", "90", "190", "120", "240", file.toString(),
                "hulls_areas")
                .contains("Feature Count: 1"));
        assertTrue(OutsideProgram.run("ogrinfo", file.toString(), "-sql", "PRAGMA integrity_check").contains("= ok"));
        String styles = OutsideProgram.run("ogrinfo", file.toString(), "layer_styles");
        assertTrue(styles.contains("f_table_name (String) = hulls_areas") && styles.contains("#009e73"), styles);
        assertTrue(styles.contains("Feature Count: 3") && styles.contains("useAsDefault (Integer(Boolean)) = 1"),
                styles);
    }

    @Test
    void aDrawingFileIsReadWithNamesThatAreNotLatin() throws Exception {
        Path file = directory.resolve("site.dxf");
        DxfFile.write(file, features());
        String said = OutsideProgram.run("ogrinfo", "-al", file.toString());
        // This version of GDAL hands on the escapes of TEXT as they stand; drawing programs show the signs.
        assertTrue(said.contains("Text (String) = \\U+6708\\U+9762 \\U+041B"), said);
        assertTrue(said.contains("POLYGON Z ((100 200 1") || said.contains("LINESTRING Z (100 200 1"), said);
        // Each of the five features is a shape and its name.
        assertEquals(10, said.split("OGRFeature\\(entities\\)", -1).length - 1);
    }

    @Test
    void geoJsonIsReadWithAllFeatures() throws Exception {
        Path file = directory.resolve("site.geojson");
        GeoJsonFile.write(file, features(), ExchangeFilesTest.FRAME);
        String said = OutsideProgram.run("ogrinfo", "-so", "-al", file.toString());
        assertTrue(said.contains("Feature Count: 5") && said.contains("(-45.1234")
                && said.contains("(112.000000, 230.000000)"), said);
    }
}
