// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import bermwright.foundation.Vec3;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Writes features as GeoJSON.
 *
 * <p>The standard asks for longitude and latitude on the Earth; here the coordinates are projected metres on the Moon,
 * and the member {@code coordinates_are} says so. Where the reference system has a code, the older standard's member
 * {@code crs} names it, for programs that still read it. Its definition stands in {@code reference_system} and, as
 * text, in a file of its own beside this one.
 *
 * @see "RFC 7946, The GeoJSON Format, sections 3, 4 and 6.1 (foreign members)"
 * @see "The GeoJSON Format Specification (2008), section 3 (named coordinate reference systems), from memory"
 */
public final class GeoJsonFile {
    private GeoJsonFile() {
    }

    /**
     * Writes the file and, where there is a definition, {@code <name>.wkt} beside it.
     *
     * @param file     where to, ending in {@code .geojson}
     * @param features the features
     * @param frame    the reference system
     * @throws IOException if it cannot be written
     */
    public static void write(Path file, List<Feature> features, SiteFrame frame) throws IOException {
        try (JsonGenerator json = new JsonFactory().createGenerator(Files.newOutputStream(file))) {
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeStringField("type", "FeatureCollection");
            if (!frame.code().isEmpty()) {
                json.writeObjectFieldStart("crs");
                json.writeStringField("type", "name");
                json.writeObjectFieldStart("properties");
                json.writeStringField("name", uniformName(frame));
                json.writeEndObject();
                json.writeEndObject();
            }
            json.writeStringField("coordinates_are", "projected metres east, north and height in the reference system"
                    + " named below, on the Moon; not longitude and latitude");
            json.writeObjectFieldStart("reference_system");
            json.writeStringField("name", frame.name());
            json.writeStringField("authority", frame.authority());
            json.writeStringField("code", frame.code());
            json.writeNumberField("true_metres_in_a_projected_metre", frame.metreScale());
            json.writeStringField("well_known_text", frame.wellKnown());
            json.writeEndObject();
            json.writeArrayFieldStart("features");
            for (Feature feature : features) {
                feature(json, feature);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        if (!frame.wellKnown().isEmpty()) {
            String name = file.getFileName().toString().replaceAll("\\.geojson$", "");
            Files.writeString(file.resolveSibling(name + ".wkt"), frame.wellKnown() + "\n", StandardCharsets.UTF_8);
        }
    }

    /** Authority, its edition where it carries one,
    and code: IAU_2015 and 30135 give urn:ogc:def:crs:IAU:2015:30135. */
    private static String uniformName(SiteFrame frame) {
        int edition = frame.authority().lastIndexOf('_');
        return "urn:ogc:def:crs:" + (edition < 0 ? frame.authority() + ":" : frame.authority().substring(0, edition)
                + ":" + frame.authority().substring(edition + 1)) + ":" + frame.code();
    }

    private static void feature(JsonGenerator json, Feature feature) throws IOException {
        json.writeStartObject();
        json.writeStringField("type", "Feature");
        json.writeObjectFieldStart("properties");
        json.writeStringField("layer", feature.layer());
        json.writeStringField("id", feature.id());
        for (Map.Entry<String, Object> entry : feature.attributes().entrySet()) {
            if (entry.getValue() instanceof Double number && !Double.isFinite(number)) {
                json.writeNullField(entry.getKey());
            } else {
                json.writeObjectField(entry.getKey(), entry.getValue());
            }
        }
        json.writeEndObject();
        json.writeObjectFieldStart("geometry");
        json.writeStringField("type", switch (feature.shape()) {
            case POINT -> "Point";
            case LINE -> "LineString";
            case AREA -> "Polygon";
        });
        json.writeFieldName("coordinates");
        switch (feature.shape()) {
            case POINT -> place(json, feature.places().get(0));
            case LINE -> places(json, feature.places());
            default -> {
                json.writeStartArray();
                places(json, feature.closed());
                json.writeEndArray();
            }
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    private static void places(JsonGenerator json, List<Vec3> places) throws IOException {
        json.writeStartArray();
        for (Vec3 place : places) {
            place(json, place);
        }
        json.writeEndArray();
    }

    private static void place(JsonGenerator json, Vec3 place) throws IOException {
        json.writeStartArray();
        json.writeNumber(rounded(place.x()));
        json.writeNumber(rounded(place.y()));
        if (!Double.isNaN(place.z())) {
            json.writeNumber(rounded(place.z()));
        }
        json.writeEndArray();
    }

    /** To a tenth of a millimetre: no survey knows more. */
    private static double rounded(double metres) {
        return Math.round(metres * 1e4) / 1e4;
    }
}
