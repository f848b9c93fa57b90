// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what a GeoTIFF file says of its elevation grid. */
final class GeoTiffReader {
    static final int PIXEL_SCALE = 33550;
    static final int TIE_POINTS = 33922;
    static final int TRANSFORMATION = 34264;
    static final int GDAL_METADATA = 42112;
    static final int GDAL_NODATA = 42113;
    static final int SUBFILE = 254;
    /** A subfile of this kind is the image with fewer pixels. */
    static final int REDUCED = 1;

    /** The last pixel may be out of place by this share of a pixel through unequal pixel sides. */
    private static final double GREATEST_DRIFT = 0.05;

    private final TiffDirectory directory;
    private final FileTrouble trouble;

    private GeoTiffReader(TiffDirectory directory, FileTrouble trouble) {
        this.directory = directory;
        this.trouble = trouble;
    }

    /** What a file holds; the channel belongs to what is given back. */
    static GroundFacts open(FileChannel channel, FileTrouble trouble) throws IOException {
        List<TiffDirectory> directories = TiffDirectory.all(channel, trouble);
        return new GeoTiffReader(directories.get(0), trouble).facts(directories.subList(1, directories.size()));
    }

    private GroundFacts facts(List<TiffDirectory> others) throws IOException {
        TiffRaster raster = new TiffRaster(directory, trouble);
        if (raster.kind() == SampleKind.UINT8) {
            throw SampleKind.refused(8, 1, trouble);
        }
        GeoKeys keys = new GeoKeys(directory, trouble);
        GdalMetadata metadata = GdalMetadata.of(directory.text(GDAL_METADATA).orElse(""), trouble);
        Placement placement = placement(raster, keys);
        if (keys.isGeographic()) {
            throw geographic(raster, placement, keys);
        }
        Optional<ReferenceSystem> system = keys.referenceSystem();
        VerticalUnit unit = VerticalUnit.of(metadata.unit(), keys.verticalUnit(), trouble);
        OptionalDouble mark = noData();
        HeightLimits.checkSpacing(TiffTag.name(PIXEL_SCALE), placement.stepEast, trouble);
        HeightLimits.checkPlace(TiffTag.name(TIE_POINTS), placement.west, placement.firstNorth, trouble);
        GridFrame frame = new GridFrame(raster.height(), raster.width(), placement.west, placement.south(raster),
                placement.stepEast);
        boolean north = placement.stepNorth < 0;
        double[] marks = mark.isPresent() ? new double[] {raster.kind().stored(mark.getAsDouble())} : new double[0];
        HeightScale scale = new HeightScale(metadata.scale() * unit.metres(), metadata.offset() * unit.metres(), marks,
                trouble);
        List<StoredGround> overviews = new ArrayList<>();
        for (TiffDirectory other : others) {
            overview(other, raster).ifPresent(o -> overviews.add(new StoredGround(o,
                    new StoredGround.Lie(overviewFrame(o, frame), north), scale, 1, trouble)));
        }
        GroundFile.Heights heights = new GroundFile.Heights(raster.kind().name().toLowerCase(Locale.ROOT),
                unit.words(), mark, !keys.isPoint());
        return new GroundFacts("GeoTIFF", new StoredGround(raster, new StoredGround.Lie(frame, north), scale, 1,
                trouble), overviews, system, heights, List.of());
    }

    /** An image of the file that shows the same ground with fewer nodes. */
    private Optional<TiffRaster> overview(TiffDirectory other, TiffRaster main) throws IOException {
        if (other.whole(SUBFILE, 0) != REDUCED || other.whole(TiffRaster.SAMPLES_PER_PIXEL, 1) != 1
                || other.whole(TiffRaster.WIDTH, 0) < 2 || other.whole(TiffRaster.HEIGHT, 0) < 2) {
            return Optional.empty();
        }
        TiffRaster raster = new TiffRaster(other, trouble);
        double across = (double) main.width() / raster.width();
        double down = (double) main.height() / raster.height();
        // An overview of an odd number of lines is a line's part longer than the image.
        boolean square = Math.abs(across - down) * Math.max(raster.width(), raster.height()) < 2 * across;
        return square && across > 1 ? Optional.of(raster) : Optional.empty();
    }

    /** Middles of the larger cells; the north-west corner is that of the image. */
    private static GridFrame overviewFrame(TiffRaster overview, GridFrame frame) {
        double spacing = frame.spacing() * frame.columns() / overview.width();
        double north = frame.northEdge() + frame.spacing() / 2 - spacing / 2;
        return new GridFrame(overview.height(), overview.width(), frame.west() - frame.spacing() / 2 + spacing / 2,
                north - spacing * (overview.height() - 1), spacing);
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
                throw trouble.badValue(placementKey(), m, "numbers: a place for the first pixel and the size of a"
                        + " pixel");
            }
        }
        double half = keys.isPoint() ? 0 : 0.5;
        double stepEast = matrix[0];
        double stepNorth = matrix[3];
        if (matrix[1] != 0 || matrix[2] != 0 || !(stepEast > 0) || stepNorth == 0) {
            throw trouble.badValue(placementKey(), stepEast + " " + matrix[1] + " " + matrix[2] + " " + stepNorth,
                    "lines along east, neither turned nor skewed; gdalwarp IN OUT straightens a turned file");
        }
        double drift = Math.abs(stepEast - Math.abs(stepNorth)) * Math.max(raster.width(), raster.height());
        if (drift > GREATEST_DRIFT * stepEast) {
            throw trouble.badValue(placementKey(), number(stepEast) + " x " + number(Math.abs(stepNorth)),
                    "square pixels; gdalwarp -tr " + number(stepEast) + " " + number(stepEast) + " IN OUT makes them");
        }
        return new Placement(matrix[4] + half * stepEast, matrix[5] + half * stepNorth, stepEast, stepNorth);
    }

    private String placementKey() {
        return TiffTag.name(directory.has(TRANSFORMATION) ? TRANSFORMATION : PIXEL_SCALE);
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
            throw trouble.unreadable(TiffTag.name(PIXEL_SCALE), "the file says not where it lies and how large its"
                    + " pixels are", "a GeoTIFF with a pixel scale and a tie point, in metres;"
                    + " gdal_translate -a_ullr WEST NORTH EAST SOUTH IN OUT places one");
        }
        if (tie.length > 6) {
            throw trouble.badValue(TiffTag.name(TIE_POINTS), tie.length / 6 + " points",
                    "one tie point; gdalwarp IN OUT straightens a file placed by several");
        }
        return new double[] {scale[0], 0, 0, -scale[1], tie[3] - tie[0] * scale[0], tie[4] + tie[1] * scale[1]};
    }

    private RuntimeException geographic(TiffRaster raster, Placement placement, GeoKeys keys) {
        double latitude = placement.firstNorth + placement.stepNorth * raster.height() / 2;
        double longitude = placement.west + placement.stepEast * raster.width() / 2;
        GeographicPlace centre = new GeographicPlace(Math.max(-90, Math.min(90, latitude)),
                Math.IEEEremainder(longitude, 360));
        return trouble.badValue("GTModelType (GeoKey 1024)", "2, in degrees",
                "a projected system in metres; warp the file with "
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
            throw trouble.badValue(TiffTag.name(GDAL_NODATA), "\"" + text + "\"", "a number or nan");
        }
    }

    private static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e12 ? Long.toString((long) value)
                : Double.toString(value);
    }
}
