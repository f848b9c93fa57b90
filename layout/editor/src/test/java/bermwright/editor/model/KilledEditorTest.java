// SPDX-License-Identifier: Apache-2.0
package bermwright.editor.model;

import static org.junit.jupiter.api.Assertions.assertTrue;

import bermwright.editor.SampleSite;
import bermwright.editor.edit.Move;
import bermwright.editor.edit.Part;
import bermwright.site.plan.Plan;
import bermwright.site.planfile.PlanFiles;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Kills the editor's model by the system's own kill in the middle of edits and saves, again and again on one plan:
 * each step it had called safe is in the plan file or in the journal.
 *
 * <p>{@code -Dbermwright.kills=1000} sets how many times, {@code -Dbermwright.seed} when.
 */
class KilledEditorTest {
    private static final int KILLS = Integer.getInteger("bermwright.kills", 6);
    private static final long SEED = Long.getLong("bermwright.seed", 20261130);
    private static final int LONGEST_MS = 120;
    private static final int SAID_EACH = 100;
    private static final int LONGEST_START_S = 60;

    @TempDir
    private Path folder;

    /** The program that is killed: takes up what is left behind, then edits, and saves at each seventh edit. */
    static final class Editing {
        private static final int SAVE_AT = 7;

        private Editing() {
        }

        public static void main(String[] arguments) {
            PlanDocument document = PlanDocument.open(Path.of(arguments[0]));
            Optional<EditJournal.Content> left = document.leftBehind().filter(c -> !document.isOutdated(c));
            left.ifPresent(document::recover);
            for (int i = 1; ; i++) {
                document.make(new Move(Part.hull("A"), 1, 0));
                document.settleJournal();
                if (i % SAVE_AT == 0) {
                    document.save();
                }
                if (document.journalTrouble().isEmpty()) {
                    System.out.println(PlanDocumentFaultTest.east(document.plan()));
                    System.out.flush();
                }
            }
        }
    }

    @Test
    void losesNoEditThatWasCalledSafe() throws IOException, InterruptedException {
        Path file = SampleSite.write(folder);
        Random random = new Random(SEED);
        double safe = PlanDocumentFaultTest.east(PlanFiles.read(file));
        for (int kill = 0; kill < KILLS; kill++) {
            Path said = folder.resolve("said");
            Files.deleteIfExists(said);
            Process program = start(file, said);
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_START_S);
            while (Files.size(said) == 0 && program.isAlive() && System.nanoTime() < end) {
                Thread.sleep(2);
            }
            Thread.sleep(random.nextInt(LONGEST_MS));
            assertTrue(program.isAlive(), "the program stopped by itself");
            program.destroyForcibly().waitFor();
            for (String line : Files.readString(said).split("\n")) {
                safe = line.endsWith(".0") ? Double.parseDouble(line) : safe;
            }
            double found = found(file);
            assertTrue(found == safe || found == safe + 1, "kill %d (seed %d): %s m east was safe, %s m are left"
                    .formatted(kill, SEED, safe, found));
            safe = found;
            if ((kill + 1) % SAID_EACH == 0) {
                System.out.printf(Locale.ROOT, "%d kills, seed %d: nothing lost, %.0f edits%n", kill + 1, SEED, safe);
            }
        }
    }

    private static double found(Path file) {
        Plan onDisk = PlanFiles.read(file);
        try (PlanDocument document = PlanDocument.open(file)) {
            return document.leftBehind().filter(c -> !document.isOutdated(c))
                    .map(c -> PlanFiles.read(c.steps().get(c.steps().size() - 1).text(), "journal"))
                    .map(PlanDocumentFaultTest::east).orElse(PlanDocumentFaultTest.east(onDisk));
        }
    }

    private static Process start(Path file, Path said) throws IOException {
        return new ProcessBuilder(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto", "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                Editing.class.getName(), file.toString())).redirectError(ProcessBuilder.Redirect.INHERIT)
                .redirectOutput(Files.createFile(said).toFile()).start();
    }
}
