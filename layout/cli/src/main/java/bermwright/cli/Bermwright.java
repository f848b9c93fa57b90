// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Version;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;

/** The program by its name: says which commands there are. */
final class Bermwright implements Runnable {
    private final Console console;
    private final CommandSpec spec;

    /** Its options are given here and not by annotations: those take longer to read than {@code --help} may. */
    Bermwright(Console console) {
        this.console = console;
        spec = CommandSpec.wrapWithoutInspection(this).name("bermwright")
                .versionProvider(Bermwright::version);
        spec.usageMessage().synopsisSubcommandLabel("COMMAND")
                .description("Plans how tall cylindrical landers are laid down on the Moon and buried in its soil.")
                .footer("", "Exit codes: 0 done; 1 done, and a finding refuses the plan; 2 the input cannot be read;"
                        + " 3 our mistake.");
        spec.addOption(OptionSpec.builder("-h", "--help").usageHelp(true).scopeType(ScopeType.INHERIT)
                .description("Says what a command does.").build());
        spec.addOption(OptionSpec.builder("--version").versionHelp(true)
                .description("Says the program's version.").build());
    }

    Console console() {
        return console;
    }

    CommandSpec spec() {
        return spec;
    }

    private static String[] version() {
        return new String[] {"bermwright " + Version.whole()};
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "No command was given");
    }
}
