// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import picocli.AutoComplete;
import picocli.CommandLine.Command;

/** Prints what lets a shell complete commands and options. */
@Command(name = "completion", description = {"Prints a script that completes commands and options in bash and zsh.",
    "To use it now: source <(bermwright completion). To keep it, write it to a file that your shell reads."})
final class CompletionCommand extends JsonCommand {
    @Override
    public Integer call() {
        String script = AutoComplete.bash("bermwright", Commands.all());
        if (json()) {
            console().out().println(JsonObjects.text(JsonObjects.object().put("completion", script)));
        } else {
            console().out().print(script);
        }
        return ExitCode.DONE.number();
    }
}
