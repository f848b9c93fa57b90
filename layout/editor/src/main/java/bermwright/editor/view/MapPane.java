// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.model.MapCamera;
import bermwright.editor.model.MapFigure;
import bermwright.editor.model.MapHands;
import bermwright.editor.model.ReliefPicture;
import bermwright.editor.model.TiltModel;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.foundation.Point;
import bermwright.site.assessment.HullAtTilt;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.animation.AnimationTimer;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.ImageView;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.util.Duration;

/** The site from above: ground, everything on it, and the hand that moves it. */
public final class MapPane extends Region {
    private static final double WHEEL_STEP = 1.0015;
    private static final double FLIGHT_NANOS = 450e6;
    private static final String DETAIL_LANE = "map detail";
    /** How far beyond what is in sight the ground is painted (pixels). */
    private static final double RIM = 256;
    /** What moves is drawn into a canvas that grows and shrinks by this (pixels). */
    private static final double PATCH_STEP = 32;

    private final Workbench bench;
    private final MapHands hands;
    private final Background background;
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
    private final Rectangle backdrop = new Rectangle();
    private Optional<MapCamera> painted = Optional.empty();
    private final StillLayer still = new StillLayer();
    private BadgeSpots stillSpots;
    private boolean isTriedOut;
    private boolean isTilted;
    private final GroundPainter groundPainter = new GroundPainter();
    private MapOverlay overlay;
    private MapCamera camera = new MapCamera(new Point(0, 0), 1, 10, 10);
    private MapLook look = MapLook.standard();
    private boolean isStale = true;
    private boolean isMoved;
    private boolean isPanning;
    private Optional<Point2D> last = Optional.empty();
    private Predicate<MapFigure> stage = figure -> true;
    private Optional<TiltModel> tilt = Optional.empty();
    private Optional<Flight> flight = Optional.empty();
    private Optional<Point> pointer = Optional.empty();
    private Consumer<Optional<Point>> pointerListener = place -> { };
    private final javafx.animation.PauseTransition rest =
            new javafx.animation.PauseTransition(Duration.millis(160));

    private record Flight(MapCamera from, MapCamera to, long start) {
    }

