// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.foundation.Vec3;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reads back what was written, with code that shares nothing with the writers. */
class ExchangeFilesTest {
    private static final double TENTH_OF_A_MILLIMETRE = 1e-4;
    private static final String HOSTILE = "A'); DROP TABLE gpkg_contents; -- \"\n<b>";
    static final SiteFrame FRAME = new SiteFrame("Moon south polar stereographic", "IAU_2015", "30135",
            "PROJCRS[\"Moon south polar stereographic\",BASEGEOGCRS[\"Moon (2015) - Sphere / Ocentric\","
            + "DATUM[\"Moon (2015) - Sphere\",ELLIPSOID[\"Moon (2015) - Sphere\",1737400,0,LENGTHUNIT[\"metre\",1]]],"
            + "PRIMEM[\"Reference Meridian\",0,ANGLEUNIT[\"degree\",0.0174532925199433]]],"
            + "CONVERSION[\"South Polar Stereographic\",METHOD[\"Polar Stereographic (variant A)\",ID[\"EPSG\",9810]],"
            + "PARAMETER[\"Latitude of natural origin\",-90,ANGLEUNIT[\"degree\",0.0174532925199433]],"
            + "PARAMETER[\"Longitude of natural origin\",0,ANGLEUNIT[\"degree\",0.0174532925199433]],"
            + "PARAMETER[\"Scale factor at natural origin\",1,SCALEUNIT[\"unity\",1]],"
            + "PARAMETER[\"False easting\",0,LENGTHUNIT[\"metre\",1]],"
            + "PARAMETER[\"False northing\",0,LENGTHUNIT[\"metre\",1]]],CS[Cartesian,2],"
            + "AXIS[\"(E)\",north,MERIDIAN[90,ANGLEUNIT[\"degree\",0.0174532925199433]],LENGTHUNIT[\"metre\",1]],"
            + "AXIS[\"(N)\",north,MERIDIAN[0,ANGLEUNIT[\"degree\",0.0174532925199433]],LENGTHUNIT[\"metre\",1]]]",
                    0.98);

    @TempDir
    private Path directory;

    static List<Feature> features() {
        return List.of(
                new Feature("hulls", "A", Feature.Shape.AREA, List.of(new Vec3(0, 0, 5), new Vec3(0, 10, 5),
                        new Vec3(10, 10, 6), new Vec3(10, 0, 6)), Map.of("length_m", 43.5, "note", HOSTILE)),
                new Feature("hulls", HOSTILE, Feature.Shape.AREA, List.of(new Vec3(20, 0, 5), new Vec3(30, 0, 5),
                        new Vec3(25, 8.25, 6)), Map.of("length_m", Double.NaN)),
                new Feature("anchors", "A winch 1", Feature.Shape.POINT, List.of(new Vec3(-45.12345, 3, 101.5)),
                        Map.of()),
                new Feature("haul_ways", "east to A", Feature.Shape.LINE, List.of(new Vec3(0, 0, Double.NaN),
                        new Vec3(5, 5, Double.NaN), new Vec3(9, 1, Double.NaN)), Map.of("bank_m3", 120.25)));
    }

    @Test
    void geoJsonHoldsEveryFeatureAndSaysWhatItsCoordinatesAre() throws Exception {
        Path file = directory.resolve("site.geojson");
        GeoJsonFile.write(file, features(), FRAME);
        JsonNode json = new ObjectMapper().readTree(file.toFile());
        assertEquals("FeatureCollection", json.get("type").asText());
        assertTrue(json.get("coordinates_are").asText().contains("not longitude and latitude"));
        assertEquals(FRAME.wellKnown(), json.at("/reference_system/well_known_text").asText());
        assertEquals(FRAME.wellKnown() + "\n", Files.readString(directory.resolve("site.wkt")));
        assertEquals("urn:ogc:def:crs:IAU:2015:30135", json.at("/crs/properties/name").asText());
        assertEquals(4, json.get("features").size());
        JsonNode ring = json.at("/features/0/geometry/coordinates/0");
        assertEquals(5, ring.size());
        assertEquals(ring.get(0), ring.get(4));
        assertTrue(area(ring) > 0, "outer rings run anticlockwise");
        assertEquals(HOSTILE, json.at("/features/0/properties/note").asText());
        assertTrue(json.at("/features/1/properties/length_m").isNull());
        assertEquals(-45.12345, json.at("/features/2/geometry/coordinates/0").asDouble(), TENTH_OF_A_MILLIMETRE);
        assertEquals(2, json.at("/features/3/geometry/coordinates/0").size(), "no height where none is known");
    }

