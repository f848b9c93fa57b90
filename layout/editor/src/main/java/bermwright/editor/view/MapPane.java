// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.view;

import bermwright.editor.edit.Part;
import bermwright.editor.model.Drafting;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.MapFigure;
import bermwright.editor.model.MapHands;
import bermwright.editor.model.Plainly;
import bermwright.editor.model.ReliefPicture;
import bermwright.editor.model.TiltModel;
import bermwright.editor.model.Workbench;
import bermwright.editor.run.Background;
import bermwright.finding.Numbered;
import bermwright.foundation.Point;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import javafx.animation.AnimationTimer;
import javafx.animation.PauseTransition;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.util.Duration;

/** The site from above: ground, everything on it, and the hand that moves it. */
public final class MapPane extends Region {
    private static final double WHEEL_STEP = 1.0015;
    private static final double FLIGHT_NANOS = 450e6;
    private static final String DETAIL_LANE = "map detail";

    private final Workbench bench;
    private final MapHands hands;
    private final Background background;
    private final MapLayers layers;
    private boolean isTriedOut;
    private boolean isDrawn;
    private Optional<Point> frameFrom = Optional.empty();
    private boolean isTilted;
    private MapCamera camera = new MapCamera(new Point(0, 0), 1, 10, 10);
    private MapLook look = MapLook.standard();
    private boolean isStale = true;
    private boolean isMoved;
    private boolean isPanning;
    private boolean isSpaceDown;
    private final Drafting draft;
    private final DraftLayer drawn = new DraftLayer();
    private final PointerWords readout = new PointerWords();
    private Optional<Point2D> last = Optional.empty();
    private Optional<Flight> flight = Optional.empty();
    private Optional<Fit> fitted = Optional.empty();
    private Optional<Point> pointer = Optional.empty();
    private Consumer<Optional<Point>> pointerListener = place -> { };
    private final PauseTransition rest = new PauseTransition(Duration.millis(160));

    /** A box that is kept whole in sight. */
    private record Fit(MapCamera.Box box, double share) {
    }

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
        this.draft = hands.draft();
        this.bench = bench;
        this.hands = hands;
        this.background = background;
        this.layers = new MapLayers(bench, hands, look);
        getChildren().addAll(layers.nodes());
        getChildren().addAll(drawn, readout);
        draft.changed().listen(() -> {
            setCursor(draft.isActive() ? Cursor.CROSSHAIR : Cursor.DEFAULT);
            isDrawn = true;
        });
        getChildren().forEach(child -> child.setMouseTransparent(true));
        setClip(layers.frame());
        getStyleClass().add("map");
        setId("map");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText("Plan of the site");
        new MapHint(this, bench, hands);
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

    private void listenToPointer() {
        addEventHandler(KeyEvent.KEY_PRESSED, event -> space(event, true));
        addEventHandler(KeyEvent.KEY_RELEASED, event -> space(event, false));
        focusedProperty().addListener((observed, before, now) -> hold(false));
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        addEventHandler(MouseEvent.MOUSE_RELEASED, this::released);
        addEventHandler(MouseEvent.MOUSE_MOVED, event -> {
            draft.move(place(event), feel(event));
            point(event.getX(), event.getY());
        });
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

    private void space(KeyEvent event, boolean isDown) {
        if (event.getCode() == KeyCode.SPACE) {
            hold(isDown);
            event.consume();
        }
    }

    /** While the space bar is held a drag moves the map, wherever it starts. */
    private void hold(boolean isHeld) {
        isSpaceDown = isHeld;
        setCursor(isHeld ? Cursor.OPEN_HAND : draft.isActive() ? Cursor.CROSSHAIR : Cursor.DEFAULT);
    }

    /** Shows words at the pointer for as long as the hand holds something. */
    private void follow(Optional<String> words, Point at) {
        words.ifPresent(w -> readout.follow(w, spot(at), this));
    }

    private Point2D spot(Point place) {
        return new Point2D(camera.x(place.east()), camera.y(place.north()));
    }

    /** Shows words near a place of the map for a few seconds; where there is none, at its foot. */
    void say(String words, Optional<Point> near) {
        readout.say(words, near.map(this::spot), this);
    }

    /** Keeps what is read at the pointer off a panel over the map. */
    void keepReadoutOff(Region panel) {
        readout.keepOff(panel);
    }

    private void pressed(MouseEvent event) {
        requestFocus();
        if (event.getButton() == MouseButton.MIDDLE || isSpaceDown) {
            hands.giveUp();
            isPanning = true;
        } else if (event.getButton() == MouseButton.SECONDARY) {
            isPanning = false;
            hands.press(place(event), feel(event));
            hands.giveUp();
        } else if (draft.isActive()) {
            isPanning = false;
            draft.press(place(event), feel(event));
        } else if (event.isShortcutDown()) {
            hands.pickAlso(place(event), feel(event));
        } else if (event.isShiftDown()) {
            frameFrom = Optional.of(place(event));
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
        } else if (draft.isActive()) {
            draft.move(place(event), feel(event));
        } else if (frameFrom.isPresent()) {
            drawn.frame(camera, frameFrom.get(), place(event), layers.accent());
        } else if (hands.isHolding()) {
            hands.drag(place(event), feel(event));
            follow(hands.readout(), place(event));
        }
        last = Optional.of(now);
        point(event.getX(), event.getY());
    }

    private void released(MouseEvent event) {
        boolean wasPanning = isPanning;
        isPanning = false;
        last = Optional.empty();
        if (draft.isActive() && !wasPanning && event.getButton() == MouseButton.PRIMARY) {
            draft.release(place(event), feel(event));
            refresh();
            return;
        }
        frameFrom.ifPresent(from -> {
            frameFrom = Optional.empty();
            isDrawn = true;
            hands.pickWithin(from, place(event));
        });
        if (hands.isHolding()) {
            if (!event.isStillSincePress()) {
                // The last stretch may not have been told as a drag of its own.
                hands.drag(place(event), feel(event));
            }
            hands.release();
        }
        if (event.isStillSincePress() && event.getButton() == MouseButton.PRIMARY) {
            findingAt(event.getX(), event.getY()).ifPresentOrElse(bench::pickFinding,
                    () -> lookCloser(crowdAt(event.getX(), event.getY())));
        }
        refresh();
    }

    /** Goes to the hull whose gathered findings were clicked. */
    private void lookCloser(List<Numbered> gathered) {
        gathered.stream().findFirst().flatMap(n -> Part.bySubject(bench.plan(), n.finding().subject()))
                .ifPresent(part -> {
                    bench.pick(Optional.of(part));
                    bench.box(part).ifPresent(box -> flyTo(box, PartActions.PART));
                });
    }

    /** The findings that are only counted at a place of the map (pixels), for want of room. */
    List<Numbered> crowdAt(double x, double y) {
        return layers.crowdAt(camera, x, y);
    }

    /** The finding whose badge is at a place of the map (pixels). */
    Optional<Numbered> findingAt(double x, double y) {
        return layers.findingAt(camera, x, y);
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
            isDrawn = true;
            boolean isNew = isStale;
            boolean isShifted = isStale || isMoved;
            isStale = false;
            isMoved = false;
            isTriedOut = false;
            isTilted = false;
            if (isShifted) {
                layers.layGround(camera);
            }
            layers.paint(camera, isNew, isShifted);
        }
        if (isDrawn) {
            isDrawn = false;
            drawn.show(draft, camera, layers.accent());
            if (draft.isActive()) {
                draft.readout().ifPresent(words -> follow(Optional.of(words), draft.outline().get(
                        draft.outline().size() - 1)));
            }
        }
    }

