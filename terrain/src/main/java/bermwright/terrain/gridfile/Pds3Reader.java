// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads raw images of the Planetary Data System, version 3, with the label in the same file or beside it.
 *
 * @see "Planetary Data System Standards Reference, version 3.8 (2009), JPL D-7669, appendix A.20 (IMAGE); Data
 *     Dictionary: LINE_PROJECTION_OFFSET, MAP_SCALE"
 */
final class Pds3Reader {
    private static final int MOST_OF_A_LABEL = 1 << 20;
    private static final String MAP = "IMAGE_MAP_PROJECTION.";
    private static final String CONVERT = "; gdal_translate -of GTiff IN OUT.tif converts what is described otherwise";

    private final Path file;
    private final FileTrouble trouble;
    private final Pds3Label label;

    private Pds3Reader(Path file, Pds3Label label) {
        this.file = file;
        this.trouble = new FileTrouble(file);
        this.label = label;
    }

    static boolean isLabel(byte[] head) {
        String start = new String(head, StandardCharsets.ISO_8859_1).stripLeading();
        return start.startsWith("PDS_VERSION_ID") || start.startsWith("CCSD3ZF")
                || start.startsWith("/*") && start.contains("PDS_VERSION_ID");
    }

    static GroundFacts open(Path file) throws IOException {
        String text;
        try (InputStream in = Files.newInputStream(file)) {
            text = new String(in.readNBytes(MOST_OF_A_LABEL), StandardCharsets.ISO_8859_1);
        }
        return new Pds3Reader(file, Pds3Label.of(text, new FileTrouble(file))).open();
    }

    private GroundFacts open() throws IOException {
        if (!label.hasObject("IMAGE")) {
            throw trouble.badValue("OBJECT", label.hasObject("UNCOMPRESSED_FILE") ? "UNCOMPRESSED_FILE, packed"
                    : "no IMAGE",
                    "IMAGE, a raw image" + CONVERT);
        }
        int columns = label.count("IMAGE.LINE_SAMPLES");
        int lines = label.count("IMAGE.LINES");
        if (label.number("IMAGE.BANDS", 1) != 1) {
            throw trouble.badValue("IMAGE.BANDS", label.number("IMAGE.BANDS", 1), "1, the height");
        }
        String type = label.text("IMAGE.SAMPLE_TYPE").orElse("not there").toUpperCase(Locale.ROOT);
        SampleKind kind = kind(type);
        long stride = (long) columns * kind.bytes() + (long) label.number("IMAGE.LINE_PREFIX_BYTES", 0)
                + (long) label.number("IMAGE.LINE_SUFFIX_BYTES", 0);
        Pointer pointer = pointer();
        long prefix = (long) label.number("IMAGE.LINE_PREFIX_BYTES", 0);
        RawImage image = new RawImage("PDS3 image", pointer.file, new RawSamples.Layout(columns, lines,
                pointer.offset + prefix, stride), kind, order(type), place(), values(kind), List.of());
        return image.open(trouble, "^IMAGE");
    }

    /** Where the label says the numbers begin. */
    private record Pointer(Path file, long offset) {
    }

    private Pointer pointer() throws IOException {
        String raw = label.raw("^IMAGE").orElseThrow(() -> trouble.badValue("^IMAGE", "not there",
                "the file or the record where the image begins"));
        String inside = raw.replaceAll("[()]", " ").strip();
        String name = "";
        if (inside.startsWith("\"") && inside.indexOf('"', 1) > 0) {
            int end = inside.indexOf('"', 1);
            name = inside.substring(1, end).strip();
            inside = inside.substring(end + 1).replace(",", " ").strip();
        }
        boolean bytes = inside.toUpperCase(Locale.ROOT).contains("<BYTES>");
        String digits = inside.replaceAll("<.*", "").strip();
        long begins = 1;
        if (!digits.isEmpty()) {
            try {
                begins = Long.parseLong(digits);
            } catch (NumberFormatException e) {
                throw trouble.badValue("^IMAGE", raw, "a file name, a record number or a byte, such as"
                        + " (\"GROUND.IMG\", 5) or 1025 <BYTES>");
            }
        }
        if (begins < 1 || begins > Files.size(file) + Integer.MAX_VALUE && name.isEmpty()) {
            throw trouble.badValue("^IMAGE", raw, "1 or more");
        }
        long unit = bytes || begins == 1 ? 1 : label.count("RECORD_BYTES");
        long offset = Math.multiplyHigh(begins - 1, unit) != 0 ? -1 : (begins - 1) * unit;
        return new Pointer(name.isEmpty() ? file : beside(name), offset);
    }

