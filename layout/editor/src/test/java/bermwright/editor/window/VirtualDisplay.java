// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.window;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * A screen for tests: the one that is there, else one that is started for them and ends with them.
 *
 * <p>The started one picks a free number itself, so that several builds on one machine do not meet, and does not repeat
 * keys, so that a slow machine does not press them twice.
 */
final class VirtualDisplay implements AutoCloseable {
    private static final long START_SECONDS = 20;

    private final String name;
    private final Optional<Process> process;

    private VirtualDisplay(String name, Optional<Process> process) {
        this.name = name;
        this.process = process;
    }

    /** A screen; empty where there is none and none can be started. */
    static Optional<VirtualDisplay> open(Path log) {
        String there = System.getenv("DISPLAY");
        if (there != null && !there.isBlank()) {
            return Optional.of(new VirtualDisplay(there, Optional.empty()));
        }
        if (!System.getProperty("os.name", "").startsWith("Linux")) {
            return Optional.of(new VirtualDisplay("", Optional.empty()));
        }
        try {
            Process started = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", "1600x1000x24",
                    "-nolisten", "tcp", "-r").redirectError(log.toFile()).start();
            BufferedReader out = new BufferedReader(new InputStreamReader(started.getInputStream(),
                    StandardCharsets.US_ASCII));
            String number = CompletableFuture.supplyAsync(() -> firstLine(out)).get(START_SECONDS, TimeUnit.SECONDS);
            if (number == null || number.isBlank()) {
                started.destroyForcibly();
                return Optional.empty();
            }
            Runtime.getRuntime().addShutdownHook(new Thread(started::destroyForcibly));
            return Optional.of(new VirtualDisplay(":" + number.strip(), Optional.of(started)));
        } catch (IOException | InterruptedException | java.util.concurrent.ExecutionException
                | java.util.concurrent.TimeoutException cannot) {
            return Optional.empty();
        }
    }

    private static String firstLine(BufferedReader out) {
        try {
            return out.readLine();
        } catch (IOException gone) {
            return "";
        }
    }

    /** The screen's name for the environment of a program; empty where the system needs none. */
    String name() {
        return name;
    }

    @Override
    public void close() {
        process.ifPresent(started -> {
            started.destroy();
            try {
                if (!started.waitFor(5, TimeUnit.SECONDS)) {
                    started.destroyForcibly();
                }
            } catch (InterruptedException interrupted) {
                started.destroyForcibly();
                Thread.currentThread().interrupt();
            }
        });
    }
}