    /** Draws the whole map into a canvas of the camera's size. */
    void paint(GraphicsContext g, MapCamera from) {
        layers.paintWhole(g, from);
    }

    /** Paints the ground in sight and a rim around it at the screen's scale, so that moving the map only moves it. */
    private void paintDetail() {
        Optional<ReliefPicture> picture = layers.ground().picture();
        if (picture.isEmpty() || background.isBusy(DETAIL_LANE)
                || layers.ground().isCovered(camera, MapLayers.RIM / 2)) {
            return;
        }
        MapCamera at = camera;
        MapCamera wide = MapLayers.withRim(at);
        background.start(DETAIL_LANE, progress -> picture.get().detail(wide, progress),
                Background.Listener.of(tile -> {
                    if (layers.ground().picture().equals(picture)) {
                        layers.ground().showDetail(Optional.of(tile));
                    }
                    isMoved = true;
                    if (camera.metresPerPixel() != at.metresPerPixel()) {
                        rest.playFromStart();
                    } else {
                        paintDetail();
                    }
                }, failure -> bench.tell("The ground could not be painted. " + Plainly.words(failure))));
    }

    @Override
    protected void layoutChildren() {
        double w = Math.max(1, getWidth());
        double h = Math.max(1, getHeight());
        boolean isResized = camera.width() != w || camera.height() != h;
        layers.resize(w, h);
        if (isResized) {
            Optional<Fit> fit = fitted;
            MapCamera sized = camera.sized(w, h);
            look(fit.map(f -> sized.fitting(f.box, f.share)).orElse(sized));
            fitted = fit;
        }
    }

    /**
     * Shows a box whole, and keeps it whole when the map changes its size, until another part is looked at.
     *
     * @param box   the box
     * @param share share of the map it may fill (1), above 0, at most 1
     */
    public void fit(MapCamera.Box box, double share) {
        // The map may have its size and not have laid itself out yet.
        look(camera.sized(Math.max(1, getWidth()), Math.max(1, getHeight())).fitting(box, share));
        fitted = Optional.of(new Fit(box, share));
    }

    /**
     * Flies to where a box is shown whole, and keeps it whole as {@link #fit} does.
     *
     * @param box   the box
     * @param share share of the map it may fill (1), above 0, at most 1
     */
    public void flyTo(MapCamera.Box box, double share) {
        fly(camera.fitting(box, share));
        fitted = Optional.of(new Fit(box, share));
    }

    /**
     * Shows the ground.
     *
     * @param picture its picture
     */
    public void show(ReliefPicture picture) {
        layers.ground().show(picture);
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
        fitted = Optional.empty();
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
        fitted = Optional.empty();
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
        layers.stage(shown);
        refresh();
    }

    /**
     * Shows a hull on its way down over the map.
     *
     * @param model the tilt looked at
     */
    public void follow(TiltModel model) {
        layers.follow(model);
        model.changed().listen(() -> isTilted = true);
    }

    /**
     * Draws with another look.
     *
     * @param changed the look
     */
    public void dress(MapLook changed) {
        look = changed;
        layers.dress(changed);
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

    /** Where the pointer is; empty while it is not over the map. */
    Optional<Point> pointer() {
        return pointer;
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
