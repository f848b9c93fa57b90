// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.InputException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/**
 * Starts the editor, a program of its own that this one does not hold: an installed program says by a system property
 * where its jar is; from the sources, the start script starts it.
 */
@Command(name = "edit", description = "Opens the editor on a plan.")
final class EditCommand implements Callable<Integer> {
    /** The system property that names the editor's jar. */
    static final String EDITOR = "bermwright.editor";

    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Trouble as a JSON object.")
    private boolean json;

    @Parameters(paramLabel = "PLAN", arity = "0..1", description = "The plan file.")
    private Optional<Path> plan;

    @Override
    public Integer call() throws IOException, InterruptedException {
        String editor = System.getProperty(EDITOR, "");
        if (editor.isEmpty()) {
            throw InputException.unreadable(InputException.Place.of("edit"),
                    "this jar holds no editor", "the script layout/cli/bermwright, which starts the editor's own jar"
                            + plan.map(p -> ", with " + p).orElse(""), Optional.empty());
        }
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-jar", editor));
        plan.ifPresent(p -> command.add(p.toString()));
        return new ProcessBuilder(command).inheritIO().start().waitFor();
    }
}
