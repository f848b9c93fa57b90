// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import bermwright.foundation.Point;
import bermwright.foundation.Progress;
import bermwright.terrain.grid.GridFrame;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A picture of the ground in many sizes, cut into tiles, so that a map draws only the size and the part it needs.
 */
public final class ReliefPicture {
    /** Pixels along a tile's side; larger pictures cost more than the part of them that is seen. */
    private static final int TILE = 1024;
    private final ReliefData data;
    private final ReliefLook look;
    private final ContourSet contours;
    private final List<List<Tile>> levels;

    private ReliefPicture(ReliefData data, ReliefLook look, List<List<Tile>> levels) {
        this.data = data;
        this.look = look;
        this.contours = look.hasContours() ? ContourSet.of(data.grid(), look.contourInterval()) : ContourSet.none();
        this.levels = levels;
    }

    /**
     * A part of the picture at one size.
     *
     * @param box    the ground it covers
     * @param width  width (pixels)
     * @param height height (pixels)
     * @param pixels colours as alpha, red, green and blue in one number, rows from the northernmost; shared, not to be
     *               changed
     * @param heights heights to be written on contour lines
     */
    public record Tile(MapCamera.Box box, int width, int height, int[] pixels, List<ContourSet.Height> heights) {
        /** Copies the heights. */
        public Tile {
            heights = List.copyOf(heights);
        }
    }

    /**
     * Paints the picture in all sizes.
     *
     * @param data     shade and slope
     * @param look     what to show
     * @param progress told how far the work has come, and asked whether to go on
     * @return the picture
     */
    public static ReliefPicture of(ReliefData data, ReliefLook look, Progress progress) {
        List<List<Tile>> levels = new ArrayList<>();
        ReliefPicture picture = new ReliefPicture(data, look, levels);
        for (int level = 0; level < data.levels(); level++) {
            List<Tile> tiles = new ArrayList<>();
            for (int y = 0; y < data.height(level); y += TILE) {
                for (int x = 0; x < data.width(level); x += TILE) {
                    progress.check();
                    tiles.add(picture.tile(level, x, y));
                }
            }
            levels.add(List.copyOf(tiles));
            progress.report((level + 1.0) / data.levels(), "painting the ground");
        }
        return picture;
    }

    private Tile tile(int level, int x0, int y0) {
        // One pixel more to the right and below: tiles overlap, so that no seam shows between them when enlarged.
        int w = Math.min(TILE + 1, data.width(level) - x0);
        int h = Math.min(TILE + 1, data.height(level) - y0);
        int[] pixels = new int[w * h];
        IntStream.range(0, h).parallel().forEach(y -> {
            for (int x = 0; x < w; x++) {
                pixels[y * w + x] = colour(level, x0 + x, y0 + y);
            }
        });
        GridFrame frame = data.grid().frame();
        double size = frame.spacing() * (1 << level);
        double west = frame.west() - frame.spacing() / 2 + x0 * size;
        double north = frame.northEdge() + frame.spacing() / 2 - y0 * size;
        MapCamera.Box box = new MapCamera.Box(west, north - h * size, west + w * size, north);
        contours.draw(pixels, new MapCamera(box.centre(), size, w, h), every(level), look.isDark());
        return new Tile(box, w, h, pixels, List.of());
    }

    /** Of a picture that is smaller only every so many-th line is drawn. */
    private static int every(int level) {
        return 1 << Math.max(0, level - 1);
    }

    private int colour(int level, int x, int y) {
        int shade = data.shade(level, x, y);
        if (shade == 0) {
            return ReliefInk.unknown(look, x, y);
        }
        double slope = look.hasSlopeBands() ? data.slopeDeg(level, x, y) : 0;
        return ReliefInk.colour(look, shade, SlopeBand.of(slope), (x & 0xFFFF) << 16 | y & 0xFFFF);
    }

    /**
     * The tiles to draw for a camera: the smallest size that is not coarser than the screen, and only tiles in sight.
     *
     * @param camera the camera
     * @return the tiles
     */
    public List<Tile> tiles(MapCamera camera) {
        MapCamera.Box box = camera.box();
        return levels.get(level(camera)).stream().filter(tile -> tile.box().meets(box)).toList();
    }

    private int level(MapCamera camera) {
        double pixelsPerNode = data.grid().frame().spacing() / camera.metresPerPixel();
        int level = 0;
        while (level < levels.size() - 1 && pixelsPerNode * (1 << level) < 0.75) {
            level++;
        }
        return level;
    }

    /**
     * Whether the screen is finer than the ground's nodes, so that a picture painted for the screen looks better.
     *
     * @param camera the camera
     * @return true where a node covers more than one and a half pixels
     */
    public boolean isCoarseFor(MapCamera camera) {
        return data.grid().frame().spacing() / camera.metresPerPixel() > 1.5;
    }

    /**
     * Paints the ground at the screen's own scale, so that it can be moved over the screen pixel by pixel: between the
     * nodes where the screen is finer than they are, else from the nearest size of this picture.
     *
     * @param camera   the camera
     * @param progress asked whether to go on
     * @return one tile as large as the camera's picture
     */
    public Tile detail(MapCamera camera, Progress progress) {
        int w = (int) Math.ceil(camera.width());
        int h = (int) Math.ceil(camera.height());
        int[] pixels = new int[w * h];
        int level = isCoarseFor(camera) ? 0 : level(camera);
        ReliefDetail detail = new ReliefDetail(data, look, camera, level);
        // On one processor, so that the screen keeps the other while the map is moved.
        for (int y = 0; y < h; y++) {
            progress.check();
            detail.paint(y, pixels, w);
        }
        MapCamera.Box box = camera.box();
        double mpp = camera.metresPerPixel();
        MapCamera.Box painted = new MapCamera.Box(box.west(), box.north() - h * mpp, box.west() + w * mpp, box.north());
        MapCamera whole = new MapCamera(painted.centre(), mpp, w, h);
        ContourSet lines = lines(whole);
        lines.draw(pixels, whole, every(level), look.isDark());
        return new Tile(painted, w, h, pixels, lines.heights(whole, every(level)));
    }

    /** The lines for a camera: enlarged, they may stand closer and still be told apart. */
    private ContourSet lines(MapCamera camera) {
        double enlarged = data.grid().frame().spacing() / camera.metresPerPixel();
        double closer = enlarged > 16 ? 10 : enlarged > 6 ? 2 : 1;
        MapCamera.Box sight = camera.box();
        if (closer == 1 || !look.hasContours() || !sight.meets(box())) {
            return contours;
        }
        MapCamera.Box around = sight.grown(data.grid().frame().spacing());
        return ContourSet.of(data.grid().window(new Point(around.west(), around.south()), new Point(around.east(),
                around.north())), look.contourInterval() / closer);
    }

    /**
     * What the picture shows.
     *
     * @return the look
     */
    public ReliefLook look() {
        return look;
    }

    /**
     * The box of ground the picture covers.
     *
     * @return the box
     */
    public MapCamera.Box box() {
        GridFrame frame = data.grid().frame();
        return new MapCamera.Box(frame.west(), frame.south(), frame.eastEdge(), frame.northEdge());
    }
}
