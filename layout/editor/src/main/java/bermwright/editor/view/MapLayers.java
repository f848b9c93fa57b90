// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.ContourSet;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.MapFigure;
import bermwright.editor.model.MapHands;
import bermwright.editor.model.TiltModel;
import bermwright.editor.model.Workbench;
import bermwright.finding.Numbered;
import bermwright.site.assessment.HullAtTilt;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.ImageView;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;

/**
 * The map in layers, so that each frame draws anew only what changed: the ground as a picture that is shifted, what
 * stands still over it, what moves while something is tried out, and what keeps its place on the screen.
 */
final class MapLayers {
    /** How far beyond what is in sight ground and figures are painted while the map is moved (pixels). */
    static final double RIM = 256;
    /** What moves is drawn into a canvas that grows and shrinks by this (pixels). */
    private static final double PATCH_STEP = 32;

    private final Workbench bench;
    private final MapHands hands;
    private final Canvas canvas = new Canvas(10, 10);
    /** The ground at the screen's scale, shifted and not drawn; where there is none it is drawn into the canvas. */
    private final ImageView ground = new ImageView();
    /** Everything over the ground, with a rim while the map is moved, so that a move draws nothing anew. */
    private final Canvas over = new Canvas(10, 10);
    /** What moves while something is tried out. */
    private final Canvas live = new Canvas(10, 10);
    /** What stays where it is on the screen. */
    private final Canvas fixed = new Canvas(10, 10);
    private final Rectangle frame = new Rectangle();
    /** An opaque ground colour, so that nothing behind the map is drawn in vain. */
    private final Rectangle backdrop = new Rectangle();
    private Optional<MapCamera> painted = Optional.empty();
    private List<ContourSet.Height> written = List.of();
    private final StillLayer still = new StillLayer();
    private BadgeSpots stillSpots;
    private final GroundPainter groundPainter = new GroundPainter();
    private MapOverlay overlay;
    private Predicate<MapFigure> stage = figure -> true;
    private Optional<TiltModel> tilt = Optional.empty();

    MapLayers(Workbench bench, MapHands hands, MapLook look) {
        this.bench = bench;
        this.hands = hands;
        this.overlay = new MapOverlay(look);
        this.stillSpots = overlay.spots();
        ground.setSmooth(false);
        backdrop.setFill(overlay.style().ground());
    }

    /** The layers, the lowest first. */
    List<Node> nodes() {
        return List.of(backdrop, canvas, ground, over, live, fixed);
    }

    /** What the layers are cut off at. */
    Rectangle frame() {
        return frame;
    }

    /** What draws the ground. */
    GroundPainter ground() {
        return groundPainter;
    }

    Color accent() {
        return overlay.style().accent();
    }

    void resize(double width, double height) {
        canvas.setWidth(width);
        canvas.setHeight(height);
        for (Rectangle edge : List.of(frame, backdrop)) {
            edge.setWidth(width);
            edge.setHeight(height);
        }
    }

    void dress(MapLook look) {
        overlay = new MapOverlay(look);
        backdrop.setFill(overlay.style().ground());
    }

    void stage(Predicate<MapFigure> shown) {
        stage = shown;
    }

    void follow(TiltModel model) {
        tilt = Optional.of(model);
    }

    /** A camera for what is in sight and a rim around it. */
    static MapCamera withRim(MapCamera camera) {
        return camera.sized(Math.ceil(camera.width()) + 2 * RIM, Math.ceil(camera.height()) + 2 * RIM);
    }

    private static MapCamera whole(MapCamera camera) {
        return camera.sized(Math.ceil(camera.width()), Math.ceil(camera.height()));
    }

    /** The finding whose badge is at a place of the map (pixels). */
    Optional<Numbered> findingAt(MapCamera camera, double x, double y) {
        return overlay.findingAt(camera, scene(), x, y);
    }

    /** The findings that are only counted at a place of the map (pixels). */
    List<Numbered> crowdAt(MapCamera camera, double x, double y) {
        return overlay.crowdAt(camera, scene(), x, y);
    }

    /**
     * Draws what lies over the ground.
     *
     * @param isNew     whether everything is to be drawn anew
     * @param isShifted whether the camera has moved
     */
    void paint(MapCamera camera, boolean isNew, boolean isShifted) {
        if (bench.isTrying()) {
            paintTried(camera, isNew, isShifted);
        } else {
            still.end();
            if (isNew || !reaches(camera) || written != groundPainter.heights()) {
                paintOver(isNew ? whole(camera) : withRim(camera), this::paintStill);
            }
            paintLive(camera, new MapOverlay.Layer(List.of(), List.of()), Optional.empty());
        }
        painted.ifPresent(from -> {
            over.setTranslateX(Math.round(camera.x(from.box().west())));
            over.setTranslateY(Math.round(camera.y(from.box().north())));
        });
        if (isNew) {
            paintFixed(camera);
        }
    }

