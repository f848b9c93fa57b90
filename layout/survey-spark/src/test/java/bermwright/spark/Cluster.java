// SPDX-License-Identifier: Apache-2.0
package bermwright.spark;

import java.io.File;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A Spark master and workers as processes of this machine, made from this module's own dependencies. */
final class Cluster implements AutoCloseable {
    private static final int TRIES = 1800;
    private static final int PAUSE_MILLIS = 100;

    private final Path home;
    private final int port;
    private final List<Process> processes = new ArrayList<>();

    Cluster(Path folder, int workers) throws IOException, InterruptedException {
        home = Files.createDirectories(folder.resolve("spark"));
        Path jars = Files.createDirectories(home.resolve("jars"));
        for (String part : System.getProperty("java.class.path").split(File.pathSeparator)) {
            Path jar = Path.of(part);
            // A machine of a cluster has Spark's own log, by which it is seen here that the workers are there.
            boolean isSilence = jar.getFileName().toString().startsWith("slf4j-nop");
            if (Files.isRegularFile(jar) && !isSilence && !Files.exists(jars.resolve(jar.getFileName()))) {
                Files.createSymbolicLink(jars.resolve(jar.getFileName()), jar.toAbsolutePath());
            }
        }
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = free.getLocalPort();
        }
        start("master", "org.apache.spark.deploy.master.Master", "--host", "127.0.0.1", "--port",
                Integer.toString(port), "--webui-port", "0");
        for (int i = 0; i < workers; i++) {
            start("worker-" + i, "org.apache.spark.deploy.worker.Worker", "--host", "127.0.0.1", "--webui-port", "0",
                    "--cores", "1", "--memory", "2g", "--work-dir", home.resolve("work-" + i).toString(), master());
        }
        try {
            waitForWorkers(workers);
        } catch (IOException | InterruptedException | RuntimeException e) {
            close();
            throw e;
        }
    }

    String master() {
        return "spark://127.0.0.1:" + port;
    }

    private void start(String name, String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java")
                .toString(), "-Xmx256m"));
        command.addAll(SparkSpread.javaOptions());
        command.addAll(List.of("-cp", home.resolve("jars") + File.separator + "*"));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(home.resolve(name + ".log").toFile());
        builder.environment().put("SPARK_HOME", home.toString());
        builder.environment().put("SPARK_LOCAL_IP", "127.0.0.1");
        builder.environment().put("SPARK_SCALA_VERSION", "2.13");
        processes.add(builder.start());
    }

    private void waitForWorkers(int workers) throws IOException, InterruptedException {
        for (int i = 0; i < TRIES; i++) {
            String log = Files.readString(home.resolve("master.log"));
            if (log.split("Registering worker", -1).length > workers) {
                return;
            }
            TimeUnit.MILLISECONDS.sleep(PAUSE_MILLIS);
        }
        throw new IllegalStateException("the workers did not register:\n"
                + Files.readString(home.resolve("master.log")) + Files.readString(home.resolve("worker-0.log")));
    }

    /** Ends a worker and its executor at once, as a lost machine would. */
    void kill(int worker) {
        Process process = processes.get(worker + 1);
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
    }

    @Override
    public void close() {
        for (Process process : processes) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
    }
}
