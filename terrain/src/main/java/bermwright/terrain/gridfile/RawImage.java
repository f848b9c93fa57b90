// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A raw image of heights as a label describes it.
 *
 * @param format  the format in words
 * @param data    the file with the numbers
 * @param layout  where in it they stand
 * @param kind    how a number is stored
 * @param order   the order of its bytes
 * @param place   where the image lies
 * @param values  how numbers become heights
 * @param sayings what its reader noticed, in sentences
 */
record RawImage(String format, Path data, RawSamples.Layout layout, SampleKind kind, ByteOrder order, Place place,
        Values values, List<String> sayings) {
    private static final double LEAST_RADIUS = 1_700_000;
    private static final double GREATEST_RADIUS = 1_780_000;

    /** Middle of the first pixel of the first line, the northernmost, its size (m), and the map. */
    record Place(double west, double north, double spacing, Optional<ReferenceSystem> system) {
    }

    /** Height = stored x factor + offset, in the unit; the marks for missing ones. */
    record Values(double factor, double offset, VerticalUnit unit, double[] marks) {
    }

    /** Opens the numbers; nothing of them is read. */
    GroundFacts open(FileTrouble label, String dataKey) throws IOException {
        if (!Files.isRegularFile(data)) {
            throw label.badValue(dataKey, data.getFileName(), "a file beside the label");
        }
        long bytes = layout.offset() + (layout.height() - 1L) * layout.stride() + (long) layout.width() * kind.bytes();
        if (layout.offset() < 0 || layout.stride() < (long) layout.width() * kind.bytes() || bytes > Files.size(data)) {
            throw label.badValue(dataKey, data.getFileName() + " of " + Files.size(data) + " bytes", "a file with the "
                    + bytes + " bytes that the label announces");
        }
        HeightLimits.checkFrame("LINES and LINE_SAMPLES", layout.width(), layout.height(), label);
        HeightLimits.checkSpacing("MAP_SCALE", place.spacing, label);
        double south = place.north - place.spacing * (layout.height() - 1);
        HeightLimits.checkPlace("place of the first pixel", place.west, place.north, label);
        GridFrame frame = new GridFrame(layout.height(), layout.width(), place.west, south, place.spacing);
        double metres = values.unit.metres();
        double offset = values.offset * metres;
        // Radii from the body's centre become heights over the sphere of 2015.
        boolean radii = offset >= LEAST_RADIUS && offset <= GREATEST_RADIUS;
        HeightScale scale = new HeightScale(values.factor * metres,
                radii ? offset - KnownSystems.MOON_RADIUS_IAU_2015 : offset, values.marks, label);
        FileChannel channel = FileChannel.open(data, StandardOpenOption.READ);
        RawSamples samples = new RawSamples(channel, layout, kind, order, label);
        OptionalDouble mark = values.marks.length == 0 ? OptionalDouble.empty() : OptionalDouble.of(values.marks[0]);
        GroundFile.Heights heights = new GroundFile.Heights(kind.name().toLowerCase(java.util.Locale.ROOT),
                values.unit.words(), mark, true);
        return new GroundFacts(format, new StoredGround(samples, new StoredGround.Lie(frame, true), scale, 1, label),
                List.of(), place.system, heights, radii && offset != KnownSystems.MOON_RADIUS_IAU_2015
                ? plus(String.format(java.util.Locale.ROOT,
                "The label counts heights from %.1f km; they were brought to"
                + " the sphere of 1737.4 km.", offset / 1000)) : sayings);
    }

    private List<String> plus(String saying) {
        return java.util.stream.Stream.concat(sayings.stream(), java.util.stream.Stream.of(saying)).toList();
    }
}
