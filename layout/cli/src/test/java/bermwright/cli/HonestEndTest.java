// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The exit code tells the truth, whatever happened, and nobody else's bytes reach the terminal. */
class HonestEndTest {
    private static final int OURS = 3;
    private static final int BAD_INPUT = 2;
    private static final int PATIENCE_S = 120;

    @TempDir
    Path folder;
    private Path plan;

    @BeforeEach
    void site() throws IOException {
        plan = Run.site(folder, Run.plan());
    }

    /** Standard output that takes some bytes and then is full. */
    private static final class Full extends OutputStream {
        private int left;

        Full(int left) {
            this.left = left;
        }

        @Override
        public void write(int b) throws IOException {
            if (left-- <= 0) {
                throw new IOException("no space left");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 10, 3000})
    void anAnswerThatWasNotWrittenToTheEndIsNoSuccess(int room) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(new PrintStream(new Full(room), false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), "cover", plan.toString(), "--json");
        assertEquals(OURS, code);
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("could not be written to the end"));
    }

    @Test
    @Timeout(PATIENCE_S)
    void aPipeIsNoPlanAndNothingWaitsForIt() throws IOException, InterruptedException {
        Path pipe = folder.resolve("pipe.json");
        assumeTrue(made(List.of("mkfifo", pipe.toString())), "no named pipes here");
        Run run = Run.of("assess", pipe.toString(), "--json");
        assertEquals(BAD_INPUT, run.code());
        assertTrue(run.err().contains("is a pipe, a device or the like"), run.err());
        Files.delete(folder.resolve("ground.asc"));
        assumeTrue(made(List.of("mkfifo", folder.resolve("ground.asc").toString())), "no named pipes here");
        Run ground = Run.of("assess", plan.toString(), "--json");
        assertEquals(BAD_INPUT, ground.code());
        assertEquals("ground.elevation_file", ground.json().get("error").get("key").asText());
        assertTrue(ground.err().contains("ground.asc is a pipe"), ground.err());
    }

    @Test
    @Timeout(PATIENCE_S)
    void aDeviceIsNoPlan() {
        assumeTrue(Files.exists(Path.of("/dev/zero")), "no such device here");
        Run run = Run.of("assess", "/dev/zero", "--json");
        assertEquals(BAD_INPUT, run.code());
        assertTrue(run.err().contains("no regular file"), run.err());
    }

    private static boolean made(List<String> command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        }
    }

    @Test
    void aNameWithAControlCharacterIsRefusedAndShownNotSent() throws IOException {
        Run.site(folder, Run.plan().replace("ground.asc", "gr\\u0000ound.asc"));
        Run run = Run.of("assess", plan.toString(), "--json");
        assertEquals(BAD_INPUT, run.code(), run.err());
        assertEquals("ground.elevation_file", run.json().get("error").get("key").asText());
        Run.site(folder, Run.plan().replace("\"mass_t\"", "\"mass\\u001b]0;x\\u0007\\u009b2J_t\""));
        for (Run key : List.of(Run.of("assess", plan.toString()), Run.of("assess", plan.toString(), "--json"))) {
            assertEquals(BAD_INPUT, key.code());
            String said = key.out() + key.err();
            assertTrue(said.chars().noneMatch(c -> c != '\n' && PlainStream.isControl((char) c)), said);
            assertTrue(key.err().contains("\\u001b"), key.err());
        }
    }

    @Test
    void numbersThatAreNoneAreAbsentFromJson() throws IOException {
        ObjectNode page = JsonObjects.object().put("a", Double.NaN).put("b", 1.5);
        page.putArray("c").add(Double.POSITIVE_INFINITY).add(2);
        page.putObject("d").put("e", Double.NEGATIVE_INFINITY);
        JsonNode read = new ObjectMapper().readTree(JsonObjects.text(page));
        assertFalse(read.has("a"));
        assertEquals(1.5, read.get("b").asDouble());
        assertTrue(read.get("c").get(0).isNull());
        assertTrue(read.get("d").isEmpty());
    }

    /** One run of its own: exit code and what it wrote. */
    private record Alone(int code, byte[] out, String err) {
    }

    private Alone alone(List<String> machine, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(machine);
        command.addAll(List.of("-XX:TieredStopAtLevel=1", "-Djava.awt.headless=true", "-cp",
                System.getProperty("java.class.path"), "bermwright.cli.Main"));
        command.addAll(List.of(arguments));
        Path out = folder.resolve("out");
        Path err = folder.resolve("err");
        Process process = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
        assertTrue(process.waitFor(PATIENCE_S, TimeUnit.SECONDS), "it did not end");
        return new Alone(process.exitValue(), Files.readAllBytes(out), Files.readString(err));
    }

    @Test
    void memoryThatRunsOutIsExitCodeThreeWithAnErrorObject() throws IOException, InterruptedException {
        // As many heights as the reader still takes with that memory; what is worked out from them does not fit.
        StringBuilder ground = new StringBuilder("ncols 1200\nnrows 1200\nxllcenter 0\nyllcenter 20\ncellsize 1\n");
        for (int i = 0; i < 1200; i++) {
            ground.append("1 ".repeat(1200)).append('\n');
        }
        Files.writeString(folder.resolve("ground.asc"), ground);
        Alone run = alone(List.of("-Xmx20m"), "assess", plan.toString(), "--json");
        assertEquals(OURS, run.code(), run.err());
        String text = new ObjectMapper().readTree(run.out()).get("error").get("text").asText();
        assertTrue(text.startsWith("memory ran out"), text);
        assertTrue(text.contains("does not fit into the 20 MB"), text);
        assertTrue(text.contains("-Xmx"), text);
    }

    @Test
    void everyLanguageSettingGivesTheSameBytes() throws IOException, InterruptedException {
        Map<String, byte[]> plain = report(List.of("-Duser.language=", "-Duser.country="), "root");
        Map<String, byte[]> persian = report(List.of("-Duser.language=fa", "-Duser.country=IR"), "fa");
        assertTrue(plain.size() > 20, plain.keySet().toString());
        assertEquals(plain.keySet(), persian.keySet());
        plain.forEach((name, bytes) -> assertArrayEquals(bytes, persian.get(name), name));
    }

    /** The report's files by name and the answer as text and as JSON, in one language setting. */
    private Map<String, byte[]> report(List<String> machine, String name) throws IOException, InterruptedException {
        Path out = folder.resolve("report");
        Map<String, byte[]> files = new TreeMap<>();
        Alone written = alone(machine, "report", plan.toString(), "--out", out.toString());
        assertTrue(written.code() <= 1, name + ": " + written.err());
        files.put("text", alone(machine, "lower", plan.toString()).out());
        files.put("json", alone(machine, "cover", plan.toString(), "--json").out());
        try (Stream<Path> all = Files.walk(out)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                // A GeoPackage is a database and carries the time it was made.
                if (!file.toString().endsWith(".gpkg")) {
                    files.put(out.relativize(file).toString(), Files.readAllBytes(file));
                }
            }
        }
        return files;
    }
}
