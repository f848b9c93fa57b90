// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.window;

import bermwright.editor.SampleSite;
import bermwright.editor.edit.Part;
import bermwright.editor.model.MapCamera;
import bermwright.editor.model.MapHands;
import bermwright.editor.model.Settings;
import bermwright.editor.view.WindowParts;
import bermwright.foundation.Point;
import bermwright.site.plan.Hull;
import bermwright.terrain.grid.TrueMetres;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import javafx.animation.AnimationTimer;

/**
 * Times of frames while the map is panned and while a hull is dragged, on ground of 4,000 x 4,000 nodes; run by hand.
 *
 * <p>To be started with {@code -Djavafx.animation.fullspeed=true}, so that frames follow each other as fast as they
 * are drawn and the time between two is what one costs.
 */
final class FrameTimes {
    private static final int NODES = 4000;
    private static final int WARM_UP = 60;
    private static final int FRAMES = 240;
    private static final int STEPS = 60;

    private FrameTimes() {
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("frames");
        Path plan = SampleSite.write(folder);
        ground(folder.resolve("ground.asc"));
        Settings settings = Settings.forgotten();
        settings.put("width", 1400);
        settings.put("height", 900);
        Stagehand hand = Stagehand.open(plan, settings);
        System.out.printf(Locale.ROOT, "Java %s, %d processors, load %.1f, scene %.0f x %.0f, map %.0f x %.0f%n",
                System.getProperty("java.version"), Runtime.getRuntime().availableProcessors(),
                ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage(),
                hand.stage().getScene().getWidth(), hand.stage().getScene().getHeight(), hand.map().getWidth(),
                hand.map().getHeight());
        hand.await("all answers are there", () -> hand.bench().answers().isAssessmentFresh(hand.bench().plan())
                && !WindowParts.isBusy(hand.window()));
        for (double scale : arguments.length > 0 ? new double[0] : new double[] {4, 1, 0.4}) {
            Stagehand.onScreenThread(() -> {
                MapCamera c = hand.map().camera();
                hand.map().look(new MapCamera(new Point(240, 240), scale * 0.12, c.width(), c.height()));
                return true;
            });
            print("pan at " + scale * 0.12 + " m a pixel", frames(i -> hand.map().look(hand.map().camera()
                    .panned(i / 50 % 2 == 0 ? 7 : -7, i / 25 % 2 == 0 ? 5 : -5))));
        }
        print("zoom in and out, a turn of the wheel every third frame", frames(i -> {
            if (i % 3 == 0) {
                MapCamera camera = hand.map().camera();
                hand.map().look(camera.zoomed(i / 30 % 2 == 0 ? 1.15 : 1 / 1.15, camera.width() / 3,
                        camera.height() / 3));
            }
        }));
        drag(hand, "drag a hull, clearance each frame");
        Stagehand.onScreenThread(() -> {
            WindowParts.showAnswers(hand.window(), "Lowering");
            return true;
        });
        drag(hand, "the same with its lowering in sight");
        hand.close();
        WindowParts.shut(hand.window());
        System.exit(0);
    }

