// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.planfile.PlanFiles;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Prints the plan file's JSON Schema, which is one JSON object with and without {@code --json}. */
@Command(name = "schema", description = "Prints the JSON Schema of the plan file: every key, its unit, range, default"
        + " and the source of the default.")
final class SchemaCommand implements Callable<Integer> {
    @ParentCommand
    private Bermwright program;

    @Option(names = "--json", description = "The same: the schema is JSON.")
    private boolean json;

    @Option(names = "--answers", description = "The schema of the answers: every key with meaning, unit, digits and"
            + " model.")
    private boolean answers;

    @Override
    public Integer call() {
        if (answers) {
            program.console().out().println(JsonObjects.text(AnswerSchema.made()));
        } else {
            program.console().out().print(PlanFiles.schema());
        }
        return ExitCode.DONE.number();
    }
}