    /** The data file beside the label, in whichever letters; never elsewhere. */
    private Path beside(String name) throws IOException {
        if (name.contains("/") || name.contains("\\") || name.startsWith("..")) {
            throw trouble.badValue("^IMAGE", "\"" + name + "\"", "the name of a file beside the label");
        }
        Path exact = file.resolveSibling(name);
        Path folder = Optional.ofNullable(file.toAbsolutePath().getParent()).orElse(Path.of("."));
        if (!Files.exists(exact)) {
            try (Stream<Path> all = Files.list(folder)) {
                return all.filter(p -> p.getFileName().toString().equalsIgnoreCase(name)).findFirst().orElse(exact);
            }
        }
        return exact;
    }

    private SampleKind kind(String type) {
        int bits = label.count("IMAGE.SAMPLE_BITS");
        boolean real = type.contains("REAL") || type.equals("FLOAT");
        boolean signed = type.endsWith("INTEGER") && !type.contains("UNSIGNED");
        if (type.startsWith("VAX")) {
            throw trouble.badValue("IMAGE.SAMPLE_TYPE", type, "whole numbers or IEEE real numbers" + CONVERT);
        }
        for (SampleKind kind : SampleKind.values()) {
            boolean isSigned = kind == SampleKind.INT16 || kind == SampleKind.INT32;
            if (kind.bytes() * 8 == bits && kind.isReal() == real && (real || isSigned == signed)) {
                return kind;
            }
        }
        throw trouble.badValue("IMAGE.SAMPLE_BITS", bits + " of " + type,
                "16 or 32 of whole numbers, 32 or 64 of real numbers; 8 bits are a picture, not heights");
    }

    private static ByteOrder order(String type) {
        return type.startsWith("LSB") || type.startsWith("PC_") ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN;
    }

    private RawImage.Values values(SampleKind kind) {
        double factor = label.number("IMAGE.SCALING_FACTOR", 1);
        if (!(Double.isFinite(factor) && factor != 0)) {
            throw trouble.badValue("IMAGE.SCALING_FACTOR", factor, "a number other than 0");
        }
        double[] marks = Stream.of("MISSING_CONSTANT", "MISSING", "INVALID_CONSTANT", "NULL", "CORE_NULL")
                .flatMap(k -> label.mark("IMAGE." + k, kind).stream()).mapToDouble(Double::doubleValue).distinct()
                .toArray();
        VerticalUnit unit = VerticalUnit.of(label.text("IMAGE.UNIT"), Optional.empty(), trouble);
        return new RawImage.Values(factor, label.number("IMAGE.OFFSET", 0), unit, marks);
    }

    private RawImage.Place place() {
        double spacing = metres(MAP + "MAP_SCALE");
        double west = -label.wanted(MAP + "SAMPLE_PROJECTION_OFFSET") * spacing;
        double north = label.wanted(MAP + "LINE_PROJECTION_OFFSET") * spacing;
        if (label.number(MAP + "MAP_PROJECTION_ROTATION", 0) % 360 != 0) {
            throw trouble.badValue(MAP + "MAP_PROJECTION_ROTATION", label.number(MAP + "MAP_PROJECTION_ROTATION", 0),
                    "0; gdalwarp IN OUT straightens a turned file");
        }
        String direction = label.text(MAP + "POSITIVE_LONGITUDE_DIRECTION").orElse("EAST").toUpperCase(Locale.ROOT);
        if (!direction.equals("EAST")) {
            throw trouble.badValue(MAP + "POSITIVE_LONGITUDE_DIRECTION", direction, "EAST");
        }
        double radius = metres(MAP + "A_AXIS_RADIUS");
        return new RawImage.Place(west, north, spacing, Optional.of(ArchiveMap.system(new ArchiveMap.Named(
                MAP + "MAP_PROJECTION_TYPE", label.text(MAP + "MAP_PROJECTION_TYPE").orElse("not there")),
                label.number(MAP + "CENTER_LATITUDE", 0), label.number(MAP + "CENTER_LONGITUDE", 0), radius, trouble)));
    }

    /** A length with its unit; without one, kilometres, as the dictionary has it for both keywords. */
    private double metres(String key) {
        Pds3Label.Quantity q = label.quantity(key).orElseThrow(() -> trouble.badValue(key, "not there", "a length"));
        String unit = q.unit().replaceAll("/PIX(EL)?$", "");
        return q.value() * switch (unit) {
            case "", "KM", "KILOMETER", "KILOMETERS", "KILOMETRE" -> 1000;
            case "M", "METER", "METERS", "METRE" -> 1;
            default -> throw trouble.badValue(key, q.value() + " <" + q.unit() + ">",
                    "<KM> or <M>, of a pixel or none");
        };
    }
}
