// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

class CommandsTest {
    @TempDir
    Path folder;

    /** What is not built whole looks in help as if it were. */
    @Test
    void helpIsTheSameWithAndWithoutAllOptions() {
        assertEquals(Commands.all().getUsageMessage(Ansi.OFF).strip(), Run.of("--help").out().strip());
        Commands.all().getSubcommands().forEach((name, whole) ->
                assertEquals(whole.getUsageMessage(Ansi.OFF).strip(), Run.of(name, "--help").out().strip(), name));
    }

    @Test
    void commandsThatAreNotThereAreRefusedWithTheNearestNames() {
        Run run = Run.of("asess", "plan.json");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("asess"), run.err());
    }

    @Test
    void completionNamesEveryCommandAndEveryOption() {
        String script = Run.of("completion").out();
        assertEquals(script, Run.of("completion", "--json").json().get("completion").asText());
        for (CommandLine command : Commands.all().getSubcommands().values()) {
            Stream<String> options = command.getCommandSpec().options().stream().flatMap(o -> Stream.of(o.names()));
            Stream.concat(Stream.of(command.getCommandName()), options)
                    .forEach(word -> assertTrue(script.contains(word), word));
        }
    }

    /** An archive can be made of jars alone, and tests run from folders: nothing is there then, and nothing fails. */
    @Test
    void noArchiveIsLeftWhereNoneCanBeMade() throws IOException {
        Path archive = folder.resolve("start.jsa");
        Path classes = Files.createDirectory(folder.resolve("classes"));
        Files.writeString(classes.resolve("note.txt"), "not empty");
        assertFalse(StartArchive.make(archive, classes.toString()));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(classes), left.toList());
        }
    }
}
