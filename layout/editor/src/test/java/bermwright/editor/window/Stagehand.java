// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.window;

import bermwright.editor.edit.Part;
import bermwright.editor.model.Settings;
import bermwright.editor.model.Workbench;
import bermwright.editor.view.EditorWindow;
import bermwright.editor.view.MapPane;
import bermwright.editor.view.WindowParts;
import bermwright.foundation.Point;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import javafx.stage.Window;
import javax.imageio.ImageIO;
import org.testfx.api.FxRobot;

/** Opens an editor window and works it with a robot's mouse and keys. */
final class Stagehand {
    private static final long PATIENCE_MILLIS = Long.getLong("bermwright.patience", 240_000);
    private static boolean isStarted;

    private final Stage stage;
    private final EditorWindow window;
    private final FxRobot robot = new FxRobot();
    private final AtomicInteger releases = new AtomicInteger();

    private Stagehand(Stage stage, EditorWindow window) {
        this.stage = stage;
        this.window = window;
        stage.addEventFilter(MouseEvent.MOUSE_RELEASED, event -> releases.incrementAndGet());
    }

    static Stagehand open(Path plan) {
        return open(plan, Settings.ofPerson(System.getenv(), System.getProperties()));
    }

    static Stagehand open(Path plan, Settings settings) {
        Stagehand hand = openWithoutGround(plan, settings);
        hand.await("the ground is shown", () -> WindowParts.isGroundShown(hand.window));
        hand.settle();
        return hand;
    }

    static Stagehand openWithoutGround(Path plan) {
        return openWithoutGround(plan, Settings.ofPerson(System.getenv(), System.getProperties()));
    }

    private static Stagehand openWithoutGround(Path plan, Settings settings) {
        Stagehand hand = empty(settings);
        onScreenThread(() -> hand.window.open(plan));
        return hand;
    }

    /** A window without a plan. */
    static Stagehand empty(Settings settings) {
        if (!isStarted) {
            CompletableFuture<Boolean> started = new CompletableFuture<>();
            Platform.startup(() -> started.complete(true));
            started.join();
            Platform.setImplicitExit(false);
            isStarted = true;
        }
        return onScreenThread(() -> {
            Stage stage = new Stage();
            stage.setX(0);
            stage.setY(0);
            EditorWindow window = new EditorWindow(stage, settings);
            stage.show();
            stage.requestFocus();
            return new Stagehand(stage, window);
        });
    }

    static <T> T onScreenThread(Callable<T> work) {
        CompletableFuture<T> result = new CompletableFuture<>();
        Runnable doing = () -> {
            try {
                result.complete(work.call());
            } catch (Throwable thrown) {
                result.completeExceptionally(thrown);
            }
        };
        if (Platform.isFxApplicationThread()) {
            doing.run();
        } else {
            Platform.runLater(doing);
        }
        try {
            return result.get(PATIENCE_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException | java.util.concurrent.ExecutionException
                | java.util.concurrent.TimeoutException thrown) {
            throw new IllegalStateException(thrown.getCause() == null ? thrown : thrown.getCause());
        }
    }

    void await(String what, BooleanSupplier condition) {
        if (!comesTrue(condition, PATIENCE_MILLIS)) {
            screenshot("failed");
            throw new AssertionError("waited in vain until " + what);
        }
    }

    /** Whether a condition comes true before the time is over (ms). */
    boolean comesTrue(BooleanSupplier condition, long millis) {
        long end = System.currentTimeMillis() + millis;
        while (!onScreenThread(condition::getAsBoolean)) {
            if (System.currentTimeMillis() >= end) {
                return false;
            }
            pause(20);
        }
        return true;
    }

    /** Waits until the map has drawn everything asked for. */
    void settle() {
        await("the map is still", () -> map().isSettled());
        pause(60);
    }

    static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    FxRobot robot() {
        return robot;
    }

    EditorWindow window() {
        return window;
    }

    Stage stage() {
        return stage;
    }

    Workbench bench() {
        return WindowParts.bench(window);
    }

    MapPane map() {
        return WindowParts.map(window);
    }

    Node node(String id) {
        return onScreenThread(() -> stage.getScene().getRoot().lookupAll("*").stream()
                .filter(n -> id.equals(n.getId())).findFirst()
                .orElseThrow(() -> new AssertionError("there is no node " + id)));
    }

    Optional<Node> find(String id) {
        return onScreenThread(() -> stage.getScene().getRoot().lookupAll("*").stream()
                .filter(n -> id.equals(n.getId())).findFirst());
    }

    void pickHull(String id) {
        onScreenThread(() -> {
            bench().pick(Optional.of(Part.hull(id)));
            map().requestFocus();
            return true;
        });
    }

    /** Where a place of the site is on the screen. */
    Point2D onScreen(Point place) {
        return onScreenThread(() -> map().localToScreen(map().camera().x(place.east()),
                map().camera().y(place.north())));
    }

    void drag(Point from, Point to) {
        Point2D start = onScreen(from);
        Point2D end = onScreen(to);
        robot.moveTo(start);
        robot.press(javafx.scene.input.MouseButton.PRIMARY);
        for (int i = 1; i <= 6; i++) {
            robot.moveTo(start.interpolate(end, i / 6.0));
        }
        int before = releases.get();
        robot.release(javafx.scene.input.MouseButton.PRIMARY);
        // On a busy machine the robot comes back before the window has heard of the button.
        await("the window has heard that the button is up", () -> releases.get() > before);
    }

    void screenshot(String name) {
        picture(stage.getScene().getRoot(), name);
    }

    /** A picture of the window that a node is in. */
    static void picture(Node node, String name) {
        onScreenThread(() -> {
            File file = Path.of(System.getProperty("bermwright.pictures", "."), name + ".png").toFile();
            try {
                ImageIO.write(SwingFXUtils.fromFXImage(node.getScene().snapshot(null), null), "png", file);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return true;
        });
    }

    /** Closes whatever a scenario left open, so that the next does not click into it. */
    static void closeAll() {
        onScreenThread(() -> {
            List.copyOf(Window.getWindows()).forEach(Window::hide);
            return true;
        });
    }

    void close() {
        onScreenThread(() -> {
            bench().document().close();
            WindowParts.shut(window);
            stage.hide();
            return true;
        });
    }
}
