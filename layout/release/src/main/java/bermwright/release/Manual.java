// SPDX-License-Identifier: Apache-2.0
package bermwright.release;

import bermwright.cli.Commands;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.codegen.docgen.manpage.ManPageGenerator;

/** Writes the pages of the manual (as AsciiDoc) and the completion for shells from the commands themselves. */
public final class Manual {
    private Manual() {
    }

    /**
     * Writes them.
     *
     * @param arguments the folder: pages go to {@code manual} there, completion to {@code share/completion}
     * @throws IOException if they cannot be written
     */
    public static void main(String[] arguments) throws IOException {
        Path target = Path.of(arguments[0]);
        CommandLine all = Commands.all();
        List<CommandSpec> pages = new ArrayList<>(List.of(all.getCommandSpec()));
        all.getSubcommands().values().forEach(c -> pages.add(c.getCommandSpec()));
        Path manual = Files.createDirectories(target.resolve("manual"));
        int code = ManPageGenerator.generateManPage(manual.toFile(), null, new boolean[0], true,
                pages.toArray(CommandSpec[]::new));
        if (code != 0) {
            throw new IOException("the pages of the manual could not be written to " + manual + ", code " + code);
        }
        Path completion = Files.createDirectories(target.resolve("share/completion")).resolve("bermwright");
        Files.writeString(completion, AutoComplete.bash("bermwright", Commands.all()));
    }
}
