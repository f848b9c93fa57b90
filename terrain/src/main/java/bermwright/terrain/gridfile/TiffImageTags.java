// SPDX-License-Identifier: Apache-2.0
package bermwright.terrain.gridfile;

import bermwright.terrain.grid.GridFrame;
import java.util.Optional;

/** The tags that say what a written image is and where it lies. */
final class TiffImageTags {
    static final String NO_DATA = "-9999";
    private final GridFrame frame;
    private final Optional<ReferenceSystem> system;
    private final SurfaceContent content;

    TiffImageTags(GridFrame frame, Optional<ReferenceSystem> system, SurfaceContent content) {
        this.frame = frame;
        this.system = system;
        this.content = content;
    }

    void addKind(TiffDirectoryWriter directory) {
        directory.longs(TiffRaster.WIDTH, frame.columns());
        directory.longs(TiffRaster.HEIGHT, frame.rows());
        directory.shorts(TiffRaster.BITS, 8 * content.bytes());
        directory.shorts(TiffDirectoryWriter.PHOTOMETRIC, 1);
        directory.shorts(TiffRaster.SAMPLES_PER_PIXEL, 1);
        directory.shorts(TiffDirectoryWriter.PLANAR, 1);
        directory.shorts(TiffRaster.SAMPLE_FORMAT, content.kind() == SurfaceContent.Kind.FLOAT32 ? 3 : 1);
        directory.text(GeoTiffReader.GDAL_NODATA, content.kind() == SurfaceContent.Kind.FLOAT32 ? NO_DATA : "0");
    }

    void addPlace(TiffDirectoryWriter directory) {
        double spacing = frame.spacing();
        directory.doubles(GeoTiffReader.PIXEL_SCALE, spacing, spacing, 0);
        directory.doubles(GeoTiffReader.TIE_POINTS, 0, 0, 0, frame.west() - spacing / 2,
                frame.northEdge() + spacing / 2, 0);
        system.ifPresent(s -> {
            GeoKeyWriter keys = new GeoKeyWriter(s);
            directory.shorts(GeoKeys.DIRECTORY, keys.directory());
            directory.doubles(GeoKeys.DOUBLES, keys.doubles());
            directory.text(GeoKeys.TEXTS, keys.texts());
        });
        directory.text(GeoTiffReader.GDAL_METADATA, content.metadata());
    }
}