    private static double area(JsonNode ring) {
        double twice = 0;
        for (int i = 0; i + 1 < ring.size(); i++) {
            twice += ring.get(i).get(0).asDouble() * ring.get(i + 1).get(1).asDouble()
                    - ring.get(i + 1).get(0).asDouble() * ring.get(i).get(1).asDouble();
        }
        return twice / 2;
    }

    @Test
    void theDrawingFileHoldsLayersPointsAndClosedPolylines() throws Exception {
        Path file = directory.resolve("site.dxf");
        DxfFile.write(file, features());
        List<String> lines = Files.readAllLines(file, StandardCharsets.US_ASCII);
        assertEquals(0, lines.size() % 2, "group codes and values come in pairs");
        Map<String, Integer> kinds = new HashMap<>();
        List<String> texts = new ArrayList<>();
        int closed = 0;
        String entity = "";
        for (int i = 0; i < lines.size(); i += 2) {
            int code = Integer.parseInt(lines.get(i).trim());
            String value = lines.get(i + 1);
            if (code == 0) {
                entity = value;
                kinds.merge(value, 1, Integer::sum);
            } else if (code == 1 && "TEXT".equals(entity)) {
                texts.add(value);
            } else if (code == 70 && "POLYLINE".equals(entity) && (Integer.parseInt(value.trim()) & 1) == 1) {
                closed++;
            }
        }
        assertEquals(Map.of("SECTION", 3, "ENDSEC", 3, "POLYLINE", 3, "VERTEX", 10, "SEQEND", 3, "POINT", 1, "TEXT", 4,
                "EOF", 1, "TABLE", 2), subset(kinds));
        assertEquals(2, closed);
        assertEquals(List.of("A", "A'); DROP TABLE gpkg_contents; -- \" <b>", "A winch 1", "east to A"), texts);
        assertTrue(lines.contains("HAUL_WAYS_NO_HEIGHT"));
    }

    private static Map<String, Integer> subset(Map<String, Integer> kinds) {
        Map<String, Integer> kept = new HashMap<>(kinds);
        kept.keySet().removeAll(List.of("LTYPE", "LAYER", "ENDTAB"));
        return kept;
    }

    @Test
    void aGeoPackageHoldsTablesGeometryAndTheLunarSystem() throws Exception {
        Path file = directory.resolve("site.gpkg");
        GeoPackageFile.write(file, features(), FRAME, Map.of());
        GeoPackageFile.write(file, features(), FRAME, Map.of());
        byte[] head = Files.readAllBytes(file);
        assertEquals("SQLite format 3", new String(head, 0, 15, StandardCharsets.US_ASCII));
        assertEquals("GPKG", new String(head, 68, 4, StandardCharsets.US_ASCII));
        try (Connection base = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = base.createStatement()) {
            assertEquals(3, one(statement, "SELECT count(*) FROM gpkg_contents WHERE data_type ="
                    + " 'features'"));
            assertEquals(3, one(statement, "SELECT count(*) FROM layer_styles JOIN gpkg_geometry_columns ON"
                    + " f_table_name = table_name AND f_geometry_column = column_name"));
            assertEquals(2, one(statement, "SELECT count(*) FROM hulls_areas"));
            assertEquals(1, one(statement, "SELECT count(*) FROM hulls_areas WHERE length_m IS NULL"));
            assertEquals(30135, one(statement, "SELECT organization_coordsys_id FROM gpkg_spatial_ref_sys"
                    + " WHERE srs_id = (SELECT srs_id FROM gpkg_contents LIMIT 1)"));
            assertEquals(0, one(statement, "SELECT z FROM gpkg_geometry_columns WHERE table_name='haul_ways_lines'"));
            try (ResultSet row = statement.executeQuery("SELECT geom, note FROM hulls_areas WHERE id = 'A'")) {
                row.next();
                assertEquals(HOSTILE, row.getString(2));
                polygon(row.getBytes(1));
            }
            try (ResultSet row = statement.executeQuery("PRAGMA foreign_key_check")) {
                assertTrue(!row.next(), "no broken references");
            }
        }
    }

