// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Prints what lets a shell complete commands and options. */
@Command(name = "completion", description = {"Prints a script that completes commands and options in bash and zsh.",
    "To use it now: source <(bermwright completion). To keep it, write it to a file that your shell reads."})
final class CompletionCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Answers with one JSON object.")
    private boolean json;

    @Override
    public Integer call() {
        String script = AutoComplete.bash("bermwright", Commands.all());
        if (json) {
            program.console().out().println(JsonObjects.text(JsonObjects.object().put("completion", script)));
        } else {
            program.console().out().print(script);
        }
        return ExitCode.DONE.number();
    }
}