    /**
     * A map of a workbench.
     *
     * @param bench      the workbench
     * @param hands      the hand
     * @param background where pictures are painted
     */
    public MapPane(Workbench bench, MapHands hands, Background background) {
        this.bench = bench;
        this.hands = hands;
        this.background = background;
        this.overlay = new MapOverlay(look);
        this.stillSpots = overlay.spots();
        ground.setSmooth(false);
        getChildren().addAll(backdrop, canvas, ground, over, live, fixed);
        getChildren().forEach(child -> child.setMouseTransparent(true));
        setClip(frame);
        dressGround();
        getStyleClass().add("map");
        setId("map");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("Plan of the site");
        bench.changed().listen(() -> {
            if (bench.isTrying()) {
                isTriedOut = true;
            } else {
                refresh();
            }
        });
        bench.pickedChanged().listen(this::refresh);
        rest.setOnFinished(done -> paintDetail());
        listenToPointer();
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                frame(now);
            }
        }.start();
    }

    /** An opaque ground colour, so that nothing behind the map is drawn in vain. */
    private void dressGround() {
        backdrop.setFill(overlay.style().ground());
    }

    private void listenToPointer() {
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
        addEventHandler(MouseEvent.MOUSE_MOVED, event -> point(event.getX(), event.getY()));
        addEventHandler(MouseEvent.MOUSE_EXITED, event -> {
            pointer = Optional.empty();
            pointerListener.accept(pointer);
        });
        addEventHandler(ScrollEvent.SCROLL, event -> {
            if (event.getDeltaY() != 0) {
                look(camera.zoomed(Math.pow(WHEEL_STEP, event.getDeltaY()), event.getX(), event.getY()));
            }
            event.consume();
        });
    }

    private void pressed(MouseEvent event) {
        requestFocus();
        if (event.getButton() == MouseButton.MIDDLE || event.getButton() == MouseButton.SECONDARY) {
            isPanning = event.getButton() == MouseButton.MIDDLE;
            hands.press(place(event), feel(event));
            hands.giveUp();
        } else if (event.getClickCount() == 2 && hands.dropCorner(place(event), feel(event))) {
            event.consume();
        } else {
            isPanning = !hands.press(place(event), feel(event));
        }
        last = Optional.of(new Point2D(event.getX(), event.getY()));
        refresh();
    }

    private void dragged(MouseEvent event) {
        Point2D now = new Point2D(event.getX(), event.getY());
        if (isPanning) {
            last.ifPresent(l -> look(camera.panned(now.getX() - l.getX(), now.getY() - l.getY())));
        } else if (hands.isHolding()) {
            hands.drag(place(event), feel(event));
        }
        last = Optional.of(now);
        point(event.getX(), event.getY());
    }

    private void released(MouseEvent event) {
        isPanning = false;
        last = Optional.empty();
        if (hands.isHolding()) {
            hands.release();
        }
        refresh();
    }

    private Point place(MouseEvent event) {
        return camera.place(event.getX(), event.getY());
    }

    private MapHands.Feel feel(MouseEvent event) {
        return new MapHands.Feel(camera.metresPerPixel(), event.isAltDown());
    }

    private void point(double x, double y) {
        pointer = Optional.of(camera.place(x, y));
        pointerListener.accept(pointer);
    }

    private void frame(long now) {
        flight.ifPresent(f -> {
            double share = Math.min(1, (now - f.start) / FLIGHT_NANOS);
            camera = f.from.onTheWay(f.to, Math.max(0, share)).sized(camera.width(), camera.height());
            isStale = true;
            if (share >= 1) {
                flight = Optional.empty();
                rest.playFromStart();
            }
        });
        if (isStale || isMoved || isTriedOut || isTilted) {
            boolean isNew = isStale;
            boolean isShifted = isStale || isMoved;
            isStale = false;
            isMoved = false;
            isTriedOut = false;
            isTilted = false;
            if (isShifted) {
                layGround();
            }
            if (bench.isTrying()) {
                paintTried(isNew, isShifted);
            } else {
                still.end();
                if (isNew || !reaches()) {
                    paintOver(isNew ? 0 : RIM, (g, from) -> overlay.paint(g, from, scene()));
                }
                paintLive(painted.orElseThrow(), new MapOverlay.Layer(List.of(), List.of()), Optional.empty());
            }
            painted.ifPresent(from -> {
                over.setTranslateX(Math.round(camera.x(from.box().west())));
                over.setTranslateY(Math.round(camera.y(from.box().north())));
            });
            if (isNew) {
                paintFixed();
            }
        }
    }

    /** Shifts the ground's picture; draws it where there is none that reaches over all that is in sight. */
    private void layGround() {
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

    /** Draws what moves while something is tried out, and what stands still only where it must be. */
    private void paintTried(boolean isNew, boolean isShifted) {
        MapOverlay.Scene scene = scene();
        boolean isChanged = still.part(overlay.all(scene), bench.picked(), bench.plan());
        if (isChanged || isNew || isShifted && !reaches()) {
            stillSpots = overlay.spots();
            paintOver(isShifted && !isNew ? RIM : 0,
                    (g, from) -> overlay.paint(g, from, still.still(), bench, stillSpots));
        }
        paintLive(painted.orElseThrow(), still.live(), Optional.of(scene));
    }

    /** Draws what moves into a canvas no larger than that needs, so that the screen lays no more than that anew. */
    private void paintLive(MapCamera from, MapOverlay.Layer layer, Optional<MapOverlay.Scene> held) {
        Reach reach = new Reach();
        overlay.reach(reach, from, layer, stillSpots.copy());
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
        overlay.paint(g, from, layer, bench, stillSpots.copy());
        lowering.ifPresent(picture -> overlay.hullOnItsWay(g, from, picture));
        held.ifPresent(scene -> overlay.hand(g, from, scene));
        g.restore();
        live.setTranslateX(Math.round(camera.x(from.box().west())) + patch.x());
        live.setTranslateY(Math.round(camera.y(from.box().north())) + patch.y());
    }

    /** Whether what was painted over the ground reaches over all that is in sight, at the same scale. */
    private boolean reaches() {
        return painted.filter(from -> from.metresPerPixel() == camera.metresPerPixel()
                && from.box().grown(0.5 * from.metresPerPixel()).contains(camera.box())).isPresent();
    }

    private void paintOver(double rim, BiConsumer<GraphicsContext, MapCamera> painter) {
        MapCamera from = camera.sized(Math.ceil(camera.width()) + 2 * rim, Math.ceil(camera.height()) + 2 * rim);
        painted = Optional.of(from);
        over.setWidth(from.width());
        over.setHeight(from.height());
        GraphicsContext g = over.getGraphicsContext2D();
        g.clearRect(0, 0, from.width(), from.height());
        painter.accept(g, from);
    }

    private void paintFixed() {
        double height = Math.min(camera.height(), overlay.fixedHeight());
        fixed.setWidth(Math.ceil(camera.width()));
        fixed.setHeight(height);
        fixed.setTranslateY(Math.round(camera.height() - height));
        GraphicsContext g = fixed.getGraphicsContext2D();
        g.clearRect(0, 0, fixed.getWidth(), height);
        overlay.paintFixed(g, camera.sized(camera.width(), height), bench);
    }

    /** Draws the whole map into a canvas of the camera's size. */
    void paint(GraphicsContext g, MapCamera from) {
        paintGround(g, from);
        overlay.paint(g, from, scene());
        tilt.flatMap(TiltModel::mapPicture).ifPresent(picture -> overlay.hullOnItsWay(g, from, picture));
        overlay.paintFixed(g, from, bench);
    }

    private void paintGround(GraphicsContext g, MapCamera from) {
        g.setFill(overlay.style().ground());
        g.fillRect(0, 0, from.width(), from.height());
        groundPainter.paint(g, from);
    }

    /** Paints the ground in sight and a rim around it at the screen's scale, so that moving the map only moves it. */
    private void paintDetail() {
        Optional<ReliefPicture> picture = groundPainter.picture();
        if (picture.isEmpty() || background.isBusy(DETAIL_LANE) || groundPainter.isCovered(camera, RIM / 2)) {
            return;
        }
        MapCamera at = camera;
        MapCamera wide = at.sized(Math.ceil(at.width()) + 2 * RIM, Math.ceil(at.height()) + 2 * RIM);
        background.start(DETAIL_LANE, progress -> picture.get().detail(wide, progress),
                Background.Listener.of(tile -> {
                    if (groundPainter.picture().equals(picture)) {
                        groundPainter.showDetail(Optional.of(tile));
                    }
                    isMoved = true;
                    if (camera.metresPerPixel() != at.metresPerPixel()) {
                        rest.playFromStart();
                    } else {
                        paintDetail();
                    }
                }, failure -> bench.tell("The ground could not be painted. " + failure.getMessage())));
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(Math.max(1, getWidth()));
        canvas.setHeight(Math.max(1, getHeight()));
        frame.setWidth(getWidth());
        frame.setHeight(getHeight());
        backdrop.setWidth(getWidth());
        backdrop.setHeight(getHeight());
        look(camera.sized(canvas.getWidth(), canvas.getHeight()));
    }

    /**
     * Shows the ground.
     *
     * @param picture its picture
     */
    public void show(ReliefPicture picture) {
        groundPainter.show(picture);
        rest.playFromStart();
        refresh();
    }

    /**
     * Looks through another camera at once.
     *
     * @param through the camera
     */
    public void look(MapCamera through) {
        flight = Optional.empty();
        boolean isMove = camera.metresPerPixel() == through.metresPerPixel() && camera.width() == through.width()
                && camera.height() == through.height();
        camera = through;
        if (isMove) {
            paintDetail();
            isMoved = true;
        } else {
            refresh();
        }
        rest.playFromStart();
    }

    /**
     * Flies to another camera.
     *
     * @param to the camera
     */
    public void fly(MapCamera to) {
        flight = Optional.of(new Flight(camera, to.sized(camera.width(), camera.height()), System.nanoTime()));
    }

    /**
     * The camera looked through.
     *
     * @return the camera
     */
    public MapCamera camera() {
        return camera;
    }

    /**
     * Shows only what is on the site at a stage of the work.
     *
     * @param shown whether a figure is to be shown
     */
    public void stage(Predicate<MapFigure> shown) {
        stage = shown;
        refresh();
    }

    /**
     * Shows a hull on its way down over the map.
     *
     * @param model the tilt looked at
     */
    public void follow(TiltModel model) {
        tilt = Optional.of(model);
        model.changed().listen(() -> isTilted = true);
    }

    /**
     * Draws with another look.
     *
     * @param changed the look
     */
    public void dress(MapLook changed) {
        look = changed;
        overlay = new MapOverlay(changed);
        dressGround();
        refresh();
    }

    /**
     * How the map is drawn.
     *
     * @return the look
     */
    public MapLook dress() {
        return look;
    }

    /**
     * Asks to be told where the pointer is.
     *
     * @param listener told the place, empty when the pointer has left
     */
    public void onPointer(Consumer<Optional<Point>> listener) {
        pointerListener = listener;
    }

    /** Draws the map anew at the next frame. */
    public void refresh() {
        isStale = true;
    }

    /**
     * Whether everything asked for is on the screen.
     *
     * @return false while a frame or a flight is due
     */
    public boolean isSettled() {
        return !isStale && !isMoved && !isTriedOut && !isTilted && flight.isEmpty();
    }
}
