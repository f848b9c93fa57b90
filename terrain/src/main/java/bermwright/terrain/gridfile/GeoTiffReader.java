// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.foundation.Progress;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads an elevation grid from a GeoTIFF file. */
final class GeoTiffReader {
    static final int PIXEL_SCALE = 33550;
    static final int TIE_POINTS = 33922;
    static final int TRANSFORMATION = 34264;
    static final int GDAL_METADATA = 42112;
    static final int GDAL_NODATA = 42113;

    /** The last pixel may be out of place by this share of a pixel through unequal pixel sides. */
    private static final double GREATEST_DRIFT = 0.05;

    private final TiffDirectory directory;
    private final FileTrouble trouble;

    private GeoTiffReader(TiffDirectory directory, FileTrouble trouble) {
        this.directory = directory;
        this.trouble = trouble;
    }

    static GroundFile read(Path file, GroundFiles.Knowledge knowledge, Progress progress) throws IOException {
        FileTrouble trouble = new FileTrouble(file);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            GeoTiffReader reader = new GeoTiffReader(TiffDirectory.first(channel, trouble), trouble);
            return reader.read(knowledge, progress);
        }
    }

    private GroundFile read(GroundFiles.Knowledge knowledge, Progress progress) throws IOException {
        TiffRaster raster = new TiffRaster(directory, trouble);
        GeoKeys keys = new GeoKeys(directory, trouble);
        GdalMetadata metadata = GdalMetadata.of(directory.text(GDAL_METADATA).orElse(""), trouble);
        Placement placement = placement(raster, keys);
        if (keys.isGeographic()) {
            throw geographic(raster, placement, keys);
        }
        Optional<ReferenceSystem> system = keys.referenceSystem();
        VerticalUnit unit = VerticalUnit.of(metadata.unit(), keys.verticalUnit(), trouble);
        OptionalDouble mark = noData();
        GridFrame frame = new GridFrame(raster.height(), raster.width(), placement.west, placement.south(raster),
                placement.stepEast);
        double stored = mark.isPresent() ? raster.kind().stored(mark.getAsDouble()) : Double.NaN;
        double factor = metadata.scale() * unit.metres();
        double offset = metadata.offset() * unit.metres();
        ElevationGrid grid = ElevationGrid.filled(frame, sink -> raster.fill(sink, placement.stepNorth < 0,
                value -> value == stored || Double.isNaN(value) ? Double.NaN
                        : HeightLimits.checked(value * factor + offset, trouble), progress));
        GroundFile.Heights heights = new GroundFile.Heights(raster.kind().name().toLowerCase(Locale.ROOT),
                unit.words(), mark, !keys.isPoint());
        return GroundAssembly.of(trouble.file(), new GroundAssembly.Found("GeoTIFF", grid, system, heights), knowledge);
    }

    /** Middle of the first pixel of the first line, and the steps from pixel to pixel and line to line. */
    private record Placement(double west, double firstNorth, double stepEast, double stepNorth) {
        double south(TiffRaster raster) {
            return stepNorth < 0 ? firstNorth + stepNorth * (raster.height() - 1) : firstNorth;
        }
    }

    private Placement placement(TiffRaster raster, GeoKeys keys) throws IOException {
        double[] matrix = matrix();
        for (double m : matrix) {
            if (!Double.isFinite(m)) {
                throw trouble.unreadable("its placement is not a number", "a place for the first pixel and the"
                        + " size of a pixel");
            }
        }
        double half = keys.isPoint() ? 0 : 0.5;
        double stepEast = matrix[0];
        double stepNorth = matrix[3];
        if (matrix[1] != 0 || matrix[2] != 0 || !(stepEast > 0) || stepNorth == 0) {
            throw trouble.unreadable("its lines do not run east", "lines along east; gdalwarp straightens a turned"
                    + " file");
        }
        double drift = Math.abs(stepEast - Math.abs(stepNorth)) * Math.max(raster.width(), raster.height());
        if (drift > GREATEST_DRIFT * stepEast) {
            throw trouble.badValue("pixel size", number(stepEast) + " x " + number(Math.abs(stepNorth)),
                    "square pixels; gdalwarp -tr " + number(stepEast) + " " + number(stepEast) + " IN OUT makes them");
        }
        return new Placement(matrix[4] + half * stepEast, matrix[5] + half * stepNorth, stepEast, stepNorth);
    }

    /** East and north by column and row: a, b, c, d of the linear part and the place of the raster's corner. */
    private double[] matrix() throws IOException {
        if (directory.has(TRANSFORMATION)) {
            double[] m = directory.reals(TRANSFORMATION);
            if (m.length >= 16) {
                return new double[] {m[0], m[1], m[4], m[5], m[3], m[7]};
            }
        }
        double[] scale = directory.reals(PIXEL_SCALE);
        double[] tie = directory.reals(TIE_POINTS);
        if (scale.length < 2 || tie.length < 6) {
            throw trouble.unreadable("it says not where it lies and how large its pixels are",
                    "a GeoTIFF with a pixel scale and a tie point, in metres");
        }
        if (tie.length > 6) {
            throw trouble.unreadable("it is placed by " + tie.length / 6 + " points",
                    "one tie point; gdalwarp straightens a file placed by several");
        }
        return new double[] {scale[0], 0, 0, -scale[1], tie[3] - tie[0] * scale[0], tie[4] + tie[1] * scale[1]};
    }

    private RuntimeException geographic(TiffRaster raster, Placement placement, GeoKeys keys) {
        double latitude = placement.firstNorth + placement.stepNorth * raster.height() / 2;
        double longitude = placement.west + placement.stepEast * raster.width() / 2;
        GeographicPlace centre = new GeographicPlace(Math.max(-90, Math.min(90, latitude)),
                Math.IEEEremainder(longitude, 360));
        return trouble.badValue("reference system", "in degrees", "a projected system in metres; warp the file with "
                + Warp.command(centre, keys.radius()));
    }

    private OptionalDouble noData() throws IOException {
        String text = directory.text(GDAL_NODATA).orElse("").strip();
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            return OptionalDouble.of(switch (text.toLowerCase(Locale.ROOT)) {
                case "nan", "-nan" -> Double.NaN;
                case "inf", "+inf" -> Double.POSITIVE_INFINITY;
                case "-inf" -> Double.NEGATIVE_INFINITY;
                default -> Double.parseDouble(text);
            });
        } catch (NumberFormatException e) {
            throw trouble.badValue("no-data mark", "\"" + text + "\"", "a number or nan");
        }
    }

    private static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e12 ? Long.toString((long) value)
                : Double.toString(value);
    }
}
