// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.window;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import bermwright.editor.SampleSite;
import bermwright.editor.model.EditJournal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * Real windows on a real or virtual screen. The windows live in a program of their own, started with the screen in its
 * environment; each of its scenarios is a test here.
 */
class WindowTest {
    private static final long MOST_SECONDS = 1200;
    private static final Path TARGET = Path.of(System.getProperty("bermwright.target", "target"));
    private static Optional<VirtualDisplay> display = Optional.empty();

    @BeforeAll
    static void openScreen() throws IOException {
        Files.createDirectories(TARGET);
        Files.deleteIfExists(TARGET.resolve("window-tests-skipped.txt"));
        display = VirtualDisplay.open(TARGET.resolve("xvfb.log"));
        if (display.isEmpty()) {
            int number = WindowScenarios.names().size() + 1;
            String words = number + " window tests skipped: there is no display and Xvfb could not be started.";
            Files.writeString(TARGET.resolve("window-tests-skipped.txt"), words + "\n");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> System.out.println(words)));
            assertTrue(!Boolean.getBoolean("bermwright.windows.required"), words);
            Assumptions.abort(words);
        }
    }

    @AfterAll
    static void closeScreen() {
        display.ifPresent(VirtualDisplay::close);
    }

    @TestFactory
    Stream<DynamicTest> windows() throws IOException, InterruptedException {
        Path work = Files.createDirectories(TARGET.resolve("windows"));
        Path killed = editAndKill(work);
        Path log = work.resolve("scenarios.log");
        Process scenarios = start(WindowScenarios.class, log, work.toString(), killed.toString());
        boolean ended = scenarios.waitFor(MOST_SECONDS, TimeUnit.SECONDS);
        if (!ended) {
            scenarios.destroyForcibly();
        }
        Map<String, String> outcomes = outcomes(Files.readAllLines(log));
        List<DynamicTest> tests = new ArrayList<>();
        for (String name : WindowScenarios.names()) {
            tests.add(DynamicTest.dynamicTest(name, () -> {
                String outcome = outcomes.getOrDefault(name,
                        "was not run" + (ended ? "" : " in time") + "; see " + log);
                if (!outcome.isEmpty()) {
                    fail(outcome);
                }
            }));
        }
        return tests.stream();
    }

    /** Opens the editor on a plan, lets it make an edit, and kills it without a chance to tidy up. */
    private static Path editAndKill(Path work) throws IOException, InterruptedException {
        Path folder = work.resolve("killed");
        if (Files.isDirectory(folder)) {
            try (Stream<Path> old = Files.list(folder)) {
                for (Path file : old.toList()) {
                    Files.delete(file);
                }
            }
        }
        Path plan = SampleSite.write(folder);
        Process editor = start(EditUntilKilled.class, work.resolve("killed.log"), plan.toString());
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(90);
        while (EditJournal.leftBehind(plan, "").map(c -> c.steps().size()).orElse(0) < EditUntilKilled.STEPS
                && System.nanoTime() < end && editor.isAlive()) {
            Thread.sleep(50);
        }
        editor.destroyForcibly().waitFor();
        return plan;
    }

    private static Process start(Class<?> program, Path log, String... arguments) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        List<String> command = new ArrayList<>(List.of(java,
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Dprism.order=sw",
                "-Dtestfx.robot=glass", "-Djava.awt.headless=true", "-Dprism.text=t2k",
                "-Dbermwright.root=" + System.getProperty("bermwright.root", "../.."),
                "-Dbermwright.settings=" + log.resolveSibling("settings-" + program.getSimpleName() + ".properties"),
                "-cp", System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                program.getName()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log.toFile());
        if (!display.orElseThrow().name().isEmpty()) {
            builder.environment().put("DISPLAY", display.orElseThrow().name());
        }
        Process process = builder.start();
        Runtime.getRuntime().addShutdownHook(new Thread(process::destroyForcibly));
        return process;
    }

    /** By scenario nothing where it passed, else what went wrong. */
    private static Map<String, String> outcomes(List<String> lines) {
        Map<String, String> outcomes = new LinkedHashMap<>();
        String failing = "";
        for (String line : lines) {
            if (line.startsWith("PASS ")) {
                outcomes.put(line.substring(5), "");
                failing = "";
            } else if (line.startsWith("FAIL ")) {
                failing = line.substring(5);
                outcomes.put(failing, "");
            } else if (!failing.isEmpty()) {
                outcomes.merge(failing, line + "\n", String::concat);
            }
        }
        return outcomes;
    }
}
