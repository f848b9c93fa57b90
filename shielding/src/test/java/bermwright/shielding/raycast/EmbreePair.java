// SPDX-License-Identifier: Apache-2.0
package bermwright.shielding.raycast;

import bermwright.foundation.Azimuth;
import bermwright.foundation.Vec3;
import bermwright.regolith.BulkDensity;
import bermwright.shielding.cover.CoveredHull;
import bermwright.shielding.cover.Mounds;
import bermwright.shielding.scene.HullEnd;
import bermwright.shielding.scene.HullPose;
import bermwright.shielding.scene.HullShape;
import bermwright.shielding.scene.HullSolid;
import bermwright.shielding.scene.Scene;
import bermwright.shielding.scene.Scenes;
import bermwright.terrain.grid.ElevationGrid;
import bermwright.terrain.grid.GridFrame;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.IntConsumer;

/**
 * Our rays and those of the general-purpose ray tracer Embree on the same surface, run by hand.
 *
 * <p>Use: {@code EmbreePair PROGRAM DIRECTORY [SET]}, with the program built from {@code src/test/cpp/embree_rays.cpp}
 * and, for one set alone, the first letters of its name. Both get the same surface of 1000 x 1000 nodes, two triangles
 * a cell, the same origins inside one hull and the same directions, and add up the soil on the way. Prints a table for
 * {@code BENCHMARKS.md}.
 */
public final class EmbreePair {
    private static final int NODES = 1000;
    private static final int ORIGINS = 64;
    private static final int REPEATS = 3;
    /** Runs of ours that come before, until all of it is compiled. */
    private static final int WARM_UPS = 25;
    private static final int THREADS = 2;
    private static final double ALLOWED_SHARE = 1e-3;
    private static final double ALLOWED_PATH = 2e-3;

    private EmbreePair() {
    }

    /** One set of rays: for each origin azimuths, and for each azimuth rising sines; or single rays. */
    private record Set(String name, ElevationGrid surface, HullSolid hull, Vec3[] origins, double[][] azimuths,
            double[][][] sines) {
        long rays() {
            long sum = 0;
            for (double[][] fan : sines) {
                for (double[] s : fan) {
                    sum += s.length;
                }
            }
            return sum;
        }
    }

    /** Runs all sets. */
    public static void main(String[] args) throws Exception {
        Path program = Path.of(args[0]);
        Path directory = Files.createDirectories(Path.of(args[1]));
        System.out.println("Million rays a second by the clock on two threads, and in brackets for each second of"
                + " processor time.");
        System.out.println("| rays | set | Embree's fastest mode | Embree | ours, shared | ours, ray by ray |"
                + " ratio shared | ratio ray by ray | differ | left out |");
        System.out.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
        for (Set set : List.of(sky("sky, smooth", 0), sky("sky, rough", 1), grazing(), scattered())) {
            if (args.length < 3 || set.name.startsWith(args[2])) {
                run(program, directory, set);
            }
        }
    }

    private static ElevationGrid ground(double rough) {
        Random random = new Random(5);
        return ElevationGrid.sampled(new GridFrame(NODES, NODES, -250, -250, 0.5), (e, n) -> 0.01 * e
                + Math.sin(e / 17) * Math.cos(n / 23) + rough * (6 * Math.sin(e / 41 + 1) * Math.sin(n / 37)
                + 0.1 * random.nextGaussian()));
    }

    private static Set set(String name, double rough, double[] azimuthOf, double[] sines) {
        ElevationGrid ground = ground(rough);
        HullSolid hull = new HullSolid("A", new HullShape(24, 2.25, HullEnd.FLAT, HullEnd.FLAT, 0),
                Scenes.lying(new Vec3(-12, 0, ground.height(0, 0) + 2.4), Azimuth.ofDegrees(90), 0));
        ElevationGrid surface = Mounds.over(ground, List.of(CoveredHull.uniform(hull, 2)), Math.toRadians(33),
                List.of()).finished();
        Random random = new Random(9);
        Vec3[] origins = new Vec3[ORIGINS];
        double[][] azimuths = new double[ORIGINS][];
        double[][][] fans = new double[ORIGINS][][];
        for (int i = 0; i < ORIGINS; i++) {
            origins[i] = hull.pose().point(1 + 22 * random.nextDouble(), random.nextDouble() - 0.5,
                    random.nextDouble() - 0.5);
            azimuths[i] = azimuthOf;
            fans[i] = new double[azimuthOf.length][];
            Arrays.fill(fans[i], sines);
        }
        return new Set(name, surface, hull, origins, azimuths, fans);
    }

    private static double[] turn(int azimuths) {
        double[] all = new double[azimuths];
        for (int a = 0; a < azimuths; a++) {
            all[a] = 0.0123 + 2 * Math.PI * a / azimuths;
        }
        return all;
    }