    /** Shifts the ground's picture; draws it where there is none that reaches over all that is in sight. */
    void layGround(MapCamera camera) {
        Optional<GroundPainter.Laid> laid = groundPainter.laid(camera);
        ground.setVisible(laid.isPresent());
        canvas.setVisible(laid.isEmpty());
        ground.setImage(laid.map(GroundPainter.Laid::image).orElse(null));
        laid.ifPresentOrElse(picture -> {
            ground.setTranslateX(picture.left());
            ground.setTranslateY(picture.top());
        }, () -> paintGround(canvas.getGraphicsContext2D(), camera));
    }

    private MapOverlay.Scene scene() {
        return new MapOverlay.Scene(bench, hands, stage);
    }

    private void paintStill(GraphicsContext g, MapCamera from) {
        overlay.heights(g, from, groundPainter.heights());
        overlay.paint(g, from, scene());
    }

    /** Draws what moves while something is tried out, and what stands still only where it must be. */
    private void paintTried(MapCamera camera, boolean isNew, boolean isShifted) {
        MapOverlay.Scene scene = scene();
        boolean isChanged = still.part(overlay.all(scene), bench.picked(), bench.plan());
        if (isChanged || isNew || isShifted && !reaches(camera)) {
            stillSpots = overlay.spots();
            paintOver(isShifted && !isNew ? withRim(camera) : whole(camera),
                    (g, from) -> {
                        overlay.heights(g, from, groundPainter.heights());
                        overlay.paint(g, from, still.still(), overlay.badges(from, still.still().findings(), bench,
                                stillSpots), bench);
                    });
        }
        paintLive(camera, still.live(), Optional.of(scene));
    }

    /** Draws what moves into a canvas no larger than that needs, so that the screen lays no more than that anew. */
    private void paintLive(MapCamera camera, MapOverlay.Layer layer, Optional<MapOverlay.Scene> held) {
        MapCamera from = painted.orElseThrow();
        Reach reach = new Reach();
        MapOverlay.Badges badges = overlay.badges(from, layer.findings(), bench, stillSpots.copy());
        overlay.reach(reach, from, layer, badges);
        held.ifPresent(scene -> overlay.reach(reach, from, scene));
        Optional<HullAtTilt> lowering = tilt.flatMap(TiltModel::mapPicture);
        lowering.ifPresent(picture -> MapOverlay.reach(reach, from, picture));
        Reach.Patch patch = reach.in(from.width(), from.height(), PATCH_STEP);
        live.setVisible(!patch.isEmpty());
        if (patch.isEmpty()) {
            return;
        }
        live.setWidth(patch.width());
        live.setHeight(patch.height());
        GraphicsContext g = live.getGraphicsContext2D();
        g.clearRect(0, 0, patch.width(), patch.height());
        g.save();
        g.translate(-patch.x(), -patch.y());
        overlay.paint(g, from, layer, badges, bench);
        lowering.ifPresent(picture -> overlay.hullOnItsWay(g, from, picture));
        held.ifPresent(scene -> overlay.hand(g, from, scene));
        g.restore();
        live.setTranslateX(Math.round(camera.x(from.box().west())) + patch.x());
        live.setTranslateY(Math.round(camera.y(from.box().north())) + patch.y());
    }

    /** Whether what was painted over the ground reaches over all that is in sight, at the same scale. */
    private boolean reaches(MapCamera camera) {
        return painted.filter(from -> from.metresPerPixel() == camera.metresPerPixel()
                && from.box().grown(0.5 * from.metresPerPixel()).contains(camera.box())).isPresent();
    }

    private void paintOver(MapCamera from, BiConsumer<GraphicsContext, MapCamera> painter) {
        painted = Optional.of(from);
        written = groundPainter.heights();
        over.setWidth(from.width());
        over.setHeight(from.height());
        GraphicsContext g = over.getGraphicsContext2D();
        g.clearRect(0, 0, from.width(), from.height());
        painter.accept(g, from);
    }

    private void paintFixed(MapCamera camera) {
        double height = Math.min(camera.height(), overlay.fixedHeight());
        fixed.setWidth(Math.ceil(camera.width()));
        fixed.setHeight(height);
        fixed.setTranslateY(Math.round(camera.height() - height));
        GraphicsContext g = fixed.getGraphicsContext2D();
        g.clearRect(0, 0, fixed.getWidth(), height);
        overlay.paintFixed(g, camera.sized(camera.width(), height), bench);
    }

    /** Draws the whole map into a canvas of the camera's size. */
    void paintWhole(GraphicsContext g, MapCamera from) {
        paintGround(g, from);
        paintStill(g, from);
        tilt.flatMap(TiltModel::mapPicture).ifPresent(picture -> overlay.hullOnItsWay(g, from, picture));
        overlay.paintFixed(g, from, bench);
    }

    private void paintGround(GraphicsContext g, MapCamera from) {
        g.setFill(overlay.style().ground());
        g.fillRect(0, 0, from.width(), from.height());
        groundPainter.paint(g, from);
    }
}