    private static void polygon(byte[] blob) {
        ByteBuffer bytes = ByteBuffer.wrap(blob).order(ByteOrder.LITTLE_ENDIAN);
        assertEquals("GP", "" + (char) bytes.get() + (char) bytes.get());
        assertEquals(0, bytes.get());
        assertEquals(3, bytes.get());
        bytes.getInt();
        double[] envelope = {bytes.getDouble(), bytes.getDouble(), bytes.getDouble(), bytes.getDouble()};
        assertArrayEquals(new double[] {0, 10, 0, 10}, envelope);
        assertEquals(1, bytes.get());
        assertEquals(1003, bytes.getInt());
        assertEquals(1, bytes.getInt());
        assertEquals(5, bytes.getInt());
        assertEquals(5 * 24, bytes.remaining());
    }

    private static int one(Statement statement, String query) throws Exception {
        try (ResultSet row = statement.executeQuery(query)) {
            row.next();
            return row.getInt(1);
        }
    }

    @Test
    void theSameFeaturesGiveTheSameBytes() throws Exception {
        for (String name : List.of("a", "b")) {
            GeoPackageFile.write(directory.resolve(name + ".gpkg"), features(), FRAME, Map.of());
            GeoJsonFile.write(directory.resolve(name + ".geojson"), features(), FRAME);
            DxfFile.write(directory.resolve(name + ".dxf"), features());
        }
        for (String kind : List.of("gpkg", "geojson", "dxf")) {
            assertEquals(-1, Files.mismatch(directory.resolve("a." + kind), directory.resolve("b." + kind)), kind);
        }
    }

    @Test
    void namesThatAreNotLatinStandInTheDrawingFile() {
        assertEquals("\\U+6708\\U+9762 A", DxfPairs.ascii("\u6708\u9762 A"));
        assertEquals("\\U+005CU+0041 \\U+0025\\U+0025d \\U+005EJ", DxfPairs.ascii("\\U+0041 %%d ^J"));
        assertEquals("a b", DxfPairs.ascii("a\nb"));
    }

    @Test
    void noTwoFeaturesOfALayerHaveOneId() {
        List<Feature> own = Feature.withOwnIds(List.of(point("ways", "a"), point("ways", "a"), point("ways", "a (2)"),
                point("pads", "a"), point("ways", "a")));
        assertEquals(List.of("a", "a (3)", "a (2)", "a", "a (4)"), own.stream().map(Feature::id).toList());
    }

    private static Feature point(String layer, String id) {
        return new Feature(layer, id, Feature.Shape.POINT, List.of(Vec3.ZERO), Map.of());
    }

    @Test
    void everyTableHasASpatialIndexThatHoldsItsRows() throws Exception {
        Path file = directory.resolve("index.gpkg");
        GeoPackageFile.write(file, features(), FRAME, Map.of());
        try (Connection base = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = base.createStatement()) {
            assertEquals(3, one(statement, "SELECT count(*) FROM gpkg_extensions WHERE extension_name ="
                    + " 'gpkg_rtree_index'"));
            assertEquals(1, one(statement, "SELECT count(*) FROM rtree_hulls_areas_geom WHERE minx > 15"));
            assertEquals(18, one(statement, "SELECT count(*) FROM sqlite_master WHERE type = 'trigger'"));
            assertEquals(30135, one(statement, "SELECT srs_id FROM gpkg_contents LIMIT 1"));
        }
    }

    @Test
    void numbersAreWrittenPlainly() {
        assertEquals("-0.0050 12.3457 0.0000 -3.1000", String.join(" ", Decimals.of(-0.005, 4),
                Decimals.of(12.34567, 4), Decimals.of(-0.00001, 4), Decimals.of(-3.1, 4)));
        assertThrows(IllegalArgumentException.class, () -> Decimals.of(Double.NaN, 2));
    }

    @Test
    void withoutAReferenceSystemThePackageSaysUndefined() throws Exception {
        Path file = directory.resolve("bare.gpkg");
        GeoPackageFile.write(file, features(), new SiteFrame("not stated", "", "", "", 1), Map.of());
        try (Connection base = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = base.createStatement()) {
            assertEquals(-1, one(statement, "SELECT srs_id FROM gpkg_contents LIMIT 1"));
        }
    }

    @Test
    void aFeatureWithTooFewPlacesIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Feature("hulls", "A", Feature.Shape.AREA,
                List.of(Vec3.ZERO, Vec3.UP), Map.of()));
        assertThrows(IllegalArgumentException.class, () -> new Feature("Hulls; --", "A", Feature.Shape.POINT,
                List.of(Vec3.ZERO), Map.of()));
    }
}
