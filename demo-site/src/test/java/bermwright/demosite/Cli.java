// SPDX-License-Identifier: Apache-2.0
package bermwright.demosite;

import bermwright.cli.Main;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** One run of the command line from end to end. */
record Cli(int code, String out, String err) {
    /** The folder of the demo site. */
    static final Path DEMO = Path.of(System.getProperty("bermwright.root"), "demo-site");

    static Cli run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Main.run(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), arguments);
        return new Cli(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (IOException e) {
            throw new UncheckedIOException("not JSON: " + out, e);
        }
    }

    /** Findings as {@code level, subject, rule}, one line each, sorted. */
    List<String> findings() {
        List<String> found = new ArrayList<>();
        for (JsonNode finding : json().get("findings")) {
            found.add("%s\t%s\t%s".formatted(finding.get("level").asText(), finding.get("subject").asText(),
                    finding.get("rule").asText()));
        }
        found.sort(null);
        return found;
    }
}