    private static double[] steps(int many, double to) {
        double[] sines = new double[many];
        for (int k = 0; k < many; k++) {
            sines[k] = to * (k + 0.5) / many;
        }
        return sines;
    }

    private static Set sky(String name, double rough) {
        return set(name, rough, turn(256), steps(128, 1));
    }

    private static Set grazing() {
        return set("grazing, below 5 degrees, rough", 1, turn(256), steps(128, Math.sin(Math.toRadians(5))));
    }

    /** Single rays in random directions; none shares its azimuth. */
    private static Set scattered() {
        Set like = set("scattered, smooth", 0, turn(8192), steps(1, 1));
        Random random = new Random(17);
        for (int i = 0; i < ORIGINS; i++) {
            like.azimuths[i] = random.doubles(8192, 0, 2 * Math.PI).toArray();
            like.sines[i] = new double[8192][];
            for (int a = 0; a < 8192; a++) {
                like.sines[i][a] = new double[] {Math.max(1e-4, 0.9999 * random.nextDouble())};
            }
        }
        return like;
    }

    private static void run(Path program, Path directory, Set set) throws Exception {
        Path scene = directory.resolve("scene.bin");
        Path rays = directory.resolve("rays.bin");
        Path out = directory.resolve("out.bin");
        writeScene(set, scene);
        writeRays(set, rays);
        int count = (int) set.rays();
        String best = "";
        double embree = 0;
        double embreeCpu = 0;
        StringBuilder tried = new StringBuilder();
        for (String mode : List.of("i1", "i8", "o1", "o8", "o16", "om")) {
            String[] line = call(program, scene, rays, out, mode).trim().split(" ");
            tried.append(String.format(Locale.ROOT, " %s %s (%s)", line[0], line[1], line[2]));
            if (Double.parseDouble(line[2]) > embreeCpu) {
                best = mode;
                embree = Double.parseDouble(line[1]);
                embreeCpu = Double.parseDouble(line[2]);
            }
        }
        call(program, scene, rays, out, best);
        double[] theirs = read(out, count);
        double[] ours = new double[count];
        SceneRays ready = SceneRays.of(new Scene(Scenes.bare(set.surface, BulkDensity.uniform(1)),
                List.of(set.hull)));
        boolean scattered = set.sines[0][0].length == 1;
        double[][][] directions = scattered ? directions(set) : new double[0][][];
        double[] shared = time(i -> {
            if (scattered) {
                single(set, ready, i, directions[i], ours);
            } else {
                fans(set, ready, i, ours, true);
            }
        }, count, WARM_UPS);
        compare(set, theirs, ours, "shared");
        double[] alone = time(i -> fans(set, ready, i, ours, false), count, 4);
        String differ = compare(set, theirs, ours, "ray by ray");
        System.out.printf(Locale.ROOT, "| %d | %s | %s | %.2f (%.2f) | %.2f (%.2f) | %.2f (%.2f) | %.1f (%.1f)"
                + " | %.2f (%.2f) | %s |%n", count, set.name, best, embree, embreeCpu, shared[0], shared[1], alone[0],
                alone[1], shared[0] / embree, shared[1] / embreeCpu, alone[0] / embree, alone[1] / embreeCpu, differ);
        System.out.println("<!-- " + set.name + ", all modes tried, Mrays/s:" + tried + " -->");
    }

    private static void fans(Set set, SceneRays scene, int origin, double[] ours, boolean together) {
        SkySweep sweep = scene.from(set.origins[origin]);
        SkyRays rays = new SkyRays();
        int at = first(set, origin);
        for (int a = 0; a < set.azimuths[origin].length; a++) {
            double[] sines = set.sines[origin][a];
            Azimuth azimuth = new Azimuth(set.azimuths[origin][a]);
            if (together) {
                sweep.look(azimuth, sines, rays);
                for (int k = 0; k < sines.length; k++) {
                    ours[at++] = rays.inPlace(k);
                }
            } else {
                for (double sine : sines) {
                    sweep.look(azimuth, new double[] {sine}, rays);
                    ours[at++] = rays.inPlace(0);
                }
            }
        }
    }

    /** For each origin the east, north and upward parts of all directions, as Embree gets them. */
    private static double[][][] directions(Set set) {
        double[][][] all = new double[ORIGINS][3][];
        for (int i = 0; i < ORIGINS; i++) {
            int rays = set.azimuths[i].length;
            all[i] = new double[3][rays];
            for (int a = 0; a < rays; a++) {
                double sine = set.sines[i][a][0];
                double cosine = Math.sqrt(1 - sine * sine);
                all[i][0][a] = cosine * Math.sin(set.azimuths[i][a]);
                all[i][1][a] = cosine * Math.cos(set.azimuths[i][a]);
                all[i][2][a] = sine;
            }
        }
        return all;
    }

