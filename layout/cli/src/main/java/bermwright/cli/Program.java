// SPDX-License-Identifier: Apache-2.0
package bermwright.cli;

import bermwright.foundation.InputException;
import bermwright.site.assessment.Version;
import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import picocli.CommandLine;

/** Runs one command: turns what it throws into an exit code, a line for people and an object for programs. */
final class Program {
    private final Console console;

    Program(Console console) {
        this.console = console;
    }

    int run(String... arguments) {
        boolean json = Arrays.asList(arguments).contains("--json");
        CommandLine line = new CommandLine(new Bermwright(console));
        line.setOut(new PrintWriter(console.out(), true));
        line.setErr(new PrintWriter(console.err(), true));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setParameterExceptionHandler((refused, args) -> badOption(refused, json));
        line.setExecutionExceptionHandler((thrown, command, parsed) -> failed(thrown, json, arguments));
        int code = line.execute(arguments);
        console.out().flush();
        return code;
    }

    private int badOption(CommandLine.ParameterException refused, boolean json) {
        String text = refused.getMessage();
        String command = refused.getCommandLine().getCommandSpec().qualifiedName();
        String accepted = "see " + command + " --help";
        String value = refused instanceof CommandLine.UnmatchedArgumentException unmatched
                ? String.join(" ", unmatched.getUnmatched()) : Optional.ofNullable(refused.getValue()).orElse("");
        Optional<CommandLine.Model.ArgSpec> argument = Optional.ofNullable(refused.getArgSpec());
        String key = argument.map(a -> a.isOption() ? ((CommandLine.Model.OptionSpec) a).longestName()
                : a.paramLabel()).orElse("");
        return trouble(new ErrorObject("", 0, key, value, accepted, text + "; " + accepted), json, ExitCode.BAD_INPUT);
    }

    private int failed(Exception thrown, boolean json, String[] arguments) {
        console.progress().end();
        if (thrown instanceof InputException bad) {
            return trouble(ErrorObject.of(bad), json, ExitCode.BAD_INPUT);
        } else if (thrown instanceof CancellationException) {
            return trouble(ErrorObject.text("cancelled; nothing was written"), json, ExitCode.OURS);
        }
        String text = "this is our mistake, not yours: %s. To repeat it: bermwright %s, version %s, Java %s, %s"
                .formatted(thrown, String.join(" ", arguments), Version.text(), System.getProperty("java.version"),
                        System.getProperty("os.name"));
        thrown.printStackTrace(console.err());
        return trouble(ErrorObject.text(text), json, ExitCode.OURS);
    }

    private int trouble(ErrorObject error, boolean json, ExitCode code) {
        console.err().println("bermwright: " + error.text());
        if (json) {
            console.out().println(JsonPage.text(error.json()));
        }
        return code.number();
    }
}
