// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.ContourSet;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.ReliefPicture;
import java.nio.IntBuffer;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** Draws the ground's picture under a camera; the pixels are shared with the picture, not copied. */
final class GroundPainter {
    /** Tiles kept as images; more than a screen ever shows of one size. */
    private static final int KEPT = 48;

    private final Map<ReliefPicture.Tile, Image> images = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<ReliefPicture.Tile, Image> eldest) {
            return size() > KEPT;
        }
    };
    private Optional<ReliefPicture> picture = Optional.empty();
    private Optional<ReliefPicture.Tile> detail = Optional.empty();

    void show(ReliefPicture shown) {
        picture = Optional.of(shown);
        detail = Optional.empty();
        images.clear();
    }

    void showDetail(Optional<ReliefPicture.Tile> tile) {
        detail.ifPresent(images::remove);
        detail = tile;
    }

    Optional<ReliefPicture> picture() {
        return picture;
    }

    /** Heights to be written on contour lines. */
    List<ContourSet.Height> heights() {
        return detail.map(ReliefPicture.Tile::heights).orElse(List.of());
    }

    /** The ground as a picture to be shifted, where one at the screen's scale reaches over all that is in sight. */
    Optional<Laid> laid(MapCamera camera) {
        return detail.filter(tile -> isCovered(camera, 0)).map(tile -> new Laid(
                images.computeIfAbsent(tile, GroundPainter::image), Math.round(camera.x(tile.box().west())),
                Math.round(camera.y(tile.box().north()))));
    }

    /**
     * A picture of the ground, pixel on pixel.
     *
     * @param image the picture
     * @param left  x of its left edge (pixels)
     * @param top   y of its upper edge (pixels)
     */
    record Laid(Image image, double left, double top) {
    }

    void paint(GraphicsContext g, MapCamera camera) {
        if (picture.isEmpty()) {
            return;
        }
        g.setImageSmoothing(true);
        if (!isCovered(camera, 0)) {
            for (ReliefPicture.Tile tile : picture.get().tiles(camera)) {
                draw(g, camera, tile);
            }
        }
        detail.filter(tile -> tile.box().meets(camera.box())).ifPresent(tile -> {
            if (isAtScale(tile, camera)) {
                g.setImageSmoothing(false);
                drawPixels(g, camera, tile);
            } else {
                draw(g, camera, tile);
            }
        });
        g.setImageSmoothing(true);
    }

    private static boolean isAtScale(ReliefPicture.Tile tile, MapCamera camera) {
        double pixel = (tile.box().east() - tile.box().west()) / tile.width();
        return Math.abs(pixel / camera.metresPerPixel() - 1) < 1e-6;
    }

    /** Whether the ground painted at the screen's scale reaches a rim (pixels) beyond what is in sight. */
    boolean isCovered(MapCamera camera, double rim) {
        MapCamera.Box sight = camera.box().grown((rim - 0.5) * camera.metresPerPixel());
        return detail.filter(tile -> isAtScale(tile, camera) && tile.box().west() <= sight.west()
                && tile.box().east() >= sight.east() && tile.box().south() <= sight.south()
                && tile.box().north() >= sight.north()).isPresent();
    }

    /** Pixel on pixel, which is sharp and quick. */
    private void drawPixels(GraphicsContext g, MapCamera camera, ReliefPicture.Tile tile) {
        Image image = images.computeIfAbsent(tile, GroundPainter::image);
        double left = Math.round(camera.x(tile.box().west()));
        double top = Math.round(camera.y(tile.box().north()));
        double x = Math.max(0, left);
        double y = Math.max(0, top);
        double w = Math.min(Math.ceil(camera.width()), left + tile.width()) - x;
        double h = Math.min(Math.ceil(camera.height()), top + tile.height()) - y;
        if (w > 0 && h > 0) {
            g.drawImage(image, x - left, y - top, w, h, x, y, w, h);
        }
    }

    private void draw(GraphicsContext g, MapCamera camera, ReliefPicture.Tile tile) {
        Image image = images.computeIfAbsent(tile, GroundPainter::image);
        double left = Math.floor(camera.x(tile.box().west()));
        double top = Math.floor(camera.y(tile.box().north()));
        double right = Math.floor(camera.x(tile.box().east()));
        double bottom = Math.floor(camera.y(tile.box().south()));
        double scaleX = tile.width() / Math.max(1, right - left);
        double scaleY = tile.height() / Math.max(1, bottom - top);
        // Only the part in sight, so that a strongly enlarged tile costs no more than the screen.
        double fromX = Math.max(0, Math.floor(-left * scaleX));
        double fromY = Math.max(0, Math.floor(-top * scaleY));
        double toX = Math.min(tile.width(), Math.ceil((camera.width() - left) * scaleX));
        double toY = Math.min(tile.height(), Math.ceil((camera.height() - top) * scaleY));
        if (toX > fromX && toY > fromY) {
            g.drawImage(image, fromX, fromY, toX - fromX, toY - fromY, left + fromX / scaleX, top + fromY / scaleY,
                    (toX - fromX) / scaleX, (toY - fromY) / scaleY);
        }
    }

    private static Image image(ReliefPicture.Tile tile) {
        return new WritableImage(new PixelBuffer<>(tile.width(), tile.height(), IntBuffer.wrap(tile.pixels()),
                PixelFormat.getIntArgbPreInstance()));
    }
}
