// SPDX-License-Identifier: Apache-2.0
package bermwright.report.exchange;

import bermwright.foundation.Vec3;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * Writes features as a drawing exchange file of release 12 (AC1009), in projected metres: each layer its own, points
 * with their ids as text, lines and areas as 3D polylines.
 *
 * <p>Signs beyond ASCII are written as U+XXXX after a backslash, as drawing programs read them. A height that is not
 * known is written as 0 on a layer whose name ends in {@code _NO_HEIGHT}.
 *
 * @see "DXF reference, release 12: HEADER, TABLES and ENTITIES sections; from memory"
 */
public final class DxfFile {
    private static final double TEXT_HEIGHT = 1.0;
    /** Colour numbers 1 to 7 go round the layers. */
    private static final int COLOURS = 7;

    private DxfFile() {
    }

    /**
     * Writes the file.
     *
     * @param file     where to
     * @param features the features
     * @throws IOException if it cannot be written
     */
    public static void write(Path file, List<Feature> features) throws IOException {
        DxfPairs out = new DxfPairs();
        header(out, features);
        List<String> layers = features.stream().map(DxfFile::layer).distinct().toList();
        out.pair(0, "SECTION").pair(2, "TABLES");
        out.pair(0, "TABLE").pair(2, "LTYPE").pair(70, "1").pair(0, "LTYPE").pair(2, "CONTINUOUS").pair(70, "0")
                .pair(3, "Solid line").pair(72, "65").pair(73, "0").pair(40, "0.0").pair(0, "ENDTAB");
        out.pair(0, "TABLE").pair(2, "LAYER").pair(70, Integer.toString(layers.size()));
        for (int i = 0; i < layers.size(); i++) {
            out.pair(0, "LAYER").pair(2, layers.get(i)).pair(70, "0").pair(62, Integer.toString(i % COLOURS + 1))
                    .pair(6, "CONTINUOUS");
        }
        out.pair(0, "ENDTAB").pair(0, "ENDSEC").pair(0, "SECTION").pair(2, "ENTITIES");
        features.forEach(feature -> entity(out, feature));
        out.pair(0, "ENDSEC").pair(0, "EOF");
        out.write(file);
    }

    private static void header(DxfPairs out, List<Feature> features) {
        double[] range = {0, 0, 0, 0};
        List<Vec3> all = features.stream().flatMap(f -> f.places().stream()).toList();
        if (!all.isEmpty()) {
            range[0] = all.stream().mapToDouble(Vec3::x).min().orElseThrow();
            range[1] = all.stream().mapToDouble(Vec3::y).min().orElseThrow();
            range[2] = all.stream().mapToDouble(Vec3::x).max().orElseThrow();
            range[3] = all.stream().mapToDouble(Vec3::y).max().orElseThrow();
        }
        out.pair(0, "SECTION").pair(2, "HEADER").pair(9, "$ACADVER").pair(1, "AC1009");
        out.pair(9, "$EXTMIN").number(10, range[0]).number(20, range[1]).number(30, 0);
        out.pair(9, "$EXTMAX").number(10, range[2]).number(20, range[3]).number(30, 0);
        out.pair(0, "ENDSEC");
    }

    private static void entity(DxfPairs out, Feature feature) {
        String layer = layer(feature);
        Vec3 first = feature.places().get(0);
        if (feature.shape() == Feature.Shape.POINT) {
            out.pair(0, "POINT").pair(8, layer).place(first);
        } else {
            out.pair(0, "POLYLINE").pair(8, layer).pair(66, "1").pair(70,
                    feature.shape() == Feature.Shape.AREA ? "9" : "8").place(Vec3.ZERO);
            for (Vec3 place : feature.places()) {
                out.pair(0, "VERTEX").pair(8, layer).place(place).pair(70, "32");
            }
            out.pair(0, "SEQEND").pair(8, layer);
        }
        out.pair(0, "TEXT").pair(8, layer).place(first).number(40, TEXT_HEIGHT).words(1, feature.id());
    }

    private static String layer(Feature feature) {
        boolean known = feature.places().stream().noneMatch(place -> Double.isNaN(place.z()));
        return feature.layer().toUpperCase(Locale.ROOT) + (known ? "" : "_NO_HEIGHT");
    }
}
