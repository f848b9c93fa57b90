// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;

/**
 * The spatial index of a table: an R*-tree over the ranges of its features, and the triggers that keep it true when
 * another program changes the table.
 *
 * @see "OGC 12-128r15, GeoPackage 1.2, annex F.3 (RTree Spatial Indexes): tables, triggers and the entry"
 */
final class GeoPackageIndex {
    private static final String RANGE = "ST_MinX(NEW.geom), ST_MaxX(NEW.geom), ST_MinY(NEW.geom), ST_MaxY(NEW.geom)";
    private static final String[] TRIGGERS = {
        """
        CREATE TRIGGER "rtree_%1$s_geom_insert" AFTER INSERT ON "%1$s"
        WHEN (NEW.geom NOT NULL AND NOT ST_IsEmpty(NEW.geom))
        BEGIN INSERT OR REPLACE INTO "rtree_%1$s_geom" VALUES (NEW.fid, %2$s); END""",
        """
        CREATE TRIGGER "rtree_%1$s_geom_update1" AFTER UPDATE OF geom ON "%1$s"
        WHEN OLD.fid = NEW.fid AND (NEW.geom NOTNULL AND NOT ST_IsEmpty(NEW.geom))
        BEGIN INSERT OR REPLACE INTO "rtree_%1$s_geom" VALUES (NEW.fid, %2$s); END""",
        """
        CREATE TRIGGER "rtree_%1$s_geom_update2" AFTER UPDATE OF geom ON "%1$s"
        WHEN OLD.fid = NEW.fid AND (NEW.geom ISNULL OR ST_IsEmpty(NEW.geom))
        BEGIN DELETE FROM "rtree_%1$s_geom" WHERE id = OLD.fid; END""",
        """
        CREATE TRIGGER "rtree_%1$s_geom_update3" AFTER UPDATE ON "%1$s"
        WHEN OLD.fid != NEW.fid AND (NEW.geom NOTNULL AND NOT ST_IsEmpty(NEW.geom))
        BEGIN DELETE FROM "rtree_%1$s_geom" WHERE id = OLD.fid;
        INSERT OR REPLACE INTO "rtree_%1$s_geom" VALUES (NEW.fid, %2$s); END""",
        """
        CREATE TRIGGER "rtree_%1$s_geom_update4" AFTER UPDATE ON "%1$s"
        WHEN OLD.fid != NEW.fid AND (NEW.geom ISNULL OR ST_IsEmpty(NEW.geom))
        BEGIN DELETE FROM "rtree_%1$s_geom" WHERE id IN (OLD.fid, NEW.fid); END""",
        """
        CREATE TRIGGER "rtree_%1$s_geom_delete" AFTER DELETE ON "%1$s" WHEN OLD.geom NOT NULL
        BEGIN DELETE FROM "rtree_%1$s_geom" WHERE id = OLD.fid; END"""};

    private GeoPackageIndex() {
    }

    /**
     * Makes the index of a table that is filled.
     *
     * @param base   the open file
     * @param table  the table: lower-case letters, digits and _
     * @param ranges range of each row in turn: least east, least north, greatest east, greatest north (m)
     * @throws SQLException if the file refuses
     */
    static void create(Connection base, String table, List<double[]> ranges) throws SQLException {
        try (Statement statement = base.createStatement()) {
            statement.execute("CREATE VIRTUAL TABLE \"rtree_%s_geom\" USING rtree(id, minx, maxx, miny, maxy)"
                    .formatted(table));
        }
        try (PreparedStatement row = base.prepareStatement("INSERT INTO \"rtree_%s_geom\" VALUES (?, ?, ?, ?, ?)"
                .formatted(table))) {
            for (int i = 0; i < ranges.size(); i++) {
                double[] range = ranges.get(i);
                row.setLong(1, i + 1);
                row.setDouble(2, range[0]);
                row.setDouble(3, range[2]);
                row.setDouble(4, range[1]);
                row.setDouble(5, range[3]);
                row.addBatch();
            }
            row.executeBatch();
        }
        try (Statement statement = base.createStatement()) {
            for (String trigger : TRIGGERS) {
                statement.execute(trigger.formatted(table, RANGE));
            }
            statement.execute("INSERT INTO gpkg_extensions VALUES ('%s', 'geom', 'gpkg_rtree_index', "
                    .formatted(table) + "'http://www.geopackage.org/spec120/#extension_rtree', 'write-only')");
        }
    }
}