    private static void single(Set set, SceneRays scene, int origin, double[][] directions, double[] ours) {
        SkyRays rays = new SkyRays();
        scene.from(set.origins[origin]).look(directions[0], directions[1], directions[2], rays);
        int at = first(set, origin);
        for (int a = 0; a < rays.count(); a++) {
            ours[at + a] = rays.inPlace(a);
        }
    }

    private static int first(Set set, int origin) {
        int sum = 0;
        for (int i = 0; i < origin; i++) {
            for (double[] s : set.sines[i]) {
                sum += s.length;
            }
        }
        return sum;
    }

    /** Best of some repeats after a warm-up: million rays a second by the clock, and by processor time. */
    private static double[] time(IntConsumer origin, int count, int warmUps) throws InterruptedException {
        double wall = Double.POSITIVE_INFINITY;
        double processor = Double.POSITIVE_INFINITY;
        for (int r = 0; r < REPEATS + warmUps; r++) {
            long[] used = new long[THREADS];
            Thread[] threads = new Thread[THREADS];
            java.util.concurrent.atomic.AtomicInteger next = new java.util.concurrent.atomic.AtomicInteger();
            long start = System.nanoTime();
            for (int t = 0; t < THREADS; t++) {
                int own = t;
                threads[t] = new Thread(() -> {
                    for (int i = next.getAndIncrement(); i < ORIGINS; i = next.getAndIncrement()) {
                        origin.accept(i);
                    }
                    used[own] = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
                });
                threads[t].start();
            }
            for (Thread thread : threads) {
                thread.join();
            }
            if (r >= warmUps) {
                wall = Math.min(wall, (System.nanoTime() - start) * 1e-9);
                processor = Math.min(processor, Arrays.stream(used).sum() * 1e-9);
            }
        }
        return new double[] {count / wall / 1e6, count / processor / 1e6};
    }

    private static String compare(Set set, double[] theirs, double[] ours, String how) {
        int leftOut = 0;
        double worst = 0;
        int beyond = 0;
        for (int i = 0; i < ours.length; i++) {
            if (Double.isNaN(theirs[i])) {
                leftOut++;
            } else {
                double off = Math.abs(theirs[i] - ours[i]);
                worst = Math.max(worst, off);
                beyond += off > Math.max(ALLOWED_PATH, ALLOWED_SHARE * ours[i]) ? 1 : 0;
            }
        }
        System.out.printf(Locale.ROOT, "<!-- %s, %s: worst difference %.4f m, %d of %d beyond 0.1 %% or 2 mm, %d left"
                + " out -->%n", set.name, how, worst, beyond, ours.length, leftOut);
        return beyond + " | " + leftOut;
    }

    private static String call(Path program, Path scene, Path rays, Path out, String mode)
            throws IOException, InterruptedException {
        Process process = new ProcessBuilder(program.toString(), scene.toString(), rays.toString(), out.toString(),
                mode, Integer.toString(REPEATS)).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String line = new String(process.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(program + " " + mode + " failed");
        }
        return line;
    }

    private static void writeScene(Set set, Path file) throws IOException {
        GridFrame f = set.surface.frame();
        HullPose pose = set.hull.pose();
        ByteBuffer buffer = ByteBuffer.allocate(8 + 8 * (3 + f.size() + 8)).order(ByteOrder.LITTLE_ENDIAN);
        buffer.putInt(f.rows()).putInt(f.columns()).putDouble(f.west()).putDouble(f.south()).putDouble(f.spacing());
        for (double h : set.surface.heights()) {
            buffer.putDouble(h);
        }
        for (double d : new double[] {pose.base().x(), pose.base().y(), pose.base().z(), pose.axis().x(),
            pose.axis().y(), pose.axis().z(), set.hull.shape().radius(), set.hull.shape().length()}) {
            buffer.putDouble(d);
        }
        write(file, buffer);
    }

    private static void writeRays(Set set, Path file) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate((int) (8 + 48 * set.rays())).order(ByteOrder.LITTLE_ENDIAN);
        buffer.putLong(set.rays());
        for (int i = 0; i < ORIGINS; i++) {
            for (int a = 0; a < set.azimuths[i].length; a++) {
                for (double sine : set.sines[i][a]) {
                    double cosine = Math.sqrt(1 - sine * sine);
                    buffer.putDouble(set.origins[i].x()).putDouble(set.origins[i].y()).putDouble(set.origins[i].z());
                    buffer.putDouble(cosine * Math.sin(set.azimuths[i][a]))
                            .putDouble(cosine * Math.cos(set.azimuths[i][a])).putDouble(sine);
                }
            }
        }
        write(file, buffer);
    }

    private static void write(Path file, ByteBuffer buffer) throws IOException {
        buffer.flip();
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE,
                StandardOpenOption.TRUNCATE_EXISTING)) {
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
        }
    }

    private static double[] read(Path file, int count) throws IOException {
        double[] all = new double[count];
        ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN).asDoubleBuffer().get(all);
        return all;
    }
}
