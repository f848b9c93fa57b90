// SPDX-License-Identifier: Apache-2.0
package bermwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** Runs programs that read PDF; where they are not there, their tests are skipped, or fail where they are required. */
final class Poppler {
    private Poppler() {
    }

    /** Skips the test where a program is not there. */
    static void need(String... programs) throws InterruptedException {
        for (String program : programs) {
            if (!isThere(program)) {
                String words = "the checks of PDF files are skipped: " + program + " is not there.";
                System.out.println(words);
                assertTrue(!Boolean.getBoolean("bermwright.pdf.required"), words);
                Assumptions.abort(words);
            }
        }
    }

    private static boolean isThere(String program) throws InterruptedException {
        try {
            Process process = new ProcessBuilder(program, "--version").redirectErrorStream(true).start();
            process.getInputStream().readAllBytes();
            return process.waitFor(60, TimeUnit.SECONDS);
        } catch (IOException e) {
            return false;
        }
    }

    /** What a program prints. */
    static String run(String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), String.join(" ", command) + ": " + said);
        return said;
    }
}
