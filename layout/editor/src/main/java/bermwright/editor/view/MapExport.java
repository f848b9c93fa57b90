// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.filestore.Storage;
import bermwright.filestore.WholeFile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import javafx.embed.swing.SwingFXUtils;
import javafx.print.PrinterJob;
import javafx.scene.SnapshotParameters;
import javafx.scene.image.ImageView;
import javafx.scene.image.WritableImage;
import javafx.scene.transform.Transform;
import javax.imageio.ImageIO;

/** The map as a picture file and on paper. */
final class MapExport {
    /** Pixels of the picture for one of the screen. */
    private static final double SHARPER = 2;

    private MapExport() {
    }

    /** Writes the map as a PNG file, whole or not at all. */
    static void write(MapPane map, Path file) throws IOException {
        SnapshotParameters sharper = new SnapshotParameters();
        sharper.setTransform(Transform.scale(SHARPER, SHARPER));
        WritableImage image = map.snapshot(sharper, null);
        BufferedImage pixels = SwingFXUtils.fromFXImage(image, null);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        if (!ImageIO.write(pixels, "png", png)) {
            throw new IOException("this Java cannot write PNG pictures");
        }
        WholeFile.write(Storage.DISK, file, channel -> WholeFile.writeAll(channel, ByteBuffer.wrap(png.toByteArray())));
    }

    /** Prints the map on a page; returns why not, empty where it was printed or given up. */
    static String print(MapPane map) {
        PrinterJob job = PrinterJob.createPrinterJob();
        if (job == null) {
            return "There is no printer. Write the map as a picture instead.";
        }
        if (!job.showPrintDialog(map.getScene().getWindow())) {
            return "";
        }
        ImageView view = new ImageView(map.snapshot(null, null));
        double scale = Math.min(job.getJobSettings().getPageLayout().getPrintableWidth() / map.getWidth(),
                job.getJobSettings().getPageLayout().getPrintableHeight() / map.getHeight());
        view.getTransforms().add(Transform.scale(scale, scale));
        if (job.printPage(view)) {
            job.endJob();
            return "";
        }
        return "The printer did not take the page: " + job.getJobStatus();
    }
}
