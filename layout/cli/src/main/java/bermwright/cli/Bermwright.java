// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.site.assessment.Version;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program by its name: says which commands there are. */
@Command(name = "bermwright", versionProvider = Bermwright.VersionText.class, synopsisSubcommandLabel = "COMMAND",
        description = "Plans how tall cylindrical landers are laid down on the Moon and buried in its soil.",
        footer = {"", "Exit codes: 0 done; 1 done, and a finding refuses the plan; 2 the input cannot be read;"
            + " 3 our mistake."},
        subcommands = {AssessCommand.class, LowerCommand.class, CoverCommand.class, DoseCommand.class,
            EarthworksCommand.class, SizeCoverCommand.class, DoubtsCommand.class,
            GroundCommand.class, ReportCommand.class,
            DrawingsCommand.class, ExchangeCommand.class, CompareCommand.class, JudgeCommand.class,
            SurveyCommand.class, SchemaCommand.class, RulesCommand.class, ArrangeCommand.class, EditCommand.class})
final class Bermwright implements Runnable {
    private final Console console;

    @Spec
    private CommandSpec spec;

    @Option(names = {"-h", "--help"}, usageHelp = true, scope = ScopeType.INHERIT,
            description = "Says what a command does.")
    private boolean help;

    @Option(names = "--version", versionHelp = true, description = "Says the program's version.")
    private boolean version;

    Bermwright(Console console) {
        this.console = console;
    }

    Console console() {
        return console;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "No command was given");
    }

    /** The version for {@code --version}. */
    static final class VersionText implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"bermwright " + Version.text()};
        }
    }
}
