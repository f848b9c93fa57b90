// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;

/** The tables every GeoPackage has, and a layer's entry in them. */
final class GeoPackageTables {
    private static final String[] CREATE = {
        """
        CREATE TABLE gpkg_spatial_ref_sys (srs_name TEXT NOT NULL, srs_id INTEGER NOT NULL PRIMARY KEY,
        organization TEXT NOT NULL, organization_coordsys_id INTEGER NOT NULL, definition TEXT NOT NULL,
        description TEXT, definition_12_063 TEXT NOT NULL DEFAULT 'undefined')""",
        """
        CREATE TABLE gpkg_contents (table_name TEXT NOT NULL PRIMARY KEY, data_type TEXT NOT NULL,
        identifier TEXT UNIQUE, description TEXT DEFAULT '', last_change DATETIME NOT NULL, min_x DOUBLE, min_y DOUBLE,
        max_x DOUBLE, max_y DOUBLE, srs_id INTEGER, CONSTRAINT fk_gc_r_srs_id FOREIGN KEY (srs_id)
        REFERENCES gpkg_spatial_ref_sys(srs_id))""",
        """
        CREATE TABLE gpkg_geometry_columns (table_name TEXT NOT NULL, column_name TEXT NOT NULL,
        geometry_type_name TEXT NOT NULL, srs_id INTEGER NOT NULL, z TINYINT NOT NULL, m TINYINT NOT NULL,
        CONSTRAINT pk_geom_cols PRIMARY KEY (table_name, column_name), CONSTRAINT uk_gc_table_name UNIQUE (table_name),
        CONSTRAINT fk_gc_tn FOREIGN KEY (table_name) REFERENCES gpkg_contents(table_name),
        CONSTRAINT fk_gc_srs FOREIGN KEY (srs_id) REFERENCES gpkg_spatial_ref_sys (srs_id))""",
        """
        CREATE TABLE gpkg_extensions (table_name TEXT, column_name TEXT, extension_name TEXT NOT NULL,
        definition TEXT NOT NULL, scope TEXT NOT NULL,
        CONSTRAINT ge_tce UNIQUE (table_name, column_name, extension_name))""",
        """
        INSERT INTO gpkg_extensions VALUES ('gpkg_spatial_ref_sys', 'definition_12_063', 'gpkg_crs_wkt',
        'http://www.geopackage.org/spec120/#extension_crs_wkt', 'read-write')"""};
    private static final int OWN_SYSTEM = 100_001;
    private static final String EARTH = "GEOGCS[\"WGS 84\",DATUM[\"WGS_1984\","
            + "SPHEROID[\"WGS 84\",6378137,298.257223563]],"
            + "PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433],AUTHORITY[\"EPSG\",\"4326\"]]";

    private GeoPackageTables() {
    }

    /**
     * A layer's entry.
     *
     * @param table      its table
     * @param geometry   its kind of geometry
     * @param system     number of its reference system (1)
     * @param hasHeights whether all places have heights
     * @param range      least east, least north, greatest east, greatest north (m)
     */
    record Layer(String table, String geometry, int system, boolean hasHeights, double[] range) {
    }

    /**
     * Creates the tables and the reference systems every file must hold, and the site's own.
     *
     * @param base  the open file
     * @param frame the site's reference system
     * @throws SQLException if the file refuses
     */
    static void create(Connection base, SiteFrame frame) throws SQLException {
        try (Statement statement = base.createStatement()) {
            for (String create : CREATE) {
                statement.execute(create);
            }
        }
        system(base, new Object[] {"Undefined cartesian", -1, "NONE", -1, "undefined", "undefined", "undefined"});
        system(base, new Object[] {"Undefined geographic", 0, "NONE", 0, "undefined", "undefined", "undefined"});
        system(base, new Object[] {"WGS 84 geodetic", 4326, "EPSG", 4326, EARTH, "the Earth; not used", "undefined"});
        if (!frame.wellKnown().isEmpty()) {
            int own = number(frame);
            boolean old = frame.wellKnown().stripLeading().startsWith("PROJCS[");
            system(base, new Object[] {frame.name(), own, frame.authority().isEmpty() ? "NONE" : frame.authority(),
                own, old ? frame.wellKnown() : "undefined",
                "projected metres on the Moon", old ? "undefined" : frame.wellKnown()});
        }
    }

    /**
     * The number of the site's reference system: its code, where that is one.
     *
     * @param frame the reference system
     * @return the code; else a number of our own
     */
    static int number(SiteFrame frame) {
        boolean isCode = frame.code().matches("[1-9]\\d{0,8}") && !frame.code().equals("4326");
        return isCode ? Integer.parseInt(frame.code()) : OWN_SYSTEM;
    }

    private static void system(Connection base, Object[] values) throws SQLException {
        try (PreparedStatement row = base.prepareStatement(
                "INSERT INTO gpkg_spatial_ref_sys VALUES (?, ?, ?, ?, ?, ?, ?)")) {
            for (int i = 0; i < values.length; i++) {
                row.setObject(i + 1, values[i]);
            }
            row.execute();
        }
    }

    /**
     * Enters a layer.
     *
     * @param base       the open file
     * @param layer      the layer
     * @param lastChange time of last change
     * @throws SQLException if the file refuses
     */
    static void register(Connection base, Layer layer, String lastChange) throws SQLException {
        try (PreparedStatement row = base.prepareStatement("INSERT INTO gpkg_contents (table_name, data_type, "
                + "identifier, last_change, min_x, min_y, max_x, max_y, srs_id) "
                + "VALUES (?, 'features', ?, ?, ?, ?, ?, ?, ?)")) {
            row.setString(1, layer.table);
            row.setString(2, layer.table);
            row.setString(3, lastChange);
            for (int i = 0; i < layer.range.length; i++) {
                row.setDouble(4 + i, layer.range[i]);
            }
            row.setInt(8, layer.system);
            row.execute();
        }
        try (PreparedStatement row = base.prepareStatement(
                "INSERT INTO gpkg_geometry_columns VALUES (?, 'geom', ?, ?, ?, 0)")) {
            row.setString(1, layer.table);
            row.setString(2, layer.geometry);
            row.setInt(3, layer.system);
            row.setInt(4, layer.hasHeights ? 1 : 0);
            row.execute();
        }
    }
}
