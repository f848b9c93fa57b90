// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Reads raw images of the Planetary Data System, version 4, by their XML label.
 *
 * @see "PDS4 Data Provider's Handbook, version 1.16 (2021); PDS4 Information Model, classes Array_2D_Image,
 *     Element_Array, Special_Constants; Cartography dictionary"
 */
final class Pds4Reader {
    private static final long MOST_OF_A_LABEL = 8L << 20;
    private static final String CONVERT = "; gdal_translate -of GTiff IN OUT.tif converts what is described otherwise";
    private static final List<String> ARRAYS = List.of("Array_2D_Image", "Array_2D_Map", "Array_2D", "Array_3D_Image",
            "Array_3D");
    private static final List<String> CONSTANTS = List.of("missing_constant", "invalid_constant", "unknown_constant",
            "not_applicable_constant", "error_constant", "saturated_constant");

    private final Path file;
    private final FileTrouble trouble;
    private final Document label;

    private Pds4Reader(Path file, Document label) {
        this.file = file;
        this.trouble = new FileTrouble(file);
        this.label = label;
    }

    static boolean isLabel(byte[] head) {
        String start = new String(head, StandardCharsets.ISO_8859_1).stripLeading();
        return start.startsWith("<?xml") || start.startsWith("\u00ef\u00bb\u00bf<?xml") || start.startsWith("<Product");
    }

    static GroundFacts open(Path file) throws IOException {
        FileTrouble trouble = new FileTrouble(file);
        if (Files.size(file) > MOST_OF_A_LABEL) {
            throw trouble.badValue("label", Files.size(file) + " bytes", "up to " + MOST_OF_A_LABEL);
        }
        return new Pds4Reader(file, SafeXml.parsed(Files.readAllBytes(file), "label", trouble)).open();
    }

    private GroundFacts open() throws IOException {
        Element array = ARRAYS.stream().flatMap(n -> all(label.getDocumentElement(), n).stream()).findFirst()
                .orElseThrow(() -> trouble.badValue("Array_2D_Image", "not there", "a raw image in a PDS4 label"
                + CONVERT));
        if (!text(array, "axis_index_order").orElse("Last Index Fastest").equals("Last Index Fastest")) {
            throw trouble.badValue("axis_index_order", text(array, "axis_index_order").orElse(""),
                    "Last Index Fastest");
        }
        long columns = elements(array, "Sample");
        long lines = elements(array, "Line");
        HeightLimits.checkFrame("Axis_Array elements", columns, lines, trouble);
        for (Element axis : all(array, "Axis_Array")) {
            String name = text(axis, "axis_name").orElse("");
            if (!name.equals("Sample") && !name.equals("Line") && number(axis, "elements") != 1) {
                throw trouble.badValue("elements of " + name, number(axis, "elements"), "1, the height");
            }
        }
        String type = text(array, "data_type").orElse("not there");
        SampleKind kind = kind(type);
        Path data = data(array);
        long offset = (long) optional(array, "offset").orElse(0.0).doubleValue();
        RawImage image = new RawImage("PDS4 image", data, new RawSamples.Layout((int) columns, (int) lines, offset,
                columns * kind.bytes()), kind, type.contains("LSB") ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN,
                place(), values(array, kind), List.of());
        return image.open(trouble, "file_name");
    }

    private Path data(Element array) {
        Element area = (Element) array.getParentNode();
        String name = text(area, "file_name").orElseThrow(() -> trouble.badValue("file_name", "not there",
                "the name of the file with the numbers"));
        if (name.contains("/") || name.contains("\\") || name.startsWith("..")) {
            throw trouble.badValue("file_name", "\"" + name + "\"", "the name of a file beside the label");
        }
        return file.resolveSibling(name);
    }

    private SampleKind kind(String type) {
        return switch (type) {
            case "SignedLSB2", "SignedMSB2" -> SampleKind.INT16;
            case "UnsignedLSB2", "UnsignedMSB2" -> SampleKind.UINT16;
            case "SignedLSB4", "SignedMSB4" -> SampleKind.INT32;
            case "UnsignedLSB4", "UnsignedMSB4" -> SampleKind.UINT32;
            case "IEEE754LSBSingle", "IEEE754MSBSingle" -> SampleKind.FLOAT32;
            case "IEEE754LSBDouble", "IEEE754MSBDouble" -> SampleKind.FLOAT64;
            default -> throw trouble.badValue("data_type", type, "whole numbers of 2 or 4 bytes, IEEE754 single or"
                    + " double; one byte is a picture, not heights");
        };
    }

