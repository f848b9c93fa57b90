// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import java.nio.file.Path;
import picocli.CommandLine.Parameters;

/** A command about one plan file. */
abstract class PlanFileCommand extends JsonCommand {
    @Parameters(paramLabel = "PLAN", description = "The plan file.")
    private Path planFile;

    Path planFile() {
        return planFile;
    }
}
