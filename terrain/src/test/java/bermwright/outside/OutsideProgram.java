// SPDX-License-Identifier: Apache-2.0
package bermwright.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** Programs of others that tests hold ours against; tests without them are skipped, or fail where they are required. */
public enum OutsideProgram {
    /** The programs of GDAL. */
    GDAL("bermwright.gdal.required", "the checks against GDAL"),
    /** Programs that read PDF. */
    PDF("bermwright.pdf.required", "the checks of PDF files"),
    /** A compiler and a library that reads GDML. */
    GDML("bermwright.gdml.required", "the checks of GDML by libvgdml");

    private final String required;
    private final String checks;

    OutsideProgram(String required, String checks) {
        this.required = required;
        this.checks = checks;
    }

    /** Skips the test where a program is not there. */
    public void need(String... programs) throws InterruptedException {
        for (String program : programs) {
            if (!isThere(program)) {
                String words = checks + " are skipped: " + program + " is not there.";
                System.out.println(words);
                assertFalse(Boolean.getBoolean(required), words);
                Assumptions.abort(words);
            }
        }
    }

    /** Skips the test where a file that another package brings is not there. */
    public void needFile(Path file) {
        if (!java.nio.file.Files.exists(file)) {
            String words = checks + " are skipped: " + file + " is not there.";
            System.out.println(words);
            assertFalse(Boolean.getBoolean(required), words);
            Assumptions.abort(words);
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
    public static String run(String... command) throws IOException, InterruptedException {
        return runIn(Path.of("."), command);
    }

    /** What a program prints that is run in a folder. */
    public static String runIn(Path folder, String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor(), String.join(" ", command) + ": " + said);
        return said;
    }
}
