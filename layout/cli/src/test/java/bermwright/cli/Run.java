// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** One run of the command line: its exit code and what it said. */
record Run(int code, String out, String err) {
    static Run of(String... arguments) {
        return of(false, arguments);
    }

    static Run of(boolean cancelled, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream errors = new PrintStream(err, true, StandardCharsets.UTF_8);
        ConsoleProgress progress = new ConsoleProgress(errors, false);
        if (cancelled) {
            progress.cancel();
        }
        int code = new Program(new Console(new PrintStream(out, true, StandardCharsets.UTF_8), errors, progress))
                .run(arguments);
        return new Run(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Standard output as one JSON object; fails where anything else stands there. */
    JsonNode json() {
        try {
            return new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).readTree(out);
        } catch (IOException e) {
            throw new UncheckedIOException("standard output is not one JSON object: " + out, e);
        }
    }

    /** The plan of the tests. */
    static String plan() {
        try (InputStream in = Run.class.getResourceAsStream("plan.json")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes a plan and its ground, 100 x 100 heights 2 m apart on a slope of one degree, into a folder. */
    static Path site(Path folder, String plan) throws IOException {
        StringBuilder ground = new StringBuilder(
                "ncols 100\nnrows 100\nxllcenter 0\nyllcenter 20\ncellsize 2\nnodata_value -9999\n");
        for (int row = 0; row < 100; row++) {
            for (int column = 0; column < 100; column++) {
                ground.append(-column * 2 * Math.tan(Math.toRadians(1))).append(' ');
            }
            ground.append('\n');
        }
        Files.writeString(folder.resolve("ground.asc"), ground);
        return Files.writeString(folder.resolve("plan.json"), plan);
    }
}
