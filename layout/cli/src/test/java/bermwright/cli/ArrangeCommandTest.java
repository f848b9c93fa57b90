// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ArrangeCommandTest {
    @TempDir
    private Path folder;

    private Run arrange(String plan, String... options) throws IOException {
        Path file = Run.site(folder, plan);
        String[] line = new String[options.length + 4];
        line[0] = "arrange";
        line[1] = file.toString();
        line[2] = "--out";
        line[3] = folder.resolve("out").toString();
        System.arraycopy(options, 0, line, 4, options.length);
        return Run.of(line);
    }

    @Test
    void aHullThatIsNotThereIsRefusedByName() throws IOException {
        Run run = arrange(Run.plan(), "--only", "oak");
        assertEquals(2, run.code());
        assertEquals("bermwright: --only is oak; accepted: ids of hulls of the plan: elm", run.err().strip());
        assertFalse(Files.exists(folder.resolve("out")));
    }

    @Test
    void aPlanWhoseHullsAreAllHeldIsRefused() throws IOException {
        Run run = arrange(Run.plan().replace("\"mass_t\": 26,", "\"mass_t\": 26, \"held\": true,"));
        assertEquals(2, run.code());
        assertTrue(run.err().contains("hulls is held throughout; accepted: at least one hull that is not held"),
                run.err());
    }

    @Test
    void stepsAndSecondsMustBeAboveNothing() throws IOException {
        assertEquals("bermwright: --steps is 0; accepted: 1 or more",
                arrange(Run.plan(), "--steps", "0").err().strip());
        assertEquals("bermwright: --seconds is -1.0; accepted: above 0",
                arrange(Run.plan(), "--seconds", "-1").err().strip());
    }

    @Test
    void aFolderWithOtherFilesIsLeftAlone() throws IOException {
        Files.createDirectories(folder.resolve("out"));
        Files.writeString(folder.resolve("out/own.txt"), "mine");
        Run run = arrange(Run.plan());
        assertEquals(2, run.code());
        assertEquals("mine", Files.readString(folder.resolve("out/own.txt")));
    }
}
