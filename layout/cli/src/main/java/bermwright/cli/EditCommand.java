// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.InputException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Says how the editor is started: it is a program of its own, which the script of this one starts. */
@Command(name = "edit", description = "Opens the editor on a plan.")
final class EditCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Trouble as a JSON object.")
    private boolean json;

    @Parameters(paramLabel = "PLAN", arity = "0..1", description = "The plan file.")
    private Optional<Path> plan;

    @Override
    public Integer call() {
        throw InputException.unreadable(InputException.Place.of("edit"),
                "this jar holds no editor", "the script layout/cli/bermwright, which starts the editor's own jar"
                        + plan.map(p -> ", with " + p).orElse(""), Optional.empty());
    }
}
