// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** A command that answers people or, with {@code --json}, programs. */
abstract class JsonCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "Answers with one JSON object.")
    private boolean json;

    Console console() {
        return program.console();
    }

    boolean json() {
        return json;
    }
}
