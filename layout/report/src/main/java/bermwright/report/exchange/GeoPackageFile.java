// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import bermwright.foundation.Vec3;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Writes features as a GeoPackage: one table for each layer and kind of geometry, the lunar reference system by its
 * well-known text.
 *
 * <p>Each table has a spatial index. The time of last change is fixed, so that the same plan gives the same file.
 *
 * @see "OGC 12-128r15, GeoPackage 1.2: annexes C and F.10 (well-known text for reference systems)"
 */
public final class GeoPackageFile {
    private static final int UNDEFINED_CARTESIAN = -1;
    private static final String LAST_CHANGE = "2000-01-01T00:00:00.000Z";
    private static final int APPLICATION_GPKG = 0x47504B47;
    private static final int VERSION_1_2 = 10200;

    private GeoPackageFile() {
    }

    /**
     * Writes the file; what is there is replaced.
     *
     * @param file     where to, ending in {@code .gpkg}
     * @param features the features
     * @param frame    the reference system
     * @param looks    how layers are to look, by layer; others are plain
     * @throws IOException if it cannot be written
     */
    public static void write(Path file, List<Feature> features, SiteFrame frame, Map<String, LayerLook> looks)
            throws IOException {
        Files.deleteIfExists(file);
        Map<String, List<Feature>> tables = new TreeMap<>();
        features.forEach(f -> tables.computeIfAbsent(table(f), key -> new ArrayList<>()).add(f));
        int system = frame.wellKnown().isEmpty() ? UNDEFINED_CARTESIAN : GeoPackageTables.number(frame);
        try (Connection base = DriverManager.getConnection("jdbc:sqlite:" + file.toAbsolutePath())) {
            try (Statement statement = base.createStatement()) {
                statement.execute("PRAGMA application_id = " + APPLICATION_GPKG);
                statement.execute("PRAGMA user_version = " + VERSION_1_2);
            }
            base.setAutoCommit(false);
            GeoPackageTables.create(base, frame);
            for (Map.Entry<String, List<Feature>> table : tables.entrySet()) {
                layer(base, table.getKey(), table.getValue(), system);
            }
            GeoPackageStyles.create(base, tables, looks, LAST_CHANGE);
            base.commit();
        } catch (SQLException e) {
            throw new IOException("GeoPackage " + file + " could not be written: " + e.getMessage(), e);
        }
    }

    private static String table(Feature feature) {
        return feature.layer() + switch (feature.shape()) {
            case POINT -> "_points";
            case LINE -> "_lines";
            case AREA -> "_areas";
        };
    }

    private static void layer(Connection base, String table, List<Feature> features, int system) throws SQLException {
        Map<String, String> columns = new LinkedHashMap<>();
        features.forEach(f -> f.attributes().forEach((key, value) -> columns.merge(key, kind(value),
                (a, b) -> a.equals(b) ? a : "TEXT")));
        String geometry = switch (features.get(0).shape()) {
            case POINT -> "POINT";
            case LINE -> "LINESTRING";
            case AREA -> "POLYGON";
        };
        StringBuilder create = new StringBuilder("CREATE TABLE ").append(quoted(table))
                .append(" (fid INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, geom ").append(geometry)
                .append(", id TEXT NOT NULL");
        columns.forEach((key, kind) -> create.append(", ").append(quoted(key)).append(' ').append(kind));
        try (Statement statement = base.createStatement()) {
            statement.execute(create.append(')').toString());
        }
        boolean hasHeights = features.stream().allMatch(GeoPackageFile::hasHeights);
        GeoPackageTables.register(base, new GeoPackageTables.Layer(table, geometry, system, hasHeights,
                range(features)), LAST_CHANGE);
        String insert = "INSERT INTO " + quoted(table) + " (geom, id"
                + columns.keySet().stream().map(key -> ", " + quoted(key)).reduce("", String::concat) + ") VALUES (?, ?"
                + ", ?".repeat(columns.size()) + ")";
        try (PreparedStatement row = base.prepareStatement(insert)) {
            for (Feature feature : features) {
                row.setBytes(1, blob(feature, system, hasHeights));
                row.setString(2, feature.id());
                int index = 3;
                for (String key : columns.keySet()) {
                    Object value = feature.attributes().get(key);
                    boolean unknown = value instanceof Double number && !Double.isFinite(number);
                    row.setObject(index++, unknown ? null : value);
                }
                row.addBatch();
            }
            row.executeBatch();
        }
        List<double[]> ranges = features.stream().map(f -> range(List.of(f))).toList();
        GeoPackageIndex.create(base, table, ranges);
    }

    private static String kind(Object value) {
        return value instanceof Double ? "DOUBLE" : value instanceof Long ? "INTEGER" : "TEXT";
    }

    private static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }

    private static boolean hasHeights(Feature feature) {
        return feature.places().stream().noneMatch(place -> Double.isNaN(place.z()));
    }

    private static double[] range(List<Feature> features) {
        List<Vec3> all = features.stream().flatMap(f -> f.places().stream()).toList();
        return new double[] {all.stream().mapToDouble(Vec3::x).min().orElseThrow(),
            all.stream().mapToDouble(Vec3::y).min().orElseThrow(),
            all.stream().mapToDouble(Vec3::x).max().orElseThrow(),
            all.stream().mapToDouble(Vec3::y).max().orElseThrow()};
    }

    /** The head "GP", the envelope, then well-known binary, all little-endian. */
    private static byte[] blob(Feature feature, int system, boolean heights) {
        List<Vec3> places = feature.closed();
        int each = heights ? 24 : 16;
        ByteBuffer bytes = ByteBuffer.allocate(64 + 16 + each * places.size()).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put((byte) 'G').put((byte) 'P').put((byte) 0);
        boolean point = feature.shape() == Feature.Shape.POINT;
        bytes.put((byte) (point ? 0b0000_0001 : 0b0000_0011)).putInt(system);
        if (!point) {
            double[] range = range(List.of(feature));
            bytes.putDouble(range[0]).putDouble(range[2]).putDouble(range[1]).putDouble(range[3]);
        }
        int kind = switch (feature.shape()) {
            case POINT -> 1;
            case LINE -> 2;
            case AREA -> 3;
        };
        bytes.put((byte) 1).putInt(heights ? 1000 + kind : kind);
        if (feature.shape() == Feature.Shape.AREA) {
            bytes.putInt(1);
        }
        if (!point) {
            bytes.putInt(places.size());
        }
        for (Vec3 place : places) {
            bytes.putDouble(place.x()).putDouble(place.y());
            if (heights) {
                bytes.putDouble(place.z());
            }
        }
        return Arrays.copyOf(bytes.array(), bytes.position());
    }
}