    private static void drag(Stagehand hand, String what) throws InterruptedException {
        hand.pickHull("A");
        hand.await("all answers are there", () -> hand.bench().answers().isAssessmentFresh(hand.bench().plan())
                && !WindowParts.isBusy(hand.window()));
        Stagehand.onScreenThread(() -> {
            hand.map().look(hand.map().camera().fitting(hand.bench().box(Part.hull("A")).orElseThrow(), 0.5));
            return true;
        });
        Hull hull = hand.bench().plan().hull("A").orElseThrow();
        Point grab = hull.lyingAt(TrueMetres.SAME, 12, 0);
        MapHands hands = new MapHands(hand.bench());
        MapHands.Feel feel = new MapHands.Feel(0.2, false);
        Stagehand.onScreenThread(() -> hands.press(grab, feel));
        long[] inHand = new long[WARM_UP + FRAMES];
        List<Double> drag = frames(i -> {
            long start = System.nanoTime();
            hands.drag(new Point(grab.east() + 20 * Math.sin(i / 40.0), grab.north() + 15 * Math.cos(i / 30.0)), feel);
            inHand[i] = System.nanoTime() - start;
        });
        print(what, drag);
        print("  of which on the screen's own thread", Arrays.stream(inHand, WARM_UP, inHand.length)
                .mapToObj(n -> n / 1e6).toList());
        List<Double> clearance = new ArrayList<>();
        List<Double> lowering = new ArrayList<>();
        for (int i = 0; i < STEPS; i++) {
            Point to = new Point(grab.east() + 0.5 * (i + 1), grab.north() - 0.3 * (i + 1));
            long start = Stagehand.onScreenThread(() -> {
                hands.drag(to, feel);
                return System.nanoTime();
            });
            clearance.add(until(hand, start, () -> hand.bench().answers().isClearanceFresh(hand.bench().plan())));
            lowering.add(until(hand, start, () -> hand.bench().answers().isLoweringFresh(hand.bench().plan())));
        }
        print("one step of a drag: until clearance is there", clearance);
        print("one step of a drag: until lowering is there", lowering);
        Stagehand.onScreenThread(() -> {
            hands.giveUp();
            return true;
        });
    }

    /** Milliseconds from a start until something holds on the screen's thread, looked at once a millisecond. */
    private static double until(Stagehand hand, long start, BooleanSupplier holds) {
        while (!Stagehand.onScreenThread(holds::getAsBoolean)) {
            Stagehand.pause(1);
        }
        return (System.nanoTime() - start) / 1e6;
    }

    private static void ground(Path file) throws IOException {
        double spacing = 480.0 / (NODES - 1);
        StringBuilder text = new StringBuilder(NODES * NODES * 7);
        text.append("ncols ").append(NODES).append("\nnrows ").append(NODES).append("\nxllcenter 0\nyllcenter 0\n")
                .append("cellsize ").append(spacing).append("\nNODATA_value -9999\n");
        for (int row = NODES - 1; row >= 0; row--) {
            for (int column = 0; column < NODES; column++) {
                long millimetres = Math.round(1000 * SampleSite.height(column * spacing, row * spacing));
                text.append(millimetres / 1000.0).append(' ');
            }
            text.append('\n');
        }
        Files.writeString(file, text);
    }

    private static List<Double> frames(IntConsumer work) throws InterruptedException {
        List<Double> times = new ArrayList<>();
        CountDownLatch done = new CountDownLatch(1);
        double made = spent("JavaFX Application");
        double drawn = spent("QuantumRenderer");
        Stagehand.onScreenThread(() -> {
            new AnimationTimer() {
                private int frame;
                private long last;

                @Override
                public void handle(long now) {
                    long nanos = System.nanoTime();
                    if (frame > WARM_UP) {
                        times.add((nanos - last) / 1e6);
                    }
                    last = nanos;
                    if (frame < WARM_UP + FRAMES) {
                        work.accept(frame++);
                    } else {
                        stop();
                        done.countDown();
                    }
                }
            }.start();
            return Optional.empty();
        });
        done.await();
        System.out.printf(Locale.ROOT, "%d frames took %.2f ms of processor each to make and %.2f ms to draw:%n",
                WARM_UP + FRAMES, (spent("JavaFX Application") - made) / (WARM_UP + FRAMES),
                (spent("QuantumRenderer") - drawn) / (WARM_UP + FRAMES));
        return times;
    }

    /** Processor time of a thread so far (ms), whatever else runs. */
    private static double spent(String thread) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return Arrays.stream(threads.dumpAllThreads(false, false))
                .filter(t -> t.getThreadName().startsWith(thread))
                .mapToDouble(t -> threads.getThreadCpuTime(t.getThreadId()) / 1e6).sum();
    }

    private static void print(String what, List<Double> times) {
        double[] sorted = times.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        System.out.printf(Locale.ROOT, "%-40s median %6.2f ms, 95 %% under %6.2f ms, 99 %% under %6.2f ms,"
                + " worst %6.2f ms%n", what, at(sorted, 0.5), at(sorted, 0.95), at(sorted, 0.99),
                sorted[sorted.length - 1]);
    }

    private static double at(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - 1)];
    }
}
