// SPDX-License-Identifier: Apache-2.0
package bermwright.spark;

import bermwright.foundation.Progress;
import bermwright.foundation.Require;
import bermwright.site.survey.BlockSpread;
import bermwright.site.survey.BlockWorker;
import bermwright.site.survey.ScoredBlock;
import bermwright.site.survey.SurveyOrder;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.apache.spark.SparkConf;
import org.apache.spark.SparkJobInfo;
import org.apache.spark.SparkStageInfo;
import org.apache.spark.api.java.JavaFutureAction;
import org.apache.spark.api.java.JavaSparkContext;

/**
 * Scores blocks on a Spark cluster. Each worker reads the elevation file itself, from a path that all of them see; what
 * is found comes back to this machine, which puts map and places together.
 *
 * <p>A block's scores hang on the ground alone, so the answer is the same whatever the partitioning; blocks of a worker
 * that is lost are scored anew by another.
 */
public final class SparkSpread implements BlockSpread {
    private static final int PAUSE_MILLIS = 300;

    private final String master;
    private final int partitions;

    /**
     * A spread.
     *
     * @param master     where the master is, such as {@code spark://host:7077} or {@code local[*]}
     * @param partitions into how many parts the blocks are cut at most (1), at least 1
     */
    public SparkSpread(String master, int partitions) {
        Require.that(partitions >= 1, "%s partitions; accepted: at least 1.", partitions);
        this.master = master;
        this.partitions = partitions;
    }

    @Override
    public String words() {
        return "Apache Spark at " + master;
    }

    private SparkConf conf() {
        SparkConf conf = new SparkConf().setAppName("bermwright survey").setMaster(master)
                .set("spark.ui.enabled", "false").set("spark.driver.maxResultSize", "0");
        if (isOnThisMachine()) {
            conf.set("spark.driver.bindAddress", "127.0.0.1").set("spark.driver.host", "127.0.0.1");
        }
        List<String> jars = new ArrayList<>();
        List<String> folders = new ArrayList<>();
        for (String part : System.getProperty("java.class.path").split(File.pathSeparator)) {
            Path path = Path.of(part);
            if (Files.isDirectory(path)) {
                folders.add(part);
            } else if (Files.isRegularFile(path) && path.getFileName().toString().startsWith("bermwright")) {
                jars.add(part);
            }
        }
        conf.setJars(jars.toArray(String[]::new));
        if (!folders.isEmpty()) {
            // Classes that are not in jars are seen by workers of this machine only, as when the house is tested.
            conf.set("spark.executor.extraClassPath", System.getProperty("java.class.path"));
        }
        return conf;
    }

    private boolean isOnThisMachine() {
        return master.startsWith("local") || master.startsWith("spark://127.0.0.1:")
                || master.startsWith("spark://localhost:");
    }

    @Override
    public void score(SurveyOrder order, Consumer<ScoredBlock> sink, Progress progress) {
        List<Integer> blocks = IntStream.range(0, order.blocks()).boxed().toList();
        try (JavaSparkContext spark = new JavaSparkContext(conf())) {
            JavaFutureAction<List<ScoredBlock>> found = spark.parallelize(new ArrayList<>(blocks),
                    Math.min(partitions, blocks.size())).mapPartitions(numbers -> scored(order, numbers))
                    .collectAsync();
            awaited(found, spark, progress).forEach(sink);
        }
    }

    /** The blocks of a partition, each scored when it is asked for. */
    private static Iterator<ScoredBlock> scored(SurveyOrder order, Iterator<Integer> numbers) {
        BlockWorker worker = BlockWorker.open(order);
        return new Iterator<>() {
            @Override
            public boolean hasNext() {
                if (!numbers.hasNext()) {
                    worker.close();
                }
                return numbers.hasNext();
            }

            @Override
            public ScoredBlock next() {
                return worker.score(numbers.next());
            }
        };
    }

    private static List<ScoredBlock> awaited(JavaFutureAction<List<ScoredBlock>> found, JavaSparkContext spark,
            Progress progress) {
        while (true) {
            try {
                return found.get(PAUSE_MILLIS, TimeUnit.MILLISECONDS);
            } catch (TimeoutException e) {
                progress.report(share(found, spark), "scoring cells and headings");
                if (progress.isCancelled()) {
                    found.cancel(true);
                    throw new CancellationException("cancelled");
                }
            } catch (InterruptedException e) {
                found.cancel(true);
                Thread.currentThread().interrupt();
                throw new CancellationException("cancelled");
            } catch (ExecutionException e) {
                throw new IllegalStateException("the Spark cluster did not finish the survey: " + e.getCause(), e);
            }
        }
    }

    private static double share(JavaFutureAction<List<ScoredBlock>> found, JavaSparkContext spark) {
        int all = 0;
        int done = 0;
        for (int job : found.jobIds()) {
            SparkJobInfo info = spark.statusTracker().getJobInfo(job);
            for (int stage : info == null ? new int[0] : info.stageIds()) {
                SparkStageInfo tasks = spark.statusTracker().getStageInfo(stage);
                all += tasks == null ? 0 : tasks.numTasks();
                done += tasks == null ? 0 : tasks.numCompletedTasks();
            }
        }
        return all == 0 ? 0 : (double) done / all;
    }

    /** The options that Spark needs of Java 17 and later. */
    static List<String> javaOptions() {
        List<String> options = new ArrayList<>(List.of("-XX:+IgnoreUnrecognizedVMOptions",
                "-Djdk.reflect.useDirectMethodHandle=false", "-Dio.netty.tryReflectionSetAccessible=true"));
        for (String opened : Arrays.asList("java.lang", "java.lang.invoke", "java.lang.reflect", "java.io", "java.net",
                "java.nio", "java.util", "java.util.concurrent", "java.util.concurrent.atomic", "jdk.internal.ref",
                "sun.nio.ch", "sun.nio.cs", "sun.security.action", "sun.util.calendar")) {
            options.add("--add-opens=java.base/" + opened + "=ALL-UNNAMED");
        }
        return options;
    }
}