    private RawImage.Values values(Element array, SampleKind kind) {
        double factor = optional(array, "scaling_factor").orElse(1.0);
        if (!(Double.isFinite(factor) && factor != 0)) {
            throw trouble.badValue("scaling_factor", factor, "a number other than 0");
        }
        double[] marks = CONSTANTS.stream().flatMap(name -> mark(array, name, kind).stream())
                .mapToDouble(Double::doubleValue).distinct().toArray();
        return new RawImage.Values(factor, optional(array, "value_offset").orElse(0.0),
                VerticalUnit.of(text(array, "unit"), Optional.empty(), trouble), marks);
    }

    private Optional<Double> mark(Element array, String name, SampleKind kind) {
        Optional<String> text = text(array, name);
        if (text.isPresent() && text.get().startsWith("0x")) {
            try {
                long bits = Long.parseUnsignedLong(text.get().substring(2), 16);
                return Optional.of(kind == SampleKind.FLOAT32 ? (double) Float.intBitsToFloat((int) bits)
                        : kind == SampleKind.FLOAT64 ? Double.longBitsToDouble(bits) : (double) bits);
            } catch (NumberFormatException e) {
                throw trouble.badValue(name, text.get(), "a number");
            }
        }
        return optional(array, name).map(kind::stored);
    }

    private RawImage.Place place() {
        Element root = label.getDocumentElement();
        double spacing = length(root, "pixel_resolution_x");
        double down = length(root, "pixel_resolution_y");
        if (Math.abs(spacing - down) > 1e-6 * spacing) {
            throw trouble.badValue("pixel_resolution_x, pixel_resolution_y", spacing + " x " + down,
                    "square pixels; gdalwarp -tr makes them");
        }
        String name = text(root, "map_projection_name").orElse("not there");
        double latitude = optional(root, "latitude_of_projection_origin").orElse(0.0);
        if (name.toUpperCase(java.util.Locale.ROOT).startsWith("EQUI")) {
            latitude = optional(root, "standard_parallel_1").orElse(latitude);
        }
        if (optional(root, "scale_factor_at_projection_origin").orElse(1.0) != 1) {
            throw trouble.badValue("scale_factor_at_projection_origin", optional(root,
                    "scale_factor_at_projection_origin").get(), "1" + CONVERT);
        }
        ReferenceSystem system = ArchiveMap.system(new ArchiveMap.Named("map_projection_name", name), latitude,
                optional(root, "longitude_of_central_meridian").orElse(0.0), length(root, "a_axis_radius"), trouble);
        // The place is that of the corner of the first pixel.
        return new RawImage.Place(length(root, "upperleft_corner_x") + spacing / 2,
                length(root, "upperleft_corner_y") - spacing / 2, spacing, Optional.of(system));
    }

    private double length(Element within, String name) {
        Element found = all(within, name).stream().findFirst().orElseThrow(() -> trouble.badValue(name, "not there",
                "a length"));
        String unit = found.getAttribute("unit").toLowerCase(java.util.Locale.ROOT).replace("/pixel", "");
        double value = parsed(name, found.getTextContent());
        return value * switch (unit) {
            case "m", "" -> 1;
            case "km" -> 1000;
            default -> throw trouble.badValue("unit of " + name, unit, "m or km");
        };
    }

    private long elements(Element array, String axisName) {
        return all(array, "Axis_Array").stream().filter(a -> text(a, "axis_name").orElse("").equals(axisName))
                .findFirst().map(a -> (long) number(a, "elements")).orElseThrow(() -> trouble.badValue("axis_name",
                "no " + axisName, "axes Line and Sample"));
    }

    private double number(Element within, String name) {
        return optional(within, name).orElseThrow(() -> trouble.badValue(name, "not there", "a number"));
    }

    private Optional<Double> optional(Element within, String name) {
        return text(within, name).map(t -> parsed(name, t));
    }

    private double parsed(String name, String text) {
        try {
            return Double.parseDouble(text.strip());
        } catch (NumberFormatException e) {
            throw trouble.badValue(name, "\"" + text.strip() + "\"", "a number");
        }
    }

    private static Optional<String> text(Element within, String name) {
        return all(within, name).stream().findFirst().map(e -> e.getTextContent().strip()).filter(t -> !t.isEmpty());
    }

    private static List<Element> all(Element within, String name) {
        NodeList found = within.getElementsByTagNameNS("*", name);
        List<Element> list = new ArrayList<>();
        IntStream.range(0, found.getLength()).forEach(i -> list.add((Element) found.item(i)));
        return Stream.of(list).flatMap(List::stream).toList();
    }
}
