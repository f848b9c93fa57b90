// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Styles in a GeoPackage: the table {@code layer_styles} that open geographic programs have agreed on, each style as
 * Styled Layer Descriptor and in the form that the program reads that began the table.
 *
 * @see "OGC 02-070, Styled Layer Descriptor 1.0.0, chapter 11; the table's columns as GDAL's driver for GeoPackage
 *     writes them; the other form from memory"
 */
final class GeoPackageStyles {
    private static final String TABLE = """
            CREATE TABLE layer_styles (id INTEGER PRIMARY KEY AUTOINCREMENT NOT NULL, f_table_catalog TEXT(256),
            f_table_schema TEXT(256), f_table_name TEXT(256), f_geometry_column TEXT(256), styleName TEXT(30),
            styleQML TEXT, styleSLD TEXT, useAsDefault BOOLEAN, description TEXT, owner TEXT(30), ui TEXT(30),
            update_time DATETIME)""";
    private static final String ROW = "INSERT INTO layer_styles (f_table_catalog, f_table_schema, f_table_name,"
            + " f_geometry_column, styleName, styleQML, styleSLD, useAsDefault, description, owner, ui, update_time)"
            + " VALUES ('', '', ?, 'geom', ?, ?, ?, 1, ?, '', '', ?)";
    private static final double PIXEL_MM = 25.4 / 96;
    private static final double MARK_PX = 9;
    private static final double SEEN_THROUGH = 0.25;

    private GeoPackageStyles() {
    }

    /** Writes a style for each table. */
    static void create(Connection base, Map<String, List<Feature>> tables, Map<String, LayerLook> looks,
            String lastChange) throws SQLException {
        try (Statement statement = base.createStatement()) {
            statement.execute(TABLE);
            statement.execute("INSERT INTO gpkg_contents (table_name, data_type, identifier, description,"
                    + " last_change) VALUES ('layer_styles', 'attributes', 'layer_styles', 'how layers look', '"
                    + lastChange + "')");
        }
        try (PreparedStatement row = base.prepareStatement(ROW)) {
            for (Map.Entry<String, List<Feature>> table : tables.entrySet()) {
                Feature first = table.getValue().get(0);
                LayerLook look = looks.getOrDefault(first.layer(), LayerLook.PLAIN);
                row.setString(1, table.getKey());
                row.setString(2, "as drawn");
                row.setString(3, own(first.shape(), look));
                row.setString(4, sld(table.getKey(), first.shape(), look));
                row.setString(5, "As the site plan draws it.");
                row.setString(6, lastChange);
                row.execute();
            }
        }
    }

    private static String sld(String table, Feature.Shape shape, LayerLook look) {
        String dash = look.dash().isEmpty() ? "" : css("stroke-dasharray", look.dash());
        String stroke = "<Stroke>" + css("stroke", look.colour()) + css("stroke-width", number(look.width())) + dash
                + "</Stroke>";
        String symbol = switch (shape) {
            case POINT -> "<PointSymbolizer><Graphic><Mark><WellKnownName>circle</WellKnownName><Fill>"
                    + css("fill", "#ffffff") + "</Fill>" + stroke + "</Mark><Size>" + number(MARK_PX)
                    + "</Size></Graphic></PointSymbolizer>";
            case LINE -> "<LineSymbolizer>" + stroke + "</LineSymbolizer>";
            case AREA -> "<PolygonSymbolizer>" + (look.fill() == LayerLook.Fill.NONE ? "" : "<Fill>" + css("fill",
                    look.fill() == LayerLook.Fill.WHITE ? "#ffffff" : look.colour()) + css("fill-opacity",
                    number(SEEN_THROUGH)) + "</Fill>") + stroke + "</PolygonSymbolizer>";
        };
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<StyledLayerDescriptor version=\"1.0.0\""
                + " xmlns=\"http://www.opengis.net/sld\"><NamedLayer><Name>" + table + "</Name><UserStyle><Name>"
                + "as drawn</Name><FeatureTypeStyle><Rule>" + symbol + "</Rule></FeatureTypeStyle></UserStyle>"
                + "</NamedLayer></StyledLayerDescriptor>\n";
    }

    private static String css(String name, String value) {
        return "<CssParameter name=\"" + name + "\">" + value + "</CssParameter>";
    }

    private static String own(Feature.Shape shape, LayerLook look) {
        String width = number(look.width() * PIXEL_MM);
        String dashes = look.dash().isEmpty() ? "" : prop("use_customdash", "1") + prop("customdash",
                look.dash().replace(' ', ';')) + prop("customdash_unit", "Pixel");
        String fill = look.fill() == LayerLook.Fill.WHITE ? "255,255,255,128" : colour(look);
        String symbol = switch (shape) {
            case POINT -> layer("marker", "SimpleMarker", prop("name", "circle") + prop("color", "255,255,255,255")
                    + prop("outline_color", colour(look)) + prop("outline_width", width)
                    + prop("size", number(MARK_PX * PIXEL_MM)));
            case LINE -> layer("line", "SimpleLine", prop("line_color", colour(look)) + prop("line_width", width)
                    + dashes);
            case AREA -> layer("fill", "SimpleFill", prop("color", fill) + prop("style", look.fill().brush())
                    + prop("outline_color", colour(look)) + prop("outline_width", width)
                    + prop("outline_style", look.dash().isEmpty() ? "solid" : "dash"));
        };
        return "<qgis styleCategories=\"Symbology\"><renderer-v2 type=\"singleSymbol\"><symbols>" + symbol
                + "</symbols></renderer-v2></qgis>\n";
    }

    private static String layer(String type, String kind, String props) {
        return "<symbol name=\"0\" type=\"" + type + "\" alpha=\"1\"><layer class=\"" + kind + "\" enabled=\"1\""
                + " locked=\"0\" pass=\"0\">" + props + "</layer></symbol>";
    }

    private static String prop(String key, String value) {
        return "<prop k=\"" + key + "\" v=\"" + value + "\"/>";
    }

    private static String colour(LayerLook look) {
        int rgb = Integer.parseInt(look.colour().substring(1), 16);
        return (rgb >> 16) + "," + (rgb >> 8 & 0xFF) + "," + (rgb & 0xFF) + ",255";
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }
}
